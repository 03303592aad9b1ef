#pragma once

#include "core/advice/advice.h"
#include "core/reckoning/overfeeding.h"

#include <optional>
#include <vector>

/// The one limit of food: shelf, feeding plan, sheet and summary ask it, so that none of them names food that the advice withholds. What a click may
/// write down today and what the coming week takes differ by what the last days got.
namespace tierloam::advice {

struct FoodLimit {
    double kg = 0;                   ///< fresh, of the food that is given most, as things stand today; 0 where any piece of advice says to give none
    double weekKg = 0;               ///< the same within the coming seven days, when what was given before counts no longer
    Amount most{};                   ///< the same as it is measured out, rounded downwards
    std::optional<Amount> keeps;     ///< what keeps the worms, within the limit, where no feeding is usual: never fed, or not for 8 weeks
    std::string withheld;            ///< what that piece says, and why; empty: nothing is withheld
    bool isWithheld() const { return !withheld.empty(); }
    /// The days to come take clearly more than today, which bears what the last ones got.
    bool isSoonMore() const { return weekKg > kg + reckoning::leastWorthGiving; }
};

/// That much of a stack's usual food as its people measure it: by volume where the usual amount is one, in steps of a measuring cup, else by mass. Rounded
/// downwards, as a limit and what one click records are.
Amount mostOfFood(const reckoning::StackReckoning& stack, double kg);

/// What keeps the week's food from being more: the room under the rim, the rate that a tray or that many worms are given at most, the air in the bed, or
/// its warmth.
enum class FoodBound { room, rate, worms, air, warmth };
/// What trays and worms are given at most in any seven days, kg fresh, whatever fits and whatever the air bears.
double mostByRate(const reckoning::StackReckoning& stack);
/// Of the two rates it is that of the worms, which are few.
bool isBoundByWorms(const reckoning::StackReckoning& stack);
FoodBound boundOf(const reckoning::StackReckoning& stack);

/// One usual feeding, kg fresh; 0 where none was given for 8 weeks: what was usual for the colony of then may be far too much for that of now.
double usualFeedingKg(const reckoning::StackReckoning& stack);
/// What keeps the worms for a week, at least what is worth giving, within that limit, kg: where no feeding is usual.
double keepsThemKg(const reckoning::StackReckoning& stack, double limitKg);
/// What of the last days' food still counts on that day within 7, kg.
double fedInTheWeekOf(const reckoning::StackReckoning& stack, Day day);
/// The limit by the estimates on a day to come, kg: the days that lie a week back by then no longer count.
double foodLimitOn(const reckoning::StackReckoning& stack, Day day);
/// The first of today and the seven days after it on which that much may be given; the last of them where none takes as much.
Day bearsFrom(const reckoning::StackReckoning& stack, double kg);

/// `said` is the advice for this stack. What was put off withholds all the same.
FoodLimit foodLimit(const reckoning::StackReckoning& stack, const std::vector<Advice>& said);
/// The same by the advice of today.
FoodLimit foodLimit(const reckoning::StackReckoning& stack);

}
