#include "core/planning/past_harvest.h"

#include "core/journal/replay.h"
#include "core/planning/changes.h"

namespace tierloam::planning {

namespace {

/// Whether worms that come from another stack find a tray without this one.
bool takesIn(journal::Standing standing, int taken)
{
    std::erase(standing.slots, taken);
    if (standing.drying == taken) standing.drying.reset();
    return standing.feedSlot().has_value();
}

}

std::optional<reckoning::AnotherPast> pastWithHarvest(const journal::Entries& entries, const reckoning::StackReckoning& stack, Day day)
{
    std::optional<journal::Entry> harvest = harvestInThePast(stack, day);
    if (!harvest) return std::nullopt;
    reckoning::AnotherPast past;
    past.with.push_back(std::move(*harvest));
    const journal::Replay replay = journal::replay(entries);
    const journal::StackHistory* history = replay.stack(stack.name);
    const journal::Standing* then = history != nullptr ? history->on(day) : nullptr;
    if (then == nullptr || then->slots.empty()) return past;
    const int taken = then->slots.front();
    int place = 1; // of that tray, before each step
    journal::Standing before = *then;
    for (const journal::Step& step : history->steps) {
        if (step.day <= day) continue;
        if (place == 0) break; // it was taken in truth too: from here on the trays are the same
        const journal::Entry& entry = entries[step.entry];
        if (step.incoming) { // its slot is one of the stack that it is written under; here it falls where food would
            if (!takesIn(before, taken)) past.without.push_back(entry.id);
        } else if (step.batch == taken) {
            past.without.push_back(entry.id);
        } else if (entry.slot && *entry.slot > place) {
            past.without.push_back(entry.id);
            past.with.push_back(entry);
            --*past.with.back().slot;
        }
        place = step.after.slotOf(taken);
        before = step.after;
    }
    return past;
}

}
