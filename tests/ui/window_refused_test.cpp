// What is wanted when a household cannot be opened or written: its backups, wherever they lie, another try, and forms that are not lost by a key.
#include "tests/support/without_root.h"
#include "tests/ui/window_fixture.h"

#include "ui/forms/action_form.h"
#include "ui/forms/form_shell.h"
#include "ui/forms/new_stack.h"
#include "ui/journal/entry_series.h"
#include "ui/materials/materials_page.h"
#include "ui/shelf/form_host.h"
#include "ui/window/backups_view.h"
#include "ui/window/recent_files.h"

#include <QComboBox>
#include <QFile>
#include <QTreeWidget>

#include <sys/stat.h>

namespace tierloam::window {

namespace {

class Refused : public WindowTest {
protected:
    /// A household with a backup in a folder of its own, closed, and then damaged.
    QString damaged()
    {
        openSample();
        const QString file = household().path();
        EXPECT_TRUE(QDir{folder_.path()}.mkdir(QStringLiteral("stick")));
        answers_.files << path(QStringLiteral("stick"));
        window_->action(ui::ActionId::backupFolder)->trigger();
        household().finishWrites();
        make();
        EXPECT_TRUE(window_->openFile(file)); // a file that was there: its first change of the day makes a backup
        show();
        household().rename(QStringLiteral("Mill"));
        household().finishWrites();
        EXPECT_TRUE(QTest::qWaitFor([&] { return !QDir{path(QStringLiteral("stick"))}.entryList({QStringLiteral("*.tierloam")}, QDir::Files).isEmpty() || !QDir{path(QStringLiteral("stick"))}.entryList(QDir::Dirs | QDir::NoDotAndDotDot).isEmpty(); }, patience));
        make();
        EXPECT_FALSE(QFile::exists(path(QStringLiteral("mill backups")))) << "else they would be found beside it";
        QFile bytes{file};
        EXPECT_TRUE(bytes.open(QIODevice::ReadWrite));
        bytes.resize(bytes.size() / 2);
        bytes.close();
        QFile::remove(file + QStringLiteral("-wal"));
        QFile::remove(file + QStringLiteral("-shm"));
        return file;
    }
    int listed(BackupsView* view)
    {
        auto* table = view->findChild<QTreeWidget*>();
        return QTest::qWaitFor([&] { return table->topLevelItemCount() > 0; }, 3000) ? table->topLevelItemCount() : 0;
    }
};

}

TEST_F(Refused, BackupsInAChosenFolderAreShownWhenTheFileIsDamaged)
{
    const QString file = damaged();
    show();
    EXPECT_FALSE(window_->openFile(file));
    auto* view = window_->findChild<BackupsView*>();
    ASSERT_NE(view, nullptr) << "nobody looks for them in the folder that the damaged file names";
    EXPECT_EQ(listed(view), 1);
}

TEST_F(Refused, BackupsAreThereWithoutAHousehold)
{
    const QString file = damaged();
    show();
    ASSERT_EQ(window_->household(), nullptr);
    QAction* backups = window_->action(ui::ActionId::backups);
    ASSERT_TRUE(backups->isEnabled());
    answers_.files << QString{};
    backups->trigger(); // which one is asked for, and called off
    EXPECT_EQ(window_->findChild<BackupsView*>(), nullptr);
    answers_.files << file;
    backups->trigger();
    auto* view = window_->findChild<BackupsView*>();
    ASSERT_NE(view, nullptr);
    EXPECT_EQ(listed(view), 1);
    delete view;
    EXPECT_FALSE(window_->openFile(file));
    delete window_->findChild<BackupsView*>();
    backups->trigger(); // it is known by now which one
    EXPECT_NE(window_->findChild<BackupsView*>(), nullptr);
}

TEST_F(Refused, TheFolderFollowsTheHouseholdAndIsForgottenWithIt)
{
    openSample();
    ASSERT_TRUE(QDir{folder_.path()}.mkdir(QStringLiteral("stick")));
    answers_.files << path(QStringLiteral("stick"));
    window_->action(ui::ActionId::backupFolder)->trigger();
    const QString file = household().path();
    ASSERT_TRUE(QTest::qWaitFor([&] { return backupFolderOf(*settings_, file) == path(QStringLiteral("stick")); }, patience));
    EXPECT_TRUE(backupFolderOf(*settings_, path(QStringLiteral("other.tierloam"))).isEmpty());
    household().finishWrites();
    household().undoStack()->undo();
    EXPECT_TRUE(QTest::qWaitFor([&] { return backupFolderOf(*settings_, file).isEmpty(); }, patience)) << "taken back";
}

// A full disk is told the same way: the household is shown for reading, and a button opens it for writing once there is room.
TEST_F(Refused, WhatCouldOnlyBeReadIsTriedAgainByAButton)
{
    const QString file = sampleFile();
    ASSERT_EQ(::chmod(folder_.path().toUtf8().constData(), 0555), 0);
    ASSERT_EQ(::chmod(file.toUtf8().constData(), 0444), 0);
    show();
    {
        const tests::WithoutRoot person;
        ASSERT_TRUE(person.bound());
        ASSERT_TRUE(window_->openFile(file)) << notices().join(u' ').toStdString();
        ASSERT_TRUE(household().readOnly());
        click(button("noticeAct"));
        for (int i = 0; i < 20; ++i) QTest::qWait(10);
        ASSERT_TRUE(household().readOnly()) << "it still is";
    }
    ASSERT_EQ(::chmod(folder_.path().toUtf8().constData(), 0755), 0);
    ASSERT_EQ(::chmod(file.toUtf8().constData(), 0644), 0);
    const std::size_t before = entries();
    EXPECT_FALSE(window_->action(ui::ActionId::newStack)->isEnabled());
    click(button("noticeAct"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return window_->household() && !household().readOnly(); }, patience));
    EXPECT_EQ(entries(), before) << "nothing was written by it";
    EXPECT_TRUE(window_->action(ui::ActionId::newStack)->isEnabled());
    EXPECT_EQ(window_->notices()->findChild<QPushButton*>(QStringLiteral("noticeAct")), nullptr);
}

