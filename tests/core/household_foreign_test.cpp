#include "tests/core/household_fixture.h"

#include "core/store/setting_names.h"

namespace tierloam::household {

namespace {

class HouseholdForeign : public HouseholdTest {
protected:
    /// As the command line would, from a connection of its own.
    void writeFromOutside(const journal::Edit& edit)
    {
        auto file = store::HouseholdFile::open(path(), store::HouseholdFile::Mode::mustExist);
        ASSERT_TRUE(std::holds_alternative<std::unique_ptr<store::HouseholdFile>>(file));
        const auto written = std::get<std::unique_ptr<store::HouseholdFile>>(file)->apply(edit);
        ASSERT_TRUE(std::holds_alternative<std::vector<journal::EntryId>>(written));
    }
    void setFromOutside(const QString& value)
    {
        auto file = store::HouseholdFile::open(path(), store::HouseholdFile::Mode::mustExist);
        ASSERT_TRUE(std::holds_alternative<std::unique_ptr<store::HouseholdFile>>(file));
        ASSERT_FALSE(std::get<std::unique_ptr<store::HouseholdFile>>(file)->setSetting(supply, value));
    }
    /// What somebody chose here, in place of what was there.
    void choose(const QString& value) { ASSERT_TRUE(done(household().keep(supply, value, QStringLiteral("Kitchen supply")))); }

    const QString supply = QString{store::settingSupply};

