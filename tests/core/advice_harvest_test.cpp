// The turn of a stack: a tray more, a tray lifted, and what is told before and while it waits.
#include "core/advice/too_early.h"
#include "tests/core/advice_three_trays.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tierloam::advice {
namespace {

using namespace reckoning;

using tests::codes;
using tests::find;
using tests::in;
using tests::reasonOf;
using tests::since;
using tests::today;
using tests::three::calm;
using tests::three::readyAndTurn;
using tests::three::tray;

using ::testing::Contains;
using ::testing::ElementsAre;
using ::testing::EndsWith;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::Not;

TEST(AdviceOfHarvests, HarvestReadyNeedsReadyTurnAndNoSpareTray)
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

TEST(AdviceOfHarvests, WhileATrayDriesNoOtherIsLifted)
{
    StackReckoning stack = readyAndTurn();
    stack.now.slots[2].state = TrayState::drying;
    EXPECT_THAT(codes(stack), Not(Contains("harvest-ready")));
    EXPECT_THAT(codes(stack), Not(Contains("add-tray")));
}

TEST(AdviceOfHarvests, AddTrayWithASpareOnTheTurn)
{
    StackReckoning stack = calm();
    stack.record.spareTrays = 1;
    stack.turnSince = today;
    EXPECT_THAT(codes(stack), ElementsAre("add-tray"));
    EXPECT_THAT(adviceFor(stack).front().because, HasSubstr("3.0 cm"));
    EXPECT_THAT(adviceFor(stack).front().because, Not(HasSubstr("its turn for")));
    stack.turnSince = in(-29);
    EXPECT_THAT(adviceFor(stack).front().because, EndsWith("its turn for 29 day(s)"));
    stack.turnSince = in(-30);
    EXPECT_THAT(adviceFor(stack).front().because, EndsWith("; if one was added since, write it down"));
    stack.turnSince.reset();
    EXPECT_THAT(codes(stack), IsEmpty());
}

TEST(AdviceOfHarvests, NoMoreCastingsAreToldThanATrayHolds)
{
    StackReckoning stack = calm();
    stack.record.spareTrays = 1;
    stack.turnSince = today;
    stack.now.slots[2].castingsDepthCm = {10.0, 13.1, 16.0};
    EXPECT_THAT(reasonOf(stack, Code::addTray), HasSubstr("more castings than fit under its rim at 11.0 cm: a new tray or a harvest may not be written down, or an entry is wrong"));
    EXPECT_THAT(reasonOf(stack, Code::addTray), Not(HasSubstr("13.1")));
    stack.record.spareTrays = 0;
    stack.turnSince.reset();
    stack.readySince = in(-3);
    stack.now.slots[2].ageDays = 60;
    EXPECT_THAT(reasonOf(stack, Code::readyNoHurry), HasSubstr("holds 11.0 cm of castings"));
}

/// The bottom tray lags behind: another that is ready makes the room that is wanted.
TEST(AdviceOfHarvests, AReadyTrayBetweenIsTakenWhereTheBottomOneIsNot)
{
    StackReckoning stack = calm();
    stack.turnSince = in(-88);
    stack.now.slots[0] = tray(1, TrayState::nearly, 0.39, 0.11);
    stack.now.slots[1] = tray(2, TrayState::ready, 0.99, 0.04);
    stack.forecast.readyAndTurnWithin14Days = 0.5;
    ASSERT_THAT(codes(stack), ElementsAre("harvest-ready"));
    const Advice told = adviceFor(stack).front();
    EXPECT_EQ(told.slot, 2);
    EXPECT_EQ(told.severity, Severity::due);
    EXPECT_THAT(told.text, HasSubstr("slot 2 instead: the bottom one is not ready"));
    EXPECT_THAT(told.because, HasSubstr("ready 99 %; the bottom tray 39 %; the turn has come for 88 day"));
    EXPECT_THAT(told.because, HasSubstr("about 330 g of worms are in it")) << "0.3 of 1.1 kg";
    EXPECT_EQ(stepDueToday(stack), LifeStep::take) << "the journal lifts the bottom tray alone";
    StackReckoning other = stack;
    other.now.slots[1].state = TrayState::nearly;
    EXPECT_THAT(codes(other), ElementsAre("harvest-soon"));
    other = stack;
    other.turnSince.reset();
    EXPECT_THAT(codes(other), Not(Contains("harvest-ready"))) << "nothing presses";
    other = stack;
    other.record.spareTrays = 1;
    EXPECT_THAT(codes(other), ElementsAre("add-tray"));
    other = stack;
    other.now.slots[1].state = TrayState::working;
    other.now.slots[2] = tray(3, TrayState::ready, 0.9, 0.05);
    EXPECT_THAT(codes(other), ElementsAre("harvest-soon")) << "the tray that is fed is not taken";
    stack.readySince = today;
    stack.now.slots[0].state = TrayState::ready;
    EXPECT_EQ(adviceFor(stack).front().slot, 1);
    EXPECT_EQ(stepDueToday(stack), LifeStep::lift);
}

/// Its turn has come and readiness alone is missing: nothing comes soon, a look decides.
TEST(AdviceOfHarvests, ATurnThatHasComeAndWaitsForReadinessIsSaidToHaveCome)
{
    StackReckoning stack = calm();
    stack.turnSince = in(-40);
    stack.now.slots[0] = tray(1, TrayState::nearly, 0.72, 0.09);
    stack.forecast.readyAndTurnWithin14Days = 0.8;
    ASSERT_THAT(codes(stack), ElementsAre("harvest-soon"));
    EXPECT_EQ(adviceFor(stack).front().text, "The bottom tray's turn has come: look for bits in it");
    EXPECT_THAT(adviceFor(stack).front().because, HasSubstr("ready 72 %; its turn for 40 day"));
    stack.record.lastLook = in(-6);
    EXPECT_EQ(adviceFor(stack).front().text, "The bottom tray's turn has come, it is not ready yet") << "looked at this week";
    stack.record.lastLook = in(-7);
    stack.now.slots.resize(1);
    EXPECT_EQ(find(adviceFor(stack), Code::harvestSoon)->text, "The only tray's turn has come: look for bits in it");
    stack.turnSince.reset();
    EXPECT_EQ(find(adviceFor(stack), Code::harvestSoon)->text, "The only tray can be emptied soon");
}

TEST(AdviceOfHarvests, AnOnlyTrayIsReadyUntilTheLastFoodIsEaten)
{
    StackReckoning stack = calm();
    stack.readySince = in(-3);
    stack.turnSince = in(-9);
    stack.record.spareTrays = 1;
    stack.now.slots = {tray(1, TrayState::ready, 0.51, 0.10)};
    EXPECT_THAT(reasonOf(stack, Code::readyNoHurry), HasSubstr("ready 51 % until the last food is eaten; a spare"));
    EXPECT_EQ(find(adviceFor(stack), Code::readyNoHurry)->text, "The only tray is ready, no hurry");
    stack.now.slots[0].readyProbability = 0.61;
    EXPECT_THAT(reasonOf(stack, Code::readyNoHurry), HasSubstr("ready 61 %; a spare"));
}

TEST(AdviceOfHarvests, ARangeWithoutItsLateEndSaysThatItIsOpen)
{
    StackReckoning stack = calm();
    stack.readySince = in(-3);
    stack.now.slots[0] = tray(1, TrayState::ready, 0.9, 0.05);
    const auto turnAbout = [&](const Dates& on) {
        stack.forecast.turnOn = on;
        return reasonOf(stack, Code::readyNoHurry);
    };
    EXPECT_THAT(turnAbout({in(51), in(51), std::nullopt}), HasSubstr("22 June at the earliest, perhaps not within a year"));
    EXPECT_THAT(turnAbout({in(20), in(51), std::nullopt}), HasSubstr("22 June (22 May at the earliest, perhaps not within a year)"));
    EXPECT_THAT(turnAbout({in(20), in(51), in(90)}), HasSubstr("22 June (22 May to 31 July)"));
    EXPECT_THAT(turnAbout({in(20), std::nullopt, std::nullopt}), HasSubstr("; its turn not before 22 May"));
    EXPECT_THAT(turnAbout({}), HasSubstr("; its turn not within a year"));
    EXPECT_THAT(turnAbout({in(-40), in(51), in(90)}), HasSubstr("22 June (today to 31 July)")) << "a day that has passed would read as one of next year";
    EXPECT_THAT(turnAbout({in(-40), in(51), std::nullopt}), HasSubstr("22 June (today at the earliest"));
}

TEST(AdviceOfHarvests, OverdueReplacesReadyAndSaysWhatIsLost)
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
    stack.record.lastFeed = in(-15);
    EXPECT_THAT(reasonOf(stack, Code::harvestOverdue), Not(HasSubstr("800 g"))) << "that is hunger, which no lift ends";
    stack.record.lastFeed = in(-3);
    EXPECT_THAT(reasonOf(stack, Code::harvestOverdue), Not(HasSubstr("hardly leave the light")));
    stack.now.binTempC = {3, 4, 5};
    EXPECT_THAT(reasonOf(stack, Code::harvestOverdue), Not(HasSubstr("800 g"))) << "nor cold";
    EXPECT_THAT(reasonOf(stack, Code::harvestOverdue), HasSubstr("worms hardly leave the light"));
}

