#pragma once

#include "tests/support/scenario.h"

#include <string>
#include <utility>
#include <vector>

/// The timing of the trade as numbers with bounds, for tuning: the rows of trade_timing_test.cpp, which says what each rests on.
namespace tierloam::testing {

using Centres = std::vector<std::pair<model::Parameter, double>>;

struct TradeRow {
    std::string name;
    double value, low, high; ///< what never came about counts as 999
};

std::vector<TradeRow> tradeRows(const Centres& centres);

}
