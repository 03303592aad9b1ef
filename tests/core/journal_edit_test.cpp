#include "journal_builder.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

// Back-dated inserts, edits and deletions: refused with the later entry named, or accepted with the entries that fall to another batch.
namespace tierloam::journal {

using namespace building;
using testing::ElementsAre;
using testing::IsEmpty;

namespace {

Edit adding(Entry entry)
{
    Edit edit;
    edit.added.push_back(std::move(entry));
    return edit;
}

Edit deleting(std::int64_t id)
{
    Edit edit;
    edit.deleted.push_back(EntryId{id});
    return edit;
}

Entry withId(const Entries& entries, std::int64_t id)
{
    return *std::find_if(entries.begin(), entries.end(), [&](const Entry& entry) { return entry.id == EntryId{id}; });
}

std::vector<std::int64_t> ids(const Entries& entries)
{
    std::vector<std::int64_t> found;
    for (const Entry& entry : entries) found.push_back(static_cast<std::int64_t>(entry.id));
    return found;
}

/// Ids: 1 setup, 2 and 3 bed, 4 feed by default (slot 2), 5 feed of slot 1, 6 rotate, 7 harvest.
Journal turned()
{
    Journal journal = stackOf(2);
    return journal.add("2031-02-01", "Mill", feed()).add("2031-02-01", "Mill", feed(), 1).add("2031-07-01", "Mill", Rotate{}).add("2031-07-05", "Mill", harvest());
}

}

TEST(Edits, ANewRowGoesToTheEndOfItsDay)
{
    const Entries before = turned().entries();
    EditEffect effect = applyEdit(before, adding(entry("2031-02-01", "Mill", Note{})));
    ASSERT_FALSE(effect.refusal);
    EXPECT_THAT(ids(effect.after), ElementsAre(1, 2, 3, 4, 5, 0, 6, 7));
    EXPECT_EQ(effect.after[5].positionInDay, 3);
    EXPECT_THAT(effect.movedToOtherBatch, IsEmpty());

    Entry withTime = entry("2031-02-01", "Mill", Note{});
    withTime.date.minuteOfDay = 5;
    effect = applyEdit(effect.after, adding(withTime));
    EXPECT_EQ(effect.after[6].date.minuteOfDay, 5) << "the time of day does not order";
}

TEST(Edits, SeveralRowsOfOneDayKeepTheirOrder)
{
    Edit edit;
    edit.added = {entry("2031-02-02", "Mill", Event{"first", {}}), entry("2031-02-01", "Mill", Event{"second", {}}), entry("2031-02-02", "Mill", Event{"third", {}})};
    const EditEffect effect = applyEdit(turned().entries(), edit);
    ASSERT_FALSE(effect.refusal);
    std::vector<std::string> words;
    for (const Entry& entry : effect.after)
        if (const auto* event = std::get_if<Event>(&entry.action)) words.push_back(event->what);
    EXPECT_THAT(words, ElementsAre("second", "first", "third"));
}

TEST(Edits, ABackDatedHarvestThatMakesARotationImpossibleIsRefusedAndNamesIt)
{
    const EditEffect effect = applyEdit(turned().entries(), adding(entry("2031-06-01", "Mill", harvest(), 1)));
    ASSERT_TRUE(effect.refusal);
    EXPECT_EQ(effect.refusal->reason, RefusalReason::rotateNeedsTwo);
    EXPECT_EQ(effect.after[effect.refusal->entry].id, EntryId{6});
}

TEST(Edits, ABackDatedRowThatIsImpossibleItselfNamesItself)
{
    const EditEffect effect = applyEdit(turned().entries(), adding(entry("2031-06-01", "Mill", feed(), 5)));
    ASSERT_TRUE(effect.refusal);
    EXPECT_EQ(effect.refusal->reason, RefusalReason::slotMissing);
    EXPECT_EQ(effect.after[effect.refusal->entry].id, EntryId::none);
}

TEST(Edits, ABackDatedRotationMovesLaterEntriesToOtherBatchesAndListsThem)
{
    Journal journal = stackOf(3, 3);                                                                   // 1 setup, 2 3 4 bed
    journal.add("2031-04-01", "Mill", feed()).add("2031-04-02", "Mill", feed(), 1).add("2031-04-03", "Mill", feed(), 3); // 5 6 7
    journal.add("2031-04-04", "Mill", Reading{}).add("2031-04-05", "Mill", depth(1));                  // 8 9
    const EditEffect effect = applyEdit(journal.entries(), adding(entry("2031-03-01", "Mill", Rotate{})));
    ASSERT_FALSE(effect.refusal);
    // The feed by default still falls into batch 3, now in slot 2; slot 1 now holds batch 2 and slot 3 batch 1. The feed in slot 3 ends
    // the drying, so that the look by default now meets batch 1.
    EXPECT_THAT(effect.movedToOtherBatch, ElementsAre(EntryId{6}, EntryId{7}, EntryId{9}));
}

TEST(Edits, ABeddingPutInBeforeRenumbersWithoutMovingWhatItsOwnTrayGot)
{
    Journal journal = stackOf(1, 3);
    journal.add("2031-03-01", "Mill", bed()).add("2031-03-02", "Mill", feed()); // 3 4: batch 2
    const EditEffect effect = applyEdit(journal.entries(), adding(entry("2031-02-01", "Mill", bed())));
    ASSERT_FALSE(effect.refusal);
    EXPECT_THAT(effect.movedToOtherBatch, IsEmpty()) << "batch 2 became batch 3 and is the same life of a tray";
    EXPECT_EQ(last(replay(effect.after)).slots.size(), 3u);
}

TEST(Edits, DeletingABeddingThatLaterEntriesNeedIsRefusedAndNamesTheFirst)
{
    const EditEffect effect = applyEdit(turned().entries(), deleting(2));
    ASSERT_TRUE(effect.refusal);
    EXPECT_EQ(effect.after[effect.refusal->entry].id, EntryId{6}) << "one tray is left: the rotation needs two";
    EXPECT_EQ(effect.refusal->reason, RefusalReason::rotateNeedsTwo);
}

TEST(Edits, DeletingAFeedIsFine)
{
    const EditEffect effect = applyEdit(turned().entries(), deleting(4));
    EXPECT_FALSE(effect.refusal);
    EXPECT_THAT(ids(effect.after), ElementsAre(1, 2, 3, 5, 6, 7));
}

TEST(Edits, DeletingASecondBeddingMovesTheFeedAboveIt)
{
    Journal journal = stackOf(2);
    journal.add("2031-02-01", "Mill", feed()).add("2031-02-02", "Mill", feed(), 1);
    const EditEffect effect = applyEdit(journal.entries(), deleting(3));
    ASSERT_FALSE(effect.refusal);
    EXPECT_THAT(effect.movedToOtherBatch, ElementsAre(EntryId{4}));
}

TEST(Edits, AReplacedEntryKeepsItsPlaceOnItsDayAndGoesToTheEndOfAnother)
{
    const Entries before = turned().entries();
    Entry changed = withId(before, 4);
    changed.note = "peelings";
    changed.positionInDay = 0;
    Edit edit;
    edit.replaced = {changed};
    EditEffect effect = applyEdit(before, edit);
    ASSERT_FALSE(effect.refusal);
    EXPECT_THAT(ids(effect.after), ElementsAre(1, 2, 3, 4, 5, 6, 7));
    EXPECT_EQ(effect.after[3].note, "peelings");

    edit.replaced[0].date.day = day("2031-07-01");
    effect = applyEdit(before, edit);
    ASSERT_FALSE(effect.refusal);
    EXPECT_THAT(ids(effect.after), ElementsAre(1, 2, 3, 5, 6, 4, 7));
    EXPECT_THAT(effect.movedToOtherBatch, IsEmpty()) << "the edited entry itself is not listed";

    edit.replaced[0] = withId(before, 6);
    edit.replaced[0].date.day = day("2031-07-06");
    effect = applyEdit(before, edit);
    ASSERT_TRUE(effect.refusal) << "the harvest would come before its rotation";
    EXPECT_EQ(effect.refusal->reason, RefusalReason::harvestNeedsSlot);
    EXPECT_EQ(effect.after[effect.refusal->entry].id, EntryId{7});
}

TEST(Edits, UndoingADeletionBringsTheRowBackToItsPlace)
{
    const Entries before = turned().entries();
    const Entry gone = withId(before, 4);
    const EditEffect deleted = applyEdit(before, deleting(4));
    EXPECT_EQ(applyEdit(deleted.after, adding(gone)).after, before);
}

TEST(Edits, OfAnEntryThatIsGoneAreRefused)
{
    const Entries before = turned().entries();
    EditEffect effect = applyEdit(before, deleting(99));
    ASSERT_TRUE(effect.refusal);
    EXPECT_EQ(effect.refusal->reason, RefusalReason::entryGone);
    EXPECT_EQ(effect.refusal->entry, before.size());
    Edit edit;
    edit.replaced = {withId(before, 4)};
    edit.replaced[0].id = EntryId{99};
    effect = applyEdit(before, edit);
    ASSERT_TRUE(effect.refusal);
    EXPECT_EQ(effect.refusal->reason, RefusalReason::entryGone);
}

TEST(Edits, OfAMoveAreSeenInTheOtherLedgerToo)
{
    Journal journal = stackOf(1);
    journal.add("2031-01-01", "Yard", setup()).add("2031-01-02", "Yard", bed()); // 3 4
    journal.add("2031-02-01", "Mill", move("Yard"));                              // 5
    EditEffect effect = applyEdit(journal.entries(), deleting(4));
    ASSERT_TRUE(effect.refusal);
    EXPECT_EQ(effect.refusal->stack, "Yard");
    EXPECT_EQ(effect.after[effect.refusal->entry].id, EntryId{5});

    effect = applyEdit(journal.entries(), adding(entry("2031-01-15", "Yard", bed())));
    ASSERT_FALSE(effect.refusal);
    EXPECT_THAT(effect.movedToOtherBatch, ElementsAre(EntryId{5}));
}

TEST(Digest, ChangesWithWhatTheReckoningReadsAndNothingElse)
{
    const Entries before = turned().entries();
    const std::uint64_t base = digest(before);
    const auto with = [&](auto change) {
        Entries changed = before;
        change(changed[3]);
        return digest(changed);
    };
    EXPECT_EQ(with([](Entry& e) { e.note = "x"; }), base);
    EXPECT_EQ(with([](Entry& e) { e.id = EntryId{77}; }), base);
    EXPECT_EQ(with([](Entry& e) { e.date.minuteOfDay = 30; }), base);
    EXPECT_NE(with([](Entry& e) { e.date.day += std::chrono::days{1}; }), base);
    EXPECT_NE(with([](Entry& e) { e.slot = 1; }), base);
    EXPECT_NE(with([](Entry& e) { std::get<Feed>(e.action).food.value = 301; }), base);
    EXPECT_NE(with([](Entry& e) { std::get<Feed>(e.action).food.unit = Unit::mL; }), base);
    EXPECT_NE(with([](Entry& e) { std::get<Feed>(e.action).material = "beet pulp"; }), base);
    EXPECT_NE(with([](Entry& e) { std::get<Feed>(e.action).side = Side::left; }), base);
    EXPECT_NE(with([](Entry& e) { e.action = Note{}; }), base);
    EXPECT_NE(digest(std::span{before}.first(before.size() - 1)), base);
}

}