TEST(AdviceOfHarvests, HarvestSoonFromEvenChances)
{
    StackReckoning stack = calm();
    stack.forecast.readyAndTurnWithin14Days = 0.5;
    stack.forecast.turnLikelyOn = in(9);
    EXPECT_THAT(codes(stack), ElementsAre("harvest-soon"));
    EXPECT_EQ(adviceFor(stack).front().on, in(9));
    stack.forecast.readyAndTurnWithin14Days = 0.49;
    EXPECT_THAT(codes(stack), IsEmpty());
    since(stack, -3, [](StackEstimate& day) { day.ahead->readyAndTurnWithin14Days = 0.49; });
    EXPECT_THAT(codes(stack), IsEmpty());
    stack.history[stack.history.size() - 3].ahead->readyAndTurnWithin14Days = 0.5; // raised two days ago
    EXPECT_THAT(codes(stack), ElementsAre("harvest-soon"));
    stack.history[stack.history.size() - 2].ahead->readyAndTurnWithin14Days = 0.3; // and withdrawn yesterday
    EXPECT_THAT(codes(stack), IsEmpty());
    stack = readyAndTurn();
    stack.forecast.readyAndTurnWithin14Days = 0.9;
    EXPECT_THAT(codes(stack), Not(Contains("harvest-soon")));
}

