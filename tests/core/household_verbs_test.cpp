#include "tests/core/household_fixture.h"

namespace tierloam::household {

namespace {

using journal::EntryId;

class HouseholdVerbs : public HouseholdTest {};

TEST_F(HouseholdVerbs, WhatIsRecordedIsDrawnAtOnceAndThenDurable)
{
    open();
    recordNow(newStack(start));
    changes_.clear();
    const auto before = household().journal();
    const Ticket ticket = household().record(feed(300, today), QStringLiteral("Feed"));
    EXPECT_FALSE(answered(ticket)) << "never before the verb returns";
    const auto drawn = household().journal();
    EXPECT_EQ(before->entries.size(), 3U) << "a view is a value";
    ASSERT_EQ(drawn->entries.size(), 4U);
    ASSERT_EQ(drawn->pending.size(), 1U);
    EXPECT_EQ(drawn->entries.back().id, drawn->pending.front());
    EXPECT_LT(static_cast<std::int64_t>(drawn->pending.front()), 0);
    EXPECT_EQ(drawn->replay.stack("Scullery")->steps.size(), 4U);
    EXPECT_EQ(changes_.size(), 1U);
    EXPECT_FALSE(household().reckoningIsCurrent());

    ASSERT_TRUE(done(ticket));
    EXPECT_TRUE(household().journal()->pending.empty());
    EXPECT_EQ(entries().back().id, recorded_[ticket].front());
    EXPECT_GT(static_cast<std::int64_t>(entries().back().id), 0);
    EXPECT_EQ(changes_.size(), 2U);
    EXPECT_EQ(entries(), inFile());
}

TEST_F(HouseholdVerbs, SeveralEntriesAreOneTransactionAndOneUndoStep)
{
    open();
    recordNow(newStack(start));
    EXPECT_EQ(household().undoStack()->count(), 1);
    const Ticket ticket = household().recordAll({feed(300, today), entry(journal::Cover{}, today)}, QStringLiteral("Feed and cover"));
    ASSERT_TRUE(done(ticket));
    EXPECT_EQ(recorded_[ticket].size(), 2U);
    EXPECT_EQ(household().undoStack()->count(), 2);
    EXPECT_EQ(household().undoStack()->undoText(), QStringLiteral("Feed and cover"));
    undoNow();
    EXPECT_EQ(entries().size(), 3U);
}

TEST_F(HouseholdVerbs, ARecordedCopyIsANewEntry)
{
    open();
    recordNow(newStack(start));
    const auto id = recordNow({feed(300, today)});
    const auto copy = recordNow({entries().back()});
    EXPECT_NE(copy, id);
    EXPECT_EQ(entries().size(), 5U);
}

TEST_F(HouseholdVerbs, AnIllegalStepIsRefusedWithItsReasonAndNothingIsWritten)
{
    open();
    recordNow(newStack(start));
    const auto before = household().journal();
    const int steps = household().undoStack()->count();
    auto wrong = feed(300, today);
    wrong.slot = 5;
    EXPECT_FALSE(household().refusalOf({{wrong}, {}, {}}).isEmpty());
    const Ticket ticket = household().record(wrong, QStringLiteral("Feed"));
    EXPECT_FALSE(answered(ticket));
    EXPECT_EQ(household().journal(), before) << "not even drawn";
    EXPECT_FALSE(done(ticket));
    EXPECT_TRUE(failed_[ticket].contains(QStringLiteral("slot 5"))) << failed_[ticket].toStdString();
    EXPECT_EQ(failed_[ticket], household().refusalOf({{wrong}, {}, {}}));
    EXPECT_EQ(household().undoStack()->count(), steps);
    EXPECT_EQ(inFile(), before->entries);
    EXPECT_TRUE(household().refusalOf({{feed(300, today)}, {}, {}}).isEmpty());
}

TEST_F(HouseholdVerbs, AnEditThatMakesALaterEntryIllegalNamesIt)
{
    open();
    recordNow(newStack(start));
    recordNow({feed(300, today)});
    const auto bed = std::ranges::find_if(household().journal()->entries, [](const auto& one) { return std::holds_alternative<journal::Bed>(one.action); })->id;
    const Ticket ticket = household().remove({bed}, QStringLiteral("Delete"));
    EXPECT_FALSE(done(ticket));
    EXPECT_TRUE(failed_[ticket].contains(QStringLiteral("Worms put in")) || failed_[ticket].contains(QStringLiteral("«Fed»"))) << failed_[ticket].toStdString();
    EXPECT_EQ(inFile().size(), 4U);
}

TEST_F(HouseholdVerbs, EditingKeepsThePlaceAndAnotherDayMovesIt)
{
    open();
    recordNow(newStack(start));
    recordNow({feed(1, today)});
    recordNow({feed(2, today)});
    auto first = entries()[3];
    first.action = journal::Feed{Amount{9, Unit::g}, "", {}};
    ASSERT_TRUE(done(household().edit(first, QStringLiteral("Edit"))));
    EXPECT_EQ(entries()[3], first);
    first.date.day = today - std::chrono::days{1};
    ASSERT_TRUE(done(household().edit(first, QStringLiteral("Edit"))));
    EXPECT_EQ(entries()[3].id, first.id);
    first.date.day = today;
    ASSERT_TRUE(done(household().edit(first, QStringLiteral("Edit"))));
    EXPECT_EQ(entries().back().id, first.id) << "it comes back to the end of the day";
    EXPECT_EQ(entries(), inFile());
}

TEST_F(HouseholdVerbs, WhatChangesNothingWritesNothingAndIsNoStep)
{
    open();
    recordNow(newStack(start));
    const int steps = household().undoStack()->count();
    const auto before = QFile{path()}.size();
    for (const Ticket ticket : {household().edit(entries()[1], QStringLiteral("Edit")), household().apply({}, QStringLiteral("Nothing")),
                                household().recordAll({}, QStringLiteral("Nothing")), household().remove({}, QStringLiteral("Nothing"))}) {
        EXPECT_TRUE(done(ticket));
        EXPECT_TRUE(recorded_[ticket].empty());
    }
    EXPECT_EQ(household().undoStack()->count(), steps);
    EXPECT_EQ(QFile{path()}.size(), before);
}

TEST_F(HouseholdVerbs, AnEntryThatIsStillBeingWrittenCannotBeNamed)
{
    open();
    recordNow(newStack(start));
    const Ticket feeding = household().record(feed(300, today), QStringLiteral("Feed"));
    const Ticket deleting = household().remove({household().journal()->pending.front()}, QStringLiteral("Delete"));
    EXPECT_FALSE(done(deleting));
    EXPECT_FALSE(failed_[deleting].isEmpty());
    EXPECT_TRUE(done(feeding));
    EXPECT_EQ(entries().size(), 4U);
}

TEST_F(HouseholdVerbs, ManyVerbsAtOnceAreWrittenInTheirOrder)
{
    open();
    recordNow(newStack(start));
    std::vector<Ticket> tickets;
    for (int i = 1; i <= 30; ++i) tickets.push_back(household().record(feed(i, today), QStringLiteral("Feed")));
    EXPECT_EQ(entries().size(), 33U) << "all are drawn";
    household().finishWrites();
    for (const Ticket ticket : tickets) EXPECT_TRUE(recorded_.contains(ticket));
    for (int i = 1; i <= 30; ++i) EXPECT_EQ(std::get<journal::Feed>(entries()[static_cast<std::size_t>(i) + 2].action).food.value, i);
    EXPECT_EQ(entries(), inFile());
}

TEST_F(HouseholdVerbs, ClosingWritesWhatWasAskedFor)
{
    open();
    recordNow(newStack(start));
    for (int i = 0; i < 10; ++i) household().record(feed(i + 1, today), QStringLiteral("Feed"));
    close();
    EXPECT_EQ(inFile().size(), 13U);
}

TEST_F(HouseholdVerbs, TheNameIsTheFilesUntilOneIsGiven)
{
    open();
    EXPECT_EQ(household().name(), QStringLiteral("mill"));
    ASSERT_TRUE(done(household().rename(QStringLiteral("  Mühle am Bach "))));
    EXPECT_EQ(household().name(), QStringLiteral("Mühle am Bach"));
    EXPECT_TRUE(changes_.back().settings);
    const int steps = household().undoStack()->count();
    ASSERT_TRUE(done(household().rename(QStringLiteral("Mühle am Bach"))));
    EXPECT_EQ(household().undoStack()->count(), steps);
    undoNow();
    EXPECT_EQ(household().name(), QStringLiteral("mill"));
    redoNow();
    open();
    EXPECT_EQ(household().name(), QStringLiteral("Mühle am Bach"));
}

TEST_F(HouseholdVerbs, MovedEntriesAreListed)
{
    open();
    recordNow(newStack(start));
    recordNow({entry(journal::Bed{Amount{500, Unit::g}, "corrugated cardboard shredded", {}}, start + std::chrono::days{40})});
    const auto fed = recordNow({feed(300, today)});
    // Another tray, bedded the day before: the feeding now falls into it.
    const auto moved = household().movedBy({{entry(journal::Bed{Amount{500, Unit::g}, "corrugated cardboard shredded", {}}, today - std::chrono::days{1})}, {}, {}});
    EXPECT_EQ(moved, std::vector{fed});
}

TEST_F(HouseholdVerbs, OwnMaterialsAreInTheViewsTable)
{
    open();
    journal::Entry own;
    own.date.day = start;
    own.action = journal::OwnMaterial{"Trub", {}, {}, {}, {}, {}, {}};
    recordNow({own});
    EXPECT_NE(household().journal()->materials.find("trub"), nullptr);
    undoNow();
    EXPECT_EQ(household().journal()->materials.find("trub"), nullptr);
}

}

}
