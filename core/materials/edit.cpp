#include "core/materials/edit.h"

#include "core/materials/table.h"

#include <algorithm>
#include <unordered_set>

namespace tierloam::materials {

namespace {

using journal::EntryId;

bool isKnown(const journal::Action& action, const Table& table)
{
    if (const auto* bed = std::get_if<journal::Bed>(&action)) return table.find(bed->material) != nullptr;
    if (const auto* feed = std::get_if<journal::Feed>(&action)) return feed->material.empty() || table.find(feed->material);
    if (const auto* cover = std::get_if<journal::Cover>(&action)) return cover->material.empty() || table.find(cover->material);
    if (const auto* stock = std::get_if<journal::Stock>(&action)) return speciesNamed(stock->species) != nullptr;
    return true;
}

/// Whether an own material goes or changes: then any entry may lose its material, else only those of the edit can lack one.
bool takesOwnMaterial(const journal::Entries& before, const journal::Edit& edit)
{
    std::unordered_set<EntryId> touched{edit.deleted.begin(), edit.deleted.end()};
    for (const journal::Entry& entry : edit.replaced) touched.insert(entry.id);
    if (touched.empty()) return false;
    return std::any_of(before.begin(), before.end(), [&](const journal::Entry& entry) {
        return std::holds_alternative<journal::OwnMaterial>(entry.action) && touched.contains(entry.id);
    });
}

}

journal::EditEffect applyEdit(const journal::Entries& before, const journal::Edit& edit)
{
    journal::EditEffect effect = journal::applyEdit(before, edit);
    if (effect.refusal) return effect;
    const Table table = Table::withOwn(effect.after);
    const bool all = takesOwnMaterial(before, edit);
    std::unordered_set<EntryId> ofTheEdit;
    for (const auto* entries : {&edit.added, &edit.replaced})
        for (const journal::Entry& entry : *entries) ofTheEdit.insert(entry.id);
    for (std::size_t index = 0; index < effect.after.size(); ++index) {
        const journal::Entry& entry = effect.after[index];
        if ((!all && !ofTheEdit.contains(entry.id)) || isKnown(entry.action, table)) continue;
        effect.refusal = journal::Refusal{journal::RefusalReason::itemUnknown, index, entry.stack, entry.slot, 0, entry.date.day};
        effect.movedToOtherBatch.clear();
        return effect;
    }
    return effect;
}

}
