#include "core/household/open_journal.h"

#include "core/household/named_rows.h"

#include <algorithm>
#include <unordered_map>

namespace tierloam::household {

namespace {

using journal::Entries;
using journal::Entry;
using journal::EntryId;

bool isTemporary(EntryId id) { return static_cast<std::int64_t>(id) < 0; }

/// Whether two entries say the same, wherever they stand in their day.
bool sameButForPlace(Entry a, const Entry& b)
{
    a.positionInDay = b.positionInDay;
    return a == b;
}

/// With the positions that the store will give, in the order in which it gives them.
journal::Edit placed(journal::Edit edit, const Entries& entries, OpenJournal::Ends& ends)
{
    const NamedRows rows{entries, edit};
    for (Entry& entry : edit.replaced) {
        if (entry.positionInDay != 0) continue;
        const Entry* before = rows.find(entry.id);
        const bool stays = before != nullptr && before->date.day == entry.date.day;
        entry.positionInDay = stays ? before->positionInDay : ++ends[entry.date.day];
    }
    for (Entry& entry : edit.added)
        if (entry.positionInDay == 0) entry.positionInDay = ++ends[entry.date.day];
    return edit;
}

}

OpenJournal::OpenJournal(Entries recorded, Ends ends) : recorded_{std::move(recorded)}, ends_{std::move(ends)} { recordedChanged(); }

journal::EditEffect OpenJournal::effectOf(const journal::Edit& edit) const
{
    Ends ends = drawnEnds_;
    return materials::applyEdit(view_->entries, placed(edit, view_->entries, ends));
}

journal::Edit OpenJournal::prepared(const journal::Edit& edit) const
{
    journal::Edit made;
    made.deleted = edit.deleted;
    std::int64_t temporary = lastTemporary_;
    for (Entry entry : edit.added) {
        if (static_cast<std::int64_t>(entry.id) <= 0) {
            entry.id = EntryId{--temporary};
            entry.positionInDay = 0;
        }
        made.added.push_back(std::move(entry));
    }
    const NamedRows rows{view_->entries, edit};
    for (Entry entry : edit.replaced) {
        if (const Entry* before = rows.find(entry.id)) {
            if (sameButForPlace(entry, *before)) continue;
            entry.positionInDay = before->date.day == entry.date.day ? before->positionInDay : 0;
        }
        made.replaced.push_back(std::move(entry));
    }
    return made;
}

bool OpenJournal::namesUnwritten(const journal::Edit& edit)
{
    return std::ranges::any_of(edit.replaced, isTemporary, &Entry::id) || std::ranges::any_of(edit.deleted, isTemporary);
}

void OpenJournal::ask(std::uint64_t ticket, journal::Edit edit, Entries after)
{
    placed(edit, view_->entries, drawnEnds_);
    for (const Entry& entry : edit.added) lastTemporary_ = std::min(lastTemporary_, static_cast<std::int64_t>(entry.id));
    asked_.push_back({ticket, std::move(edit)});
    show(std::move(after));
}

void OpenJournal::take(std::uint64_t ticket)
{
    std::erase_if(asked_, [ticket](const Asked& asked) { return asked.ticket == ticket; });
}

void OpenJournal::settle(std::uint64_t ticket, const Entries& stored)
{
    const auto asked = std::ranges::find(asked_, ticket, &Asked::ticket);
    if (asked == asked_.end()) return;
    std::set<EntryId> leaving{asked->edit.deleted.begin(), asked->edit.deleted.end()};
    for (const Entry& entry : stored) leaving.insert(entry.id);
    std::erase_if(recorded_, [&](const Entry& entry) { return leaving.contains(entry.id); });
    recorded_.insert(recorded_.end(), stored.begin(), stored.end());
    std::stable_sort(recorded_.begin(), recorded_.end(), journal::inJournalOrder);
    for (const Entry& entry : stored) ends_[entry.date.day] = std::max(ends_[entry.date.day], entry.positionInDay);
    asked_.erase(asked);
    recordedChanged();
}

void OpenJournal::giveUp(std::uint64_t ticket)
{
    take(ticket);
    draw();
}

std::set<EntryId> OpenJournal::replaceRecorded(Entries now, Ends ends)
{
    std::unordered_map<EntryId, const Entry*> before;
    for (const Entry& entry : recorded_) before.emplace(entry.id, &entry);
    std::set<EntryId> differing;
    for (const Entry& entry : now) {
        const auto found = before.find(entry.id);
        if (found == before.end()) {
            differing.insert(entry.id);
            continue;
        }
        if (*found->second != entry) differing.insert(entry.id);
        before.erase(found);
    }
    for (const auto& [id, entry] : before) differing.insert(id);
    recorded_ = std::move(now);
    ends_ = std::move(ends);
    recordedChanged();
    return differing;
}

void OpenJournal::recordedChanged()
{
    recordedDigest_ = journal::digest(recorded_);
    draw();
}

/// What is pending, drawn on what is recorded. A pending edit that has become impossible is left out; its answer will say so.
void OpenJournal::draw()
{
    Entries entries = recorded_;
    drawnEnds_ = ends_;
    for (const Asked& asked : asked_) {
        auto effect = journal::applyEdit(entries, placed(asked.edit, entries, drawnEnds_));
        if (!effect.refusal) entries = std::move(effect.after);
    }
    show(std::move(entries));
}

void OpenJournal::show(Entries entries)
{
    auto view = std::make_shared<JournalView>();
    view->replay = journal::replay(entries);
    view->materials = materials::Table::withOwn(entries);
    view->entries = std::move(entries);
    for (const Asked& asked : asked_) {
        for (const Entry& entry : asked.edit.added) view->pending.push_back(entry.id);
        for (const Entry& entry : asked.edit.replaced) view->pending.push_back(entry.id);
    }
    view_ = std::move(view);
}

}
