#pragma once

#include "core/journal/replay.h"
#include "core/materials/table.h"
#include "core/planning/feeding_split.h"
#include "core/planning/food_with_bedding.h"
#include "core/reckoning/reckoning.h"

#include <string>
#include <vector>

/// What the household does ahead of time: feeding, turns, absences. Pure arithmetic on what the reckoning hands over.
namespace tierloam::planning {

/// What one stack is given of this week's supply.
struct StackFeeding {
    std::string stack;
    Appetite appetite;
    double kg = 0;                       ///< fresh, within the coming seven days
    Day from{};                          ///< the first day that takes as much: what was given lately counts until then
    int slot = 0, tray = 0;              ///< 0: no tray takes food
    journal::Side side = journal::Side::left;
    std::string paper;                   ///< what the stack is usually covered with, by the name of the table
    WithFood with;                       ///< beside the food that it got most of in the last eight weeks
    std::string withheld;                ///< why none is to be given, as the advice says it; empty otherwise
};

struct FeedingPlan {
    double supply = 0;                   ///< kg fresh, this week
    std::vector<StackFeeding> stacks;
    double leftOver = 0;                 ///< kg that no stack can bear this week
};

/// What the kitchen gives in a week, kg fresh: the median of the eight weeks up to the last feeding over all stacks; weeks without a feeding count as 0,
/// weeks before the first feeding are left out.
double learnedSupply(const journal::Entries& entries, const materials::Table& table, Day today);

/// The side to feed next: the one that follows the last in left, right; with front and back where the household uses them. `all` stays `all`.
journal::Side nextSide(const journal::Entries& entries, const std::string& stack, Day today);

/// Splits the supply over all stacks that stand, and says where it goes and what goes with it.
FeedingPlan planFeeding(const reckoning::Reckoning& reckoning, const journal::Entries& entries, const materials::Table& table, double supply);

}
