#include "core/planning/changes.h"

#include "core/model/acts.h"
#include "core/reckoning/rotation_run.h"

#include <algorithm>
#include <cmath>

namespace tierloam::planning {

using namespace reckoning;

namespace {

constexpr int members = 128;
constexpr int halvings = 6;
constexpr double mostGiven = 0.9;        ///< of a colony
constexpr double likelyFull = 0.2;
constexpr double dryBelow = 0.65, wateredTo = 0.95; ///< of what the tray holds
constexpr int wayBackDays = 182;
constexpr double behind = 0.7, back = 0.9; ///< of the best week of the last year

double processingOn(const Outlook& outlook, std::size_t week) { return outlook.days[week].processingGDryPerDay.p50; }

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
    bool stopped = false;
    const auto then = [&](double share) {
        ChangedPlan plan;
        if (share > 0.0) plan.split = ChangedPlan::Split{stack.asOf + std::chrono::days{1}, share};
        const auto outlook = lookAhead(some, course, plan, crew, stop, ahead);
        stopped = stopped || !outlook;
        return outlook ? processingOn(*outlook, outlook->days.size() - 1) : 0.0;
    };
    best.processingThen = then(0.0);
    if (stopped) return std::nullopt;
    if (best.processingThen < best.processingNow) return best;
    double low = 0.0;
    double high = mostGiven;
    for (int i = 0; i < halvings; ++i) {
        const double middle = 0.5 * (low + high);
        const double reached = then(middle);
        if (stopped) return std::nullopt;
        if (reached >= best.processingNow) {
            low = middle;
            best.processingThen = reached;
        } else {
            high = middle;
        }
    }
    best.share = low;
    best.kg = low * stack.now.colonyKg.p50;
    return best;
}

std::optional<Absence> prepareAbsence(const StackReckoning& stack, Day from, Day to, int threads, std::stop_token stop)
{
    if (!stack.present || stack.present->members.stack.trays() == 0 || to < from) return std::nullopt;
    const Course& course = stack.present->course;
    Population some = fewer(stack.present->members, members);
    const int top = some.stack.topToFeed();
    if (top < 0) return std::nullopt;
    const int days = daysBetween(from, to) + 1;
    Absence leave;
    leave.feedKg = std::min(stack.forecast.feedHighKg, std::max(stack.forecast.feedUsualKg, stack.forecast.feedLowKg) * days / 7.0);
    std::vector<double> wanting;
    for (int i = 0; i < some.stack.members(); ++i) {
        const model::MemberOf m{some.stack, i};
        wanting.push_back(std::max(wateredTo * m.tray(top).capacity[m.lane] - m.tray(top).water[m.lane], 0.0));
    }
    leave.waterL = quantile(wanting, {}, 0.5);

    Crew crew{threads};
    // Fed and watered for it today, as the last thing before leaving.
    const auto fresh = course.kitchen;
    Deeds::giveWithinRoom(some.stack, top, fresh, leave.feedKg, true);
    if (leave.waterL > 0.0) model::pour(some.stack, top, leave.waterL);
    const int ahead = std::clamp((daysBetween(stack.asOf, to) + 6) / 7 * 7, 7, outlookDays / 7 * 7);
    ChangedPlan plan;
    plan.away = {stack.asOf, to};
    const auto outlook = lookAhead(some, course, plan, crew, stop, std::max(ahead, 63));
    const auto usual = lookAhead(fewer(stack.present->members, members), course, {}, crew, stop, std::max(ahead, 63));
    if (!outlook || !usual) return std::nullopt;
    const int until = course.today + daysBetween(stack.asOf, to);
    std::vector<char> full(outlook->sumpFull.size());
    for (std::size_t i = 0; i < full.size(); ++i) full[i] = outlook->sumpFull[i] <= until ? 1 : 0;
    leave.drainBefore = probability(full, {}) >= likelyFull;
    const StackEstimate& then = outlook->days[static_cast<std::size_t>(ahead / 7 - 1)];
    // Chances by straight lines between 5, 50 and 95 %.
    const auto below = [](const Band& band, double x) {
        if (x <= band.p05) return band.p05 > 0.0 ? 0.05 * x / band.p05 : 0.0;
        if (x < band.p50) return 0.05 + 0.45 * (x - band.p05) / (band.p50 - band.p05);
        if (x < band.p95) return 0.5 + 0.45 * (x - band.p50) / (band.p95 - band.p50);
        return 1.0;
    };
    leave.hungryChance = below(then.ration, 1.0);
    for (const TrayEstimate& tray : then.slots)
        if (tray.slot == top + 1) leave.dryChance = below(tray.waterShare, dryBelow);
    std::vector<double> change(outlook->colonyIn60Days.size());
    for (std::size_t i = 0; i < change.size(); ++i) change[i] = outlook->colonyIn60Days[i] - usual->colonyIn60Days[i];
    leave.colonyChange = quantile(change, {}, 0.5);
    return leave;
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
    const auto reachedOn = [&](const Outlook& outlook) -> std::optional<Day> {
        for (const StackEstimate& week : outlook.days)
            if (week.processingGDryPerDay.p50 >= way.goal) return week.day;
        return std::nullopt;
    };
    bool first = true;
    for (const bool harvest : {false, true}) {
        if (harvest && some.stack.trays() < 2) continue;
        for (const bool tray : {false, true}) {
            if (tray && stack.record.spareTrays <= 0 && !harvest) continue;
            for (const double feed : {usual, std::min(1.5 * usual, high), high}) {
                ChangedPlan plan;
                if (harvest) plan.harvestOn = tomorrow;
                if (tray) plan.trayAddedOn = tomorrow;
                if (feed != usual) plan.feedKgPerWeek = feed;
                const auto outlook = lookAhead(some, course, plan, crew, stop, wayBackDays);
                if (!outlook) return std::nullopt;
                const auto on = reachedOn(*outlook);
                if (first) {
                    way.asItIs = way.on = on;
                    way.feedKgPerWeek = usual;
                    first = false;
                } else if (on && (!way.on || *on < *way.on)) {
                    way.on = on;
                    way.harvest = harvest;
                    way.newTray = tray;
                    way.feedKgPerWeek = feed;
                }
            }
        }
    }
    return way;
}

}
