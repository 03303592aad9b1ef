#include "core/planning/another_stack.h"

#include "core/model/acts.h"
#include "core/planning/feeding_ramp.h"
#include "core/reckoning/foresight.h"
#include "core/reckoning/overfeeding.h"
#include "core/reckoning/rotation_run.h"

#include <algorithm>

namespace tierloam::planning {

using namespace reckoning;

namespace {

constexpr int searched = 128;            ///< members, for the feeding; the answer is all members'
constexpr double ofTheLimit[] = {1.0, 0.75, 0.5, 0.35, 0.25}; ///< that are tried for the first weeks: fresh bedding with few worms bears less than their weight asks for

/// The members with nothing of the old stack but what they are: their rates, their place, their scales.
Population begun(Population members, const Course& course, double wormsKg)
{
    model::Ensemble& stack = members.stack;
    model::takeWormShare(stack, 1.0);
    while (stack.trays() > 0) model::harvest(stack, stack.trays() - 1, 1.0);
    model::drain(stack, std::nullopt);
    model::addTray(stack, course.batches, 1, course.today);
    const model::PerMember fresh(static_cast<std::size_t>(stack.members()), course.beddingKg);
    model::addMatter(stack, 0, course.bedding, fresh, model::PerMember(fresh.size(), course.bedding.dryShare), course.beddingWater, false);
    model::stock(stack, 0, wormsKg, std::nullopt, false);
    members.forgetBatchesGone();
    return members;
}

/// The household's hands, at a stack whose lid is on and that is fed from tomorrow on.
Course courseOf(Course course)
{
    ++course.batches; // its first tray
    course.surroundings.lidOn = true;
    course.surroundings.lidBackOn.reset();
    course.care.firstIn = 1;
    course.care.drainLitres = 0.0;
    return course;
}

class Beginning {
public:
    Beginning(const StackReckoning& stack, double wormsKg, Crew& crew, std::stop_token stop)
        : present_{*stack.present}, course_{courseOf(stack.present->course)}, wormsKg_{wormsKg}, crew_{crew}, stop_{std::move(stop)}, tomorrow_{stack.asOf + std::chrono::days{1}},
          start_{stack.present->course.surroundings.firstBedding}
    {
    }

    std::optional<NewStack> live()
    {
        const Population some = begun(fewer(present_.members, searched), course_, wormsKg_);
        const double oneTray = mostInAWeek(some.stack.area, 1, 1e9), twoTrays = mostInAWeek(some.stack.area, 2, 1e9);
        const double limit = mostInAWeek(some.stack.area, 1, wormsKg_);
        ChangedPlan plan;
        std::optional<Outlook> outlook;
        for (const double share : ofTheLimit) {
            plan.ramp = {{tomorrow_, share * limit}};
            if (!(outlook = ahead(some, plan))) return std::nullopt;
            if (hasAir(*outlook)) break;
        }
        ChangedPlan grown = plan;
        grown.ramp = rampOf(*outlook, tomorrow_, wormsKg_, plan.ramp.front().kgPerWeek, oneTray);
        if (!follow(some, grown, plan)) return std::nullopt;
        // The second tray comes when the first is filled; from then on there is room for more food.
        const auto full = ahead(some, plan);
        if (!full) return std::nullopt;
        if (const Dates filled = datesOf(*full, some, &FirstDays::filled); filled.p50) {
            plan.trayAddedOn = *filled.p50;
            const auto two = ahead(some, plan);
            if (!two) return std::nullopt;
            grown = plan;
            for (const auto& step : rampOf(*two, tomorrow_, wormsKg_, plan.ramp.front().kgPerWeek, twoTrays))
                if (step.from > *plan.trayAddedOn && step.kgPerWeek > grown.ramp.back().kgPerWeek) grown.ramp.push_back(step);
            if (!follow(some, grown, plan)) return std::nullopt;
        }
        return told(plan);
    }

private:
    std::optional<Outlook> ahead(const Population& members, const ChangedPlan& plan) { return lookAhead(members, course_, plan, crew_, stop_); }

