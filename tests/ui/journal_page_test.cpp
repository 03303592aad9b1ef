// The journal page as a person uses it: columns, one more like it, several in a row, thumbnails.
#include "tests/support/pictures.h"
#include "tests/ui/page_fixture.h"

#include "core/household/photo_file.h"
#include "ui/forms/action_form.h"
#include "ui/journal/entry_series.h"
#include "ui/journal/journal_model.h"
#include "ui/journal/journal_page.h"
#include "ui/journal/picture_strip.h"

#include <QImage>
#include <QMenu>
#include <QPushButton>
#include <QTableView>

#include <algorithm>

namespace tierloam::journal_page {
namespace {

class JournalPageTest : public tests::PageTest<JournalPage> {
protected:
    void SetUp() override
    {
        showPage({1000, 800});
        QApplication::setActiveWindow(page_.get());
        ASSERT_TRUE(QTest::qWaitForWindowActive(page_.get()));
        journal().table()->setFocus();
    }
    JournalPage& journal() { return *page_; }
    household::Household& household() { return *household_; }
    std::size_t entries() { return household().journal()->entries.size(); }
    void press(const char* keys) { QTest::keySequence(QApplication::focusWidget() ? QApplication::focusWidget() : page_.get(), QKeySequence{QString::fromLatin1(keys)}); }
    void settle()
    {
        QCoreApplication::sendPostedEvents();
        QCoreApplication::processEvents();
    }
    EntrySeries* series()
    {
        const auto all = journal().findChildren<EntrySeries*>();
        const auto shown = std::ranges::find_if(all, [](const EntrySeries* each) { return each->isVisible(); });
        return shown == all.end() ? nullptr : *shown;
    }
    void chooseLast(auto wanted)
    {
        const auto& all = household().journal()->entries;
        const auto found = std::find_if(all.rbegin(), all.rend(), wanted);
        ASSERT_NE(found, all.rend());
        journal().choose(found->id);
        journal().table()->setFocus();
    }
};

// Delete and Enter act on what is chosen: it must be the row in which the cursor stands.
TEST_F(JournalPageTest, TheChosenRowGoesWithTheCursorUnderCtrl)
{
    QTableView* table = journal().table();
    const int last = table->model()->rowCount() - 1;
    table->selectionModel()->setCurrentIndex(table->model()->index(3, 0), QItemSelectionModel::ClearAndSelect | QItemSelectionModel::Rows);
    for (const auto& [key, row] : {std::pair{Qt::Key_End, last}, {Qt::Key_Up, last - 1}, {Qt::Key_Home, 0}, {Qt::Key_Down, 1}}) {
        QTest::keyClick(table, key, Qt::ControlModifier);
        EXPECT_EQ(table->currentIndex().row(), row);
        const QModelIndexList chosen = table->selectionModel()->selectedRows();
        ASSERT_EQ(chosen.size(), 1);
        EXPECT_EQ(chosen.front().row(), row);
    }
    QTest::keyClick(table, Qt::Key_End, Qt::ControlModifier);
    const auto before = household().journal()->entries;
    const journal::EntryId cursor = journal().chosen().front();
    const auto oldest = std::ranges::min_element(before, {}, [](const journal::Entry& each) { return each.date.day; });
    const auto of = std::ranges::find(before, cursor, &journal::Entry::id);
    ASSERT_NE(of, before.end());
    EXPECT_EQ(of->date.day, oldest->date.day) << "newest first: the last row is the first day";
}

TEST_F(JournalPageTest, AmongSeveralChosenRowsTheCursorGoesAloneUnderCtrl)
{
    QTableView* table = journal().table();
    table->selectionModel()->setCurrentIndex(table->model()->index(3, 0), QItemSelectionModel::ClearAndSelect | QItemSelectionModel::Rows);
    QTest::keyClick(table, Qt::Key_Down, Qt::ShiftModifier);
    QTest::keyClick(table, Qt::Key_Down, Qt::ControlModifier);
    QTest::keyClick(table, Qt::Key_Down, Qt::ControlModifier);
    QTest::keyClick(table, Qt::Key_Space, Qt::ControlModifier);
    std::vector<int> rows;
    for (const QModelIndex& each : table->selectionModel()->selectedRows()) rows.push_back(each.row());
    std::ranges::sort(rows);
    EXPECT_EQ(rows, (std::vector{3, 4, 6}));
}

TEST_F(JournalPageTest, ColumnsAreChosenAndStayChosen)
{
    press("Alt+C");
    QMenu* menu = journal().columnsMenu();
    ASSERT_TRUE(menu->isVisible());
    QAction* tray = menu->findChild<QAction*>(QStringLiteral("tray"));
    ASSERT_NE(tray, nullptr);
    QTest::mouseClick(menu, Qt::LeftButton, {}, menu->actionGeometry(tray).center());
    EXPECT_TRUE(journal().table()->isColumnHidden(JournalModel::tray));
    EXPECT_FALSE(menu->findChild<QAction*>(QStringLiteral("when"))->isEnabled()) << "a line keeps its day";
    menu->hide();
    const JournalPage again{household(), theme_, *settings_};
    EXPECT_TRUE(again.table()->isColumnHidden(JournalModel::tray)) << "kept on this machine";
    EXPECT_FALSE(again.table()->isColumnHidden(JournalModel::note));
}

TEST_F(JournalPageTest, OneMoreLikeTheChosenEntryIsDatedToday)
{
    chooseLast([](const journal::Entry& entry) { return std::holds_alternative<journal::Feed>(entry.action) && entry.stack == "Scullery"; });
    const auto& all = household().journal()->entries;
    const journal::Entry like = *std::ranges::find(all, journal().chosen().front(), &journal::Entry::id);
    const std::size_t before = entries();
    press("Ctrl+J");
    settle();
    ASSERT_NE(series(), nullptr);
    ASSERT_TRUE(series()->isAncestorOf(QApplication::focusWidget())) << "one can go on typing";
    press("Return");
    ASSERT_TRUE(QTest::qWaitFor([&] { return entries() > before && household().journal()->pending.empty(); }, patience));
    settle();
    const auto& now = household().journal()->entries;
    const auto added = std::ranges::find_if(now, [&](const journal::Entry& entry) { return entry.action == like.action && entry.stack == like.stack && entry.date.day == tests::sampleToday() && entry.id != like.id; });
    ASSERT_NE(added, now.end());
    ASSERT_TRUE(QTest::qWaitFor([&] { return journal().table()->hasFocus(); }, patience)) << "it ends with one";
    EXPECT_EQ(journal().chosen(), std::vector{added->id});
}

// Of an entry that names its tray the next one names it too.
TEST_F(JournalPageTest, OneMoreOfATrayIsOfThatTray)
{
    journal::Entry look;
    look.date = {tests::sampleToday() - std::chrono::days{1}, {}};
    look.stack = "Scullery";
    look.slot = 2;
    look.action = journal::Check{centimetres(3), {}, {}, {}};
    const std::size_t before = entries();
    household().record(look, QStringLiteral("look"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return entries() == before + 1 && household().journal()->pending.empty(); }, patience));
    chooseLast([](const journal::Entry& entry) { return std::holds_alternative<journal::Check>(entry.action); });
    press("Ctrl+J");
    settle();
    press("Ctrl+Return");
    ASSERT_TRUE(QTest::qWaitFor([&] { return entries() == before + 2 && household().journal()->pending.empty(); }, patience));
    const auto& all = household().journal()->entries;
    EXPECT_EQ(std::ranges::count_if(all, [&](const journal::Entry& entry) { return entry.action == look.action && entry.slot == look.slot; }), 2);
}

TEST_F(JournalPageTest, SeveralInARowFromTheKeyboardAlone)
{
    chooseLast([](const journal::Entry& entry) { return std::holds_alternative<journal::Water>(entry.action) || std::holds_alternative<journal::Feed>(entry.action); });
    press("Ins");
    settle();
    ASSERT_NE(series(), nullptr);
    for (int round = 1; round <= 3; ++round) {
        ASSERT_TRUE(QTest::qWaitFor([&] { return QApplication::focusWidget() && series()->isAncestorOf(QApplication::focusWidget()); }, patience)) << round;
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_A, Qt::ControlModifier);
        QTest::keyClicks(QApplication::focusWidget(), QString::number(100 + round));
        press("Return");
        ASSERT_TRUE(QTest::qWaitFor([&] { return series() && series()->recordedSoFar() == round && household().journal()->pending.empty(); }, patience)) << round;
        settle();
    }
    press("Esc");
    settle();
    EXPECT_TRUE(QTest::qWaitFor([&] { return journal().table()->hasFocus(); }, patience));
    for (const double amount : {101.0, 102.0, 103.0}) {
        EXPECT_TRUE(std::ranges::any_of(household().journal()->entries, [&](const journal::Entry& entry) {
            const auto* feed = std::get_if<journal::Feed>(&entry.action);
            const auto* water = std::get_if<journal::Water>(&entry.action);
            return (feed && feed->food.value == amount) || (water && water->poured.value == amount);
        })) << amount;
    }
}

