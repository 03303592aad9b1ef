// What people do to a stack, on the state.
#include "core/model/acts.h"
#include "core/model/masses.h"
#include "core/model/measures.h"

#include <gtest/gtest.h>

#include <cmath>

namespace tierloam::model {
namespace {

const Substance kitchen{1, 0.16, 0.0195, 0.4875, 4.0, 450};
const Substance cardboard{4, 0.92, 0.001, 0.563, 3.0, 60};

PerMember all(const Ensemble& stack, double value) { return PerMember(static_cast<std::size_t>(stack.members()), value); }

Ensemble bedded(int trays)
{
    Ensemble stack = Ensemble::median({}, 20);
    for (int t = 0; t < trays; ++t) {
        addTray(stack, t + 1, t + 1, 0);
        addMatter(stack, t, cardboard, all(stack, 0.48), all(stack, 0.92), 0.95 * 3.0, false);
    }
    return stack;
}

double sumOfShares(const Ensemble& stack)
{
    double sum = 0.0;
    for (const TrayBlock& tray : stack.blocks[0].trays) sum += tray.share[0];
    return sum;
}

TEST(Acts, FirstTrayHoldsAllWormsAndANewOneNone)
{
    Ensemble stack = bedded(1);
    stock(stack, 0, 0.45, std::nullopt, true);
    addTray(stack, 2, 2, 40);
    EXPECT_EQ(stack.blocks[0].trays[0].share[0], 1.0);
    EXPECT_EQ(stack.blocks[0].trays[1].share[0], 0.0);
}

TEST(Acts, StockOfAGrownMixedColonyHasItsMassAndNumber)
{
    Ensemble stack = bedded(1);
    stock(stack, 0, 0.5, std::nullopt, true);
    const MemberOf m{stack, 0};
    EXPECT_NEAR(colony(m), 0.5, 1e-12);
    EXPECT_NEAR(worms(m), 0.5 * (0.08 / 50e-6 + 0.20 / 120e-6 + 0.32 / 250e-6 + 0.40 / 400e-6), 1e-6);
    EXPECT_GT(stack.blocks[0].stack.reserve[0], 0.0);
    EXPECT_LT(std::fabs(ledgerError(m)), 1e-12);
}

TEST(Acts, CountedStockHasThatNumberAndMass)
{
    Ensemble stack = bedded(1);
    stock(stack, 0, 0.005, 20, true);
    const MemberOf m{stack, 0};
    EXPECT_NEAR(worms(m), 20.0, 1e-9);
    EXPECT_NEAR(colony(m), 0.005, 1e-12);
}

TEST(Acts, LaterStockMovesTheSharesTowardsItsTray)
{
    Ensemble stack = bedded(2);
    stock(stack, 0, 0.3, std::nullopt, true);
    stock(stack, 1, 0.1, std::nullopt, true);
    EXPECT_NEAR(stack.blocks[0].trays[1].share[0], 0.25, 1e-9);
    EXPECT_NEAR(sumOfShares(stack), 1.0, 1e-12);
}

TEST(Acts, WholeHarvestTakesTheTrayWithItsWormsAndRenumbersTheRest)
{
    Ensemble stack = bedded(3);
    stock(stack, 0, 0.4, std::nullopt, true);
    stack.blocks[0].trays[0].share[0] = 0.25;
    stack.blocks[0].trays[1].share[0] = 0.25;
    stack.blocks[0].trays[2].share[0] = 0.5;
    harvest(stack, 0, 1.0);
    ASSERT_EQ(stack.trays(), 2);
    EXPECT_EQ(stack.shapes[0].batch, 2);
    EXPECT_NEAR(colony(MemberOf{stack, 0}), 0.3, 1e-9);
    EXPECT_NEAR(stack.blocks[0].trays[0].share[0], 1.0 / 3.0, 1e-9);
    EXPECT_NEAR(sumOfShares(stack), 1.0, 1e-9);
    EXPECT_LT(std::fabs(ledgerError(MemberOf{stack, 0})), 1e-12);
}

TEST(Acts, PartialHarvestKeepsTheBatch)
{
    Ensemble stack = bedded(2);
    stock(stack, 0, 0.4, std::nullopt, true);
    const double before = dryMatter(MemberOf{stack, 0}, 0);
    harvest(stack, 0, 0.6);
    EXPECT_EQ(stack.trays(), 2);
    EXPECT_NEAR(dryMatter(MemberOf{stack, 0}, 0), 0.4 * before, 1e-12);
    EXPECT_NEAR(colony(MemberOf{stack, 0}), 0.4 * 0.4, 1e-9);
    EXPECT_NEAR(sumOfShares(stack), 1.0, 1e-9);
}

TEST(Acts, HarvestOfTheOnlyTrayTakesAllWorms)
{
    Ensemble stack = bedded(1);
    stock(stack, 0, 0.4, std::nullopt, true);
    harvest(stack, 0, 1.0);
    EXPECT_EQ(stack.trays(), 0);
    EXPECT_NEAR(colony(MemberOf{stack, 0}), 0.0, 1e-12);
    DayForcing forcing;
    advanceDay(stack, forcing); // an empty stack lives on
    addTray(stack, 2, 1, 10);
    EXPECT_EQ(stack.blocks[0].trays[0].share[0], 1.0);
}

TEST(Acts, RotateLiftsTheBottomTrayToTheTopAndDriesIt)
{
    Ensemble stack = bedded(3);
    rotate(stack);
    EXPECT_EQ(stack.shapes[0].batch, 2);
    EXPECT_EQ(stack.shapes[1].batch, 3);
    EXPECT_EQ(stack.shapes[2].batch, 1);
    EXPECT_TRUE(stack.shapes[2].drying);
    EXPECT_EQ(stack.topToFeed(), 1);
}

TEST(Acts, WaterBeyondTheDeficitRunsPartlyThrough)
{
    Ensemble stack = bedded(1);
    DayForcing forcing;
    forcing.spigotOpen = false;
    advanceDay(stack, forcing);
    const MemberOf m{stack, 0};
    const double deficit = m.tray(0).water[0] / waterShare(m, 0) - m.tray(0).water[0];
    const double sumpBefore = m.block.stack.sump[0];
    pour(stack, 0, deficit + 1.0);
    EXPECT_NEAR(m.block.stack.sump[0] - sumpBefore, 0.6, 1e-9);
}

TEST(Acts, ShutSumpFillsAndRunsOverAnOpenOneKeepsATenth)
{
    for (const bool open : {true, false}) {
        Ensemble stack = bedded(1);
        DayForcing forcing;
        forcing.spigotOpen = open;
        for (int day = 0; day < 10; ++day) {
            pour(stack, 0, 1.0);
            forcing.day = day;
            advanceDay(stack, forcing);
        }
        const StackBlock& block = stack.blocks[0].stack;
        EXPECT_NEAR(block.sump[0], open ? 0.1 : 4.0, 1e-9);
        EXPECT_GT(open ? block.ranOff[0] : block.overflowed[0], 1.0);
        EXPECT_EQ(open ? block.overflowed[0] : block.ranOff[0], 0.0);
    }
}

TEST(Acts, DrainEmptiesOrTakesWhatIsThere)
{
    Ensemble stack = bedded(1);
    for (int m = 0; m < lanes; ++m) stack.blocks[0].stack.sump[m] = 2.0;
    drain(stack, 0.5);
    EXPECT_DOUBLE_EQ(stack.blocks[0].stack.sump[0], 1.5);
    drain(stack, 9.0);
    EXPECT_DOUBLE_EQ(stack.blocks[0].stack.sump[0], 0.0);
    for (int m = 0; m < lanes; ++m) stack.blocks[0].stack.sump[m] = 2.0;
    drain(stack, std::nullopt);
    EXPECT_DOUBLE_EQ(stack.blocks[0].stack.sump[0], 0.0);
}

TEST(Measures, FeedToCastCountsSoftenedAndQuickMatterOnly)
{
    Ensemble stack = bedded(1);
    TrayBlock& tray = stack.blocks[0].trays[0];
    tray.castings[0] = 1.0;
    tray.softened[0] = 0.05;
    tray.unsoftened[4][0] = 0.03;
    tray.unsoftened[5][0] = 0.4; // shavings stay
    const MemberOf m{stack, 0};
    EXPECT_NEAR(feedToCast(m, 0), 0.08, 1e-12);
    EXPECT_TRUE(ready(m, 0));
    EXPECT_NEAR(castingsDepth(m, 0), 100.0 / 182.0 / 0.16, 1e-9);
    tray.unsoftened[4][0] = 0.06;
    EXPECT_FALSE(ready(m, 0));
    EXPECT_TRUE(nearly(m, 0));
    tray.castings[0] = 0.2; // 0.69 cm
    tray.softened[0] = tray.unsoftened[4][0] = 0.0;
    EXPECT_FALSE(ready(m, 0)) << "less than 1.25 cm";
    tray.castings[0] = 0.0;
    EXPECT_EQ(feedToCast(m, 0), 0.0);
    tray.softened[0] = 0.1;
    EXPECT_EQ(feedToCast(m, 0), 999.0);
}

/// Four times more than half is taken and as much fed again: what lies there then is a batch like any other, and no film of castings is "ready".
TEST(Acts, WhatIsAddedAfterAShareWasTakenMakesTheBatchWholeAgain)
{
    Ensemble stack = bedded(1);
    const auto left = [&] { return stack.shapes[0].left; };
    const auto feed = [&](double kgDry) { addMatter(stack, 0, kitchen, all(stack, kgDry / 0.16), all(stack, 0.16), std::nullopt, true); };
    const double bedding = 0.48 * 0.92;
    feed(2.0 - bedding);
    EXPECT_EQ(left(), 1.0) << "nothing was taken";
    harvest(stack, 0, 0.6);
    EXPECT_NEAR(left(), 0.4, 1e-12);
    feed(0.6); // half of what is missing of 2 kg
    EXPECT_NEAR(left(), 0.7, 1e-12);
    feed(0.6);
    EXPECT_NEAR(left(), 1.0, 1e-12);
    for (int taken = 0; taken < 4; ++taken) {
        feed(1.2);
        harvest(stack, 0, 0.6);
    }
    EXPECT_GT(left(), 0.25) << "without what was fed: 0.4⁴ = 0.0256";
    EXPECT_FALSE(ready(0.0, 1.0, 0.03, left())) << "0.3 mm";
    harvest(stack, 0, 0.6);
    harvest(stack, 0, 0.6);
    EXPECT_LT(left(), 0.08) << "of nothing added it only falls";
}

}
}
