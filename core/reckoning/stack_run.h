#pragma once

#include "core/journal/replay.h"
#include "core/reckoning/care.h"
#include "core/reckoning/deeds.h"
#include "core/reckoning/estimate.h"
#include "core/reckoning/reckon.h"

#include <map>
#include <optional>
#include <stop_token>

namespace tierloam::reckoning {

/// A rule that is raised when its probability reaches 0.8 and withdrawn when it falls to 0.6, replayed along the days.
class Raised {
public:
    void note(double probability, Day day);
    const std::optional<Day>& since() const { return since_; }

private:
    std::optional<Day> since_;
};

/// One stack through its journal, day by day: acts at the start of a day in the order of the journal, then the day passes.
class StackRun {
public:
    StackRun(const journal::Entries& entries, const journal::StackHistory& history, const materials::Table& materials, const Options& options);

    /// False when it was stopped.
    bool run(StackReckoning& result, std::stop_token stop);

private:
    void actsOf(int day);
    void routinesOf(int day);
    void noteDay(int day, StackReckoning& result);
    void noteFirstDays(int day);
    bool worthASample(int day) const;
    void settleStates(StackEstimate& at, int day) const;
    model::DayForcing forcingOf(int day) const;
    bool forecast(StackReckoning& result, std::stop_token stop);
    void feedLimits(StackReckoning& result) const;
    Day dayAt(int day) const { return *history_.firstBedding + std::chrono::days{day}; }

    const journal::Entries& entries_;
    const journal::StackHistory& history_;
    Deeds deeds_;
    Options options_;
    int last_ = 0;                           ///< day number of asOf
    std::vector<std::size_t> firstStepOf_;   ///< by day number: index of the first step of that day; size last_ + 2
    std::vector<char> looked_;               ///< days with an observation
    std::size_t before_ = 0;                 ///< steps before the first bedding
    model::Ensemble stack_;
    PastWeek week_;
    std::vector<double> weights_;            ///< empty: all members weigh the same; the filter sets them
    std::map<int, FirstDays> firsts_;        ///< by batch
    std::map<int, Raised> ready_;            ///< by batch
    Raised turn_;
    int turnBatch_ = 0;                      ///< top batch that turn_ speaks of
    const journal::Standing* standing_ = nullptr;
    struct Habit { double each = 0; int every = 1; int from = 0; };
    std::optional<Habit> waterHabit_, coverHabit_;
    std::optional<std::pair<int, double>> air_, humidity_; ///< last reading: day, value
    std::vector<std::string> flags_;
};

}
