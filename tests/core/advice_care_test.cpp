// The codes of care: each raised when it should be, silent when not, withdrawn when settled, and steady between its two thresholds.
#include "core/advice/advice.h"
#include "core/advice/chance.h"
#include "core/advice/too_early.h"
#include "core/reckoning/tray_contents.h"

#include "tests/support/calm_stack.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <functional>
#include <set>

namespace tierloam::advice {
namespace {

using namespace reckoning;
using ::testing::AllOf;
using ::testing::Contains;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::Not;

using namespace tests;

TEST(AdviceOfCare, IsSilentWhenNothingIsDue) { EXPECT_THAT(codes(calm()), IsEmpty()); }

TEST(Chance, IsReadOffTheBandByStraightLines)
{
    const Band band{1, 2, 4};
    EXPECT_DOUBLE_EQ(*chanceBelow(band, 1), 0.05);
    EXPECT_DOUBLE_EQ(*chanceBelow(band, 2), 0.5);
    EXPECT_DOUBLE_EQ(*chanceBelow(band, 3), 0.725);
    EXPECT_DOUBLE_EQ(*chanceAbove(band, 3), 0.275);
    EXPECT_DOUBLE_EQ(*chanceAbove(band, 9), 0.0);
    EXPECT_EQ(chanceAbove(Band{}, 1), std::nullopt);
    EXPECT_DOUBLE_EQ(*chanceAbove(Band{3, 3, 3}, 2), 1.0);
}

TEST(AdviceOfCare, OverfedNowAndBeforehand)
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

TEST(AdviceOfCare, NobodyIsAskedToFeedInDaysAway)
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

TEST(AdviceOfCare, HungryOnlyWhereFoodIsWhatIsMissing)
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
TEST(AdviceOfCare, AfterMonthsWithoutFoodTheyGetWhatKeepsThemAndNotTheUsualOfThen)
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

TEST(AdviceOfCare, HungryIsWithdrawnBelowSixtyPerCent)
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

TEST(AdviceOfCare, LowCarbonNamesThePaper)
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

DrainCheck drained(int day, double litres, Band expected) { return {in(day), litres, expected}; }

TEST(AdviceOfCare, DrainageLowAfterTwoInARow)
{
    StackReckoning stack = calm();
    const Band expected{0.8, 1.2, 1.6};
    stack.drains = {drained(-30, 1.2, expected), drained(-3, 0.7, expected)};
    EXPECT_THAT(codes(stack), Not(Contains("drainage-low")));
    stack.drains.front().litres = 0.3;
    ASSERT_THAT(codes(stack), Contains("drainage-low"));
    EXPECT_THAT(adviceFor(stack).front().because, HasSubstr("0.7 L drained, 0.8 L to 1.6 L expected"));
    stack.drains.push_back(drained(0, 1.0, expected));
    EXPECT_THAT(codes(stack), Not(Contains("drainage-low")));
    stack.drains = {drained(-80, 0.3, expected), drained(-61, 0.3, expected)};
    EXPECT_THAT(codes(stack), Not(Contains("drainage-low")));
}

TEST(AdviceOfCare, DrainageHighAfterTwoInARowOrWithMuchWatering)
{
    StackReckoning stack = calm();
    const Band expected{0.8, 1.2, 1.6};
    stack.drains = {drained(-9, 2.0, expected), drained(-3, 1.9, expected)};
    EXPECT_THAT(codes(stack), Contains("drainage-high"));
    stack.drains.back().litres = 1.6;
    EXPECT_THAT(codes(stack), Not(Contains("drainage-high")));
    stack.forecast.drainedExpectedLPerWeek.p50 = 2.0; // of 0.16 m²: 12.5 L/m²
    EXPECT_THAT(codes(stack), Not(Contains("drainage-high")));
    stack.record.waterLPerWeek = 2.5;
    EXPECT_THAT(codes(stack), Contains("drainage-high"));
    stack.forecast.drainedExpectedLPerWeek.p50 = 1.6; // 10: stays only where much was foreseen lately
    EXPECT_THAT(codes(stack), Not(Contains("drainage-high")));
    stack.now.drainedLPerWeek.p50 = 2.0; // a flush
    EXPECT_THAT(codes(stack), Not(Contains("drainage-high")));
    stack.history[stack.history.size() - 3].ahead->drainedLPerWeek.p50 = 2.0;
    for (std::size_t i : {1U, 2U}) stack.history[stack.history.size() - i].ahead->drainedLPerWeek.p50 = 1.6;
    EXPECT_THAT(codes(stack), Contains("drainage-high"));
    stack.record.waterLPerWeek = 0.7; // flushed through on purpose
    EXPECT_THAT(codes(stack), Not(Contains("drainage-high")));
    stack.record.waterLPerWeek = 2.5;
    stack.forecast.drainedExpectedLPerWeek.p50 = 1.4;
    EXPECT_THAT(codes(stack), Not(Contains("drainage-high")));
}

TEST(AdviceOfCare, ThoseWhoFlushAreToldToFlush)
{
    StackReckoning stack = calm();
    stack.record.spigotShut = true;
    stack.now.sumpL = {2.9, 3.2, 3.5};
    stack.forecast.sumpFullOn = {in(2), in(4), in(6)};
    EXPECT_THAT(adviceFor(stack).front().text, HasSubstr("Drain"));
    stack.record.lastFlush = stack.record.lastDrain = in(-30);
    EXPECT_THAT(adviceFor(stack).front().text, HasSubstr("Flush"));
}

TEST(AdviceOfCare, SumpFullStaysUntilTenDaysOff)
{
    StackReckoning stack = calm();
    stack.record.spigotShut = true;
    stack.forecast.sumpFullOn.p50 = in(9);
    EXPECT_THAT(codes(stack), Not(Contains("sump-full")));
    since(stack, -6, [](StackEstimate& day) { day.ahead->sumpFullOn.p50 = in(9); }); // told at seven on day 2: not yet
    EXPECT_THAT(codes(stack), Not(Contains("sump-full")));
    since(stack, -6, [](StackEstimate& day) { day.ahead->sumpFullOn.p50 = in(1); }); // of day -6: seven days off
    EXPECT_THAT(codes(stack), Contains("sump-full"));
    EXPECT_EQ(adviceFor(stack).front().text, "Drain the sump");
    since(stack, -5, [](StackEstimate& day) { day.ahead->sumpFullOn.p50 = day.day + std::chrono::days{10}; }); // put off day by day, and it stays
    EXPECT_THAT(codes(stack), Contains("sump-full"));
    stack.forecast.sumpFullOn.p50 = in(11);
    EXPECT_THAT(codes(stack), Not(Contains("sump-full")));
    stack.forecast.sumpFullOn.p50 = in(9);
    since(stack, -3, [](StackEstimate& day) { day.ahead->sumpFullOn.p50 = day.day + std::chrono::days{12}; });
    EXPECT_THAT(codes(stack), Not(Contains("sump-full"))) << "withdrawn since";
}

TEST(AdviceOfCare, ALookIntoTheSumpComesBeforeADateThatIsNotKnown)
{
    StackReckoning stack = calm();
    stack.record.spigotShut = true;
    stack.now.sumpL = {1.2, 2.4, 3.6};
    stack.forecast.sumpFullOn = {in(15), in(40), in(90)};
    EXPECT_THAT(codes(stack), Not(Contains("sump-full")));
    stack.forecast.sumpFullOn.p10 = in(14);
    ASSERT_THAT(codes(stack), Contains("sump-full"));
    EXPECT_EQ(adviceFor(stack).front().text, "See how full the sump is");
    EXPECT_EQ(adviceFor(stack).front().look, reckoning::LookKind::sumpLevel);
    EXPECT_EQ(adviceFor(stack).front().severity, Severity::hint);
    EXPECT_THAT(adviceFor(stack).front().because, HasSubstr("1.2 L to 3.6 L of 4.0 L"));
    stack.forecast.sumpFullOn.p50 = in(7);
    EXPECT_EQ(adviceFor(stack).front().severity, Severity::due) << "it is likely, and still it is seen first";
    EXPECT_TRUE(adviceFor(stack).front().look);
    stack.forecast.sumpFullOn.p10 = stack.forecast.sumpFullOn.p50 = today;
    EXPECT_THAT(adviceFor(stack).front().because, HasSubstr("likely to be full already"));
    stack.forecast.sumpFullOn = {in(3), in(7), in(21)};
    stack.record.lastSumpLook = in(-4);
    EXPECT_EQ(adviceFor(stack).front().text, "Drain the sump") << "a look holds for five days";
    stack.forecast.sumpFullOn.p90 = in(22);
    EXPECT_EQ(adviceFor(stack).front().text, "See how full the sump is") << "a date that may be any in three weeks is none";
    EXPECT_EQ(adviceFor(stack).front().on, in(1)) << "and not before the last look no longer holds";
    stack.now.sumpL = {3.9, 3.9, 4.0};
    EXPECT_EQ(adviceFor(stack).front().text, "Drain the sump: it runs over");
    stack.now.sumpL = {1.2, 2.4, 3.6};
    stack.forecast.sumpFullOn = {in(14), in(7), in(90)};
    stack.forecast.sumpFullOn.p50 = in(40);
    EXPECT_THAT(codes(stack), Not(Contains("sump-full")));
    stack.record.lastSumpLook = in(-5);
    EXPECT_THAT(codes(stack), Contains("sump-full"));
    stack.forecast.sumpFullOn = {in(12), in(15), in(19)};
    EXPECT_THAT(codes(stack), Not(Contains("sump-full"))) << "known to a week";
    stack.forecast.sumpFullOn.p90 = in(20);
    EXPECT_THAT(codes(stack), Contains("sump-full"));
    stack.record.lastDrain = in(-4);
    EXPECT_THAT(codes(stack), Not(Contains("sump-full"))) << "emptied: nobody learns more by a look before five days";
    stack.record.lastDrain = in(-5);
    EXPECT_THAT(codes(stack), Contains("sump-full"));
    stack.record.spigotShut = false;
    EXPECT_THAT(codes(stack), Not(Contains("sump-full")));
}

TEST(AdviceOfCare, WhenTheEarlyEndHasComeTheSumpMayBeFull)
{
    StackReckoning stack = calm();
    stack.record.spigotShut = true;
    stack.now.sumpL = {1.1, 3.6, 4.0};
    stack.forecast.sumpFullOn = {today, in(6), in(90)};
    // 0.97 · 4 L = 3.88 L lies 0.7 of the way from the median to the 95 %: 0.5 − 0.45 · 0.7 = 0.185.
    Advice look = adviceFor(stack).front();
    EXPECT_THAT(look.because, HasSubstr("it may be full already, with 19 %")) << look.because;
    EXPECT_EQ(look.severity, Severity::due);
    stack.now.sumpL = {1.1, 3.87, 4.0};
    EXPECT_EQ(adviceFor(stack).front().severity, Severity::due) << "the median is not full";
    stack.now.sumpL = {1.1, 3.9, 4.0};
    look = adviceFor(stack).front();
    EXPECT_EQ(look.severity, Severity::urgent);
    EXPECT_THAT(look.because, HasSubstr("likely to be full already")) << "as it presses, so it is told";
}

/// The range of the date wanders about the seven days at which a look is due.
TEST(AdviceOfCare, ToEmptyTheSumpStandsUntilItIsDone)
{
    StackReckoning stack = calm();
    stack.record.spigotShut = true;
    stack.now.sumpL = {2.6, 4.0, 4.0};
    stack.forecast.sumpFullOn = {today, today, in(8)};
    EXPECT_EQ(adviceFor(stack).front().text, "See how full the sump is");
    const auto told = [](int from) {
        return [from](StackEstimate& day) {
            day.sumpL = {2.6, 4.0, 4.0};
            day.ahead->sumpFullOn = {day.day, day.day, day.day + std::chrono::days{day.day < in(from) ? 7 : 12}};
        };
    };
    since(stack, -4, told(-2));
    EXPECT_EQ(adviceFor(stack).front().text, "Drain the sump: it runs over") << "told four days ago";
    stack.record.lastDrain = in(-2);
    stack.forecast.sumpFullOn = {today, today, in(30)};
    EXPECT_EQ(adviceFor(stack).front().text, "Drain the sump: it runs over") << "full again, and the median says so";
    stack.record.lastDrain = in(-5);
    since(stack, -1, [](StackEstimate& day) { day.sumpL = {0.2, 0.8, 1.6}; day.ahead->sumpFullOn = {in(20), std::nullopt, std::nullopt}; });
    stack.now.sumpL = {2.6, 4.0, 4.0};
    EXPECT_EQ(adviceFor(stack).front().text, "See how full the sump is") << "it clearly was not full yesterday";
}

void ahead(StackReckoning& stack, Band week, Band fortnight)
{
    stack.forecast.days = {stack.now, stack.now};
    stack.forecast.days[0].day = in(7);
    stack.forecast.days[0].binTempC = week;
    stack.forecast.days[1].day = in(14);
    stack.forecast.days[1].binTempC = fortnight;
}

TEST(AdviceOfCare, HeatIsToldBeforeItComes)
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

TEST(AdviceOfCare, HeatThatPassesIsNotAnnounced)
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

TEST(AdviceOfCare, HeatThatIsThereSaysHowToCoolAndWhatItCosts)
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

TEST(AdviceOfCare, WhatWasReadInTheBedStandsBesideTheEstimateForTwoDays)
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

TEST(AdviceOfCare, ColdIsToldWithTheCautionOnHeatersAndStopsFeeding)
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

TEST(AdviceOfCare, ColdStaysBetweenItsThresholds)
{
    StackReckoning stack = calm();
    const Band chilly{3.5, 5.4, 7}; // below 5 °C with 0.41
    since(stack, 0, [&](StackEstimate& day) { day.binTempC = chilly; });
    EXPECT_THAT(codes(stack), Not(Contains("cold")));
    since(stack, -4, [](StackEstimate& day) { day.binTempC = {3, 4, 6}; });
    since(stack, 0, [&](StackEstimate& day) { day.binTempC = chilly; });
    EXPECT_THAT(codes(stack), Contains("cold"));
}

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

TEST(AdviceOfCare, DryingDoneWhenFewWormsAreLeftAndLongAfterTenDays)
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

TEST(AdviceOfCare, StaleRecordAndDaysAway)
{
    StackReckoning stack = calm();
    stack.record.lastEntry = stack.record.lastFeed = in(-21);
    EXPECT_THAT(codes(stack), Not(Contains("stale-record")));
    EXPECT_THAT(codes(stack), Contains("feed-due"));
    stack.record.lastEntry = stack.record.lastFeed = in(-22);
    EXPECT_THAT(codes(stack), Contains("stale-record"));
    EXPECT_THAT(codes(stack), Not(Contains("feed-due")));
    stack.record.awayFrom = in(-20);
    stack.record.awayUntil = in(0);
    EXPECT_THAT(codes(stack), Not(Contains("stale-record")));
    stack.record.awayUntil = in(-5);
    EXPECT_THAT(codes(stack), Not(Contains("stale-record")));
    stack = calm();
    stack.record.lastEntry = in(-40);
    stack.record.medianFeedGapDays = 14; // 42 days
    EXPECT_THAT(codes(stack), Not(Contains("stale-record")));
}

TEST(AdviceOfCare, ATrayAddedEarlyIsToldForThreeWeeks)
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

TEST(AdviceOfCare, ATrayLiftedEarlyIsCoveredWhenItDriesAndNotTaken)
{
    StackReckoning stack = dryingStack(11, 0.4);
    since(stack, -11, [](StackEstimate& day) { day.slots[1].readyProbability = 0.9; });
    EXPECT_THAT(find(adviceFor(stack), Code::dryingLong)->text, HasSubstr("Take the castings"));
    since(stack, -11, [](StackEstimate& day) { day.slots[1].readyProbability = 0.2; });
    EXPECT_THAT(find(adviceFor(stack), Code::dryingLong)->text, HasSubstr("Cover the tray"));
}

TEST(AdviceOfCare, ATrayLiftedEarlyIsTold)
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

TEST(AdviceOfCare, EveryCodeHasANameARuleAndAConsequence)
{
    std::set<std::string_view> names;
    for (int i = 0; i < codeCount; ++i) {
        const Code code{i};
        names.insert(codeName(code));
        EXPECT_FALSE(codeName(code).empty());
        EXPECT_FALSE(ruleOf(code).empty()) << codeName(code);
        EXPECT_FALSE(ifLeft(code).empty()) << codeName(code);
    }
    EXPECT_EQ(names.size(), static_cast<std::size_t>(codeCount));
}

}
}
