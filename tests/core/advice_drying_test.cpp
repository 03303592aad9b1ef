// The tray in the light, and what was done or would be done before its time.
#include "core/advice/too_early.h"
#include "core/reckoning/outlook.h"
#include "tests/support/calm_stack.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tierloam::advice {
namespace {

using namespace reckoning;
using ::testing::Contains;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::Not;
using namespace tests;

StackReckoning dryingStack(int days, double left)
{
    StackReckoning stack = calm();
    stack.record.dryingSince = in(-days);
    stack.record.daysDrying = days;
    for (StackEstimate& day : stack.history) day.slots[1].wormShare = {0.2, 0.3, 0.4};
    since(stack, -days, [&](StackEstimate& day) {
        day.slots[1].state = TrayState::drying;
        day.slots[1].readyProbability = 0.95;
        day.slots[1].wormShare = {0.2, 0.25, 0.3};
    });
    stack.now.slots[1].wormShare = {0.001, 0.3 * left, 0.2};
    return stack;
}

TEST(AdviceOfDrying, DryingDoneWhenFewWormsAreLeftAndLongAfterTenDays)
{
    EXPECT_THAT(codes(dryingStack(4, 0.12)), IsEmpty());
    EXPECT_THAT(codes(dryingStack(1, 0.04)), IsEmpty());
    const auto all = adviceFor(dryingStack(4, 0.04));
    ASSERT_NE(find(all, Code::dryingDone), nullptr);
    EXPECT_EQ(find(all, Code::dryingDone)->slot, 2);
    EXPECT_THAT(find(all, Code::dryingDone)->because, HasSubstr("4 %"));
    EXPECT_THAT(codes(dryingStack(10, 0.5)), Not(Contains("drying-long")));
    EXPECT_THAT(codes(dryingStack(11, 0.01)), Contains("drying-long"));
    EXPECT_THAT(codes(dryingStack(11, 0.01)), Not(Contains("drying-done")));
}

TEST(AdviceOfDrying, ATrayAddedEarlyIsToldForThreeWeeks)
{
    StackReckoning stack = calm();
    stack.record.lastTrayAdded = in(-3);
    EXPECT_THAT(codes(stack), Not(Contains("too-early"))); // the one beneath: 3.0 cm, 0.4
    since(stack, -3, [](StackEstimate& day) { day.slots[0].castingsDepthCm = {1.0, 1.4, 1.8}; });
    const auto all = adviceFor(stack);
    ASSERT_NE(find(all, Code::tooEarly), nullptr);
    EXPECT_EQ(find(all, Code::tooEarly)->slot, 1);
    stack.record.lastTrayAdded = in(-22);
    EXPECT_THAT(codes(stack), Not(Contains("too-early")));
    stack.record.lastTrayAdded = in(-10);
    // Past both medians nothing is told that they deny, and it does not come back with a feeding: 2.5 cm with 0.61, then 0.39, then 0.24.
    since(stack, -2, [](StackEstimate& day) { day.slots[0].castingsDepthCm = {2.2, 2.6, 3.0}; });
    EXPECT_THAT(codes(stack), Not(Contains("too-early")));
    since(stack, -1, [](StackEstimate& day) { day.slots[0].castingsDepthCm = {2.0, 2.4, 2.8}; });
    EXPECT_THAT(codes(stack), Not(Contains("too-early")));
    since(stack, -1, [](StackEstimate& day) { day.slots[0].castingsDepthCm = {1.9, 2.27, 2.67}; });
    EXPECT_THAT(codes(stack), Contains("too-early"));
    since(stack, 0, [](StackEstimate& day) { day.slots[0].castingsDepthCm = {2.6, 3.0, 3.4}; });
    EXPECT_THAT(codes(stack), Not(Contains("too-early")));
}

/// "The top tray is full: add a tray" was followed: nobody is blamed for it the day after.
TEST(AdviceOfDrying, ATrayAddedForRoomDidNotComeEarly)
{
    StackReckoning stack = calm();
    stack.record.lastTrayAdded = in(-3);
    since(stack, -40, [](StackEstimate& day) { day.slots[0].castingsDepthCm = {1.0, 1.4, 1.8}; });
    ASSERT_THAT(codes(stack), Contains("too-early"));
    const auto roomOn = [&](int day, double kg) {
        for (StackEstimate& each : stack.history)
            if (each.day == in(day)) each.ahead->roomTopTrayFreshKg = kg;
    };
    roomOn(-3, 0.5); // once it stood
    EXPECT_THAT(codes(stack), Contains("too-early"));
    roomOn(-4, 0.9); // the usual week fitted
    EXPECT_THAT(codes(stack), Contains("too-early"));
    roomOn(-4, 0.8);
    EXPECT_THAT(codes(stack), Not(Contains("too-early")));
    EXPECT_EQ(slotForFood(stack), 2);
}

TEST(AdviceOfDrying, ATrayLiftedEarlyIsCoveredWhenItDriesAndNotTaken)
{
    StackReckoning stack = dryingStack(11, 0.4);
    since(stack, -11, [](StackEstimate& day) { day.slots[1].readyProbability = 0.9; });
    EXPECT_THAT(find(adviceFor(stack), Code::dryingLong)->text, HasSubstr("Take the castings"));
    since(stack, -11, [](StackEstimate& day) { day.slots[1].readyProbability = 0.2; });
    EXPECT_THAT(find(adviceFor(stack), Code::dryingLong)->text, HasSubstr("Cover the tray"));
}

TEST(AdviceOfDrying, ATrayLiftedEarlyIsTold)
{
    StackReckoning stack = dryingStack(3, 0.4);
    since(stack, -3, [](StackEstimate& day) { day.slots[1].readyProbability = 0.2; });
    EXPECT_THAT(codes(stack), Contains("too-early"));
    since(stack, 0, [](StackEstimate& day) { day.slots[1].readyProbability = 0.51; });
    EXPECT_THAT(codes(stack), Not(Contains("too-early")));
}

TEST(TooEarly, SaysWhyAndWhenItWouldBeRight)
{
    StackReckoning stack = calm();
    stack.forecast.turnOn = {in(20), in(30), in(50)};
    stack.now.slots[0].readyOn = {in(25), in(44), in(70)};
    auto early = tooEarly(stack, LifeStep::addTray);
    ASSERT_TRUE(early);
    EXPECT_EQ(early->on, in(30));
    EXPECT_THAT(early->because, HasSubstr("1 June"));
    early = tooEarly(stack, LifeStep::lift);
    ASSERT_TRUE(early);
    EXPECT_EQ(early->on, in(44));
    EXPECT_THAT(early->because, HasSubstr("right not before 15 June")) << "without members the later of both medians is a bound and no more";
    stack.turnSince = in(-1);
    EXPECT_FALSE(tooEarly(stack, LifeStep::addTray));
    EXPECT_TRUE(tooEarly(stack, LifeStep::lift));
    stack.readySince = in(-1);
    EXPECT_FALSE(tooEarly(stack, LifeStep::lift));
    // A tray that was never in the light: its worms would leave with the castings.
    const auto unlit = tooEarly(stack, LifeStep::take);
    ASSERT_TRUE(unlit);
    EXPECT_EQ(unlit->on, in(6));
    EXPECT_THAT(unlit->because, HasSubstr("30 % of the colony"));
    StackReckoning alone = stack;
    alone.now.slots.resize(1);
    EXPECT_FALSE(tooEarly(alone, LifeStep::take)) << "there is no tray for them to go down into";
    EXPECT_TRUE(tooEarly(dryingStack(3, 0.3), LifeStep::take));
    EXPECT_GT(tooEarly(dryingStack(3, 0.3), LifeStep::take)->on, today);
    EXPECT_FALSE(tooEarly(dryingStack(5, 0.03), LifeStep::take));
    for (const LifeStep step : {LifeStep::lift, LifeStep::addTray}) { // one tray in the light at a time
        ASSERT_TRUE(tooEarly(dryingStack(2, 0.3), step));
        EXPECT_THAT(tooEarly(dryingStack(2, 0.3), step)->text, HasSubstr("in the light"));
        EXPECT_EQ(tooEarly(dryingStack(2, 0.3), step)->on, in(4));
    }
}

/// Half of the members are ready late and have the turn early, the other half the other way round: none has both before the late day.
TEST(TooEarly, TheDayIsThatOfEachMembersLaterOne)
{
    StackReckoning stack = calm();
    stack.firstBedding = in(-100);
    reckoning::Present present;
    present.members.stack.shapes.resize(2);
    present.members.stack.shapes[0].batch = 1;
    present.members.stack.shapes[1].batch = 2;
    ASSERT_EQ(present.members.stack.topToFeed(), 1);
    constexpr int soon = 110, late = 160; // days since the first bedding, of 10 and 60 days ahead
    present.base.firsts[1].ready = {soon, soon, soon, late, late};
    present.base.firsts[2].filled = {late, late, soon, soon, soon};
    stack.present = std::make_shared<const reckoning::Present>(std::move(present));
    stack.now.slots[0].readyOn = {in(10), in(10), in(60)};
    stack.forecast.turnOn = {in(10), in(10), in(60)};
    const auto early = tooEarly(stack, LifeStep::lift);
    ASSERT_TRUE(early);
    EXPECT_EQ(early->on, in(60)) << "four of five members; both medians say 10 days";
    EXPECT_THAT(early->because, HasSubstr("right about 1 July"));
    stack.turnSince = in(-1);
    EXPECT_EQ(tooEarly(stack, LifeStep::lift)->on, in(10)) << "readiness alone is missing";
}

}
}
