#include "core/household/named_rows.h"
#include "core/household/open_journal.h"
#include "tests/core/household_fixture.h"

#include <ctime>
#include <limits>

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

/// An edit of all entries is asked for in the window's thread: it may not cost the square of them. Four times the entries may cost four times the time
/// and some; a search for each entry costs sixteen times.
TEST(OpenJournal, AnEditOfAllEntriesDoesNotCostTheirSquare)
{
    const Day on = day(2031, 3, 1);
    const auto seconds = [&](int many) {
        journal::Entries entries = newStack(on);
        for (int i = 0; i < many; ++i) entries.push_back(entry(journal::Note{}, on + std::chrono::days{i / 10}));
        entries = numbered(entries);
        OpenJournal::Ends ends;
        for (const journal::Entry& each : entries) ends[each.date.day] = std::max(ends[each.date.day], each.positionInDay);
        const OpenJournal open{entries, ends};
        journal::Edit edit;
        for (auto each = entries.rbegin(); each != entries.rend(); ++each) { // the newest first, as the table shows them
            edit.replaced.push_back(*each);
            edit.replaced.back().note = "all";
        }
        double least = std::numeric_limits<double>::max();
        for (int again = 0; again < 5; ++again) {
            const std::clock_t from = std::clock(); // of this process alone: the machine may be busy
            const auto prepared = open.prepared(edit);
            least = std::min(least, static_cast<double>(std::clock() - from) / CLOCKS_PER_SEC);
            EXPECT_EQ(prepared.replaced.size(), entries.size());
            EXPECT_TRUE(std::ranges::all_of(prepared.replaced, [](const journal::Entry& each) { return each.positionInDay > 0; })) << "the day stays, and so the place in it";
        }
        return least;
    };
    const double some = seconds(10'000);
    EXPECT_LT(seconds(40'000), 9 * some);
}

/// The rows that an edit names, and no other.
TEST(NamedRows, AreThoseThatAreChangedOrTakenOut)
{
    const auto entries = numbered(newStack(day(2031, 3, 1)));
    journal::Edit edit;
    edit.deleted = {entries[2].id, journal::EntryId{99}};
    edit.replaced = {entries[0]};
    edit.replaced.front().note = "new";
    const NamedRows rows{entries, edit};
    EXPECT_EQ(rows.find(entries[0].id), &entries[0]);
    EXPECT_EQ(rows.find(entries[2].id), &entries[2]);
    EXPECT_EQ(rows.find(entries[1].id), nullptr) << "not named";
    EXPECT_EQ(rows.find(journal::EntryId{99}), nullptr) << "not there";
}

}

}