    /// The other plan takes the place of the one that stands where its bed keeps its air. False: stopped.
    bool follow(const Population& some, const ChangedPlan& tried, ChangedPlan& stands)
    {
        const auto outlook = ahead(some, tried);
        if (outlook && hasAir(*outlook)) stands = tried;
        return outlook.has_value();
    }

    Dates datesOf(const Outlook& outlook, const Population& of, std::vector<int> FirstDays::*which) const
    {
        const auto first = outlook.firsts.find(of.stack.shapes.front().batch);
        return first != outlook.firsts.end() ? dates(first->second.*which, of.shares(), start_, course_.today + outlookDays) : Dates{};
    }

    std::optional<NewStack> told(const ChangedPlan& plan)
    {
        const Population all = begun(present_.members, course_, wormsKg_);
        ChangedPlan alone = plan;
        alone.trayAddedOn.reset();
        // Filled is said of the tray that is fed: of the first one as long as no other lies on it.
        const auto first = ahead(all, alone);
        const auto outlook = plan.trayAddedOn ? ahead(all, plan) : first;
        if (!first || !outlook) return std::nullopt;
        NewStack made;
        made.wormsKg = wormsKg_;
        made.beddingKg = course_.beddingKg;
        made.feed = plan.ramp;
        made.secondTray = datesOf(*first, all, &FirstDays::filled);
        made.firstReady = datesOf(*outlook, all, &FirstDays::ready);
        made.colonyIn60Days = band(std::vector<double>{outlook->colonyIn60Days}, all.shares());
        made.colonyInAYear = band(std::vector<double>{outlook->colonyAtEnd}, all.shares());
        made.airLowWithin14Days = airLowAhead(*outlook, all.shares());
        made.days = outlook->days;
        return made;
    }

    const Present& present_;
    Course course_;
    double wormsKg_;
    Crew& crew_;
    std::stop_token stop_;
    Day tomorrow_, start_;
};

/// When the old stack is back, member by member: each beside itself with all its worms.
std::optional<Dates> backOn(const Present& present, const ChangedPlan& plan, Crew& crew, const std::stop_token& stop)
{
    WeeklyRates usual, split;
    if (!lookAhead(present.members, present.course, {}, crew, stop, outlookDays, true, &usual) || !lookAhead(present.members, present.course, plan, crew, stop, outlookDays, true, &split))
        return std::nullopt;
    std::vector<double> now;
    const int lived = present.members.week.gain(PastWeek::ingested, 7, now);
    std::vector<int> back(now.size(), never);
    for (std::size_t i = 0; i < now.size(); ++i) {
        const double today = now[i] / std::max(lived, 1);
        for (std::size_t week = 0; week < split.size() && back[i] == never; ++week)
            if (split[week][i] >= GiveAway::asGoodAs * std::min(today, usual[week][i])) back[i] = present.course.today + 7 * static_cast<int>(week + 1);
    }
    return dates(back, present.members.shares(), present.course.surroundings.firstBedding, present.course.today + outlookDays);
}

}

ChangedPlan planOf(const AnotherStack& another, Day tomorrow)
{
    ChangedPlan plan;
    if (another.share > 0.0) plan.split = ChangedPlan::Split{tomorrow, another.share};
    return plan;
}

std::optional<AnotherStack> startAnother(const StackReckoning& stack, int days, int threads, std::stop_token stop)
{
    const auto give = mostToGiveAway(stack, days, threads, stop);
    if (!give) return std::nullopt;
    AnotherStack another;
    another.give = *give;
    if (give->share <= 0.0 || give->kg <= 0.0) return another;
    const double gone = std::min(give->kg, NewStack::mostWormsKg);
    another.share = give->share * gone / give->kg;
    Crew crew{threads};
    auto young = Beginning{stack, std::max(gone, NewStack::leastWormsKg), crew, stop}.live();
    const auto back = young ? backOn(*stack.present, planOf(another, stack.asOf + std::chrono::days{1}), crew, stop) : std::nullopt;
    if (!back) return std::nullopt;
    another.young = *std::move(young);
    another.young.boughtKg = another.young.wormsKg - gone;
    another.backOn = *back;
    return another;
}

}
