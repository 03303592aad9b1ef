#pragma once

#include "core/advice/advice.h"

#include <vector>

/// The one limit of this week's food: shelf, feeding plan, sheet and summary ask it, so that none of them names food that the advice withholds.
namespace tierloam::advice {

struct FoodLimit {
    double kg = 0;                   ///< fresh, of the usual food; 0 where any piece of advice says to give none
    std::string withheld;            ///< what that piece says, and why; empty: nothing is withheld
    bool isWithheld() const { return !withheld.empty(); }
};

/// What keeps the week's food from being more: the room under the rim, the rate that a tray is given at most, the air in the bed, or its warmth.
enum class FoodBound { room, rate, air, warmth };
FoodBound boundOf(const reckoning::StackReckoning& stack);

/// `said` is the advice for this stack. What was put off withholds all the same.
FoodLimit foodLimit(const reckoning::StackReckoning& stack, const std::vector<Advice>& said);
/// The same by the advice of today.
FoodLimit foodLimit(const reckoning::StackReckoning& stack);

}
