// What a bed has through the year, and back from a thermometer to the mean of the year.
#include "core/reckoning/bed_year.h"

#include "core/quantity/day_text.h"
#include "core/reckoning/outlook.h"

#include <gtest/gtest.h>

namespace tierloam::reckoning {
namespace {

using journal::Place;
using namespace std::chrono;

constexpr Day november = sys_days{2031y / 11 / 20}, winter = sys_days{2031y / 1 / 17}, summer = sys_days{2031y / 7 / 19}; // day 200

// The amplitudes of model.md: 1 K indoors, 6 in a garage, 9 outdoors, warmest on day 200, in the south on day 17.
TEST(BedYear, TheMeanOfTheYearIsNotWhatAThermometerShowsToday)
{
    EXPECT_NEAR(bedOn(20, Place::outdoors, summer, false), 29.0, 1e-9);
    EXPECT_NEAR(bedOn(20, Place::garage, summer, false), 26.0, 1e-9);
    EXPECT_NEAR(bedOn(20, Place::indoors, summer, false), 21.0, 1e-9);
    EXPECT_NEAR(bedOn(20, Place::outdoors, winter, true), 29.0, 1e-9);
    EXPECT_NEAR(bedOn(8, Place::garage, winter, false), 2.0, 0.01);
}

TEST(BedYear, AThermometerInNovemberIsWorkedBackToTheMean)
{
    const double mean = yearMeanFrom(8, Place::garage, november, false);
    EXPECT_GT(mean, 11.0) << "November is colder than the year";
    EXPECT_NEAR(bedOn(mean, Place::garage, november, false), 8.0, 1e-12);
    EXPECT_LT(yearMeanFrom(8, Place::garage, november, true), 6.0) << "in the south it is warmer";
}

TEST(BedYear, BothWaysAgreeOnEveryDayAndAreWhatTheModelReckonsWith)
{
    for (const Place place : {Place::indoors, Place::garage, Place::outdoors})
        for (const bool southern : {false, true})
            for (int day = 0; day < 800; day += 13) {
                const Day date = november + days{day};
                const double mean = yearMeanFrom(17.3, place, date, southern);
                EXPECT_NEAR(bedOn(mean, place, date, southern), 17.3, 1e-9);
                Surroundings around;
                around.firstBedding = november;
                around.settings.place = place;
                around.settings.temp = celsius(mean);
                around.southern = southern;
                EXPECT_DOUBLE_EQ(around.usualOn(day), bedOn(mean, place, date, southern));
            }
}

TEST(BedYear, TheColdestAndTheWarmestMonthAreNamed)
{
    const BedYear north = bedYear(12, Place::outdoors, false), south = bedYear(12, Place::outdoors, true);
    EXPECT_EQ(north.coldestMonth, 1);
    EXPECT_EQ(north.warmestMonth, 7);
    EXPECT_EQ(south.coldestMonth, 7);
    EXPECT_EQ(south.warmestMonth, 1);
    EXPECT_NEAR(north.coldestC, 3.1, 0.15) << "the mean of a month, a little off its extreme";
    EXPECT_NEAR(north.warmestC, 20.9, 0.15);
    EXPECT_GT(bedYear(12, Place::indoors, false).coldestC, 11.0);
}

TEST(BedYear, WhatIsProposedForAPlaceIsNoPlaceToDieIn)
{
    EXPECT_EQ(proposedYearMean(Place::indoors), journal::StackSettings{}.temp.base());
    for (const Place place : {Place::indoors, Place::garage, Place::outdoors}) {
        const BedYear year = bedYear(proposedYearMean(place), place, false);
        EXPECT_GE(year.coldestC, coldKillsBelow);
        EXPECT_LE(year.warmestC, 26.0) << "warmer, and growth falls";
    }
}

}
}
