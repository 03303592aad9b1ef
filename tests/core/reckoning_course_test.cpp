// How a stack goes on: what acts on it from outside, what an added tray is bedded with, and that the turn is done while a tray dries.
#include "tests/core/reckoning_notes.h"

#include "core/reckoning/outlook.h"

#include <gtest/gtest.h>

namespace tierloam::reckoning {
namespace {

Surroundings yard(double airC)
{
    Surroundings around;
    around.firstBedding = onDay(0);
    around.settings.place = Place::outdoors;
    around.settings.temp = celsius(16);
    around.air = {100, airC};
    return around;
}

double airOn(const Surroundings& around, int day) { return around.on(day).airTemperature.value(); }

TEST(Course, AReadingOfTheAirGoesOnWithTheSeasonAndFades)
{
    const Surroundings around = yard(yard(0).usualOn(100) + 7.0); // in April, 7 K above what is usual
    EXPECT_DOUBLE_EQ(airOn(around, 100), around.air->second);
    EXPECT_NEAR(airOn(around, 107), around.usualOn(107) + 7.0, 1e-9) << "it gets warmer towards summer";
    EXPECT_GT(airOn(around, 107), airOn(around, 100) + 0.7);
    for (int day = 107; day < 114; ++day) {
        const double now = airOn(around, day) - around.usualOn(day), next = airOn(around, day + 1) - around.usualOn(day + 1);
        EXPECT_NEAR(now - next, 7.0 / 8.0, 1e-9) << day;
    }
    EXPECT_FALSE(around.on(115).airTemperature.has_value());
    EXPECT_LT(airOn(around, 114) - around.usualOn(114), 1.0) << "no fall overnight";
}

/// The cellar is not as hot as the yard was.
TEST(Course, WhatWasReadElsewhereDoesNotMoveWithTheStack)
{
    Notes notes;
    journal::Setup setup;
    setup.place = Place::outdoors;
    setup.temp = celsius(22);
    notes.begun("Mill", setup).fedWeekly("Mill", 2, 200, 400);
    for (int day = 190; day <= 200; ++day) notes.add(day, "Mill", Reading{{}, celsius(34), {}, {}, {}, {}});
    journal::Setup cellar;
    cellar.place = Place::indoors;
    cellar.temp = celsius(19);
    Notes moved = notes;
    moved.add(200, "Mill", cellar);
    const auto bed = [](const Notes& told) { return reckon(told.entries(), until(203))->stacks.front().now.binTempC.p50; };
    EXPECT_GT(bed(notes), 30.0);
    EXPECT_LT(bed(moved), 24.0);
    journal::Setup wider; // another change of the set-up leaves the place as it is
    wider.sump = litres(5);
    notes.add(200, "Mill", wider);
    EXPECT_GT(bed(notes), 30.0);
}

/// A bed that is read beside the air is taken as read: what the two differ by is the bed's own, not the weather's.
TEST(Course, TheBedThatWasReadStandsBesideTheAirOfTheSameDay)
{
    Notes without;
    journal::Setup setup;
    setup.temp = celsius(22);
    without.begun("Mill", setup).fedWeekly("Mill", 2, 100, 400);
    Notes together = without, apart = without, airAlone = without;
    for (int day = 98; day <= 100; ++day) {
        Reading both;
        both.bin = celsius(28.5);
        both.air = celsius(30);
        together.add(day, "Mill", both);
        Reading air, bed;
        air.air = both.air;
        bed.bin = both.bin;
        apart.add(day, "Mill", air).add(day, "Mill", bed);
        airAlone.add(day, "Mill", air);
    }
    const auto now = [](const Notes& told) { return reckon(told.entries(), until(100))->stacks.front().now.binTempC; };
    EXPECT_GT(now(airAlone).p50, 29.8);
    EXPECT_NEAR(now(together).p50, 28.5, 0.8); // a reading errs by 0.7
    EXPECT_LE(now(together).p05, 28.5);
    EXPECT_GE(now(together).p95, 28.5);
    EXPECT_NEAR(now(apart).p50, now(together).p50, 0.3) << "in one entry or in two";
}

TEST(Course, AnAddedTrayIsBeddedAsTheLastTrayWasAndNotAsItWasToppedUp)
{
    Notes notes;
    notes.begun("Mill").fedWeekly("Mill", 2, 120).add(60, "Mill", Bed{{300, Unit::g}, "corrugated cardboard shredded", {}});
    const auto bedded = [](const Notes& told) { return reckon(told.entries(), until(120))->stacks.front().present->course.beddingKg; };
    EXPECT_NEAR(bedded(notes), 0.3, 1e-9);
    notes.add(60, "Mill", Bed{{100, Unit::g}, "coir", {}}, 2).add(90, "Mill", Bed{{50, Unit::g}, "coir", {}}, 1);
    EXPECT_NEAR(bedded(notes), 0.3, 1e-9);
}

/// Both lower trays are ready and the top one is filled: overdue, until one is lifted.
TEST(Course, WhileATrayDriesTheTurnIsDone)
{
    Notes notes;
    notes.begun("Mill").fedWeekly("Mill", 2, 420);
    notes.add(80, "Mill", Bed{{480, Unit::g}, "corrugated cardboard shredded", {}}).add(150, "Mill", Bed{{480, Unit::g}, "corrugated cardboard shredded", {}});
    const auto left = reckon(notes.entries(), until(420));
    const StackReckoning& before = left->stacks.front();
    ASSERT_EQ(before.now.slots.front().state, TrayState::overdue);
    ASSERT_TRUE(before.turnSince.has_value());
    notes.add(419, "Mill", Rotate{});
    const auto lifted = reckon(notes.entries(), until(420));
    const StackReckoning& drying = lifted->stacks.front();
    ASSERT_EQ(drying.now.slots.back().state, TrayState::drying);
    EXPECT_NE(drying.now.slots.front().state, TrayState::overdue);
    EXPECT_FALSE(drying.turnSince.has_value());
    EXPECT_FALSE(drying.forecast.turnOn.p50.has_value()) << "the next turn is that of a tray which does not stand yet";
}

}
}