TEST_F(JournalPageTest, PicturesOfTheChosenEntryStandBelowAsThumbnails)
{
    chooseLast([](const journal::Entry& entry) { return std::holds_alternative<journal::Feed>(entry.action); });
    auto* strip = journal().findChild<journal_page::PictureStrip*>();
    ASSERT_NE(strip, nullptr);
    EXPECT_FALSE(strip->isVisible());
    QImage image{800, 500, QImage::Format_RGB32};
    image.fill(Qt::darkGreen);
    ASSERT_TRUE(image.save(folder_.filePath(QStringLiteral("tray.png"))));
    auto read = household::readPhoto(folder_.filePath(QStringLiteral("tray.png")));
    household().addPhoto(journal().chosen().front(), std::get<store::Photo>(std::move(read)), QStringLiteral("picture"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return strip->isVisible(); }, patience));
    ASSERT_EQ(strip->count(), 1);
    EXPECT_FALSE(strip->item(0)->icon().isNull());
    EXPECT_LE(strip->item(0)->icon().actualSize({500, 500}).width(), 72) << "read small";
    image.fill(Qt::darkRed);
    ASSERT_TRUE(image.save(folder_.filePath(QStringLiteral("tray.png"))));
    read = household::readPhoto(folder_.filePath(QStringLiteral("tray.png")));
    household().addPhoto(journal().chosen().front(), std::get<store::Photo>(std::move(read)), QStringLiteral("picture"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return strip->count() == 2; }, patience));
    EXPECT_NE(strip->item(0)->text(), strip->item(1)->text()) << "told apart by name";
    const auto colour = [&](int row) { return strip->item(row)->icon().pixmap(72, 72).toImage().pixelColor(20, 20); };
    EXPECT_GT(colour(0).green(), colour(0).red() + 60) << "each is its own picture";
    EXPECT_GT(colour(1).red(), colour(1).green() + 60);
    journal().table()->selectAll();
    settle();
    EXPECT_FALSE(strip->isVisible()) << "of several entries none";
}