    bool heardFromOutside() const
    {
        return std::ranges::any_of(changes_, [](const Changes& changes) { return changes.fromOutside; });
    }
};

TEST_F(HouseholdForeign, AWriteOfAnotherProgramIsSeenWithinTwoSeconds)
{
    open();
    const auto id = recordNow(newStack(start));
    changes_.clear();
    ASSERT_TRUE(tests::OtherProcess::run(path(), QStringLiteral("UPDATE entries SET note = 'from outside' WHERE id = %1").arg(static_cast<qint64>(id))));
    EXPECT_TRUE(QTest::qWaitFor([&] { return heardFromOutside(); }, 2000));
    EXPECT_EQ(entries().front().note, "from outside");
    EXPECT_EQ(changes_.back().ids, std::vector{id});
}

TEST_F(HouseholdForeign, OwnWritesAreNoNews)
{
    open();
    recordNow(newStack(start));
    recordNow({feed(1, today)});
    household().lookForForeignWrites();
    household().finishWrites();
    EXPECT_FALSE(heardFromOutside());
}

/// Not seen yet: the next look at the file would have told.
TEST_F(HouseholdForeign, AnEditDoesNotWriteOverWhatAnotherProgramMadeOfTheEntry)
{
    auto settings = quickSettings();
    settings.lookEvery = std::chrono::minutes{10};
    open(settings);
    recordNow(newStack(start));
    const auto fed = recordNow({feed(1, today)});
    const journal::Entry mine = entries().back();
    ASSERT_EQ(mine.id, fed);
    journal::Entry theirs = mine;
    theirs.action = journal::Feed{Amount{500, Unit::g}, "", {}};
    writeFromOutside({{}, {theirs}, {}});
    journal::Entry noted = mine;
    noted.note = "looked at";
    const Ticket ticket = household().edit(noted, QStringLiteral("Edit"));
    EXPECT_FALSE(done(ticket));
    EXPECT_TRUE(failed_[ticket].contains(QStringLiteral("Another program has changed"))) << failed_[ticket].toStdString();
    EXPECT_EQ(inFile().back().action, theirs.action);
    household().lookForForeignWrites();
    household().finishWrites();
    EXPECT_EQ(entries(), inFile());
}

/// What was looked at and found superfluous is not what stands there now.
TEST_F(HouseholdForeign, ADeletionDoesNotWriteOverWhatAnotherProgramMadeOfTheEntry)
{
    auto settings = quickSettings();
    settings.lookEvery = std::chrono::minutes{10};
    open(settings);
    recordNow(newStack(start));
    const auto fed = recordNow({feed(1, today)});
    journal::Entry theirs = entries().back();
    theirs.action = journal::Feed{Amount{500, Unit::g}, "", {}};
    writeFromOutside({{}, {theirs}, {}});
    const Ticket ticket = household().remove({fed}, QStringLiteral("Delete"));
    EXPECT_FALSE(done(ticket));
    EXPECT_TRUE(failed_[ticket].contains(QStringLiteral("Another program has changed"))) << failed_[ticket].toStdString();
    ASSERT_EQ(inFile().size(), 4U);
    EXPECT_EQ(inFile().back().action, theirs.action);
    // Once their version has been seen, it can be deleted.
    household().lookForForeignWrites();
    household().finishWrites();
    ASSERT_EQ(entries(), inFile());
    EXPECT_TRUE(done(household().remove({fed}, QStringLiteral("Delete"))));
    EXPECT_EQ(inFile().size(), 3U);
}

TEST_F(HouseholdForeign, TakingBackAnEntryDoesNotWriteOverWhatAnotherProgramMadeOfIt)
{
    auto settings = quickSettings();
    settings.lookEvery = std::chrono::minutes{10};
    open(settings);
    recordNow(newStack(start));
    recordNow({feed(1, today)});
    journal::Entry theirs = entries().back();
    theirs.note = "theirs";
    writeFromOutside({{}, {theirs}, {}});
    undoNow();
    EXPECT_EQ(failed_.size(), 1U);
    ASSERT_EQ(inFile().size(), 4U);
    EXPECT_EQ(inFile().back().note, "theirs");
    household().lookForForeignWrites();
    household().finishWrites();
    EXPECT_EQ(entries(), inFile());
}

/// Nor is it deleted again by redo.
TEST_F(HouseholdForeign, ADeletionDoneAgainDoesNotWriteOverWhatAnotherProgramMadeOfTheEntry)
{
    auto settings = quickSettings();
    settings.lookEvery = std::chrono::minutes{10};
    open(settings);
    recordNow(newStack(start));
    const auto fed = recordNow({feed(1, today)});
    ASSERT_TRUE(done(household().remove({fed}, QStringLiteral("Delete"))));
    undoNow();
    redoNow();
    undoNow();
    ASSERT_TRUE(failed_.empty()) << "nobody else wrote";
    journal::Entry theirs = entries().back();
    theirs.note = "theirs";
    writeFromOutside({{}, {theirs}, {}});
    redoNow();
    EXPECT_EQ(failed_.size(), 1U);
    ASSERT_EQ(inFile().size(), 4U);
    EXPECT_EQ(inFile().back().note, "theirs");
}

TEST_F(HouseholdForeign, StepsWhoseRowsChangedAreDroppedWithANotice)
{
    open();
    recordNow(newStack(start));
    recordNow({feed(1, today)});
    const auto fed = recordNow({feed(2, today)});
    recordNow({feed(3, today)});
    undoNow();
    QUndoStack& stack = *household().undoStack();
    ASSERT_EQ(stack.count(), 4);
    ASSERT_EQ(stack.index(), 3);
    writeFromOutside({{}, {}, {fed}});
    household().lookForForeignWrites();
    household().finishWrites();
    EXPECT_TRUE(heardFromOutside());
    ASSERT_EQ(stack.count(), 3);
    EXPECT_EQ(stack.index(), 2);
    ASSERT_EQ(notices_.size(), 1);
    EXPECT_TRUE(notices_.front().contains(QStringLiteral("Another program"))) << notices_.front().toStdString();
    // The others still work, both ways.
    redoNow();
    undoNow();
    undoNow();
    EXPECT_EQ(entries().size(), 3U);
    EXPECT_EQ(entries(), inFile());
    EXPECT_TRUE(failed_.empty());
}

TEST_F(HouseholdForeign, NewEntriesFromOutsideDropNoSteps)
{
    open();
    recordNow(newStack(start));
    writeFromOutside({{feed(1, today)}, {}, {}});
    household().lookForForeignWrites();
    household().finishWrites();
    EXPECT_EQ(entries().size(), 4U);
    EXPECT_EQ(household().undoStack()->count(), 1);
    EXPECT_TRUE(notices_.isEmpty());
}

TEST_F(HouseholdForeign, AVerbOnAJournalThatChangedMeanwhileIsLookedAtAgain)
{
    open();
    recordNow(newStack(start));
    // Retired from outside; the window does not know of it yet when it feeds.
    writeFromOutside({{entry(journal::Retire{}, today - std::chrono::days{1})}, {}, {}});
    const Ticket ticket = household().record(feed(1, today), QStringLiteral("Feed"));
    EXPECT_FALSE(done(ticket));
    EXPECT_TRUE(failed_[ticket].contains(QStringLiteral("retired"))) << failed_[ticket].toStdString();
    household().lookForForeignWrites();
    household().finishWrites();
    EXPECT_EQ(entries(), inFile());
    EXPECT_EQ(entries().size(), 4U);
}

TEST_F(HouseholdForeign, AVerbThatWasAskedForBeforeTheNewsArrivedIsLookedAtAgain)
{
    open();
    recordNow(newStack(start));
    writeFromOutside({{entry(journal::Retire{}, today - std::chrono::days{1})}, {}, {}});
    // The writer reads the news first, but the one who asks has not heard of it.
    household().lookForForeignWrites();
    const Ticket ticket = household().record(feed(1, today), QStringLiteral("Feed"));
    household().finishWrites();
    EXPECT_TRUE(failed_.contains(ticket));
    EXPECT_EQ(entries(), inFile());
    EXPECT_EQ(entries().size(), 4U);
}

TEST_F(HouseholdForeign, AnUndoThatHasBecomeImpossibleIsToldAndTakenOff)
{
    open();
    recordNow(newStack(start));
    // Their stack is needed by what another program wrote: undoing its set-up would strand it.
    writeFromOutside({{feed(1, today)}, {}, {}});
    household().lookForForeignWrites();
    household().finishWrites();
    undoNow();
    EXPECT_EQ(failed_.size(), 1U);
    household().finishWrites();
    EXPECT_EQ(household().undoStack()->count(), 0);
    EXPECT_EQ(entries().size(), 4U);
}

TEST_F(HouseholdForeign, TakingBackAChoiceDoesNotWriteOverWhatAnotherProgramChose)
{
    open();
    choose(QStringLiteral("2"));
    choose(QStringLiteral("3"));
    ASSERT_EQ(household().undoStack()->count(), 2);
    setFromOutside(QStringLiteral("9"));
    // Asked for before it is heard of: the file refuses.
    undoNow();
    household().finishWrites();
    EXPECT_EQ(failed_.size(), 1U);
    // Heard of: what touched it can no longer be undone, and that is said.
    household().lookForForeignWrites();
    household().finishWrites();
    EXPECT_EQ(household().kept(supply), QStringLiteral("9"));
    EXPECT_EQ(household().undoStack()->count(), 0);
    ASSERT_EQ(notices_.size(), 1);
    EXPECT_TRUE(notices_.front().contains(QStringLiteral("Another program"))) << notices_.front().toStdString();
    // What is chosen now counts, and is taken back to what the other program wrote.
    choose(QStringLiteral("4"));
    undoNow();
    EXPECT_EQ(household().kept(supply), QStringLiteral("9"));
}

TEST_F(HouseholdForeign, PendingEntriesStayDrawnOnTopOfForeignOnes)
{
    open();
    recordNow(newStack(start));
    writeFromOutside({{feed(1, today)}, {}, {}});
    household().lookForForeignWrites();
    const Ticket ticket = household().record(feed(2, today), QStringLiteral("Feed"));
    EXPECT_EQ(entries().size(), 4U);
    ASSERT_TRUE(done(ticket));
    household().finishWrites();
    EXPECT_EQ(entries().size(), 5U);
    EXPECT_EQ(entries(), inFile());
}

TEST_F(HouseholdForeign, ANameGivenFromOutsideIsTaken)
{
    open();
    ASSERT_TRUE(tests::OtherProcess::run(path(), QStringLiteral("INSERT INTO settings VALUES ('name', 'Outside', 'x')")));
    EXPECT_TRUE(QTest::qWaitFor([&] { return household().name() == QStringLiteral("Outside"); }, 2000));
    EXPECT_TRUE(changes_.back().settings);
}

TEST_F(HouseholdForeign, APendingNameStaysOnTopOfForeignSettings)
{
    open();
    ASSERT_TRUE(tests::OtherProcess::run(path(), QStringLiteral("INSERT INTO settings VALUES ('name', 'Outside', 'x'), ('hemisphere', 'south', 'x')")));
    QStringList shown;
    const QObject here;
    QObject::connect(&household(), &Household::changed, &here, [&] { shown << household().name(); });
    // The writer reads the file first, and only then writes the name.
    household().lookForForeignWrites();
    const Ticket ticket = household().rename(QStringLiteral("Mill"));
    ASSERT_TRUE(done(ticket));
    household().finishWrites();
    EXPECT_EQ(shown, QStringList(shown.size(), QStringLiteral("Mill"))) << "at no moment is it taken back";
    EXPECT_EQ(household().name(), QStringLiteral("Mill"));
    EXPECT_EQ(household().kept(QStringLiteral("hemisphere")), QStringLiteral("south"));
}

TEST_F(HouseholdForeign, ANameGivenFromOutsideWhileAnEntryIsPendingIsTaken)
{
    open();
    recordNow(newStack(start));
    ASSERT_TRUE(tests::OtherProcess::run(path(), QStringLiteral("INSERT INTO settings VALUES ('name', 'Outside', 'x')")));
    household().lookForForeignWrites();
    const Ticket ticket = household().record(feed(1, today), QStringLiteral("Feed"));
    ASSERT_TRUE(done(ticket));
    household().finishWrites();
    EXPECT_EQ(household().name(), QStringLiteral("Outside"));
    EXPECT_TRUE(std::ranges::any_of(changes_, [](const Changes& changes) { return changes.fromOutside && changes.settings; }));
}

}

}
