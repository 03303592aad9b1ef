// What was recorded last is still being written: closing, another household, undo.
#include "tests/support/other_process.h"
#include "tests/ui/window_fixture.h"

#include "ui/window/due_list.h"

#include <QAction>

#include <algorithm>

namespace tierloam::window {
namespace {

class Leaving : public WindowTest {
protected:
    /// As one click on a line of the due list.
    void water()
    {
        advice::Advice made;
        made.stack = "Scullery";
        made.code = advice::Code::tooDry;
        made.litres = 0.35;
        Q_EMIT desk().due()->act(made);
    }
    bool told(const QString& words)
    {
        return QTest::qWaitFor([&] { return notices().join(u'\n').contains(words); }, patience);
    }
    const QString staysOpen = QStringLiteral("stays open: what was recorded last could not be written");
};

TEST_F(Leaving, TheWindowStaysOpenWhenTheLastWriteFails)
{
    openSample();
    const auto before = entries();
    {
        auto lock = tests::OtherProcess::holdingLock(path(QStringLiteral("mill.tierloam")));
        water();
        ASSERT_EQ(household().journal()->pending.size(), 1U);
        EXPECT_FALSE(window_->close());
        EXPECT_TRUE(window_->isVisible());
        EXPECT_EQ(entries(), before);
        EXPECT_TRUE(told(staysOpen)) << notices().join(u'|').toStdString();
        settle();
        EXPECT_EQ(notices().size(), 2) << "and why: " << notices().join(u'|').toStdString();
    }
    water();
    ASSERT_TRUE(written(before + 1));
    settle();
    EXPECT_FALSE(notices().join(u'\n').contains(staysOpen)) << "settled by the next that is written";
    EXPECT_TRUE(window_->close());
}

TEST_F(Leaving, WhoeverClosesAgainGoesWithoutIt)
{
    openSample();
    auto lock = tests::OtherProcess::holdingLock(path(QStringLiteral("mill.tierloam")));
    water();
    EXPECT_FALSE(window_->close());
    EXPECT_TRUE(window_->close());
}

TEST_F(Leaving, AnotherHouseholdIsNotOpenedOverAWriteThatFails)
{
    openSample();
    const QString first = household().path();
    const QString other = sampleFile(QStringLiteral("other.tierloam"));
    {
        auto lock = tests::OtherProcess::holdingLock(path(QStringLiteral("mill.tierloam")));
        water();
        EXPECT_FALSE(window_->openFile(other));
        EXPECT_EQ(household().path(), first);
        EXPECT_TRUE(told(staysOpen)) << notices().join(u'|').toStdString();
    }
    EXPECT_TRUE(window_->openFile(other));
    EXPECT_EQ(household().path(), other);
}

/// The test's household with a step on the stack; `drain` asks for one that cannot be written while another program holds the file.
class UndoWhileWriting : public Leaving {
protected:
    void openWatered(std::chrono::milliseconds busy)
    {
        busyTimeout_ = busy;
        make();
        openSample();
        before_ = entries();
        water();
        ASSERT_TRUE(written(before_ + 1));
        settle();
        ASSERT_TRUE(undo()->isEnabled());
        watered_ = household().undoStack()->undoText();
    }
    void drain()
    {
        advice::Advice made;
        made.stack = "Scullery";
        made.code = advice::Code::sumpFull;
        Q_EMIT desk().due()->act(made);
        settle();
        ASSERT_TRUE(household().stepUnderWay());
    }
    QAction* undo() { return window_->action(ui::ActionId::undo); }
    QAction* redo() { return window_->action(ui::ActionId::redo); }
    std::ptrdiff_t drains()
    {
        const auto journal = household().journal();
        return std::ranges::count_if(journal->entries, [this](const journal::Entry& entry) { return entry.date.day == household().today() && std::holds_alternative<journal::Drain>(entry.action); });
    }
    std::size_t before_ = 0;
    QString watered_;
};

TEST_F(UndoWhileWriting, ItTakesBackTheStepThatIsMeantOnceItIsWritten)
{
    openWatered(std::chrono::milliseconds{patience});
    QStringList texts{undo()->text()};
    const auto watching = QObject::connect(undo(), &QAction::changed, undo(), [&] { if (undo()->text() != texts.back()) texts << undo()->text(); });
    {
        auto lock = tests::OtherProcess::holdingLock(path(QStringLiteral("mill.tierloam")));
        drain();
        EXPECT_TRUE(undo()->isEnabled());
        EXPECT_FALSE(undo()->text().contains(watered_)) << "the step that people mean is not there yet, and it is not the one before it";
        EXPECT_FALSE(redo()->isEnabled());
        press("Ctrl+Z");
        press("Ctrl+Z"); // one at most waits
        EXPECT_EQ(entries(), before_ + 2) << "it waits";
        EXPECT_TRUE(redo()->isEnabled()) << "what was asked for can be taken back";
    }
    ASSERT_TRUE(written(before_ + 1)) << "what was asked for is done without being asked again";
    EXPECT_EQ(drains(), 0) << "what was done last is what went";
    EXPECT_TRUE(QTest::qWaitFor([&] { return redo()->isEnabled() && undo()->text().contains(watered_); }, patience));
    QObject::disconnect(watching);
    EXPECT_EQ(texts.size(), 3) << "watered, drained, watered: nothing flickers; " << texts.join(u'|').toStdString();
    press("Ctrl+Shift+Z");
    ASSERT_TRUE(written(before_ + 2));
    EXPECT_EQ(drains(), 1);
}

TEST_F(UndoWhileWriting, NotAskedForNothingIsTakenBack)
{
    openWatered(std::chrono::milliseconds{patience});
    {
        auto lock = tests::OtherProcess::holdingLock(path(QStringLiteral("mill.tierloam")));
        drain();
        press("Ctrl+Z");
        press("Ctrl+Shift+Z");
    }
    ASSERT_TRUE(written(before_ + 2));
    ASSERT_TRUE(QTest::qWaitFor([&] { return !household().stepUnderWay(); }, patience));
    settled();
    household().finishWrites();
    EXPECT_EQ(entries(), before_ + 2) << "asked for, and taken back before it was done";
}

TEST_F(UndoWhileWriting, OfAWriteThatFailsTheStepBeforeItStays)
{
    openWatered(std::chrono::milliseconds{300});
    {
        auto lock = tests::OtherProcess::holdingLock(path(QStringLiteral("mill.tierloam")));
        drain();
        press("Ctrl+Z");
        ASSERT_TRUE(QTest::qWaitFor([&] { return !household().stepUnderWay(); }, patience));
    }
    household().finishWrites();
    settled();
    EXPECT_EQ(entries(), before_ + 1) << "neither drained nor watered less";
    EXPECT_TRUE(undo()->isEnabled());
    EXPECT_TRUE(undo()->text().contains(watered_));
}

/// A setting, a picture: also those that are not seen in the journal.
TEST_F(Leaving, UndoWaitsForASettingToo)
{
    busyTimeout_ = std::chrono::milliseconds{patience};
    make();
    openSample();
    household().rename(QStringLiteral("Mill"));
    household().finishWrites();
    QAction* undo = window_->action(ui::ActionId::undo);
    ASSERT_TRUE(undo->isEnabled());
    {
        auto lock = tests::OtherProcess::holdingLock(path(QStringLiteral("mill.tierloam")));
        household().rename(QStringLiteral("Barn"));
        undo->trigger();
        EXPECT_FALSE(undo->isEnabled()) << "asked for once";
    }
    ASSERT_TRUE(QTest::qWaitFor([&] { return undo->isEnabled(); }, patience));
    household().finishWrites();
    EXPECT_EQ(household().name(), QStringLiteral("Mill"));
    EXPECT_TRUE(undo->isEnabled()) << "an undo under way does not stop the next";
}

}
}
