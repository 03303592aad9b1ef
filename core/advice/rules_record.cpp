#include "core/advice/rules.h"
#include "core/advice/words.h"
#include "core/journal/action.h"

#include <cmath>

namespace tierloam::advice {

using reckoning::Disagreement;
using reckoning::LookKind;
using reckoning::StackReckoning;
using reckoning::UnwrittenGuess;

namespace {

constexpr int undoneWithin = 14;  ///< days
constexpr int disagreesFor = 60;  ///< days; later nobody can look again at what was read
constexpr int unwrittenFor = 183; ///< days for which the reckoning remembers who gave what
constexpr std::size_t daysNamed = 5;
constexpr double heapedOver = 1.25; ///< of the tray's height: no lid closes over it …
constexpr double atOnce = 0.5;      ///< … by an entry that fills half of a tray alone: a nought too many is likelier. Both ours
constexpr int setUpLately = 30;     ///< days after place or usual temperature were written down
constexpr int readAgainWithin = 21; ///< days between two readings of the bed: outdoors the season moves it by 3 K meanwhile
constexpr int silentAfter = 21;   ///< days without an entry …
constexpr double silentGaps = 3;  ///< … or so many usual gaps between feedings, whichever is longer; ours

/// What was read, as it begins a reason.
QString whatWasRead(LookKind kind)
{
    switch (kind) {
    case LookKind::depth: return say(QT_TRANSLATE_NOOP("Advice", "depth of castings"));
    case LookKind::bits: return say(QT_TRANSLATE_NOOP("Advice", "still recognisable"));
    case LookKind::left: return say(QT_TRANSLATE_NOOP("Advice", "left of the last feeding"));
    case LookKind::weigh: return say(QT_TRANSLATE_NOOP("Advice", "worms weighed"));
    case LookKind::count: return say(QT_TRANSLATE_NOOP("Advice", "worms counted"));
    case LookKind::wormsSeen: return say(QT_TRANSLATE_NOOP("Advice", "worms seen"));
    case LookKind::drain: return say(QT_TRANSLATE_NOOP("Advice", "drained"));
    case LookKind::drainPart: return say(QT_TRANSLATE_NOOP("Advice", "drained in part"));
    case LookKind::sumpLevel: return say(QT_TRANSLATE_NOOP("Advice", "standing in the sump"));
    case LookKind::conductivity: return say(QT_TRANSLATE_NOOP("Advice", "conductivity of the leachate"));
    case LookKind::trayWeight: return say(QT_TRANSLATE_NOOP("Advice", "weight of the tray"));
    case LookKind::moisture: return say(QT_TRANSLATE_NOOP("Advice", "moisture"));
    case LookKind::squeeze: return say(QT_TRANSLATE_NOOP("Advice", "squeezed in the hand"));
    case LookKind::bedTemperature: return say(QT_TRANSLATE_NOOP("Advice", "temperature of the bed"));
    case LookKind::harvestMass:
    case LookKind::harvestVolume: return say(QT_TRANSLATE_NOOP("Advice", "castings taken"));
    case LookKind::wormsTaken: return say(QT_TRANSLATE_NOOP("Advice", "worms taken out"));
    }
    return {};
}

QString wormsSeen(double value)
{
    if (value < 0.5) return say(QT_TRANSLATE_NOOP("Advice", "few"));
    return value < 1.5 ? say(QT_TRANSLATE_NOOP("Advice", "some")) : say(QT_TRANSLATE_NOOP("Advice", "many"));
}

/// A value of that kind with its unit. More digits than advice has elsewhere: what is written must be found again as it was written.
QString reading(LookKind kind, double value)
{
    const auto with = [](const char* unit, double read, int decimals) { return say(unit).arg(number(read, decimals)); };
    switch (kind) {
    case LookKind::depth: return lengthText(value);
    case LookKind::bits:
    case LookKind::left:
    case LookKind::moisture: return with(QT_TRANSLATE_NOOP("Advice", "%1 %"), value, 0);
    case LookKind::weigh:
    case LookKind::trayWeight:
    case LookKind::harvestMass:
    case LookKind::wormsTaken:
        return massRead(value);
    case LookKind::count: return wording::countText(value);
    case LookKind::wormsSeen: return wormsSeen(value);
    case LookKind::drain:
    case LookKind::drainPart:
    case LookKind::sumpLevel:
    case LookKind::harvestVolume: return wording::volumeRead(value);
    case LookKind::conductivity: return with(QT_TRANSLATE_NOOP("Advice", "%1 mS/cm"), value, 1);
    case LookKind::squeeze: return number(std::round(value) + 1.0, 0); // written down as 1 to 5
    case LookKind::bedTemperature: return wording::temperatureRead(value);
    }
    return {};
}

/// Of these the value says only that there was at least so much; too little is never odd.
bool saysAtLeast(LookKind kind) { return kind == LookKind::drainPart || kind == LookKind::wormsTaken; }

QString expectedText(const Disagreement& odd)
{
    const QString low = reading(odd.kind, odd.expected.p05);
    const QString high = reading(odd.kind, odd.expected.p95);
    if (saysAtLeast(odd.kind)) return say(QT_TRANSLATE_NOOP("Advice", "expected at most %1")).arg(high);
    return low == high ? say(QT_TRANSLATE_NOOP("Advice", "expected %1")).arg(low) : say(QT_TRANSLATE_NOOP("Advice", "expected %1 to %2")).arg(low, high);
}

/// A value that few members could explain can still lie in their range; of such a one nothing could be said that makes sense.
bool outside(const Disagreement& odd)
{
    return odd.value > odd.expected.p95 || (odd.value < odd.expected.p05 && !saysAtLeast(odd.kind));
}

/// One odd value draws the members to it, and then the next one that is right is odd to them: where that says what was expected before the first, the
/// first is the one that was wrong.
const Disagreement* atFault(const Disagreement& latest, const std::vector<Disagreement>& all)
{
    const auto first = std::find_if(all.begin(), all.end(), [&](const Disagreement& each) {
        return each.kind == latest.kind && each.batch == latest.batch && each.entry != latest.entry && each.day <= latest.day && daysBetween(each.day, latest.day) <= undoneWithin && outside(each)
            && latest.value >= each.expected.p05 && latest.value <= each.expected.p95;
    });
    return first == all.end() ? &latest : &*first;
}

/// A bed that was read too warm or too cold soon after place or usual temperature were written down, or twice on different days: then these are as
/// likely to be wrong as the thermometer. Readings of before they were last written say nothing of them. A second reading agrees with members that
/// have followed the first, so that the first counts as settled; it was far from what the set-up lets expect all the same.
const Disagreement* offTheSetUp(const StackReckoning& stack)
{
    const auto& record = stack.record;
    if (!record.lastBedRead || !record.bedReadUnder || daysBetween(*record.lastBedRead, stack.asOf) > disagreesFor) return nullptr;
    const Disagreement* told = nullptr;
    for (const auto* all : {&stack.settled, &stack.disagreements})
        for (const Disagreement& odd : *all) {
            if (odd.kind != LookKind::bedTemperature || !outside(odd) || odd.day < *record.bedReadUnder || odd.day > *record.lastBedRead) continue;
            const bool sameSide = odd.value > odd.expected.p95 ? record.bedReadC > odd.expected.p95 : record.bedReadC < odd.expected.p05;
            const int apart = daysBetween(odd.day, *record.lastBedRead);
            const bool soon = daysBetween(*record.bedReadUnder, odd.day) <= setUpLately;
            if (sameSide && apart <= readAgainWithin && (apart > 0 || soon) && (told == nullptr || told->day < odd.day)) told = &odd;
        }
    return told;
}

/// Said of place and usual temperature; true when it was.
bool setUp(const StackReckoning& stack, std::vector<Advice>& to)
{
    const Disagreement* odd = offTheSetUp(stack);
    if (odd == nullptr) return false;
    const Day again = *stack.record.lastBedRead;
    const QString why = say(QT_TRANSLATE_NOOP("Advice", "%1: %2; %3")).arg(whatWasRead(odd->kind), reading(odd->kind, odd->value), expectedText(*odd));
    add(to, stack, Code::recordDisagrees, Severity::hint, std::nullopt, stack.asOf,
        say(QT_TRANSLATE_NOOP("Advice", "Correct place or usual temperature in the set-up, or check the entry of %1")).arg(date(odd->day, stack.asOf)),
        again == odd->day ? why : say(QT_TRANSLATE_NOOP("Advice", "%1; read again on %2: %3")).arg(why, date(again, stack.asOf), reading(odd->kind, stack.record.bedReadC)));
    to.back().entry = odd->entry;
    to.back().ofTheSetUp = true;
    return true;
}

/// The latest alone: a later one was weighed by members that had taken the earlier in already.
void disagreement(const StackReckoning& stack, std::vector<Advice>& to, bool setUpTold)
{
    const auto& all = stack.disagreements;
    const auto last = std::find_if(all.rbegin(), all.rend(), outside);
    if (last == all.rend() || daysBetween(last->day, stack.asOf) > disagreesFor) return;
    const Disagreement* const latest = atFault(*last, all);
    if (setUpTold && latest->kind == LookKind::bedTemperature) return;
    // The same litres are told already, with what to do about them.
    const bool told = std::any_of(to.begin(), to.end(), [](const Advice& each) { return each.code == Code::drainageLow || each.code == Code::drainageHigh; });
    if (told && latest->kind == LookKind::drain) return;
    const QString what = latest->slot > 0 ? say(QT_TRANSLATE_NOOP("Advice", "%1 in slot %2")).arg(whatWasRead(latest->kind)).arg(latest->slot)
                                          : whatWasRead(latest->kind);
    add(to, stack, Code::recordDisagrees, Severity::hint, std::nullopt, stack.asOf,
        say(QT_TRANSLATE_NOOP("Advice", "Check the entry of %1, or look again")).arg(date(latest->day, stack.asOf)),
        say(QT_TRANSLATE_NOOP("Advice", "%1: %2; %3")).arg(what, reading(latest->kind, latest->value), expectedText(*latest)));
    to.back().entry = latest->entry;
}

/// What no tray holds and no colony's trays carry: all that is said of the stack rests on it.
void oversized(const StackReckoning& stack, std::vector<Advice>& to)
{
    using What = reckoning::Oversized::What;
    for (const What what : {What::matter, What::worms}) {
        const reckoning::Oversized* over = oversizedOf(stack, what);
        if (over == nullptr) continue;
        const QString why = what == What::matter
            ? say(QT_TRANSLATE_NOOP("Advice", "by it the tray in slot %1 is filled to %2, and it is %3 high")).arg(over->slot).arg(lengthText(over->comesTo), lengthText(stack.record.trayHeightCm))
            : say(QT_TRANSLATE_NOOP("Advice", "%1 of worms were put in; these trays carry %2 at most")).arg(massRead(over->comesTo), massText(over->most));
        add(to, stack, Code::recordDisagrees, Severity::concern, std::nullopt, stack.asOf,
            say(QT_TRANSLATE_NOOP("Advice", "Check the entry of %1: it may be a slip of the pen")).arg(date(over->day, stack.asOf)), why);
        to.back().entry = over->entry;
    }
}

QString daysText(const std::vector<Day>& days, Day today)
{
    if (days.size() > daysNamed) return say(QT_TRANSLATE_NOOP("Advice", "between %1 and %2")).arg(date(days.front(), today), date(days.back(), today));
    QStringList names;
    for (const Day day : days) names << date(day, today);
    return names.join(say(QT_TRANSLATE_NOOP("Advice", ", ")));
}

/// Of the last month that has any: what one remembers best. Written down, it goes and the month before comes up.
void unwritten(const StackReckoning& stack, std::vector<Advice>& to)
{
    if (stack.unwritten.empty()) return;
    const UnwrittenGuess& guess = stack.unwritten.back();
    if (guess.days.empty() || daysBetween(guess.to, stack.asOf) > unwrittenFor) return;
    std::vector<Day> days = guess.days;
    std::sort(days.begin(), days.end());
    const QString food = QString::fromStdString(guess.material.empty() ? std::string{journal::defaultFood} : guess.material);
    add(to, stack, Code::recordDisagrees, Severity::hint, std::nullopt, stack.asOf,
        QCoreApplication::translate("Advice", "About %n feeding(s) in %1 seem not to have been written down (%2)", nullptr, guess.feedings)
            .arg(month(guess.from, stack.asOf), percent(guess.probability)),
        say(QT_TRANSLATE_NOOP("Advice", "usual days without an entry: %1; usually %2 of %3")).arg(daysText(days, stack.asOf), massText(guess.kgEach), food));
    to.back().unwritten = UnwrittenFeeding{days.front(), guess.kgEach, guess.material};
}

/// A stack that nobody wrote about is known by the model alone.
void staleRecord(const StackReckoning& stack, std::vector<Advice>& to)
{
    if (!stack.record.lastEntry || isAway(stack.record, stack.asOf)) return;
    // Days away were told; silence counts from their end.
    Day last = *stack.record.lastEntry;
    if (stack.record.awayUntil && *stack.record.awayUntil <= stack.asOf) last = std::max(last, *stack.record.awayUntil);
    const int silent = daysBetween(last, stack.asOf);
    if (silent <= std::max(silentAfter, static_cast<int>(silentGaps * stack.record.medianFeedGapDays))) return;
    add(to, stack, Code::staleRecord, Severity::concern, std::nullopt, stack.asOf,
        say(QT_TRANSLATE_NOOP("Advice", "Write down what was done since, and look into the top tray")),
        say(QT_TRANSLATE_NOOP("Advice", "nothing written for %1; colony anywhere from %2 to %3"))
            .arg(days(silent), massText(stack.now.colonyKg.p05), massText(stack.now.colonyKg.p95)));
}

}

const reckoning::Oversized* oversizedOf(const StackReckoning& stack, reckoning::Oversized::What what)
{
    const auto& all = stack.oversized;
    const double high = stack.record.trayHeightCm;
    const auto told = std::find_if(all.rbegin(), all.rend(), [&](const reckoning::Oversized& each) {
        const bool far = what == reckoning::Oversized::What::worms || (each.comesTo > heapedOver * high && each.adds > atOnce * high);
        return each.what == what && far && daysBetween(each.day, stack.asOf) <= disagreesFor;
    });
    return told == all.rend() ? nullptr : &*told;
}

/// What of the record does not fit the rest of it. The estimates have weighed it already; only who kept the record can set it right.
void rulesOfRecord(const StackReckoning& stack, std::vector<Advice>& to)
{
    staleRecord(stack, to);
    oversized(stack, to);
    disagreement(stack, to, setUp(stack, to));
    unwritten(stack, to);
}

}
