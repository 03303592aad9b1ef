#include "tests/ui/window_fixture.h"

#include "core/store/setting_names.h"
#include "ui/common/amount_field.h"
#include "ui/common/field_edit.h"
#include "ui/forms/new_stack.h"
#include "ui/forms/welcome.h"
#include "ui/rotation/feeding_card.h"
#include "ui/rotation/rotation_page.h"
#include "ui/shelf/form_host.h"
#include "ui/window/demo.h"
#include "ui/window/one_window.h"
#include "ui/window/recent_files.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QPointer>
#include <QSignalSpy>
#include <QStandardPaths>

namespace tierloam::window {

namespace {

void write(const QString& path, const std::string& text)
{
    QFile file{path};
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    ASSERT_EQ(file.write(text.data(), static_cast<qint64>(text.size())), static_cast<qint64>(text.size()));
}

}

TEST_F(WindowTest, FirstRunStartsTheGuidedFormInANewHousehold)
{
    show();
    auto* welcome = window_->findChild<forms::Welcome*>();
    ASSERT_NE(welcome, nullptr);
    ASSERT_TRUE(welcome->isVisible());
    EXPECT_EQ(window_->household(), nullptr);
    Q_EMIT welcome->startFirstStack();
    ASSERT_NE(window_->household(), nullptr);
    EXPECT_TRUE(QFile::exists(household().path()));
    EXPECT_TRUE(household().path().startsWith(QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation)));
    EXPECT_NE(qobject_cast<forms::NewStack*>(desk().shelf()->host()->content()), nullptr);
    ASSERT_FALSE(notices().isEmpty()) << "people are told where their file is";
    EXPECT_TRUE(notices().front().contains(household().path()));
}

TEST_F(WindowTest, AFirstStackThatWasGivenUpLeavesNoTrailOfEmptyFiles)
{
    show();
    auto* welcome = window_->findChild<forms::Welcome*>();
    Q_EMIT welcome->startFirstStack();
    const QString first = household().path();
    window_->showWelcome();
    Q_EMIT welcome->startFirstStack();
    EXPECT_EQ(household().path(), first) << "nothing was written into it";
    journal::Entries written = tests::sampleJournal();
    for (journal::Entry& entry : written) entry.id = journal::EntryId::none;
    household().recordAll(written, QStringLiteral("sample"));
    household().finishWrites();
    window_->showWelcome();
    Q_EMIT welcome->startFirstStack();
    EXPECT_NE(household().path(), first);
    EXPECT_EQ(entries(), 0U);
}

TEST_F(WindowTest, EmptyHouseholdShowsSentencesNotEmptyPages)
{
    ASSERT_TRUE(window_->createFile(path(QStringLiteral("new.tierloam"))));
    show();
    ASSERT_TRUE(QTest::qWaitFor([this] { return household().reckoning() != nullptr; }, patience));
    for (const auto page : {Desk::Page::trends, Desk::Page::journal}) {
        desk().showPage(page);
        settle();
        bool said = false;
        QWidget* shown = page == Desk::Page::trends ? static_cast<QWidget*>(desk().trends()) : desk().journal();
        for (const QLabel* label : shown->findChildren<QLabel*>()) said = said || (label->isVisible() && label->text().size() > 30);
        EXPECT_TRUE(said);
    }
}

TEST_F(WindowTest, CreatingNeverReplacesAFile)
{
    write(path(QStringLiteral("dear.tierloam")), "dear");
    EXPECT_FALSE(window_->createFile(path(QStringLiteral("dear.tierloam"))));
    QFile file{path(QStringLiteral("dear.tierloam"))};
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_EQ(file.readAll(), QByteArray{"dear"});
    EXPECT_EQ(notices().size(), 1);
}

TEST_F(WindowTest, JunkIsRefusedAndWhatWasOpenStaysOpen)
{
    openSample();
    const QString before = household().path();
    write(path(QStringLiteral("junk.tierloam")), std::string(5000, 'x'));
    EXPECT_FALSE(window_->openFile(path(QStringLiteral("junk.tierloam"))));
    EXPECT_EQ(household().path(), before);
    EXPECT_EQ(notices().size(), 1);
    EXPECT_FALSE(window_->openFile(path(QStringLiteral("absent.tierloam"))));
    EXPECT_EQ(household().path(), before);
    EXPECT_FALSE(QFile::exists(path(QStringLiteral("absent.tierloam"))));
}

