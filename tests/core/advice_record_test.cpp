// What is odd in the record: values that the members could not explain, and usual feedings that have no entry.
#include "tests/support/calm_stack.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

namespace tierloam::advice {
namespace {

using namespace reckoning;
using namespace tests;

using ::testing::Not;
using ::testing::Contains;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;

Disagreement odd(int day, LookKind kind, double value, Band expected, int slot = 0, std::int64_t entry = 7)
{
    return {entry, in(day), kind, slot, value, expected};
}

TEST(AdviceOfTheRecord, AValueThatDisagreesIsToldWithWhatWasExpected)
{
    StackReckoning stack = calm();
    stack.disagreements = {odd(-9, LookKind::weigh, 0.9, {0.2, 0.35, 0.52})};
    ASSERT_THAT(codes(stack), ElementsAre("record-disagrees"));
    const Advice advice = adviceFor(stack).front();
    EXPECT_EQ(advice.severity, Severity::hint);
    EXPECT_EQ(advice.on, today);
    EXPECT_EQ(advice.slot, std::nullopt);
    EXPECT_EQ(advice.entry, 7);
    EXPECT_EQ(advice.unwritten, std::nullopt);
    EXPECT_EQ(advice.text, "Check the entry of 23 April, or look again");
    EXPECT_EQ(advice.because, "worms weighed: 0.90 kg; expected 0.20 kg to 0.52 kg");
}

TEST(AdviceOfTheRecord, ADisagreementIsReplacedByALaterOneAndForgottenAfterSixtyDays)
{
    StackReckoning stack = calm();
    stack.disagreements = {odd(-60, LookKind::depth, 7.0, {1.2, 1.8, 2.4}, 2, 3)};
    ASSERT_THAT(codes(stack), ElementsAre("record-disagrees"));
    EXPECT_EQ(adviceFor(stack).front().because, "depth of castings in slot 2: 7.0 cm; expected 1.2 cm to 2.4 cm");
    stack.disagreements.push_back(odd(-6, LookKind::moisture, 40, {66, 75, 84}, 0, 4));
    ASSERT_THAT(codes(stack), ElementsAre("record-disagrees"));
    EXPECT_EQ(adviceFor(stack).front().entry, 4);
    EXPECT_EQ(adviceFor(stack).front().because, "moisture: 40 %; expected 66 % to 84 %");
    stack.disagreements = {odd(-61, LookKind::depth, 7.0, {1.2, 1.8, 2.4}, 2)};
    EXPECT_THAT(codes(stack), IsEmpty());
    stack.disagreements.clear(); // the entry was put right
    EXPECT_THAT(codes(stack), IsEmpty());
}

std::optional<std::int64_t> entryOf(const StackReckoning& stack)
{
    const auto all = adviceFor(stack);
    const Advice* told = tests::find(all, Code::recordDisagrees);
    return told != nullptr ? told->entry : std::nullopt;
}

TEST(AdviceOfTheRecord, AValueThatAgreesWithWhatWasExpectedBeforeAnOddOneClearsItself)
{
    StackReckoning stack = calm();
    stack.disagreements = {odd(-6, LookKind::bedTemperature, 35, {17, 19, 22}, 0, 3), odd(-5, LookKind::bedTemperature, 20.5, {33, 35, 37}, 0, 4)};
    EXPECT_EQ(entryOf(stack), 3) << "the members had followed the wrong one";
    stack.disagreements.back().value = 28.0; // neither
    EXPECT_EQ(entryOf(stack), 4);
    stack.disagreements.back().value = 20.5;
    stack.disagreements.front().day = in(-20); // long before
    EXPECT_EQ(entryOf(stack), 4);
}

TEST(AdviceOfTheRecord, AValueWithinWhatWasExpectedIsNotCalledOdd)
{
    StackReckoning stack = calm();
    stack.disagreements = {odd(-9, LookKind::depth, 7.0, {1.2, 1.8, 2.4}), odd(-3, LookKind::weigh, 0.5, {0.2, 0.35, 0.52})};
    EXPECT_THAT(adviceFor(stack).front().because, HasSubstr("castings"));
    stack.disagreements.erase(stack.disagreements.begin());
    EXPECT_THAT(codes(stack), IsEmpty());
    stack.disagreements = {odd(-3, LookKind::weigh, 0.1, {0.2, 0.35, 0.52})}; // too little is odd too …
    EXPECT_THAT(codes(stack), ElementsAre("record-disagrees"));
    stack.disagreements = {odd(-3, LookKind::wormsTaken, 0.1, {0.2, 0.35, 0.52})}; // … but not of what was taken from more
    EXPECT_THAT(codes(stack), IsEmpty());
    stack.disagreements = {odd(-3, LookKind::wormsTaken, 0.8, {0.2, 0.35, 0.52})};
    EXPECT_EQ(adviceFor(stack).front().because, "worms taken out: 0.80 kg; expected at most 0.52 kg");
}

TEST(AdviceOfTheRecord, EveryReadingIsSaidInItsUnit)
{
    const std::vector<std::pair<Disagreement, std::string>> said{
        {odd(-1, LookKind::bits, 80, {10, 20, 30}, 1), "still recognisable in slot 1: 80 %; expected 10 % to 30 %"},
        {odd(-1, LookKind::left, 95, {10, 20, 30}, 3), "left of the last feeding in slot 3: 95 %; expected 10 % to 30 %"},
        {odd(-1, LookKind::weigh, 0.0001, {0.04, 0.06, 0.2}), "worms weighed: 0 g; expected 40 g to 0.20 kg"},
        {odd(-1, LookKind::count, 90, {4, 11.2, 20.4}), "worms counted: 90; expected 4 to 20"},
        {odd(-1, LookKind::wormsSeen, 0, {1, 2, 2}), "worms seen: few; expected some to many"},
        {odd(-1, LookKind::drain, 3.2, {0.25, 0.6, 1.1}), "drained: 3.2 L; expected 0.25 L to 1.1 L"},
        {odd(-1, LookKind::drainPart, 3.2, {0.25, 0.6, 1.1}), "drained in part: 3.2 L; expected at most 1.1 L"},
        {odd(-1, LookKind::conductivity, 9, {1.5, 2, 3.1}), "conductivity of the leachate: 9.0 mS/cm; expected 1.5 mS/cm to 3.1 mS/cm"},
        {odd(-1, LookKind::trayWeight, 15, {6.1, 7, 8.2}, 2), "weight of the tray in slot 2: 15.00 kg; expected 6.10 kg to 8.20 kg"},
        {odd(-1, LookKind::squeeze, 0, {3, 3, 3}), "squeezed in the hand: 1; expected 4"}, // counted from 0, written down from 1
        {odd(-1, LookKind::bedTemperature, 35, {18.2, 20, 22.8}), "temperature of the bed: 35.0 °C; expected 18.2 °C to 22.8 °C"},
        {odd(-1, LookKind::harvestMass, 12, {4.5, 5, 5.75}, 1), "castings taken in slot 1: 12.00 kg; expected 4.50 kg to 5.75 kg"},
        {odd(-1, LookKind::harvestVolume, 20, {6, 8, 11}, 1), "castings taken in slot 1: 20.0 L; expected 6.0 L to 11.0 L"}};
    for (const auto& [value, because] : said) {
        StackReckoning stack = calm();
        stack.disagreements = {value};
        ASSERT_THAT(codes(stack), ElementsAre("record-disagrees")) << because;
        EXPECT_EQ(adviceFor(stack).front().because, because);
    }
}

UnwrittenGuess unwritten(std::vector<Day> given, double probability)
{
    UnwrittenGuess guess;
    guess.from = *std::min_element(given.begin(), given.end());
    guess.to = *std::max_element(given.begin(), given.end());
    guess.feedings = static_cast<int>(given.size());
    guess.probability = probability;
    guess.kgEach = 0.45;
    guess.days = std::move(given);
    return guess;
}

TEST(AdviceOfTheRecord, UnwrittenFeedingsOfTheLastMonthThatHasAny)
{
    StackReckoning stack = calm();
    stack.unwritten = {unwritten({in(-50)}, 0.7), unwritten({in(-11), in(-18)}, 0.82)}; // likeliest first
    stack.unwritten.back().material = "coffee grounds";
    ASSERT_THAT(codes(stack), ElementsAre("record-disagrees"));
    const Advice advice = adviceFor(stack).front();
    EXPECT_EQ(advice.severity, Severity::hint);
    EXPECT_EQ(advice.text, "About 2 feeding(s) in April seem not to have been written down (82 %)"); // English plurals come from the translation
    EXPECT_EQ(advice.because, "usual days without an entry: 14 April, 21 April; usually 450 g of coffee grounds");
    EXPECT_EQ(advice.unwritten, (UnwrittenFeeding{in(-18), 0.45, "coffee grounds"}));
    EXPECT_EQ(advice.entry, std::nullopt);
    stack.unwritten.pop_back(); // written down: the month before comes up
    EXPECT_THAT(adviceFor(stack).front().text, HasSubstr("About 1 feeding(s) in March"));
    EXPECT_THAT(adviceFor(stack).front().because, HasSubstr("of kitchen mix"));
    stack.unwritten.pop_back();
    EXPECT_THAT(codes(stack), IsEmpty());
}

TEST(AdviceOfTheRecord, UnwrittenFeedingsOfLongAgoAreLetBe)
{
    StackReckoning stack = calm();
    stack.unwritten = {unwritten({in(-183)}, 0.9)};
    ASSERT_THAT(codes(stack), ElementsAre("record-disagrees"));
    EXPECT_THAT(adviceFor(stack).front().text, HasSubstr("in October 2030"));
    stack.unwritten = {unwritten({in(-184)}, 0.9)};
    EXPECT_THAT(codes(stack), IsEmpty());
}

TEST(AdviceOfTheRecord, ManyUnwrittenDaysAreNamedByFirstAndLast)
{
    StackReckoning stack = calm();
    stack.unwritten = {unwritten({in(-4), in(-6), in(-8), in(-10), in(-12), in(-14)}, 0.65)};
    EXPECT_THAT(adviceFor(stack).front().because, HasSubstr("between 18 April and 28 April"));
}

TEST(AdviceOfTheRecord, TheRecordComesAfterWhatIsDue)
{
    StackReckoning stack = calm();
    stack.now.slots[0].state = TrayState::ready;
    stack.now.slots[0].readyProbability = 0.93;
    stack.readySince = stack.turnSince = in(-2);
    stack.disagreements = {odd(-3, LookKind::weigh, 0.9, {0.2, 0.35, 0.52})};
    stack.unwritten = {unwritten({in(-18)}, 0.8)};
    EXPECT_THAT(codes(stack), ElementsAre("harvest-ready", "record-disagrees", "record-disagrees"));
}

TEST(AdviceOfTheRecord, StaleAfterThreeWeeksDaysAwayLeftOut)
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

}
}
