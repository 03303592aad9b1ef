#pragma once

#include "core/journal/entry.h"

#include <vector>

/// Days on which nobody is there to care for a stack: events "away" of the journal.
namespace tierloam::journal {

struct AwayDays {
    Day from, to; ///< both included
    bool holds(Day day) const { return from <= day && day <= to; }
};
bool isAway(Day day, const std::vector<AwayDays>& away);

/// The days that an entry says; nullopt when it is no "away".
std::optional<AwayDays> awayDaysOf(const Entry& entry);

/// Days from `day` to `today` on which somebody was there, `day` itself left out: habits are judged by these. Absences may overlap.
int daysPresentSince(Day day, Day today, const std::vector<AwayDays>& away);

/// The earliest of the last so many days (1 or more) on which somebody was there, today among them if so.
Day startOfDaysPresent(int days, Day today, const std::vector<AwayDays>& away);

}
