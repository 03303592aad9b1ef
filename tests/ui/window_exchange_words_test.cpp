#include "tests/ui/exchange_fixture.h"

#include <QScrollBar>
#include <QTableView>

// Words of a table that the program does not know are asked, each once, before anything is written; and the table stays where people are in it.
namespace tierloam::window {

class ExchangeWords : public ExchangeTest {
protected:
    void chooseText(QWidget* view, const char* list, const QString& answer)
    {
        auto* box = view->findChild<QComboBox*>(QString::fromLatin1(list));
        ASSERT_NE(box, nullptr) << list;
        const int at = box->findText(answer);
        ASSERT_GE(at, 0) << answer.toStdString();
        choose(view, list, at);
    }
    QString chosen(QWidget* view, const char* list) { return view->findChild<QComboBox*>(QString::fromLatin1(list))->currentText(); }
    bool planned(JournalSheetView* view, std::size_t rows)
    {
        return QTest::qWaitFor([&] { return view->plan() && view->plan()->entries.size() == rows; }, patience);
    }
};

TEST_F(ExchangeWords, AreAskedOnceEachBeforeAnythingIsWrittenAndRememberedForTheNextSuchTable)
{
    openSample();
    const std::size_t before = entries();
    write(path(QStringLiteral("diary.csv")), "day,bin,what was done,amount,unit\n2031-05-01,the big one,tipped in,211,g\n2031-05-02,The big one,tipped in,213,g\n2031-05-03,Scullery,rained,,\n");
    JournalSheetView* view = importing("diary.csv");
    ASSERT_TRUE(QTest::qWaitFor([&] { return view->findChild<QComboBox*>(QStringLiteral("askActionWord1")) != nullptr; }, patience));
    EXPECT_EQ(view->findChild<QComboBox*>(QStringLiteral("askStackWord1")), nullptr) << "one name in two spellings";
    EXPECT_TRUE(view->plan()->entries.empty());
    EXPECT_FALSE(button("sheetImport", view)->isEnabled());
    EXPECT_TRUE(text(view, "sheetSummary").contains(QStringLiteral("answer"))) << text(view, "sheetSummary").toStdString();
    auto* first = view->findChild<QComboBox*>(QStringLiteral("askStackWord0"));
    EXPECT_TRUE(first->accessibleName().contains(QStringLiteral("«the big one»"))) << first->accessibleName().toStdString();
    EXPECT_TRUE(first->accessibleDescription().contains(QStringLiteral("line 2"))) << first->accessibleDescription().toStdString();
    EXPECT_TRUE(first->hasFocus()) << "that is where people go on";
    chooseText(view, "askStackWord0", QStringLiteral("Scullery"));
    chooseText(view, "askActionWord0", QStringLiteral("Fed"));
    EXPECT_FALSE(button("sheetImport", view)->isEnabled()) << "one word is open";
    chooseText(view, "askActionWord1", QStringLiteral("leave out"));
    ASSERT_TRUE(canImport(view, "sheetImport")) << text(view, "sheetSummary").toStdString();
    EXPECT_EQ(view->plan()->entries.size(), 2U);
    EXPECT_EQ(view->plan()->count(exchange::RowFate::unwanted), 1U);
    EXPECT_EQ(entries(), before);
    click(button("sheetImport", view));
    ASSERT_TRUE(written(before + 2));
    // The next month's table asks only what is new in it.
    write(path(QStringLiteral("next.csv")), "day,bin,what was done,amount,unit\n2031-04-25,the big one,tipped in,215,g\n2031-04-26,Scullery,hosed,500,mL\n2031-04-26,Scullery,rained,,\n");
    view = importing("next.csv");
    ASSERT_TRUE(QTest::qWaitFor([&] { return view->findChild<QComboBox*>(QStringLiteral("askActionWord2")) != nullptr; }, patience));
    EXPECT_EQ(chosen(view, "askStackWord0"), QStringLiteral("Scullery"));
    EXPECT_EQ(chosen(view, "askActionWord0"), QStringLiteral("Fed"));
    EXPECT_EQ(chosen(view, "askActionWord1"), QStringLiteral("Please choose"));
    EXPECT_EQ(chosen(view, "askActionWord2"), QStringLiteral("leave out"));
    chooseText(view, "askActionWord1", QStringLiteral("Watered"));
    ASSERT_TRUE(canImport(view, "sheetImport"));
    ASSERT_TRUE(planned(view, 2));
    click(button("sheetImport", view));
    ASSERT_TRUE(written(before + 4));
    household().undoStack()->undo();
    EXPECT_TRUE(written(before + 2)) << "one undo takes the import back, not what was remembered";
}

TEST_F(ExchangeWords, ANameCanBeANewStackAndAllElseBeLeftOutByTheKeyboard)
{
    openSample();
    const std::size_t before = entries();
    write(path(QStringLiteral("diary.csv")), "day,bin,action,amount,unit\n2031-05-01,Attic,feed,211,g\n2031-05-02,Barn,feed,213,g\n2031-05-03,Loft,feed,215,g\n");
    JournalSheetView* view = importing("diary.csv");
    ASSERT_TRUE(QTest::qWaitFor([&] { return view->findChild<QComboBox*>(QStringLiteral("askStackWord2")) != nullptr; }, patience));
    chooseText(view, "askStackWord0", QStringLiteral("a new stack"));
    EXPECT_TRUE(view->findChild<QLabel*>(QStringLiteral("newStackWords"))->isVisible());
    QPushButton* rest = button("leaveOutRest", view);
    rest->setFocus(Qt::TabFocusReason);
    QTest::keyClick(rest, Qt::Key_Space);
    EXPECT_EQ(chosen(view, "askStackWord2"), QStringLiteral("leave out"));
    EXPECT_FALSE(rest->isVisible());
    EXPECT_NE(QApplication::focusWidget(), nullptr) << "and the focus does not go with the button";
    ASSERT_TRUE(canImport(view, "sheetImport")) << text(view, "sheetSummary").toStdString();
    ASSERT_TRUE(planned(view, 3)) << "set up, bedded, fed";
    EXPECT_TRUE(text(view, "sheetSummary").contains(QStringLiteral("new stack"))) << text(view, "sheetSummary").toStdString();
    click(button("sheetImport", view));
    ASSERT_TRUE(written(before + 3));
    const auto* attic = household().journal()->replay.stack("Attic");
    ASSERT_NE(attic, nullptr);
    EXPECT_EQ(attic->on(*parseDay("2031-05-01"))->trays(), 1);
    EXPECT_EQ(household().journal()->replay.stack("Barn"), nullptr);
}

TEST_F(ExchangeWords, WhatWasFedIsAskedOnceItIsKnownToBeAFeeding)
{
    openSample();
    write(path(QStringLiteral("diary.csv")), "day,bin,action,amount,unit,what of\n2031-05-01,Scullery,tipped in,211,g,veg peels\n2031-05-02,Scullery,tipped in,213,g,coffee grounds\n");
    JournalSheetView* view = importing("diary.csv");
    auto* column = view->findChild<QComboBox*>(QStringLiteral("column5"));
    column->setCurrentIndex(column->findData(static_cast<int>(exchange::SheetField::item)));
    Q_EMIT column->activated(column->currentIndex());
    ASSERT_TRUE(QTest::qWaitFor([&] { return view->findChild<QComboBox*>(QStringLiteral("askActionWord0")) != nullptr; }, patience));
    EXPECT_EQ(view->findChild<QComboBox*>(QStringLiteral("askMaterialWord0")), nullptr);
    view->findChild<QComboBox*>(QStringLiteral("askActionWord0"))->setFocus(Qt::TabFocusReason);
    chooseText(view, "askActionWord0", QStringLiteral("Fed"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return view->findChild<QComboBox*>(QStringLiteral("askMaterialWord0")) != nullptr; }, patience));
    settle();
    EXPECT_EQ(chosen(view, "askActionWord0"), QStringLiteral("Fed"));
    EXPECT_TRUE(view->findChild<QComboBox*>(QStringLiteral("askActionWord0"))->hasFocus()) << "one question more does not carry people away";
    EXPECT_FALSE(button("sheetImport", view)->isEnabled());
    chooseText(view, "askMaterialWord0", QStringLiteral("kitchen mix"));
    ASSERT_TRUE(planned(view, 2));
    ASSERT_TRUE(canImport(view, "sheetImport"));
    view->close();
}

