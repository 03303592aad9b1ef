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

TEST_F(Leaving, UndoWaitsForWhatIsBeingWritten)
{
    busyTimeout_ = std::chrono::milliseconds{patience};
    make();
    openSample();
    const auto before = entries();
    water();
    ASSERT_TRUE(written(before + 1));
    settle();
    QAction* undo = window_->action(ui::ActionId::undo);
    ASSERT_TRUE(undo->isEnabled());
    {
        auto lock = tests::OtherProcess::holdingLock(path(QStringLiteral("mill.tierloam")));
        advice::Advice made;
        made.stack = "Scullery";
        made.code = advice::Code::sumpFull;
        Q_EMIT desk().due()->act(made);
        settle();
        ASSERT_TRUE(household().stepUnderWay());
        EXPECT_FALSE(undo->isEnabled()) << "the step that people mean is not there yet";
        EXPECT_TRUE(undo->text().contains(QStringLiteral("Saving"))) << undo->text().toStdString();
        undo->trigger();
        EXPECT_EQ(entries(), before + 2);
    }
    ASSERT_TRUE(written(before + 2));
    ASSERT_TRUE(QTest::qWaitFor([&] { return undo->isEnabled(); }, patience));
    undo->trigger();
    ASSERT_TRUE(written(before + 1));
    const auto drains = [this] {
        const auto journal = household().journal();
        return std::ranges::count_if(journal->entries, [this](const journal::Entry& entry) { return entry.date.day == household().today() && std::holds_alternative<journal::Drain>(entry.action); });
    };
    EXPECT_EQ(drains(), 0) << "what was done last is what went";
    EXPECT_TRUE(household().undoStack()->canRedo());
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
        EXPECT_FALSE(undo->isEnabled());
    }
    ASSERT_TRUE(QTest::qWaitFor([&] { return undo->isEnabled(); }, patience));
    undo->trigger();
    household().finishWrites();
    EXPECT_EQ(household().name(), QStringLiteral("Mill"));
    EXPECT_TRUE(undo->isEnabled()) << "an undo under way does not stop the next";
}

}
}
