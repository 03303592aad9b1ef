// Another stack started from one: its own course on the same members, and the day on which the old one is back.
#include "core/planning/another_stack.h"

#include "core/planning/feeding_ramp.h"
#include "core/reckoning/overfeeding.h"

#include "tests/support/households.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace tierloam::planning {
namespace {

using namespace reckoning;

/// The first drawn stack of three trays that can spare enough for another.
StackReckoning generous()
{
    for (int number = 0; number < 30; ++number) {
        StackReckoning stack = *tests::reckonHousehold(tests::makeHousehold(0xc4a6e, number, {}, {}, 300), 192).stack;
        if (!stack.record.dryingSince && stack.now.slots.size() > 1 && stack.now.colonyKg.p50 > 0.6) return stack;
    }
    throw std::logic_error{"none of the drawn households is like that"};
}

TEST(AnotherStack, HasACourseOfItsOwnWhichTheOldStacksWormsBegin)
{
    const StackReckoning stack = generous();
    const auto another = startAnother(stack, 12 * 7, 1);
    ASSERT_TRUE(another);
    ASSERT_GT(another->share, 0.0);
    const NewStack& young = another->young;
    EXPECT_GE(young.wormsKg, NewStack::leastWormsKg);
    EXPECT_LE(young.wormsKg, NewStack::mostWormsKg);
    EXPECT_NEAR(another->share * stack.now.colonyKg.p50, young.wormsKg - young.boughtKg, 0.001) << "what is not bought leaves the old one";
    EXPECT_LE(another->share, another->give.share + 1e-9);
    EXPECT_DOUBLE_EQ(young.beddingKg, stack.present->course.beddingKg);
    // It begins with those worms in one tray, and nothing else of the old stack.
    ASSERT_GT(young.days.size(), 40u);
    EXPECT_NEAR(young.days.front().colonyKg.p50, young.wormsKg, 0.15 * young.wormsKg);
    ASSERT_EQ(young.days.front().slots.size(), 1u);
    EXPECT_LT(young.days.front().slots.front().castingsDryKg.p50, 0.1);
    // Fed as few worms bear, more as they grow, and never so that the bed lacks air.
    ASSERT_FALSE(young.feed.empty());
    EXPECT_LE(young.feed.front().kgPerWeek, mostInAWeek(stack.present->members.stack.area, 1, young.wormsKg) + 1e-9);
    for (std::size_t i = 1; i < young.feed.size(); ++i) {
        EXPECT_GT(young.feed[i].from, young.feed[i - 1].from);
        EXPECT_GT(young.feed[i].kgPerWeek, young.feed[i - 1].kgPerWeek);
    }
    EXPECT_LE(young.airLowWithin14Days, 2 * mostShortOfAir);
    const auto inOrder = [](const Dates& dates) { return (!dates.p50 || (dates.p10 && *dates.p10 <= *dates.p50)) && (!dates.p90 || (dates.p50 && *dates.p50 <= *dates.p90)); };
    EXPECT_TRUE(inOrder(young.secondTray) && inOrder(young.firstReady) && inOrder(another->backOn));
    ASSERT_TRUE(young.secondTray.p50) << "within the year";
    EXPECT_GT(*young.secondTray.p50, stack.asOf + std::chrono::days{28});
    if (young.firstReady.p50) {
        EXPECT_GE(*young.firstReady.p50, *young.secondTray.p50) << "while it is fed it is not ready";
    }
    for (const StackEstimate& week : young.days)
        for (const TrayEstimate& tray : week.slots) {
            EXPECT_GT(tray.waterShare.p50, 0.4) << daysBetween(stack.asOf, week.day);
            EXPECT_LT(tray.waterShare.p50, 1.4) << daysBetween(stack.asOf, week.day);
        }
}

/// The members are the old stack's: where they breed faster, so does the new stack; and of more time more can go, which takes longer to come back.
TEST(AnotherStack, TheOldOneIsBackWithinTheTimeThatWasGivenAndLaterOfMoreThatWent)
{
    const StackReckoning stack = generous();
    const auto soon = startAnother(stack, 4 * 7, 1), late = startAnother(stack, 26 * 7, 1);
    ASSERT_TRUE(soon && late);
    EXPECT_LE(soon->share, late->share + 1e-9);
    ASSERT_TRUE(late->backOn.p50);
    EXPECT_LE(daysBetween(stack.asOf, *late->backOn.p50), 26 * 7);
    if (soon->share > 0.0) {
        ASSERT_TRUE(soon->backOn.p50);
        EXPECT_LE(*soon->backOn.p50, *late->backOn.p50);
    }
    const ChangedPlan plan = planOf(*late, stack.asOf + std::chrono::days{1});
    ASSERT_TRUE(plan.split);
    EXPECT_DOUBLE_EQ(plan.split->share, late->share);
}

TEST(AnotherStack, IsNoneOfAStackThatCanSpareNoWormsAndOfNoMembers)
{
    StackReckoning stack = generous();
    std::stop_source stop;
    stop.request_stop();
    EXPECT_FALSE(startAnother(stack, 84, 1, stop.get_token()));
    stack.present.reset();
    EXPECT_FALSE(startAnother(stack, 84, 1));
}

}
}
