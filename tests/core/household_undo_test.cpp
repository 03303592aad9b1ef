#include "tests/core/household_fixture.h"

#include <random>

namespace tierloam::household {

namespace {

using journal::Entries;
using journal::Entry;

class HouseholdUndo : public HouseholdTest {};

TEST_F(HouseholdUndo, OnlyWhatIsRecordedIsAStep)
{
    open();
    const Ticket ticket = household().recordAll(newStack(start), QStringLiteral("New stack"));
    EXPECT_EQ(household().undoStack()->count(), 0);
    ASSERT_TRUE(done(ticket));
    EXPECT_EQ(household().undoStack()->count(), 1);
    EXPECT_EQ(entries(), inFile());
}

TEST_F(HouseholdUndo, ADeletedEntryComesBackUnderItsOwnIdAtItsOwnPlace)
{
    open();
    recordNow(newStack(start));
    const auto id = recordNow({feed(1, today)});
    recordNow({feed(2, today)});
    const auto before = entries();
    ASSERT_TRUE(done(household().remove({id}, QStringLiteral("Delete"))));
    recordNow({feed(3, today)});
    undoNow();
    undoNow();
    EXPECT_EQ(entries(), before);
    EXPECT_EQ(inFile(), before);
    redoNow();
    EXPECT_EQ(entries().size(), before.size() - 1);
    redoNow();
    EXPECT_EQ(entries(), inFile());
    EXPECT_FALSE(household().undoStack()->canRedo());
}

TEST_F(HouseholdUndo, UndoIsDrawnAtOnce)
{
    open();
    recordNow(newStack(start));
    recordNow({feed(1, today)});
    household().undoStack()->undo();
    EXPECT_EQ(entries().size(), 3U);
    household().undoStack()->redo();
    EXPECT_EQ(entries().size(), 4U);
    household().finishWrites();
    EXPECT_EQ(entries(), inFile());
    EXPECT_EQ(household().undoStack()->index(), 2);
}

TEST_F(HouseholdUndo, AMixedEditIsOneStepBothWays)
{
    open();
    recordNow(newStack(start));
    const auto first = recordNow({feed(1, today)});
    recordNow({feed(2, today)});
    const auto before = entries();
    journal::Edit edit;
    edit.added = {feed(3, today), feed(4, start)};
    edit.replaced = {before[4]};
    edit.replaced[0].date.day = start;
    edit.replaced[0].note = "earlier";
    edit.deleted = {first};
    ASSERT_TRUE(done(household().apply(edit, QStringLiteral("Several"))));
    const auto after = entries();
    EXPECT_EQ(after.size(), before.size() + 1);
    EXPECT_EQ(after, inFile());
    for (int i = 0; i < 3; ++i) {
        undoNow();
        EXPECT_EQ(entries(), before);
        EXPECT_EQ(inFile(), before);
        redoNow();
        EXPECT_EQ(entries(), after);
        EXPECT_EQ(inFile(), after);
    }
}

TEST_F(HouseholdUndo, EntriesAndASettingAreOneStepBothWays)
{
    open();
    recordNow(newStack(start));
    const QString setting = QStringLiteral("due_put_off");
    ASSERT_TRUE(done(household().keep(setting, QStringLiteral("before"), QStringLiteral("Put off"))));
    const auto before = entries();
    const int steps = household().undoStack()->count();
    ASSERT_TRUE(done(household().recordAndKeep({feed(1, today)}, setting, QStringLiteral("after"), QStringLiteral("Done"))));
    const auto after = entries();
    EXPECT_EQ(after.size(), before.size() + 1);
    EXPECT_EQ(household().kept(setting), QStringLiteral("after"));
    EXPECT_EQ(household().undoStack()->count(), steps + 1);
    for (int i = 0; i < 2; ++i) {
        undoNow();
        EXPECT_EQ(entries(), before);
        EXPECT_EQ(inFile(), before);
        EXPECT_EQ(household().kept(setting), QStringLiteral("before"));
        redoNow();
        EXPECT_EQ(entries(), after);
        EXPECT_EQ(inFile(), after);
        EXPECT_EQ(household().kept(setting), QStringLiteral("after"));
    }
    open(); // what the file holds
    EXPECT_EQ(household().kept(setting), QStringLiteral("after"));
}

TEST_F(HouseholdUndo, WhetherAStepIsStillBeingWrittenIsTold)
{
    open();
    recordNow(newStack(start));
    std::vector<bool> told;
    QObject::connect(&household(), &Household::stepUnderWayChanged, [&] { told.push_back(household().stepUnderWay()); });
    EXPECT_FALSE(household().stepUnderWay());
    const Ticket fed = household().record(feed(1, today), QStringLiteral("Feed"));
    EXPECT_TRUE(household().stepUnderWay());
    const Ticket named = household().rename(QStringLiteral("Mill"));
    ASSERT_TRUE(done(fed));
    ASSERT_TRUE(done(named));
    EXPECT_FALSE(household().stepUnderWay());
    EXPECT_EQ(told, (std::vector{true, false}));
    household().undoStack()->undo();
    EXPECT_FALSE(household().stepUnderWay()) << "an undo is a step that is there";
    household().finishWrites();
    (void)household().record(entry(journal::Rotate{}, start - std::chrono::days{9}), QStringLiteral("Refused"));
    EXPECT_FALSE(household().stepUnderWay()) << "nothing is written";
}

TEST_F(HouseholdUndo, WhatIsAddedStandsBehindWhatMayComeBack)
{
    open();
    recordNow(newStack(start));
    const auto bed = [this](double grams) { return entry(journal::Bed{Amount{grams, Unit::g}, "corrugated cardboard shredded", {}}, start); };
    const auto second = recordNow({bed(500)});
    ASSERT_TRUE(done(household().remove({second}, QStringLiteral("Delete"))));
    // Drawn and written order must agree although the deleted row's place looks free.
    const Ticket third = household().record(bed(400), QStringLiteral("Add a tray"));
    household().undoStack()->undo();
    const auto drawn = entries();
    ASSERT_TRUE(done(third));
    household().finishWrites();
    ASSERT_EQ(entries().size(), 5U);
    EXPECT_EQ(entries()[3].id, second);
    EXPECT_EQ(drawn[3].id, second);
    EXPECT_EQ(entries(), inFile());
}

/// The journal without what a second, direct way of writing would number differently.
Entries bare(Entries entries)
{
    for (Entry& entry : entries) {
        entry.id = journal::EntryId::none;
        entry.positionInDay = 0;
    }
    return entries;
}

/// Random verbs, undo and redo, each waited for: the household always holds what the same steps give when they are applied directly, and
/// undoing brings back the very rows that were.
class HouseholdUndoProperty : public HouseholdTest, public testing::WithParamInterface<unsigned> {
protected:
    std::mt19937 random{GetParam()};

