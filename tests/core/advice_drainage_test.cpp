// What ran off beside what was expected, and the day on which a shut sump is full.
#include "core/advice/advice.h"
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

DrainCheck drained(int day, double litres, Band expected) { return {in(day), litres, expected}; }

TEST(AdviceOfDrainage, DrainageLowAfterTwoInARow)
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

TEST(AdviceOfDrainage, DrainageHighAfterTwoInARowOrWithMuchWatering)
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

TEST(AdviceOfDrainage, ThoseWhoFlushAreToldToFlush)
{
    StackReckoning stack = calm();
    stack.record.spigotShut = true;
    stack.now.sumpL = {2.9, 3.2, 3.5};
    stack.forecast.sumpFullOn = {in(2), in(4), in(6)};
    EXPECT_THAT(adviceFor(stack).front().text, HasSubstr("Drain"));
    stack.record.lastFlush = stack.record.lastDrain = in(-30);
    EXPECT_THAT(adviceFor(stack).front().text, HasSubstr("Flush"));
}

TEST(AdviceOfDrainage, SumpFullStaysUntilTenDaysOff)
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

TEST(AdviceOfDrainage, ALookIntoTheSumpComesBeforeADateThatIsNotKnown)
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

TEST(AdviceOfDrainage, WhenTheEarlyEndHasComeTheSumpMayBeFull)
{
    StackReckoning stack = calm();
    stack.record.spigotShut = true;
    stack.now.sumpL = {1.1, 3.6, 4.0};
    stack.forecast.sumpFullOn = {today, in(6), in(90)};
    // 0.97 · 4 L = 3.88 L lies 0.7 of the way from the median to the 95 %: 0.5 − 0.45 · 0.7 = 0.185.
    Advice look = adviceFor(stack).front();
    EXPECT_THAT(look.because, HasSubstr("it may be full already (chance 19 %)")) << look.because;
    EXPECT_EQ(look.severity, Severity::due);
    stack.now.sumpL = {1.1, 3.87, 4.0};
    EXPECT_EQ(adviceFor(stack).front().severity, Severity::due) << "the median is not full";
    stack.now.sumpL = {1.1, 3.9, 4.0};
    look = adviceFor(stack).front();
    EXPECT_EQ(look.severity, Severity::urgent);
    EXPECT_THAT(look.because, HasSubstr("likely to be full already")) << "as it presses, so it is told";
}

/// The range of the date wanders about the seven days at which a look is due.
TEST(AdviceOfDrainage, ToEmptyTheSumpStandsUntilItIsDone)
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

}
}
