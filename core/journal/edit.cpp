#include "core/journal/edit.h"

#include <algorithm>
#include <map>
#include <tuple>
#include <unordered_map>
#include <unordered_set>

namespace tierloam::journal {

namespace {

/// Finds the end of each day of a journal, counting what was appended meanwhile.
class DayEnds {
public:
    explicit DayEnds(const Entries& entries)
    {
        for (const Entry& entry : entries) note(entry);
    }
    void note(const Entry& entry)
    {
        auto& last = last_[entry.date.day];
        last = std::max(last, entry.positionInDay);
    }
    std::int64_t next(Day day) { return ++last_[day]; }

private:
    std::map<Day, std::int64_t> last_;
};

/// The id of the `bed` that began the batch an entry falls to, for both ledgers of a move.
using BatchOf = std::map<std::pair<EntryId, bool>, EntryId>;

BatchOf batchesOf(const Entries& entries, const Replay& replayed)
{
    BatchOf found;
    for (const StackHistory& history : replayed.stacks)
        for (const Step& step : history.steps) {
            const EntryId id = entries[step.entry].id;
            if (id == EntryId::none || !step.batch) continue;
            found[{id, step.incoming}] = entries[history.batch(*step.batch).entry].id;
        }
    return found;
}

bool put(Entries& after, const Edit& edit, std::size_t& missing)
{
    std::unordered_map<EntryId, std::size_t> place;
    for (std::size_t i = 0; i < after.size(); ++i)
        if (after[i].id != EntryId::none) place.emplace(after[i].id, i);

    DayEnds ends{after};
    for (const Entry& changed : edit.replaced) {
        const auto found = place.find(changed.id);
        if (found == place.end()) {
            missing = after.size();
            return false;
        }
        Entry& entry = after[found->second];
        const Entry old = entry;
        entry = changed;
        if (entry.positionInDay == 0) entry.positionInDay = entry.date.day == old.date.day ? old.positionInDay : ends.next(entry.date.day);
        ends.note(entry);
    }

    std::unordered_set<EntryId> gone;
    for (const EntryId id : edit.deleted) {
        if (!place.contains(id)) {
            missing = after.size();
            return false;
        }
        gone.insert(id);
    }
    if (!gone.empty()) std::erase_if(after, [&](const Entry& entry) { return entry.id != EntryId::none && gone.contains(entry.id); });

    after.reserve(after.size() + edit.added.size());
    for (const Entry& added : edit.added) {
        after.push_back(added);
        Entry& entry = after.back();
        const bool broughtBack = entry.id != EntryId::none && entry.positionInDay != 0;
        if (!broughtBack) entry.positionInDay = ends.next(entry.date.day);
        ends.note(entry);
    }
    std::stable_sort(after.begin(), after.end(), inJournalOrder);
    return true;
}

std::vector<EntryId> moved(const Entries& before, const Edit& edit, const Entries& after, const Replay& replayedAfter)
{
    std::unordered_set<EntryId> ofTheEdit{edit.deleted.begin(), edit.deleted.end()};
    for (const Entry& entry : edit.replaced) ofTheEdit.insert(entry.id);
    for (const Entry& entry : edit.added) ofTheEdit.insert(entry.id);

    const BatchOf was = batchesOf(before, replay(before));
    const BatchOf is = batchesOf(after, replayedAfter);
    std::vector<EntryId> ids;
    for (const Entry& entry : after) {
        if (entry.id == EntryId::none || ofTheEdit.contains(entry.id)) continue;
        const auto differs = [&](bool incoming) {
            const auto old = was.find({entry.id, incoming});
            const auto now = is.find({entry.id, incoming});
            return (old == was.end() ? EntryId::none : old->second) != (now == is.end() ? EntryId::none : now->second);
        };
        if (differs(false) || differs(true)) ids.push_back(entry.id);
    }
    return ids;
}

}

EditEffect applyEdit(const Entries& before, const Edit& edit)
{
    EditEffect effect;
    effect.after = before;
    std::size_t missing = 0;
    if (!put(effect.after, edit, missing)) {
        effect.refusal = Refusal{RefusalReason::entryGone, missing, {}, {}, 0, {}};
        return effect;
    }
    Replay replayed = replay(effect.after);
    if (!replayed.refusals.empty()) {
        effect.refusal = std::move(replayed.refusals.front());
        return effect;
    }
    effect.movedToOtherBatch = moved(before, edit, effect.after, replayed);
    return effect;
}

}
