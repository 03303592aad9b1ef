// A colony that is nearly gone is told, with the look that settles it, and is not fed.
#include "core/advice/food_limit.h"

#include "tests/support/calm_stack.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace tierloam::advice {
namespace {

using namespace reckoning;
using ::testing::Contains;
using ::testing::HasSubstr;
using ::testing::Not;
using namespace tests;

/// The colony of today and of some days before it.
void colony(StackReckoning& stack, int from, double kg)
{
    since(stack, from, [kg](StackEstimate& day) { day.colonyKg = {kg * 0.2, kg, kg * 3}; });
}

TEST(AdviceOfTheColony, HardlyAWormIsToldWithTheLookThatSettlesItAndGetsNoFood)
{
    StackReckoning stack = calm();
    stack.record.lastFeed = in(-9);
    colony(stack, -10, 0.0049);
    auto all = adviceFor(stack);
    const Advice* gone = find(all, Code::lookNext);
    ASSERT_NE(gone, nullptr);
    EXPECT_EQ(gone->severity, Severity::concern);
    EXPECT_EQ(gone->look, LookKind::wormsSeen);
    EXPECT_EQ(gone->slot, 2) << "the tray being fed";
    EXPECT_THAT(gone->text, HasSubstr("few, some or many worms, and give no food until then"));
    EXPECT_THAT(gone->because, HasSubstr("1.1 kg"));
    EXPECT_THAT(codes(stack), Not(Contains("feed-due")));
    EXPECT_EQ(foodLimit(stack, all).kg, 0.0);
    colony(stack, 0, 0.007); // kept until 8 g
    EXPECT_THAT(codes(stack), Contains("look-next"));
    colony(stack, 0, 0.009);
    EXPECT_THAT(codes(stack), Not(Contains("look-next")));
    EXPECT_THAT(codes(stack), Contains("feed-due"));
}

TEST(AdviceOfTheColony, WhoHasLookedIsToldToPutWormsIn)
{
    StackReckoning stack = calm();
    colony(stack, -10, 0.003);
    stack.record.lastLook = in(-2);
    EXPECT_NE(find(adviceFor(stack), Code::lookNext), nullptr) << "a tray that was weighed, or bits that were looked for, are no look for worms";
    stack.record.lastWormLook = in(-2);
    const auto all = adviceFor(stack);
    EXPECT_EQ(find(all, Code::lookNext), nullptr);
    ASSERT_NE(find(all, Code::recordDisagrees), nullptr);
    EXPECT_TRUE(find(all, Code::recordDisagrees)->wormsMissing);
    EXPECT_THAT(find(all, Code::recordDisagrees)->text, HasSubstr("Put worms in"));
}

TEST(AdviceOfTheColony, ATenthAfterColdOrHeatIsTold)
{
    for (const double bed : {3.0, 32.0}) {
        StackReckoning stack = calm();
        since(stack, -30, [bed](StackEstimate& day) { day.binTempC = {bed - 1, bed, bed + 1}; });
        since(stack, -3, [](StackEstimate& day) { day.binTempC = {10, 12, 14}; });
        stack.now.ahead->bedIn7Days = stack.now.ahead->bedIn14Days = {10, 12, 14};
        colony(stack, -20, 0.1);
        const auto all = adviceFor(stack);
        ASSERT_NE(find(all, Code::lookNext), nullptr) << bed;
        EXPECT_EQ(find(all, Code::lookNext)->text, "See whether there are few, some or many worms");
        EXPECT_GT(foodLimit(stack, {*find(all, Code::lookNext)}).kg, 0.0) << "what is left may be fed";
        colony(stack, -20, 0.12); // more than a tenth of 1.1 kg, less than half
        ASSERT_NE(find(adviceFor(stack), Code::lookNext), nullptr) << "frost kills more than a quarter in a day";
        EXPECT_EQ(find(adviceFor(stack), Code::lookNext)->severity, Severity::due);
        EXPECT_THAT(reasonOf(stack, Code::lookNext), HasSubstr("it was 1.1 kg"));
        colony(stack, -20, 0.7);
        EXPECT_THAT(codes(stack), Not(Contains("look-next")));
    }
    StackReckoning mild = calm();
    colony(mild, -20, 0.1); // taken out, or moved: the bed was never too cold or too hot
    EXPECT_THAT(codes(mild), Not(Contains("look-next")));
}

/// By and by, without cold or heat: told once it is half of what it was, and kept until it is 0.6 of it.
TEST(AdviceOfTheColony, OneThatDwindlesIsTold)
{
    StackReckoning stack = calm();
    const auto falling = [&](double aDay, double today) {
        since(stack, -40, [&](StackEstimate& day) {
            const double kg = today * std::pow(1.0 + aDay, daysBetween(day.day, stack.asOf));
            day.colonyKg = {kg * 0.7, kg, kg * 1.5};
        });
    };
    falling(0.02, 0.5); // 0.45 of what it was 40 days ago
    auto all = adviceFor(stack);
    const Advice* told = find(all, Code::lookNext);
    ASSERT_NE(told, nullptr);
    EXPECT_EQ(told->look, LookKind::wormsSeen);
    EXPECT_EQ(told->severity, Severity::due);
    EXPECT_THAT(told->text, HasSubstr("the colony dwindles"));
    EXPECT_THAT(told->because, HasSubstr("it was 1."));
    EXPECT_EQ(told->food, Food::none) << "it may be fed";
    stack.record.lastWormLook = in(-13);
    EXPECT_EQ(find(adviceFor(stack), Code::lookNext), nullptr) << "whoever has looked knows";
    stack.record.lastWormLook = in(-14);
    EXPECT_NE(find(adviceFor(stack), Code::lookNext), nullptr);
    falling(0.008, 0.5); // 0.73
    EXPECT_EQ(find(adviceFor(stack), Code::lookNext), nullptr);
    falling(0.02, 0.5);
    colony(stack, 0, 0.6); // 0.52: kept
    EXPECT_NE(find(adviceFor(stack), Code::lookNext), nullptr);
    colony(stack, 0, 0.8);
    EXPECT_EQ(find(adviceFor(stack), Code::lookNext), nullptr);
    falling(0.0, 1.0);
    colony(stack, -60, 0.4); // taken out on one day
    EXPECT_EQ(find(adviceFor(stack), Code::lookNext), nullptr);
}

/// What no colony's trays carry is told before worms are asked for that were put in the day before.
TEST(AdviceOfTheColony, ASlipOfThePenIsNamedAndNotTheWormsItKilled)
{
    StackReckoning stack = calm();
    stack.history.clear();
    stack.now.colonyKg = {};
    ASSERT_NE(find(adviceFor(stack), Code::recordDisagrees), nullptr);
    EXPECT_THAT(find(adviceFor(stack), Code::recordDisagrees)->because, HasSubstr("none are written down"));
    stack.record.lastStocked = in(-3);
    EXPECT_THAT(find(adviceFor(stack), Code::recordDisagrees)->because, HasSubstr("none are left by what is known"));
    stack.oversized = {{Oversized::What::worms, 12, in(-3), 0, 40.0, 0.8, 40.0}};
    const auto all = adviceFor(stack);
    EXPECT_EQ(std::count_if(all.begin(), all.end(), [](const Advice& each) { return each.code == Code::recordDisagrees; }), 1);
    const Advice* told = find(all, Code::recordDisagrees);
    ASSERT_NE(told, nullptr);
    EXPECT_EQ(told->entry, 12);
    EXPECT_FALSE(told->wormsMissing);
    EXPECT_EQ(told->severity, Severity::concern);
    EXPECT_THAT(told->because, HasSubstr("40.00 kg of worms were put in"));
    stack.oversized.front().day = in(-61); // nobody remembers
    EXPECT_TRUE(find(adviceFor(stack), Code::recordDisagrees)->wormsMissing);
}

TEST(AdviceOfTheColony, AHeapThatNoLidClosesOverIsToldWithItsEntry)
{
    StackReckoning stack = calm();
    const double high = stack.record.trayHeightCm;
    stack.oversized = {{Oversized::What::matter, 12, in(-3), 2, 1.26 * high, high - 1.0, 0.6 * high}, {Oversized::What::matter, 13, in(-2), 2, 1.3 * high, high - 1.0, 0.4 * high}};
    const auto all = adviceFor(stack);
    const Advice* told = find(all, Code::recordDisagrees);
    ASSERT_NE(told, nullptr);
    EXPECT_EQ(told->entry, 12);
    EXPECT_THAT(told->because, HasSubstr("slot 2"));
    stack.oversized.front().comesTo = 1.24 * high;
    EXPECT_EQ(find(adviceFor(stack), Code::recordDisagrees), nullptr);
}

TEST(AdviceOfTheColony, ColdTellsTheLossAsHeatDoes)
{
    for (const double bed : {3.0, 32.0}) {
        StackReckoning stack = calm();
        since(stack, -2, [bed](StackEstimate& day) { day.binTempC = {bed - 0.5, bed, bed + 0.5}; });
        colony(stack, -5, 0.4);
        const auto all = adviceFor(stack);
        const Advice* told = find(all, bed < 10 ? Code::cold : Code::heat);
        ASSERT_NE(told, nullptr);
        EXPECT_THAT(told->because, HasSubstr("colony 400 g, two weeks ago 1.1 kg")) << bed;
        colony(stack, -20, 0.001); // there was nothing to lose
        colony(stack, -5, 0.0001);
        EXPECT_THAT(find(adviceFor(stack), bed < 10 ? Code::cold : Code::heat)->because, Not(HasSubstr("two weeks ago"))) << bed;
    }
}

}
}
