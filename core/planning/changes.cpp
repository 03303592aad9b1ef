#include "core/planning/changes.h"

#include "core/advice/chance.h"
#include "core/advice/food_limit.h"
#include "core/planning/feeding_ramp.h"
#include "core/reckoning/overfeeding.h"
#include "core/reckoning/rotation_run.h"
#include "core/reckoning/tray_contents.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <set>

namespace tierloam::planning {

using namespace reckoning;

namespace {

constexpr int members = 128;
constexpr int halvings = 6;
constexpr double mostGiven = 0.9;        ///< of a colony
constexpr double likelyFull = 0.2;
constexpr double dryBelow = 0.65, wateredTo = 0.95; ///< of what the tray holds
constexpr double leftToEat = 0.72;       ///< of dry matter: the rest is respired while it softens (core/model/parameters.cpp)
constexpr int wayBackDays = 182;
constexpr double wormsTried[] = {0.1, 0.25, 0.5, WayBack::mostWormsKg}; ///< kg
constexpr double behind = 0.7, back = 0.9; ///< of the best week of the last year

}

std::optional<GiveAway> mostToGiveAway(const StackReckoning& stack, int days, int threads, std::stop_token stop)
{
    if (!stack.present || stack.present->members.stack.trays() == 0) return std::nullopt;
    const Course& course = stack.present->course;
    const Population some = fewer(stack.present->members, members);
    const int ahead = std::clamp((days + 6) / 7 * 7, 7, outlookDays / 7 * 7);
    Crew crew{threads};
    GiveAway best;
    best.processingNow = stack.now.processingGDryPerDay.p50;
    best.colonyNow = stack.now.colonyKg.p50;
    bool stopped = false;
    struct Then { double processing = 0, colony = 0, lackAir = 0; };
    const auto then = [&](double share) {
        ChangedPlan plan;
        if (share > 0.0) plan.split = ChangedPlan::Split{stack.asOf + std::chrono::days{1}, share};
        const auto outlook = lookAhead(some, course, plan, crew, stop, ahead);
        stopped = stopped || !outlook;
        return outlook ? Then{outlook->days.back().processingGDryPerDay.p50, outlook->days.back().colonyKg.p50, shortOfAir(*outlook)} : Then{};
    };
    const Then usual = then(0.0);
    best.processingUsual = best.processingThen = usual.processing;
    best.colonyUsual = best.colonyThen = usual.colony;
    if (stopped) return std::nullopt;
    double low = 0.0;
    double high = mostGiven;
    for (int i = 0; i < halvings; ++i) {
        const double middle = 0.5 * (low + high);
        const Then reached = then(middle);
        if (stopped) return std::nullopt;
        if (reached.processing >= best.goal() && reached.colony >= best.colonyGoal() && reached.lackAir <= usual.lackAir + mostShortOfAir) {
            low = middle;
            best.processingThen = reached.processing;
            best.colonyThen = reached.colony;
        } else {
            high = middle;
        }
    }
    best.share = low;
    best.kg = low * stack.now.colonyKg.p50;
    return best;
}

namespace {

OnReturn onReturn(const StackEstimate& then, int slot)
{
    OnReturn made;
    made.hungryChance = advice::chanceBelow(then.ration, 1.0).value_or(1.0); // nothing at all to eat is known too
    for (const TrayEstimate& tray : then.slots)
        if (tray.slot == slot) made.dryChance = advice::chanceBelow(tray.waterShare, dryBelow).value_or(1.0);
    return made;
}

/// What is wanting in that tray to hold 0.95 of what it can, L, by the medians.
double wantingIn(const StackEstimate& then, int slot)
{
    for (const TrayEstimate& tray : then.slots) {
        if (tray.slot != slot || tray.waterShare.p50 <= 0.0) continue;
        const double water = waterKg(tray);
        return std::max(water / tray.waterShare.p50 * (wateredTo - tray.waterShare.p50), 0.0);
    }
    return 0.0;
}

}

ChangedPlan planOf(const Absence& absence, Day from, Day to)
{
    ChangedPlan plan;
    plan.away = {from, to};
    plan.leave = ChangedPlan::Leave{from - std::chrono::days{1}, absence.feedKg, absence.waterL, absence.drainBefore};
    return plan;
}

std::optional<journal::Entry> harvestInThePast(const StackReckoning& stack, Day day)
{
    const StackEstimate* then = day < stack.asOf ? stack.on(day) : nullptr;
    if (then == nullptr || then->slots.empty()) return std::nullopt;
    journal::Entry entry;
    entry.id = journal::EntryId{std::numeric_limits<std::int64_t>::max()}; // unlike any that is written down
    entry.stack = stack.name;
    entry.date.day = day;
    entry.slot = 1;
    entry.action = journal::Harvest{Amount{std::max(std::round(100.0 * contentsKg(then->slots.front())) / 100.0, 0.05), Unit::kg}, {}, {}};
    return entry;
}

std::optional<Absence> prepareAbsence(const StackReckoning& stack, Day from, Day to, int threads, std::stop_token stop)
{
    if (!stack.present || stack.present->members.stack.trays() == 0 || to < from) return std::nullopt;
    const Course& course = stack.present->course;
    const Population some = fewer(stack.present->members, members);
    const int top = some.stack.topToFeed();
    const int gone = daysBetween(stack.asOf, from);
    const int until = daysBetween(stack.asOf, to);
    if (top < 0 || gone < 1 || until > outlookDays) return std::nullopt;
    const int ahead = std::min((until + 6) / 7 * 7, outlookDays);
    Crew crew{threads};
    const auto usual = lookAhead(some, course, {}, crew, stop, ahead);
    if (!usual) return std::nullopt;
    Absence leave;
    // What the advice says today of a bed that takes no food holds for the days to come.
    const bool withheld = gone <= 7 && advice::foodLimit(stack).isWithheld();
    leave.feedKg = withheld ? 0.0 : std::min(advice::foodLimitOn(stack, stack.asOf + std::chrono::days{gone - 1}), std::max(stack.forecast.feedUsualKg, stack.forecast.feedLowKg) * (until - gone + 1) / 7.0);
    leave.waterL = wantingIn(gone <= 7 ? stack.now : usual->days[static_cast<std::size_t>((gone - 1) / 7 - 1)], top + 1);
    const auto left = lookAhead(some, course, planOf(leave, from, to), crew, stop, ahead);
    if (!left) return std::nullopt;
    std::vector<char> full(left->sumpFull.size());
    for (std::size_t i = 0; i < full.size(); ++i) full[i] = left->sumpFull[i] <= course.today + until ? 1 : 0;
    leave.drainBefore = probability(full, {}) >= likelyFull;
    const std::size_t back = std::min(static_cast<std::size_t>(ahead / 7 - 1), left->days.size() - 1);
    leave.left = onReturn(left->days[back], top + 1);
    leave.usual = onReturn(usual->days[back], top + 1);
    return leave;
}

ChangedPlan planOf(const WayBack& way, Day tomorrow)
{
    ChangedPlan plan;
    if (way.harvest) plan.harvestOn = tomorrow;
    if (way.newTray) plan.trayAddedOn = tomorrow;
    plan.ramp = way.feed;
    return plan;
}

std::optional<WayBack> shortestWayBack(const StackReckoning& stack, int threads, std::stop_token stop)
{
    if (!stack.present || stack.present->members.stack.trays() == 0) return std::nullopt;
    double best = 0.0;
    for (const StackEstimate& day : stack.history)
        if (daysBetween(day.day, stack.asOf) <= 365) best = std::max(best, day.processingGDryPerDay.p50);
    if (best <= 0.0 || stack.now.processingGDryPerDay.p50 >= behind * best) return std::nullopt;
    const Course& course = stack.present->course;
    const Population some = fewer(stack.present->members, members);
    Crew crew{threads};
    WayBack way;
    way.goal = back * best;
    const Day tomorrow = stack.asOf + std::chrono::days{1};
    const double usual = course.care.feedKg;
    const double high = std::max(stack.forecast.feedHighKg, usual);
    const double most = std::max(mostFreshPerM2AndDay * 7.0 * some.stack.area * some.stack.trays(), high);
    // Fresh food of which as much dry matter is left to eat once it has softened.
    const double asked = std::min(way.goal / 1000.0 * 7.0 / (std::max(course.kitchen.dryShare, 0.05) * leftToEat), most);
    const auto reachedOn = [&](const Outlook& outlook) -> std::optional<Day> {
        for (const StackEstimate& week : outlook.days)
            if (week.processingGDryPerDay.p50 >= way.goal) return week.day;
        return std::nullopt;
    };
    bool first = true;
    // A later way has to be sooner: of ways that are as short, the one with the least to do stands.
    const auto follow = [&](WayBack tried, const Population& of) -> std::optional<Outlook> {
        auto outlook = lookAhead(of, course, planOf(tried, tomorrow), crew, stop, wayBackDays);
        if (!outlook) return std::nullopt;
        const auto on = reachedOn(*outlook);
        if (first) way.asItIs = on;
        if (first || (on && (!way.on || *on < *way.on) && hasAir(*outlook))) {
            way.on = on;
            way.harvest = tried.harvest;
            way.newTray = tried.newTray;
            way.wormsKg = tried.wormsKg;
            way.feed = std::move(tried.feed);
        }
        first = false;
        return outlook;
    };
    for (const bool harvest : {false, true}) {
        if (harvest && some.stack.trays() < 2) continue;
        for (const bool tray : {false, true}) {
            if (tray && stack.record.spareTrays <= 0 && !harvest) continue;
            WayBack tried;
            tried.harvest = harvest;
            tried.newTray = tray;
            // This week's limit is that of the trays as they stand; with a new one or one less, air alone bounds what the goal asks for.
            const double up = harvest || tray ? std::max(high, asked) : high;
            const double start = std::max(high, std::min(up, asked * stack.now.processingGDryPerDay.p50 / way.goal));
            std::set<double> amounts{usual, std::min(1.5 * usual, up), high, up};
            std::optional<Outlook> outlook;
            for (const double feed : amounts) {
                tried.feed = {{tomorrow, feed}};
                outlook = follow(tried, some);
                if (!outlook) return std::nullopt;
            }
            tried.feed = rampOf(*outlook, tomorrow, stack.now.colonyKg.p50, start, most);
            if (tried.feed.size() > 1 && !follow(tried, some)) return std::nullopt;
        }
    }
    for (const double kg : wormsTried) {
        if (way.on) break;
        Population with = some;
        model::stock(with.stack, std::max(with.stack.topToFeed(), 0), kg, std::nullopt, false);
        WayBack tried;
        tried.wormsKg = kg;
        const double start = std::min(std::max(high, mostInAWeek(some.stack.area, some.stack.trays(), stack.now.colonyKg.p50 + kg)), asked);
        for (const double feed : std::set<double>{std::min(high, start), start}) {
            tried.feed = {{tomorrow, feed}};
            const auto outlook = follow(tried, with);
            if (!outlook) return std::nullopt;
            tried.feed = rampOf(*outlook, tomorrow, stack.now.colonyKg.p50 + kg, feed, most);
            if (tried.feed.size() > 1 && !follow(tried, with)) return std::nullopt;
        }
    }
    return way;
}

}
