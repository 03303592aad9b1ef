#pragma once

#include "ui/trends/trend_seen.h"

#include <string>

namespace tierloam::trends {

/// The figures of the days that are seen, as RFC 4180 with a head: measure, stack, date, until, what, low, value, high, unit. Numbers have a point
/// and the units that the unit column names, whatever the screen shows; low and high are the 90 % range. `what`: estimate, forecast, change,
/// drained, drained-in-all, read, taken, expected, mark. Names of stacks are never taken for a formula.
std::string seenCsv(const SeenTrends& seen);

}
