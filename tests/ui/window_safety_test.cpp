#include "tests/ui/window_fixture.h"

#include "core/household/backup_list.h"
#include "ui/journal/bulk_view.h"
#include "ui/shelf/form_host.h"
#include "ui/window/backups_view.h"
#include "ui/window/bin_view.h"
#include "ui/window/photos_view.h"

#include <QComboBox>
#include <QFile>
#include <QImage>
#include <QListWidget>
#include <QTreeWidget>

namespace tierloam::window {

namespace {

/// Entries that can go without another standing on them.
std::vector<journal::EntryId> notes(household::Household& household, int count)
{
    std::vector<journal::EntryId> ids;
    const auto journal = household.journal();
    for (const auto& entry : journal->entries)
        if (std::holds_alternative<journal::Feed>(entry.action) && static_cast<int>(ids.size()) < count) ids.push_back(entry.id);
    return ids;
}

}

TEST_F(WindowTest, DeletedEntriesCanBePutBackAfterARestart)
{
    openSample();
    const std::size_t all = entries();
    const auto ids = notes(household(), 2);
    ASSERT_EQ(ids.size(), 2U);
    household().remove(ids, QStringLiteral("Delete"));
    ASSERT_TRUE(written(all - 2));
    const QString file = household().path();
    make(); // another start of the program
    ASSERT_TRUE(window_->openFile(file));
    show();
    EXPECT_FALSE(household().undoStack()->canUndo());
    window_->action(ui::ActionId::deletedEntries)->trigger();
    auto* bin = window_->findChild<BinView*>();
    ASSERT_NE(bin, nullptr);
    auto* table = bin->findChild<QTreeWidget*>();
    ASSERT_TRUE(QTest::qWaitFor([&] { return table->topLevelItemCount() == 2; }, patience));
    table->selectAll();
    click(button("putBack", bin));
    ASSERT_TRUE(written(all));
    ASSERT_TRUE(QTest::qWaitFor([&] { return table->topLevelItemCount() == 0; }, patience));
    household().undoStack()->undo();
    ASSERT_TRUE(written(all - 2)) << "putting back can be undone";
    bin->close();
}

TEST_F(WindowTest, ABackupIsRestoredToANewFileAndOpened)
{
    openSample();
    const std::size_t all = entries();
    const QString file = household().path();
    make();
    ASSERT_TRUE(window_->openFile(file)); // a file that was there: its first change of the day makes a backup
    show();
    household().rename(QStringLiteral("Mill"));
    household().finishWrites();
    household().remove(notes(household(), 1), QStringLiteral("Delete"));
    ASSERT_TRUE(written(all - 1));
    window_->action(ui::ActionId::backups)->trigger();
    auto* view = window_->findChild<BackupsView*>();
    ASSERT_NE(view, nullptr);
    auto* table = view->findChild<QTreeWidget*>();
    ASSERT_TRUE(QTest::qWaitFor([&] { return table->topLevelItemCount() == 1 && !table->selectedItems().empty(); }, patience));
    EXPECT_EQ(table->topLevelItem(0)->text(2).toStdString(), QLocale{}.toString(static_cast<int>(all)).toStdString());
    EXPECT_FALSE(table->topLevelItem(0)->text(3).isEmpty());
    answers_.files << path(QStringLiteral("again.tierloam"));
    click(button("restoreBackup", view));
    ASSERT_TRUE(QTest::qWaitFor([&] { return window_->household() && household().path().endsWith(QStringLiteral("again.tierloam")); }, patience));
    EXPECT_EQ(entries(), all);
    EXPECT_EQ(household().name(), QStringLiteral("Mill"));
    // The household's own file is as it was.
    ASSERT_TRUE(window_->openFile(file));
    EXPECT_EQ(entries(), all - 1);
}

TEST_F(WindowTest, ARestoreNeverReplacesAFile)
{
    openSample();
    const QString target = path(QStringLiteral("there.tierloam"));
    QFile there{target};
    ASSERT_TRUE(there.open(QIODevice::WriteOnly));
    there.write("mine");
    there.close();
    const auto why = household::restoreBackup(household().path(), target);
    ASSERT_TRUE(why);
    EXPECT_EQ(QFile{target}.size(), 4);
}

TEST_F(WindowTest, ADamagedFileShowsItsBackups)
{
    openSample();
    const QString file = household().path();
    make();
    ASSERT_TRUE(window_->openFile(file));
    household().rename(QStringLiteral("Mill"));
    household().finishWrites();
    make();
    QFile bytes{file};
    ASSERT_TRUE(bytes.open(QIODevice::ReadWrite));
    ASSERT_TRUE(bytes.resize(bytes.size() / 2));
    bytes.close();
    show();
    EXPECT_FALSE(window_->openFile(file));
    EXPECT_EQ(window_->household(), nullptr) << "never a silent empty household";
    ASSERT_FALSE(notices().isEmpty());
    EXPECT_TRUE(notices().front().contains(QStringLiteral("damaged")));
    auto* view = window_->findChild<BackupsView*>();
    ASSERT_NE(view, nullptr);
    auto* table = view->findChild<QTreeWidget*>();
    ASSERT_TRUE(QTest::qWaitFor([&] { return table->topLevelItemCount() == 1; }, patience));
    view->close();
}

TEST_F(WindowTest, ACopyIsSavedAndTold)
{
    openSample();
    answers_.files << path(QStringLiteral("copy.tierloam"));
    window_->action(ui::ActionId::saveCopy)->trigger();
    ASSERT_TRUE(QTest::qWaitFor([&] { return QFile::exists(path(QStringLiteral("copy.tierloam"))) && !notices().isEmpty(); }, patience));
    const std::size_t all = entries();
    ASSERT_TRUE(window_->openFile(path(QStringLiteral("copy.tierloam"))));
    EXPECT_EQ(entries(), all);
}

TEST_F(WindowTest, TheFolderForBackupsCanBeChosenAndThatUndone)
{
    openSample();
    const QTemporaryDir stick;
    answers_.files << stick.path();
    window_->action(ui::ActionId::backupFolder)->trigger();
    household().finishWrites();
    EXPECT_EQ(household().backupFolder(), stick.path());
    EXPECT_TRUE(household().backupsLieIn().startsWith(stick.path()));
    ASSERT_TRUE(household().undoStack()->canUndo());
    household().undoStack()->undo();
    household().finishWrites();
    EXPECT_TRUE(household().backupFolder().isEmpty());
}

TEST_F(WindowTest, ChangingTogetherTouchesOnlyWhatSharedTheOldValue)
{
    openSample();
    const auto before = household().journal()->entries;
    std::vector<journal::EntryId> feeds;
    for (const auto& entry : before)
        if (std::holds_alternative<journal::Feed>(entry.action)) feeds.push_back(entry.id);
    ASSERT_GE(feeds.size(), 3U);
    auto* view = new journal_page::BulkView{household(), feeds, window_.get()};
    view->show();
    auto* field = view->findChild<QComboBox*>(QStringLiteral("bulkField"));
    field->setCurrentIndex(1); // amount
    auto* values = view->findChild<QComboBox*>(QStringLiteral("bulkBefore"));
    const std::string old = values->currentData().toString().toStdString();
    auto* after = view->findChild<QLineEdit*>(QStringLiteral("bulkAfter"));
    QPushButton* change = button("bulkChange", view);
    EXPECT_FALSE(change->isEnabled()) << "nothing would change";
    after->setText(QStringLiteral("much"));
    EXPECT_FALSE(change->isEnabled());
    EXPECT_TRUE(view->findChild<QLabel*>(QStringLiteral("bulkLine"))->text().contains(QStringLiteral("much")));
    after->setText(QStringLiteral("333 g"));
    ASSERT_TRUE(change->isEnabled());
    click(change);
    ASSERT_TRUE(QTest::qWaitFor([&] { return household().journal()->pending.empty() && household().undoStack()->canUndo(); }, patience));
    int together = 0;
    const auto now = household().journal()->entries;
    ASSERT_EQ(now.size(), before.size());
    for (std::size_t i = 0; i < now.size(); ++i) {
        if (now[i] == before[i]) continue;
        ++together;
        EXPECT_EQ(household::bulkValueOf(before[i], household::BulkField::amount), old);
        EXPECT_EQ(household::bulkValueOf(now[i], household::BulkField::amount), "333 g");
    }
    EXPECT_EQ(together, household::bulkValues(before, feeds, household::BulkField::amount)[old]);
    household().undoStack()->undo(); // one step takes all of it back
    ASSERT_TRUE(QTest::qWaitFor([&] { return household().journal()->entries == before; }, patience));
}

TEST_F(WindowTest, APictureIsAddedToTheChosenEntryAndTakenOutByUndo)
{
    openSample();
    QImage image{QSize{400, 300}, QImage::Format_RGB32};
    image.fill(0xff406020);
    ASSERT_TRUE(image.save(path(QStringLiteral("p.png"))));
    desk().showPage(Desk::Page::journal);
    settle();
    desk().journal()->choose(notes(household(), 1).front());
    settle();
    click(button("photosButton"));
    auto* view = window_->findChild<PhotosView*>();
    ASSERT_NE(view, nullptr);
    auto* list = view->findChild<QListWidget*>();
    auto* line = view->findChild<QLabel*>(QStringLiteral("photosLine"));
    answers_.files << path(QStringLiteral("nothing.png")) << path(QStringLiteral("p.png"));
    click(button("photoAdd", view));
    EXPECT_TRUE(line->text().contains(QStringLiteral("nothing.png"))) << line->text().toStdString();
    click(button("photoAdd", view));
    ASSERT_TRUE(QTest::qWaitFor([&] { return list->count() == 1; }, patience));
    household().undoStack()->undo();
    ASSERT_TRUE(QTest::qWaitFor([&] { return list->count() == 0; }, patience));
    view->close();
}

}
