#include "tests/core/household_fixture.h"
#include "tests/support/without_root.h"

#include <QElapsedTimer>

#include <sys/stat.h>

namespace tierloam::household {

namespace {

using namespace std::chrono_literals;

class HouseholdFailures : public HouseholdTest {
protected:
    static Household::Settings impatient()
    {
        auto settings = quickSettings();
        settings.busyTimeout = 150ms;
        return settings;
    }
};

TEST_F(HouseholdFailures, NoVerbWaitsForALock)
{
    open(); // waits 5 s for a lock: longer than this test asks
    recordNow(newStack(start));
    recordNow({feed(1, today)});
    auto other = tests::OtherProcess::holdingLock(path());
    ASSERT_TRUE(other.ready());
    qint64 longest = 0;
    const auto timed = [&](auto verb) {
        QElapsedTimer timer;
        timer.start();
        verb();
        longest = std::max(longest, timer.elapsed());
    };
    std::vector<Ticket> tickets;
    for (int i = 0; i < 10; ++i) timed([&] { tickets.push_back(household().record(feed(i + 2, today), QStringLiteral("Feed"))); });
    timed([&] { tickets.push_back(household().edit([&] { auto changed = entries()[3]; changed.note = "x"; return changed; }(), QStringLiteral("Edit"))); });
    timed([&] { tickets.push_back(household().rename(QStringLiteral("Mill"))); });
    timed([&] { household().undoStack()->undo(); });
    timed([&] { household().lookForForeignWrites(); });
    timed([&] { (void)household().usual("Scullery"); });
    EXPECT_LT(longest, 50);
    EXPECT_EQ(household().journal()->pending.size(), 11U) << "drawn while it waits";
    EXPECT_TRUE(recorded_.size() == 2U && failed_.empty());
    ASSERT_TRUE(other.letGo());
    for (const Ticket ticket : tickets) EXPECT_TRUE(done(ticket));
    household().finishWrites();
    EXPECT_EQ(entries(), inFile());
}

TEST_F(HouseholdFailures, AfterALockThatLastsTheViewGoesBackAndTheReasonIsTold)
{
    open(impatient());
    recordNow(newStack(start));
    const auto before = entries();
    const int steps = household().undoStack()->count();
    auto other = tests::OtherProcess::holdingLock(path());
    ASSERT_TRUE(other.ready());
    const Ticket first = household().record(feed(1, today), QStringLiteral("Feed"));
    const Ticket second = household().record(feed(2, today), QStringLiteral("Feed"));
    EXPECT_FALSE(done(first));
    EXPECT_FALSE(done(second));
    EXPECT_TRUE(failed_[first].contains(QStringLiteral("in use"))) << failed_[first].toStdString();
    EXPECT_FALSE(failed_[second].isEmpty()) << "the one behind it is not written by itself";
    EXPECT_EQ(entries(), before);
    EXPECT_TRUE(household().journal()->pending.empty());
    EXPECT_EQ(household().undoStack()->count(), steps);
    ASSERT_TRUE(other.letGo());
    EXPECT_TRUE(done(household().record(feed(3, today), QStringLiteral("Feed")))) << "and then it goes on";
    EXPECT_EQ(entries(), inFile());
}

TEST_F(HouseholdFailures, WhoeverWaitsForTheWritesIsToldWhyTheyFailed)
{
    open(impatient());
    recordNow(newStack(start));
    EXPECT_TRUE(household().finishWrites().isEmpty());
    auto other = tests::OtherProcess::holdingLock(path());
    ASSERT_TRUE(other.ready());
    (void)household().record(feed(1, today), QStringLiteral("Feed"));
    const QStringList reasons = household().finishWrites();
    ASSERT_FALSE(reasons.isEmpty());
    EXPECT_TRUE(reasons.front().contains(QStringLiteral("in use"))) << reasons.join(u'|').toStdString();
    ASSERT_TRUE(other.letGo());
    EXPECT_TRUE(household().finishWrites().isEmpty()) << "told once";
}

TEST_F(HouseholdFailures, AFailedUndoLeavesItsStepWhereItWas)
{
    open(impatient());
    recordNow(newStack(start));
    recordNow({feed(1, today)});
    recordNow({feed(2, today)});
    undoNow();
    const auto before = entries();
    auto other = tests::OtherProcess::holdingLock(path());
    ASSERT_TRUE(other.ready());
    QUndoStack& stack = *household().undoStack();
    ASSERT_EQ(stack.index(), 2);
    stack.undo();
    stack.redo();
    stack.redo();
    EXPECT_EQ(stack.index(), 3);
    EXPECT_TRUE(QTest::qWaitFor([&] { return failed_.size() == 3; }, patience));
    EXPECT_EQ(stack.index(), 2);
    EXPECT_EQ(stack.count(), 3);
    EXPECT_EQ(entries(), before);
    ASSERT_TRUE(other.letGo());
    undoNow();
    EXPECT_EQ(stack.index(), 1);
    redoNow();
    redoNow();
    EXPECT_EQ(entries().size(), 5U);
    EXPECT_EQ(entries(), inFile());
}

TEST_F(HouseholdFailures, AFailedRenameGoesBack)
{
    open(impatient());
    auto other = tests::OtherProcess::holdingLock(path());
    ASSERT_TRUE(other.ready());
    const Ticket ticket = household().rename(QStringLiteral("Mill"));
    EXPECT_EQ(household().name(), QStringLiteral("Mill"));
    EXPECT_FALSE(done(ticket));
    EXPECT_EQ(household().name(), QStringLiteral("mill"));
}

TEST_F(HouseholdFailures, AfterTwoFailedRenamesTheNameIsThatInTheFile)
{
    open(impatient());
    ASSERT_TRUE(done(household().rename(QStringLiteral("Mill"))));
    auto other = tests::OtherProcess::holdingLock(path());
    ASSERT_TRUE(other.ready());
    const Ticket barn = household().rename(QStringLiteral("Barn"));
    const Ticket shed = household().rename(QStringLiteral("Shed"));
    EXPECT_EQ(household().name(), QStringLiteral("Shed"));
    EXPECT_FALSE(done(barn));
    EXPECT_FALSE(done(shed));
    EXPECT_EQ(household().name(), QStringLiteral("Mill"));
    ASSERT_TRUE(other.letGo());
    EXPECT_TRUE(done(household().rename(QStringLiteral("Barn"))));
    close();
    open();
    EXPECT_EQ(household().name(), QStringLiteral("Barn")) << "what was acknowledged is in the file";
}

TEST_F(HouseholdFailures, ANameAskedForTwiceIsAcknowledgedOnlyWhenItIsWritten)
{
    open(impatient());
    auto other = tests::OtherProcess::holdingLock(path());
    ASSERT_TRUE(other.ready());
    const Ticket first = household().rename(QStringLiteral("Mill"));
    const Ticket again = household().rename(QStringLiteral("Mill"));
    EXPECT_FALSE(done(first));
    EXPECT_FALSE(done(again));
    ASSERT_TRUE(other.letGo());
    const Ticket third = household().rename(QStringLiteral("Mill"));
    const Ticket fourth = household().rename(QStringLiteral("Mill"));
    EXPECT_TRUE(done(third));
    EXPECT_TRUE(done(fourth));
    EXPECT_EQ(household().undoStack()->count(), 1) << "one step, not one that changes nothing on top of it";
    undoNow();
    EXPECT_EQ(household().name(), QStringLiteral("mill"));
}

TEST_F(HouseholdFailures, AFileThatGoesAndComesBackIsToldEachTime)
{
    open();
    recordNow(newStack(start));
    const QString away = folder() + QStringLiteral("/away.tierloam");
    ASSERT_TRUE(QFile::rename(path(), away));
    const Ticket ticket = household().record(feed(1, today), QStringLiteral("Feed"));
    EXPECT_FALSE(done(ticket));
    EXPECT_TRUE(failed_[ticket].contains(QStringLiteral("moved or removed"))) << failed_[ticket].toStdString();
    EXPECT_TRUE(QTest::qWaitFor([&] { return household().readOnly(); }, 2000));
    EXPECT_EQ(notices_.size(), 1);
    EXPECT_EQ(entries().size(), 3U) << "what it holds can still be read";
    const Ticket again = household().record(feed(1, today), QStringLiteral("Feed"));
    EXPECT_FALSE(answered(again));
    EXPECT_FALSE(done(again));
    EXPECT_FALSE(QFile::exists(path())) << "no new file in its place";

    ASSERT_TRUE(QFile::rename(away, path()));
    EXPECT_TRUE(QTest::qWaitFor([&] { return !household().readOnly(); }, 3000));
    EXPECT_EQ(notices_.size(), 2);
    EXPECT_TRUE(done(household().record(feed(1, today), QStringLiteral("Feed"))));
    EXPECT_EQ(entries(), inFile());
}

TEST_F(HouseholdFailures, ARemovedFileIsNoticedWithoutAnyVerb)
{
    open();
    recordNow(newStack(start));
    ASSERT_TRUE(QFile::remove(path()));
    EXPECT_TRUE(QTest::qWaitFor([&] { return !notices_.isEmpty(); }, 2000));
    EXPECT_TRUE(household().readOnly());
}

TEST_F(HouseholdFailures, WithoutPermissionToWriteItIsShownAndTakesNothing)
{
    open();
    recordNow(newStack(start));
    close();
    ASSERT_EQ(::chmod(path().toUtf8().constData(), 0444), 0);
    ASSERT_EQ(::chmod(folder().toUtf8().constData(), 0555), 0);
    {
        const tests::WithoutRoot nobody;
        ASSERT_TRUE(nobody.bound());
        auto settings = quickSettings();
        settings.createIfAbsent = false;
        open(settings);
        EXPECT_TRUE(household().readOnly());
        EXPECT_EQ(entries().size(), 3U);
        EXPECT_TRUE(QTest::qWaitFor([&] { return notices_.size() == 1; }, patience));
        const Ticket ticket = household().record(feed(1, today), QStringLiteral("Feed"));
        EXPECT_FALSE(done(ticket));
        EXPECT_TRUE(failed_[ticket].contains(QStringLiteral("reading only"))) << failed_[ticket].toStdString();
        close();
    }
    ASSERT_EQ(::chmod(folder().toUtf8().constData(), 0755), 0);
}

TEST_F(HouseholdFailures, ANewerFileIsShownAndTakesNothing)
{
    open();
    recordNow(newStack(start));
    close();
    ASSERT_TRUE(tests::OtherProcess::run(path(), QStringLiteral("PRAGMA user_version = 1000")));
    open();
    EXPECT_TRUE(household().readOnly());
    EXPECT_EQ(entries().size(), 3U);
    EXPECT_TRUE(QTest::qWaitFor([&] { return notices_.size() == 1; }, patience));
    EXPECT_TRUE(notices_.front().contains(QStringLiteral("newer"))) << notices_.front().toStdString();
}

TEST_F(HouseholdFailures, WhatCannotBeOpenedSaysWhy)
{
    Household::Settings settings = quickSettings();
    settings.createIfAbsent = false;
    auto absent = Household::open(path(), clock, settings);
    EXPECT_EQ(std::get<store::OpenFailure>(absent).problem, store::OpenProblem::absent);
    QFile file{path()};
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write("junk");
    file.close();
    settings.createIfAbsent = true;
    auto junk = Household::open(path(), clock, settings);
    EXPECT_EQ(std::get<store::OpenFailure>(junk).problem, store::OpenProblem::notAHousehold);
    EXPECT_EQ(QFile{path()}.size(), 4);
}

}

}
