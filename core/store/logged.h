#pragma once

#include "core/quantity/measures.h"

#include <QtGlobal>

#include <cstdint>
#include <functional>
#include <map>
#include <stop_token>
#include <string>
#include <vector>

/// Readings of an instrument that logs by itself. All of them are kept, beside the journal; the journal holds one `reading` a day, the
/// mean of that day, and the reckoning sees nothing else. So an export of the journal alone gives the same reckoning.
namespace tierloam::store {

enum class LoggedKind { bin, air, moisture, humidity };
inline constexpr std::size_t loggedKinds = 4;

struct LoggedReading {
    std::int64_t second = 0;         ///< local civil time, seconds since 1970-01-01 00:00; the same may come twice when clocks are put back
    double value = 0;                ///< °C, or % (moisture wet basis, relative humidity)
    bool operator==(const LoggedReading&) const = default;
};

/// One kind of reading in one stack, as one import brought it.
struct LoggedSeries {
    std::string stack;
    LoggedKind kind{};
    std::vector<LoggedReading> readings; ///< in the order of the file
};

/// All readings of a kind on a day.
struct LoggedDay {
    Day day{};
    LoggedKind kind{};
    int readings = 0;
    double low = 0, mean = 0, high = 0;
    bool operator==(const LoggedDay&) const = default;
};

/// By stack; ascending by day, then by kind.
using LoggedDays = std::map<std::string, std::vector<LoggedDay>>;

/// What an edit does to logged readings in its transaction. Removal only marks a series, so that it can be undone.
struct LoggedJob {
    std::vector<LoggedSeries> add;
    std::vector<qint64> remove, bringBack;             ///< ids of series
    std::function<void(int done, int of)> progress;    ///< readings written; called in the thread that writes; may be empty
    std::stop_token stop;                              ///< called off: nothing is written

    bool nothing() const { return add.empty() && remove.empty() && bringBack.empty(); }
};

inline Day dayOfSecond(std::int64_t second) { return std::chrono::floor<std::chrono::days>(std::chrono::sys_seconds{std::chrono::seconds{second}}); }

}
