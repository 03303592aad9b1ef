#pragma once

#include "core/household/household.h"

#include <QString>

#include <optional>
#include <string>
#include <vector>

namespace tierloam::forms {

/// What a form knows when it opens: the journal as it stands, the usual amounts, the newest estimates. A value; it never changes in place.
struct FormContext {
    std::shared_ptr<const household::JournalView> journal;
    std::shared_ptr<const reckoning::Reckoning> reckoning; ///< nullptr until the first are there
    household::Usual usual;
    std::string stack;
    Day today{};
    household::StackOrder order;
    bool southern = false;           ///< the seasons are turned by half a year

    static FormContext of(const household::Household& household, const std::string& stack);

    const journal::StackHistory* history() const { return journal->replay.stack(stack); }
    /// At the end of that day; nullptr before its first setup.
    const journal::Standing* standing(Day day) const { return history() ? history()->on(day) : nullptr; }
    /// Names of the other stacks that can be given worms on that day.
    std::vector<std::string> otherStacks(Day day) const;
    const reckoning::StackReckoning* estimates() const { return reckoning ? reckoning->stack(stack) : nullptr; }
    /// The newest estimate of what stands in that slot; nullptr when there is none.
    const reckoning::TrayEstimate* tray(int slot) const;

    /// The latest action of that kind in this stack, else in the household: its choices are the defaults.
    template <class A>
    const A* last() const
    {
        const A* elsewhere = nullptr;
        for (auto entry = journal->entries.rbegin(); entry != journal->entries.rend(); ++entry) {
            const A* action = std::get_if<A>(&entry->action);
            if (!action) continue;
            if (entry->stack == stack) return action;
            if (!elsewhere) elsewhere = action;
        }
        return elsewhere;
    }
    template <class A>
    const A* lastHere() const
    {
        for (auto entry = journal->entries.rbegin(); entry != journal->entries.rend(); ++entry) {
            if (const A* action = std::get_if<A>(&entry->action); action && entry->stack == stack) return action;
        }
        return nullptr;
    }

    /// Materials of the latest entries, newest first, each once.
    std::vector<std::string> foodsLately() const;
    std::vector<std::string> coversLately() const;
    std::vector<std::string> beddingsLately() const;
    /// True when no entry ever named that material as food, cover or bedding.
    bool neverUsed(const std::string& material) const;
};

}