TEST_F(ExchangeWords, AColumnFullOfOtherThingsIsSaidToBeOne)
{
    openSample();
    std::string rows = "day,bin,action,amount,unit\n";
    for (int i = 0; i < 60; ++i) rows += "2031-05-01,remark " + std::to_string(i) + ",feed,211,g\n";
    write(path(QStringLiteral("diary.csv")), rows);
    JournalSheetView* view = importing("diary.csv");
    ASSERT_TRUE(QTest::qWaitFor([&] { return view->findChild<QComboBox*>(QStringLiteral("askStackWord39")) != nullptr; }, patience));
    EXPECT_EQ(view->findChild<QComboBox*>(QStringLiteral("askStackWord40")), nullptr);
    bool told = false;
    for (const QLabel* each : view->findChildren<QLabel*>()) told = told || (each->isVisible() && each->text().contains(QStringLiteral("Does another column hold the stack?")));
    EXPECT_TRUE(told);
    // The lists go with their question.
    auto* column = view->findChild<QComboBox*>(QStringLiteral("column1"));
    column->setCurrentIndex(column->findData(static_cast<int>(exchange::SheetField::note)));
    Q_EMIT column->activated(column->currentIndex());
    EXPECT_TRUE(QTest::qWaitFor([&] { return view->findChild<QComboBox*>(QStringLiteral("askStackWord0")) == nullptr; }, patience));
    view->close();
}

