// "The bottom tray had been taken in March": what was written later of the trays above it was of the same trays.
#include "core/planning/changes.h"
#include "core/planning/past_harvest.h"
#include "core/reckoning/reckon.h"
#include "tests/core/reckoning_notes.h"

#include <gtest/gtest.h>

namespace tierloam::planning {
namespace {

using namespace reckoning;

Check looked(double bits)
{
    Check check;
    check.bits = Share::fromPercent(bits);
    return check;
}

TEST(PastHarvest, WhatWasWrittenOfTheTraysAboveIsOneSlotLower)
{
    Notes notes;
    const Bed tray{{480, Unit::g}, "corrugated cardboard shredded", {}};
    notes.begun("Mill").fedWeekly("Mill", 2, 300).add(80, "Mill", tray).add(160, "Mill", tray);
    notes.add(210, "Mill", looked(60), 3).add(212, "Mill", looked(12), 1).add(215, "Mill", looked(30), 2);
    const auto reckoning = reckon(notes.entries(), until(300));
    const StackReckoning& stack = reckoning->stacks.front();
    const auto past = pastWithHarvest(notes.entries(), stack, onDay(200));
    ASSERT_TRUE(past);
    ASSERT_EQ(past->without.size(), 3u);
    ASSERT_EQ(past->with.size(), 3u) << "the harvest, and the looks at the second and third tray";
    EXPECT_EQ(past->with[1].slot, 2);
    EXPECT_EQ(past->with[2].slot, 1);
    const auto answer = reckonAnotherPast(notes.entries(), *past, until(300));
    ASSERT_TRUE(answer.reckoning);
    const StackReckoning& other = *answer.reckoning->stack("Mill");
    EXPECT_EQ(other.now.slots.size(), 2u);
    EXPECT_EQ(other.now.slots.front().batch, stack.now.slots[1].batch);
    // Without the shift the look at the third tray stands in the way.
    AnotherPast alone;
    alone.with = {past->with.front()};
    EXPECT_FALSE(reckonAnotherPast(notes.entries(), alone, until(300)).reckoning);
}

/// The slot that it names is one of the stack they came from.
TEST(PastHarvest, WormsThatCameFromAnotherStackComeAllTheSame)
{
    Notes notes;
    const Bed tray{{480, Unit::g}, "corrugated cardboard shredded", {}};
    notes.begun("Mill").fedWeekly("Mill", 2, 220, 300).add(80, "Mill", tray).add(160, "Mill", tray);
    notes.begun("Shed").fedWeekly("Shed", 2, 220, 300).add(80, "Shed", tray);
    notes.add(210, "Mill", Move{{100, Unit::g}, "Shed"}, 3).add(212, "Mill", Move{{50, Unit::g}, "Shed"}, 1);
    const auto reckoning = reckon(notes.entries(), until(220));
    const auto past = pastWithHarvest(notes.entries(), *reckoning->stack("Shed"), onDay(200));
    ASSERT_TRUE(past);
    EXPECT_TRUE(past->without.empty());
    EXPECT_EQ(past->with.size(), 1u) << "the harvest alone";
    const auto answer = reckonAnotherPast(notes.entries(), *past, until(220));
    ASSERT_TRUE(answer.reckoning);
    EXPECT_EQ(answer.reckoning->stack("Mill")->now.colonyKg.p50, reckoning->stack("Mill")->now.colonyKg.p50) << "what was taken from there was taken";
    // Of the stack that they left, it is its own tray.
    const auto other = pastWithHarvest(notes.entries(), *reckoning->stack("Mill"), onDay(200));
    ASSERT_TRUE(other);
    EXPECT_EQ(other->without.size(), 2u) << "one from the third tray, now the second; one from the tray that is gone";
    ASSERT_EQ(other->with.size(), 2u);
    EXPECT_EQ(other->with.back().slot, 2);
}

TEST(PastHarvest, WormsThatWouldFindNoTrayAreLeftOut)
{
    Notes notes;
    notes.begun("Mill").fedWeekly("Mill", 2, 100, 300).begun("Shed").fedWeekly("Shed", 2, 70, 300);
    notes.add(90, "Mill", Move{{100, Unit::g}, "Shed"}, 1);
    const auto reckoning = reckon(notes.entries(), until(100));
    const auto past = pastWithHarvest(notes.entries(), *reckoning->stack("Shed"), onDay(80));
    ASSERT_TRUE(past);
    ASSERT_EQ(past->without.size(), 1u);
    EXPECT_TRUE(reckonAnotherPast(notes.entries(), *past, until(100)).reckoning);
    AnotherPast alone = *past;
    alone.without.clear();
    EXPECT_FALSE(reckonAnotherPast(notes.entries(), alone, until(100)).reckoning);
}

TEST(PastHarvest, WhereTheTrayWasTakenLaterItsOwnLiftAndHarvestAreLeftOut)
{
    Notes notes;
    const Bed tray{{480, Unit::g}, "corrugated cardboard shredded", {}};
    notes.begun("Mill").fedWeekly("Mill", 2, 300).add(80, "Mill", tray).add(160, "Mill", tray);
    notes.add(240, "Mill", Rotate{});
    Harvest harvest;
    harvest.taken = {2.5, Unit::kg};
    notes.add(246, "Mill", harvest, 3).add(246, "Mill", tray).add(280, "Mill", looked(20), 1);
    const auto reckoning = reckon(notes.entries(), until(300));
    const auto past = pastWithHarvest(notes.entries(), reckoning->stacks.front(), onDay(200));
    ASSERT_TRUE(past);
    EXPECT_EQ(past->without.size(), 2u);
    EXPECT_EQ(past->with.size(), 1u);
    const auto answer = reckonAnotherPast(notes.entries(), *past, until(300));
    ASSERT_TRUE(answer.reckoning) << (answer.refusals.empty() ? "" : "refused");
    EXPECT_EQ(answer.reckoning->stack("Mill")->now.slots.size(), 3u);
}

}
}
