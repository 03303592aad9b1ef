// How much food: one limit wherever it is asked, withheld where the advice withholds, and no food onto what is not eaten.
#include "core/advice/food_limit.h"

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

TEST(AdviceFoodLimit, IsNothingWhereTheAdviceGivesNone)
{
    StackReckoning stack = calm();
    EXPECT_DOUBLE_EQ(foodLimit(stack).kg, 1.6);
    EXPECT_FALSE(foodLimit(stack).isWithheld());
    stack.record.lastBedRead = today;
    stack.record.bedReadC = 34.0;
    EXPECT_EQ(foodLimit(stack).kg, 0.0) << "urgent heat";
    EXPECT_THAT(foodLimit(stack).withheld, HasSubstr("give no food until it is cooler"));
    EXPECT_THAT(foodLimit(stack).withheld, HasSubstr("34 °C"));
    stack.record.bedReadC = 31.0;
    EXPECT_DOUBLE_EQ(foodLimit(stack).kg, 1.6) << "warm, and food is not what warms it";
    stack.record.bedReadC = 3.5;
    EXPECT_EQ(foodLimit(stack).kg, 0.0) << "cold";
    EXPECT_THAT(foodLimit(stack).withheld, HasSubstr("feed no more until it is warmer"));
}

/// Food is due, and not even 50 g are borne.
StackReckoning nothingBorne()
{
    StackReckoning stack = calm();
    stack.record.lastFeed = in(-20);
    stack.forecast.feedLowKg = stack.forecast.feedUsualKg = stack.forecast.feedHighKg = stack.forecast.feedNowKg = 0.0;
    return stack;
}

TEST(AdviceFoodLimit, AHintToWaitSaysWhichOfAirAndWarmthItIs)
{
    StackReckoning stack = nothingBorne();
    stack.forecast.airLowWithin14Days = 0.3;
    ASSERT_NE(find(adviceFor(stack), Code::overfed), nullptr);
    EXPECT_EQ(find(adviceFor(stack), Code::overfed)->because, "with any more this week the chance of too little air in the bed is above 5 %; air 100 % of full now; not yet eaten, dry: 200 g");
    stack.now.binTempC = {25, 28, 31};
    EXPECT_THAT(find(adviceFor(stack), Code::overfed)->because, HasSubstr("too little air"));
    stack.forecast.airLowWithin14Days = 0.0;
    const auto all = adviceFor(stack);
    EXPECT_THAT(find(all, Code::overfed)->because, HasSubstr("a bed above 30 °C is above 5 %; bed 28 °C (25–31) now"));
    EXPECT_THAT(find(all, Code::overfed)->because, Not(HasSubstr("air")));
    EXPECT_EQ(find(all, Code::feedDue), nullptr);
}

TEST(AdviceFoodLimit, AHintToWaitAddsNothingToColdThatSaysSo)
{
    StackReckoning stack = nothingBorne();
    EXPECT_THAT(codes(stack), Contains("overfed"));
    stack.record.lastBedRead = today;
    stack.record.bedReadC = 3.0;
    EXPECT_THAT(codes(stack), Contains("cold"));
    EXPECT_THAT(codes(stack), Not(Contains("overfed")));
    since(stack, 0, [](StackEstimate& day) { day.slots[1].air = 0.6; });
    EXPECT_THAT(codes(stack), Contains("overfed")) << "a concern is no hint";
}

TEST(AdviceFoodLimit, WhereNothingFitsTheTrayIsFullAndNobodyOverfed)
{
    StackReckoning stack = nothingBorne(); // unfed for weeks: no feeding is foreseen that would be cut
    stack.forecast.roomTopTrayFreshKg = 0.0;
    stack.now.ration = {0.2, 0.28, 0.4};
    auto all = adviceFor(stack);
    EXPECT_EQ(find(all, Code::overfed), nullptr);
    ASSERT_NE(find(all, Code::trayFull), nullptr);
    EXPECT_EQ(find(all, Code::trayFull)->text, "The top tray is full: no food fits until the bottom tray is lifted");
    EXPECT_THAT(find(all, Code::trayFull)->because, HasSubstr("the worms assimilate 28 % of what they need"));
    stack.record.spareTrays = 1;
    EXPECT_EQ(find(adviceFor(stack), Code::trayFull)->text, "The top tray is full: add a tray, then feed");
    stack.record.lastFeed = in(-1);
    EXPECT_EQ(find(adviceFor(stack), Code::trayFull), nullptr) << "what lies there sinks until food is due";
}

