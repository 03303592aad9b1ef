// The windows beside that of the program as they are met with a small screen, large letters and a keyboard alone: what has the focus is in sight, Enter
// presses it, what is wrong with a row is read whole, and nothing stays told that has been taken back.
#include "tests/ui/language_fixture.h"
#include "tests/ui/sight.h"

#include "ui/common/file_dialog.h"
#include "ui/common/menu_letters.h"
#include "ui/common/panels.h"
#include "ui/exchange/journal_sheet_view.h"
#include "ui/paper/labels_view.h"
#include "ui/window/rail.h"

#include <QComboBox>
#include <QFile>
#include <QFileDialog>
#include <QHeaderView>
#include <QListWidget>
#include <QMenu>
#include <QMenuBar>
#include <QScrollArea>
#include <QScrollBar>
#include <QTreeView>

#include <map>

namespace tierloam::window {

using exchange_view::JournalSheetView;

namespace {

class WindowDialogs : public LanguageTest {
protected:
    void openSampleAt(int scale)
    {
        ASSERT_NO_FATAL_FAILURE(speak("en", scale));
        ASSERT_NO_FATAL_FAILURE(openSample({1000, 640}));
    }
    /// By keys alone, in the least room.
    JournalSheetView* importing(const QByteArray& text)
    {
        QFile file{path(QStringLiteral("in.csv"))};
        EXPECT_TRUE(file.open(QIODevice::WriteOnly) && file.write(text) == text.size());
        file.close();
        answers_.files = {file.fileName()};
        QApplication::setActiveWindow(window_.get());
        press("Ctrl+I");
        auto* view = window_->findChildren<JournalSheetView*>().value(0);
        if (!view) return nullptr;
        EXPECT_NE(view->findChild<QLabel*>(QStringLiteral("sheetFile"))->property("tone").toString(), QStringLiteral("brick")) << "while it is being read nothing has failed";
        view->resize(1000, 640);
        QApplication::setActiveWindow(view);
        EXPECT_TRUE(QTest::qWaitForWindowActive(view));
        EXPECT_TRUE(QTest::qWaitFor([&] { return view->plan() != nullptr || view->findChild<QLabel*>(QStringLiteral("sheetFile"))->property("tone") == QStringLiteral("brick"); }, patience));
        settled();
        return view;
    }
    QWidget* focused() { return QApplication::focusWidget(); }
    void key(int key) { QTest::keyClick(focused() ? focused() : window_.get(), static_cast<Qt::Key>(key)); }
    bool reach(const char* name)
    {
        for (int n = 0; n < 40; ++n) {
            if (focused() && focused()->objectName() == QLatin1StringView{name}) return true;
            key(Qt::Key_Tab);
        }
        return false;
    }
};

const QByteArray header = "date,stack,action,slot,amount,unit,item,detail,note\n";

/// Rows whose first cell has less room than its words need.
QStringList cutReasons(const QTableView& table)
{
    QStringList cut;
    for (int row = 1; row < table.model()->rowCount(); ++row) {
        const QModelIndex index = table.model()->index(row, 0);
        const QRect room = table.visualRect(index).adjusted(12, 0, -8, 0);
        const QRect needed = table.fontMetrics().boundingRect(QRect{0, 0, room.width(), 10000}, Qt::TextWordWrap, index.data().toString());
        if (needed.width() > room.width() || needed.height() > room.height()) cut << index.data().toString();
    }
    return cut;
}

/// Pages and what the file holds, where they lie over each other or over the foot.
QStringList overlaps(const QWidget& rail)
{
    QStringList found;
    QList<QWidget*> shown;
    for (QWidget* each : rail.findChildren<QWidget*>(Qt::FindDirectChildrenOnly))
        if (each->isVisible() && (qobject_cast<QLabel*>(each) || qobject_cast<QPushButton*>(each))) shown << each;
    for (qsizetype a = 0; a < shown.size(); ++a) {
        if (shown[a]->geometry().bottom() > rail.height() || shown[a]->height() < shown[a]->fontMetrics().height()) found << QStringLiteral("cut: ") + shown[a]->objectName();
        for (qsizetype b = a + 1; b < shown.size(); ++b)
            if (shown[a]->geometry().intersects(shown[b]->geometry())) found << shown[a]->objectName() + u'/' + shown[b]->objectName();
    }
    return found;
}

}

TEST_F(WindowDialogs, AnImportIsMadeByKeysAlone)
{
    ASSERT_NO_FATAL_FAILURE(openSampleAt(100));
    const std::size_t before = entries();
    JournalSheetView* view = importing(header + "2031-05-01,Scullery,feed,,211,g,,,\n");
    ASSERT_NE(view, nullptr);
    ASSERT_EQ(focused()->objectName(), QStringLiteral("sheetImport")) << "nothing is asked, so the next thing to do has the focus";
    EXPECT_EQ(entries(), before);
    key(Qt::Key_Return);
    EXPECT_TRUE(written(before + 1)) << "Enter presses the button that has the focus";
}

TEST_F(WindowDialogs, EscapeLeavesNothingBehind)
{
    ASSERT_NO_FATAL_FAILURE(openSampleAt(100));
    const std::size_t before = entries();
    JournalSheetView* view = importing(header + "2031-05-01,Scullery,feed,,211,g,,,\n");
    ASSERT_NE(view, nullptr);
    key(Qt::Key_Escape);
    settled();
    EXPECT_TRUE(window_->findChildren<JournalSheetView*>().isEmpty());
    EXPECT_EQ(entries(), before);
    EXPECT_TRUE(household().journal()->pending.empty());
    EXPECT_FALSE(household().undoStack()->canUndo());
}

// A window without that rule: the test above would find it.
TEST_F(WindowDialogs, PlantedWindowDoesNotAnswerEnter)
{
    ASSERT_NO_FATAL_FAILURE(openSampleAt(100));
    for (const bool ours : {true, false}) {
        std::unique_ptr<QDialog> view{ours ? new ui::View{window_.get()} : new QDialog{window_.get()}};
        auto* button = ui::makeButton(QStringLiteral("Go"), ui::Tone::plain, view.get());
        int pressed = 0;
        QObject::connect(button, &QPushButton::clicked, button, [&] { ++pressed; });
        view->show();
        QApplication::setActiveWindow(view.get());
        ASSERT_TRUE(QTest::qWaitForWindowActive(view.get()));
        button->setFocus();
        key(Qt::Key_Return);
        EXPECT_EQ(pressed, ours ? 1 : 0);
    }
}

TEST_F(WindowDialogs, WhatIsWrongWithARowIsReadWhole)
{
    for (const int scale : {100, 200}) {
        ASSERT_NO_FATAL_FAILURE(openSampleAt(scale));
        JournalSheetView* view = importing(header + "2031-05-01,Scullery,feed,,211,g,,,\n2031-05-99,Scullery,feed,,200,g,,,\n2031-05-01,Scullery,feed,9,200,g,,,\n");
        ASSERT_NE(view, nullptr);
        auto* table = view->findChild<QTableView*>(QStringLiteral("sheetTable"));
        ASSERT_EQ(table->model()->rowCount(), 4);
        EXPECT_TRUE(cutReasons(*table).isEmpty()) << scale << ": " << cutReasons(*table).join(u'\n').toStdString();
        EXPECT_GE(table->viewport()->height(), table->rowHeight(0) + table->rowHeight(1)) << "rows, not the head alone";
        table->setRowHeight(2, table->verticalHeader()->defaultSectionSize());
        table->setColumnWidth(0, 120);
        EXPECT_FALSE(cutReasons(*table).isEmpty()) << "planted";
        view->close();
        settled();
    }
}

TEST_F(WindowDialogs, TheFocusStaysInSightWhileAnswersBringMore)
{
    ASSERT_NO_FATAL_FAILURE(openSampleAt(200));
    JournalSheetView* view = importing("Day;Bin;Scraps;Weight;Comments\n3/4/2031;Scullery;kitchen mix;1,250;peel\n6/4/2031;Cellar;kitchen mix;lots;\n");
    ASSERT_NE(view, nullptr);
    EXPECT_EQ(focused()->objectName(), QStringLiteral("askDecimal")) << "the first thing that is asked";
    for (const char* question : {"askDecimal", "askOrder", "askAction", "askUnit"}) {
        ASSERT_TRUE(reach(question)) << question;
        key(Qt::Key_Down);
        settled();
        EXPECT_TRUE(QTest::qWaitFor([&] { return tests::wholeInSight(focused()); }, patience)) << question;
    }
    ASSERT_TRUE(QTest::qWaitFor([&] { return view->plan()->entries.size() == 1; }, patience));
    settled();
    EXPECT_TRUE(tests::wholeInSight(focused())) << "the last answer made the rows known, which takes room";
    for (int height = 620; height >= 480; height -= 20) {
        view->resize(1000, height);
        EXPECT_TRUE(QTest::qWaitFor([&] { return tests::wholeInSight(focused()); }, 5000)) << "in less room: " << height;
    }
    view->resize(1000, 640);
    settled();
    for (const char* column : {"column0", "column3", "column4"}) {
        ASSERT_TRUE(reach(column)) << column;
        settled();
        EXPECT_TRUE(tests::wholeInSight(focused())) << column;
    }
    auto* middle = view->findChild<QScrollArea*>(QStringLiteral("sheetMiddle"));
    middle->verticalScrollBar()->setValue(0);
    EXPECT_FALSE(tests::wholeInSight(focused())) << "planted: scrolled away";
}

TEST_F(WindowDialogs, AFileThatIsNoTableIsToldAndAsksForNothing)
{
    ASSERT_NO_FATAL_FAILURE(openSampleAt(100));
    for (const auto& [text, words] : {std::pair{QByteArray{}, "empty"}, {QByteArray(300, '\0'), "zero bytes"}}) {
        JournalSheetView* view = importing(text);
        ASSERT_NE(view, nullptr);
        auto* told = view->findChild<QLabel*>(QStringLiteral("sheetFile"));
        EXPECT_TRUE(told->text().contains(QLatin1StringView{words}) && told->text().contains(QStringLiteral("in.csv"))) << told->text().toStdString();
        EXPECT_TRUE(tests::canBeRead(told));
        EXPECT_EQ(told->property("tone").toString(), QStringLiteral("brick"));
        for (const auto* list : view->findChildren<QComboBox*>()) EXPECT_FALSE(list->isVisible()) << list->objectName().toStdString();
        EXPECT_FALSE(view->findChild<QPushButton*>(QStringLiteral("toReadings"))->isVisible());
        view->close();
        settled();
    }
    JournalSheetView* view = importing(header);
    ASSERT_NE(view, nullptr);
    EXPECT_TRUE(view->findChild<QLabel*>(QStringLiteral("sheetSummary"))->text().contains(QStringLiteral("no rows")));
    EXPECT_TRUE(view->findChild<QComboBox*>(QStringLiteral("column0"))->isVisible()) << "a table asks";
}

TEST_F(WindowDialogs, ATakenBackImportIsNoLongerTold)
{
    ASSERT_NO_FATAL_FAILURE(openSampleAt(100));
    const std::size_t before = entries();
    ASSERT_NE(importing(header + "2031-05-01,Scullery,feed,,211,g,,,\n"), nullptr);
    key(Qt::Key_Return);
    ASSERT_TRUE(written(before + 1));
    ASSERT_TRUE(QTest::qWaitFor([&] { return !notices().isEmpty() && household().undoStack()->canUndo(); }, patience));
    EXPECT_TRUE(notices().back().contains(QStringLiteral("in.csv"))) << "told while it stands";
    QApplication::setActiveWindow(window_.get());
    press("Ctrl+Z");
    ASSERT_TRUE(written(before));
    EXPECT_TRUE(notices().isEmpty()) << notices().join(u'\n').toStdString();
}

TEST_F(WindowDialogs, PagesStandCloserRatherThanOverEachOther)
{
    ASSERT_NO_FATAL_FAILURE(openSampleAt(200));
    auto* rail = window_->findChild<Rail*>();
    ASSERT_NE(rail, nullptr);
    EXPECT_TRUE(overlaps(*rail).isEmpty()) << overlaps(*rail).join(u'\n').toStdString();
    window_->notices()->show(Notices::Kind::notice, QStringLiteral("Something to know about the household, which takes its lines."));
    settled();
    EXPECT_TRUE(overlaps(*rail).isEmpty()) << overlaps(*rail).join(u'\n').toStdString();
    window_->notices()->clear();
    settled();
    EXPECT_TRUE(overlaps(*rail).isEmpty());
    rail->setFixedHeight(rail->height() / 2);
    settled();
    EXPECT_FALSE(overlaps(*rail).isEmpty()) << "planted: less than the names need";
}

TEST_F(WindowDialogs, ListsOfFilesHaveTheRoomTheirLettersNeed)
{
    ASSERT_NO_FATAL_FAILURE(openSampleAt(200));
    QFileDialog dialog{window_.get(), QString{}, folder_.path(), QStringLiteral("Households (*.tierloam)")};
    dialog.setOption(QFileDialog::DontUseNativeDialog);
    dialog.setViewMode(QFileDialog::Detail);
    ui::fitFileDialog(dialog);
    dialog.show();
    auto* list = dialog.findChild<QTreeView*>(QStringLiteral("treeView"));
    EXPECT_TRUE(QTest::qWaitFor([&] { return list->model()->rowCount(list->rootIndex()) > 0; }, patience));
    settled();
    const auto cutColumns = [&] {
        int cut = 0;
        for (int column = 0; column < list->header()->count(); ++column)
            if (!list->header()->isSectionHidden(column)) cut += list->columnWidth(column) < std::max(list->header()->sectionSizeHint(column), static_cast<QAbstractItemView*>(list)->sizeHintForColumn(column));
        return cut;
    };
    EXPECT_EQ(cutColumns(), 0);
    list->header()->resizeSection(0, 55); // as it comes without being fitted
    EXPECT_EQ(cutColumns(), 1) << "planted";
}

TEST_F(WindowDialogs, LabelsAreTickedInBoxesThatGrowAndShownFromTheFirst)
{
    int before = 0;
    for (const int scale : {100, 200}) {
        ASSERT_NO_FATAL_FAILURE(openSampleAt(scale));
        press("Ctrl+Shift+P");
        auto* view = window_->findChild<paper::LabelsView*>();
        ASSERT_NE(view, nullptr);
        ASSERT_TRUE(QTest::qWaitForWindowExposed(view));
        settled();
        auto* list = view->findChild<QListWidget*>(QStringLiteral("labelTrays"));
        const int box = list->style()->pixelMetric(QStyle::PM_IndicatorHeight, nullptr, list);
        EXPECT_GE(box, before * 2);
        EXPECT_GE(list->sizeHintForRow(0), box);
        before = box;
        const auto areas = view->findChildren<QAbstractScrollArea*>();
        const auto pages = std::ranges::find_if(areas, [](const QAbstractScrollArea* area) { return area->inherits("QGraphicsView"); });
        ASSERT_NE(pages, areas.end());
        EXPECT_EQ((*pages)->verticalScrollBar()->value(), (*pages)->verticalScrollBar()->minimum()) << "the first labels";
        view->close();
        settled();
    }
}

// Alt and a letter lead to one entry of each menu, in every language.
TEST_F(WindowDialogs, NoTwoEntriesOfAMenuAnswerOneLetter)
{
    const auto clashes = [](const QMenu& menu) {
        std::map<QKeySequence, QStringList> letters;
        for (const QAction* entry : menu.actions())
            if (entry->isVisible() && !entry->isSeparator()) letters[QKeySequence::mnemonic(entry->text())] << entry->text();
        QStringList found;
        for (const auto& [letter, who] : letters)
            if (!letter.isEmpty() && who.size() > 1) found << who.join(QStringLiteral(" / "));
        return found;
    };
    for (const char* language : {"en", "de", "es", "fr"}) {
        ASSERT_NO_FATAL_FAILURE(speak(language));
        ASSERT_NO_FATAL_FAILURE(openSample());
        for (QMenu* menu : window_->menuBar()->findChildren<QMenu*>()) {
            Q_EMIT menu->aboutToShow();
            EXPECT_TRUE(clashes(*menu).isEmpty()) << language << ' ' << menu->title().toStdString() << ": " << clashes(*menu).join(u'\n').toStdString();
        }
    }
    QMenu planted;
    for (const char* entry : {"&One", "Tw&o", "Oh && &on", "0"}) planted.addAction(QString::fromLatin1(entry));
    EXPECT_EQ(clashes(planted).size(), 1) << "as they come";
    ui::keepLettersApart(&planted);
    Q_EMIT planted.aboutToShow();
    EXPECT_TRUE(clashes(planted).isEmpty());
    EXPECT_EQ(planted.actions()[1]->text(), QStringLiteral("&Two"));
    EXPECT_EQ(planted.actions()[2]->text(), QStringLiteral("O&h && on")) << "and what is shown as a sign stays one";
}

}
