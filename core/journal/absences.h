#pragma once

#include "core/journal/entry.h"

#include <string>
#include <vector>

/// Days on which nobody is there to care for a stack: events "away" of the journal. An absence is of the stack that it is written under, and of nobody's
/// house: a neighbour may look after one stack and not after another. Nobody at all is there on the days that stand under every stack that is fed.
namespace tierloam::journal {

struct AwayDays {
    Day from, to; ///< both included
    bool holds(Day day) const { return from <= day && day <= to; }
    bool operator==(const AwayDays&) const = default;
};
bool isAway(Day day, const std::vector<AwayDays>& away);

/// The days that an entry says; nullopt when it is no "away".
std::optional<AwayDays> awayDaysOf(const Entry& entry);

/// The same days, ascending and without overlaps; what is empty (`to` before `from`) is left out. Ranges that touch are joined: 5 to 10 and 11 to 20 August are 5 to 20 August.
std::vector<AwayDays> merged(std::vector<AwayDays> away);

/// The days that are in both: each ascending and without overlaps, as `merged` makes them.
std::vector<AwayDays> inBoth(const std::vector<AwayDays>& one, const std::vector<AwayDays>& other);

/// Of one stack, merged, those to come among them.
std::vector<AwayDays> absencesOf(const Entries& entries, const std::string& stack);

/// Merged, of the days that stand under every stack that was fed in the 16 weeks up to `today`; where none was, under every stack that has any absence.
std::vector<AwayDays> absencesOfAll(const Entries& entries, Day today);

/// Days from `day` to `today` on which somebody was there, `day` itself left out: habits are judged by these. Absences may overlap and stand in
/// any order. Costs as much as there are absences, however many years lie between the days.
int daysPresentSince(Day day, Day today, const std::vector<AwayDays>& away);

/// The earliest of the last so many days (1 or more) on which somebody was there, today among them if so.
Day startOfDaysPresent(int days, Day today, const std::vector<AwayDays>& away);

}
