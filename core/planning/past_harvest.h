#pragma once

#include "core/reckoning/plans.h"

namespace tierloam::planning {

/// The past in which the bottom tray was taken whole on that day (harvestInThePast of changes.h). What was written of that tray later was not, and what was
/// written of the trays above it was of the same trays, one slot lower. `entries` is the journal that `stack` was reckoned from. nullopt on a day that is not
/// past, or when nothing stood there yet.
std::optional<reckoning::AnotherPast> pastWithHarvest(const journal::Entries& entries, const reckoning::StackReckoning& stack, Day day);

}
