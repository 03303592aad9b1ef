// What is advised while nobody is there, and before they leave.
#include "core/advice/household_advice.h"
#include "core/wording/dates.h"

#include "tests/support/calm_stack.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tierloam::tests {
namespace {

using ::testing::Contains;
using ::testing::HasSubstr;
using ::testing::Not;
using advice::adviceFor;

StackReckoning away(int from, int until)
{
    StackReckoning stack = calm();
    stack.record.awayFrom = in(from);
    stack.record.awayUntil = in(until);
    return stack;
}

TEST(AdviceWhileAway, IsForTheDayOfTheReturnUnlessItPresses)
{
    StackReckoning stack = away(-2, 9);
    stack.record.spareTrays = 1;
    stack.turnSince = in(-1);
    const auto all = adviceFor(stack);
    ASSERT_NE(find(all, Code::addTray), nullptr);
    EXPECT_EQ(find(all, Code::addTray)->on, in(10));
    stack.record.awayUntil = in(-1); // back since this morning
    EXPECT_EQ(find(adviceFor(stack), Code::addTray)->on, in(0));

    stack.record.awayUntil = in(9);
    stack.forecast.roomTopTrayFreshKg = 0.1;
    stack.forecast.topTrayFullOn.p50 = in(3);
    EXPECT_EQ(find(adviceFor(stack), Code::addTray)->severity, advice::Severity::concern);
    EXPECT_EQ(find(adviceFor(stack), Code::addTray)->on, in(10)) << "nobody feeds meanwhile: a full tray waits";

    StackReckoning hot = away(-2, 9);
    since(hot, 0, [](StackEstimate& day) { day.binTempC = {31, 32, 33}; });
    const auto presses = adviceFor(hot);
    ASSERT_NE(find(presses, Code::heat), nullptr);
    EXPECT_EQ(find(presses, Code::heat)->on, in(0));
}

TEST(AdviceWhileAway, AsksForNoLookAndNoFood)
{
    const auto drying = [](StackReckoning stack) {
        since(stack, 0, [](StackEstimate& day) { day.slots[1].waterShare = {0.60, 0.72, 0.85}; });
        stack.record.lastFeed = in(-9);
        return stack;
    };
    const StackReckoning there = drying(calm());
    EXPECT_THAT(codes(there), Contains("too-dry"));
    EXPECT_THAT(codes(there), Contains("feed-due"));
    const StackReckoning gone = drying(away(-2, 9));
    EXPECT_THAT(codes(gone), Not(Contains("too-dry")));
    EXPECT_THAT(codes(gone), Not(Contains("feed-due")));
}

/// Nobody feeds meanwhile, and on the return it is another question; what says that the bed lacks air now is told all the same.
TEST(AdviceWhileAway, ThatNoFoodIsToBeGivenLapses)
{
    const auto lacksAir = [](StackReckoning stack, double share) {
        stack.forecast.airLowWithin14Days = 0.6;
        stack.forecast.feedHighKg = stack.forecast.feedNowKg = 0.0;
        since(stack, 0, [share](StackEstimate& day) { day.slots[1].air = share; });
        return stack;
    };
    const auto told = adviceFor(lacksAir(calm(), 0.9));
    ASSERT_NE(find(told, Code::overfed), nullptr);
    EXPECT_EQ(find(told, Code::overfed)->severity, advice::Severity::due);
    EXPECT_EQ(find(told, Code::overfed)->food, advice::Food::withhold);
    EXPECT_THAT(codes(lacksAir(away(-2, 9), 0.9)), Not(Contains("overfed")));
    EXPECT_THAT(codes(lacksAir(away(-2, 9), 0.6)), Contains("overfed")) << "a concern";
    StackReckoning only = away(-2, 9);
    only.now.slots.resize(1);
    only.now.slots[0].state = TrayState::ready;
    only.readySince = only.turnSince = in(-3);
    const auto all = adviceFor(only);
    ASSERT_NE(find(all, Code::harvestReady), nullptr) << "it is of the castings";
    EXPECT_EQ(find(all, Code::harvestReady)->on, in(10));
}

/// A tray lifted the day before they leave would hang in the light until they are back.
TEST(AdviceBeforeLeaving, LiftsWaitForTheReturnAndFoodComesBefore)
{
    StackReckoning stack = calm();
    stack.record.spareTrays = 0;
    since(stack, -3, [](StackEstimate& day) {
        day.slots[0].feedToCast = {0.04, 0.06, 0.08};
        day.slots[0].readyProbability = 0.95;
        day.slots[0].state = TrayState::ready;
    });
    stack.turnSince = stack.readySince = in(-1);
    stack.record.lastFeed = in(-5); // due in two days
    stack.record.medianFeedGapDays = 7;
    const auto there = adviceFor(stack);
    ASSERT_NE(find(there, Code::harvestReady), nullptr);
    EXPECT_EQ(find(there, Code::harvestReady)->on, in(0));
    ASSERT_NE(find(there, Code::feedDue), nullptr);
    EXPECT_EQ(find(there, Code::feedDue)->on, in(2));
    stack.record.nextAwayFrom = in(1);
    stack.record.nextAwayUntil = in(14);
    const auto leaving = adviceFor(stack);
    EXPECT_EQ(find(leaving, Code::harvestReady)->on, in(15));
    EXPECT_THAT(find(leaving, Code::harvestReady)->because, HasSubstr("nobody is there"));
    EXPECT_EQ(find(leaving, Code::feedDue)->on, in(0)) << "the day before";
    stack.record.lastFeed = in(-2); // due in five days: more than what is else told ahead
    ASSERT_NE(find(adviceFor(stack), Code::feedDue), nullptr);
    EXPECT_EQ(find(adviceFor(stack), Code::feedDue)->on, in(0));
    EXPECT_THAT(tests::reasonOf(stack, Code::feedDue), HasSubstr("nobody is there"));
    stack.record.nextAwayFrom = in(4);
    EXPECT_EQ(find(adviceFor(stack), Code::feedDue), nullptr) << "told two days before it is to be given";
    stack.record.nextAwayFrom = in(1);
    stack.record.lastFeed = in(-5);
    stack.record.nextAwayUntil = in(2); // two days are no matter
    EXPECT_EQ(find(adviceFor(stack), Code::harvestReady)->on, in(0));
    stack.record.nextAwayFrom = in(8); // the castings are taken by then
    stack.record.nextAwayUntil = in(20);
    EXPECT_EQ(find(adviceFor(stack), Code::harvestReady)->on, in(0));
    // More than one absence: two days are no matter, the fortnight after them is; and the day of the return may lie on the eve of the next.
    stack.record.nextAwayFrom = in(1);
    stack.record.nextAwayUntil = in(2);
    stack.record.laterAway = {{in(5), in(18)}};
    EXPECT_EQ(find(adviceFor(stack), Code::harvestReady)->on, in(19));
    EXPECT_THAT(find(adviceFor(stack), Code::harvestReady)->because, HasSubstr(wording::dayRange(in(5), in(18), stack.asOf).toStdString()));
    stack.record.nextAwayUntil = in(14);
    stack.record.laterAway = {{in(17), in(30)}, {in(60), in(70)}};
    EXPECT_EQ(find(adviceFor(stack), Code::harvestReady)->on, in(31)) << "it would hang through the second one";
    // What is due in the second is given on the day before that, not before the first.
    stack.record.nextAwayFrom = stack.record.nextAwayUntil = in(1);
    stack.record.laterAway = {{in(3), in(12)}};
    stack.record.lastFeed = in(-3);
    ASSERT_NE(find(adviceFor(stack), Code::feedDue), nullptr);
    EXPECT_EQ(find(adviceFor(stack), Code::feedDue)->on, in(2));
}

}
}
