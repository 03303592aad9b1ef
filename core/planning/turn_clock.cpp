#include "core/planning/turn_clock.h"

#include "core/model/acts.h"
#include "core/planning/year_plan.h"
#include "core/reckoning/rotation_run.h"

#include <algorithm>

namespace tierloam::planning {

using namespace reckoning;

namespace {

constexpr int members = 128;
constexpr double worthSaying = 3.0;  ///< days
constexpr double thirsty = 0.85;     ///< of field capacity, below which water is worth a try
constexpr int paper = 3, cardboard = 4; ///< softening classes of quick bedding

/// For each member the first day of its turn; one day beyond the horizon when it never comes.
std::vector<int> turnsOf(const Outlook& outlook, const model::Ensemble& stack, bool bottomToo, int today)
{
    const int top = stack.topToFeed();
    const int beyond = today + outlookDays + 1;
    std::vector<int> days(static_cast<std::size_t>(stack.members()), beyond);
    if (top < 0) return days;
    const FirstDays& filling = outlook.firsts.at(stack.shapes[static_cast<std::size_t>(top)].batch);
    const FirstDays& bottom = outlook.firsts.at(stack.shapes.front().batch);
    for (std::size_t i = 0; i < days.size(); ++i) {
        const int both = bottomToo ? std::max(filling.filled[i], bottom.ready[i]) : filling.filled[i];
        days[i] = std::min(both, beyond);
    }
    return days;
}

double thirst(const Population& some)
{
    const int top = some.stack.topToFeed();
    std::vector<double> wanting;
    for (int i = 0; i < some.stack.members(); ++i) {
        const model::MemberOf m{some.stack, i};
        wanting.push_back(model::waterShare(m, top) < thirsty ? std::max(m.tray(top).capacity[m.lane] - m.tray(top).water[m.lane], 0.0) : 0.0);
    }
    return quantile(wanting, {}, 0.5);
}

/// As if the top tray had been laid with half the quick bedding that still lies there.
void halveBedding(model::Ensemble& stack, int slot)
{
    for (model::Ensemble::Block& block : stack.blocks)
        for (const int kind : {paper, cardboard})
            for (double& kg : block.trays[static_cast<std::size_t>(slot)].unsoftened[kind]) kg *= 0.5;
}

/// Most days first; what gains most holds the turn back.
void settle(TurnClock& clock)
{
    std::stable_sort(clock.levers.begin(), clock.levers.end(), [](const Lever& a, const Lever& b) { return a.daysGained.p50 > b.daysGained.p50; });
    if (!clock.levers.empty() && clock.levers.front().daysGained.p50 >= worthSaying) clock.limit = clock.levers.front().of;
}

/// The first tray added or lifted of a course.
std::optional<TurnWindow> nextOf(const RotationCourse& course)
{
    if (!course.trays.empty()) return course.trays.front().window;
    const auto next = std::find_if(course.harvests.begin(), course.harvests.end(), [](const PlannedHarvest& each) { return !each.begun; });
    return next != course.harvests.end() ? std::optional{next->window} : std::nullopt;
}

Dates datesOf(const std::optional<TurnWindow>& window) { return window ? Dates{window->early, window->natural, window->late} : Dates{}; }

/// The turn after the castings in the light are taken and their tray is laid anew: none of today's trays alone says when that is.
std::optional<TurnClock> clockOfTheNext(const StackReckoning& stack, int followed, int threads, std::stop_token stop)
{
    Crew crew{threads};
    bool stopped = false;
    const auto courseOf = [&](const Present& present, const ChangedPlan& change, bool windows) {
        RotationWish wish = plainWish(stack, followed);
        wish.change = change;
        wish.windows = windows;
        wish.nextStepOnly = true;
        const auto course = runRotation(present, wish, crew, stop);
        stopped = stopped || !course;
        return course.value_or(RotationCourse{});
    };
    const Present& present = *stack.present;
    const RotationCourse base = courseOf(present, {}, true);
    if (stopped) return std::nullopt;
    TurnClock clock;
    for (const PlannedHarvest& each : base.harvests)
        if (each.begun) clock.takenOn = each.takeOn;
    const auto usual = nextOf(base);
    if (!usual) return clock;
    clock.turn = datesOf(usual);
    const auto tried = [&](Limit of, double amount, const Present& changed, const ChangedPlan& plan) {
        const auto turn = nextOf(courseOf(changed, plan, false));
        const double gained = daysBetween(turn ? turn->natural : stack.asOf + std::chrono::days{outlookDays + 1}, usual->natural);
        clock.levers.push_back({of, amount, Band{gained, gained, gained}});
        return !stopped;
    };
    ChangedPlan more, warmer;
    more.feedKgPerWeek = present.course.care.feedKg + leverFeedKg;
    warmer.usualTemperature = present.course.surroundings.settings.temp.base() + leverWarmthK;
    Present worms = present;
    model::stock(worms.members.stack, worms.members.stack.topToFeed(), leverWormsKg, std::nullopt, false);
    Present finer = present;
    finer.course.beddingKg *= 0.5; // of the tray that is laid when the castings are taken
    if (!tried(Limit::food, leverFeedKg, present, more) || !tried(Limit::cold, leverWarmthK, present, warmer) || !tried(Limit::worms, leverWormsKg, worms, {})
        || !tried(Limit::bedding, 0.5, finer, {}))
        return std::nullopt;
    settle(clock);
    return clock;
}

}

std::optional<TurnClock> turnClock(const StackReckoning& stack, int threads, std::stop_token stop, std::size_t stacks)
{
    if (!stack.present || stack.present->members.stack.trays() == 0) return std::nullopt;
    const Course& course = stack.present->course;
    const Population some = fewer(stack.present->members, members);
    const int top = some.stack.topToFeed();
    if (top < 0) return std::nullopt;
    if (stack.record.dryingSince) return clockOfTheNext(stack, yearMembers(stacks), threads, stop);
    const bool bottomToo = stack.record.spareTrays <= 0;
    Crew crew{threads};
    const auto turnWith = [&](Population changed, const ChangedPlan& plan) -> std::optional<std::vector<int>> {
        const auto outlook = lookAhead(std::move(changed), course, plan, crew, stop, outlookDays, false);
        if (!outlook) return std::nullopt;
        return turnsOf(*outlook, some.stack, bottomToo, course.today);
    };
    const auto base = turnWith(some, {});
    if (!base) return std::nullopt;

    TurnClock clock;
    RotationWish wish = plainWish(stack, yearMembers(stacks));
    wish.nextStepOnly = true;
    const auto next = runRotation(*stack.present, wish, crew, stop);
    if (!next) return std::nullopt;
    clock.turn = datesOf(nextOf(*next));
    const Dates have = dates(turnsOf(stack.present->base, stack.present->members.stack, bottomToo, course.today), stack.present->members.weights.normalised(), stack.firstBedding,
                             course.today + outlookDays);
    clock.has = have.p50 && *have.p50 <= stack.asOf;
    if (clock.has) return clock;
    const auto tried = [&](Limit of, double amount, Population changed, const ChangedPlan& plan) {
        const auto turns = turnWith(std::move(changed), plan);
        if (!turns) return false;
        std::vector<double> gained(turns->size());
        for (std::size_t i = 0; i < gained.size(); ++i) gained[i] = (*base)[i] - (*turns)[i];
        clock.levers.push_back({of, amount, band(gained, {})});
        return true;
    };
    ChangedPlan more, warmer;
    more.feedKgPerWeek = course.care.feedKg + leverFeedKg;
    warmer.usualTemperature = course.surroundings.settings.temp.base() + leverWarmthK;
    if (!tried(Limit::food, leverFeedKg, some, more) || !tried(Limit::cold, leverWarmthK, some, warmer)) return std::nullopt;
    Population worms = some;
    model::stock(worms.stack, top, leverWormsKg, std::nullopt, false);
    if (!tried(Limit::worms, leverWormsKg, std::move(worms), {})) return std::nullopt;
    Population finer = some;
    halveBedding(finer.stack, top);
    if (!tried(Limit::bedding, 0.5, std::move(finer), {})) return std::nullopt;
    if (const double litres = thirst(some); litres > 0.1) {
        Population watered = some;
        model::pour(watered.stack, top, litres);
        if (!tried(Limit::water, litres, std::move(watered), {})) return std::nullopt;
    }
    settle(clock);
    return clock;
}

}
