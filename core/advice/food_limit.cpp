#include "core/advice/food_limit.h"

#include "core/advice/chance.h"
#include "core/advice/rules.h"

#include <algorithm>

namespace tierloam::advice {

namespace {

constexpr double asMuch = 0.99; ///< of a bound: the limit is halved to, not solved for

/// Now or in a week.
double chanceOfTooWarm(const reckoning::StackReckoning& stack)
{
    double chance = chanceAbove(stack.now.binTempC, hotAbove).value_or(0.0);
    for (const reckoning::StackEstimate& week : stack.forecast.days)
        if (daysBetween(stack.asOf, week.day) <= 7) chance = std::max(chance, chanceAbove(week.binTempC, hotAbove).value_or(0.0));
    return chance;
}

}

FoodBound boundOf(const reckoning::StackReckoning& stack)
{
    const reckoning::Forecast& ahead = stack.forecast;
    if (ahead.roomTopTrayFreshKg && ahead.feedHighKg >= asMuch * *ahead.roomTopTrayFreshKg) return FoodBound::room;
    const double rate = 7.0 * reckoning::mostFreshPerM2AndDay * stack.record.areaM2 * static_cast<double>(std::max<std::size_t>(stack.now.slots.size(), 1));
    if (ahead.feedHighKg >= asMuch * rate) return FoodBound::rate;
    const double warm = chanceOfTooWarm(stack);
    return warm > reckoning::overfedChance && warm >= ahead.airLowWithin14Days ? FoodBound::warmth : FoodBound::air;
}

FoodLimit foodLimit(const reckoning::StackReckoning& stack, const std::vector<Advice>& said)
{
    const auto none = std::find_if(said.begin(), said.end(), [](const Advice& each) { return each.food == Food::withhold; });
    if (none == said.end()) return {stack.forecast.feedNowKg, {}};
    return {0.0, plain(say(QT_TRANSLATE_NOOP("Advice", "%1: %2")).arg(QString::fromStdString(none->text), QString::fromStdString(none->because)))};
}

FoodLimit foodLimit(const reckoning::StackReckoning& stack) { return foodLimit(stack, adviceFor(stack)); }

}