TEST_F(WindowTest, RecentFilesAreRememberedNewestFirst)
{
    const QString a = sampleFile(QStringLiteral("a.tierloam")), b = sampleFile(QStringLiteral("b.tierloam"));
    ASSERT_TRUE(window_->openFile(a));
    ASSERT_TRUE(window_->openFile(b));
    EXPECT_EQ(recentFiles(*settings_), (QStringList{b, a}));
    EXPECT_EQ(lastFile(*settings_), b);
    QFile::remove(b);
    EXPECT_EQ(recentFiles(*settings_), QStringList{a});
    EXPECT_TRUE(lastFile(*settings_).isEmpty()) << "the last file is gone: the welcome page, not another file";
}

TEST_F(WindowTest, DemoIsAPrivateCopyAndNeverTheLastFile)
{
    ASSERT_TRUE(window_->openDemo()) << notices().join(u' ').toStdString();
    const QString first = household().path();
    EXPECT_TRUE(isDemo(first));
    EXPECT_TRUE(recentFiles(*settings_).isEmpty());
    EXPECT_EQ(household().name(), QStringLiteral("Millrace Cottage"));
    Day last{};
    for (const journal::Entry& entry : household().journal()->entries) last = std::max(last, entry.date.day);
    EXPECT_LE(last, tests::sampleToday());
    EXPECT_LT(daysBetween(last, tests::sampleToday()), 7);
    ASSERT_TRUE(window_->openDemo());
    EXPECT_NE(household().path(), first);
}

TEST_F(WindowTest, HouseholdIsRenamed)
{
    openSample();
    answers_.texts = {QStringLiteral("Old Mill")};
    press("Ctrl+Shift+M");
    EXPECT_TRUE(QTest::qWaitFor([&] { return window_->windowTitle() == QStringLiteral("Old Mill – Tierloam"); }, patience));
}

TEST_F(WindowTest, FileHasOneWindowWhateverTheWayItsPathIsWritten)
{
    const QString file = sampleFile();
    EXPECT_FALSE(OneWindow::isTaken(file));
    ASSERT_TRUE(window_->openFile(file));
    EXPECT_TRUE(OneWindow::isTaken(file));
    QFile::link(file, path(QStringLiteral("link.tierloam")));
    EXPECT_EQ(OneWindow::address(path(QStringLiteral("link.tierloam"))), OneWindow::address(file));
    EXPECT_EQ(OneWindow::address(folder_.path() + QStringLiteral("/./mill.tierloam")), OneWindow::address(file));
    EXPECT_NE(OneWindow::address(path(QStringLiteral("other.tierloam"))), OneWindow::address(file));
    window_->showWelcome();
    EXPECT_FALSE(OneWindow::isTaken(file));
}

TEST_F(WindowTest, WindowIsAskedToComeToTheFront)
{
    const QString file = sampleFile();
    OneWindow shown;
    shown.take(file);
    QSignalSpy asked{&shown, &OneWindow::asked};
    // The one who knocks is another program; here another thread, since this one must answer.
    bool raised = false;
    std::unique_ptr<QThread> other{QThread::create([&] { raised = OneWindow::raiseOther(file); })};
    other->start();
    EXPECT_TRUE(QTest::qWaitFor([&] { return other->isFinished(); }, patience));
    EXPECT_TRUE(raised);
    EXPECT_EQ(asked.count(), 1);
}

TEST_F(WindowTest, FormThatWasBegunIsNotLostWithoutAWord)
{
    openSample();
    desk().shelf()->openForm(QStringLiteral("Scullery"), forms::FormKind::feed);
    settle();
    QTest::keyClicks(QApplication::focusWidget(), QStringLiteral("7"));
    ASSERT_TRUE(desk().anythingTyped()) << QApplication::focusWidget()->metaObject()->className();
    answers_.decisions = {false};
    EXPECT_FALSE(window_->close());
    EXPECT_TRUE(window_->isVisible());
    answers_.decisions = {true};
    EXPECT_TRUE(window_->close());
    EXPECT_EQ(answers_.asked.size(), 2);
}

