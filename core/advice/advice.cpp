#include "core/advice/advice.h"

#include "core/advice/food_limit.h"
#include "core/advice/rules.h"
#include "core/advice/words.h"
#include "core/wording/dates.h"

#include <algorithm>
#include <cmath>

namespace tierloam::advice {

std::string_view codeName(Code code)
{
    switch (code) {
    case Code::harvestReady: return "harvest-ready";
    case Code::readyNoHurry: return "ready-no-hurry";
    case Code::harvestSoon: return "harvest-soon";
    case Code::harvestOverdue: return "harvest-overdue";
    case Code::addTray: return "add-tray";
    case Code::tooEarly: return "too-early";
    case Code::feedDue: return "feed-due";
    case Code::overfed: return "overfed";
    case Code::hungry: return "hungry";
    case Code::trayFull: return "tray-full";
    case Code::lowCarbon: return "low-carbon";
    case Code::tooWet: return "too-wet";
    case Code::tooDry: return "too-dry";
    case Code::sumpFull: return "sump-full";
    case Code::drainageLow: return "drainage-low";
    case Code::drainageHigh: return "drainage-high";
    case Code::heat: return "heat";
    case Code::cold: return "cold";
    case Code::dryingDone: return "drying-done";
    case Code::dryingLong: return "drying-long";
    case Code::staleRecord: return "stale-record";
    case Code::lookNext: return "look-next";
    case Code::recordDisagrees: return "record-disagrees";
    }
    return {};
}

std::string_view severityName(Severity severity)
{
    switch (severity) {
    case Severity::hint: return "hint";
    case Severity::due: return "due";
    case Severity::concern: return "concern";
    case Severity::urgent: return "urgent";
    }
    return {};
}

namespace {

constexpr int longestDrying = 7;    ///< days from the lift to the taking (2 to 7: common practice, no source)
constexpr int leastAwayToWait = 3;  ///< days away that a tray in the light may well be left alone for

/// While nobody is there: what presses is told all the same, since somebody may be asked to come by. All else, and a full tray, is for the day of their return, no look is asked
/// for, and that no food is to be given lapses: nobody gives any, and on the return it is another question. What withholds it because the tray is to be
/// emptied stands.
void forTheReturn(const reckoning::StackReckoning& stack, std::vector<Advice>& all)
{
    if (!isAway(stack.record, stack.asOf)) return;
    const Day back = *stack.record.awayUntil + std::chrono::days{1};
    std::erase_if(all, [](const Advice& each) {
        const bool isOfNoFood = each.food == Food::withhold && each.code != Code::harvestReady;
        return each.severity < Severity::concern && (each.look || each.food == Food::give || isOfNoFood);
    });
    for (Advice& each : all) {
        const bool isOfRoom = each.code == Code::addTray || each.code == Code::trayFull; // nobody feeds meanwhile
        if (each.severity < Severity::concern || isOfRoom) each.on = std::max(each.on, back);
    }
}

/// The usual gap since the last feeding ends then.
bool feedingFallsWithin(const reckoning::StackReckoning& stack, Day from, Day back)
{
    if (!stack.record.lastFeed) return false;
    const Day due = *stack.record.lastFeed + std::chrono::days{std::max(1, static_cast<int>(std::lround(stack.record.medianFeedGapDays)))};
    return due >= from && due < back;
}

/// Food that would be due while nobody is there, given on a day before: what was fed lately still counts then. False where next to nothing is borne.
bool feedBefore(const reckoning::StackReckoning& stack, Advice& food, Day day)
{
    const double limit = foodLimitOn(stack, day);
    if (limit < reckoning::leastWorthGiving) return false;
    if (reckoning::isBorne(food.kg, limit)) return true;
    food.kg = limit;
    food.text = plain(say(QT_TRANSLATE_NOOP("Advice", "Feed at most %1 this week")).arg(mostFoodText(stack, limit)));
    return true;
}

/// Days that nobody will be there are known before: a tray is not lifted that would hang in the light meanwhile, and food comes before they leave or after the return.
void beforeLeaving(const reckoning::StackReckoning& stack, std::vector<Advice>& all)
{
    const std::vector<std::pair<Day, Day>> ahead = awaysAhead(stack.record);
    if (ahead.empty() || isAway(stack.record, stack.asOf)) return;
    for (Advice& each : all) {
        const bool lifts = each.code == Code::harvestReady || each.code == Code::harvestOverdue;
        QStringList gone;
        for (const auto& [from, to] : ahead) { // what waits for the return from one may fall into the next
            const Day last = std::max(from - std::chrono::days{1}, stack.asOf), back = to + std::chrono::days{1};
            const bool wouldHang = lifts && daysBetween(std::max(each.on, stack.asOf), from) < longestDrying && daysBetween(from, back) > leastAwayToWait && each.on < back;
            const bool meanwhile = each.on >= from && each.on < back;
            const bool early = each.food == Food::give && each.on == from - std::chrono::days{1} && feedingFallsWithin(stack, from, back);
            if (wouldHang) each.on = back;
            else if (meanwhile && each.food == Food::give) each.on = feedBefore(stack, each, last) ? last : back;
            else if (meanwhile && each.severity < Severity::concern) each.on = back;
            else if (!early) continue;
            gone << wording::dayRange(from, to, stack.asOf);
        }
        if (!gone.isEmpty())
            each.because = plain(withMore(QString::fromStdString(each.because), say(QT_TRANSLATE_NOOP("Advice", "nobody is there: %1")).arg(gone.join(say(QT_TRANSLATE_NOOP("Advice", ", "))))));
    }
}

}

namespace {

/// Of what presses alike on one day these come first: worms die of it, while a full tray waits.
bool endangersWorms(Code code)
{
    switch (code) {
    case Code::heat:
    case Code::cold:
    case Code::tooDry:
    case Code::tooWet:
    case Code::overfed: return true;
    default: return false;
    }
}

}

std::vector<Advice> adviceFor(const reckoning::StackReckoning& stack)
{
    std::vector<Advice> all;
    if (stack.retired || stack.now.slots.empty()) return all;
    rulesOfHarvest(stack, all);
    rulesOfDrying(stack, all);
    rulesOfFeeding(stack, all);
    rulesOfFood(stack, all);
    rulesOfWater(stack, all);
    rulesOfDrainage(stack, all);
    rulesOfClimate(stack, all);
    rulesOfColony(stack, all);
    rulesOfRecord(stack, all);
    rulesOfLooks(stack, all);
    settleContradictions(all);
    forTheReturn(stack, all);
    beforeLeaving(stack, all);
    std::stable_sort(all.begin(), all.end(), [](const Advice& a, const Advice& b) {
        if (a.severity != b.severity) return a.severity > b.severity;
        return a.on != b.on ? a.on < b.on : endangersWorms(a.code) && !endangersWorms(b.code);
    });
    return all;
}

}
