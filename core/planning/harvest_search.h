#pragma once

#include "core/planning/harvest_prices.h"

#include <optional>

namespace tierloam::planning {

/// The proved best choice of days: all stacks together, day by day, over what has been lifted and how late each stack runs; a state that cannot beat what is
/// known is dropped. nullopt when there were more states than that. `known` is a choice that there is, whose cost `prices` bound from below.
std::optional<HarvestDays> bestTogether(const std::vector<StackTurns>& stacks, const HarvestWishes& wishes, const WelcomeOfEach& is, const HarvestDays& known,
                                        const TripPrices& prices, int mostStates);

}
