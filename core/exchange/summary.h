#pragma once

#include "core/advice/advice.h"
#include "core/reckoning/reckoning.h"

#include <memory>
#include <string>
#include <string_view>
#include <vector>

namespace tierloam::exchange {

struct SummaryHead {
    std::string version;
    std::string household;
};

std::string_view stateName(reckoning::TrayState state);

/// The state at the end of reckoning->asOf as JSON: masses kg, volumes L, 6 significant digits, null instead of what is not finite.
/// `advice` is that of all stacks, in any order of stacks; within a stack its order is kept.
std::string summaryJson(const SummaryHead& head, const std::shared_ptr<const reckoning::Reckoning>& reckoning, const std::vector<advice::Advice>& advice);

}
