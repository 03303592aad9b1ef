#pragma once

#include <vector>

namespace tierloam::planning {

/// What one stack can take of a week's supply, kg fresh.
struct Appetite {
    double low = 0;      ///< keeps the median colony's ration at 1
    double usual = 0;
    double high = 0;     ///< the limit: beyond it the chance of overfeeding passes 5 %, or it does not fit
};

struct Split {
    std::vector<double> kg;  ///< by stack, in the order of the appetites
    double leftOver = 0;     ///< what no stack can bear
};

inline constexpr double splitStep = 0.01; ///< kg: a kitchen scale

/// How well a stack is served: 0 with nothing, 1 at `low`, 2 at `usual`, 3 at `high`, straight between. `low` and `usual` count up to `high`.
double servedBy(const Appetite& appetite, double kg);

/// Splits the supply in steps of 10 g so that the worst served stack is served as well as can be, then the next worst, and so on; no stack
/// gets more than its limit. Exact: each step goes to the worst served stack that can bear it. Amounts below 0 count as 0.
Split splitSupply(double supply, const std::vector<Appetite>& appetites);

}
