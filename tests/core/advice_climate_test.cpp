// Heat and cold: told before they come, and steady between their thresholds.
#include "core/advice/advice.h"
#include "tests/support/calm_stack.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tierloam::advice {
namespace {

using namespace reckoning;
using ::testing::Contains;
using ::testing::HasSubstr;
using ::testing::Not;
using namespace tests;

void ahead(StackReckoning& stack, Band week, Band fortnight)
{
    stack.forecast.days = {stack.now, stack.now};
    stack.forecast.days[0].day = in(7);
    stack.forecast.days[0].binTempC = week;
    stack.forecast.days[1].day = in(14);
    stack.forecast.days[1].binTempC = fortnight;
}

TEST(AdviceOfClimate, HeatIsToldBeforeItComes)
{
    StackReckoning stack = calm();
    ahead(stack, {24, 26, 28}, {27, 29, 31});
    EXPECT_THAT(codes(stack), Not(Contains("heat")));
    ahead(stack, {25, 27, 29}, {28, 31, 34});
    auto all = adviceFor(stack);
    const Advice* heat = find(all, Code::heat);
    ASSERT_NE(heat, nullptr);
    EXPECT_GT(heat->on, in(7));
    EXPECT_LE(heat->on, in(14));
    EXPECT_EQ(heat->severity, Severity::due);
    EXPECT_THAT(heat->text, HasSubstr("cooler place"));
    stack.forecast.ownWarmthK = 4.0;
    all = adviceFor(stack);
    EXPECT_THAT(find(all, Code::heat)->text, HasSubstr("heats itself"));
    stack = calm();
    since(stack, 0, [](StackEstimate& day) { day.binTempC = {32, 33.5, 35}; });
    EXPECT_EQ(adviceFor(stack).front().severity, Severity::urgent);
    since(stack, 0, [](StackEstimate& day) { day.binTempC = {26, 28, 30}; });
    EXPECT_THAT(codes(stack), Not(Contains("heat")));
}

TEST(AdviceOfClimate, HeatThatPassesIsNotAnnounced)
{
    StackReckoning stack = calm();
    const auto bed = [&](int from, double c) { since(stack, from, [c](StackEstimate& day) { day.binTempC = {c - 2, c, c + 2}; }); };
    bed(-5, 30.5);
    bed(0, 29.6); // above 30 with a third of the chance: still told
    const auto told = [&] {
        const auto all = adviceFor(stack);
        const Advice* heat = find(all, Code::heat);
        EXPECT_NE(heat, nullptr);
        return heat != nullptr ? *heat : Advice{};
    };
    ahead(stack, {25, 27, 29}, {23, 25, 27});
    EXPECT_EQ(told().severity, Severity::hint);
    EXPECT_THAT(told().text, HasSubstr("Leave the stack in the cool"));
    EXPECT_EQ(told().on, today);
    ahead(stack, {28, 29.8, 32}, {29, 31, 33}); // it comes back
    EXPECT_EQ(told().severity, Severity::due);
    EXPECT_THAT(told().text, HasSubstr("before it heats up"));
}

TEST(AdviceOfClimate, HeatThatIsThereSaysHowToCoolAndWhatItCosts)
{
    StackReckoning stack = calm();
    stack.record.lastFeed = in(-9);
    const auto heat = [&] {
        const auto all = adviceFor(stack);
        const Advice* found = find(all, Code::heat);
        EXPECT_NE(found, nullptr);
        return found != nullptr ? *found : Advice{};
    };
    const auto bed = [&](int from, double c) { since(stack, from, [c](StackEstimate& day) { day.binTempC = {c - 1, c, c + 1}; }); };
    bed(0, 31.5);
    EXPECT_EQ(heat().severity, Severity::concern);
    EXPECT_THAT(heat().text, HasSubstr("lid ajar"));
    EXPECT_THAT(heat().because, Not(HasSubstr("own heat"))) << "a tenth of a degree says nothing";
    EXPECT_THAT(codes(stack), Contains("feed-due"));
    bed(-3, 33.4);
    bed(0, 32.8);
    EXPECT_EQ(heat().severity, Severity::urgent) << "a fifth of a degree less does not make it better";
    EXPECT_THAT(heat().text, HasSubstr("no food"));
    EXPECT_THAT(codes(stack), Not(Contains("feed-due")));
    EXPECT_THAT(heat().because, Not(HasSubstr("colony")));
    since(stack, -5, [](StackEstimate& day) { day.colonyKg = {0.4, 0.6, 0.8}; });
    EXPECT_THAT(heat().because, HasSubstr("colony 600 g, two weeks ago 1.1 kg"));
    bed(0, 31.4);
    EXPECT_EQ(heat().severity, Severity::concern);
}

TEST(AdviceOfClimate, WhatWasReadInTheBedStandsBesideTheEstimateForTwoDays)
{
    StackReckoning stack = calm();
    stack.record.lastBedRead = in(-2);
    stack.record.bedReadC = 34.0; // the members hold it for an error and say 22
    auto all = adviceFor(stack);
    const Advice* heat = find(all, Code::heat);
    ASSERT_NE(heat, nullptr);
    EXPECT_EQ(heat->severity, Severity::urgent);
    EXPECT_EQ(heat->on, today);
    EXPECT_THAT(heat->because, HasSubstr("34"));
    stack.record.bedReadC = 31.0;
    all = adviceFor(stack);
    ASSERT_NE(find(all, Code::heat), nullptr);
    EXPECT_EQ(find(all, Code::heat)->severity, Severity::concern);
    stack.record.bedReadC = 3.0;
    all = adviceFor(stack);
    ASSERT_NE(find(all, Code::cold), nullptr);
    EXPECT_EQ(find(all, Code::heat), nullptr);
    stack.record.bedReadC = 21.0;
    EXPECT_THAT(codes(stack), Not(Contains("cold")));
    stack.record.bedReadC = 34.0;
    stack.record.lastBedRead = in(-3);
    EXPECT_THAT(codes(stack), Not(Contains("heat")));
}

TEST(AdviceOfClimate, ColdIsToldWithTheCautionOnHeatersAndStopsFeeding)
{
    StackReckoning stack = calm();
    stack.record.lastFeed = in(-9);
    since(stack, 0, [](StackEstimate& day) { day.binTempC = {3, 4, 6}; });
    const auto all = adviceFor(stack);
    const Advice* cold = find(all, Code::cold);
    ASSERT_NE(cold, nullptr);
    EXPECT_THAT(cold->text, HasSubstr("licensed electrician"));
    EXPECT_EQ(find(all, Code::feedDue), nullptr);
    since(stack, 0, [](StackEstimate& day) { day.binTempC = {9, 12, 14}; });
    EXPECT_THAT(codes(stack), Not(Contains("cold")));
}

TEST(AdviceOfClimate, ColdStaysBetweenItsThresholds)
{
    StackReckoning stack = calm();
    const Band chilly{3.5, 5.4, 7}; // below 5 °C with 0.41
    since(stack, 0, [&](StackEstimate& day) { day.binTempC = chilly; });
    EXPECT_THAT(codes(stack), Not(Contains("cold")));
    since(stack, -4, [](StackEstimate& day) { day.binTempC = {3, 4, 6}; });
    since(stack, 0, [&](StackEstimate& day) { day.binTempC = chilly; });
    EXPECT_THAT(codes(stack), Contains("cold"));
}

TEST(AdviceOfClimate, FrostIsUrgentUntilTheBedIsClearlyAboveIt)
{
    StackReckoning stack = calm();
    const auto bed = [&](int from, double c) { since(stack, from, [c](StackEstimate& day) { day.binTempC = {c - 1, c, c + 1}; }); };
    const auto severity = [&] { return find(adviceFor(stack), Code::cold)->severity; };
    bed(0, 1.2);
    EXPECT_EQ(severity(), Severity::concern);
    bed(-3, 0.9);
    bed(0, 1.2);
    EXPECT_EQ(severity(), Severity::urgent) << "a third of a degree more does not make it better";
    bed(0, 2.1);
    EXPECT_EQ(severity(), Severity::concern);
}

/// Nobody opens a bed for its dates while it freezes, cooks or smells.
TEST(AdviceOfClimate, NoLookIsAskedForOfABedInDanger)
{
    StackReckoning stack = calm();
    stack.bitsRule = BitsRule{12.0, in(30)};
    stack.forecast.turnLikelyOn = in(9);
    ASSERT_THAT(codes(stack), Contains("look-next"));
    for (const double c : {3.0, 32.0}) {
        StackReckoning other = stack;
        since(other, 0, [c](StackEstimate& day) { day.binTempC = {c - 1, c, c + 1}; });
        EXPECT_THAT(codes(other), Not(Contains("look-next"))) << c;
    }
    StackReckoning gasping = stack;
    since(gasping, 0, [](StackEstimate& day) { day.slots[1].air = 0.4; });
    EXPECT_THAT(codes(gasping), Not(Contains("look-next")));
    ahead(stack, {3, 4.2, 6}, {3, 4, 5}); // cold is still to come
    ASSERT_THAT(codes(stack), Contains("cold"));
    EXPECT_THAT(codes(stack), Contains("look-next")) << "there is time for it yet";
}

}
}
