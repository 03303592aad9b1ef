#include "core/advice/chance.h"
#include "core/advice/rules.h"
#include "core/advice/words.h"
#include "core/reckoning/next_look.h"
#include "core/reckoning/overdue.h"

#include <algorithm>

namespace tierloam::advice {

using reckoning::StackReckoning;
using reckoning::TrayEstimate;
using reckoning::TrayState;

namespace {

constexpr Thresholds soonAt{0.5, 0.3}; ///< of ready and turn within 14 days
// A new tray stands alone on top for at least 60 days; later harvests are 60 to 90 days apart: common practice, no source.
constexpr int leastDaysOnTop = 60;
constexpr double freshFoodLies = 0.6; ///< ready with no more than this: what would withdraw it, if it lasted
constexpr double hardlyAnyCm = 0.05; ///< under the rim; less is told as none
constexpr double leastOnTopCm = 1.25; ///< of castings, median: half of what fills a tray. Ours

/// What the evenings before foresaw is replayed, so that it does not come and go with each feeding.
bool comesSoon(const StackReckoning& stack)
{
    const auto chance = [](const reckoning::StackEstimate& day) { return day.ahead ? std::optional{day.ahead->readyAndTurnWithin14Days} : std::nullopt; };
    return stands(stack, chance, soonAt, stack.forecast.readyAndTurnWithin14Days);
}

QString howReady(const StackReckoning& stack, const TrayEstimate& bottom)
{
    const TrayEstimate* fed = trayToFeed(stack);
    const bool isReady = bottom.state == TrayState::ready || bottom.state == TrayState::overdue;
    // The tray that is fed stays ready for a week in which fresh food says otherwise.
    const bool untilEaten = isReady && fed != nullptr && fed->batch == bottom.batch && bottom.readyProbability <= freshFoodLies;
    return (untilEaten ? say(QT_TRANSLATE_NOOP("Advice", "feed-to-cast %1, ready %2 until the last food is eaten")) : say(QT_TRANSLATE_NOOP("Advice", "feed-to-cast %1, ready %2")))
        .arg(ratio(bottom.feedToCast.p50), percent(bottom.readyProbability));
}

/// "its turn for 12 days"; empty on its first day.
QString turnFor(int since) { return since > 0 ? say(QT_TRANSLATE_NOOP("Advice", "its turn for %1")).arg(days(since)) : QString{}; }

QString whyAdd(const StackReckoning& stack, const TrayEstimate& top)
{
    const bool heaped = top.castingsDepthCm.p50 > stack.record.trayHeightCm;
    const int since = daysBetween(*stack.turnSince, stack.asOf);
    QString why = heaped ? say(QT_TRANSLATE_NOOP("Advice", "by the record the top tray holds more castings than fit under its rim at %1: a new tray or a harvest may not be written down, or an entry is wrong; feed-to-cast %2"))
                               .arg(lengthText(stack.record.trayHeightCm), ratio(top.feedToCast.p50))
                         : say(QT_TRANSLATE_NOOP("Advice", "the top tray holds %1 of castings, feed-to-cast %2")).arg(lengthText(top.castingsDepthCm.p50), ratio(top.feedToCast.p50));
    why = withMore(why, turnFor(since));
    return !heaped && since >= reckoning::overdueAfter ? withMore(why, say(QT_TRANSLATE_NOOP("Advice", "if one was added since, write it down"))) : why;
}

QString onTop(const StackReckoning& stack, const TrayEstimate& top)
{
    return say(QT_TRANSLATE_NOOP("Advice", "the top tray has had %1 and holds %2 of castings")).arg(days(top.ageDays), lengthText(castingsUnderTheRim(stack, top)));
}

/// The journal lifts the bottom tray alone; of any other it takes the castings, and its worms with them unless they are picked out.
void takeBetween(const StackReckoning& stack, const TrayEstimate& tray, const TrayEstimate& bottom, std::vector<Advice>& to)
{
    add(to, stack, Code::harvestReady, Severity::due, tray.slot, stack.asOf, say(QT_TRANSLATE_NOOP("Advice", "Take the castings of the tray in slot %1 instead: the bottom one is not ready yet")).arg(tray.slot),
        say(QT_TRANSLATE_NOOP("Advice", "%1; the bottom tray %2; the turn has come for %3; about %4 of worms are in it: put them into the top tray and write them down as put in"))
            .arg(howReady(stack, tray), percent(bottom.readyProbability), days(daysBetween(*stack.turnSince, stack.asOf)), massText(tray.wormShare.p50 * stack.now.colonyKg.p50)));
}

/// Nothing but readiness is missing, and it has no day: a look decides, once a week.
void turnWaits(const StackReckoning& stack, const TrayEstimate& bottom, std::vector<Advice>& to)
{
    const bool alone = stack.now.slots.size() == 1;
    const bool looked = stack.record.lastLook && daysBetween(*stack.record.lastLook, stack.asOf) < reckoning::lookAgainAfter;
    const QString what = looked ? notReadyYet(stack)
                                : (alone ? say(QT_TRANSLATE_NOOP("Advice", "The only tray's turn has come: look for bits in it")) : say(QT_TRANSLATE_NOOP("Advice", "The bottom tray's turn has come: look for bits in it")));
    const int since = daysBetween(*stack.turnSince, stack.asOf);
    add(to, stack, Code::harvestSoon, Severity::hint, bottom.slot, stack.asOf, what,
        withMore(howReady(stack, bottom), turnFor(since)));
}

QString why(const StackReckoning& stack, const TrayEstimate& bottom)
{
    QStringList reasons{howReady(stack, bottom)};
    if (stack.turnSince && stack.readySince) {
        const int since = daysBetween(std::max(*stack.turnSince, *stack.readySince), stack.asOf);
        if (since > 0) reasons << turnFor(since);
    }
    const double now = stack.now.colonyKg.p50;
    const double then = stack.forecast.colonyMedianIn60DaysKg;
    const bool overdue = bottom.state == TrayState::overdue;
    const TrayEstimate* top = trayToFeed(stack);
    const double free = top != nullptr ? stack.record.trayHeightCm - top->depthCm : stack.record.trayHeightCm;
    const bool full = overdue && free <= reckoning::rimAgainCm;
    if (full) reasons << (free >= hardlyAnyCm ? say(QT_TRANSLATE_NOOP("Advice", "the top tray is filled to %1 under its rim")).arg(lengthText(free)) : say(QT_TRANSLATE_NOOP("Advice", "the top tray is filled to its rim")));
    const double bed = stack.now.binTempC.p50;
    const bool tooCold = stack.now.binTempC != reckoning::Band{} && bed < coldBelow;
    if (tooCold) reasons << say(QT_TRANSLATE_NOOP("Advice", "at %1 worms hardly leave the light: bring it in first, or wait until it is warmer")).arg(temperatureText(bed));
    const bool waitsLong = stack.turnSince && stack.readySince && daysBetween(std::max(*stack.turnSince, *stack.readySince), stack.asOf) >= reckoning::overdueAfter;
    if (now > 0.0 && !reckoning::wantsFood(stack) && !reckoning::isOutOfSeason(stack) && (then <= 0.85 * now || (overdue && !full && !waitsLong)))
        reasons << say(QT_TRANSLATE_NOOP("Advice", "left as it is, the colony falls from %1 to %2 in 60 days")).arg(massText(now), massText(then));
    return reasons.join(say(QT_TRANSLATE_NOOP("Advice", "; ")));
}

}

QString notReadyYet(const StackReckoning& stack)
{
    return stack.now.slots.size() == 1 ? say(QT_TRANSLATE_NOOP("Advice", "The only tray's turn has come, it is not ready yet")) : say(QT_TRANSLATE_NOOP("Advice", "The bottom tray's turn has come, it is not ready yet"));
}

const TrayEstimate* readyBetween(const StackReckoning& stack)
{
    const TrayEstimate* top = trayToFeed(stack);
    if (top == nullptr || isDrying(stack) || stack.record.spareTrays > 0 || !stack.turnSince || stack.readySince) return nullptr;
    for (const TrayEstimate& tray : stack.now.slots)
        if (tray.slot > 1 && tray.slot < top->slot && tray.state == TrayState::ready) return &tray;
    return nullptr;
}

bool mayBeLifted(const StackReckoning& stack)
{
    const TrayEstimate* top = trayToFeed(stack);
    if (top == nullptr || isDrying(stack) || stack.now.slots.size() < 2 || stack.record.spareTrays > 0 || !stack.readySince) return false;
    return top->ageDays >= leastDaysOnTop && top->castingsDepthCm.p50 >= leastOnTopCm;
}

/// The turn of a stack and what is to be done at it. With a spare tray it is add-tray; with none, the bottom tray is lifted when it is ready.
/// While one dries no other is lifted. Worms in the bottom tray are normal and never hold it back.
void rulesOfHarvest(const StackReckoning& stack, std::vector<Advice>& to)
{
    const TrayEstimate* top = trayToFeed(stack);
    if (top == nullptr || stack.now.slots.empty() || isDrying(stack)) return;
    const TrayEstimate& bottom = stack.now.slots.front();
    const bool spare = stack.record.spareTrays > 0;
    const bool ready = stack.readySince.has_value();
    const bool turn = stack.turnSince.has_value();
    const bool alone = stack.now.slots.size() == 1;

    const QString noHurry = alone ? say(QT_TRANSLATE_NOOP("Advice", "The only tray is ready, no hurry")) : say(QT_TRANSLATE_NOOP("Advice", "The bottom tray is ready, no hurry"));

    if (turn && spare) {
        add(to, stack, Code::addTray, Severity::due, std::nullopt, stack.asOf, say(QT_TRANSLATE_NOOP("Advice", "Add a tray on top")),
            whyAdd(stack, *top));
        if (ready)
            add(to, stack, Code::readyNoHurry, Severity::hint, bottom.slot, stack.asOf, noHurry, withMore(howReady(stack, bottom), say(QT_TRANSLATE_NOOP("Advice", "a spare tray is left"))));
        return;
    }
    const QString lift = alone ? say(QT_TRANSLATE_NOOP("Advice", "Take the castings of the only tray, and its worms back into new bedding"))
                               : say(QT_TRANSLATE_NOOP("Advice", "Lift the bottom tray to the top"));
    if (bottom.state == TrayState::overdue) {
        add(to, stack, Code::harvestOverdue, Severity::concern, bottom.slot, stack.asOf, lift, why(stack, bottom));
        if (alone) to.back().food = Food::withhold; // what is put in now would be taken out with them
    } else if (ready && turn) {
        add(to, stack, Code::harvestReady, Severity::due, bottom.slot, stack.asOf, lift, why(stack, bottom));
        if (alone) to.back().food = Food::withhold;
    } else if (const TrayEstimate* between = readyBetween(stack)) {
        takeBetween(stack, *between, bottom, to);
    } else if (turn && comesSoon(stack)) {
        turnWaits(stack, bottom, to);
    } else if (!spare && comesSoon(stack)) {
        const Day on = stack.forecast.turnLikelyOn.value_or(stack.asOf + std::chrono::days{14});
        // It may be lifted already: that its turn is near takes nothing back of it.
        const bool may = mayBeLifted(stack);
        add(to, stack, Code::harvestSoon, Severity::hint, bottom.slot, on,
            alone ? say(QT_TRANSLATE_NOOP("Advice", "The only tray can be emptied soon"))
            : may ? say(QT_TRANSLATE_NOOP("Advice", "The bottom tray is ready and its turn comes soon: lift it when you like"))
                  : say(QT_TRANSLATE_NOOP("Advice", "The bottom tray's turn comes soon")),
            withMore(withMore(howReady(stack, bottom), say(QT_TRANSLATE_NOOP("Advice", "ready and its turn within 14 days: %1")).arg(percent(stack.forecast.readyAndTurnWithin14Days))), may ? onTop(stack, *top) : QString{}));
    } else if (ready && mayBeLifted(stack)) {
        add(to, stack, Code::readyNoHurry, Severity::hint, bottom.slot, stack.asOf,
            say(QT_TRANSLATE_NOOP("Advice", "The bottom tray is ready: lift it when you like")),
            withMore(howReady(stack, bottom), onTop(stack, *top)));
    } else if (ready) {
        add(to, stack, Code::readyNoHurry, Severity::hint, bottom.slot, stack.asOf, noHurry,
            withMore(howReady(stack, bottom), turnAbout(stack.forecast.turnOn, stack.asOf)));
    }
}

}