TEST_F(Refused, AFormForANewStackIsNotLostByAKey)
{
    openSample();
    window_->action(ui::ActionId::newStack)->trigger();
    auto* host = desk().shelf()->host();
    const auto isOpen = [&] { return qobject_cast<forms::NewStack*>(host->content()) != nullptr; };
    ASSERT_TRUE(isOpen());
    press("Esc");
    EXPECT_FALSE(isOpen()) << "nothing was typed, and nothing is asked";
    window_->action(ui::ActionId::newStack)->trigger();
    ASSERT_TRUE(isOpen());
    QTest::keyClicks(QApplication::focusWidget(), QStringLiteral("Balcony"));
    answers_.decisions << false;
    press("Esc");
    EXPECT_EQ(answers_.asked.size(), 1);
    ASSERT_TRUE(isOpen());
    answers_.decisions << false << true;
    click(host->content()->findChild<forms::FormShell*>()->cancelButton());
    ASSERT_TRUE(isOpen());
    press("Esc");
    EXPECT_FALSE(isOpen());
    EXPECT_EQ(answers_.asked.size(), 3);
}

TEST_F(Refused, NoFormIsLostByAKeyAnotherFormOrAnotherPage)
{
    openSample();
    auto* shelf = desk().shelf();
    const auto kind = [&] {
        const auto* form = qobject_cast<forms::ActionForm*>(shelf->host()->content());
        return form ? std::optional{form->kind()} : std::nullopt;
    };
    ASSERT_TRUE(shelf->openForm(QStringLiteral("Scullery"), forms::FormKind::feed));
    settle();
    QTest::keyClicks(QApplication::focusWidget(), QStringLiteral("123"));
    answers_.decisions << false;
    press("Esc");
    ASSERT_EQ(answers_.asked.size(), 1);
    EXPECT_TRUE(answers_.asked.back().contains(QStringLiteral("Scullery: Feed"))) << answers_.asked.back().toStdString();
    ASSERT_EQ(kind(), forms::FormKind::feed);
    desk().showPage(Desk::Page::journal);
    desk().showPage(Desk::Page::shelf);
    ASSERT_EQ(kind(), forms::FormKind::feed) << "it waits where it was";
    EXPECT_FALSE(shelf->openPanel(QStringLiteral("Scullery"), 1)) << "a click on the drawing asks nothing";
    EXPECT_EQ(answers_.asked.size(), 1);
    answers_.decisions << false << true;
    EXPECT_FALSE(shelf->openForm(QStringLiteral("Scullery"), forms::FormKind::water));
    ASSERT_EQ(kind(), forms::FormKind::feed);
    EXPECT_TRUE(shelf->openForm(QStringLiteral("Scullery"), forms::FormKind::water));
    EXPECT_EQ(kind(), forms::FormKind::water);
    EXPECT_EQ(answers_.asked.size(), 3);
}