TEST(AdviceFoodLimit, FullIsFullWhateverFilledItAndPaperAloneIsPoorFood)
{
    StackReckoning stack = nothingBorne();
    stack.record.lastFeed.reset();
    stack.record.usualFeedKg = 0.0;
    stack.firstBedding = in(-45);
    stack.forecast.roomTopTrayFreshKg = 0.02;
    since(stack, 0, [](StackEstimate& day) { day.slots[1].cnRatio = {200, 280, 400}; });
    auto all = adviceFor(stack);
    ASSERT_NE(find(all, Code::trayFull), nullptr) << "it was never fed";
    EXPECT_THAT(find(all, Code::trayFull)->because, HasSubstr("C:N of the bed 280, 25 to 35 is wanted"));
    stack.forecast.roomTopTrayFreshKg = 2.0;
    stack.forecast.feedLowKg = 0.2;
    stack.forecast.feedHighKg = stack.forecast.feedNowKg = 0.8;
    const auto why = [&] { return find(adviceFor(stack), Code::feedDue)->because; };
    EXPECT_THAT(why(), HasSubstr("C:N of the bed 280"));
    stack.firstBedding = in(-27);
    EXPECT_THAT(why(), Not(HasSubstr("C:N"))) << "a new bed is nothing but bedding";
    stack.firstBedding = in(-45);
    since(stack, 0, [](StackEstimate& day) { day.slots[1].cnRatio = {40, 60, 69}; });
    EXPECT_THAT(why(), Not(HasSubstr("C:N")));
}

TEST(AdviceFoodLimit, BesideAFullTrayNobodyIsToldToFeedTheUsual)
{
    StackReckoning stack = calm();
    stack.record.lastFeed = in(-8);
    stack.forecast.feedUsualKg = 1.8;
    stack.forecast.feedHighKg = stack.forecast.feedNowKg = stack.forecast.roomTopTrayFreshKg.emplace(1.1);
    stack.forecast.topTrayFullOn.p50 = in(3);
    const auto all = adviceFor(stack);
    ASSERT_NE(find(all, Code::trayFull), nullptr);
    EXPECT_EQ(find(all, Code::trayFull)->text, "The top tray is full: feed less until the bottom tray is lifted");
    EXPECT_EQ(find(all, Code::feedDue)->text, "Feed at most 900 g at once and 1.1 kg this week") << "who feeds each day gives more than one of them";
    EXPECT_DOUBLE_EQ(find(all, Code::feedDue)->kg, 0.9);
    stack.forecast.feedHighKg = stack.forecast.feedNowKg = stack.forecast.roomTopTrayFreshKg.emplace(0.9);
    EXPECT_EQ(find(adviceFor(stack), Code::feedDue)->text, "Feed at most 900 g this week");
    stack.forecast.feedHighKg = stack.forecast.feedNowKg = stack.forecast.roomTopTrayFreshKg.emplace(0.4);
    EXPECT_EQ(find(adviceFor(stack), Code::feedDue)->text, "Feed at most 400 g this week");
}

TEST(AdviceFoodLimit, NoFoodIsDueOntoWhatWouldLastForWeeks)
{
    StackReckoning stack = calm();
    stack.record.lastFeed = in(-9);
    const auto eats = [&](int from, double grams) { since(stack, from, [grams](StackEstimate& day) { day.processingGDryPerDay = {grams / 2, grams, grams * 2}; }); };
    eats(-40, 4.4); // 1 cm softened on 0.16 m² is 192 g: 44 days
    EXPECT_THAT(codes(stack), Contains("feed-due"));
    eats(0, 4.2);
    const auto all = adviceFor(stack);
    ASSERT_NE(find(all, Code::overfed), nullptr);
    EXPECT_EQ(find(all, Code::overfed)->severity, Severity::hint);
    EXPECT_EQ(find(all, Code::overfed)->because, "food that lies in the tray, dry: 190 g; enough for 46 day(s) as the worms eat now");
    EXPECT_EQ(find(all, Code::feedDue), nullptr);
    EXPECT_EQ(foodLimit(stack, all).kg, 0.0);
    eats(-3, 4.2);
    eats(0, 6.0); // 32 days: kept
    EXPECT_THAT(codes(stack), Contains("overfed"));
    eats(0, 6.5);
    EXPECT_THAT(codes(stack), Not(Contains("overfed")));
    eats(0, 0.0);
    stack.now.processingGDryPerDay.p95 = 1.0; // the bed dried out
    EXPECT_THAT(find(adviceFor(stack), Code::overfed)->because, HasSubstr("hardly any of it is eaten"));
}

