#include "core/advice/chance.h"
#include "core/advice/rules.h"
#include "core/advice/words.h"
#include "core/model/measures.h"
#include "core/reckoning/next_look.h"

#include <algorithm>
#include <cmath>

/// The one look that is worth most today, at most one a week, with the days by which it narrows a date for the minute of work.
namespace tierloam::advice {

using reckoning::LookChoice;
using reckoning::LookKind;
using reckoning::StackReckoning;
using reckoning::TrayEstimate;

namespace {

constexpr int turnAhead = 14;        ///< days before its turn from which a look at the bottom tray is worth a word
constexpr int turnInDoubt = 7;       ///< half of the members have the turn within these days, and it is not raised …
constexpr int turnKeptInDoubt = 10;  ///< … and so until it is further off
constexpr double worthADay = 14.0;   ///< days that such a look has to save
constexpr double clearlyBetter = 1.5; ///< for the minute, than the look that was told
constexpr double leastSaved = 3.0;   ///< days that a look at the turn has to save
constexpr double leastWorth = 0.001; ///< of a look of which no gain is known
constexpr int dateMatters = 120;     ///< days to go at most, by the median, for which a closer date is worth a look

bool within(const std::optional<Day>& day, const StackReckoning& stack, int days) { return day && daysBetween(stack.asOf, *day) <= days; }

/// Width in days of the 80 % range, the horizon where its end lies beyond it, and what a cut of the variance takes off it.
double daysSaved(const reckoning::Dates& dates, Day today, double cut)
{
    const int from = dates.p10 ? std::max(daysBetween(today, *dates.p10), 0) : reckoning::outlookDays;
    const int to = dates.p90 ? daysBetween(today, *dates.p90) : reckoning::outlookDays;
    return std::max(to - from, 0) * (1.0 - std::sqrt(1.0 - std::clamp(cut, 0.0, 1.0)));
}

/// What is not so today is so tomorrow at the earliest.
reckoning::Dates fromToday(const reckoning::Dates& dates, Day today)
{
    const auto later = [today](const std::optional<Day>& day) { return day ? std::optional{std::max(*day, today + std::chrono::days{1})} : std::nullopt; };
    return {later(dates.p10), later(dates.p50), later(dates.p90)};
}

/// "it narrows the date (3 May to 20 June) by about 12 days for 2 minutes: 6 days a minute"
QString worth(const reckoning::Dates& dates, const StackReckoning& stack, double cut, double minutes)
{
    const double saved = daysSaved(dates, stack.asOf, cut);
    if (saved < 0.5) return say(QT_TRANSLATE_NOOP("Advice", "it narrows the date by less than a day for %1 min of work")).arg(number(minutes, 0));
    const double perMinute = saved / minutes;
    if (dates.p50 && *dates.p50 <= stack.asOf) // it may be so already
        return say(QT_TRANSLATE_NOOP("Advice", "it narrows the date by about %1 for %2 min of work, %3 days a minute"))
            .arg(days(std::max(static_cast<int>(std::lround(saved)), 1)), number(minutes, 0), number(perMinute, perMinute < 3.0 ? 1 : 0));
    return say(QT_TRANSLATE_NOOP("Advice", "it narrows the date, %1, by about %2 for %3 min of work, %4 days a minute"))
        .arg(whenRange(fromToday(dates, stack.asOf), stack.asOf), days(std::max(static_cast<int>(std::lround(saved)), 1)), number(minutes, 0), number(perMinute, perMinute < 3.0 ? 1 : 0));
}

double perMinute(const reckoning::Dates& dates, const StackReckoning& stack, const LookChoice& look) { return daysSaved(dates, stack.asOf, look.cut) / std::max(look.minutes, 0.5); }

const LookChoice* choiceOf(const StackReckoning& stack, LookKind kind, int slot)
{
    const auto found = std::find_if(stack.nextLooks.begin(), stack.nextLooks.end(), [&](const LookChoice& each) { return each.kind == kind && each.slot == slot; });
    return found == stack.nextLooks.end() ? nullptr : &*found;
}

void addLook(std::vector<Advice>& to, const StackReckoning& stack, LookKind kind, std::optional<int> slot, const QString& what, const QString& why, double worth)
{
    add(to, stack, Code::lookNext, Severity::hint, slot, stack.asOf, what, why);
    to.back().look = kind;
    to.back().worth = std::max(worth, leastWorth);
}

/// "fewer than 1 in 8 bits …: lift it today", or in per cent where that says more.
QString liftIfFewerThan(double bitsPercent)
{
    if (bitsPercent < 4.0) return say(QT_TRANSLATE_NOOP("Advice", "fewer than %1 % bits of food or bedding: lift it today")).arg(number(bitsPercent, 0));
    return say(QT_TRANSLATE_NOOP("Advice", "fewer than 1 in %1 bits of food or bedding: lift it today")).arg(number(std::round(100.0 / bitsPercent), 0));
}

/// When the turn comes and a look could settle whether the bottom tray is ready: what to look for, and what follows from either outcome.
bool bitsOfTheBottom(const StackReckoning& stack, std::vector<Advice>& to)
{
    const TrayEstimate& bottom = stack.now.slots.front();
    if (!stack.bitsRule || stack.readySince || stack.record.spareTrays > 0 || stack.now.slots.size() < 2) return false;
    if (!stack.turnSince && !within(stack.forecast.turnLikelyOn, stack, turnAhead)) return false;
    const auto& otherwise = stack.bitsRule->otherwise;
    const QString wait = otherwise && daysBetween(stack.asOf, *otherwise) <= reckoning::lookAgainAfter ? say(QT_TRANSLATE_NOOP("Advice", "else wait and look again in a week"))
        : otherwise                       ? say(QT_TRANSLATE_NOOP("Advice", "else wait until about %1")).arg(date(*otherwise, stack.asOf))
                                          : say(QT_TRANSLATE_NOOP("Advice", "else wait and look again in a month"));
    QString rule = withMore(liftIfFewerThan(stack.bitsRule->fewerThanPercent), wait);
    const LookChoice* bits = choiceOf(stack, LookKind::bits, bottom.slot);
    if (bits != nullptr && daysSaved(bottom.readyOn, stack.asOf, bits->cut) < leastSaved) return false;
    if (bits != nullptr) rule = withMore(rule, worth(bottom.readyOn, stack, bits->cut, bits->minutes));
    addLook(to, stack, LookKind::bits, bottom.slot, say(QT_TRANSLATE_NOOP("Advice", "Look for bits in the bottom tray")), rule, bits != nullptr ? perMinute(bottom.readyOn, stack, *bits) : 0.0);
    to.back().forTurn = true;
    return true;
}

/// Half of what is possible says that the top tray is filled, and the rest not: its depth of castings parts them best.
bool depthOfTheTop(const StackReckoning& stack, const TrayEstimate& top, std::vector<Advice>& to)
{
    const auto near = [](const std::optional<Day>& turn, Day then) { return nearness(turn, then, turnInDoubt, turnKeptInDoubt); };
    const auto before = [&](const reckoning::StackEstimate& day) { return day.ahead ? near(day.ahead->turnLikelyOn, day.day) : std::nullopt; };
    if (stack.turnSince || !stands(stack, before, {1.0, 0.0}, near(stack.forecast.turnLikelyOn, stack.asOf).value_or(0.0))) return false;
    if (stack.record.spareTrays <= 0 && !stack.readySince) return false;
    // Deep enough beyond doubt, where food alone is what is in question: a ruler tells nothing of it.
    if (stack.turnLook && daysSaved(stack.forecast.turnOn, stack.asOf, stack.turnLook->cut) < leastSaved) return false;
    QString why = say(QT_TRANSLATE_NOOP("Advice", "filled: %1; castings by the estimate %2, %3 wanted; with more than that, the turn has come; with less, go on as before and look again in a week"))
                      .arg(percent(stack.turnProbability), wording::lengthBand(top.castingsDepthCm), lengthText(model::filledDepth));
    if (stack.turnLook) why = withMore(why, worth(stack.forecast.turnOn, stack, stack.turnLook->cut, stack.turnLook->minutes));
    addLook(to, stack, LookKind::depth, top.slot, say(QT_TRANSLATE_NOOP("Advice", "Measure how deep the castings lie in the top tray")), why, stack.turnLook ? perMinute(stack.forecast.turnOn, stack, *stack.turnLook) : 0.0);
    to.back().forTurn = true;
    return true;
}

QString lookWords(LookKind kind, bool bottom)
{
    switch (kind) {
    case LookKind::depth: return bottom ? say(QT_TRANSLATE_NOOP("Advice", "Measure how deep the castings lie in the bottom tray")) : say(QT_TRANSLATE_NOOP("Advice", "Measure how deep the castings lie in this tray"));
    case LookKind::bits: return bottom ? say(QT_TRANSLATE_NOOP("Advice", "Look for bits in the bottom tray")) : say(QT_TRANSLATE_NOOP("Advice", "Look for bits in this tray"));
    case LookKind::left: return say(QT_TRANSLATE_NOOP("Advice", "See how much of the last feeding is left"));
    case LookKind::wormsSeen: return say(QT_TRANSLATE_NOOP("Advice", "See whether there are few, some or many worms"));
    case LookKind::weigh: return say(QT_TRANSLATE_NOOP("Advice", "Weigh the worms of a part of the bed"));
    case LookKind::count: return say(QT_TRANSLATE_NOOP("Advice", "Count the worms in a measured part of the bed"));
    case LookKind::trayWeight: return bottom ? say(QT_TRANSLATE_NOOP("Advice", "Weigh the bottom tray")) : say(QT_TRANSLATE_NOOP("Advice", "Weigh this tray"));
    case LookKind::moisture: return say(QT_TRANSLATE_NOOP("Advice", "Measure the moisture of the bed"));
    case LookKind::squeeze: return say(QT_TRANSLATE_NOOP("Advice", "Squeeze a handful of the bed"));
    case LookKind::bedTemperature: return say(QT_TRANSLATE_NOOP("Advice", "Read the temperature of the bed"));
    case LookKind::drain: return say(QT_TRANSLATE_NOOP("Advice", "Drain the sump into a measure"));
    default: return {};
    }
}

/// The look to tell of those that could be taken: the one told before, unless another is clearly better by now or it is no longer worth a word.
const LookChoice* told(const LookChoice* before, const std::vector<LookChoice>& looks, const reckoning::Dates& readyOn, Day today)
{
    const auto isWorthIt = [&](const LookChoice& each) { return daysSaved(readyOn, today, each.cut) >= worthADay && !lookWords(each.kind, true).isEmpty(); };
    const auto best = std::find_if(looks.begin(), looks.end(), isWorthIt);
    if (best == looks.end()) return nullptr;
    const auto same = before == nullptr ? looks.end() : std::find_if(looks.begin(), looks.end(), [&](const LookChoice& each) { return each.kind == before->kind && each.slot == before->slot; });
    return same != looks.end() && isWorthIt(*same) && best->perMinute() < clearlyBetter * same->perMinute() ? &*same : &*best;
}

/// What a meal would tell changes with each meal: the look of the weeks before, as far as they are known, stands.
const LookChoice* mostTellingOf(const StackReckoning& stack)
{
    const LookChoice* look = nullptr;
    const Day silent = stack.record.lastLook.value_or(stack.firstBedding) + std::chrono::days{reckoning::lookMonthly};
    for (const reckoning::StackEstimate& day : stack.history) { // once a week
        const bool asked = day.day >= silent && day.day < stack.asOf && day.ahead && day.ahead->looks && !day.slots.empty();
        if (asked && day.slots.front().batch == stack.now.slots.front().batch) look = told(look, day.ahead->looks->nextLooks, day.ahead->looks->readyOn, day.day);
    }
    return told(look, stack.nextLooks, stack.now.slots.front().readyOn, stack.asOf);
}

/// No look for a month: the one that tells most for the minute, if it saves a fortnight of the ready date's range.
void mostTelling(const StackReckoning& stack, std::vector<Advice>& to)
{
    const auto lately = [&](const std::optional<Day>& look) { return look && daysBetween(*look, stack.asOf) < reckoning::lookAgainAfter; };
    if (lately(stack.record.lastSqueeze) || lately(stack.record.lastSumpLook)) return; // a look of another kind is one this week as well
    if (stack.readySince || stack.record.lastLook > stack.asOf - std::chrono::days{reckoning::lookMonthly} || stack.firstBedding > stack.asOf - std::chrono::days{reckoning::lookMonthly}) return;
    const TrayEstimate& bottom = stack.now.slots.front();
    if (!within(bottom.readyOn.p50, stack, dateMatters)) return;
    const LookChoice* look = mostTellingOf(stack);
    if (look == nullptr) return;
    const std::optional<int> slot = look->slot > 0 ? std::optional{look->slot} : std::nullopt;
    const bool best = std::none_of(stack.nextLooks.begin(), stack.nextLooks.end(), [&](const LookChoice& each) { return each.perMinute() > look->perMinute(); });
    const QString why = best ? say(QT_TRANSLATE_NOOP("Advice", "nothing measured of trays or worms for %1; of all looks this tells most of when the bottom tray is ready, for the work"))
                             : say(QT_TRANSLATE_NOOP("Advice", "nothing measured of trays or worms for %1; it was told before, and no look tells clearly more of when the bottom tray is ready, for the work"));
    addLook(to, stack, look->kind, slot, lookWords(look->kind, look->slot == 1),
            withMore(why.arg(days(daysBetween(stack.record.lastLook.value_or(stack.firstBedding), stack.asOf))), worth(bottom.readyOn, stack, look->cut, look->minutes)),
            perMinute(bottom.readyOn, stack, *look));
}

}

void rulesOfLooks(const StackReckoning& stack, std::vector<Advice>& to)
{
    const TrayEstimate* top = trayToFeed(stack);
    if (top == nullptr || stack.now.slots.empty() || isDrying(stack)) return;
    if (stack.record.lastLook && daysBetween(*stack.record.lastLook, stack.asOf) < reckoning::lookAgainAfter) return;
    if (std::any_of(to.begin(), to.end(), [](const Advice& each) { return each.code == Code::harvestReady || each.code == Code::harvestOverdue || each.code == Code::lookNext; })) return;
    // Nobody opens a bed for its dates while it is short of air, too hot or too cold.
    const auto endangers = [](const Advice& each) { return each.severity >= Severity::concern && (each.code == Code::overfed || each.code == Code::heat || each.code == Code::cold); };
    if (std::any_of(to.begin(), to.end(), endangers)) return;
    if (bitsOfTheBottom(stack, to)) {
        for (Advice& each : to) // the same look is asked for once, with what follows from it
            if (each.code == Code::harvestSoon && stack.turnSince) each.text = plain(notReadyYet(stack));
        return;
    }
    if (depthOfTheTop(stack, *top, to)) return;
    mostTelling(stack, to);
}

}
