#include "core/advice/chance.h"
#include "core/advice/rules.h"
#include "core/advice/too_early.h"
#include "core/advice/words.h"
#include "core/model/measures.h"
#include "core/reckoning/outlook.h"
#include "core/reckoning/quantiles.h"

#include <algorithm>
#include <vector>

namespace tierloam::advice {

using reckoning::StackEstimate;
using reckoning::StackReckoning;
using reckoning::TrayEstimate;

namespace {

// Light-drying takes 2 to 7 days; common practice, no source.
constexpr double fewLeft = 0.05, notFew = 0.08; ///< of the worms that were in the tray when it was lifted
constexpr int leastDaysDrying = 2;
constexpr int mostDaysDrying = 10;
constexpr double unknownShare = 0.3;            ///< of the colony, where the day of lifting has no estimate
constexpr double liftedReady = 0.3;             ///< below it a tray was lifted too early
constexpr double liftedFine = 0.5;
constexpr int addedFor = 21;                    ///< days for which a tray added early can be made good
constexpr double beneathFilled = 0.5, beneathHardly = 0.3; ///< … and beneath a tray that was once filled by the medians

double shareAtStart(const StackReckoning& stack, int batch)
{
    if (!stack.record.dryingSince) return unknownShare;
    const StackEstimate* before = stack.on(*stack.record.dryingSince - std::chrono::days{1});
    const TrayEstimate* tray = before != nullptr ? trayOfBatch(*before, batch) : nullptr;
    return tray != nullptr && tray->wormShare.p50 > 0.0 ? tray->wormShare.p50 : unknownShare;
}

/// Share of the tray's worms that is left, by the medians.
double leftIn(const TrayEstimate& tray, double atStart) { return atStart > 0.0 ? std::min(tray.wormShare.p50 / atStart, 1.0) : 0.0; }

/// Raised below 5 % left, withdrawn above 8 %.
bool wormsHaveLeft(const StackReckoning& stack, const TrayEstimate& tray, double atStart)
{
    const auto chance = [&, batch = tray.batch](const StackEstimate& day) -> std::optional<double> {
        if (stack.record.dryingSince && day.day < *stack.record.dryingSince) return std::nullopt;
        const TrayEstimate* at = trayOfBatch(day, batch);
        if (at == nullptr) return std::nullopt;
        return std::clamp(1.0 - (leftIn(*at, atStart) - fewLeft) / (notFew - fewLeft) * 0.5, 0.0, 1.0);
    };
    return stands(stack, chance, {1.0, 0.5});
}

void drying(const StackReckoning& stack, const TrayEstimate& tray, bool early, std::vector<Advice>& to)
{
    const int since = stack.record.daysDrying;
    const double left = leftIn(tray, shareAtStart(stack, tray.batch));
    const QString reason = say(QT_TRANSLATE_NOOP("Advice", "in the light for %1; about %2 of its worms are left in it; moisture %3 %"))
                               .arg(days(since), percent(left), number(tray.moisturePct.p50, 0));
    if (since > mostDaysDrying) {
        add(to, stack, Code::dryingLong, Severity::concern, tray.slot, stack.asOf,
            early ? say(QT_TRANSLATE_NOOP("Advice", "Cover the tray and put the lid on: it was lifted early and dries out")) : say(QT_TRANSLATE_NOOP("Advice", "Take the castings, or put the lid on: the tray dries out")), reason);
    } else if (since >= leastDaysDrying && wormsHaveLeft(stack, tray, shareAtStart(stack, tray.batch))) {
        add(to, stack, Code::dryingDone, Severity::due, tray.slot, stack.asOf, say(QT_TRANSLATE_NOOP("Advice", "Take the castings: the worms have gone down")), reason);
    }
}

/// Lifted although hardly ready.
bool wasLiftedEarly(const StackReckoning& stack, const TrayEstimate& tray)
{
    const auto chance = [batch = tray.batch](const StackEstimate& day) -> std::optional<double> {
        const TrayEstimate* at = trayOfBatch(day, batch);
        return at != nullptr && at->state == reckoning::TrayState::drying ? std::optional{1.0 - at->readyProbability} : std::nullopt;
    };
    return stands(stack, chance, {1.0 - liftedReady, 1.0 - liftedFine});
}

/// Feeding or covering it makes it a working tray again.
void liftedEarly(const StackReckoning& stack, const TrayEstimate& tray, std::vector<Advice>& to)
{
    add(to, stack, Code::tooEarly, Severity::hint, tray.slot, stack.asOf, say(QT_TRANSLATE_NOOP("Advice", "Cover the lifted tray and let it work on: it was lifted early")),
        withMore(say(QT_TRANSLATE_NOOP("Advice", "feed-to-cast %1, ready %2")).arg(ratio(tray.feedToCast.p50), percent(tray.readyProbability)), rightAbout(tray.readyOn, stack.asOf)));
}

/// The chance that a tray is filled is at most the lesser of its two parts.
std::optional<double> filledChance(const TrayEstimate& tray)
{
    const auto deep = chanceAbove(tray.castingsDepthCm, model::filledDepth);
    const auto worked = chanceBelow(tray.feedToCast, model::filledRatio);
    return deep && worked ? std::optional{std::min(*deep, *worked)} : std::nullopt;
}

/// At least even chances of both.
bool isFilledByMedians(const TrayEstimate& tray) { return tray.castingsDepthCm.p50 >= model::filledDepth && tray.feedToCast.p50 <= model::filledRatio; }

/// The week's food no longer fitted when it was added: room is what it was for, however little worked the one beneath was.
bool wasAddedForRoom(const StackReckoning& stack, int beneath)
{
    const StackEstimate* before = stack.on(*stack.record.lastTrayAdded - std::chrono::days{1});
    if (before == nullptr || !before->ahead || !before->ahead->roomTopTrayFreshKg || trayOfBatch(*before, beneath) == nullptr) return false;
    return *before->ahead->roomTopTrayFreshKg < std::max(reckoning::leastWorthGiving, stack.forecast.feedUsualKg);
}

/// The tray beneath one that was added while it was not filled; nullptr: none was.
const TrayEstimate* beneathAnEarlyOne(const StackReckoning& stack)
{
    const auto& added = stack.record.lastTrayAdded;
    if (!added || daysBetween(*added, stack.asOf) > addedFor || stack.now.slots.size() < 2 || isDrying(stack)) return nullptr;
    const TrayEstimate& beneath = stack.now.slots[stack.now.slots.size() - 2];
    if (wasAddedForRoom(stack, beneath.batch)) return nullptr;
    // Where the medians say that it was filled, nobody is told that it was not: from then on it has to be clear, or it would come and go with each feeding.
    bool wasFilled = false;
    const auto chance = [&wasFilled, batch = beneath.batch](const StackEstimate& day) -> std::optional<double> {
        const TrayEstimate* at = trayOfBatch(day, batch);
        const auto filled = at != nullptr ? filledChance(*at) : std::nullopt;
        if (!filled) return std::nullopt;
        if (isFilledByMedians(*at)) wasFilled = true;
        else if (*filled < beneathHardly) wasFilled = false;
        return wasFilled ? 0.0 : 1.0;
    };
    return stands(stack, chance, {1.0, 0.0}) ? &beneath : nullptr;
}

/// Feed the one beneath for a while.
void addedEarly(const StackReckoning& stack, std::vector<Advice>& to)
{
    const TrayEstimate* found = beneathAnEarlyOne(stack);
    if (found == nullptr) return;
    const TrayEstimate& beneath = *found;
    add(to, stack, Code::tooEarly, Severity::hint, beneath.slot, stack.asOf, say(QT_TRANSLATE_NOOP("Advice", "Feed the tray beneath for now: the new one came early")),
        say(QT_TRANSLATE_NOOP("Advice", "the tray beneath holds %1 of castings of the %2 wanted, feed-to-cast %3 of at most 0.60; chance that it is filled %4, %5 wanted"))
            .arg(lengthText(castingsUnderTheRim(stack, beneath)), lengthText(model::filledDepth), ratio(beneath.feedToCast.p50), percent(filledChance(beneath).value_or(0.0)), percent(beneathFilled)));
    to.back().food = Food::give;
}

/// The later of two days of each end: no more than a bound, since members that are late with one need not be late with the other.
reckoning::Dates later(const reckoning::Dates& a, const reckoning::Dates& b)
{
    const auto of = [](const std::optional<Day>& x, const std::optional<Day>& y) { return x && y ? std::optional{std::max(*x, *y)} : std::nullopt; };
    return {of(a.p10, b.p10), of(a.p50, b.p50), of(a.p90, b.p90)};
}

/// When the bottom tray is ready and its turn has come: each member's later day of both. A reckoning read from estimates has no members; of it there is
/// the day before which it is not.
reckoning::Dates readyAndTurn(const StackReckoning& stack)
{
    const reckoning::Dates& ready = stack.now.slots.front().readyOn;
    if (stack.turnSince) return ready;
    const int top = stack.present ? stack.present->members.stack.topToFeed() : -1;
    if (top < 0) return {later(ready, stack.forecast.turnOn).p50, std::nullopt, std::nullopt};
    const auto& shapes = stack.present->members.stack.shapes;
    const auto& firsts = stack.present->base.firsts;
    std::vector<int> both = firsts.at(shapes.front().batch).ready;
    const std::vector<int>& filled = firsts.at(shapes[static_cast<std::size_t>(top)].batch).filled;
    for (std::size_t i = 0; i < both.size(); ++i) both[i] = std::max(both[i], filled[i]);
    return reckoning::dates(both, stack.present->members.shares(), stack.firstBedding, daysBetween(stack.firstBedding, stack.asOf) + reckoning::outlookDays);
}

std::optional<Advice> made(const StackReckoning& stack, std::optional<int> slot, const reckoning::Dates& dates, const QString& text, const QString& reason)
{
    std::vector<Advice> one;
    add(one, stack, Code::tooEarly, Severity::hint, slot, dates.p50 ? *dates.p50 : dates.p10.value_or(stack.asOf), text, withMore(reason, rightAbout(dates, stack.asOf)));
    return one.front();
}

/// While a tray dries no other is lifted and none is added: it takes up the light, and its worms go down into those that stand.
std::optional<Advice> whileOneDries(const StackReckoning& stack)
{
    if (!isDrying(stack)) return std::nullopt;
    const Day on = stack.asOf + std::chrono::days{reckoning::dryingEnds(0, stack.record.daysDrying)};
    return made(stack, stack.now.slots.back().slot, {on, on, on}, say(QT_TRANSLATE_NOOP("Advice", "A tray is in the light: take its castings first")),
                say(QT_TRANSLATE_NOOP("Advice", "in the light for %1")).arg(days(stack.record.daysDrying)));
}

std::optional<Advice> addTooEarly(const StackReckoning& stack)
{
    if (const auto dries = whileOneDries(stack)) return dries;
    const TrayEstimate* top = trayToFeed(stack);
    if (top == nullptr || stack.turnSince) return std::nullopt;
    return made(stack, top->slot, stack.forecast.turnOn, say(QT_TRANSLATE_NOOP("Advice", "Too early for another tray: the worms would be spread thin")),
                say(QT_TRANSLATE_NOOP("Advice", "the top tray holds %1 of castings of the %2 wanted, feed-to-cast %3 of at most 0.60, filled %4"))
                    .arg(lengthText(castingsUnderTheRim(stack, *top)), lengthText(model::filledDepth), ratio(top->feedToCast.p50), percent(stack.turnProbability)));
}

std::optional<Advice> liftTooEarly(const StackReckoning& stack)
{
    if (const auto dries = whileOneDries(stack)) return dries;
    const TrayEstimate& bottom = stack.now.slots.front();
    if (stack.readySince || bottom.state == reckoning::TrayState::ready || bottom.state == reckoning::TrayState::overdue) {
        if (stack.turnSince || stack.record.spareTrays > 0 || mayBeLifted(stack)) return std::nullopt;
        return made(stack, bottom.slot, stack.forecast.turnOn, say(QT_TRANSLATE_NOOP("Advice", "The tray is ready but its turn has not come: the colony would lose room")),
                    say(QT_TRANSLATE_NOOP("Advice", "feed-to-cast %1, ready %2; the top tray filled %3"))
                        .arg(ratio(bottom.feedToCast.p50), percent(bottom.readyProbability), percent(stack.turnProbability)));
    }
    if (bottom.feedToCast.p50 <= model::readyRatio)
        return made(stack, bottom.slot, readyAndTurn(stack),
                    say(QT_TRANSLATE_NOOP("Advice", "Too early to lift: that it is ready is not sure enough yet")),
                    say(QT_TRANSLATE_NOOP("Advice", "feed-to-cast %1, ready %2 of the 80 % that are asked for")).arg(ratio(bottom.feedToCast.p50), percent(bottom.readyProbability)));
    return made(stack, bottom.slot, readyAndTurn(stack),
                say(QT_TRANSLATE_NOOP("Advice", "Too early to lift: much of it is not castings yet")),
                say(QT_TRANSLATE_NOOP("Advice", "feed-to-cast %1 of at most 0.10, ready %2")).arg(ratio(bottom.feedToCast.p50), percent(bottom.readyProbability)));
}

std::optional<Advice> takeTooEarly(const StackReckoning& stack)
{
    if (!isDrying(stack)) {
        const TrayEstimate& bottom = stack.now.slots.front();
        if (stack.readySince || bottom.readyProbability >= 0.8) {
            if (stack.now.slots.size() < 2) return std::nullopt; // there is no tray beneath for them to go down into
            const Day on = stack.asOf + std::chrono::days{reckoning::usualDryingDays};
            return made(stack, bottom.slot, {on, on, on}, say(QT_TRANSLATE_NOOP("Advice", "Too early to take: many worms would go with the castings")),
                        say(QT_TRANSLATE_NOOP("Advice", "it was not in the light; about %1 of worms are in it, %2 of the colony")).arg(massText(bottom.wormShare.p50 * stack.now.colonyKg.p50), percent(bottom.wormShare.p50)));
        }
        return made(stack, bottom.slot, bottom.readyOn, say(QT_TRANSLATE_NOOP("Advice", "Too early to take: much of it is not castings yet")),
                    say(QT_TRANSLATE_NOOP("Advice", "feed-to-cast %1 of at most 0.10, ready %2")).arg(ratio(bottom.feedToCast.p50), percent(bottom.readyProbability)));
    }
    const TrayEstimate& tray = stack.now.slots.back();
    const double left = leftIn(tray, shareAtStart(stack, tray.batch));
    if (stack.record.daysDrying > mostDaysDrying || wormsHaveLeft(stack, tray, shareAtStart(stack, tray.batch))) return std::nullopt;
    // They leave at about 1/1.6 a day (core/model/process_moving.h); what is left falls to 5 % after so many days more.
    int more = std::max(leastDaysDrying - stack.record.daysDrying, 1);
    for (double then = left * 0.535; then > fewLeft && more < 14; then *= 0.535) ++more;
    const Day on = stack.asOf + std::chrono::days{more};
    return made(stack, tray.slot, {on, on, on}, say(QT_TRANSLATE_NOOP("Advice", "Too early to take: many worms would go with the castings")),
                say(QT_TRANSLATE_NOOP("Advice", "in the light for %1; about %2 of its worms are left in it")).arg(days(stack.record.daysDrying), percent(left)));
}

}

std::optional<Advice> tooEarly(const StackReckoning& stack, LifeStep step)
{
    if (stack.retired || stack.now.slots.empty()) return std::nullopt;
    switch (step) {
    case LifeStep::addTray: return addTooEarly(stack);
    case LifeStep::lift: return liftTooEarly(stack);
    case LifeStep::take: return takeTooEarly(stack);
    }
    return std::nullopt;
}

std::optional<int> slotForFood(const StackReckoning& stack)
{
    if (const TrayEstimate* beneath = beneathAnEarlyOne(stack)) return beneath->slot;
    const TrayEstimate* top = trayToFeed(stack);
    return top != nullptr ? std::optional{top->slot} : std::nullopt;
}

std::optional<LifeStep> stepDueToday(const StackReckoning& stack)
{
    for (const Advice& each : adviceFor(stack)) {
        if (each.on > stack.asOf) continue;
        switch (each.code) {
        case Code::addTray: return LifeStep::addTray;
        case Code::harvestReady:
        case Code::harvestOverdue: return each.slot == 1 ? LifeStep::lift : LifeStep::take;
        case Code::dryingDone:
        case Code::dryingLong: return LifeStep::take;
        default: break;
        }
    }
    return std::nullopt;
}

void rulesOfDrying(const StackReckoning& stack, std::vector<Advice>& to)
{
    if (isDrying(stack)) {
        const TrayEstimate& tray = stack.now.slots.back();
        const bool early = wasLiftedEarly(stack, tray);
        drying(stack, tray, early, to);
        if (early) liftedEarly(stack, tray, to);
    } else {
        addedEarly(stack, to);
    }
}

}