TEST(AdviceFoodLimit, WormsThatCameLatelyAreTakenToEatWhatKeepsThem)
{
    StackReckoning stack = calm();
    stack.record.lastFeed = in(-9);
    since(stack, -40, [](StackEstimate& day) { day.processingGDryPerDay = {0.1, 0.5, 2.0}; });
    EXPECT_THAT(codes(stack), Contains("overfed"));
    for (StackEstimate& day : stack.history)
        if (day.day < in(-5)) day.colonyKg = {};
    EXPECT_THAT(codes(stack), Not(Contains("overfed"))) << "1.1 kg of worms, put in five days ago";
}

TEST(AdviceFoodLimit, IsInCupsForWhoMeasuresInCups)
{
    StackReckoning stack = calm();
    stack.record.lastFeed = in(-8);
    stack.record.usualFeed = {3, Unit::cup};
    stack.record.usualFeedKg = 0.3; // 100 g a cup
    stack.forecast.feedHighKg = stack.forecast.feedNowKg = 0.57;
    EXPECT_EQ(find(adviceFor(stack), Code::feedDue)->text, "Feed the usual 3 cup, at most 5.5 cup this week");
    EXPECT_EQ(foodLimit(stack).most, (Amount{5.5, Unit::cup})) << "what the shelf's button records";
    stack.forecast.feedHighKg = stack.forecast.feedNowKg = 0.199;
    stack.record.fedKg = {0.0, 0.2, 0.0, 0.1};
    EXPECT_EQ(find(adviceFor(stack), Code::feedDue)->text, "Feed at most 1.75 cup this week");
    stack.forecast.feedHighKg = 0.6;
    EXPECT_THAT(find(adviceFor(stack), Code::feedDue)->because, HasSubstr("of the usual feeding of 3 cup only 1.75 cup: 3 cup were given within 7 days"));
    stack.forecast.feedHighKg = stack.forecast.feedNowKg = 0.295;
    EXPECT_EQ(find(adviceFor(stack), Code::feedDue)->text, "Feed the usual 3 cup, and no more this week");
    stack.record.usualFeed = {0.7, Unit::L};
    stack.forecast.feedHighKg = stack.forecast.feedNowKg = 0.57;
    EXPECT_EQ(find(adviceFor(stack), Code::feedDue)->text, "Feed the usual 0.7 L, at most 1.3 L this week");
    stack.forecast.feedHighKg = stack.forecast.feedNowKg = 0.2;
    EXPECT_EQ(find(adviceFor(stack), Code::feedDue)->text, "Feed at most 0.45 L this week");
}

TEST(AdviceFoodLimit, LessThanTheUsualSaysWhy)
{
    StackReckoning stack = calm();
    stack.record.lastFeed = in(-8);
    stack.forecast.feedHighKg = stack.forecast.feedNowKg = 0.4;
    const auto why = [&] { return find(adviceFor(stack), Code::feedDue)->because; };
    EXPECT_THAT(why(), HasSubstr("only 400 g are borne this week: with more the chance of too little air is above 5 %"));
    stack.now.binTempC = {25, 28, 31};
    EXPECT_THAT(why(), HasSubstr("with more the chance of a bed above 30 °C is above 5 %"));
    stack.forecast.roomTopTrayFreshKg = 0.4;
    EXPECT_THAT(why(), HasSubstr("more does not fit under the rim"));
    stack.forecast.roomTopTrayFreshKg = 4.0;
    stack.record.areaM2 = 0.4 / (7 * 0.7 * 2);
    EXPECT_THAT(why(), HasSubstr("0.7 kg a day and m² are the most"));
}

}
}
