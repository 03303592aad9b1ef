#include "core/advice/food_limit.h"

#include "core/advice/chance.h"
#include "core/advice/rules.h"
#include "core/wording/formats.h"

#include <algorithm>
#include <cmath>
#include <limits>
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

double mostByRate(const reckoning::StackReckoning& stack)
{
    return reckoning::mostInAWeek(stack.record.areaM2, static_cast<int>(stack.now.slots.size()), stack.now.colonyKg.p50);
}

bool isBoundByWorms(const reckoning::StackReckoning& stack)
{
    return mostByRate(stack) < reckoning::mostInAWeek(stack.record.areaM2, static_cast<int>(stack.now.slots.size()), std::numeric_limits<double>::infinity());
}

FoodBound boundOf(const reckoning::StackReckoning& stack)
{
    const reckoning::Forecast& ahead = stack.forecast;
    if (ahead.roomTopTrayFreshKg && ahead.feedHighKg >= asMuch * (*ahead.roomTopTrayFreshKg - ahead.coverAsFoodKg)) return FoodBound::room;
    if (ahead.feedHighKg >= asMuch * mostByRate(stack)) return isBoundByWorms(stack) ? FoodBound::worms : FoodBound::rate;
    const double warm = chanceOfTooWarm(stack);
    return warm > reckoning::overfedChance && warm >= ahead.airLowWithin14Days ? FoodBound::warmth : FoodBound::air;
}

FoodLimit foodLimit(const reckoning::StackReckoning& stack, const std::vector<Advice>& said)
{
    const auto none = std::find_if(said.begin(), said.end(), [](const Advice& each) { return each.food == Food::withhold; });
    const double now = stack.forecast.feedNowKg;
    const auto keeps = usualFeedingKg(stack) > 0.0 ? std::nullopt : std::optional{mostOfFood(stack, keepsThemKg(stack, now))};
    if (none == said.end()) return {now, foodLimitOn(stack, stack.asOf + std::chrono::days{7}), mostOfFood(stack, now), keeps, {}};
    return {0.0, 0.0, mostOfFood(stack, 0.0), {}, plain(say(QT_TRANSLATE_NOOP("Advice", "%1: %2")).arg(QString::fromStdString(none->text), QString::fromStdString(none->because)))};
}

FoodLimit foodLimit(const reckoning::StackReckoning& stack) { return foodLimit(stack, adviceFor(stack)); }

double usualFeedingKg(const reckoning::StackReckoning& stack)
{
    constexpr int usualFor = 56; // days, as the habits of core/reckoning/care.h
    return stack.record.lastFeed && daysBetween(*stack.record.lastFeed, stack.asOf) <= usualFor ? stack.record.usualFeedKg : 0.0;
}

double keepsThemKg(const reckoning::StackReckoning& stack, double limitKg) { return std::min(std::max(stack.forecast.feedLowKg, reckoning::leastWorthGiving), limitKg); }

double fedInTheWeekOf(const reckoning::StackReckoning& stack, Day day)
{
    double sum = 0.0;
    for (std::size_t ago = 0; ago < stack.record.fedKg.size(); ++ago)
        if (static_cast<int>(ago) + daysBetween(stack.asOf, day) < 7) sum += stack.record.fedKg[ago];
    return sum;
}

double foodLimitOn(const reckoning::StackReckoning& stack, Day day)
{
    const double counts = fedInTheWeekOf(stack, day);
    const double freed = fedInTheWeekOf(stack, stack.asOf) - counts;
    if (freed <= 0.0) return stack.forecast.feedNowKg;
    // What was given above the rate is not freed with the rest of its day.
    const double then = std::min(stack.forecast.feedNowKg + freed, mostByRate(stack) - counts);
    return std::min(std::max(then, stack.forecast.feedNowKg), stack.forecast.feedHighKg);
}

Day bearsFrom(const reckoning::StackReckoning& stack, double kg)
{
    constexpr double alike = 0.005; // kg: no scale tells them apart
    Day day = stack.asOf;
    while (daysBetween(stack.asOf, day) < 7 && foodLimitOn(stack, day) < kg - alike) day += std::chrono::days{1};
    return day;
}

}
