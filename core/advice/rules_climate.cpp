#include "core/advice/chance.h"
#include "core/advice/rules.h"
#include "core/advice/words.h"

#include <algorithm>

namespace tierloam::advice {

using reckoning::Band;
using reckoning::StackEstimate;
using reckoning::StackReckoning;

namespace {

// °C. Growth of Eisenia ends at 36 (34 to 39) and begins at 3 (0 to 5): Edwards 1988; Tripathi & Bhardwaj 2004; Loehr et al. 1985.
constexpr double deadlyAbove = 33.0;
constexpr double deadlyNoMore = 31.5; ///< urgent until the bed is below it
constexpr double deadlyBelow = 1.0;
constexpr double frostNoMore = 2.0; ///< urgent until the bed is above it
constexpr Thresholds at{0.5, 0.3};
constexpr int ahead = 14;            ///< days
constexpr int readingStands = 2;     ///< days in which what was read in the bed stands beside the estimate, which takes it in by and by
constexpr double heatsItself = 3.0;  ///< K above the room, from which its own food is the first thing to look at
constexpr double worthAWord = 0.5;   ///< K by its own heat
constexpr int lossSeen = 14;         ///< days back to which the colony is compared …
constexpr double lossWorthAWord = 0.9; ///< … when less than this is left

using ChanceOf = std::optional<double> (*)(const Band&);

struct Coming {
    double chance = 0;               ///< greatest of now and the days ahead
    Day on{};                        ///< first day on which it is reached, or today
    Band band;                       ///< of that day
};

struct BandOn { Day day{}; Band band; };

/// The chance on each day from one on, from weekly bands, and the first day on which it reaches the threshold.
Coming coming(Day today, const Band& now, const std::vector<BandOn>& weeks, ChanceOf chance)
{
    Coming best{chance(now).value_or(0.0), today, now};
    BandOn before{today, now};
    for (const BandOn& week : weeks) {
        if (daysBetween(today, week.day) > ahead) break;
        const int span = std::max(daysBetween(before.day, week.day), 1);
        for (int day = 1; day <= span && best.chance < at.raise; ++day) {
            const double share = static_cast<double>(day) / span;
            const auto between = [share](double a, double b) { return a + share * (b - a); };
            const Band band{between(before.band.p05, week.band.p05), between(before.band.p50, week.band.p50), between(before.band.p95, week.band.p95)};
            const double p = chance(band).value_or(0.0);
            if (p > best.chance) best = {p, before.day + std::chrono::days{day}, band};
        }
        before = week;
    }
    return best;
}

Coming coming(const StackReckoning& stack, ChanceOf chance)
{
    std::vector<BandOn> weeks;
    for (const StackEstimate& week : stack.forecast.days) weeks.push_back({week.day, week.binTempC});
    return coming(stack.asOf, stack.now.binTempC, weeks, chance);
}

QString bedText(const Band& band)
{
    return wording::temperatureBand(band);
}

/// The evenings before looked ahead likewise.
ChanceOn foreseen(ChanceOf chance)
{
    return [chance](const StackEstimate& day) -> std::optional<double> {
        if (day.binTempC == Band{}) return std::nullopt;
        if (!day.ahead) return chance(day.binTempC);
        return coming(day.day, day.binTempC, {{day.day + std::chrono::days{7}, day.ahead->bedIn7Days}, {day.day + std::chrono::days{14}, day.ahead->bedIn14Days}}, chance).chance;
    };
}

std::optional<double> hot(const Band& band) { return chanceAbove(band, hotAbove); }
std::optional<double> chilly(const Band& band) { return chanceBelow(band, coldBelow); }

/// What was read in the bed, if that was today or the days before.
std::optional<double> bedRead(const StackReckoning& stack)
{
    const auto& on = stack.record.lastBedRead;
    return on && daysBetween(*on, stack.asOf) <= readingStands ? std::optional{stack.record.bedReadC} : std::nullopt;
}

/// Of today as it was read: who has a thermometer in a hot bed is not told to check it.
Coming asRead(double read, Day today) { return {1.0, today, {read, read, read}}; }

/// At `from` or beyond today or on a day before, and not since on this side of `noMore`.
bool isDeadly(const StackReckoning& stack, double bedNow, double from, double noMore)
{
    const auto level = [=](double bed) { return std::clamp((bed - noMore) / (from - noMore), 0.0, 1.0); };
    const auto before = [&](const StackEstimate& day) -> std::optional<double> {
        if (day.binTempC == Band{}) return std::nullopt;
        return level(day.binTempC.p50);
    };
    return stands(stack, before, {1.0, 0.0}, level(bedNow));
}

/// "colony 240 g, two weeks ago 420 g", where it shrinks.
QString lossText(const StackReckoning& stack)
{
    const StackEstimate* then = stack.on(stack.asOf - std::chrono::days{lossSeen});
    if (then == nullptr || then->colonyKg.p50 < fewWorms || stack.now.colonyKg.p50 >= lossWorthAWord * then->colonyKg.p50) return {};
    return say(QT_TRANSLATE_NOOP("Advice", "colony %1, two weeks ago %2")).arg(massText(stack.now.colonyKg.p50), massText(then->colonyKg.p50));
}

void heat(const StackReckoning& stack, std::vector<Advice>& to)
{
    const std::optional<double> read = bedRead(stack);
    const bool readHot = read && *read > hotAbove;
    const Coming then = readHot ? asRead(*read, stack.asOf) : coming(stack, hot);
    if (!readHot && !stands(stack, foreseen(hot), at, then.chance)) return;
    const double bed = readHot ? *read : stack.now.binTempC.p50;
    const double own = stack.forecast.ownWarmthK;
    const bool itself = own >= heatsItself;
    const bool deadly = isDeadly(stack, bed, deadlyAbove, deadlyNoMore);
    const bool there = deadly || readHot || hot(stack.now.binTempC).value_or(0.0) >= at.raise;
    // Kept by its hysteresis, and no day ahead is likelier than today: the worst is over.
    const bool passing = !there && then.on == stack.asOf;
    const Severity severity = deadly ? Severity::urgent : there ? Severity::concern : passing ? Severity::hint : Severity::due;
    const QString what = itself ? say(QT_TRANSLATE_NOOP("Advice", "Stop feeding, spread the food thin and let air in: the bed heats itself"))
        : deadly                ? say(QT_TRANSLATE_NOOP("Advice", "Cool the stack now, and give no food until it is cooler: a cellar, or shade, the lid ajar and frozen bottles on the cover"))
        : there                 ? say(QT_TRANSLATE_NOOP("Advice", "Cool the stack: a cellar, or shade, the lid ajar and frozen bottles on the cover"))
        : passing               ? say(QT_TRANSLATE_NOOP("Advice", "Leave the stack in the cool until the bed is surely below %1")).arg(temperatureText(hotAbove))
                                : say(QT_TRANSLATE_NOOP("Advice", "Move the stack to a cooler place before it heats up: shade, floor, cellar"));
    QString why = then.on == stack.asOf
        ? say(QT_TRANSLATE_NOOP("Advice", "bed %1 now; above %2: %3")).arg(bedText(then.band), temperatureText(hotAbove), percent(then.chance))
        : say(QT_TRANSLATE_NOOP("Advice", "bed %1 now, %2 by %3; above %4: %5")).arg(bedText(stack.now.binTempC), bedText(then.band), when(then.on, stack.asOf), temperatureText(hotAbove), percent(then.chance));
    if (own >= worthAWord) why = withMore(why, say(QT_TRANSLATE_NOOP("Advice", "by its own heat %1 warmer")).arg(wording::warmerText(own)));
    why = withMore(why, lossText(stack));
    add(to, stack, Code::heat, severity, std::nullopt, then.on, what, why);
    if (itself || deadly) to.back().food = Food::withhold;
}

void cold(const StackReckoning& stack, std::vector<Advice>& to)
{
    const std::optional<double> read = bedRead(stack);
    const bool readCold = read && *read < coldBelow;
    const Coming then = readCold ? asRead(*read, stack.asOf) : coming(stack, chilly);
    if (!readCold && !stands(stack, foreseen(chilly), at, then.chance)) return;
    const double bed = readCold ? *read : stack.now.binTempC.p50;
    const Severity severity = isDeadly(stack, bed, deadlyBelow, frostNoMore) ? Severity::urgent : readCold || chilly(stack.now.binTempC).value_or(0.0) >= at.raise ? Severity::concern : Severity::due;
    QString why = then.on == stack.asOf
        ? say(QT_TRANSLATE_NOOP("Advice", "bed %1 now; below %2: %3")).arg(bedText(then.band), temperatureText(coldBelow), percent(then.chance))
        : say(QT_TRANSLATE_NOOP("Advice", "bed %1 now, %2 by %3; below %4: %5"))
              .arg(bedText(stack.now.binTempC), bedText(then.band), when(then.on, stack.asOf), temperatureText(coldBelow), percent(then.chance));
    why = withMore(why, lossText(stack));
    add(to, stack, Code::cold, severity, std::nullopt, then.on,
        say(QT_TRANSLATE_NOOP("Advice", "Bring the stack in or wrap it, and feed no more until it is warmer. A heater only if it is rated for the place and stands away from "
                                        "water: local electrical code and a licensed electrician first")), why);
    to.back().food = Food::withhold;
}

}

/// Told before it comes, from readings, season and the bed's own heat.
void rulesOfClimate(const StackReckoning& stack, std::vector<Advice>& to)
{
    heat(stack, to);
    cold(stack, to);
}

}