TEST_F(ExchangeWords, WithoutAStackARowsTableCanBeginOne)
{
    show();
    write(path(QStringLiteral("Balcony.csv")), "day,action,amount,unit\n2031-05-01,feed,211,g\n");
    JournalSheetView* view = importing("Balcony.csv");
    chooseText(view, "askStack", QStringLiteral("A new stack, «Balcony»"));
    ASSERT_TRUE(canImport(view, "sheetImport")) << text(view, "sheetSummary").toStdString();
    answers_.files = {path(QStringLiteral("made.tierloam"))};
    click(button("sheetImport", view));
    ASSERT_NE(window_->household(), nullptr);
    EXPECT_TRUE(written(3));
}

TEST_F(ExchangeWords, AnAnswerLeavesTheTableWherePeopleAreInIt)
{
    openSample();
    std::string rows = "day,bin,action,amount,unit,a note that is rather long so that there is something to scroll to\n";
    for (int i = 0; i < 50; ++i) rows += "3/4/2031,Scullery,feed," + std::to_string(211 + i) + ",g," + std::string(80, 'x') + "\n";
    for (int i = 0; i < 50; ++i) rows += "3/4/2031,Scullery,feed," + std::to_string(211 + i) + ",stones,\n";
    write(path(QStringLiteral("long.csv")), rows);
    JournalSheetView* view = importing("long.csv");
    auto* table = view->findChild<QTableView*>(QStringLiteral("sheetTable"));
    const auto goTo = [&](int row) {
        table->verticalScrollBar()->setValue(row);
        table->selectRow(row + 2);
        table->setCurrentIndex(table->model()->index(row + 2, 3));
        table->horizontalScrollBar()->setValue(1);
        settle();
    };
    const auto place = [&] { return std::tuple{table->verticalScrollBar()->value(), table->horizontalScrollBar()->value(), table->currentIndex().row(), table->currentIndex().column(), table->selectionModel()->selectedRows().size()}; };
    const auto answer = [&](int at) {
        const auto* before = view->plan();
        choose(view, "askOrder", at);
        ASSERT_TRUE(QTest::qWaitFor([&] { return view->plan() != before; }, patience));
        settle();
    };
    goTo(20);
    auto was = place();
    ASSERT_EQ(std::get<0>(was), 20);
    ASSERT_EQ(std::get<4>(was), 1);
    answer(1);
    EXPECT_EQ(place(), was);
    // The rows at fault, too, and their columns stand still.
    choose(view, "sheetShown", 1);
    settle();
    goTo(20);
    was = place();
    ASSERT_EQ(std::get<0>(was), 20);
    const int width = table->columnWidth(0);
    answer(2);
    EXPECT_EQ(place(), was);
    EXPECT_EQ(table->columnWidth(0), width);
    // Rows that are added to those at fault above them do not carry away what was looked at.
    const int line = table->model()->headerData(20, Qt::Vertical).toInt();
    answer(0);
    const int top = table->verticalScrollBar()->value();
    EXPECT_EQ(table->model()->headerData(top, Qt::Vertical).toInt(), line) << "all 100 wait now";
    EXPECT_EQ(table->model()->headerData(table->currentIndex().row(), Qt::Vertical).toInt(), line + 2);
    view->close();
}

TEST_F(ExchangeWords, ReadingsOfDaysThatHaveNotComeAreToldWithTheirLine)
{
    openSample();
    write(path(QStringLiteral("log.csv")), "time,bed C\n2031-05-01 00:00,20.5\n2131-05-01 00:00,20.5\n");
    answers_.files = {path(QStringLiteral("log.csv"))};
    window_->action(ui::ActionId::importReadings)->trigger();
    auto* view = newest<ReadingsView>();
    ASSERT_TRUE(QTest::qWaitFor([&] { return view->findChild<QComboBox*>(QStringLiteral("loggerColumn1")) != nullptr; }, patience));
    auto* stack = view->findChild<QComboBox*>(QStringLiteral("readingsStack"));
    choose(view, "readingsStack", stack->findData(QStringLiteral("Scullery")));
    ASSERT_TRUE(canImport(view, "readingsImport")) << text(view, "readingsSummary").toStdString();
    EXPECT_EQ(view->plan()->fresh, 1U);
    EXPECT_TRUE(text(view, "readingsSummary").contains(QStringLiteral("line 3")) && text(view, "readingsSummary").contains(QStringLiteral("has not come"))) << text(view, "readingsSummary").toStdString();
    view->close();
}

}