TEST_F(Refused, NoEntryThatIsEditedOrRecordedInTheJournalIsLostByAKey)
{
    openSample();
    desk().showPage(Desk::Page::journal);
    settled();
    auto* page = desk().journal();
    const auto& all = household().journal()->entries;
    const auto fed = std::find_if(all.rbegin(), all.rend(), [](const journal::Entry& each) { return std::holds_alternative<journal::Feed>(each.action); });
    ASSERT_NE(fed, all.rend());
    page->choose(fed->id);
    page->editChosen();
    settled();
    QTest::keyClicks(QApplication::focusWidget(), QStringLiteral("7"));
    ASSERT_TRUE(page->editing());
    answers_.decisions << false << false << true;
    press("Esc");
    EXPECT_TRUE(page->editing());
    page->recordInRow();
    EXPECT_TRUE(page->editing());
    EXPECT_EQ(answers_.asked.size(), 2);
    page->recordInRow();
    EXPECT_EQ(answers_.asked.size(), 3);
    settled();
    auto* series = page->findChild<journal_page::EntrySeries*>();
    ASSERT_NE(series, nullptr);
    ASSERT_FALSE(page->editing());
    ASSERT_TRUE(QTest::qWaitFor([&] { return QApplication::focusWidget() && series->form()->isAncestorOf(QApplication::focusWidget()); }, 3000)) << "its first field has the keys";
    auto* kinds = series->findChild<QWidget*>(QStringLiteral("seriesKind"))->findChild<QComboBox*>();
    ASSERT_NE(kinds, nullptr);
    const int before = kinds->currentIndex();
    QTest::keyClicks(QApplication::focusWidget(), QStringLiteral("55"));
    ASSERT_TRUE(page->editing());
    answers_.decisions << false << true;
    QTest::keyClick(kinds, Qt::Key_Down);
    EXPECT_EQ(kinds->currentIndex(), before) << "the form stays, and so does what was chosen";
    EXPECT_TRUE(page->editing());
    EXPECT_EQ(answers_.asked.size(), 4);
    QTest::keyClick(kinds, Qt::Key_Down);
    EXPECT_NE(kinds->currentIndex(), before);
    EXPECT_FALSE(page->editing());
    EXPECT_EQ(answers_.asked.size(), 5);
}

TEST_F(Refused, AnOwnMaterialIsNotLostByAKey)
{
    openSample();
    desk().showPage(Desk::Page::materials);
    settled();
    auto* page = desk().materials();
    page->newMaterial();
    settled();
    QTest::keyClicks(QApplication::focusWidget(), QStringLiteral("oat husks"));
    ASSERT_TRUE(page->editing());
    answers_.decisions << false << false << true;
    press("Esc");
    EXPECT_TRUE(page->editing());
    page->newMaterial();
    EXPECT_TRUE(page->editing());
    press("Esc");
    EXPECT_FALSE(page->editing());
    EXPECT_EQ(answers_.asked.size(), 3);
}

}
