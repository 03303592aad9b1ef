#pragma once

#include "core/advice/diary.h"

#include <map>

/// Advice over all stacks of a household.
namespace tierloam::advice {

/// What each stack's rules say, stacks in the order of the reckoning. Of what to look at next one is asked for: a look
/// that decides a turn before one that only narrows a date, and of these the one that is worth most for the minute. None that only narrows a date within a
/// week of a look at another stack, unless nobody has looked at that one for eight weeks.
std::vector<Advice> adviceForAll(const reckoning::Reckoning& reckoning);
/// Of these, what is said of that stack, in their order.
std::vector<Advice> ofStack(const std::vector<Advice>& all, const std::string& stack);

/// The same of diaries, by stack: such a look stands from the day on which none that was asked for before it, or is worth more, stood any longer.
void oneLookAtATime(std::map<std::string, std::vector<DiaryLine>>& diaries);

}
