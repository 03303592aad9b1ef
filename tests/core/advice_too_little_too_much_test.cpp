// Feedings that are far from what the worms take: many times too much at once, and week by week too little.
#include "core/advice/food_limit.h"

#include "tests/support/calm_stack.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tierloam::advice {
namespace {

using namespace reckoning;
using ::testing::HasSubstr;
using namespace tests;

TEST(AdviceOfFarTooMuch, AFeedingAboveTheWeeksMostIsToldTheSameDay)
{
    StackReckoning stack = calm();
    stack.record.areaM2 = 0.16;
    stack.record.lastFeed = today;
    const double most = mostByRate(stack); // two trays of 0.16 m²: 1.57 kg
    ASSERT_NEAR(most, 7 * 0.7 * 0.32, 1e-9);
    stack.record.fedKg = {1.2 * most, 0, 0, 0, 0, 0, 0};
    EXPECT_EQ(find(adviceFor(stack), Code::overfed), nullptr) << "a guess and a scale make a fifth";
    stack.record.fedKg[0] = 1.3 * most;
    const auto all = adviceFor(stack);
    const Advice* told = find(all, Code::overfed);
    ASSERT_NE(told, nullptr);
    EXPECT_EQ(told->food, Food::withhold);
    EXPECT_THAT(told->because, HasSubstr("within 7 days; 0.7 kg a day and m²"));
    EXPECT_EQ(find(all, Code::feedDue), nullptr);
    EXPECT_EQ(foodLimit(stack, all).kg, 0.0);

    stack.now.colonyKg = {0.3, 0.4, 0.5}; // few worms: half of their weight a day
    EXPECT_THAT(find(adviceFor(stack), Code::overfed)->because, HasSubstr("half of the worms' weight a day is the most, 1.4 kg a week for about 400 g"));
    stack.record.fedKg = {0, 0, 0, 0, 0, 0, 0};
    EXPECT_EQ(find(adviceFor(stack), Code::overfed), nullptr) << "a week later it no longer counts";
}

/// Food is due; the worms have got less than they need for two months, though not with the certainty that hunger is told at.
StackReckoning starving(double ration)
{
    StackReckoning stack = calm();
    stack.record.lastFeed = in(-7);
    stack.record.usualFeed = {200, Unit::g};
    stack.record.usualFeedKg = stack.record.usualFeedKgPerWeek = 0.2;
    stack.record.medianFeedGapDays = 7;
    stack.forecast.feedLowKg = 0.54;
    stack.forecast.feedHighKg = stack.forecast.feedNowKg = 0.78;
    for (StackEstimate& day : stack.history) day.ration = {ration - 0.4, ration, ration + 0.6};
    stack.now.ration = {ration - 0.4, ration, ration + 0.6};
    for (StackEstimate& day : stack.history)
        for (TrayEstimate& each : day.slots) each.strata.softenedCm = 0.1;
    for (TrayEstimate& each : stack.now.slots) each.strata.softenedCm = 0.1;
    return stack;
}

TEST(AdviceOfTooLittle, WhoShrinksOnTheUsualFeedingIsToGetMore)
{
    const auto due = [](const StackReckoning& stack) {
        const auto all = adviceFor(stack);
        const Advice* told = find(all, Code::feedDue);
        return told != nullptr ? *told : Advice{};
    };
    EXPECT_EQ(due(starving(0.85)).text, "Feed 540 g rather than the usual 200 g");
    EXPECT_THAT(due(starving(0.85)).because, HasSubstr("the worms assimilate 85 % of what they need; 540 g a week keep as many as there are"));
    EXPECT_NEAR(due(starving(0.85)).kg, 0.54, 1e-9);
    EXPECT_THAT(due(starving(0.95)).text, HasSubstr("Feed the usual 200 g")) << "not raised";

    StackReckoning enough = starving(0.85);
    enough.record.usualFeed = {400, Unit::g};
    enough.record.usualFeedKg = enough.record.usualFeedKgPerWeek = 0.4;
    EXPECT_THAT(due(enough).text, HasSubstr("Feed the usual 400 g")) << "three quarters of what keeps them: bedding does the rest";
    StackReckoning lying = starving(0.85);
    for (TrayEstimate& each : lying.now.slots) each.strata.softenedCm = 1.0;
    EXPECT_THAT(due(lying).text, HasSubstr("Feed the usual 200 g")) << "what lies there is not eaten: food is not what is missing";
    StackReckoning bound = starving(0.85);
    bound.forecast.feedNowKg = 0.3;
    EXPECT_THAT(due(bound).text, HasSubstr("Feed 300 g rather")) << "no more than is borne";
}

}
}
