// Water in the bed: too dry and too wet, what is poured, and the handful that is squeezed before.
#include "core/advice/advice.h"
#include "core/reckoning/tray_contents.h"

#include "core/wording/formats.h"

#include "tests/support/calm_stack.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>
#include <set>

namespace tierloam::advice {
namespace {

using namespace reckoning;
using ::testing::AllOf;
using ::testing::Contains;
using ::testing::HasSubstr;
using ::testing::Not;

using namespace tests;

TEST(AdviceOfWater, TooDryNamesTheWaterThatIsWanting)
{
    StackReckoning stack = calm();
    since(stack, 0, [](StackEstimate& day) { day.slots[1].waterShare = {0.5, 0.62, 0.75}; day.slots[1].moisturePct = {50, 60, 65}; });
    const auto all = adviceFor(stack);
    const Advice* dry = find(all, Code::tooDry);
    ASSERT_NE(dry, nullptr);
    EXPECT_EQ(dry->slot, 2);
    // 4.8 kg of contents hold 2.88 L of water, 0.62 of what they can; 0.33 of 4.645 L is wanting.
    EXPECT_DOUBLE_EQ(dry->litres, 1.5); // to a quarter of a litre
    EXPECT_THAT(dry->because, HasSubstr("62"));
    since(stack, 0, [](StackEstimate& day) { day.slots[1].waterShare = {0.8, 0.9, 1.0}; }); // watered
    EXPECT_THAT(codes(stack), Not(Contains("too-dry")));
}

TEST(AdviceOfWater, MoreThanGoesInAtOnceIsPouredBitByBit)
{
    StackReckoning stack = calm();
    since(stack, 0, [](StackEstimate& day) { day.slots[1].waterShare = {0.3, 0.4, 0.5}; day.slots[1].moisturePct = {55, 70, 75}; day.slots[1].weightKg = {9, 10, 11}; });
    const auto all = adviceFor(stack);
    const Advice* dry = find(all, Code::tooDry);
    ASSERT_NE(dry, nullptr);
    EXPECT_DOUBLE_EQ(dry->litres, 2.0);
    EXPECT_THAT(dry->because, HasSubstr("are wanting: more at once runs through"));
}

TEST(AdviceOfWater, WhatWasClearlyDryIsNotAskedForAgainWhereItsRangeWidens)
{
    const Band wide{0.3, 0.55, 0.75}, narrow{0.45, 0.55, 0.65};
    const auto asks = [](const StackReckoning& stack) {
        const auto all = adviceFor(stack);
        const Advice* dry = find(all, Code::tooDry);
        EXPECT_NE(dry, nullptr);
        return dry != nullptr && dry->look.has_value();
    };
    StackReckoning stack = calm();
    since(stack, -5, [&](StackEstimate& day) { day.slots[1].waterShare = wide; });
    EXPECT_TRUE(asks(stack)) << "a squeeze first";
    since(stack, -5, [&](StackEstimate& day) { day.slots[1].waterShare = narrow; });
    since(stack, -2, [&](StackEstimate& day) { day.slots[1].waterShare = wide; });
    EXPECT_FALSE(asks(stack));
    stack.record.lastMoistureLook = in(-20); // of long before: nothing was felt since
    EXPECT_FALSE(asks(stack));
}

TEST(AdviceOfWater, TooDryStaysUntilItIsSettledAndDoesNotFlicker)
{
    StackReckoning stack = calm();
    stack.record.lastMoistureLook = in(0); // no look is wanted
    const Band doubtful{0.55, 0.68, 0.80}; // below 0.65 with 0.40: neither raised nor withdrawn
    since(stack, -5, [&](StackEstimate& day) { day.slots[1].waterShare = doubtful; });
    EXPECT_THAT(codes(stack), Not(Contains("too-dry")));
    since(stack, -9, [](StackEstimate& day) { day.slots[1].waterShare = {0.5, 0.6, 0.7}; });
    since(stack, -5, [&](StackEstimate& day) { day.slots[1].waterShare = doubtful; });
    EXPECT_THAT(codes(stack), Contains("too-dry"));
}

TEST(AdviceOfWater, TooDryIsToldWithinTheWeekBeforeAndBySqueezing)
{
    StackReckoning stack = calm();
    stack.forecast.days.push_back(stack.now);
    stack.forecast.days.front().day = in(7);
    stack.forecast.days.front().slots[1].waterShare = {0.5, 0.6, 0.7};
    ASSERT_THAT(codes(stack), Contains("too-dry"));
    EXPECT_EQ(adviceFor(stack).front().severity, Severity::due);
    stack = calm();
    stack.record.lastSqueeze = in(-2);
    stack.record.squeeze = 1;
    EXPECT_THAT(codes(stack), Contains("too-dry"));
    stack.record.lastWater = in(-1);
    EXPECT_THAT(codes(stack), Not(Contains("too-dry")));
}

/// A meter that says the contrary of the hand: neither water nor paper before another handful.
TEST(AdviceOfWater, TwoReadingsThatDenyEachOtherAskForAnother)
{
    for (const int felt : {1, 5}) {
        StackReckoning stack = calm(); // 76 % at 0.97 of what it holds
        stack.record.lastSqueeze = stack.record.lastMoistureLook = in(-1);
        stack.record.squeeze = felt;
        const Code code = felt == 1 ? Code::tooDry : Code::tooWet;
        ASSERT_NE(find(adviceFor(stack), code), nullptr);
        EXPECT_FALSE(find(adviceFor(stack), code)->look) << "by the hand alone it is so";
        stack.record.lastMoistureRead = in(-1);
        stack.record.moistureReadPct = 76.0;
        const auto all = adviceFor(stack);
        const Advice* told = find(all, code);
        ASSERT_NE(told, nullptr);
        EXPECT_EQ(told->look, LookKind::squeeze);
        EXPECT_EQ(told->severity, Severity::due);
        EXPECT_EQ(told->litres, 0.0);
        EXPECT_THAT(told->because, HasSubstr("moisture was read as 76 %"));
        EXPECT_EQ(find(all, felt == 1 ? Code::tooWet : Code::tooDry), nullptr);
        stack.record.lastMoistureRead = in(-2); // before the squeeze: it has changed since
        EXPECT_FALSE(find(adviceFor(stack), code)->look);
        stack.record.lastMoistureRead = in(0);
        stack.record.moistureReadPct = felt == 1 ? 30.0 : 90.0; // both say the same
        EXPECT_FALSE(find(adviceFor(stack), code)->look);
    }
}

TEST(AdviceOfWater, LitresAreThoseOfWhatWasReadWhereTheEstimateDoubtsIt)
{
    StackReckoning stack = calm(); // holds 0.97 of some 4 to 5 L by the estimate
    stack.record.areaM2 = 0.3; // and takes 3.75 L at once
    stack.record.lastSqueeze = in(-1);
    stack.record.squeeze = 1;
    const auto litres = [&] {
        const auto all = adviceFor(stack);
        const Advice* dry = find(all, Code::tooDry);
        return dry != nullptr ? dry->litres : 0.0;
    };
    const double holds = waterKg(stack.now.slots[1]) / 0.97;
    EXPECT_NEAR(litres(), holds * (0.95 - 0.45), 0.13) << "what crumbles holds less than half";
    stack.record.lastSqueeze.reset();
    EXPECT_EQ(litres(), 0.0);
    const double read = 40.0, share = 0.97 * (40.0 / 60.0) / (76.0 / 24.0);
    stack.disagreements = {{7, in(-4), LookKind::moisture, 2, read, {72, 76, 80}, {}, 2}};
    EXPECT_NEAR(litres(), holds * (0.95 - share), 0.13);
    EXPECT_THAT(find(adviceFor(stack), Code::tooDry)->because, HasSubstr("moisture was read as 40 %"));
    EXPECT_EQ(find(adviceFor(stack), Code::tooDry)->severity, Severity::concern);
    stack.record.lastWater = in(-4);
    EXPECT_EQ(litres(), 0.0) << "watered since";
    stack.record.lastWater.reset();
    stack.disagreements.front().day = in(-6);
    EXPECT_EQ(litres(), 0.0) << "long ago";
    stack.disagreements = {{7, in(-4), LookKind::moisture, 1, read, {72, 76, 80}, {}, 1}};
    EXPECT_EQ(litres(), 0.0) << "of another tray";
    stack.disagreements = {{7, in(-4), LookKind::moisture, 2, 70.0, {72, 76, 80}, {}, 2}};
    EXPECT_EQ(litres(), 0.0) << "drier than thought, and not dry";
    stack.disagreements = {{7, in(-4), LookKind::moisture, 2, 80.0, {72, 76, 78}, {}, 2}};
    ASSERT_NE(find(adviceFor(stack), Code::tooWet), nullptr);
    EXPECT_THAT(find(adviceFor(stack), Code::tooWet)->because, HasSubstr("moisture was read as 80 %"));
}

TEST(AdviceOfWater, AHandfulIsSqueezedBeforeADoubtfulBedIsWatered)
{
    StackReckoning stack = calm();
    stack.now.slots[1].waterShare = {0.45, 0.75, 0.95}; // below 0.65 with 0.2 or more
    auto all = adviceFor(stack);
    ASSERT_NE(find(all, Code::tooDry), nullptr);
    EXPECT_EQ(find(all, Code::tooDry)->look, reckoning::LookKind::squeeze);
    EXPECT_EQ(find(all, Code::tooDry)->severity, Severity::hint);
    EXPECT_EQ(find(all, Code::tooDry)->slot, 2);
    EXPECT_THAT(find(all, Code::tooDry)->text, HasSubstr("Squeeze a handful"));
    // It gives way to what is known of another tray.
    since(stack, -2, [](StackEstimate& day) { day.slots[0].waterShare = {1.12, 1.2, 1.3}; });
    EXPECT_THAT(codes(stack), AllOf(Contains("too-wet"), Not(Contains("too-dry"))));
    since(stack, -2, [](StackEstimate& day) { day.slots[0].waterShare = {0.9, 1.0, 1.05}; });
    EXPECT_THAT(codes(stack), Contains("too-dry"));
    stack.record.lastMoistureLook = in(-13);
    EXPECT_THAT(codes(stack), Not(Contains("too-dry")));
    stack.record.lastMoistureLook = in(-14);
    EXPECT_THAT(codes(stack), Contains("too-dry"));
    stack.record.lastWater = in(-2);
    EXPECT_THAT(codes(stack), Not(Contains("too-dry")));
    stack.record.lastWater.reset();
    stack.now.slots[1].waterShare = {0.62, 0.8, 0.95};
    EXPECT_THAT(codes(stack), Not(Contains("too-dry")));
}

TEST(AdviceOfWater, ABedThatIsProbablyDryButHardlyKnownIsSqueezedBeforeLitresAreNamed)
{
    StackReckoning stack = calm();
    const auto vague = [](StackEstimate& day) { day.slots[1].waterShare = {0.30, 0.55, 0.95}; };
    since(stack, -9, vague);
    const auto dry = [&stack] { return *find(adviceFor(stack), Code::tooDry); };
    ASSERT_THAT(codes(stack), Contains("too-dry"));
    EXPECT_EQ(dry().look, reckoning::LookKind::squeeze);
    EXPECT_EQ(dry().severity, Severity::due);
    EXPECT_FALSE(dry().litres > 0.0);
    // Felt or watered within the fortnight, it is watered.
    for (std::optional<Day>* each : {&stack.record.lastMoistureLook, &stack.record.lastWater}) {
        *each = in(-9);
        EXPECT_FALSE(dry().look);
        EXPECT_GT(dry().litres, 0.0);
        each->reset();
    }
    // Known well enough, it is watered at once.
    since(stack, -9, [](StackEstimate& day) { day.slots[1].waterShare = {0.45, 0.55, 0.70}; });
    EXPECT_FALSE(dry().look);
}

/// What is to be poured stays the same from day to day, while the bed dries by a few per cent.
TEST(AdviceOfWater, LitresComeInStepsOfAKitchenJug)
{
    StackReckoning stack = calm();
    std::set<double> named;
    for (double share : {0.56, 0.555, 0.55, 0.545, 0.54}) {
        since(stack, -9, [share](StackEstimate& day) { day.slots[1].waterShare = {share - 0.1, share, share + 0.1}; });
        named.insert(find(adviceFor(stack), Code::tooDry)->litres);
    }
    EXPECT_LE(named.size(), 2u);
    for (const double litres : named) EXPECT_NEAR(std::remainder(litres, litres > 1.0 ? 0.25 : 0.1), 0.0, 1e-9);
}

TEST(AdviceOfWater, TooWetNeedsThreeDays)
{
    StackReckoning stack = calm();
    const auto wet = [](StackEstimate& day) { day.slots[0].waterShare = {1.12, 1.2, 1.3}; };
    since(stack, -1, wet);
    EXPECT_THAT(codes(stack), Not(Contains("too-wet")));
    since(stack, -2, wet);
    const auto all = adviceFor(stack);
    ASSERT_NE(find(all, Code::tooWet), nullptr);
    EXPECT_EQ(find(all, Code::tooWet)->slot, 1);
    since(stack, 0, [](StackEstimate& day) { day.slots[0].waterShare = {0.9, 1.0, 1.05}; });
    EXPECT_THAT(codes(stack), Not(Contains("too-wet")));
    stack.record.lastSqueeze = in(-5);
    stack.record.squeeze = 5;
    EXPECT_THAT(codes(stack), Contains("too-wet"));
    stack.record.lastSqueeze = in(-6);
    EXPECT_THAT(codes(stack), Not(Contains("too-wet")));
}

TEST(AdviceOfWater, AReadingOutlivesNeitherItsCorrectionNorALift)
{
    StackReckoning stack = calm();
    stack.disagreements = {{7, in(-2), LookKind::moisture, 2, 30.0, {72, 76, 80}, {}, 2}};
    stack.record.lastMoistureLook = in(-2);
    EXPECT_THAT(codes(stack), Contains("too-dry"));
    stack.record.lastMoistureLook = in(-1); // felt since
    EXPECT_THAT(codes(stack), Not(Contains("too-dry")));
    stack.record.lastMoistureLook = in(-2);
    stack.disagreements.front().slot = 3; // where it stood before the lowest was lifted
    EXPECT_THAT(codes(stack), Contains("too-dry")) << "of the batch, wherever it stands";
    stack.disagreements.front().batch = 9;
    stack.disagreements.front().slot = 2;
    EXPECT_THAT(codes(stack), Not(Contains("too-dry"))) << "of a tray that is gone";
}

TEST(AdviceOfWater, AReadingOfTheWholeStackIsToldOnce)
{
    StackReckoning stack = calm();
    stack.disagreements = {{7, in(-2), LookKind::moisture, 0, 82.0, {72, 76, 80}, {}, 0}};
    const auto all = adviceFor(stack);
    EXPECT_EQ(std::count_if(all.begin(), all.end(), [](const Advice& each) { return each.code == Code::tooWet; }), 1);
    ASSERT_NE(find(all, Code::tooWet), nullptr);
    EXPECT_EQ(find(all, Code::tooWet)->slot, 2) << "the one on top";
}

/// Told and recorded alike, a step of the jug at hand.
TEST(AdviceOfWater, WhatIsToldIsWhatIsRecorded)
{
    StackReckoning stack = calm();
    stack.record.lastSqueeze = in(-1);
    stack.record.squeeze = 1;
    for (const bool us : {false, true}) {
        wording::setMeasures(us ? wording::Measures::us : wording::Measures::metric);
        const auto all = adviceFor(stack);
        const Advice* dry = find(all, Code::tooDry);
        ASSERT_NE(dry, nullptr);
        const Amount poured = wording::volumeAmount(dry->litres);
        EXPECT_NEAR(poured.value * inBaseUnit(poured.unit), dry->litres, 1e-9);
        EXPECT_THAT(dry->text, HasSubstr("Pour " + wording::amountText(poured).replace(QChar::Nbsp, u' ').toStdString() + " of water"));
    }
    wording::setMeasures(wording::Measures::metric);
}

TEST(AdviceOfWater, ASqueezeSaysWhatFollowsFromIt)
{
    StackReckoning stack = calm();
    stack.now.slots[1].waterShare = {0.45, 0.75, 0.95};
    EXPECT_THAT(reasonOf(stack, Code::tooDry), HasSubstr("if it crumbles, pour"));
    EXPECT_THAT(reasonOf(stack, Code::tooDry), HasSubstr("else nothing for two weeks"));
}

/// Probably dry, and hardly known: who eats a third of what they could, or is fewer by half, cannot wait as others can.
TEST(AdviceOfWater, ABedThatKillsIsSqueezedBeforeAllElse)
{
    StackReckoning stack = calm();
    stack.forecast.roomTopTrayFreshKg = 0.1;
    stack.forecast.topTrayFullOn.p50 = in(3);
    const auto water = [&](double share) { since(stack, -40, [share](StackEstimate& day) { for (TrayEstimate& tray : day.slots) tray.waterShare = {0.1, share, 0.9}; }); };
    water(0.5);
    ASSERT_NE(find(adviceFor(stack), Code::tooDry), nullptr);
    EXPECT_EQ(find(adviceFor(stack), Code::tooDry)->severity, Severity::due);
    EXPECT_EQ(adviceFor(stack).front().code, Code::trayFull);
    water(0.44);
    EXPECT_EQ(find(adviceFor(stack), Code::tooDry)->severity, Severity::concern);
    EXPECT_EQ(adviceFor(stack).front().code, Code::tooDry) << "worms die of it, a full tray waits";
    water(0.5);
    since(stack, -40, [&](StackEstimate& day) { const double kg = 0.4 + 0.02 * daysBetween(day.day, stack.asOf); day.colonyKg = {kg * 0.7, kg, kg * 1.5}; });
    EXPECT_EQ(adviceFor(stack).front().code, Code::tooDry);
    EXPECT_EQ(adviceFor(stack).front().severity, Severity::concern);
    EXPECT_THAT(reasonOf(stack, Code::tooDry), HasSubstr("on 23 March the colony was 1.2 kg, now 400 g"));
}

}
}
