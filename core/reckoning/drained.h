#pragma once

#include "core/journal/entry.h"
#include "core/reckoning/reckoning.h"

#include <optional>

/// What was drained beside what was expected: the advice, and the marks in the chart of drainage.
namespace tierloam::reckoning {

enum class Drained { asExpected, less, more };

/// The side of the 95 % band on which it lies. A shut sump gives no more than it holds: what comes out of a full one is never less.
Drained drainedOf(const DrainCheck& drain, const Record& record);

/// Litres that an entry says came out of the sump; nullopt when it says nothing of it. Of a flush with the water that was poured for it: what is
/// expected to run into the sump (StackEstimate::drainedLPerWeek) holds that water too.
std::optional<double> drainedBy(const journal::Entry& entry);

/// Two in a row on one side; `asExpected` where they are not.
Drained drainedTwice(const DrainCheck& before, const DrainCheck& last, const Record& record);

}
