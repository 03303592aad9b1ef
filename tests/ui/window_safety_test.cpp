#include "tests/ui/window_fixture.h"

#include "core/household/backup_list.h"
#include "core/log/log.h"
#include "ui/journal/bulk_view.h"
#include "ui/shelf/form_host.h"
#include "ui/window/backups_view.h"
#include "ui/window/bin_view.h"
#include "ui/window/photos_view.h"

#include <QClipboard>
#include <QComboBox>
#include <QElapsedTimer>
#include <QTimer>
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

/// A file of some 40 MB: copying takes a while, and the window goes on answering.
TEST_F(WindowTest, ARestoreRunsBesideTheWindowAndCanBeCalledOff)
{
    openSample();
    const QString file = household().path();
    household().finishWrites();
    // The first change of the day: the backup that follows holds it.
    store::Photo photo{0, {}, QStringLiteral("image/jpeg"), 10, 10, {}, QByteArray{40'000'000, 'a'}};
    household().addPhoto(notes(household(), 1).front(), photo, QStringLiteral("picture"));
    household().finishWrites();
    make();
    ASSERT_TRUE(window_->openFile(file));
    show();
    household().rename(QStringLiteral("Mill"));
    household().finishWrites();
    window_->action(ui::ActionId::backups)->trigger();
    auto* view = window_->findChild<BackupsView*>();
    auto* table = view->findChild<QTreeWidget*>();
    ASSERT_TRUE(QTest::qWaitFor([&] { return !table->selectedItems().empty(); }, patience));
    const QString target = path(QStringLiteral("again.tierloam"));
    answers_.files << target << target;
    view->restoreChosen();
    EXPECT_TRUE(view->restoring()) << "not done when the click returns";
    EXPECT_FALSE(QFile::exists(target));
    button("callOffRestore", view)->click();
    ASSERT_TRUE(QTest::qWaitFor([&] { return !view->restoring(); }, patience));
    EXPECT_TRUE(view->findChild<QLabel*>(QStringLiteral("backupsLine"))->text().contains(QStringLiteral("Called off")));
    EXPECT_FALSE(QFile::exists(target));
    EXPECT_TRUE(QDir{folder_.path()}.entryList({QStringLiteral("*.part*")}, QDir::Files | QDir::Hidden).isEmpty());
    qint64 longest = 0;
    QElapsedTimer since;
    since.start();
    QTimer pulse;
    QObject::connect(&pulse, &QTimer::timeout, [&] { longest = std::max(longest, since.restart()); });
    pulse.start(5);
    view->restoreChosen();
    ASSERT_TRUE(QTest::qWaitFor([&] { return QFile::exists(target); }, patience));
    pulse.stop();
    std::printf("longest pause of the window while %lld MB were restored: %lld ms\n", static_cast<long long>(QFileInfo{target}.size() >> 20), static_cast<long long>(longest));
    ASSERT_TRUE(QTest::qWaitFor([&] { return window_->household() && household().path() == target; }, patience));
}

/// Names, notes, materials, paths and amounts of the journal: none of them in the log or the report, whatever fails.
TEST_F(WindowTest, TheReportAndTheLogHoldNothingOfTheJournal)
{
    openSample();
    journal::Entry entry = household().journal()->entries.back();
    entry.id = journal::EntryId::none;
    entry.action = journal::Feed{Amount{7319, Unit::g}, "", {}};
    entry.slot.reset();
    entry.note = "grandmother's secret";
    household().record(entry, QStringLiteral("a label of its own"));
    household().rename(QStringLiteral("Hidden Mill"));
    household().finishWrites();
    EXPECT_FALSE(window_->openFile(path(QStringLiteral("private name.tierloam"))));
    entry.stack = "Unheard-of";
    household().record(entry, QStringLiteral("refused"));
    answers_.files << path(QStringLiteral("private copy.tierloam"));
    window_->action(ui::ActionId::saveCopy)->trigger();
    household().finishWrites();
    ASSERT_TRUE(QTest::qWaitFor([] { return log::lastLines(10'000).join(u'\n').contains(QStringLiteral(" copied ms=")); }, patience));
    settle();
    window_->action(ui::ActionId::copyReport)->trigger();
    settle();
    const auto calm = window_->notices()->findChildren<QFrame*>(QStringLiteral("done"));
    EXPECT_TRUE(std::ranges::any_of(calm, [](const QFrame* each) { return !each->isHidden() && each->findChild<QLabel*>(QStringLiteral("noticeText"))->text().contains(QStringLiteral("clipboard")); }))
        << "what went well is told without the colour of warnings";
    const QString report = QGuiApplication::clipboard()->text();
    EXPECT_TRUE(report.contains(QStringLiteral("Tierloam 1.2.3")));
    EXPECT_TRUE(report.contains(QStringLiteral("schema 5")) && report.contains(QString::number(entries()) + QStringLiteral(" entries"))) << report.toStdString();
    const QString logged = log::lastLines(10'000).join(u'\n');
    for (const char* word : {" opened schema=", " open-failed problem=0", " written added=", " copied ms="}) EXPECT_TRUE(logged.contains(QString::fromLatin1(word))) << word << logged.toStdString();
    EXPECT_TRUE(report.contains(logged.section(u'\n', -1))) << "the last line is in the report";
    QStringList secrets{QStringLiteral("secret"), QStringLiteral("Hidden"), QStringLiteral("private"), QStringLiteral("7319"), QStringLiteral("Unheard"), QStringLiteral("label"), folder_.path(),
                        QStringLiteral("mill.tierloam")};
    for (const auto& each : household().journal()->entries) {
        secrets << QString::fromStdString(each.stack);
        if (!each.note.empty()) secrets << QString::fromStdString(each.note);
    }
    for (const QString& secret : secrets) {
        if (secret.isEmpty()) continue;
        EXPECT_FALSE(report.contains(secret)) << secret.toStdString();
        EXPECT_FALSE(logged.contains(secret)) << secret.toStdString();
    }
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

TEST_F(WindowTest, ACopyThatIsBeingWrittenIsNotCalledOffUnasked)
{
    openSample();
    answers_.files << path(QStringLiteral("copy.tierloam"));
    answers_.decisions << false;
    window_->action(ui::ActionId::saveCopy)->trigger();
    EXPECT_FALSE(window_->close()) << "its answer has not come yet";
    ASSERT_FALSE(answers_.asked.isEmpty());
    EXPECT_TRUE(answers_.asked.back().contains(QStringLiteral("called off"))) << answers_.asked.back().toStdString();
    ASSERT_TRUE(QTest::qWaitFor([&] { return QFile::exists(path(QStringLiteral("copy.tierloam"))) && !notices().isEmpty(); }, patience));
    const auto asked = answers_.asked.size();
    EXPECT_TRUE(window_->close());
    EXPECT_EQ(answers_.asked.size(), asked);
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