    int upTo(int most) { return std::uniform_int_distribution{0, most}(random); }
    Day anyDay() { return start + std::chrono::days{upTo(40)}; }
    Entry anyEntry()
    {
        switch (upTo(4)) {
        case 0: return entry(journal::Water{Amount{0.1 * (upTo(9) + 1), Unit::L}}, anyDay());
        case 1: return entry(journal::Note{}, anyDay());
        case 2: return entry(journal::Bed{Amount{400, Unit::g}, "corrugated cardboard shredded", {}}, anyDay());
        case 3: return entry(journal::Rotate{}, anyDay());
        default: return feed(upTo(500) + 1, anyDay());
        }
    }
    journal::Edit anyEdit(const Entries& now)
    {
        const auto any = [&] { return now[static_cast<std::size_t>(upTo(static_cast<int>(now.size()) - 1))]; };
        journal::Edit edit;
        if (now.empty()) {
            edit.added = newStack(start);
            return edit;
        }
        const int kind = upTo(9);
        if (kind < 5) edit.added.push_back(anyEntry());
        if (kind == 4 || kind == 5 || kind == 6) {
            Entry changed = any();
            if (upTo(1) == 0) changed.date.day = anyDay();
            changed.note = std::to_string(upTo(1000));
            if (now.end() != std::ranges::find(now, changed.id, &Entry::id)) changed.positionInDay = 0;
            edit.replaced.push_back(changed);
        }
        if (kind > 6) edit.deleted.push_back(any().id);
        return edit;
    }
};

TEST_P(HouseholdUndoProperty, EndsWhereTheSameStepsAppliedDirectlyEnd)
{
    open();
    recordNow(newStack(start));
    std::vector<Entries> states{entries()};   // what undo and redo walk over
    std::size_t at = 0;
    int refused = 0;
    for (int step = 0; step < 60; ++step) {
        const int kind = upTo(9);
        if (kind < 2 && at > 0) {
            undoNow();
            --at;
        } else if (kind < 4 && at + 1 < states.size()) {
            redoNow();
            ++at;
        } else {
            const auto edit = anyEdit(entries());
            // Applied directly: to what these steps have made, rows found by their ids.
            auto effect = journal::applyEdit(states[at], edit);
            const Ticket ticket = household().apply(edit, QStringLiteral("Step"));
            const bool recorded = done(ticket);
            EXPECT_EQ(recorded, !effect.refusal.has_value()) << failed_[ticket].toStdString();
            if (!recorded) {
                ++refused;
                EXPECT_FALSE(failed_[ticket].isEmpty());
            } else if (recorded_[ticket].empty() && edit.deleted.empty()) {
                EXPECT_EQ(bare(effect.after), bare(entries())); // changed nothing
            } else {
                EXPECT_EQ(bare(entries()), bare(effect.after));
                states.resize(++at);
                states.push_back(entries());
            }
        }
        ASSERT_EQ(entries(), states[at]) << "step " << step;
        ASSERT_EQ(household().undoStack()->index(), static_cast<int>(at) + 1);
    }
    EXPECT_EQ(inFile(), states[at]);
    while (at > 0) {
        undoNow();
        ASSERT_EQ(entries(), states[--at]);
    }
    while (at + 1 < states.size()) {
        redoNow();
        ASSERT_EQ(entries(), states[++at]);
    }
    EXPECT_EQ(inFile(), states[at]);
    EXPECT_TRUE(failed_.size() == static_cast<std::size_t>(refused)) << "no undo or redo failed";
    EXPECT_TRUE(household().journal()->replay.refusals.empty());
}

TEST_P(HouseholdUndoProperty, WithoutWaitingTheViewAndTheFileAgreeInTheEnd)
{
    open();
    recordNow(newStack(start));
    for (int step = 0; step < 60; ++step) {
        const int kind = upTo(9);
        if (kind < 2) household().undoStack()->undo();
        else if (kind < 4) household().undoStack()->redo();
        else household().apply(anyEdit(entries()), QStringLiteral("Step"));
        if (upTo(4) == 0) QCoreApplication::processEvents();
        ASSERT_TRUE(household().journal()->replay.refusals.empty()) << "step " << step;
    }
    household().finishWrites();
    household().finishWrites();
    EXPECT_TRUE(household().journal()->pending.empty());
    EXPECT_EQ(entries(), inFile());
    for (int more = 0; more < 200 && household().undoStack()->canUndo(); ++more) undoNow();
    EXPECT_FALSE(household().undoStack()->canUndo()) << "every step is undone or taken off";
    EXPECT_EQ(entries(), inFile());
}

INSTANTIATE_TEST_SUITE_P(Seeds, HouseholdUndoProperty, testing::Range(1U, 9U));

}

}
