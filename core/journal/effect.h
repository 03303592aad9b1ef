#pragma once

#include "core/journal/entry.h"
#include "core/journal/standing.h"

namespace tierloam::journal {

/// Where one legal step changes how a stack stands: trays, batches, storage, drying, spigot, lid, settings.
/// What it does to worms, castings and water is the model's.
///
/// slot   as resolved (see resolve)
/// index  of the entry, kept by a batch that it begins
/// Returns the batch it took effect in: for a bedding on top the new one; for a harvest the one that it ends. nullopt without a slot.
std::optional<int> takeEffect(const Entry& entry, std::optional<int> slot, std::size_t index, Standing& standing, std::vector<Batch>& batches);

}
