// The table of figures: whole, sourced, and one key for one row.
#include "core/guide/figures.h"
#include "core/reckoning/bed_year.h"

#include <gtest/gtest.h>

#include <set>

using namespace tierloam::guide;

namespace {

TEST(Figures, StandInTheOrderOfTheirNamesWithAKeyOfTheirOwn)
{
    std::set<std::string_view> keys;
    int number = 0;
    for (const FigureRow& row : figureTable()) {
        EXPECT_EQ(static_cast<int>(row.figure), number++) << row.key;
        EXPECT_TRUE(keys.insert(row.key).second) << row.key;
        EXPECT_EQ(figureWithKey(row.key), &figureRow(row.figure));
        for (const char c : row.key) EXPECT_TRUE(c == '-' || (c >= 'a' && c <= 'z')) << row.key;
    }
    EXPECT_EQ(figureWithKey("stoc"), nullptr);
    EXPECT_EQ(figureWithKey(""), nullptr);
}

// The handbook tells the bed that the forms propose, as the model takes it through the year.
TEST(Figures, TheBedThroughTheYearIsThatOfTheForms)
{
    using tierloam::journal::Place;
    namespace reckoning = tierloam::reckoning;
    for (const auto& [figure, place] : {std::pair{Figure::yearIndoors, Place::indoors}, {Figure::yearGarage, Place::garage}, {Figure::yearOutdoors, Place::outdoors}}) {
        EXPECT_EQ(lowOf(figure), reckoning::proposedYearMean(place) - reckoning::seasonAmplitude(place));
        EXPECT_EQ(highOf(figure), reckoning::proposedYearMean(place) + reckoning::seasonAmplitude(place));
    }
}

/// What a row must say of where it comes from.
bool saysWhereFrom(const FigureRow& row)
{
    const auto says = [&](std::string_view word) { return row.source.find(word) != std::string_view::npos; };
    switch (row.basis) {
    case Basis::memory: return says("memory");
    case Basis::commonPractice: return says("common practice") && says("no source");
    case Basis::secondHand: return says("second hand");
    case Basis::judgement: return says("our judgement") || says("a rule of this program");
    case Basis::published: break;
    }
    return row.source.size() > 8 && !says("memory") && !says("no source");
}

TEST(Figures, EachSayWhereTheyComeFromAndMemoryIsMarked)
{
    for (const FigureRow& row : figureTable()) {
        EXPECT_TRUE(saysWhereFrom(row)) << row.key << ": " << row.source;
        if (row.high) { EXPECT_GT(*row.high, row.low) << row.key; }
    }
    FigureRow passedOff = figureRow(Figure::tapWater); // from memory, said to be published: must be noticed
    passedOff.basis = Basis::published;
    EXPECT_FALSE(saysWhereFrom(passedOff));
}

}
