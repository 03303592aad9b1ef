#pragma once

#include "core/household/stack_order.h"
#include "core/planning/year_plan.h"

#include <vector>

namespace tierloam::rotation {

/// The stacks of which the cards ask the model one by one: the first on the shelf, since each takes the thread a while.
struct AskedStacks {
    std::vector<const reckoning::StackReckoning*> stacks;
    std::size_t standing = 0;        ///< of all
    static constexpr std::size_t most = 12;
    bool leavesOut() const { return standing > most; }
};

/// Those that stand in the order of the shelf; those given up, which hold nothing to foresee, behind them.
inline AskedStacks askedStacks(const reckoning::Reckoning& reckoning, const household::StackOrder& order)
{
    AskedStacks asked;
    for (const reckoning::StackReckoning& each : household::inOrder(reckoning.stacks, order)) asked.stacks.push_back(&each);
    const auto givenUp = std::ranges::stable_partition(asked.stacks, [](const auto* each) { return planning::isPlanned(*each); });
    asked.standing = asked.stacks.size() - givenUp.size();
    if (asked.stacks.size() > AskedStacks::most) asked.stacks.resize(AskedStacks::most);
    return asked;
}

}
