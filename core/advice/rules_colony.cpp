#include "core/advice/chance.h"
#include "core/advice/rules.h"
#include "core/advice/words.h"

#include <algorithm>

namespace tierloam::advice {

using reckoning::StackEstimate;
using reckoning::StackReckoning;

namespace {

constexpr double oneWorm = 1e-6;    ///< kg; less is no worm at all
constexpr struct { double least, most; } firstStock{0.11, 0.45}; ///< kg; common practice, no source
constexpr double someAgain = 0.008; ///< kg; raised below `fewWorms`
constexpr double collapsed = 0.1;   ///< of what it was …
constexpr int collapsesWithin = 60; ///< … within these days
constexpr int dwindlesWithin = 120; ///< days in which it comes to less than …
constexpr double dwindledTo = 0.5, dwindledNoMore = 0.6; ///< … of what it was. Half is ours
constexpr double suddenly = 0.75;   ///< of the day before: taken out or moved, which its keeper knows; a look moves the estimate by less
constexpr int seenLately = 14;      ///< days for which a look for worms says more than the estimate

bool wereSeen(const StackReckoning& stack) { return stack.record.lastWormLook && daysBetween(*stack.record.lastWormLook, stack.asOf) < seenLately; }

/// The greatest colony of the last days.
const StackEstimate* most(const StackReckoning& stack)
{
    const StackEstimate* found = nullptr;
    for (const StackEstimate& day : stack.history)
        if (daysBetween(day.day, stack.asOf) <= collapsesWithin && (found == nullptr || day.colonyKg.p50 > found->colonyKg.p50)) found = &day;
    return found;
}

/// Where frost or heat kills a quarter in a day, it is neither its keeper's hand nor a look.
bool kills(const StackEstimate& day) { return day.binTempC != reckoning::Band{} && (day.binTempC.p50 < coldBelow || day.binTempC.p50 > hotAbove); }

/// A tenth of what it was, and the bed was too cold or too hot since.
bool hasCollapsed(const StackReckoning& stack, const StackEstimate& before)
{
    if (stack.now.colonyKg.p50 >= collapsed * before.colonyKg.p50) return false;
    return std::any_of(stack.history.begin(), stack.history.end(), [&](const StackEstimate& day) {
        return day.day >= before.day && kills(day);
    });
}

/// The greatest colony of the days up to `last` from which it came down by and by.
const StackEstimate& cameDownFrom(const StackReckoning& stack, const StackEstimate& last)
{
    const StackEstimate* most = &last;
    const StackEstimate* later = &last;
    for (auto day = stack.history.rbegin(); day != stack.history.rend(); ++day) {
        if (day->day >= last.day) continue;
        if (daysBetween(day->day, last.day) > dwindlesWithin) break;
        if (later->colonyKg.p50 < suddenly * day->colonyKg.p50 && !kills(*later) && !kills(*day)) break;
        if (day->colonyKg.p50 > most->colonyKg.p50) most = &*day;
        later = &*day;
    }
    return *most;
}

/// By hunger, drought or age, without a day on which anything was the matter, or by cold or heat.
bool hasDwindled(const StackReckoning& stack)
{
    const auto gone = [&stack](const StackEstimate& day) -> std::optional<double> {
        const double before = cameDownFrom(stack, day).colonyKg.p50;
        if (before < someAgain) return std::nullopt;
        return std::clamp((dwindledNoMore - day.colonyKg.p50 / before) / (dwindledNoMore - dwindledTo), 0.0, 1.0);
    };
    return stands(stack, gone, {1.0, 0.0});
}

/// In half of the members not a single worm: none were ever written down, or all were moved, taken out or have died.
void wormsMissing(const StackReckoning& stack, std::vector<Advice>& to)
{
    if (oversizedOf(stack, reckoning::Oversized::What::worms) != nullptr) return; // that entry is told
    const bool ever = stack.record.lastStocked || std::any_of(stack.history.begin(), stack.history.end(), [](const auto& each) { return each.colonyKg.p50 >= oneWorm; });
    add(to, stack, Code::recordDisagrees, Severity::due, std::nullopt, stack.asOf,
        say(QT_TRANSLATE_NOOP("Advice", "Put worms in once the bedding has stood for a day, or write down how many are in it")),
        ever ? say(QT_TRANSLATE_NOOP("Advice", "none are left by what is known"))
             : say(QT_TRANSLATE_NOOP("Advice", "none are written down; %1 to %2 are usual for a first tray")).arg(massText(firstStock.least), massText(firstStock.most)));
    to.back().wormsMissing = true;
}

/// What is the matter is told where it is known; whether it is so at all, a minute's look.
void dwindling(const StackReckoning& stack, std::vector<Advice>& to)
{
    const reckoning::TrayEstimate* top = trayToFeed(stack);
    if (wereSeen(stack) || top == nullptr || !hasDwindled(stack)) return;
    const StackEstimate& before = cameDownFrom(stack, stack.now);
    QString why = say(QT_TRANSLATE_NOOP("Advice", "colony %1; on %2 it was %3")).arg(wording::massBand(stack.now.colonyKg), date(before.day, stack.asOf), massText(before.colonyKg.p50));
    if (stack.now.ration.p50 < 1.0) why = withMore(why, say(QT_TRANSLATE_NOOP("Advice", "they assimilate %1 of what they need")).arg(percent(stack.now.ration.p50)));
    add(to, stack, Code::lookNext, Severity::due, top->slot, stack.asOf, say(QT_TRANSLATE_NOOP("Advice", "See whether there are few, some or many worms: the colony dwindles")), why);
    to.back().look = reckoning::LookKind::wormsSeen;
}

/// A colony that froze, starved or was cooked dies by and by, and no day of it is one on which anything is due. A minute's look settles it.
void nearlyGone(const StackReckoning& stack, std::vector<Advice>& to)
{
    const StackEstimate* before = most(stack);
    const bool hardly = hasHardlyAWorm(stack);
    const bool fell = before != nullptr && hasCollapsed(stack, *before);
    if (!hardly && !fell) return dwindling(stack, to);
    QString why = say(QT_TRANSLATE_NOOP("Advice", "hardly any are left by what is known: colony %1")).arg(wording::massBand(stack.now.colonyKg));
    if (before != nullptr && before->colonyKg.p50 > stack.now.colonyKg.p50)
        why = withMore(why, say(QT_TRANSLATE_NOOP("Advice", "on %1 it was %2")).arg(date(before->day, stack.asOf), massText(before->colonyKg.p50)));
    const bool seen = wereSeen(stack);
    if (seen && !hardly) return;
    if (seen) {
        add(to, stack, Code::recordDisagrees, Severity::due, std::nullopt, stack.asOf, say(QT_TRANSLATE_NOOP("Advice", "Put worms in, or write down how many are in it; give no food until then")), why);
        to.back().wormsMissing = true;
    } else {
        const reckoning::TrayEstimate* top = trayToFeed(stack);
        add(to, stack, Code::lookNext, Severity::concern, top != nullptr ? std::optional{top->slot} : std::nullopt, stack.asOf,
            hardly ? say(QT_TRANSLATE_NOOP("Advice", "See whether there are few, some or many worms, and give no food until then")) : say(QT_TRANSLATE_NOOP("Advice", "See whether there are few, some or many worms")), why);
        to.back().look = reckoning::LookKind::wormsSeen;
    }
    if (hardly) to.back().food = Food::withhold;
}

}

QString dwindledText(const StackReckoning& stack)
{
    if (stack.now.colonyKg.p50 < oneWorm || wereSeen(stack) || !hasDwindled(stack)) return {};
    const StackEstimate& before = cameDownFrom(stack, stack.now);
    return say(QT_TRANSLATE_NOOP("Advice", "on %1 the colony was %2, now %3")).arg(date(before.day, stack.asOf), massText(before.colonyKg.p50), massText(stack.now.colonyKg.p50));
}

bool hasHardlyAWorm(const StackReckoning& stack)
{
    const auto few = [](const StackEstimate& day) { return std::optional{std::clamp((someAgain - day.colonyKg.p50) / (someAgain - fewWorms), 0.0, 1.0)}; };
    return stands(stack, few, {1.0, 0.0});
}

void rulesOfColony(const StackReckoning& stack, std::vector<Advice>& to)
{
    if (stack.now.colonyKg.p50 < oneWorm) wormsMissing(stack, to);
    else nearlyGone(stack, to);
}

}
