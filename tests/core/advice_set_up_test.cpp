// A bed that is not what its set-up lets expect: the set-up is to be corrected, or the reading.
#include "core/reckoning/bed_year.h"
#include "core/reckoning/care.h"
#include "tests/core/reckoning_notes.h"
#include "tests/support/calm_stack.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tierloam::advice {
namespace {

using namespace reckoning;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::Not;
using tests::calm, tests::in, tests::today;

std::vector<std::string> codesOf(const StackReckoning& stack)
{
    std::vector<std::string> names;
    for (const Advice& each : adviceFor(stack)) names.emplace_back(codeName(each.code));
    return names;
}

/// One reading of the bed on that day, the place written down so many days before it.
StackReckoning read(int day, double celsius, int writtenBefore)
{
    StackReckoning stack = calm();
    stack.disagreements = {{7, in(day), LookKind::bedTemperature, 0, celsius, {17, 19, 22}}};
    stack.record.lastBedRead = in(day);
    stack.record.bedReadC = celsius;
    stack.record.bedReadUnder = in(day - writtenBefore);
    return stack;
}

TEST(AdviceOfTheSetUp, AnOddReadingSoonAfterTheSetUpSpeaksAgainstBoth)
{
    const StackReckoning stack = read(-3, 12, 30);
    ASSERT_THAT(codesOf(stack), ElementsAre("record-disagrees"));
    const Advice advice = adviceFor(stack).front();
    EXPECT_EQ(advice.text, "Correct place or usual temperature in the set-up, or check the entry of 29 April");
    EXPECT_EQ(advice.because, "temperature of the bed: 12.0 °C; expected 17.0 °C to 22.0 °C");
    EXPECT_EQ(advice.entry, 7);
    EXPECT_TRUE(advice.ofTheSetUp);
    EXPECT_FALSE(adviceFor(read(-3, 12, 31)).front().ofTheSetUp);
    EXPECT_THAT(adviceFor(read(-3, 12, 31)).front().text, HasSubstr("Check the entry")) << "long after it, the reading alone";
}

TEST(AdviceOfTheSetUp, TwoReadingsToTheSameSideSpeakAgainstItThoughTheSecondAgreedWithTheFirst)
{
    StackReckoning stack = read(-12, 12, 300);
    stack.settled = {stack.disagreements.front()};
    stack.settled.front().settledOn = in(-2);
    stack.disagreements.clear();
    EXPECT_TRUE(codesOf(stack).empty()) << "one reading, settled";
    stack.record.lastBedRead = in(-2);
    stack.record.bedReadC = 12.5;
    ASSERT_THAT(codesOf(stack), ElementsAre("record-disagrees"));
    EXPECT_EQ(adviceFor(stack).front().because, "temperature of the bed: 12.0 °C; expected 17.0 °C to 22.0 °C; read again on 30 April: 12.5 °C");
    stack.record.bedReadC = 18;
    EXPECT_TRUE(codesOf(stack).empty()) << "the first was a slip";
    stack.record.bedReadC = 25;
    EXPECT_TRUE(codesOf(stack).empty()) << "to the other side";
    stack.record.bedReadC = 12.5;
    stack.settled.front().day = in(-24);
    EXPECT_TRUE(codesOf(stack).empty()) << "the season has changed meanwhile";
}

TEST(AdviceOfTheSetUp, ItIsSaidOnceAndNoMoreWhenTheSetUpWasCorrected)
{
    StackReckoning stack = read(-3, 28, 5);
    EXPECT_EQ(codesOf(stack).size(), 1U);
    EXPECT_THAT(adviceFor(stack).front().text, HasSubstr("set-up"));
    stack.record.bedReadUnder.reset(); // written anew
    ASSERT_EQ(codesOf(stack).size(), 1U);
    EXPECT_THAT(adviceFor(stack).front().text, Not(HasSubstr("set-up")));
}

// As a keeper lived it: moved to a garage in November, what the thermometer showed typed as the usual temperature, and read again.
TEST(AdviceOfTheSetUp, AMeanThatWasTakenForTheTemperatureOfTodayIsFound)
{
    Notes notes;
    notes.begun("Mill").fedWeekly("Mill", 2, 340);
    journal::Setup moved;
    moved.place = journal::Place::garage;
    moved.temp = celsius(8);
    notes.add(318, "Mill", moved); // 20 November
    journal::Reading reading;
    reading.bin = celsius(10);
    notes.add(336, "Mill", reading);
    const auto odd = [&](int day) {
        const auto made = reckon(notes.entries(), until(day));
        const auto all = adviceFor(*made->stack("Mill"));
        const Advice* told = tests::find(all, Code::recordDisagrees);
        return told != nullptr ? told->text : std::string{};
    };
    EXPECT_THAT(odd(337), HasSubstr("set-up"));
    journal::Setup corrected;
    corrected.temp = celsius(reckoning::yearMeanFrom(10, journal::Place::garage, onDay(336), false));
    notes.add(336, "Mill", corrected);
    EXPECT_THAT(odd(337), Not(HasSubstr("set-up")));
}

}
}
