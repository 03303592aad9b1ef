#pragma once

#include "core/reckoning/reckoning.h"

#include <limits>
#include <span>
#include <vector>

namespace tierloam::reckoning {

/// Weights of the members, summing to 1; empty means that all are equal.
using Weights = std::span<const double>;

/// The smallest value at which the weights of the values up to it reach `share`. Values need no order.
double quantile(const std::vector<double>& values, Weights weights, double share);
/// 5, 50 and 95 %.
Band band(const std::vector<double>& values, Weights weights);

inline constexpr int never = std::numeric_limits<int>::max();
/// 10, 50 and 90 % of a day counted from `start`; a member at `never`, or a quantile beyond `horizon`, is nullopt.
Dates dates(const std::vector<int>& firstDays, Weights weights, Day start, int horizon);

/// Weight of the members for which it holds.
double probability(const std::vector<char>& holds, Weights weights);

}
