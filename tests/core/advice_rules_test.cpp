// All rules together: silent where nothing is due, what presses first, nothing of a stack that is none.
#include "core/advice/advice.h"
#include "tests/core/advice_three_trays.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

namespace tierloam::advice {
namespace {

using namespace reckoning;

using tests::codes;
using tests::in;
using tests::reasonOf;
using tests::today;
using tests::three::calm;
using tests::three::readyAndTurn;
using tests::three::tray;

using ::testing::Contains;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::Not;

TEST(Advice, IsSilentWhenNothingIsDue) { EXPECT_THAT(codes(calm()), IsEmpty()); }

TEST(Advice, LookNextSaysWhatFollowsFromEitherOutcomeAndIsWithdrawnByALook)
{
    StackReckoning stack = calm();
    stack.bitsRule = reckoning::BitsRule{12.0, in(30)};
    stack.forecast.turnLikelyOn = in(9);
    EXPECT_THAT(codes(stack), Contains("look-next"));
    const std::vector<Advice> all = adviceFor(stack);
    const auto look = std::find_if(all.begin(), all.end(), [](const Advice& a) { return a.code == Code::lookNext; });
    ASSERT_NE(look, all.end());
    EXPECT_EQ(look->slot, 1);
    EXPECT_THAT(look->because, HasSubstr("fewer than 1 in 8 bits of food or bedding: lift it today; else wait until about "));
    stack.bitsRule->otherwise = in(7);
    EXPECT_THAT(reasonOf(stack, Code::lookNext), HasSubstr("else wait and look again in a week")) << "a look holds as long";
    stack.bitsRule->otherwise = in(8);
    EXPECT_THAT(reasonOf(stack, Code::lookNext), HasSubstr("else wait until about "));
    stack.bitsRule->fewerThanPercent = 2.0;
    stack.bitsRule->otherwise.reset();
    EXPECT_THAT(adviceFor(stack).back().because + adviceFor(stack).front().because, HasSubstr("fewer than 2 % bits"));
    stack.record.lastLook = in(-3);
    EXPECT_THAT(codes(stack), Not(Contains("look-next")));
    stack.record.lastLook = in(-10);
    EXPECT_THAT(codes(stack), Contains("look-next"));
    stack.forecast.turnLikelyOn = in(15);
    EXPECT_THAT(codes(stack), Not(Contains("look-next")));
    stack.forecast.turnLikelyOn = in(9);
    stack.record.spareTrays = 1;
    EXPECT_THAT(codes(stack), Not(Contains("look-next")));
    stack.record.spareTrays = 0;
    stack.readySince = in(-1);
    EXPECT_THAT(codes(stack), Not(Contains("look-next")));
}

TEST(Advice, ARulerIsNotAskedForWhereItTellsNextToNothing)
{
    StackReckoning stack = calm();
    stack.record.spareTrays = 1;
    stack.forecast.turnLikelyOn = in(5);
    stack.forecast.turnOn = {in(2), in(5), in(32)};
    stack.turnLook = LookChoice{LookKind::depth, 2, 3.0, 0.5}; // 9 of the 30 days
    EXPECT_THAT(codes(stack), Contains("look-next"));
    stack.turnLook->cut = 0.1; // a day and a half
    EXPECT_THAT(codes(stack), Not(Contains("look-next")));
}

TEST(Advice, SumpFullOnlyBehindAShutSpigot)
{
    StackReckoning stack = calm();
    stack.record.spigotShut = true;
    stack.now.sumpL = {2.9, 3.2, 3.5};
    stack.forecast.sumpFullOn = {in(2), in(4), in(6)};
    EXPECT_THAT(codes(stack), ElementsAre("sump-full"));
    EXPECT_THAT(adviceFor(stack).front().because, HasSubstr("3.2 L of 4.0 L"));
    stack.forecast.sumpFullOn = {in(9), in(12), in(16)};
    EXPECT_THAT(codes(stack), IsEmpty());
    stack.now.sumpL = {3.9, 4.0, 4.0};
    EXPECT_EQ(adviceFor(stack).front().severity, Severity::urgent);
    EXPECT_FALSE(adviceFor(stack).front().look);
    stack.now.sumpL = {1.9, 4.0, 4.0};
    stack.forecast.sumpFullOn = {in(0), in(0), in(20)};
    EXPECT_EQ(adviceFor(stack).front().severity, Severity::urgent);
    EXPECT_TRUE(adviceFor(stack).front().look) << "whether it is so is seen first";
    stack.record.spigotShut = false;
    EXPECT_THAT(codes(stack), IsEmpty());
}

TEST(Advice, MostPressingFirst)
{
    StackReckoning stack = readyAndTurn();
    stack.record.spigotShut = true;
    stack.now.sumpL = {4, 4, 4};
    stack.record.lastFeed = in(-9);
    EXPECT_THAT(codes(stack), ElementsAre("sump-full", "harvest-ready", "feed-due"));
}

TEST(Advice, OfWhatPressesAlikeTheSoonestFirst)
{
    StackReckoning stack = calm();
    stack.record.lastFeed = in(-5); // due in two days; its rule is asked first
    stack.forecast.topTrayFullOn.p50 = in(1);
    stack.history[stack.history.size() - 2].ahead->topTrayFullOn.p50 = in(1); // yesterday's
    ASSERT_THAT(codes(stack), ElementsAre("tray-full", "feed-due"));
    const std::vector<Advice> all = adviceFor(stack);
    EXPECT_EQ(all[0].severity, all[1].severity);
    EXPECT_LT(all[0].on, all[1].on);
    EXPECT_THAT(all[0].text, HasSubstr("fills up")) << "not full yet";
    stack.forecast.topTrayFullOn.p50 = in(4);
    EXPECT_THAT(codes(stack), ElementsAre("feed-due", "tray-full"));
}

TEST(Advice, WithoutWormsTheyComeFirstAndNothingIsFed)
{
    StackReckoning stack = calm();
    stack.record.lastFeed.reset();
    stack.firstBedding = today;
    stack.history.clear();
    EXPECT_THAT(codes(stack), ElementsAre("feed-due"));
    stack.now.colonyKg = {};
    stack.forecast.feedLowKg = stack.forecast.feedUsualKg = stack.forecast.feedHighKg = stack.forecast.feedNowKg = 0.0; // as reckoned: see reckoning_strange_test
    ASSERT_THAT(codes(stack), ElementsAre("record-disagrees"));
    Advice missing = adviceFor(stack).front();
    EXPECT_TRUE(missing.wormsMissing);
    EXPECT_EQ(missing.severity, Severity::due);
    EXPECT_THAT(missing.because, HasSubstr("110 g to 450 g"));
    stack.history.push_back(stack.now);
    stack.history.front().colonyKg = {0.0, 0.05, 0.1};
    EXPECT_THAT(adviceFor(stack).front().because, HasSubstr("none are left"));
    stack.now.colonyKg = {0.0, 1e-19, 0.1}; // one in twenty has some: that is no colony to be cared for
    EXPECT_THAT(adviceFor(stack).front().because, HasSubstr("none are left"));
    stack.now.colonyKg = {0.0, 0.01, 0.1};
    EXPECT_THAT(codes(stack), IsEmpty());
}

TEST(Advice, ARetiredOrEmptyStackGetsNone)
{
    StackReckoning stack = readyAndTurn();
    stack.retired = true;
    EXPECT_THAT(codes(stack), IsEmpty());
    stack = readyAndTurn();
    stack.now.slots.clear();
    EXPECT_THAT(codes(stack), IsEmpty());
}

}
}
