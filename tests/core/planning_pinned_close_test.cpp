// A harvest that is pinned too close to the one before, and plans whose own deeds change what is foreseen.
#include "core/planning/year_courses.h"
#include "core/planning/year_plan.h"
#include "core/reckoning/plans.h"
#include "core/reckoning/reckon.h"

#include "tests/core/reckoning_notes.h"
#include "tests/support/households.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace tierloam::planning {
namespace {

using reckoning::PlannedHarvest;

/// A stack of three trays at work that has two harvests in its coming year.
std::optional<reckoning::Reckoning> atWork(int leastDays = 0, int members = 128)
{
    for (int number = 0; number < 40; ++number) {
        reckoning::Reckoning all;
        auto stack = *tests::reckonHousehold(tests::makeHousehold(0x70a7e, number, {}, {}, 400), members).stack;
        if (stack.now.slots.size() != 3 || stack.record.spareTrays > 0 || stack.record.dryingSince) continue;
        stack.name = "Mill";
        all.asOf = stack.asOf;
        all.stacks.push_back(std::move(stack));
        const StackYear year = planYear(all, {}, 1)->stacks.front();
        if (year.natural.harvests.size() >= 2 && daysBetween(all.asOf, year.natural.harvests.front().liftOn) >= leastDays) return all;
    }
    return std::nullopt;
}

TEST(PinnedClose, WhatIsLiftedLaterThanWishedIsTakenAllTheSame)
{
    const auto all = atWork();
    ASSERT_TRUE(all);
    const StackYear plain = planYear(*all, {}, 1)->stacks.front();
    for (const int after : {-3, 1, 2, 5, 8}) {
        YearWishes wishes;
        wishes.pinned["Mill"][plain.natural.harvests[1].batch] = plain.natural.harvests[0].liftOn + std::chrono::days{after};
        const StackYear pinned = planYear(*all, wishes, 1)->stacks.front();
        EXPECT_GE(pinned.planned.harvests.size() + 1, plain.planned.harvests.size()) << after;
        for (const PlannedHarvest& each : pinned.planned.harvests) {
            if (each.atOnce || each.begun || each.takeOn == Day{}) continue;
            EXPECT_GE(daysBetween(each.liftOn, each.takeOn), HarvestWishes{}.leastDrying) << after;
        }
        for (const auto& stay : pinned.planned.stays) EXPECT_LE(stay.drying ? daysBetween(stay.from, stay.to) : 0, HarvestWishes{}.mostDrying) << after;
    }
}

/// More food or warmth never puts the next turn off by what the lever does to it.
TEST(PinnedClose, ALeverMovesTheFirstTurnTheWayItMovesTheMembers)
{
    const auto all = atWork(40);
    ASSERT_TRUE(all);
    const auto firstOf = [&](std::optional<double> feed) {
        CourseTrial trial;
        if (feed)
            trial.change = [feed](const reckoning::StackReckoning&) {
                reckoning::RotationWish wish;
                wish.change.feedKgPerWeek = feed;
                return wish.change;
            };
        return coursesWith(*all, {}, trial, 1)->stacks.front().natural.harvests.front().liftOn;
    };
    const double usual = all->stacks.front().record.usualFeedKgPerWeek;
    ASSERT_GT(usual, 0.0);
    EXPECT_LT(firstOf(1.5 * usual), firstOf({}));
    EXPECT_GT(firstOf(0.4 * usual), firstOf({}));
}

/// Emptied before leaving, the sump is full so much later: the day is counted from the drain of the plan.
TEST(ChangedPlan, ADrainBeforeLeavingPutsOffTheFullSump)
{
    using namespace reckoning;
    Notes notes;
    journal::Setup setup;
    setup.spigot = journal::Spigot::shut;
    notes.begun("Mill", setup).fedWeekly("Mill", 2, 200);
    for (int day = 2; day <= 200; day += 3) notes.add(day, "Mill", journal::Water{{500, Unit::mL}});
    for (int day = 20; day <= 196; day += 8) notes.add(day, "Mill", journal::Drain{Amount{2.5, Unit::L}, true, {}, {}, {}});
    const auto all = reckon(notes.entries(), until(200));
    const auto fullAfterDrainOn = [&](int day) {
        ChangedPlan plan;
        plan.leave = ChangedPlan::Leave{onDay(200 + day), 0.0, 0.0, true};
        const PlanComparison compared = comparePlans(all->stacks.front(), plan, 1).value();
        return std::pair{compared.base.sumpFullOn.p50, compared.changed.sumpFullOn.p50};
    };
    const auto [usual, today] = fullAfterDrainOn(0);
    const auto [same, inEightDays] = fullAfterDrainOn(8);
    ASSERT_TRUE(usual && today && inEightDays);
    EXPECT_EQ(usual, same);
    EXPECT_GE(daysBetween(*usual, *today), 3);
    EXPECT_GE(daysBetween(*today, *inEightDays), 3) << "emptied later, full later; water comes in once a week";
}

}
}
