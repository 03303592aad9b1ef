// What the trade tells of household stacks, on the median member: days, yields, decline. Each row says what it rests on;
// "common practice, no source" is what people say, "ours" a bound of our own. For each bound a mutation that must break it stands below.
#include "tests/support/scenario.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

namespace tierloam::testing {
namespace {

using ::testing::AllOf;
using ::testing::Ge;
using ::testing::Le;

auto within(int low, int high) { return AllOf(Ge(low), Le(high)); }
auto within(double low, double high) { return AllOf(Ge(low), Le(high)); }

Habit withWorms(double kg)
{
    Habit habit;
    habit.wormsKg = kg;
    return habit;
}

Habit onBedding(const char* bedding)
{
    Habit habit;
    habit.bedding = bedding;
    return habit;
}

// Upper end common practice, no source; lower end ours.
TEST(TradeTiming, FirstTrayHolds25MillimetresOfCastingsAfter35To90Days)
{
    EXPECT_THAT(live({}, 200).enoughCastings.value_or(-1), within(35, 90));
}

// Order: common practice, no source. Doubling 50 to 92 d: Zziwa et al. 2021 (abstract).
TEST(TradeTiming, SmallerStockIsLaterAtEveryStep)
{
    const Diary small = live(withWorms(0.11), 500);
    const Diary usual = live({}, 500);
    ASSERT_TRUE(small.enoughCastings && small.doubled && small.firstReady && usual.firstReady);
    EXPECT_THAT(*small.enoughCastings, within(70, 150));
    EXPECT_THAT(*small.doubled, within(50, 200));
    EXPECT_GE(*small.enoughCastings, *usual.enoughCastings);
    EXPECT_GE(*small.firstReady, *usual.firstReady);
    ASSERT_GE(small.added.size(), 2u);
    EXPECT_GE(small.added[0], usual.added[0]);
    EXPECT_GE(small.added[1], usual.added[1]);
    ASSERT_FALSE(small.harvested.empty());
    EXPECT_GE(small.harvested[0], usual.harvested[0]);
}

// Common practice, no source (up to three months; at least two); lower end ours.
TEST(TradeTiming, SecondTrayAfter60To120DaysThirdAfter55To100More)
{
    const Diary diary = live({}, 300);
    ASSERT_GE(diary.added.size(), 2u);
    EXPECT_THAT(diary.added[0], within(60, 120));
    EXPECT_THAT(diary.added[1] - diary.added[0], within(55, 100));
}

struct Warmth { double celsius; int earliest, latest; };
class FirstHarvest : public ::testing::TestWithParam<Warmth> {};
// 18 to 22 °C: common practice, no source (six to eight months); the rest ours.
INSTANTIATE_TEST_SUITE_P(ByTemperature, FirstHarvest, ::testing::Values(Warmth{15, 270, 370}, Warmth{18, 230, 300}, Warmth{22, 185, 250}, Warmth{25, 160, 210}));

TEST_P(FirstHarvest, FallsInItsSeason)
{
    Habit habit;
    habit.temperature = GetParam().celsius;
    const Diary diary = live(habit, 450);
    ASSERT_FALSE(diary.harvested.empty());
    EXPECT_THAT(diary.harvested[0], within(GetParam().earliest, GetParam().latest));
}

// Common practice, no source (two to three months).
TEST(TradeTiming, LaterHarvestsEvery50To90DaysAt18To22Degrees)
{
    for (const double celsius : {18.0, 20.0, 22.0}) {
        Habit habit;
        habit.temperature = celsius;
        const Diary diary = live(habit, 900);
        ASSERT_GE(diary.harvested.size(), 4u);
        for (std::size_t i = 1; i < diary.harvested.size(); ++i)
            EXPECT_THAT(diary.harvested[i] - diary.harvested[i - 1], within(50, 90)) << celsius << " degrees, harvest " << i;
    }
}

// Direction common practice, no source.
TEST(TradeTiming, SameHabitWithMoreWormsIsReadySooner)
{
    const Diary small = live(withWorms(0.11), 500);
    const Diary large = live(withWorms(0.9), 500);
    ASSERT_TRUE(small.firstReady && large.firstReady);
    EXPECT_GE(*small.firstReady - *large.firstReady, 15);
}

// The three beddings serve alike: common practice, no source.
TEST(TradeTiming, ShavingsAndCoirServeAsBedding)
{
    for (const char* bedding : {"pine shavings", "coconut coir (from a dry brick)"}) {
        const Diary diary = live(onBedding(bedding), 400);
        ASSERT_FALSE(diary.harvested.empty()) << bedding;
        EXPECT_THAT(diary.harvested[0], within(150, 250)) << bedding;
    }
}

// Ours.
TEST(TradeTiming, DepthOfCardboardMattersLittle)
{
    const int usual = live({}, 400).harvested.at(0);
    for (const double cm : {2.5, 9.0}) {
        Habit habit;
        habit.beddingCm = cm;
        EXPECT_THAT(live(habit, 400).harvested.at(0), within(usual - 25, usual + 25)) << cm << " cm";
    }
}

// Direction common practice, no source; "half" ours.
TEST(TradeTiming, NeverHarvestedTheColonyFalls)
{
    Habit habit;
    habit.harvests = false;
    const Diary diary = live(habit, 3 * 365);
    EXPECT_LT(diary.colony.back(), 0.5 * *std::max_element(diary.colony.begin(), diary.colony.end()));
}

// Ours. Days are counted from the day on which overfeeding begins.
TEST(TradeTiming, OverfeedingOneTraySpoilsTheAirAndTheColony)
{
    Habit habit;
    habit.addsTrays = false;
    habit.overfedFrom = 30;
    const Diary diary = live(habit, 300);
    const auto foul = std::find_if(diary.air.begin(), diary.air.end(), [](double air) { return air < 0.5; });
    ASSERT_NE(foul, diary.air.end());
    EXPECT_LE(foul - diary.air.begin(), 30 + 40);
    double peak = 0.0;
    int fallen = -1;
    for (int day = 0; day < 300 && fallen < 0; ++day) {
        peak = std::max(peak, diary.colony[static_cast<std::size_t>(day)]);
        if (diary.colony[static_cast<std::size_t>(day)] < 0.6 * peak) fallen = day;
    }
    EXPECT_THAT(fallen, within(30, 30 + 200));
}

// Common practice, no source.
TEST(TradeTiming, LightDryingLeavesFivePercentAfter2To7Days)
{
    Habit habit;
    habit.daysDrying = 10;
    const Diary diary = live(habit, 400);
    const auto few = std::find_if(diary.dryingLeft.begin(), diary.dryingLeft.end(), [](double left) { return left <= 0.05; });
    ASSERT_NE(few, diary.dryingLeft.end());
    EXPECT_THAT(static_cast<int>(few - diary.dryingLeft.begin()) + 1, within(2, 7));
}

// 46 to 60 % of dry matter lost: Lalander et al. 2015, Zziwa et al. 2021 (abstracts).
TEST(TradeTiming, YieldOfCastings)
{
    for (const double ratio : live({}, 900).yieldRatio) EXPECT_THAT(ratio, within(1.7, 2.7));
}

TEST(TradeTiming, LedgerClosesOverYears) { EXPECT_LT(live({}, 900).worstLedger, 1e-9); }

// Mutations: habits that no longer are the trade's must leave the bounds, or the bounds would say nothing.
TEST(TradeTimingMutation, StarvedStackMissesTheBounds)
{
    Habit habit;
    habit.feedPerWormADay = 0.05;
    const Diary diary = live(habit, 450);
    EXPECT_GT(diary.enoughCastings.value_or(999), 90);
    EXPECT_TRUE(diary.harvested.empty() || diary.harvested[0] > 250);
}

TEST(TradeTimingMutation, ColdCellarMissesTheBounds)
{
    Habit habit;
    habit.temperature = 8;
    const Diary diary = live(habit, 450);
    EXPECT_TRUE(diary.harvested.empty() || diary.harvested[0] > 370);
}

TEST(TradeTimingMutation, HarvestedStackDoesNotFall)
{
    const Diary diary = live({}, 3 * 365);
    EXPECT_GT(diary.colony.back(), 0.5 * *std::max_element(diary.colony.begin(), diary.colony.end()));
}

TEST(TradeTimingMutation, UsualFeedingSpoilsNoAir)
{
    const Diary diary = live({}, 300);
    EXPECT_GT(*std::min_element(diary.air.begin(), diary.air.end()), 0.5);
}

}
}
