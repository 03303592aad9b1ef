#include "core/advice/food_limit.h"

#include "core/advice/chance.h"
#include "core/advice/rules.h"
#include "core/wording/formats.h"

#include <algorithm>
#include <cmath>
#include <optional>

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

/// Steps in which food is measured out by volume.
double stepOf(Unit unit)
{
    switch (unit) {
    case Unit::mL: return 50.0;
    case Unit::L: return 0.05;
    case Unit::cup: return 0.25;
    case Unit::gal: return 0.02;
    default: return 1.0;             // fluid ounces
    }
}

/// nullopt: the usual amount is a mass, or none.
std::optional<Amount> byVolume(const reckoning::StackReckoning& stack, double kg, double (*rounded)(double))
{
    const Amount& usual = stack.record.usualFeed;
    if (kindOf(usual.unit) != UnitKind::volume || stack.record.usualFeedKg <= 0.0) return std::nullopt;
    const Amount shown = wording::inMeasures({std::max(kg, 0.0) / stack.record.usualFeedKg * usual.value, usual.unit});
    const double perUnit = std::round(1.0 / stepOf(shown.unit)); // a whole number, or none of a step above 1
    const double value = stepOf(shown.unit) > 1.0 ? rounded(shown.value / stepOf(shown.unit)) * stepOf(shown.unit) : rounded(shown.value * perUnit) / perUnit;
    return Amount{value, shown.unit};
}

}

Amount mostOfFood(const reckoning::StackReckoning& stack, double kg)
{
    return byVolume(stack, kg, [](double steps) { return std::floor(steps + 1e-6); }).value_or(wording::mostOf(kg));
}

QString mostFoodText(const reckoning::StackReckoning& stack, double kg) { return wording::amountText(mostOfFood(stack, kg)); }

QString foodText(const reckoning::StackReckoning& stack, double kg)
{
    const auto volume = byVolume(stack, kg, [](double steps) { return std::round(steps); });
    return volume ? wording::amountText(*volume) : wording::massText(kg);
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
    if (none == said.end()) return {stack.forecast.feedNowKg, mostOfFood(stack, stack.forecast.feedNowKg), {}};
    return {0.0, mostOfFood(stack, 0.0), plain(say(QT_TRANSLATE_NOOP("Advice", "%1: %2")).arg(QString::fromStdString(none->text), QString::fromStdString(none->because)))};
}

FoodLimit foodLimit(const reckoning::StackReckoning& stack) { return foodLimit(stack, adviceFor(stack)); }

double usualFeedingKg(const reckoning::StackReckoning& stack)
{
    constexpr int usualFor = 56; // days, as the habits of core/reckoning/care.h
    return stack.record.lastFeed && daysBetween(*stack.record.lastFeed, stack.asOf) <= usualFor ? stack.record.usualFeedKg : 0.0;
}

double fedInTheWeekOf(const reckoning::StackReckoning& stack, Day day)
{
    double sum = 0.0;
    for (std::size_t ago = 0; ago < stack.record.fedKg.size(); ++ago)
        if (static_cast<int>(ago) + daysBetween(stack.asOf, day) < 7) sum += stack.record.fedKg[ago];
    return sum;
}

double foodLimitOn(const reckoning::StackReckoning& stack, Day day)
{
    const double freed = fedInTheWeekOf(stack, stack.asOf) - fedInTheWeekOf(stack, day);
    return std::min(stack.forecast.feedNowKg + freed, stack.forecast.feedHighKg);
}

}
