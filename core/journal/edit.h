#pragma once

#include "core/journal/replay.h"

#include <cstdint>
#include <optional>
#include <span>
#include <vector>

namespace tierloam::journal {

/// A change to the journal as one whole: entries added, replaced (same id) and taken out.
struct Edit {
    Entries added;                     ///< go to the end of their day, in this order; one with an id and a position (a deletion
                                       ///< that is undone) keeps both
    Entries replaced;                  ///< id names the entry. positionInDay 0: keeps its place on its day, or goes to the end of a new day;
                                       ///< any other position is taken as given
    std::vector<EntryId> deleted;
};

/// What an edit does to the rest of the journal.
struct EditEffect {
    Entries after;                     ///< the whole journal after it, in order
    std::optional<Refusal> refusal;    ///< the first step that it makes illegal (the edit itself or a later entry); index into `after`
    std::vector<EntryId> movedToOtherBatch; ///< entries outside the edit that stay legal but now fall to another batch, in journal order;
                                       ///< a batch is known by the `bed` that began it, so renumbering alone moves nothing
};

/// Pure: the journal as it would be, and why not. `before` is in journal order and legal.
EditEffect applyEdit(const Entries& before, const Edit& edit);

/// 64-bit digest over everything that the reckoning reads, for keys of derived data: not ids, times of day and notes.
std::uint64_t digest(std::span<const Entry> entries);

}
