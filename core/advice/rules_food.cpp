#include "core/advice/chance.h"
#include "core/advice/food_limit.h"
#include "core/advice/rules.h"
#include "core/advice/too_early.h"
#include "core/advice/words.h"
#include "core/reckoning/outlook.h"

#include <algorithm>
#include <cmath>

namespace tierloam::advice {

using reckoning::leastWorthGiving;
using reckoning::StackEstimate;
using reckoning::StackReckoning;
using reckoning::TrayEstimate;
using reckoning::TrayState;

namespace {

constexpr double airLow = reckoning::overfedAir; ///< median; worms die below 0.5
constexpr double airFine = 0.80;
constexpr Thresholds overfedAt{0.5, 0.3};
constexpr Thresholds hungryAt{0.8, 0.6};
constexpr double softenedLimits = 0.35;     ///< kg/m²; half-saturation of eating (Johnston et al. 2014): with more lying there, food is not what is missing
constexpr double softenedEnough = 0.50;     ///< … and with so much for certain
constexpr double tooColdToEat = 8.0;        ///< °C
constexpr double leastColonyKg = 0.02;      ///< with fewer worms there is nobody to feed
constexpr int newcomersSettle = 7;          ///< days after the first bedding: they live on what they had
constexpr int fedLately = 3;                ///< days in which the first of a feeding has softened; until then nobody knows that more is wanted
constexpr double manyDays = 45.0;           ///< of food that lies there as it is eaten now; ours
constexpr double fewDaysAgain = 30.0;
constexpr double longTime = 365.0;          ///< days; more is no number
constexpr double leastLyingKg = 0.05;       ///< dry; a feeding of kitchen mix
constexpr double farTooMuch = 1.25;         ///< of the most that is given in a week; a scale and a guess of the worms' weight make a quarter. Ours
constexpr double keptRation = 0.90;         ///< of what they need; a colony that gets less shrinks by a tenth or more in two months
constexpr double halfWay = 0.7;             ///< of what keeps them: less than that is given week by week
constexpr int settlingIn = 10;              ///< days
constexpr double keepsThem = 0.0125;        ///< of their weight a day, dry, at some 20 °C: core/model's maintenance
// C:N 25 to 35 for composting: Cooperband 2002, second hand. That below 20 nitrogen is lost as ammonia is common practice, no source.
constexpr double carbonLow = 20.0;
constexpr double carbonFine = 25.0;
constexpr double carbonWanted = 30.0;
constexpr double carbonKept = 22.0, bedKept = 19.0; ///< once raised. Ours
constexpr double bedLow = 18.0;
constexpr double paperCarbon = 0.504, paperNitrogen = 0.0012, paperDry = 0.95; ///< newspaper shredded, kg per kg dry matter; dry share
constexpr double paperBulk = 30.0;          ///< kg/m³ as it comes to hand (resources/materials.csv)
constexpr double rimCm = 1.0;               ///< kept free

/// What has softened in a tray, kg DM/m².
double softenedKgPerM2(const TrayEstimate& tray) { return tray.strata.softenedCm / 100.0 * 120.0; } // 120 kg/m³

double mostSoftened(const StackEstimate& day)
{
    double most = 0.0;
    for (const TrayEstimate& tray : day.slots)
        if (tray.state != TrayState::drying) most = std::max(most, softenedKgPerM2(tray));
    return most;
}

double leastAir(const StackEstimate& day)
{
    double least = 1.0;
    for (const TrayEstimate& tray : day.slots) least = std::min(least, tray.air);
    return least;
}

/// Food in the tray, dry kg, softened or not; what lies as food is as dense as kitchen mix (resources/materials.csv).
double lyingKg(const StackReckoning& stack, const TrayEstimate& tray) { return (softenedKgPerM2(tray) + tray.strata.foodCm / 100.0 * 72.0) * stack.record.areaM2; }

/// Days for which the food in the tray would last the worms as they eat now; nullopt: nothing is known, or there is none to speak of.
std::optional<double> daysOfFood(const StackReckoning& stack, const StackEstimate& day, const TrayEstimate& tray)
{
    const double lying = lyingKg(stack, tray);
    if (day.processingGDryPerDay == reckoning::Band{} || lying < leastLyingKg) return std::nullopt;
    // The week's mean says little of worms that came within it: they are taken to eat what keeps them.
    const StackEstimate* before = stack.on(day.day - std::chrono::days{settlingIn});
    const bool newcomers = before == nullptr || before->colonyKg.p50 < 0.5 * day.colonyKg.p50;
    return lying / std::max({day.processingGDryPerDay.p50 / 1000.0, newcomers ? keepsThem * day.colonyKg.p50 : 0.0, 1e-6});
}

/// More lies there than the worms eat in six weeks: too dry, too cold or too few of them, whatever the air would bear.
bool waitsUneaten(const StackReckoning& stack, const TrayEstimate& top, std::vector<Advice>& to)
{
    const auto chance = [&](const StackEstimate& day) -> std::optional<double> {
        const TrayEstimate* at = trayOfBatch(day, top.batch);
        const auto lasts = at != nullptr ? daysOfFood(stack, day, *at) : std::nullopt;
        return lasts ? std::optional{std::clamp((*lasts - fewDaysAgain) / (manyDays - fewDaysAgain), 0.0, 1.0)} : std::nullopt;
    };
    if (!stack.record.lastFeed || hasHardlyAWorm(stack) || !stands(stack, chance, {1.0, 0.0})) return false;
    const double lasts = daysOfFood(stack, stack.now, top).value_or(0.0);
    const QString eaten = lasts > longTime ? say(QT_TRANSLATE_NOOP("Advice", "hardly any of it is eaten"))
                                           : say(QT_TRANSLATE_NOOP("Advice", "enough for %1 as the worms eat now")).arg(days(static_cast<int>(std::lround(lasts))));
    add(to, stack, Code::overfed, Severity::hint, top.slot, stack.asOf, say(QT_TRANSLATE_NOOP("Advice", "Wait with food, and look again in a few days")),
        say(QT_TRANSLATE_NOOP("Advice", "food that lies in the tray, dry: %1; %2")).arg(massText(lyingKg(stack, top)), eaten));
    to.back().food = Food::withhold;
    return true;
}

/// More was given within a week than trays and worms are given at most. The forecast of the air has the usual feedings in it and not what came once.
bool gotFarTooMuch(const StackReckoning& stack, const TrayEstimate& top, std::vector<Advice>& to)
{
    const double given = fedInTheWeekOf(stack, stack.asOf), most = mostByRate(stack);
    if (given <= farTooMuch * most || stack.now.colonyKg.p50 < leastColonyKg) return false;
    add(to, stack, Code::overfed, Severity::due, top.slot, stack.asOf,
        say(QT_TRANSLATE_NOOP("Advice", "Give no more food this week; look after a few days, and take out what smells or is warm")),
        isBoundByWorms(stack) ? say(QT_TRANSLATE_NOOP("Advice", "%1 were given within 7 days; half of the worms' weight a day is the most, %2 a week for about %3 of worms"))
                                    .arg(foodText(stack, given), mostFoodText(stack, most), massText(stack.now.colonyKg.p50))
                              : say(QT_TRANSLATE_NOOP("Advice", "%1 were given within 7 days; %2 kg a day and m² are the most, %3 a week"))
                                    .arg(foodText(stack, given), number(reckoning::mostFreshPerM2AndDay, 1), mostFoodText(stack, most)));
    to.back().food = Food::withhold;
    return true;
}

/// Food would be due within two days, as it is told ahead, and none is borne, not for what was fed lately: silence would look like forgetting. Where there is no room for it the tray is
/// told to be full.
void waitWithFood(const StackReckoning& stack, const TrayEstimate& top, std::vector<Advice>& to)
{
    const FoodBound bound = boundOf(stack);
    if (bound == FoodBound::room) return;
    const auto& last = stack.record.lastFeed;
    if (stack.forecast.feedHighKg >= leastWorthGiving || !last || daysBetween(*last, stack.asOf) + feedToldAhead < stack.record.medianFeedGapDays || stack.now.colonyKg.p50 < leastColonyKg) return;
    const QString why = bound == FoodBound::warmth
        ? say(QT_TRANSLATE_NOOP("Advice", "with any more this week the chance of a bed above %1 is above 5 %; bed %2 now; not yet eaten, dry: %3"))
              .arg(temperatureText(hotAbove), wording::temperatureBand(stack.now.binTempC), massText(top.unprocessedDryKg.p50))
        : say(QT_TRANSLATE_NOOP("Advice", "with any more this week the chance of too little air in the bed is above 5 %; air %1 of full now; not yet eaten, dry: %2"))
              .arg(percent(leastAir(stack.now)), massText(top.unprocessedDryKg.p50));
    add(to, stack, Code::overfed, Severity::hint, top.slot, stack.asOf, say(QT_TRANSLATE_NOOP("Advice", "Wait with food, and look again in a few days")), why);
    to.back().food = Food::withhold;
}

/// Raised when the worst tray's air is below 0.7, or is so within 14 days with even chances; withdrawn above 0.8 and below 0.3.
void overfed(const StackReckoning& stack, const TrayEstimate& top, std::vector<Advice>& to)
{
    const double air = leastAir(stack.now);
    // The air of a day is told by its median alone: 0.7 counts as even chances, 0.8 as 0.3. The days before foresaw two weeks as this one does.
    const auto chance = [](const StackEstimate& day) -> std::optional<double> {
        const double then = std::clamp(overfedAt.raise + (airLow - leastAir(day)) / (airFine - airLow) * (overfedAt.raise - overfedAt.withdraw), 0.0, 1.0);
        return std::max(then, day.ahead ? day.ahead->airLowWithin14Days : 0.0);
    };
    const double now = std::max(*chance(stack.now), stack.forecast.airLowWithin14Days);
    if (!stands(stack, chance, overfedAt, now)) {
        if (!gotFarTooMuch(stack, top, to) && !waitsUneaten(stack, top, to)) waitWithFood(stack, top, to);
        return;
    }
    const bool already = air < airLow;
    const double rate = stack.present ? stack.present->course.care.feedKg : stack.record.usualFeedKgPerWeek; // what those 14 days were run with
    const auto worst = std::min_element(stack.now.slots.begin(), stack.now.slots.end(), [](const TrayEstimate& a, const TrayEstimate& b) { return a.air < b.air; });
    const QString what = already ? say(QT_TRANSLATE_NOOP("Advice", "Give no more food until the last is eaten; take out what smells, loosen the bed and mix in dry paper"))
        : stack.forecast.feedNowKg < leastWorthGiving ? say(QT_TRANSLATE_NOOP("Advice", "Do not feed this week"))
                                                       : say(QT_TRANSLATE_NOOP("Advice", "Feed at most %1 this week")).arg(mostFoodText(stack, stack.forecast.feedNowKg));
    add(to, stack, Code::overfed, already ? Severity::concern : Severity::due, already ? worst->slot : top.slot, stack.asOf, what,
        say(QT_TRANSLATE_NOOP("Advice", "air in the bed %1 of full; below 0.7 within 14 days at %2 a week: %3; not yet eaten, dry: %4"))
            .arg(percent(air), foodText(stack, rate), percent(stack.forecast.airLowWithin14Days), massText(top.unprocessedDryKg.p50)));
    if (already || stack.forecast.feedNowKg < leastWorthGiving) to.back().food = Food::withhold;
}

/// Assimilation below maintenance, because nothing lies there to be eaten.
void hungry(const StackReckoning& stack, std::vector<Advice>& to)
{
    const auto chance = [&](const StackEstimate& day) -> std::optional<double> {
        if (day.slots.empty() || day.binTempC == reckoning::Band{} || day.binTempC.p50 < tooColdToEat) return std::nullopt;
        const double softened = mostSoftened(day);
        if (softened >= softenedEnough) return 0.0;
        const std::optional<double> wanting = chanceBelow(day.ration, 1.0);
        return wanting && softened >= softenedLimits ? std::min(*wanting, hungryAt.raise - 0.01) : wanting; // between both it is kept and not raised
    };
    if (stack.record.lastFeed && daysBetween(*stack.record.lastFeed, stack.asOf) < fedLately) return;
    if (stack.forecast.feedNowKg < leastWorthGiving || !stands(stack, chance, hungryAt)) return;
    if (daysBetween(stack.firstBedding, stack.asOf) < newcomersSettle) return;
    // The usual feeding if it will do, else what keeps them, never above the limit.
    const double give = std::min(std::max(stack.forecast.feedLowKg, usualFeedingKg(stack)), stack.forecast.feedNowKg);
    const bool asUsual = usualIsBorne(stack) && usualFeedingKg(stack) >= stack.forecast.feedLowKg;
    if (give < leastWorthGiving) return;
    add(to, stack, Code::hungry, Severity::due, slotForFood(stack), stack.asOf, say(QT_TRANSLATE_NOOP("Advice", "Feed %1: the worms live on their reserves")).arg(asUsual ? wording::amountText(stack.record.usualFeed) : mostFoodText(stack, give)),
        (stack.forecast.feedLowKg < stack.forecast.feedHighKg ? say(QT_TRANSLATE_NOOP("Advice", "they assimilate %1 of what they need (%2 to %3); %4 a week would do, up to %5 can be borne"))
                                                              : say(QT_TRANSLATE_NOOP("Advice", "they assimilate %1 of what they need (%2 to %3); more than %4 a week would be wanted, and only %5 can be borne")))
            .arg(percent(stack.now.ration.p50), percent(stack.now.ration.p05), percent(stack.now.ration.p95), mostFoodText(stack, stack.forecast.feedLowKg), mostFoodText(stack, stack.forecast.feedNowKg)));
    to.back().kg = give;
    to.back().food = Food::give;
}

/// Of what was usually given by then: 1 too little carbon, 0 enough, between them as it was before; nullopt: nothing was.
std::optional<double> tooLittleCarbon(double carbonKg, double nitrogenKg, double bed)
{
    if (nitrogenKg <= 0.0) return std::nullopt;
    const double ratio = carbonKg / nitrogenKg;
    const bool below = std::round(ratio) < carbonFine && bed > 0.0; // what prints as 25 is what is wanted
    if (ratio < carbonLow || (below && bed < bedLow)) return 1.0;
    return ratio < carbonKept || (below && bed < bedKept) ? 0.5 : 0.0;
}

/// What is usually given, cover included, holds too little carbon. Between both thresholds the bed itself decides.
void lowCarbon(const StackReckoning& stack, const TrayEstimate& top, std::vector<Advice>& to)
{
    const double carbon = stack.forecast.usualCarbonKg;
    const double nitrogen = stack.forecast.usualNitrogenKg;
    const auto before = [batch = top.batch](const StackEstimate& day) -> std::optional<double> {
        const TrayEstimate* at = trayOfBatch(day, batch);
        return at != nullptr && day.ahead ? tooLittleCarbon(day.ahead->usualCarbonKg, day.ahead->usualNitrogenKg, at->cnRatio.p50) : std::nullopt;
    };
    const auto now = tooLittleCarbon(carbon, nitrogen, top.cnRatio.p50);
    if (!now || !stands(stack, before, {1.0, 0.0}, now)) return;
    const double ratio = carbon / nitrogen;
    const double paper = (carbonWanted * nitrogen - carbon) / (paperCarbon - carbonWanted * paperNitrogen) / paperDry;
    if (paper < leastPaperKg) return;
    // Paper is bulky: where a week's does not fit, room comes first.
    const double roomL = std::max(stack.record.trayHeightCm - rimCm - top.depthCm, 0.0) / 100.0 * stack.record.areaM2 * 1000.0;
    if (paper / paperBulk * 1000.0 > roomL) return;
    add(to, stack, Code::lowCarbon, Severity::hint, top.slot, stack.asOf,
        say(QT_TRANSLATE_NOOP("Advice", "Add %1 of shredded paper to each week's food")).arg(massText(paper)),
        say(QT_TRANSLATE_NOOP("Advice", "C:N of what was given in the last 8 weeks %1, of the bed %2; 25 to 35 is wanted")).arg(number(ratio, 0), number(top.cnRatio.p50, 0)));
    to.back().kg = paper;
}

}

bool getsTooLittle(const StackReckoning& stack)
{
    const double gap = std::max(1.0, stack.record.medianFeedGapDays);
    const double aWeek = usualFeedingKg(stack) * 7.0 / gap;
    if (aWeek <= 0.0 || aWeek >= halfWay * stack.forecast.feedLowKg || stack.forecast.feedLowKg >= stack.forecast.feedHighKg) return false;
    return stands(stack, [](const StackEstimate& day) -> std::optional<double> {
        if (day.ration == reckoning::Band{} || day.binTempC.p50 < tooColdToEat) return std::nullopt;
        if (mostSoftened(day) >= softenedEnough) return 0.0;
        return std::clamp((1.0 - day.ration.p50) / (1.0 - keptRation), 0.0, 1.0);
    }, {1.0, 0.0});
}

void rulesOfFood(const StackReckoning& stack, std::vector<Advice>& to)
{
    const TrayEstimate* top = trayToFeed(stack);
    if (top == nullptr) return;
    overfed(stack, *top, to);
    hungry(stack, to);
    lowCarbon(stack, *top, to);
}

}
