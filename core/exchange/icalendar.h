#pragma once

#include "core/advice/advice.h"
#include "core/journal/replay.h"
#include "core/planning/year_plan.h"

#include <chrono>
#include <string>
#include <string_view>
#include <vector>

/// What is due and what is planned as a calendar: RFC 5545, whole days, CRLF, lines folded at 75 octets and never inside a character.
namespace tierloam::exchange {

struct CalendarEvent {
    std::string uid;                 ///< the same for the same matter from one export to the next
    Day day{};
    std::string summary;
    std::string description;
};

struct CalendarHead {
    std::string version;
    std::string household;
    std::chrono::sys_seconds stamp{}; ///< when it was written, UTC
};

/// Advice and plan of one household. The keys of stacks come from the replay, so that a stack keeps its UIDs when it is renamed on import.
/// A matter has one event: `feed-due` one for each feeding that it follows, steps of the rotation one for each batch, the rest one a stack
/// and code. `plan` may be nullptr.
std::vector<CalendarEvent> calendarEvents(const std::vector<advice::Advice>& advice, const reckoning::Reckoning& reckoning, const planning::YearPlan* plan,
                                          const journal::Replay& replay);

/// The calendar as it is written.
std::string calendarText(const CalendarHead& head, const std::vector<CalendarEvent>& events);

/// Backslash, semicolon, comma and line breaks escaped (RFC 5545, 3.3.11); other control characters left out.
std::string escapedText(std::string_view text);
/// A content line with its CRLF, folded (3.1).
std::string foldedLine(std::string_view line);

}
