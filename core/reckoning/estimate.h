#pragma once

#include "core/model/ensemble.h"
#include "core/reckoning/crew.h"
#include "core/reckoning/quantiles.h"

#include <array>
#include <deque>
#include <span>

namespace tierloam::reckoning {

/// Totals of every member at the end of each of the last days, from which weekly and daily means are read.
class PastWeek {
public:
    enum Total { ingested, assimilated, maintenance, intoSump, overflowed, totals };

    void note(const model::Ensemble& stack);
    /// Gain over the last `days` days (fewer when the stack is younger) and how many they were.
    int gain(Total total, int days, std::vector<double>& values) const;
    /// Member i becomes what ancestors[i] was.
    void inherit(std::span<const int> ancestors);
    /// Only the first so many members stay.
    void keep(std::size_t members);

private:
    friend struct ArchiveAccess; // kept_members.cpp
    struct DayTotals { std::array<std::vector<double>, totals> values; };
    std::deque<DayTotals> days_; ///< oldest first, 8 at most
};

/// What one batch has reached: the first day (since the first bedding) on which each member satisfies a rule.
struct FirstDays {
    std::vector<int> ready;
    std::vector<int> filled;
};

/// Bands of one stack as it stands at the end of a day. States are working, nearly or drying; ready and overdue are set by the run,
/// which knows the days before. Trays are shared out to the crew.
StackEstimate estimate(const model::Ensemble& stack, const PastWeek& week, Weights weights, Day day, int dayNumber, Crew& crew);

/// Weight of the members whose tray in this slot (0-based) is ready as they stand now.
double readyProbability(const model::Ensemble& stack, int slot, Weights weights);

}
