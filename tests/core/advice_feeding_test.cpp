// What is fed and when, and the room for it.
#include "core/advice/advice.h"
#include "tests/core/advice_three_trays.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tierloam::advice {
namespace {

using namespace reckoning;

using tests::codes;
using tests::in;
using tests::today;
using tests::find;
using tests::reasonOf;
using tests::three::calm;
using tests::three::tray;
using tests::three::readyAndTurn;

using ::testing::Contains;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::Not;

TEST(AdviceOfFeeding, FeedDueWhenTheUsualGapHasPassed)
{
    StackReckoning stack = calm();
    stack.record.lastFeed = in(-4);
    EXPECT_THAT(codes(stack), IsEmpty());
    stack.record.lastFeed = in(-5); // due in two days: told this week
    EXPECT_THAT(codes(stack), ElementsAre("feed-due"));
    EXPECT_EQ(adviceFor(stack).front().on, in(2));
    stack.record.lastFeed = in(-8);
    const Advice advice = adviceFor(stack).front();
    EXPECT_EQ(advice.on, today);
    EXPECT_EQ(advice.slot, 3);
    EXPECT_EQ(advice.text, "Feed the usual 900 g, at most 1.6 kg this week");
    EXPECT_DOUBLE_EQ(advice.kg, 0.9) << "one feeding, whatever a week sums up to";
    EXPECT_THAT(advice.because, HasSubstr("8 day"));
    stack.forecast.feedHighKg = stack.forecast.feedNowKg = 0.02; // nothing more can be borne
    EXPECT_THAT(codes(stack), Not(Contains("feed-due")));
}

TEST(AdviceOfFeeding, FeedNeverExceedsWhatCanBeBorne)
{
    StackReckoning stack = calm();
    stack.record.lastFeed = in(-8);
    stack.forecast.feedHighKg = stack.forecast.feedNowKg = 0.4;
    EXPECT_THAT(adviceFor(stack).front().text, HasSubstr("400 g"));
    stack.forecast.feedHighKg = stack.forecast.feedNowKg = 0.588; // what a click records and what the shelf's button says is rounded downwards as well
    EXPECT_EQ(adviceFor(stack).front().text, "Feed at most 580 g this week");
    EXPECT_THAT(adviceFor(stack).front().because, HasSubstr("of the usual feeding of 900 g only 580 g are borne"));
    stack.forecast.feedHighKg = stack.forecast.feedNowKg = 1.29;
    stack.record.usualFeed = {1360, Unit::g};
    stack.record.usualFeedKg = 1.36;
    EXPECT_EQ(adviceFor(stack).front().text, "Feed at most 1.2 kg this week");
    stack.record.usualFeed = {1295, Unit::g}; // a limit that nobody knows to 5 % does not part the usual from itself
    stack.record.usualFeedKg = 1.295;
    EXPECT_EQ(adviceFor(stack).front().text, "Feed the usual 1295 g, and no more this week");
    EXPECT_DOUBLE_EQ(adviceFor(stack).front().kg, 1.295);
    stack.forecast.feedHighKg = stack.forecast.feedNowKg = 1.3;
    stack.record.usualFeed = {1200, Unit::g};
    stack.record.usualFeedKg = 1.2;
    EXPECT_EQ(adviceFor(stack).front().text, "Feed the usual 1200 g, at most 1.3 kg this week");
    stack.forecast.feedHighKg = stack.forecast.feedNowKg = 1.29;
    EXPECT_EQ(adviceFor(stack).front().text, "Feed the usual 1200 g, and no more this week") << "1.2 kg, rounded downwards";
    stack.record.usualFeed = {455, Unit::g}; // as the feeding button has it, not rounded
    stack.record.usualFeedKg = 0.455;
    EXPECT_EQ(adviceFor(stack).front().text, "Feed the usual 455 g, at most 1.2 kg this week");
}

TEST(AdviceOfFeeding, TheFirstFeedingIsWhatKeepsThem)
{
    StackReckoning stack = calm();
    stack.record.lastFeed.reset();
    stack.record.usualFeedKg = 0.0;
    stack.forecast.feedLowKg = 0.11;
    Advice advice = adviceFor(stack).front();
    EXPECT_EQ(advice.code, Code::feedDue);
    EXPECT_EQ(advice.text, "Feed 110 g, at most 1.6 kg this week");
    EXPECT_NEAR(advice.kg, 0.11, 1e-9) << "what one click records";
    EXPECT_EQ(advice.because, "not fed yet; 110 g a week keep the worms that are in it");
    stack.forecast.feedLowKg = 0.138;
    EXPECT_EQ(adviceFor(stack).front().text, "Feed 130 g, at most 1.6 kg this week");
    EXPECT_EQ(adviceFor(stack).front().because, "not fed yet; 130 g a week keep the worms that are in it") << "the same amount, rounded alike";
    stack.forecast.feedLowKg = 0.01;
    EXPECT_EQ(adviceFor(stack).front().text, "Feed 50 g, at most 1.6 kg this week");
    EXPECT_DOUBLE_EQ(adviceFor(stack).front().kg, 0.05);
    stack.forecast.feedLowKg = 0.3;
    stack.forecast.feedHighKg = stack.forecast.feedNowKg = 0.2;
    EXPECT_EQ(adviceFor(stack).front().text, "Feed at most 200 g this week");
    EXPECT_EQ(adviceFor(stack).front().because, "not fed yet; with more the chance of too little air is above 5 %");
    EXPECT_DOUBLE_EQ(adviceFor(stack).front().kg, 0.2);
}

TEST(AdviceOfFeeding, TrayFullNowOrWithinAWeek)
{
    StackReckoning stack = calm();
    stack.forecast.roomTopTrayFreshKg = 0.3;
    stack.forecast.topTrayFullOn.p50 = in(12);
    EXPECT_THAT(codes(stack), IsEmpty()) << "what lies there sinks until it is fed again";
    stack.forecast.topTrayFullOn.p50 = in(3);
    EXPECT_THAT(codes(stack), ElementsAre("tray-full"));
    EXPECT_EQ(adviceFor(stack).front().severity, Severity::concern);
    stack.forecast.roomTopTrayFreshKg = 2.0;
    stack.forecast.topTrayFullOn.p50 = in(7);
    EXPECT_THAT(codes(stack), IsEmpty()) << "one evening alone";
    const auto foreseen = [&](int from, int to, int daysOff) {
        for (StackEstimate& day : stack.history)
            if (day.day >= in(from) && day.day <= in(to)) day.ahead->topTrayFullOn.p50 = day.day + std::chrono::days{daysOff};
    };
    foreseen(-1, -1, 7);
    EXPECT_THAT(codes(stack), ElementsAre("tray-full"));
    foreseen(-3, -1, 7);
    stack.forecast.topTrayFullOn.p50 = in(14);
    EXPECT_THAT(codes(stack), ElementsAre("tray-full")) << "it was told before: one evening does not take it back";
    EXPECT_EQ(adviceFor(stack).front().on, in(7)) << "nor put it off by weeks";
    foreseen(-1, -1, 10);
    EXPECT_THAT(codes(stack), ElementsAre("tray-full"));
    foreseen(-1, -1, 11);
    EXPECT_THAT(codes(stack), IsEmpty()) << "two do";
    stack.history = calm().history;
    stack.forecast.topTrayFullOn.p50 = in(8);
    EXPECT_THAT(codes(stack), IsEmpty());
}

/// What was foreseen yesterday was foreseen of the tray that was fed then.
TEST(AdviceOfFeeding, ATrayThatWasJustBeddedIsNotFull)
{
    StackReckoning stack = calm();
    for (StackEstimate& day : stack.history) day.ahead->topTrayFullOn.p50 = day.day + std::chrono::days{5};
    stack.forecast.topTrayFullOn.p50 = in(140);
    ASSERT_THAT(codes(stack), ElementsAre("tray-full")) << "twice in two evenings";
    stack.now.slots[2].batch = 9;
    stack.history.back().slots = stack.now.slots;
    EXPECT_THAT(codes(stack), IsEmpty());
}

TEST(AdviceOfFeeding, WhereNothingFitsNoZeroIsTold)
{
    StackReckoning stack = calm();
    stack.forecast.topTrayFullOn.p50 = in(3);
    stack.now.slots[2].depthCm = 10.2;
    stack.forecast.roomTopTrayFreshKg = 0.03;
    EXPECT_THAT(reasonOf(stack, Code::trayFull), HasSubstr("10.2 cm of 11.0 cm used; 30 g of the usual food still fit"));
    stack.forecast.roomTopTrayFreshKg = 0.0;
    EXPECT_THAT(reasonOf(stack, Code::trayFull), HasSubstr("10.2 cm of 11.0 cm used; no more food fits"));
    stack.now.slots[2].depthCm = 13.0;
    EXPECT_THAT(reasonOf(stack, Code::trayFull), HasSubstr("heaped above its 11.0 cm; no more food fits"));
}

/// Room is to be had today: the tray that makes it is ready, though its turn has not come.
TEST(AdviceOfFeeding, AFullTrayNamesTheReadyOneThatMayBeLifted)
{
    StackReckoning stack = readyAndTurn();
    stack.turnSince.reset();
    stack.forecast.topTrayFullOn.p50 = in(3);
    stack.forecast.roomTopTrayFreshKg = 0.3;
    const auto text = [&] {
        const auto all = adviceFor(stack);
        return find(all, Code::trayFull) != nullptr ? find(all, Code::trayFull)->text : std::string{};
    };
    EXPECT_EQ(text(), "The top tray is full: feed less until the bottom tray is lifted");
    stack.now.slots[2].ageDays = 60;
    EXPECT_EQ(text(), "The top tray is full: lift the bottom tray, which is ready, or feed less");
    stack.forecast.roomTopTrayFreshKg = 0.0;
    EXPECT_EQ(text(), "The top tray is full: lift the bottom tray, which is ready; no food fits until then");
    stack.forecast.roomTopTrayFreshKg = 2.0;
    for (StackEstimate& day : stack.history) day.ahead->topTrayFullOn.p50 = day.day + std::chrono::days{5};
    EXPECT_EQ(text(), "The top tray fills up: lift the bottom tray, which is ready, or feed less");
}

}
}
