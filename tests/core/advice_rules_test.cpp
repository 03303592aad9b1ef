// Each code: raised when it should be, silent when not, withdrawn when settled; and no two that contradict each other.
#include "core/advice/advice.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tierloam::advice {
namespace {

using namespace reckoning;

const Day today{std::chrono::year{2031} / 5 / 2};
Day in(int days) { return today + std::chrono::days{days}; }

TrayEstimate tray(int slot, TrayState state, double ready, double ratio)
{
    TrayEstimate made;
    made.slot = made.tray = made.batch = slot;
    made.state = state;
    made.readyProbability = ready;
    made.feedToCast = {ratio / 2, ratio, ratio * 2};
    made.castingsDepthCm = {2.6, 3.0, 3.4};
    made.unprocessedDryKg = {0.1, 0.2, 0.3};
    made.depthCm = 6.0;
    return made;
}

/// Three trays, nothing due: fed yesterday, bottom at work, room on top, spigot open.
StackReckoning calm()
{
    StackReckoning stack;
    stack.name = "Mill";
    stack.asOf = today;
    stack.now.day = today;
    stack.now.colonyKg = {0.9, 1.1, 1.4};
    stack.now.sumpL = {0.1, 0.1, 0.1};
    stack.now.slots = {tray(1, TrayState::working, 0.1, 0.4), tray(2, TrayState::working, 0.0, 0.8), tray(3, TrayState::working, 0.0, 4.0)};
    stack.forecast.colonyMedianIn60DaysKg = 1.1;
    stack.forecast.feedLowKg = 0.3;
    stack.forecast.feedUsualKg = 0.9;
    stack.forecast.feedHighKg = 1.6;
    stack.forecast.roomTopTrayFreshKg = 4.0;
    stack.record.lastFeed = in(-1);
    stack.record.medianFeedGapDays = 7;
    return stack;
}

std::vector<std::string> codes(const StackReckoning& stack)
{
    std::vector<std::string> names;
    for (const Advice& each : adviceFor(stack)) names.emplace_back(codeName(each.code));
    return names;
}

using ::testing::Contains;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::Not;

StackReckoning readyAndTurn()
{
    StackReckoning stack = calm();
    stack.now.slots[0] = tray(1, TrayState::ready, 0.93, 0.07);
    stack.readySince = in(-3);
    stack.turnSince = in(-2);
    return stack;
}

TEST(Advice, IsSilentWhenNothingIsDue) { EXPECT_THAT(codes(calm()), IsEmpty()); }

TEST(Advice, HarvestReadyNeedsReadyTurnAndNoSpareTray)
{
    StackReckoning stack = readyAndTurn();
    EXPECT_THAT(codes(stack), ElementsAre("harvest-ready"));
    const Advice advice = adviceFor(stack).front();
    EXPECT_EQ(advice.slot, 1);
    EXPECT_EQ(advice.severity, Severity::due);
    EXPECT_THAT(advice.because, HasSubstr("0.07 : 1"));
    EXPECT_THAT(advice.because, HasSubstr("93"));
    stack.record.spareTrays = 1;
    EXPECT_THAT(codes(stack), Not(Contains("harvest-ready")));
    stack = readyAndTurn();
    stack.readySince.reset();
    EXPECT_THAT(codes(stack), Not(Contains("harvest-ready")));
    stack = readyAndTurn();
    stack.turnSince.reset();
    EXPECT_THAT(codes(stack), ElementsAre("ready-no-hurry"));
}

TEST(Advice, WhileATrayDriesNoOtherIsLifted)
{
    StackReckoning stack = readyAndTurn();
    stack.now.slots[2].state = TrayState::drying;
    EXPECT_THAT(codes(stack), Not(Contains("harvest-ready")));
    EXPECT_THAT(codes(stack), Not(Contains("add-tray")));
}

TEST(Advice, AddTrayWithASpareOnTheTurn)
{
    StackReckoning stack = calm();
    stack.record.spareTrays = 1;
    stack.turnSince = today;
    EXPECT_THAT(codes(stack), ElementsAre("add-tray"));
    EXPECT_THAT(adviceFor(stack).front().because, HasSubstr("3.0 cm"));
    stack.turnSince.reset();
    EXPECT_THAT(codes(stack), IsEmpty());
}

TEST(Advice, OverdueReplacesReadyAndSaysWhatIsLost)
{
    StackReckoning stack = readyAndTurn();
    stack.now.slots[0].state = TrayState::overdue;
    stack.turnSince = in(-40);
    stack.readySince = in(-35);
    stack.forecast.colonyMedianIn60DaysKg = 0.8;
    EXPECT_THAT(codes(stack), ElementsAre("harvest-overdue"));
    const Advice advice = adviceFor(stack).front();
    EXPECT_EQ(advice.severity, Severity::concern);
    EXPECT_THAT(advice.because, HasSubstr("35 day"));
    EXPECT_THAT(advice.because, HasSubstr("1.1 kg to 800 g"));
}

TEST(Advice, HarvestSoonFromEvenChances)
{
    StackReckoning stack = calm();
    stack.forecast.readyAndTurnWithin14Days = 0.5;
    stack.forecast.turnLikelyOn = in(9);
    EXPECT_THAT(codes(stack), ElementsAre("harvest-soon"));
    EXPECT_EQ(adviceFor(stack).front().on, in(9));
    stack.forecast.readyAndTurnWithin14Days = 0.49;
    EXPECT_THAT(codes(stack), IsEmpty());
    stack = readyAndTurn();
    stack.forecast.readyAndTurnWithin14Days = 0.9;
    EXPECT_THAT(codes(stack), Not(Contains("harvest-soon")));
}

TEST(Advice, FeedDueWhenTheUsualGapHasPassed)
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
    EXPECT_THAT(advice.text, HasSubstr("900 g"));
    EXPECT_THAT(advice.because, HasSubstr("8 day"));
    stack.forecast.feedHighKg = 0.02; // nothing more can be borne
    EXPECT_THAT(codes(stack), Not(Contains("feed-due")));
}

