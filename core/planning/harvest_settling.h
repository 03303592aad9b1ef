#pragma once

#include "core/planning/harvest_choices.h"

namespace tierloam::planning {

/// A good choice of days for any number of stacks: one after another is put into its best place, from several beginnings, until nothing moves; where the
/// harvests are gathered, days are then given up one by one as long as that pays. Proves nothing.
HarvestDays bySettling(const std::vector<StackTurns>& stacks, const HarvestWishes& wishes, const WelcomeOfEach& is);

}
