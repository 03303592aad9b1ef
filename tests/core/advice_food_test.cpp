// Too much, too little, and what it is made of: each raised when it should be, silent when not, withdrawn when settled.
#include "core/advice/advice.h"
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

TEST(AdviceOnFood, IsSilentWhenNothingIsDue) { EXPECT_THAT(codes(calm()), IsEmpty()); }

TEST(AdviceOnFood, OverfedNowAndBeforehand)
{
    StackReckoning stack = calm();
    stack.record.lastFeed = in(-8);
    ASSERT_THAT(codes(stack), Contains("feed-due"));
    stack.forecast.airLowWithin14Days = 0.5;
    EXPECT_THAT(codes(stack), Contains("overfed"));
    EXPECT_THAT(codes(stack), Not(Contains("feed-due")));
    auto all = adviceFor(stack);
    EXPECT_EQ(find(all, Code::overfed)->severity, Severity::due);
    EXPECT_THAT(find(all, Code::overfed)->text, HasSubstr("1.6 kg"));
    stack.forecast.airLowWithin14Days = 0.31; // yesterday knew nothing of it
    EXPECT_THAT(codes(stack), Not(Contains("overfed")));
    since(stack, -6, [](StackEstimate& day) { day.slots[1].air = 0.69; });
    all = adviceFor(stack);
    EXPECT_EQ(find(all, Code::overfed)->severity, Severity::concern);
    since(stack, -3, [](StackEstimate& day) { day.slots[1].air = 0.75; }); // better, not yet good
    EXPECT_THAT(codes(stack), Contains("overfed"));
    stack.forecast.airLowWithin14Days = 0.0;
    since(stack, 0, [](StackEstimate& day) { day.slots[1].air = 0.81; });
    EXPECT_THAT(codes(stack), Not(Contains("overfed")));
}

TEST(AdviceOnFood, NobodyIsAskedToFeedInDaysAway)
{
    StackReckoning stack = calm();
    stack.record.lastFeed = in(-9);
    EXPECT_THAT(codes(stack), Contains("feed-due"));
    stack.record.awayFrom = in(-8);
    stack.record.awayUntil = in(0);
    EXPECT_THAT(codes(stack), Not(Contains("feed-due")));
    stack.record.awayUntil = in(-1); // back since today
    EXPECT_THAT(codes(stack), Contains("feed-due"));
}

TEST(AdviceOnFood, HungryOnlyWhereFoodIsWhatIsMissing)
{
    StackReckoning stack = calm();
    const auto want = [](StackEstimate& day) {
        day.ration = {0.5, 0.7, 0.95};
        for (TrayEstimate& each : day.slots) each.strata.softenedCm = 0.1;
    };
    since(stack, 0, want);
    const auto all = adviceFor(stack);
    ASSERT_NE(find(all, Code::hungry), nullptr);
    EXPECT_THAT(find(all, Code::hungry)->text, HasSubstr("900 g"));
    stack.firstBedding = in(-6);
    EXPECT_THAT(codes(stack), Not(Contains("hungry"))) << "nobody has eaten yet";
    stack.firstBedding = in(-7);
    EXPECT_THAT(codes(stack), Contains("hungry"));
    StackReckoning more = stack;
    more.forecast.feedLowKg = 0.918; // above the usual 0.9
    EXPECT_THAT(find(adviceFor(more), Code::hungry)->text, HasSubstr("Feed 910 g"));
    EXPECT_THAT(reasonOf(more, Code::hungry), HasSubstr("910 g a week would do")) << "the same amount, rounded alike";
    stack.record.lastFeed = in(-2); // it has yet to soften: a second click would feed them twice
    EXPECT_THAT(codes(stack), Not(Contains("hungry")));
    stack.record.lastFeed = in(-3);
    EXPECT_THAT(codes(stack), Contains("hungry"));
    since(stack, 0, [](StackEstimate& day) { day.slots[1].strata.softenedCm = 2.0; }); // food lies there
    EXPECT_THAT(codes(stack), Not(Contains("hungry")));
    stack = calm();
    since(stack, 0, want);
    since(stack, 0, [](StackEstimate& day) { day.binTempC = {5, 7, 7.9}; }); // too cold to eat
    EXPECT_THAT(codes(stack), Not(Contains("hungry")));
    stack = calm();
    since(stack, 0, want);
    stack.forecast.feedHighKg = stack.forecast.feedNowKg = 0.04;
    EXPECT_THAT(codes(stack), Not(Contains("hungry")));
}

/// What was usual for the colony of last summer is far too much for what is left of it.
TEST(AdviceOnFood, AfterMonthsWithoutFoodTheyGetWhatKeepsThemAndNotTheUsualOfThen)
{
    StackReckoning stack = calm();
    since(stack, 0, [](StackEstimate& day) {
        day.ration = {0.5, 0.7, 0.95};
        for (TrayEstimate& each : day.slots) each.strata.softenedCm = 0.1;
    });
    stack.record.lastFeed = in(-56);
    EXPECT_DOUBLE_EQ(find(adviceFor(stack), Code::hungry)->kg, 0.9);
    stack.record.lastFeed = in(-57);
    EXPECT_DOUBLE_EQ(find(adviceFor(stack), Code::hungry)->kg, stack.forecast.feedLowKg);
    EXPECT_THAT(find(adviceFor(stack), Code::hungry)->text, HasSubstr("300 g"));
}

