#pragma once

#include "core/journal/entry.h"

#include <vector>

/// Days on which nobody is there to care for a stack: events "away" of the journal.
namespace tierloam::journal {

struct AwayDays {
    Day from, to; ///< both included
    bool holds(Day day) const { return from <= day && day <= to; }
    bool operator==(const AwayDays&) const = default;
};
bool isAway(Day day, const std::vector<AwayDays>& away);

/// The days that an entry says; nullopt when it is no "away".
std::optional<AwayDays> awayDaysOf(const Entry& entry);

/// The same days, ascending and without overlaps; what is empty (`to` before `from`) is left out. Ranges that touch are joined.
std::vector<AwayDays> merged(std::vector<AwayDays> away);

/// The days that are in both: each ascending and without overlaps, as `merged` makes them.
std::vector<AwayDays> inBoth(const std::vector<AwayDays>& one, const std::vector<AwayDays>& other);

/// Days from `day` to `today` on which somebody was there, `day` itself left out: habits are judged by these. Absences may overlap and stand in
/// any order. Costs as much as there are absences, however many years lie between the days.
int daysPresentSince(Day day, Day today, const std::vector<AwayDays>& away);

/// The earliest of the last so many days (1 or more) on which somebody was there, today among them if so.
Day startOfDaysPresent(int days, Day today, const std::vector<AwayDays>& away);

}
