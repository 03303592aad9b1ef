#pragma once

#include "core/advice/advice.h"

#include <string>
#include <string_view>
#include <vector>

/// Advice that people do not want to be told of again before a day, and what they noted as done beside it: one text, written in one step.
namespace tierloam::advice {

struct PutOff {
    std::string stack;
    Code code{};
    Day until{};                     ///< told again from this day on
    bool look = false;               ///< a look that was asked for: what is then known of the matter is told all the same
    bool done = false;               ///< puts nothing off: on the day `until` a note in the journal says that this was done
    bool operator==(const PutOff&) const = default;
};

/// As the household file keeps it: a line each, "2031-05-09 feed-due Scullery", "2031-05-09 sump-full/look Scullery", "2031-05-02 heat/done Scullery". Lines that make no sense are passed over.
std::string putOffText(const std::vector<PutOff>& all);
std::vector<PutOff> putOffFrom(std::string_view text);

/// With this piece put off until that day; those whose day has come are dropped.
std::vector<PutOff> withPutOff(std::vector<PutOff> all, const Advice& advice, Day until, Day today);

/// With this piece noted as done that day; those from before the days of the diary are dropped.
std::vector<PutOff> withDone(std::vector<PutOff> all, const Advice& advice, Day today);

/// Nothing is put off any more; what was noted as done stays.
std::vector<PutOff> withoutPutOffs(std::vector<PutOff> all);

/// Whether that piece was noted as done on that day, in whichever words and units the note was written.
bool isNotedDone(const std::vector<PutOff>& all, const Advice& advice, Day day);

/// What is urgent is told whatever was put off.
bool isPutOff(const std::vector<PutOff>& all, const Advice& advice, Day today);

/// Each on the day to which it was put off, if that is later: for the calendar.
std::vector<Advice> postponed(std::vector<Advice> all, const std::vector<PutOff>& putOff, Day today);

/// For how many days one click puts it off: what can wait for the next round waits a week, the daily things two days.
int usualDelay(Code code);

}
