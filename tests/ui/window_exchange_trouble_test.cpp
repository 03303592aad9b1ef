#include "tests/support/other_process.h"
#include "tests/support/without_root.h"
#include "tests/ui/exchange_fixture.h"

#include <QCheckBox>
#include <QTableView>

#include <cerrno>

#include <sys/syscall.h>
#include <unistd.h>

namespace {

thread_local bool noSync = false;    ///< of this thread alone: the household's writer goes on

}

/// The disk refuses to confirm what was written while a test says so.
extern "C" int fsync(int file)
{
    if (!noSync) return static_cast<int>(::syscall(SYS_fsync, file));
    errno = EIO;
    return -1;
}

// Tables that come in while something goes wrong or something else happens at the same moment.
namespace tierloam::window {

class ExchangeTrouble : public ExchangeTest {
protected:
    /// Two views whose files hold a row at fault, with the buttons that save it and the words that tell.
    struct Saving {
        QWidget* view;
        const char *button, *words;
    };
    std::vector<Saving> bothWithFaults()
    {
        openSample();
        write(path(QStringLiteral("bad.csv")), "date,stack,action,slot,amount,unit,item,detail,note\n2031-05-99,Scullery,feed,,200,g,,,\n");
        JournalSheetView* sheet = importing("bad.csv");
        ReadingsView* readings = readingsOf("time,bed C,air C\n2031-05-01 00:00,20.5,18.25\nbroken,1.5,1.5\n");
        return {{sheet, "saveFaults", "sheetSummary"}, {readings, "readingsFaults", "readingsSummary"}};
    }
    /// Read, for the stack that is open.
    ReadingsView* readingsOf(const std::string& rows)
    {
        write(path(QStringLiteral("log.csv")), rows);
        answers_.files = {path(QStringLiteral("log.csv"))};
        window_->action(ui::ActionId::importReadings)->trigger();
        auto* view = newest<ReadingsView>();
        EXPECT_TRUE(QTest::qWaitFor([&] { return view->findChild<QComboBox*>(QStringLiteral("loggerColumn1")) != nullptr; }, patience));
        settle();
        chooseStack(view);
        EXPECT_TRUE(canImport(view, "readingsImport")) << text(view, "readingsSummary").toStdString();
        return view;
    }
    void chooseStack(ReadingsView* view)
    {
        choose(view, "readingsStack", view->findChild<QComboBox*>(QStringLiteral("readingsStack"))->findData(QStringLiteral("Scullery")));
    }
};

TEST_F(ExchangeTrouble, RowsAtFaultAreNotSaidToBeWrittenWhenTheDiskDidNotConfirmThem)
{
    for (const auto& [view, name, words] : bothWithFaults()) {
        const QString target = path(QStringLiteral("faults.csv"));
        write(target, "before");
        answers_.files = {target};
        noSync = true;
        click(button(name, view));
        noSync = false;
        EXPECT_TRUE(text(view, words).contains(target) && text(view, words).contains(qt_error_string(EIO))) << text(view, words).toStdString();
        EXPECT_EQ(read(target), "before");
        answers_.files = {target};
        click(button(name, view));
        EXPECT_NE(read(target).find("date,"), 0U) << "the next time it is there";
        EXPECT_NE(read(target), "before");
        EXPECT_TRUE(text(view, words).contains(QStringLiteral("written to"))) << text(view, words).toStdString();
    }
}

TEST_F(ExchangeTrouble, AFolderThatCannotBeWrittenIsNamedWithTheReason)
{
    const auto both = bothWithFaults();
    ASSERT_TRUE(QDir{folder_.path()}.mkdir(QStringLiteral("shut")));
    ASSERT_TRUE(QFile::setPermissions(path(QStringLiteral("shut")), QFileDevice::ReadOwner | QFileDevice::ExeOwner));
    for (const auto& [view, name, words] : both) {
        const QString target = path(QStringLiteral("shut/faults.csv"));
        answers_.files = {target};
        {
            const tests::WithoutRoot person;
            ASSERT_TRUE(person.bound());
            click(button(name, view));
        }
        EXPECT_TRUE(text(view, words).contains(target) && text(view, words).contains(qt_error_string(EACCES))) << text(view, words).toStdString();
        EXPECT_FALSE(QFile::exists(target));
    }
}

// A box that is ticked, or another row in the journal, while the file is read again: what is planned is the new sheet.
TEST_F(ExchangeTrouble, TheSeparatorThatIsShownIsTheOneThatPartsTheRows)
{
    openSample();
    write(path(QStringLiteral("two.csv")), "date,stack,action;amount,unit\n2031-05-01,Scullery,feed;211,g\n");
    JournalSheetView* view = importing("two.csv");
    auto* separator = view->findChild<QComboBox*>(QStringLiteral("sheetSeparator"));
    const QAbstractItemModel* rows = view->findChild<QTableView*>(QStringLiteral("sheetTable"))->model();
    const int own = rows->columnCount() - 4; // parted by commas
    const auto part = [&](char with, const std::function<void()>& meanwhile, int columns) {
        choose(view, "sheetSeparator", separator->findData(static_cast<int>(with)));
        meanwhile();
        EXPECT_TRUE(QTest::qWaitFor([&] { return rows->columnCount() == own + columns; }, patience)) << "parted by " << with;
        EXPECT_EQ(separator->currentData().toInt(), static_cast<int>(with));
    };
    ASSERT_EQ(separator->currentData().toInt(), static_cast<int>(','));
    part(';', [&] { view->findChild<QCheckBox*>(QStringLiteral("leaveOutTwice"))->toggle(); }, 2);
    part(',', [&] {
        journal::Entry water;
        water.date = {tests::sampleToday(), {}};
        water.stack = "Scullery";
        water.action = journal::Water{{317, Unit::mL}};
        household().record(water, QStringLiteral("water"));
    }, 4);
    EXPECT_TRUE(QTest::qWaitFor([&] { return view->plan() != nullptr; }, patience)) << "and it is planned";
    view->close();
}

TEST_F(ExchangeTrouble, ReadingsThatCannotBeComparedForAMomentSayWhyAndAreTriedOnceMore)
{
    openSample();
    ReadingsView* view = readingsOf("time,bed C\n2031-05-01 00:00,20.5\n");
    ASSERT_TRUE(tests::OtherProcess::run(household().path(), QStringLiteral("ALTER TABLE logged_readings RENAME TO away")));
    chooseStack(view);
    EXPECT_TRUE(QTest::qWaitFor([&] { return text(view, "readingsSummary").contains(QStringLiteral("Choose the stack again")); }, 3000)) << text(view, "readingsSummary").toStdString();
    EXPECT_TRUE(text(view, "readingsSummary").contains(QStringLiteral("mill.tierloam"))) << "with the reason: " << text(view, "readingsSummary").toStdString();
    EXPECT_FALSE(view->findChild<QPushButton*>(QStringLiteral("readingsImport"))->isEnabled());
    EXPECT_FALSE(view->findChild<QPushButton*>(QStringLiteral("readingsCallOff"))->isVisible()) << "nothing is under way";
    ASSERT_TRUE(tests::OtherProcess::run(household().path(), QStringLiteral("ALTER TABLE away RENAME TO logged_readings")));
    chooseStack(view);
    EXPECT_TRUE(canImport(view, "readingsImport")) << text(view, "readingsSummary").toStdString();
    EXPECT_EQ(view->plan()->fresh, 1U);
}

}