TEST(AdviceOnFood, HungryIsWithdrawnBelowSixtyPerCent)
{
    StackReckoning stack = calm();
    const auto want = [](StackEstimate& day) {
        day.ration = {0.5, 0.7, 0.95};
        for (TrayEstimate& each : day.slots) each.strata.softenedCm = 0.1;
    };
    since(stack, -3, want);
    since(stack, 0, [](StackEstimate& day) { day.ration = {0.6, 0.9, 1.2}; }); // 0.65
    EXPECT_THAT(codes(stack), Contains("hungry"));
    since(stack, 0, [](StackEstimate& day) { day.ration = {0.7, 0.95, 1.3}; }); // 0.56
    EXPECT_THAT(codes(stack), Not(Contains("hungry")));
}

TEST(AdviceOnFood, LowCarbonNamesThePaper)
{
    StackReckoning stack = calm();
    stack.forecast.usualCarbonKg = 0.045;
    stack.forecast.usualNitrogenKg = 0.003; // 15
    const auto all = adviceFor(stack);
    ASSERT_NE(find(all, Code::lowCarbon), nullptr);
    // (30 · 0.003 − 0.045)/(0.504 − 30 · 0.0012)/0.95 = 0.1012 kg, shown as 100 g.
    EXPECT_THAT(find(all, Code::lowCarbon)->text, HasSubstr("100 g"));
    stack.forecast.usualCarbonKg = 0.066; // 22
    EXPECT_THAT(codes(stack), Not(Contains("low-carbon")));
    stack.now.slots[1].cnRatio = {14, 17, 20};
    EXPECT_THAT(codes(stack), Contains("low-carbon"));
    stack.forecast.usualCarbonKg = 0.073; // 24.3
    EXPECT_THAT(codes(stack), Contains("low-carbon"));
    stack.forecast.usualCarbonKg = 0.0738; // 24.6, in print 25 of 25 wanted
    EXPECT_THAT(codes(stack), Not(Contains("low-carbon")));
    stack.forecast.usualCarbonKg = 0.075; // 25
    EXPECT_THAT(codes(stack), Not(Contains("low-carbon")));
    stack.forecast.usualCarbonKg = 0.0135;
    stack.forecast.usualNitrogenKg = 0.0009; // 15: (0.027 − 0.0135)/0.4446 = 0.0304 kg
    EXPECT_THAT(codes(stack), Contains("low-carbon"));
    stack.forecast.usualCarbonKg = 0.01275;
    stack.forecast.usualNitrogenKg = 0.00085; // 15: 0.0287 kg
    EXPECT_THAT(codes(stack), Not(Contains("low-carbon"))) << "a handful that nobody weighs";
}

/// Told as far ahead as a feeding is: who feeds on the day on which it falls due would never see it else.
TEST(AdviceOnFood, ThatNoneIsBorneIsToldBeforeItFallsDue)
{
    StackReckoning stack = calm();
    stack.forecast.feedHighKg = stack.forecast.feedNowKg = 0.02;
    stack.record.lastFeed = in(-4);
    EXPECT_THAT(codes(stack), Not(Contains("overfed")));
    stack.record.lastFeed = in(-5); // due in two days
    const auto all = adviceFor(stack);
    ASSERT_NE(find(all, Code::overfed), nullptr);
    EXPECT_EQ(find(all, Code::overfed)->food, Food::withhold);
}

/// A week of another food moves the mean of eight by a little: that takes nothing back.
TEST(AdviceOnFood, LowCarbonStandsUntilThereIsClearlyEnough)
{
    StackReckoning stack = calm();
    const auto ratio = [&](int from, double carbonToNitrogen) {
        since(stack, from, [carbonToNitrogen](StackEstimate& day) { day.ahead->usualNitrogenKg = 0.003; day.ahead->usualCarbonKg = 0.003 * carbonToNitrogen; });
        stack.forecast.usualNitrogenKg = 0.003;
        stack.forecast.usualCarbonKg = 0.003 * carbonToNitrogen;
    };
    ratio(-40, 21.0);
    EXPECT_THAT(codes(stack), Not(Contains("low-carbon"))) << "never raised";
    ratio(-9, 19.5);
    ratio(-3, 21.0);
    EXPECT_THAT(codes(stack), Contains("low-carbon"));
    ratio(0, 22.1);
    EXPECT_THAT(codes(stack), Not(Contains("low-carbon")));
    ratio(-9, 24.0);
    since(stack, -9, [](StackEstimate& day) { day.slots[1].cnRatio = {14, 17.5, 20}; });
    ASSERT_THAT(codes(stack), Contains("low-carbon"));
    since(stack, 0, [](StackEstimate& day) { day.slots[1].cnRatio = {14, 18.5, 20}; });
    EXPECT_THAT(codes(stack), Contains("low-carbon"));
    since(stack, 0, [](StackEstimate& day) { day.slots[1].cnRatio = {14, 19.1, 20}; });
    EXPECT_THAT(codes(stack), Not(Contains("low-carbon")));
}

}
}