/// Who was told to lift it when they like is not told to wait a fortnight later.
TEST(AdviceOfHarvests, ATurnThatComesSoonTakesNothingBackOfATrayThatMayBeLifted)
{
    StackReckoning stack = readyAndTurn();
    stack.turnSince.reset();
    stack.now.slots[2].ageDays = 60;
    ASSERT_THAT(codes(stack), ElementsAre("ready-no-hurry"));
    ASSERT_THAT(adviceFor(stack).front().text, HasSubstr("lift it when you like"));
    stack.forecast.readyAndTurnWithin14Days = 0.6;
    ASSERT_THAT(codes(stack), ElementsAre("harvest-soon"));
    EXPECT_EQ(adviceFor(stack).front().text, "The bottom tray is ready and its turn comes soon: lift it when you like");
    EXPECT_THAT(adviceFor(stack).front().because, EndsWith("within 14 days: 60 %; the top tray has had 60 day(s) and holds 3.0 cm of castings"));
    stack.now.slots[2].ageDays = 59;
    EXPECT_EQ(adviceFor(stack).front().text, "The bottom tray's turn comes soon");
}

/// The look is asked for once, with what follows from it.
TEST(AdviceOfHarvests, ATurnThatWaitsAsksForBitsWhereNoLookDoes)
{
    StackReckoning stack = calm();
    stack.turnSince = in(-11);
    stack.forecast.readyAndTurnWithin14Days = 0.75;
    EXPECT_EQ(find(adviceFor(stack), Code::harvestSoon)->text, "The bottom tray's turn has come: look for bits in it");
    stack.bitsRule = BitsRule{8.0, in(40)};
    ASSERT_NE(find(adviceFor(stack), Code::lookNext), nullptr);
    EXPECT_EQ(find(adviceFor(stack), Code::harvestSoon)->text, "The bottom tray's turn has come, it is not ready yet");
}

TEST(AdviceOfHarvests, ATopTrayAtItsRimIsSaidToBe)
{
    StackReckoning stack = readyAndTurn();
    stack.now.slots[0].state = TrayState::overdue;
    stack.now.slots[2].depthCm = 10.8;
    EXPECT_THAT(reasonOf(stack, Code::harvestOverdue), HasSubstr("filled to 0.2 cm under its rim"));
    for (const double depth : {11.0, 12.5}) {
        stack.now.slots[2].depthCm = depth;
        EXPECT_THAT(reasonOf(stack, Code::harvestOverdue), HasSubstr("the top tray is filled to its rim"));
    }
}

}
}
