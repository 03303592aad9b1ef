#include "core/journal/effect.h"

#include <algorithm>

namespace tierloam::journal {

namespace {

void endDrying(Standing& standing)
{
    if (!standing.drying) return;
    standing.drying.reset();
    standing.dryingSince.reset();
    standing.lidOn = true;
}

void layNewTray(const Entry& entry, std::size_t index, Standing& standing, std::vector<Batch>& batches)
{
    endDrying(standing); // another tray goes on top
    Batch batch;
    batch.number = static_cast<int>(batches.size()) + 1;
    batch.tray = lowestSpareTray(standing, batches).value_or(0);
    batch.bedded = entry.date.day;
    batch.entry = index;
    standing.slots.push_back(batch.number);
    batches.push_back(std::move(batch));
}

void liftBottomTray(Day day, Standing& standing)
{
    endDrying(standing); // the lifted tray goes on top of one that may still be drying
    std::rotate(standing.slots.begin(), standing.slots.begin() + 1, standing.slots.end());
    standing.drying = standing.slots.back();
    standing.dryingSince = day;
    standing.lidOn = false;
}

void endBatch(int slot, Day day, Standing& standing, std::vector<Batch>& batches)
{
    const int batch = standing.batchIn(slot);
    if (standing.drying == batch) endDrying(standing);
    batches[static_cast<std::size_t>(batch) - 1].ended = day;
    standing.slots.erase(standing.slots.begin() + (slot - 1));
}

}

std::optional<int> takeEffect(const Entry& entry, std::optional<int> slot, std::size_t index, Standing& standing, std::vector<Batch>& batches)
{
    const Action& action = entry.action;
    const Day day = entry.date.day;

    if (std::holds_alternative<Bed>(action) && slot > standing.trays()) {
        layNewTray(entry, index, standing, batches);
        return standing.slots.back();
    }

    const std::optional<int> batch = slot ? std::optional{standing.batchIn(*slot)} : std::nullopt;
    const bool putIn = std::holds_alternative<Bed>(action) || std::holds_alternative<Feed>(action) || std::holds_alternative<Cover>(action);
    if (putIn && batch == standing.drying) endDrying(standing);

    if (const auto* setup = std::get_if<Setup>(&action)) {
        applySetup(standing.settings, *setup);
        standing.spigot = setup->spigot.value_or(standing.spigot);
    } else if (const auto* drain = std::get_if<Drain>(&action)) {
        standing.spigot = drain->spigot.value_or(standing.spigot);
    } else if (const auto* lid = std::get_if<Lid>(&action)) {
        standing.lidOn = lid->on.value_or(standing.lidOn);
    } else if (std::holds_alternative<Rotate>(action)) {
        liftBottomTray(day, standing);
    } else if (const auto* harvest = std::get_if<Harvest>(&action)) {
        if (harvest->whole()) endBatch(*slot, day, standing, batches);
    } else if (std::holds_alternative<Retire>(action)) {
        standing.retired = true;
    }
    return batch;
}

}