/// What is saved is proposed into a folder that is there: writing does not make one.
TEST_F(WindowTest, DialogsBeginInAFolderThatIsThere)
{
    openSample();
    const QString documents = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
    const auto proposed = [this] {
        answers_.files << QString{};
        window_->action(ui::ActionId::exportJournal)->trigger();
        return answers_.proposedFiles.isEmpty() ? QString{} : QFileInfo{answers_.proposedFiles.takeLast()}.absolutePath();
    };
    const QString aside = documents % QStringLiteral(".aside");
    const bool was = QFileInfo{documents}.isDir();
    ASSERT_TRUE(!was || QDir{}.rename(documents, aside));
    EXPECT_EQ(proposed(), QFileInfo{household().path()}.absolutePath());
    ASSERT_TRUE(QDir{}.mkpath(documents));
    EXPECT_EQ(proposed(), documents);
    QDir{}.rmdir(documents);
    EXPECT_TRUE(!was || QDir{}.rename(aside, documents));
}

TEST_F(WindowTest, ANameThatPartsFoldersIsProposedAsOneFile)
{
    openSample();
    household().rename(QStringLiteral("A/B"));
    household().finishWrites();
    settle();
    ASSERT_EQ(household().name(), QStringLiteral("A/B"));
    const QString folder = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
    const QString begins = QFileInfo{folder}.isDir() ? folder : QFileInfo{household().path()}.absolutePath();
    for (const ui::ActionId id : {ui::ActionId::exportJournal, ui::ActionId::exportCalendar}) {
        answers_.files << QString{};
        window_->action(id)->trigger();
        ASSERT_FALSE(answers_.proposedFiles.isEmpty());
        const QFileInfo proposed{answers_.proposedFiles.takeLast()};
        EXPECT_EQ(proposed.absolutePath(), begins);
        EXPECT_EQ(proposed.completeBaseName(), QStringLiteral("A_B"));
    }
    answers_.files << QString{};
    window_->saveTrends(QStringLiteral("csv"));
    ASSERT_FALSE(answers_.proposedFiles.isEmpty());
    EXPECT_EQ(QFileInfo{answers_.proposedFiles.takeLast()}.absolutePath(), begins);
}

TEST_F(WindowTest, WindowStateIsRemembered)
{
    openSample({1200, 800});
    press("Ctrl+2");
    window_->close();
    const QString file = path(QStringLiteral("mill.tierloam"));
    make();
    ASSERT_TRUE(window_->openFile(file));
    window_->restoreState();
    EXPECT_EQ(window_->size(), QSize(1200, 800));
    EXPECT_EQ(desk().page(), Desk::Page::trends);
}

// Pages go when they are built anew, with their household, and with the window: none of it moves the focus first.
TEST_F(WindowTest, ASupplyThatIsBeingTypedIsWrittenBeforeItsPageGoes)
{
    const QString other = sampleFile(QStringLiteral("other.tierloam"));
    openSample();
    const QString file = household().path();
    const auto type = [this](const char* grams) {
        desk().showPage(Desk::Page::rotation);
        settle();
        auto* field = desk().rotation()->findChild<rotation::FeedingCard*>()->findChild<ui::AmountField*>();
        field->setUnit(Unit::g);
        field->setFocus();
        field->edit()->selectAll();
        QTest::keyClicks(field->edit(), QString::fromLatin1(grams));
    };
    const auto kept = [this] {
        household().finishWrites();
        return household().kept(store::settingSupply);
    };
    type("1250");
    const QPointer<Desk> before{&desk()};
    window_->action(ui::ActionId::languageEnglish)->trigger();
    ASSERT_TRUE(QTest::qWaitFor([&] { return before.isNull(); }, patience));
    EXPECT_EQ(kept(), QStringLiteral("1.250"));
    type("730");
    ASSERT_TRUE(window_->openFile(other));
    ASSERT_TRUE(window_->openFile(file));
    EXPECT_EQ(kept(), QStringLiteral("0.730"));
    type("640");
    window_->close();
    EXPECT_EQ(kept(), QStringLiteral("0.640"));
}

}
