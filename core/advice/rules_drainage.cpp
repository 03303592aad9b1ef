#include "core/advice/chance.h"
#include "core/advice/rules.h"
#include "core/advice/words.h"
#include "core/reckoning/drained.h"
#include "core/wording/volumes.h"

#include <algorithm>

namespace tierloam::advice {

using reckoning::StackReckoning;

namespace {

constexpr int fullWithinDays = 7;
constexpr int keptFullWithinDays = 10; ///< once raised, it stays until the date is further off than this
constexpr int lookWithinDays = 14;     ///< one of ten members has it full within these: a look is worth its minute
constexpr int keptLookWithinDays = 18; ///< once raised
constexpr int closeDays = 7;           ///< from the early to the late end of the date: so close it is told without a look
constexpr int lookAgainAfter = 5;      ///< days for which a look holds
constexpr int vagueDays = 18;          ///< from the early to the late end of a date that is none: another look tells the flow
constexpr int fewerMembers = 3;        ///< days by which the range of an evening before, of 128 members, may be wider than that which was told then
constexpr double fullShare = 0.97;      ///< of what the sump holds: to an eye it is full
constexpr int drainsHold = 60;         ///< days for which what was drained last says something

/// What is done to empty it: those who flush are told to flush.
QString emptying(const StackReckoning& stack, const char* drain, const char* flush)
{
    const auto& record = stack.record;
    return say(record.lastFlush && record.lastFlush == record.lastDrain ? flush : drain);
}

/// Whether it is likely to be full within a week, raised on one of the evenings before and not since withdrawn, or today.
bool isForeseen(const StackReckoning& stack)
{
    const auto near = [](const std::optional<Day>& on, Day then) { return nearness(on, then, fullWithinDays, keptFullWithinDays); };
    const auto before = [&](const reckoning::StackEstimate& day) { return day.ahead ? near(day.ahead->sumpFullOn.p50, day.day) : std::nullopt; };
    return stands(stack, before, {1.0, 0.0}, near(stack.forecast.sumpFullOn.p50, stack.asOf).value_or(0.0));
}

/// The last of two drains that both lie on that side of what was expected, and are recent.
const reckoning::DrainCheck* twice(const StackReckoning& stack, reckoning::Drained side)
{
    const auto& drains = stack.drains;
    if (drains.size() < 2 || daysBetween(drains.back().day, stack.asOf) > drainsHold) return nullptr;
    return reckoning::drainedTwice(drains[drains.size() - 2], drains.back(), stack.record) == side ? &drains.back() : nullptr;
}

QString drainedText(const StackReckoning& stack, const reckoning::DrainCheck& last)
{
    const reckoning::DrainCheck& before = stack.drains[stack.drains.size() - 2];
    const wording::OneVolumeUnit alike{std::max({last.litres, last.expected.p95, before.litres, before.expected.p95})};
    return say(QT_TRANSLATE_NOOP("Advice", "%1: %2 drained, %3 to %4 expected; %5: %6, %7 to %8 expected"))
        .arg(date(last.day, stack.asOf), volumeText(last.litres), volumeText(last.expected.p05), volumeText(last.expected.p95), date(before.day, stack.asOf),
             volumeText(before.litres), volumeText(before.expected.p05), volumeText(before.expected.p95));
}

void drainageLow(const StackReckoning& stack, std::vector<Advice>& to)
{
    const reckoning::DrainCheck* last = twice(stack, reckoning::Drained::less);
    if (last == nullptr) return;
    add(to, stack, Code::drainageLow, Severity::concern, std::nullopt, stack.asOf,
        say(QT_TRANSLATE_NOOP("Advice", "See whether the spigot or the holes of the trays are blocked, and whether the bed is dry")), drainedText(stack, *last));
}

void drainageHigh(const StackReckoning& stack, std::vector<Advice>& to)
{
    if (const reckoning::DrainCheck* last = twice(stack, reckoning::Drained::more)) {
        add(to, stack, Code::drainageHigh, Severity::due, std::nullopt, stack.asOf,
            say(QT_TRANSLATE_NOOP("Advice", "Water less, or write down what is poured: more runs out than went in")), drainedText(stack, *last));
        return;
    }
    // Only where somebody waters; wet food alone is no over-watering.
    const double area = std::max(stack.record.areaM2, 0.01);
    const double expected = stack.forecast.drainedExpectedLPerWeek.p50;
    const auto much = [area](const reckoning::Band& drained) { return std::clamp((drained.p50 / area - muchLessPerM2) / (muchPerM2 - muchLessPerM2), 0.0, 1.0); };
    const auto before = [&](const reckoning::StackEstimate& day) { return day.ahead ? std::optional{much(day.ahead->drainedLPerWeek)} : std::nullopt; };
    // Of what is flushed through on purpose nothing is said: water poured has to be the greater part.
    if (stack.record.waterLPerWeek < 0.5 * expected || !stands(stack, before, {1.0, 0.0}, much(stack.forecast.drainedExpectedLPerWeek))) return;
    const wording::OneVolumeUnit alike{std::max(expected, stack.record.waterLPerWeek)};
    add(to, stack, Code::drainageHigh, Severity::hint, std::nullopt, stack.asOf, say(QT_TRANSLATE_NOOP("Advice", "Water less: much runs through")),
        say(QT_TRANSLATE_NOOP("Advice", "%1 a week runs into the sump; %2 a week are poured")).arg(volumeText(expected), volumeText(stack.record.waterLPerWeek)));
}

void sumpFull(const StackReckoning& stack, std::vector<Advice>& to);

}

/// A shut spigot fills the sump; an open one is watched by what ran off.
void rulesOfDrainage(const StackReckoning& stack, std::vector<Advice>& to)
{
    sumpFull(stack, to);
    drainageLow(stack, to);
    drainageHigh(stack, to);
}

namespace {

/// When the level was last known: looked at, or emptied. Right after either the flow is no better known than before.
std::optional<Day> levelKnownOn(const reckoning::Record& record)
{
    return std::max(record.lastSumpLook, record.lastDrain);
}

/// What runs off in a week is known to a factor of two before it has been measured, and a sump takes two months to fill. So one looks before the
/// day that could be, not on the one that is likely; the level since the last drain tells the flow, and the day is told to within a few.
bool isLookDue(const StackReckoning& stack)
{
    const reckoning::Dates& on = stack.forecast.sumpFullOn;
    const auto near = [](const std::optional<Day>& day, Day then) { return nearness(day, then, lookWithinDays, keptLookWithinDays); };
    const auto before = [&](const reckoning::StackEstimate& day) { return day.ahead ? near(day.ahead->sumpFullOn.p10, day.day) : std::nullopt; };
    if (!on.p10 || !stands(stack, before, {1.0, 0.0}, near(on.p10, stack.asOf).value_or(0.0))) return false;
    const std::optional<Day> looked = levelKnownOn(stack.record);
    const bool told = on.p90 && daysBetween(*on.p10, *on.p90) <= closeDays;
    return !told && (!looked || daysBetween(*looked, stack.asOf) >= lookAgainAfter);
}

bool isFull(const StackReckoning& stack, const reckoning::Band& level)
{
    return stack.record.sumpCapacityL > 0.0 && level.p50 >= fullShare * stack.record.sumpCapacityL;
}

/// That it is full already, while the median is not: one in ten where the early end of the date has come, and less than even chances.
double chanceFullAlready(const StackReckoning& stack)
{
    return std::clamp(chanceAbove(stack.now.sumpL, fullShare * stack.record.sumpCapacityL).value_or(0.0), 0.10, 0.49);
}

QString whyLook(const StackReckoning& stack)
{
    const reckoning::Dates& on = stack.forecast.sumpFullOn;
    const wording::OneVolumeUnit alike{stack.record.sumpCapacityL};
    const QString low = volumeText(stack.now.sumpL.p05), high = volumeText(stack.now.sumpL.p95), capacity = volumeText(stack.record.sumpCapacityL);
    if (isFull(stack, stack.now.sumpL) || (on.p50 && *on.p50 <= stack.asOf))
        return say(QT_TRANSLATE_NOOP("Advice", "by the estimate %1 to %2 of %3 stand in it; it is likely to be full already; if so, empty it, else the level tells the day")).arg(low, high, capacity);
    if (*on.p10 <= stack.asOf)
        return say(QT_TRANSLATE_NOOP("Advice", "by the estimate %1 to %2 of %3 stand in it; it may be full already (chance %4); if so, empty it, else the level tells the day"))
            .arg(low, high, capacity, percent(chanceFullAlready(stack)));
    return say(QT_TRANSLATE_NOOP("Advice", "by the estimate %1 to %2 of %3 stand in it; with one chance in ten it is full by %4; if that is near, empty it, else the level tells the day"))
        .arg(low, high, capacity, when(*on.p10, stack.asOf));
}

void lookAtTheSump(const StackReckoning& stack, Severity severity, std::vector<Advice>& to)
{
    add(to, stack, Code::sumpFull, severity, std::nullopt, stack.asOf, say(QT_TRANSLATE_NOOP("Advice", "See how full the sump is")), whyLook(stack));
    to.back().look = reckoning::LookKind::sumpLevel;
}

/// The level is known of a look, and not what runs into it: the date could be any in weeks. A second look is asked for when the first no longer holds.
bool isVague(const StackReckoning& stack)
{
    const reckoning::Dates& on = stack.forecast.sumpFullOn;
    return levelKnownOn(stack.record) && on.p10 && on.p50 && *on.p50 > stack.asOf && (!on.p90 || daysBetween(*on.p10, *on.p90) > vagueDays);
}

/// Whether to empty it was told on one of the evenings since the last drain, or is today: that stands until it is done or the sump is clearly not full. The
/// range of the date wanders about the days at which a look is due, and what is told would with it.
bool isDrainTold(const StackReckoning& stack)
{
    const std::optional<Day> known = levelKnownOn(stack.record);
    const auto told = [&](const reckoning::Dates& on, const reckoning::Band& level, Day then, int slack) -> std::optional<double> {
        if (stack.record.lastDrain && then < *stack.record.lastDrain) return std::nullopt;
        const double near = isFull(stack, level) ? 1.0 : nearness(on.p50, then, fullWithinDays, keptFullWithinDays).value_or(0.0);
        const std::optional<int> range = on.p10 && on.p90 ? std::optional{daysBetween(*on.p10, *on.p90)} : std::nullopt;
        const bool lookHolds = known && *known <= then && daysBetween(*known, then) < lookAgainAfter;
        const bool certain = range && (*range <= closeDays + slack || (lookHolds && *range <= vagueDays + slack));
        return near >= 1.0 && !certain ? 0.5 : near; // kept and not raised
    };
    const auto before = [&](const reckoning::StackEstimate& day) { return day.ahead ? told(day.ahead->sumpFullOn, day.sumpL, day.day, fewerMembers) : std::nullopt; };
    return stands(stack, before, {1.0, 0.0}, told(stack.forecast.sumpFullOn, stack.now.sumpL, stack.asOf, 0));
}

/// A full sump runs over on the floor.
void sumpFull(const StackReckoning& stack, std::vector<Advice>& to)
{
    if (!stack.record.spigotShut) return;
    const double capacity = stack.record.sumpCapacityL;
    const double level = stack.now.sumpL.p50;
    const bool fullNow = isFull(stack, stack.now.sumpL);
    const reckoning::Dates& on = stack.forecast.sumpFullOn;
    const bool likely = fullNow || isForeseen(stack);
    const bool drain = likely && isDrainTold(stack);
    if (!drain && isLookDue(stack)) {
        lookAtTheSump(stack, fullNow ? Severity::urgent : likely ? Severity::due : Severity::hint, to);
        return;
    }
    if (!likely) return;
    if (!drain && !fullNow && isVague(stack)) {
        lookAtTheSump(stack, Severity::due, to);
        to.back().on = std::max(stack.asOf, *levelKnownOn(stack.record) + std::chrono::days{lookAgainAfter});
        return;
    }
    const wording::OneVolumeUnit alike{capacity};
    const QString amount = say(QT_TRANSLATE_NOOP("Advice", "%1 of %2")).arg(volumeText(level), volumeText(capacity));
    if (fullNow) {
        add(to, stack, Code::sumpFull, Severity::urgent, std::nullopt, stack.asOf, emptying(stack, QT_TRANSLATE_NOOP("Advice", "Drain the sump: it runs over"), QT_TRANSLATE_NOOP("Advice", "Flush the sump: it runs over")),
            withMore(amount, say(QT_TRANSLATE_NOOP("Advice", "what comes now runs on the floor"))));
        return;
    }
    add(to, stack, Code::sumpFull, Severity::due, std::nullopt, stack.asOf, emptying(stack, QT_TRANSLATE_NOOP("Advice", "Drain the sump"), QT_TRANSLATE_NOOP("Advice", "Flush the sump")),
        withMore(amount, say(QT_TRANSLATE_NOOP("Advice", "full %1")).arg(whenRange(on, stack.asOf))));
}

}

}
