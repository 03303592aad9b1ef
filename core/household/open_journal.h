#pragma once

#include "core/household/household.h"
#include "core/materials/edit.h"

#include <cstdint>
#include <deque>
#include <map>
#include <memory>
#include <optional>
#include <set>

namespace tierloam::household {

/// The journal as it is in the file, and on top of it the edits that were asked for and not yet answered. Hands out whole values only.
/// No thread, no file, no signal.
class OpenJournal {
public:
    /// The last position taken on each day, deleted entries included.
    using Ends = std::map<Day, std::int64_t>;

    OpenJournal(journal::Entries recorded, Ends ends);

    std::shared_ptr<const JournalView> view() const { return view_; }
    /// What is durable; the reckoning is made of this. In journal order.
    const journal::Entries& recorded() const { return recorded_; }
    /// journal::digest of it, kept: it is asked for at every look at the file.
    std::uint64_t recordedDigest() const { return recordedDigest_; }
    bool anythingPending() const { return !asked_.empty(); }

    /// The edit as it will be written: without what changes nothing, new entries under an id of their own (negative), and no position
    /// where the store will give one.
    journal::Edit prepared(const journal::Edit& edit) const;
    static bool changesNothing(const journal::Edit& edit) { return edit.added.empty() && edit.replaced.empty() && edit.deleted.empty(); }
    /// An entry that is still being written cannot be named by another edit: its id is not known yet.
    static bool namesUnwritten(const journal::Edit& edit);
    journal::EditEffect effectOf(const journal::Edit& edit) const;

    /// Draws the edit as pending. `after` is what effectOf gave.
    void ask(std::uint64_t ticket, journal::Edit edit, journal::Entries after);
    /// The oldest pending edit is durable: the rows that it added and replaced, as they stand in the file.
    void settle(std::uint64_t ticket, const journal::Entries& stored);
    void giveUp(std::uint64_t ticket);
    /// Another program wrote: what the file holds now. The ids that differ.
    std::set<journal::EntryId> replaceRecorded(journal::Entries now, Ends ends);

private:
    struct Asked {
        std::uint64_t ticket = 0;
        journal::Edit edit;
    };

    void take(std::uint64_t ticket);
    void recordedChanged();
    void draw();
    void show(journal::Entries entries);

    journal::Entries recorded_;
    std::uint64_t recordedDigest_ = 0;
    Ends ends_;                        ///< of the file
    Ends drawnEnds_;                   ///< with what is pending
    std::deque<Asked> asked_;
    std::shared_ptr<const JournalView> view_;
    std::int64_t lastTemporary_ = 0;
};

}
