#pragma once

#include "core/quantity/measures.h"

#include <QString>

#include <vector>

namespace tierloam::trends {

/// A labelled day of the time axis.
struct Tick {
    Day day{};
    QString label;
};

/// Ticks between two days, at most `mostDays` (2 or more) where they name days and `mostMonths` where they name months or years,
/// on civil dates that people count by: days, Mondays, firsts of months, of
/// quarters and of years. Labels: "5 May"; "May", with the year at each January and at the first tick of a longer span.
std::vector<Tick> timeTicks(Day from, Day until, int mostDays, int mostMonths);

}
