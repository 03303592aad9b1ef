#include "core/household/open_journal.h"
#include "tests/core/household_fixture.h"

namespace tierloam::household {

namespace {

/// The journal as a file would hold it.
journal::Entries numbered(journal::Entries entries, std::int64_t from = 0)
{
    std::map<Day, std::int64_t> ends;
    for (journal::Entry& entry : entries) {
        entry.id = journal::EntryId{++from};
        entry.positionInDay = ++ends[entry.date.day];
    }
    return entries;
}

/// It is kept and not reckoned at each look: then it has to follow what is recorded, and nothing else.
TEST(OpenJournal, TheKeptDigestIsThatOfWhatIsRecorded)
{
    const Day on = day(2031, 3, 1);
    const auto recorded = numbered(newStack(on));
    OpenJournal open{recorded, {{on, 3}}};
    const auto kept = [&] { return open.recordedDigest() == journal::digest(open.recorded()); };
    EXPECT_TRUE(kept());
    EXPECT_NE(open.recordedDigest(), journal::digest({}));
    const auto before = open.recordedDigest();
    const auto ask = [&](std::uint64_t ticket) {
        const auto edit = open.prepared({{feed(200, on + std::chrono::days{3})}, {}, {}});
        auto effect = open.effectOf(edit);
        ASSERT_FALSE(effect.refusal);
        open.ask(ticket, edit, std::move(effect.after));
    };
    ask(1);
    EXPECT_EQ(open.view()->entries.size(), 4U);
    EXPECT_EQ(open.recordedDigest(), before) << "not yet durable";
    open.giveUp(1);
    EXPECT_EQ(open.recordedDigest(), before);
    ask(2);
    open.settle(2, numbered({feed(200, on + std::chrono::days{3})}, 3));
    EXPECT_EQ(open.recorded().size(), 4U);
    EXPECT_NE(open.recordedDigest(), before);
    EXPECT_TRUE(kept());
    open.replaceRecorded(recorded, {{on, 3}});
    EXPECT_EQ(open.recordedDigest(), before);
    EXPECT_TRUE(kept());
}

}

}