TEST(Advice, FeedNeverExceedsWhatCanBeBorne)
{
    StackReckoning stack = calm();
    stack.record.lastFeed = in(-8);
    stack.forecast.feedHighKg = 0.4;
    EXPECT_THAT(adviceFor(stack).front().text, HasSubstr("400 g"));
}

TEST(Advice, TrayFullNowOrWithinAWeek)
{
    StackReckoning stack = calm();
    stack.forecast.roomTopTrayFreshKg = 0.3;
    EXPECT_THAT(codes(stack), ElementsAre("tray-full"));
    EXPECT_EQ(adviceFor(stack).front().severity, Severity::concern);
    stack.forecast.roomTopTrayFreshKg = 2.0;
    stack.forecast.topTrayFullOn.p50 = in(7);
    EXPECT_THAT(codes(stack), ElementsAre("tray-full"));
    stack.forecast.topTrayFullOn.p50 = in(8);
    EXPECT_THAT(codes(stack), IsEmpty());
}

TEST(Advice, SumpFullOnlyBehindAShutSpigot)
{
    StackReckoning stack = calm();
    stack.record.spigotShut = true;
    stack.now.sumpL = {2.9, 3.2, 3.5};
    stack.forecast.sumpFullOn = {in(2), in(4), in(6)};
    EXPECT_THAT(codes(stack), ElementsAre("sump-full"));
    EXPECT_THAT(adviceFor(stack).front().because, HasSubstr("3.2 L of 4.0 L"));
    stack.forecast.sumpFullOn = {in(6), in(12), in(20)};
    EXPECT_THAT(codes(stack), IsEmpty());
    stack.now.sumpL = {3.9, 4.0, 4.0};
    EXPECT_EQ(adviceFor(stack).front().severity, Severity::urgent);
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
