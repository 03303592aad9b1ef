// The year's plan around what people wish: pinned days, days away, chosen weekdays; and the stack that owns one tray.
#include "core/advice/too_early.h"
#include "core/planning/turn_clock.h"
#include "core/planning/year_plan.h"
#include "core/reckoning/reckon.h"

#include "tests/core/reckoning_notes.h"
#include "tests/support/households.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

namespace tierloam::planning {
namespace {

using reckoning::PlannedHarvest;

/// Households of a stack of three trays at work, as one reckoning.
reckoning::Reckoning household(int wanted)
{
    reckoning::Reckoning all;
    for (int number = 0; static_cast<int>(all.stacks.size()) < wanted && number < 40; ++number) {
        auto stack = *tests::reckonHousehold(tests::makeHousehold(0x70a7e, number, {}, {}, 400), 128).stack;
        if (stack.now.slots.size() != 3 || stack.record.spareTrays > 0 || stack.record.dryingSince) continue;
        stack.name = "Stack " + std::to_string(number);
        all.asOf = stack.asOf;
        all.stacks.push_back(std::move(stack));
    }
    return all;
}

/// A stack that has two harvests in its coming year, the first of them not at once.
std::optional<StackYear> twoHarvests(const reckoning::Reckoning& all, const YearPlan& plan)
{
    for (const StackYear& year : plan.stacks)
        if (year.natural.harvests.size() >= 2 && year.natural.harvests[0].liftOn > all.asOf + std::chrono::days{15} && year.natural.harvests[1].liftOn < all.asOf + std::chrono::days{300}) return year;
    return std::nullopt;
}

const StackYear& of(const YearPlan& plan, const std::string& stack)
{
    return *std::find_if(plan.stacks.begin(), plan.stacks.end(), [&](const StackYear& year) { return year.stack == stack; });
}

TEST(YearPlan, WhatFollowsAPinnedHarvestComesOnItsOwnTurnAgain)
{
    const reckoning::Reckoning all = household(5);
    const auto plain = planYear(all, {}, 2);
    const auto two = twoHarvests(all, *plain);
    ASSERT_TRUE(two);
    const Day first = two->natural.harvests[0].liftOn, second = two->natural.harvests[1].liftOn;
    const auto pinnedTo = [&](Day on) {
        YearWishes wishes;
        wishes.pinned[two->stack][two->natural.harvests[0].batch] = on;
        return *planYear(all, wishes, 2);
    };
    // Late: the next comes on the turn that it has then, and no day is counted that nobody waits.
    const YearPlan late = pinnedTo(first + std::chrono::days{40});
    const StackYear& then = of(late, two->stack);
    EXPECT_EQ(then.planned.harvests[0].liftOn, first + std::chrono::days{40});
    ASSERT_GE(then.planned.harvests.size(), 2U);
    EXPECT_EQ(then.planned.harvests[1].liftOn, then.planned.harvests[1].window.natural);
    EXPECT_GT(then.planned.harvests[1].liftOn, second);
    int counted = 0;
    for (const PlannedHarvest& each : then.planned.harvests)
        for (const PlannedHarvest& before : then.natural.harvests)
            if (each.batch == before.batch) counted += std::max(daysBetween(before.liftOn, each.liftOn), 0);
    EXPECT_EQ(then.delayDays, counted);
    EXPECT_EQ(late.delayDays, counted); // no other stack waits
    // Early: what follows does not stay where it was.
    const YearPlan early = pinnedTo(first - std::chrono::days{10});
    const StackYear& before = of(early, two->stack);
    EXPECT_EQ(before.planned.harvests[0].liftOn, first - std::chrono::days{10});
    EXPECT_EQ(before.planned.harvests[1].liftOn, before.planned.harvests[1].window.natural);
    EXPECT_NE(before.planned.harvests[1].liftOn, second);
}

TEST(YearPlan, SaysOfTheNextTurnWhatTheClockSays)
{
    int compared = 0;
    for (const int stacks : {3, 5}) {
        const reckoning::Reckoning all = household(stacks);
        const auto plan = planYear(all, {}, 2);
        for (const reckoning::StackReckoning& stack : all.stacks) {
            const auto clock = turnClock(stack, 1, {}, all.stacks.size());
            const auto& harvests = of(*plan, stack.name).planned.harvests;
            if (harvests.empty() || clock->has) continue;
            EXPECT_EQ(clock->turn.p50, harvests.front().liftOn);
            EXPECT_EQ(clock->turn.p10, harvests.front().window.early);
            ++compared;
        }
    }
    EXPECT_GT(compared, 2);
}

/// One date of the next turn: the plan follows fewer members than the due list speaks of, and says what that says.
TEST(YearPlan, SaysOfTheNextTurnWhatTheDueListSays)
{
    reckoning::Reckoning all;
    for (int number = 0; all.stacks.size() < 6 && number < 60; ++number) {
        auto stack = *tests::reckonHousehold(tests::makeHousehold(0x70a7e, number, {}, {}, 330), 256).stack;
        if (stack.now.slots.size() < 2 || stack.record.dryingSince || !nextTurn(stack) || !nextTurn(stack)->p50) continue;
        stack.name = "Stack " + std::to_string(number);
        all.asOf = stack.asOf;
        all.stacks.push_back(std::move(stack));
    }
    ASSERT_EQ(all.stacks.size(), 6U);
    const auto plan = planYear(all, {}, 2);
    ASSERT_LT(plan->members, 256) << "of fewer members, which alone would say other days";
    int told = 0, apart = 0;
    for (const reckoning::StackReckoning& stack : all.stacks) {
        const reckoning::Dates turn = *nextTurn(stack);
        const StackYear& year = of(*plan, stack.name);
        const bool spare = stack.record.spareTrays > 0;
        ASSERT_FALSE(spare ? year.planned.trays.empty() : year.planned.harvests.empty());
        const reckoning::TurnWindow& window = spare ? year.planned.trays.front().window : year.planned.harvests.front().window;
        EXPECT_EQ(window.natural, turn.p50) << stack.name;
        EXPECT_EQ(window.early, turn.p10) << stack.name;
        EXPECT_EQ(window.late, turn.p90) << stack.name;
        EXPECT_EQ(spare ? year.planned.trays.front().on : year.planned.harvests.front().liftOn, turn.p50) << stack.name;
        EXPECT_EQ(turnClock(stack, 1, {}, all.stacks.size())->turn, turn) << stack.name;
        if (const auto early = advice::tooEarly(stack, spare ? advice::LifeStep::addTray : advice::LifeStep::lift); early && (spare || stack.readySince)) {
            EXPECT_EQ(early->on, turn.p50) << stack.name << ": " << early->because;
            ++told;
        }
        reckoning::RotationWish own = plainWish(stack, plan->members);
        own.firstTurn.reset();
        own.nextStepOnly = true;
        reckoning::Crew alone{1};
        const auto course = reckoning::runRotation(*stack.present, own, alone);
        const Day otherwise = course->trays.empty() ? course->harvests.empty() ? Day{} : course->harvests.front().liftOn : course->trays.front().on;
        apart += otherwise != turn.p50 ? 1 : 0;
    }
    EXPECT_GT(told, 0) << "the advice names the day of at least one";
    EXPECT_GT(apart, 0) << "or nothing was mended";
}

/// Half a year away is no lever that more food or warmth could be credited with undoing.
TEST(YearPlan, LeversOfAWishKeepWhatIsPinned)
{
    const reckoning::Reckoning all = household(5);
    const auto plain = planYear(all, {}, 2);
    YearWishes wishes;
    for (const StackYear& year : plain->stacks)
        for (const PlannedHarvest& harvest : year.natural.harvests) wishes.pinned[year.stack][harvest.batch] = all.asOf + std::chrono::days{340};
    const auto plan = planYear(all, wishes, 2);
    const GardenWish wish{1.0, all.asOf + std::chrono::days{300}, false};
    EXPECT_EQ(answerWish(*plan, wish).litres.p95, 0.0);
    const auto raised = raiseWish(all, *plan, wish);
    ASSERT_TRUE(raised);
    EXPECT_EQ(raised->moreFood.litres.p95, 0.0);
    EXPECT_EQ(raised->warmer.litres.p95, 0.0);
    EXPECT_GT(raised->onTheirTurns.chance, 0.9);
}

TEST(YearPlan, CastingsAreTakenOnAChosenDayOfTheWeekToo)
{
    const reckoning::Reckoning all = household(4);
    YearWishes wishes;
    wishes.weekdays = 0x20; // Saturdays
    const auto plan = planYear(all, wishes, 2);
    int taken = 0;
    for (const StackYear& year : plan->stacks)
        for (const PlannedHarvest& harvest : year.planned.harvests) {
            EXPECT_EQ(std::chrono::weekday{harvest.liftOn}, std::chrono::Saturday);
            EXPECT_EQ(std::chrono::weekday{harvest.takeOn}, std::chrono::Saturday);
            EXPECT_EQ(daysBetween(harvest.liftOn, harvest.takeOn), 7);
            ++taken;
        }
    EXPECT_GT(taken, 3);
}

TEST(YearPlan, NothingIsDoneOnDaysAway)
{
    using namespace reckoning;
    // A tray in the light since the day before yesterday, and one that is to be laid: each waits until somebody is there, or is done before.
    journal::Setup three;
    three.trays = 3;
    Notes notes;
    notes.begun("Drying", three).fedWeekly("Drying", 2, 300);
    notes.add(80, "Drying", Bed{{480, Unit::g}, "corrugated cardboard shredded", {}}, 2).add(160, "Drying", Bed{{480, Unit::g}, "corrugated cardboard shredded", {}}, 3);
    notes.add(298, "Drying", Rotate{});
    const auto all = reckon(notes.entries(), until(300, 2));
    ASSERT_TRUE(all->stacks.front().record.dryingSince);
    const auto plain = planYear(*all, {}, 1);
    const PlannedHarvest begun = plain->stacks.front().natural.harvests.front();
    ASSERT_TRUE(begun.begun);
    ASSERT_EQ(daysBetween(all->asOf, begun.takeOn), 4);
    const auto takenWith = [&](int from, int to) {
        YearWishes wishes;
        wishes.away = {{all->asOf + std::chrono::days{from}, all->asOf + std::chrono::days{to}}};
        return daysBetween(all->asOf, planYear(*all, wishes, 1)->stacks.front().planned.harvests.front().takeOn);
    };
    EXPECT_EQ(takenWith(10, 20), 4);
    EXPECT_EQ(takenWith(3, 5), 6);  // back within ten days of the lift
    EXPECT_EQ(takenWith(2, 30), 1); // before they leave
    EXPECT_EQ(takenWith(0, 30), 31);

    Notes first;
    first.begun("New", three).fedWeekly("New", 2, 60);
    const auto young = reckon(first.entries(), until(60, 2));
    const auto grows = planYear(*young, {}, 1);
    ASSERT_FALSE(grows->stacks.front().natural.trays.empty());
    const Day added = grows->stacks.front().natural.trays.front().on;
    YearWishes wishes;
    wishes.away = {{added - std::chrono::days{3}, added + std::chrono::days{9}}};
    EXPECT_EQ(planYear(*young, wishes, 1)->stacks.front().planned.trays.front().on, added + std::chrono::days{10});
}

TEST(YearPlan, AStackOfOneTrayIsTakenOnItsTurnAndBeddedAnew)
{
    using namespace reckoning;
    journal::Setup one;
    one.trays = 1;
    Notes notes;
    notes.begun("Crate", one).fedWeekly("Crate", 2, 100, 400);
    const auto all = reckon(notes.entries(), until(100, 2));
    const auto plan = planYear(*all, {}, 1);
    const StackYear& year = plan->stacks.front();
    ASSERT_FALSE(year.planned.harvests.empty());
    for (const PlannedHarvest& harvest : year.planned.harvests) {
        EXPECT_TRUE(harvest.atOnce);
        EXPECT_EQ(harvest.tray, 1);
        EXPECT_EQ(harvest.takeOn, harvest.liftOn);
        EXPECT_GT(harvest.castingsL.p50, 1.0);
    }
    EXPECT_GT(year.planned.colonyAtEnd.p50, 0.2 * all->stacks.front().now.colonyKg.p50); // its worms go back into the new bedding
    // A day of one's own is kept here too.
    YearWishes wishes;
    const Day on = year.planned.harvests.front().liftOn + std::chrono::days{12};
    wishes.pinned["Crate"][year.planned.harvests.front().batch] = on;
    EXPECT_EQ(planYear(*all, wishes, 1)->stacks.front().planned.harvests.front().takeOn, on);
}

}
}
