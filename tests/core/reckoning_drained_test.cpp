// What was drained beside what was expected: like with like.
#include "core/reckoning/drained.h"
#include "core/reckoning/reckon.h"
#include "tests/support/households.h"

#include <gtest/gtest.h>

namespace tierloam::reckoning {
namespace {

journal::Entry of(journal::Action action)
{
    journal::Entry entry;
    entry.action = std::move(action);
    return entry;
}

TEST(Drained, IsAllThatCameOutOfTheSump)
{
    journal::Drain drain;
    EXPECT_FALSE(drainedBy(of(drain))) << "not measured";
    drain.volume = Amount{1.5, Unit::L};
    EXPECT_DOUBLE_EQ(*drainedBy(of(drain)), 1.5);
    journal::Flush flush;
    flush.poured = Amount{2, Unit::L};
    EXPECT_FALSE(drainedBy(of(flush)));
    flush.drained = litres(3.2);
    EXPECT_DOUBLE_EQ(*drainedBy(of(flush)), 3.2) << "the water that was poured in too";
    EXPECT_FALSE(drainedBy(of(journal::Water{Amount{1, Unit::L}})));
}

/// The week's estimate holds the water of a flush; so what was measured is compared with it as it came out.
TEST(Drained, TheEstimateHoldsWhatAFlushPours)
{
    const tests::MadeUp made = tests::makeHousehold(0x9a7d, 2, {}, {}, 400);
    Options options;
    options.asOf = made.asOf;
    options.members = 64;
    const auto without = reckon(made.entries, options);
    journal::Entries flushed = made.entries;
    journal::Flush flush;
    flush.poured = Amount{4, Unit::L};
    journal::Entry entry = of(flush);
    entry.id = journal::EntryId{1'000'000};
    entry.positionInDay = 1'000'000;
    entry.date.day = made.asOf - std::chrono::days{1};
    entry.stack = made.entries.front().stack;
    flushed.push_back(entry);
    std::stable_sort(flushed.begin(), flushed.end(), journal::inJournalOrder);
    const auto with = reckon(flushed, options);
    ASSERT_EQ(without->stacks.size(), 1u);
    ASSERT_EQ(with->stacks.size(), 1u);
    EXPECT_GT(with->stacks.front().now.drainedLPerWeek.p50, without->stacks.front().now.drainedLPerWeek.p50 + 1.0);
}

}
}
