#pragma once

#include "core/planning/year_plan.h"

#include <string>
#include <string_view>

namespace tierloam::planning {

/// The wishes as the household file keeps them: a line each, "gathering spread", "weekdays 96", "away DAY DAY", "pin DAY BATCH STACK".
std::string wishText(const YearWishes& wishes);
/// Lines that make no sense are passed over: a plan is never worth a refusal.
YearWishes wishesFrom(std::string_view text);

}
