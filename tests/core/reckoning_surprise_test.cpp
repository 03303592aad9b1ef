// What nobody expected: a bed far from what is usual, worms where none were left, a share taken by eye, and turns that come undone.
#include "tests/core/reckoning_notes.h"

#include "core/model/measures.h"
#include "core/reckoning/foresight.h"
#include "core/reckoning/looks.h"
#include "core/reckoning/outlook.h"
#include "core/reckoning/overfeeding.h"

#include <gtest/gtest.h>

#include <cmath>

namespace tierloam::reckoning {
namespace {

StackReckoning at(const Notes& notes, int day) { return reckon(notes.entries(), until(day))->stacks.front(); }

Reading bedAt(double degrees)
{
    Reading reading;
    reading.bin = celsius(degrees);
    return reading;
}

Notes indoors(int days)
{
    Notes notes;
    journal::Setup setup;
    setup.temp = celsius(24);
    notes.begun("Mill", setup).fedWeekly("Mill", 2, days, 400);
    return notes;
}

TEST(Surprise, ABedFarFromTheUsualIsAsItWasReadAndNothingElseChanges)
{
    const Notes usual = indoors(70);
    const StackReckoning before = at(usual, 71);
    for (const double degrees : {34.0, 15.0}) {
        Notes read = usual;
        read.add(71, "Mill", bedAt(degrees));
        const StackReckoning after = at(read, 71);
        EXPECT_NEAR(after.now.binTempC.p50, degrees, 2.0);
        EXPECT_NEAR(after.now.colonyKg.p50 / before.now.colonyKg.p50, 1.0, 0.15) << degrees; // some die of heat on that day
        EXPECT_NEAR(after.now.slots.front().castingsDryKg.p50 / before.now.slots.front().castingsDryKg.p50, 1.0, 0.06) << degrees;
        EXPECT_NEAR(after.now.slots.front().waterShare.p50, before.now.slots.front().waterShare.p50, 0.06) << degrees;
        EXPECT_FALSE(after.disagreements.empty()) << "it is told as odd all the same";
    }
}

/// 35 °C in a cold garage may be 3.5: half of what is possible takes it for true, and the next reading tells.
TEST(Surprise, ADeadlyBedFarFromAllThatWasExpectedMayBeASlipOfThePen)
{
    const auto with512 = [](const Notes& notes, int day) {
        Options options = until(day);
        options.members = 512; // of which half are asked
        return reckon(notes.entries(), options)->stacks.front();
    };
    Notes garage;
    journal::Setup cold;
    cold.temp = celsius(6);
    garage.begun("Mill", cold).fedWeekly("Mill", 2, 70, 200);
    garage.add(60, "Mill", bedAt(6));
    const double before = with512(garage, 76).now.colonyKg.p50; // as it would be
    ASSERT_GT(before, 0.1);
    Notes slip = garage;
    slip.add(71, "Mill", bedAt(35));
    const StackReckoning doubted = with512(slip, 72);
    EXPECT_FALSE(doubted.disagreements.empty()) << "it is told";
    EXPECT_LT(doubted.now.binTempC.p05, 8.0);
    EXPECT_GT(doubted.now.binTempC.p95, 33.0);
    for (const double then : {6.0, 35.0}) {
        Notes again = slip;
        again.add(73, "Mill", bedAt(then));
        const StackReckoning settled = with512(again, 76);
        if (then < 10.0) {
            EXPECT_NEAR(settled.now.colonyKg.p50 / before, 1.0, 0.08) << "it was one";
            EXPECT_LT(settled.now.binTempC.p95, 12.0);
        } else {
            EXPECT_LT(settled.now.colonyKg.p50, 0.85 * before) << "it was none";
            EXPECT_GT(settled.now.binTempC.p05, 25.0);
        }
    }
}

TEST(Surprise, AHotBedStaysHotUntilItIsReadAgainOrMoved)
{
    Notes hot = indoors(70);
    hot.add(71, "Mill", bedAt(34));
    EXPECT_GT(at(hot, 75).now.binTempC.p50, 31.5);
    Notes cooled = hot;
    cooled.add(73, "Mill", bedAt(24));
    EXPECT_LT(at(cooled, 75).now.binTempC.p50, 26.0);
    Notes moved = hot;
    journal::Setup cellar;
    cellar.place = Place::indoors;
    cellar.temp = celsius(18);
    moved.add(73, "Mill", cellar);
    EXPECT_LT(at(moved, 76).now.binTempC.p50, 21.0);
}

TEST(Surprise, MoreWormsThanTheTraysCarryAreTakenInAndSaidToBeMany)
{
    Notes notes;
    notes.begun("Mill").begun("Loft");
    notes.add(5, "Mill", journal::Stock{{40000, Unit::g}, {}, {}});
    const auto both = reckon(notes.entries(), until(6))->stacks;
    for (const StackReckoning& stack : both) {
        if (stack.name != "Mill") { EXPECT_TRUE(stack.oversized.empty()); continue; }
        ASSERT_EQ(stack.oversized.size(), 1u);
        EXPECT_EQ(stack.oversized[0].what, Oversized::What::worms);
        EXPECT_DOUBLE_EQ(stack.oversized[0].comesTo, 40.0);
        EXPECT_DOUBLE_EQ(stack.oversized[0].most, 5.0 * 0.16) << "the upper end of crowding, one tray";
        EXPECT_EQ(stack.record.lastStocked, onDay(5));
    }
    Notes moved;
    moved.begun("Mill").begun("Loft").add(20, "Mill", journal::Move{{5, Unit::kg}, "Loft"});
    const auto after = reckon(moved.entries(), until(21));
    for (const StackReckoning& stack : after->stacks) {
        EXPECT_EQ(stack.oversized.size(), stack.name == "Loft" ? 1u : 0u) << "it is told where they came to …";
        EXPECT_EQ(stack.disagreements.empty(), stack.name == "Loft") << "… and where they cannot have been";
    }
}

TEST(Surprise, WormsThatAreFoundWhereNoneWereLeftAreThere)
{
    Notes notes;
    journal::Setup frost;
    frost.place = Place::outdoors;
    frost.temp = celsius(4);
    notes.begun("Mill", frost).fedWeekly("Mill", 2, 8, 100);
    ASSERT_LT(at(notes, 60).now.colonyKg.p50, 1e-3) << "they froze";
    journal::Setup warm;
    warm.place = Place::indoors;
    warm.temp = celsius(20);
    notes.add(61, "Mill", warm);
    Notes weighed = notes, counted = notes, seen = notes;
    Weigh all;
    all.worms = {200, Unit::g};
    weighed.add(62, "Mill", all);
    const Count some{{40, Unit::count}, litres(0.5)};
    counted.add(62, "Mill", some, 1);
    Check look;
    look.worms = WormsSeen::some;
    seen.add(62, "Mill", look, 1);
    for (const Notes& each : {weighed, counted, seen}) {
        const StackReckoning found = at(each, 63);
        EXPECT_GT(found.now.colonyKg.p50, 0.03);
        EXPECT_LT(found.now.colonyKg.p50, 1.5);
        EXPECT_GT(found.forecast.feedHighKg, 0.0) << "and they may be fed again";
    }
    EXPECT_NEAR(at(weighed, 63).now.colonyKg.p50, 0.22, 0.12);
    EXPECT_LT(at(notes, 63).now.colonyKg.p50, 1e-2);
}

TEST(Surprise, AShareTakenByEyeIsAGuess)
{
    const Notes notes = indoors(100);
    const StackReckoning stack = at(notes, 100);
    const model::MemberOf one{stack.present->members.stack, 0};
    Look look;
    look.kind = LookKind::harvestMass;
    look.slot = 0;
    look.share = 1.0;
    EXPECT_DOUBLE_EQ(expectation(look, one, 0.0).sd, 0.10);
    look.share = 0.5;
    EXPECT_NEAR(expectation(look, one, 0.0).sd, std::hypot(0.10, 0.30), 1e-12);
    look.kind = LookKind::harvestVolume;
    EXPECT_NEAR(expectation(look, one, 0.0).sd, std::hypot(0.25, 0.30), 1e-12);
}

/// Half of a tray lies half as deep, and is as ready as it was.
TEST(Surprise, ATrayOfWhichHalfWasTakenIsStillReady)
{
    Notes notes = indoors(70);
    notes.add(75, "Mill", Bed{{480, Unit::g}, "corrugated cardboard shredded", {}});
    notes.fedWeekly("Mill", 77, 330, 400);
    ASSERT_GT(at(notes, 330).now.slots.front().readyProbability, 0.8);
    const double deep = at(notes, 330).now.slots.front().castingsDepthCm.p50;
    Harvest half;
    half.taken = {1.5, Unit::kg};
    half.share = Share::fromPercent(50);
    notes.add(331, "Mill", half, 1).add(333, "Mill", half, 1);
    const StackReckoning after = at(notes, 334);
    ASSERT_LT(after.now.slots.front().castingsDepthCm.p50, 0.4 * deep);
    EXPECT_GT(after.now.slots.front().readyProbability, 0.8);
}

/// A tray that had been filled and is so no longer waits for the day on which it will be so again.
TEST(Surprise, ATurnThatCameUndoneLongAgoIsNotInThePast)
{
    Notes notes = indoors(150);
    int filled = 0;
    for (int day = 60; day <= 150 && filled == 0; day += 5)
        if (at(notes, day).forecast.turnOn.p50.value_or(onDay(999)) <= onDay(day)) filled = day;
    ASSERT_GT(filled, 0);
    Notes heaped = indoors(filled);
    for (int day = filled + 1; day < filled + 22; day += 3) heaped.add(day, "Mill", Feed{{2500, Unit::g}, "corrugated cardboard shredded", {}});
    const StackReckoning after = at(heaped, filled + 24);
    ASSERT_LT(after.now.slots.front().readyProbability, 0.2);
    EXPECT_TRUE(!after.forecast.turnOn.p50 || *after.forecast.turnOn.p50 > after.asOf);
}

TEST(Surprise, AmountsByTheCupAreKnownNoBetterThanByTheScale)
{
    const auto inputOf = [](Amount each) {
        Notes notes;
        notes.begun("Mill");
        for (int day = 2; day <= 150; day += 5) notes.add(day, "Mill", Feed{each, {}, {}});
        const Band band = at(notes, 150).now.slots.front().inputDryKg;
        return (band.p95 - band.p05) / band.p50;
    };
    EXPECT_GE(inputOf({1.0, Unit::L}), 0.95 * inputOf({450, Unit::g}));
}

TEST(Surprise, DaysAwayAreNoHabit)
{
    Notes notes = indoors(120);
    Event away;
    away.what = "away";
    away.until = onDay(170);
    const double usual = at(notes, 121).forecast.feedUsualKg;
    notes.add(122, "Mill", away);
    EXPECT_NEAR(at(notes, 171).record.usualFeedKgPerWeek, at(notes, 121).record.usualFeedKgPerWeek, 0.05 * usual);
    EXPECT_NEAR(at(notes, 171).present->course.care.feedKg, at(notes, 121).present->course.care.feedKg, 0.06);
}

/// Days to come say nothing of the stack, but who will be there.
TEST(Surprise, DaysAwayThatAreToComeAreKnown)
{
    Notes notes = indoors(60);
    Event away;
    away.what = "away";
    away.until = onDay(80);
    notes.add(70, "Mill", away);
    away.until = onDay(95);
    notes.add(90, "Mill", away);
    const StackReckoning before = at(notes, 62), during = at(notes, 72);
    EXPECT_EQ(before.record.laterAway, (std::vector{std::pair{onDay(90), onDay(95)}}));
    EXPECT_TRUE(during.record.laterAway.empty());
    EXPECT_EQ(before.record.nextAwayFrom, onDay(70));
    EXPECT_EQ(before.record.nextAwayUntil, onDay(80));
    EXPECT_FALSE(before.record.awayFrom);
    EXPECT_EQ(during.record.nextAwayFrom, onDay(90));
    EXPECT_EQ(during.record.awayFrom, onDay(70));
}

/// 300 g every four days from the first on: the year is not planned anew on the eve of each feeding.
TEST(Surprise, TheFirstWeeksFeedAtTheirOwnRate)
{
    Notes notes;
    notes.begun("Mill");
    for (int day = 0; day <= 40; day += 4) notes.add(day, "Mill", Feed{{300, Unit::g}, {}, {}});
    for (int day = 5; day <= 40; ++day) {
        Notes until_;
        until_.begun("Mill");
        for (int fed = 0; fed <= day; fed += 4) until_.add(fed, "Mill", Feed{{300, Unit::g}, {}, {}});
        EXPECT_NEAR(at(until_, day).present->course.care.feedKg, 0.525, 0.06) << day;
    }
}

TEST(Surprise, TheHotterTheBedTheLessFoodIsBorne)
{
    double before = 1e9;
    for (const double degrees : {24.0, 28.0, 29.5, 30.5, 31.5, 32.5, 34.0}) {
        Notes notes;
        journal::Setup setup;
        setup.temp = celsius(degrees);
        notes.begun("Mill", setup).fedWeekly("Mill", 2, 30, 200);
        const double limit = at(notes, 36).forecast.feedHighKg;
        EXPECT_LE(limit, before * 1.02 + 1e-9) << degrees;
        before = limit;
    }
    EXPECT_LT(before, leastWorthGiving) << "at 34 °C";
}

/// Dry food weighs less for what it does: a limit is that of the food which is given.
TEST(Surprise, TheLimitIsThatOfTheFoodThatIsGiven)
{
    const auto limitOf = [](const char* food) {
        Notes notes;
        notes.begun("Mill");
        for (int day = 2; day <= 30; day += 7) notes.add(day, "Mill", Feed{{200, Unit::g}, food, {}});
        return at(notes, 36).forecast;
    };
    const Forecast mix = limitOf(""), bread = limitOf("bread, white");
    EXPECT_LT(bread.feedLowKg, 0.5 * mix.feedLowKg);
    EXPECT_LT(bread.feedHighKg, mix.feedHighKg);
}

TEST(Surprise, WhatRanOutOfAFlushIsNoWatering)
{
    Notes notes = indoors(100);
    for (int day = 10; day <= 100; day += 21) notes.add(day, "Mill", Flush{{3, Unit::L}, litres(3.3), {}, {}});
    const UsualCare care = at(notes, 100).present->course.care;
    EXPECT_EQ(care.waterLitres, 0.0);
    EXPECT_EQ(care.drainLitres, 0.0);
}

TEST(Surprise, ATrayHasRoomThoughNothingWasFedOfLate)
{
    Notes notes = indoors(120);
    notes.add(121, "Mill", Event{"smell", {}});
    const StackReckoning fed = at(notes, 121), unfed = at(notes, 200);
    ASSERT_TRUE(unfed.forecast.roomTopTrayFreshKg);
    EXPECT_LE(unfed.forecast.feedHighKg, *unfed.forecast.roomTopTrayFreshKg + 1e-9);
    EXPECT_LT(std::abs(*unfed.forecast.roomTopTrayFreshKg - *fed.forecast.roomTopTrayFreshKg), 3.0);
}

/// The paper over the food lies under the rim too: without it the week's food would reach the rim, and the cover stand above it.
TEST(Surprise, TheUsualCoverTakesItsRoomOfTheWeeksFood)
{
    Notes low;
    journal::Setup setup;
    setup.height = centimetres(7);
    low.begun("Mill", setup).fedWeekly("Mill", 2, 58, 500);
    const Forecast with = at(low, 62).forecast;
    Notes bare;
    bare.begun("Mill", setup);
    for (int day = 2; day <= 58; day += 7) bare.add(day, "Mill", Feed{{500, Unit::g}, {}, {}});
    EXPECT_EQ(at(bare, 62).forecast.coverAsFoodKg, 0.0);
    EXPECT_NEAR(with.coverAsFoodKg, 0.030 / 30.0 * with.foodBulkKgPerM3, 0.05 * with.coverAsFoodKg) << "30 g a week at 30 kg/m³";
    ASSERT_TRUE(with.roomTopTrayFreshKg);
    EXPECT_LE(with.feedHighKg, std::max(*with.roomTopTrayFreshKg - with.coverAsFoodKg, 0.0) + 1e-9);
}

TEST(Surprise, WaterOfAWeekIsThatOfTheWeeksLivedAndOfRoutines)
{
    Notes young;
    young.begun("Mill");
    for (int day = 1; day <= 13; day += 4) young.add(day, "Mill", Water{{2, Unit::L}});
    EXPECT_NEAR(at(young, 13).record.waterLPerWeek, 4.0, 1e-9);
    Notes routine;
    routine.begun("Mill");
    Routine daily;
    daily.of = RoutineOf::water;
    daily.each = {0.1, Unit::L};
    daily.everyDays = 2;
    routine.add(3, "Mill", daily);
    EXPECT_NEAR(at(routine, 90).record.waterLPerWeek, 0.35, 1e-9);
}

/// Two meals on neighbouring days are no rate of seven times one of them.
TEST(Surprise, AHabitOfFeedingTakesThreeMealsAndAWeek)
{
    const auto careAt = [](const Notes& notes, int day) { return at(notes, day).present->course.care; };
    const auto fed = [](Notes& notes, std::initializer_list<int> days, double grams) {
        for (const int day : days) notes.add(day, "Mill", Feed{{grams, Unit::g}, {}, {}});
    };
    Notes young;
    young.begun("Mill");
    fed(young, {1, 2}, 500);
    EXPECT_NEAR(careAt(young, 2).feedKg, 1.0, 1e-9) << "a week is the least";
    EXPECT_EQ(at(young, 2).record.medianFeedGapDays, 7.0) << "nor is one gap a habit";
    EXPECT_NEAR(careAt(young, 13).feedKg, 0.5, 1e-9) << "over the two weeks lived";
    Notes famine;
    famine.begun("Mill");
    fed(famine, {80, 81}, 400);
    const StackReckoning after = at(famine, 81);
    EXPECT_NEAR(after.present->course.care.feedKg, 0.1, 1e-9) << "over eight weeks";
    Notes third = young;
    fed(third, {3}, 500);
    EXPECT_NEAR(careAt(third, 3).feedKg, 1.5, 1e-9);
    EXPECT_EQ(at(third, 3).record.medianFeedGapDays, 1.0);
    Notes rare;
    rare.begun("Mill");
    fed(rare, {50, 78}, 400);
    EXPECT_EQ(at(rare, 90).record.medianFeedGapDays, 28.0) << "of two meals a long gap is believed";
    EXPECT_NEAR(careAt(rare, 90).feedKg, 0.1, 1e-9);
}

/// Water and food are judged by the same weeks: those on which somebody was there, and parts of weeks too.
TEST(Surprise, WaterAndFoodAreOfTheSameWeeks)
{
    Notes notes;
    notes.begun("Mill").fedWeekly("Mill", 2, 60, 400);
    for (int day = 3; day <= 60; day += 7) notes.add(day, "Mill", Water{{1, Unit::L}});
    Event away;
    away.what = "away";
    away.until = onDay(102);
    notes.add(61, "Mill", away);
    for (const int day : {10, 13, 14, 20, 60, 103}) {
        const StackReckoning stack = at(notes, day);
        EXPECT_NEAR(stack.record.waterLPerWeek, stack.present->course.care.waterLitres, 1e-9) << day;
    }
    EXPECT_NEAR(at(notes, 103).record.waterLPerWeek, 1.0, 0.13) << "six weeks away are no weeks without water";
}

/// Whoever writes that they are away from the 70th to the 75th and from the 76th to the 80th day is away for eleven days, of that stack alone.
TEST(Surprise, AbsencesThatFollowEachOtherAreOne)
{
    Notes notes = indoors(60);
    notes.begun("Loft");
    const auto away = [&](const char* stack, int from, int to) {
        Event event;
        event.what = "away";
        event.until = onDay(to);
        notes.add(from, stack, event);
    };
    away("Mill", 76, 80);
    away("Mill", 70, 75);
    away("Mill", 90, 91);
    const StackReckoning before = at(notes, 62), during = at(notes, 72);
    EXPECT_EQ(before.record.nextAwayFrom, onDay(70));
    EXPECT_EQ(before.record.nextAwayUntil, onDay(80));
    EXPECT_EQ(during.record.awayFrom, onDay(70));
    EXPECT_EQ(during.record.awayUntil, onDay(80));
    EXPECT_EQ(during.record.nextAwayFrom, onDay(90));
    const auto both = reckon(notes.entries(), until(62));
    EXPECT_FALSE(both->stack("Loft")->record.nextAwayFrom);
}

}
}