/// Told at once: each piece told alone costs a walk through all the others, and thousands of them freeze the window.
TEST_F(JournalPageTest, WhatIsChosenStaysSoThroughAChangeAndIsChosenInOneStep)
{
    auto* selection = journal().table()->selectionModel();
    auto change = [&, said = 0]() mutable {
        int told = 0;
        const auto counted = QObject::connect(selection, &QItemSelectionModel::selectionChanged, selection, [&told] { ++told; });
        household().keep(QStringLiteral("any"), QString::number(++said), QStringLiteral("Any setting"));
        household().finishWrites();
        settle();
        QObject::disconnect(counted);
        return told;
    };
    journal().table()->selectAll();
    ASSERT_EQ(selection->selectedRows().size(), static_cast<qsizetype>(entries()));
    EXPECT_LE(change(), 4) << "emptied and filled at each change, of which a setting is two";
    EXPECT_EQ(selection->selectedRows().size(), static_cast<qsizetype>(entries()));
    // With gaps too, each row for itself.
    selection->clearSelection();
    std::vector<journal::EntryId> wanted;
    const int rows = journal().table()->model()->rowCount();
    for (const int row : {0, 2, 3, 4, rows - 1}) selection->select(journal().table()->model()->index(row, 0), QItemSelectionModel::Select | QItemSelectionModel::Rows);
    wanted = journal().chosen();
    ASSERT_EQ(wanted.size(), 5U);
    EXPECT_LE(change(), 4);
    auto now = journal().chosen();
    std::ranges::sort(now);
    std::ranges::sort(wanted);
    EXPECT_EQ(now, wanted);
}

TEST_F(JournalPageTest, FitsASmallWindowWithLargeLetters)
{
    for (const int scale : {100, 150}) {
        theme_.setFontScale(scale);
        theme_.apply();
        page_->resize(880, 580);
        settle();
        for (const char* name : {"columnsButton", "recordInRowButton", "editButton", "deleteButton"}) {
            const auto* button = page_->findChild<QPushButton*>(QString::fromLatin1(name));
            ASSERT_NE(button, nullptr) << name;
            EXPECT_TRUE(button->isVisible()) << name;
            EXPECT_LE(button->mapTo(page_.get(), QPoint{button->width(), 0}).x(), page_->width()) << name << ' ' << scale;
            EXPECT_GE(button->width(), button->minimumSizeHint().width()) << name << ' ' << scale;
        }
        EXPECT_LE(page_->minimumSizeHint().width(), 880) << scale << ": it would widen the window";
        press("Ins");
        settle();
        tests::keepPicture(page_->grab().toImage(), QStringLiteral("journal-series-%1").arg(scale));
        EXPECT_TRUE(series() && series()->isVisible());
        press("Esc");
        settle();
    }
    theme_.setFontScale(100);
    theme_.apply();
}

}
}
