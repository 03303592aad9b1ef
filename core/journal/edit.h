#pragma once

#include "core/journal/replay.h"

#include <optional>
#include <span>
#include <vector>

namespace tierloam::journal {

/// A change to the journal as one whole: entries added, replaced (same id) and taken out.
struct Edit {
    Entries added;                     ///< positionInDay is set by applyEdit: the end of the day
    Entries replaced;                  ///< id names the entry; moving it to another day appends it there
    std::vector<EntryId> deleted;
};

/// What an edit does to the rest of the journal.
struct EditEffect {
    Entries after;                     ///< the whole journal after it, in order
    std::optional<Refusal> refusal;    ///< the first step that it makes illegal (the edit itself or a later entry); index into `after`
    std::vector<EntryId> movedToOtherBatch; ///< later entries that stay legal but now fall to another batch
};

/// Pure: the journal as it would be, and why not. `before` is in journal order and legal.
EditEffect applyEdit(const Entries& before, const Edit& edit);

/// 64-bit digest over everything that the reckoning reads, for keys of derived data.
std::uint64_t digest(std::span<const Entry> entries);

}
