// What a journal cannot know of itself: trays that were at work before it began, and worms that left uncounted.
#include "tests/core/reckoning_notes.h"

#include "core/reckoning/overfeeding.h"

#include <gtest/gtest.h>

namespace tierloam::reckoning {
namespace {

StackReckoning at(const Notes& notes, int day)
{
    Options options = until(day);
    options.members = 256; // the ends of bands are asked
    return reckon(notes.entries(), options)->stacks.front();
}

Check depthOf(double centimetres)
{
    Check check;
    check.depth = tierloam::centimetres(centimetres);
    return check;
}

Notes threeTrays()
{
    Notes notes;
    notes.begun("Mill");
    for (int tray = 0; tray < 2; ++tray) notes.add(0, "Mill", Bed{{480, Unit::g}, "corrugated cardboard shredded", {}});
    return notes;
}

TEST(Found, CastingsOfBeforeTheJournalAreWhatWasMeasured)
{
    Notes notes = threeTrays();
    const StackReckoning unseen = at(notes, 1);
    EXPECT_LT(unseen.now.slots[0].castingsDepthCm.p95, 0.3);
    notes.add(0, "Mill", depthOf(6.0), 1).add(0, "Mill", depthOf(4.0), 2);
    const StackReckoning seen = at(notes, 1);
    EXPECT_NEAR(seen.now.slots[0].castingsDepthCm.p50, 6.0, 0.8);
    EXPECT_NEAR(seen.now.slots[1].castingsDepthCm.p50, 4.0, 0.6);
    EXPECT_GT(seen.now.slots[0].castingsDepthCm.p95, 6.8) << "a ruler in a bed tells a fifth";
    EXPECT_LT(seen.now.slots[2].castingsDepthCm.p95, 0.3) << "nobody looked there";
    EXPECT_TRUE(seen.disagreements.empty()) << "nothing is odd in it";
    EXPECT_GT(seen.now.slots[0].feedToCast.p95, 1.3 * seen.now.slots[0].feedToCast.p05);
}

/// Later a depth beyond belief is one: a slip of the pen lays no castings.
TEST(Found, ADepthThatCannotBeIsToldAndLaysNothing)
{
    Notes late = threeTrays();
    late.fedWeekly("Mill", 2, 90, 400).add(90, "Mill", depthOf(9.0), 3);
    EXPECT_LT(at(late, 90).now.slots[2].castingsDepthCm.p50, 7.0);
    EXPECT_FALSE(at(late, 90).disagreements.empty());
}

Notes kept(int days)
{
    Notes notes;
    return notes.begun("Mill").fedWeekly("Mill", 2, days, 500);
}

TEST(Found, AnEscapeLeavesOpenHowManyAndLooksTellIt)
{
    Notes before = kept(118);
    const Band unknowing = at(before, 120).now.colonyKg;
    Notes gone = before;
    gone.add(119, "Mill", Event{"escape", {}});
    const Band open = at(gone, 120).now.colonyKg;
    EXPECT_LT(open.p05, 0.5 * unknowing.p05) << "it may be most of them";
    EXPECT_GT(open.p95, 0.85 * unknowing.p95) << "or a few";
    EXPECT_GT(open.p50, 0.6 * unknowing.p50);
    const auto looked = [](Notes notes) {
        Check few;
        few.worms = WormsSeen::few;
        notes.add(120, "Mill", few).add(127, "Mill", few).add(127, "Mill", Count{{12, Unit::count}, litres(1.0)});
        return at(notes, 128).now.colonyKg;
    };
    EXPECT_LT(looked(gone).p50, 0.6 * looked(before).p50);
    Notes smelt = before;
    smelt.add(119, "Mill", Event{"smell", {}});
    EXPECT_EQ(at(smelt, 120).now.colonyKg, unknowing);
}

TEST(Found, FewWormsBearLittleFood)
{
    Notes few;
    few.add(0, "Mill", journal::Setup{}).add(0, "Mill", Bed{{480, Unit::g}, "corrugated cardboard shredded", {}}).add(0, "Mill", Stock{{60, Unit::g}, {}, {}}).fedWeekly("Mill", 2, 9, 50);
    Notes many;
    many.begun("Mill").fedWeekly("Mill", 2, 9, 50);
    const StackReckoning little = at(few, 10);
    EXPECT_LE(little.forecast.feedHighKg, 7.0 * mostFreshPerWormsAndDay * little.now.colonyKg.p50 + 1e-9);
    EXPECT_GE(little.forecast.feedHighKg, leastWorthGiving);
    EXPECT_LT(little.forecast.feedHighKg, 0.6 * at(many, 10).forecast.feedHighKg);
}

}
}
