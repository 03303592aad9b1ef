#pragma once

#include "core/quantity/measures.h"

#include <optional>
#include <string>
#include <string_view>

namespace tierloam {

/// A civil day with, when it was given, the local time of day. The time is kept and shown and orders nothing.
struct DayAndTime {
    Day day{};
    std::optional<int> minuteOfDay; ///< 0…1439
    bool operator==(const DayAndTime&) const = default;
};

/// ISO 8601: "2031-05-01".
std::string dayText(Day day);
/// ISO 8601: "2031-05-01" or "2031-05-01T18:30".
std::string dayAndTimeText(const DayAndTime& moment);
/// nullopt unless it is a real civil date from 1900 to 2199, written "2031-05-01".
std::optional<Day> parseDay(std::string_view text);
/// As parseDay, optionally followed by "T18:30" (or "T18:30:00", whose seconds are dropped).
std::optional<DayAndTime> parseDayAndTime(std::string_view text);

inline constexpr int firstYear = 1900;
inline constexpr int lastYear = 2199;

/// 1 to 366.
int dayOfYear(Day day);

}
