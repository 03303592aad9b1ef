#include "tests/ui/exchange_fixture.h"

#include "core/exchange/journal_csv.h"

#include <QRegularExpression>
#include <QCheckBox>
#include <QElapsedTimer>
#include <QTableView>

// Tables in and out of the window, as people do it: looked at first, then one step.
namespace tierloam::window {

TEST_F(ExchangeTest, AnImportedJournalIsOneStepAndExportGivesItBack)
{
    ASSERT_TRUE(window_->createFile(path(QStringLiteral("new.tierloam"))));
    show();
    const std::string csv = exchange::writeJournal(tests::sampleJournal());
    write(path(QStringLiteral("in.csv")), csv);
    JournalSheetView* view = importing("in.csv");
    EXPECT_EQ(view->plan()->entries.size(), tests::sampleJournal().size());
    EXPECT_EQ(entries(), 0U) << "nothing before it is asked for";
    ASSERT_TRUE(canImport(view, "sheetImport"));
    click(button("sheetImport", view));
    ASSERT_TRUE(written(tests::sampleJournal().size()));
    ASSERT_TRUE(QTest::qWaitFor([&] { return !notices().isEmpty(); }, patience));
    EXPECT_TRUE(notices().back().contains(QString::number(tests::sampleJournal().size())));
    answers_.files = {path(QStringLiteral("out.csv"))};
    window_->action(ui::ActionId::exportJournal)->trigger();
    EXPECT_EQ(read(path(QStringLiteral("out.csv"))), csv);
    ASSERT_TRUE(QTest::qWaitFor([&] { return household().undoStack()->canUndo(); }, patience));
    household().undoStack()->undo();
    EXPECT_TRUE(written(0));
}

// Looked at from the welcome page; then a household is opened in which the rows are already.
TEST_F(ExchangeTest, ATableLookedAtWithoutAHouseholdIsComparedWithTheOneThatIsOpened)
{
    const QString file = sampleFile();
    show();
    write(path(QStringLiteral("in.csv")), exchange::writeJournal(tests::sampleJournal()));
    JournalSheetView* view = importing("in.csv");
    ASSERT_EQ(view->plan()->entries.size(), tests::sampleJournal().size());
    ASSERT_TRUE(window_->openFile(file));
    ASSERT_TRUE(QTest::qWaitFor([&] { return view->plan() != nullptr && view->plan()->entries.empty(); }, patience)) << "all of them are there";
    settle();
    EXPECT_FALSE(button("sheetImport", view)->isEnabled());
    const auto before = entries();
    QTest::mouseClick(button("sheetImport", view), Qt::LeftButton);
    household().finishWrites();
    EXPECT_EQ(entries(), before);
    QPointer<JournalSheetView> closes = view;
    window_->showWelcome();
    EXPECT_TRUE(QTest::qWaitFor([&] { return closes.isNull() || !closes->isVisible(); }, patience)) << "it goes with its household";
}

// Exported in the same moment: what has just been recorded is in the file, with its number on disk.
TEST_F(ExchangeTest, AnExportHoldsWhatWasRecordedTheMomentBefore)
{
    openSample();
    journal::Entry water;
    water.date = {tests::sampleToday(), {}};
    water.stack = "Scullery";
    water.action = journal::Water{{317, Unit::mL}};
    household().record(water, QStringLiteral("water"));
    ASSERT_TRUE(window_->exportFile(path(QStringLiteral("now.csv"))));
    EXPECT_NE(read(path(QStringLiteral("now.csv"))).find("water,,317,mL"), std::string::npos);
    EXPECT_TRUE(household().journal()->pending.empty()) << "and it is safe on disk";
}

TEST_F(ExchangeTest, RowsAtFaultAreShownSavedAndTheOthersImported)
{
    openSample();
    const std::size_t before = entries();
    write(path(QStringLiteral("bad.csv")), "date,stack,action,slot,amount,unit,item,detail,note\n"
                                           "2031-05-01,Scullery,feed,,211,g,,,\n"
                                           "2031-05-01,Scullery,feed,9,200,g,,,\n"
                                           "2031-05-99,Scullery,feed,,200,g,,,\n");
    JournalSheetView* view = importing("bad.csv");
    EXPECT_EQ(view->plan()->faults.size(), 2U);
    choose(view, "sheetShown", 1);
    auto* table = view->findChild<QTableView*>(QStringLiteral("sheetTable"));
    ASSERT_EQ(table->model()->rowCount(), 3); // the row of choices, then the two
    EXPECT_EQ(table->model()->headerData(1, Qt::Vertical).toInt(), 3);
    EXPECT_TRUE(table->model()->index(1, 0).data().toString().contains(QStringLiteral("slot: found «9»")));
    EXPECT_TRUE(table->model()->index(2, 0).data().toString().contains(QStringLiteral("2031-05-99")));
    answers_.files = {path(QStringLiteral("faults.csv"))};
    click(button("saveFaults", view));
    EXPECT_NE(read(path(QStringLiteral("faults.csv"))).find("4,"), std::string::npos);
    ASSERT_TRUE(canImport(view, "sheetImport"));
    click(button("sheetImport", view));
    ASSERT_TRUE(written(before + 1));
    EXPECT_TRUE(QTest::qWaitFor([&] { return text(view, "sheetSummary").contains(QStringLiteral("put them right")); }, patience)) << "what could not be read stays in sight";
    view->close();
    household().undoStack()->undo();
    EXPECT_TRUE(written(before));
}

TEST_F(ExchangeTest, WhatIsOpenIsAskedAndTheAnswerReadAtOnce)
{
    openSample();
    const std::size_t before = entries();
    write(path(QStringLiteral("open.csv")), "day;what was done;bin;how much;weather\n3/4/2031;fed;Scullery;1,250;rain\n4/4/2031;fed;Scullery;211;sun\n");
    JournalSheetView* view = importing("open.csv");
    EXPECT_TRUE(text(view, "sheetIgnored").contains(QStringLiteral("weather")));
    EXPECT_TRUE(view->plan()->entries.empty());
    EXPECT_FALSE(view->findChild<QPushButton*>(QStringLiteral("sheetImport"))->isEnabled());
    choose(view, "askDecimal", 2);
    choose(view, "askOrder", 1);
    choose(view, "askUnit", 1);
    ASSERT_TRUE(QTest::qWaitFor([&] { return view->plan()->entries.size() == 2; }, patience)) << text(view, "sheetSummary").toStdString();
    ASSERT_TRUE(canImport(view, "sheetImport"));
    click(button("sheetImport", view));
    ASSERT_TRUE(written(before + 2));
    // The same file again: all of it is there already.
    view = importing("open.csv");
    for (const auto& [list, at] : {std::pair{"askDecimal", 2}, std::pair{"askOrder", 1}, std::pair{"askUnit", 1}}) choose(view, list, at);
    ASSERT_TRUE(QTest::qWaitFor([&] { return view->plan()->count(exchange::RowFate::there) == 2; }, patience));
    EXPECT_TRUE(view->plan()->entries.empty());
    auto* leave = view->findChild<QCheckBox*>(QStringLiteral("leaveOutThere"));
    ASSERT_TRUE(leave->isVisible());
    leave->setChecked(false);
    EXPECT_TRUE(QTest::qWaitFor([&] { return view->plan()->entries.size() == 2; }, patience));
    view->close();
}

TEST_F(ExchangeTest, AColumnIsGivenAnotherMeaningByHand)
{
    openSample();
    write(path(QStringLiteral("own.csv")), "date,stack,action,stuff,grammes of it\n2031-05-01,Scullery,feed,coffee grounds,211\n");
    JournalSheetView* view = importing("own.csv");
    EXPECT_TRUE(view->plan()->entries.empty()) << "a feeding without an amount";
    const auto hold = [&](const char* list, exchange::SheetField field) {
        auto* box = view->findChild<QComboBox*>(QString::fromLatin1(list));
        ASSERT_NE(box, nullptr);
        EXPECT_FALSE(box->accessibleName().isEmpty());
        box->setCurrentIndex(box->findData(static_cast<int>(field)));
        Q_EMIT box->activated(box->currentIndex());
    };
    hold("column3", exchange::SheetField::item);
    hold("column4", exchange::SheetField::amount);
    choose(view, "askUnit", 1);
    EXPECT_TRUE(QTest::qWaitFor([&] { return view->plan()->entries.size() == 1; }, patience)) << text(view, "sheetSummary").toStdString();
    view->close();
}

TEST_F(ExchangeTest, WithoutAHouseholdOneIsMadeWhenTheRowsAreWanted)
{
    show();
    write(path(QStringLiteral("good.csv")), exchange::writeJournal(tests::sampleJournal()));
    JournalSheetView* view = importing("good.csv");
    EXPECT_EQ(window_->household(), nullptr);
    ASSERT_TRUE(canImport(view, "sheetImport"));
    answers_.files = {QString{}}; // thought better of it
    click(button("sheetImport", view));
    EXPECT_EQ(window_->household(), nullptr);
    EXPECT_TRUE(text(view, "sheetSummary").contains(QStringLiteral("Nothing was imported")));
    answers_.files = {path(QStringLiteral("good.tierloam"))};
    click(button("sheetImport", view));
    ASSERT_NE(window_->household(), nullptr);
    EXPECT_TRUE(written(tests::sampleJournal().size()));
}

TEST_F(ExchangeTest, WhatIsNoTableIsTold)
{
    show();
    answers_.files = {path(QStringLiteral("gone.csv"))};
    window_->action(ui::ActionId::importJournal)->trigger();
    auto* view = newest<JournalSheetView>();
    EXPECT_TRUE(QTest::qWaitFor([&] { return text(view, "sheetFile").contains(QStringLiteral("gone.csv")); }, patience));
    EXPECT_FALSE(view->findChild<QPushButton*>(QStringLiteral("sheetImport"))->isEnabled());
    view->close();
}

TEST_F(ExchangeTest, ReadingsOfALoggerAreImportedRememberedAndTakenBackByOneUndo)
{
    openSample();
    const std::size_t before = entries();
    write(path(QStringLiteral("log.csv")), "clock time;probe;room air C\n2031-05-01 00:00;20,5;18,25\n2031-05-01 12:00;21,5;18,75\n2031-05-02 00:00;22,5;19,5\nbroken;1,5;1,5\n");
    answers_.files = {path(QStringLiteral("log.csv"))};
    window_->action(ui::ActionId::importReadings)->trigger();
    auto* view = newest<ReadingsView>();
    ASSERT_TRUE(QTest::qWaitFor([&] { return view->findChild<QComboBox*>(QStringLiteral("loggerColumn2")) != nullptr; }, patience));
    settle();
    choose(view, "loggerColumn1", 3); // temperature of the bed, in Celsius
    auto* stack = view->findChild<QComboBox*>(QStringLiteral("readingsStack"));
    choose(view, "readingsStack", stack->findData(QStringLiteral("Scullery")));
    ASSERT_TRUE(canImport(view, "readingsImport")) << text(view, "readingsSummary").toStdString();
    EXPECT_TRUE(text(view, "readingsSummary").contains(QStringLiteral("line 5"))) << text(view, "readingsSummary").toStdString();
    click(button("readingsImport", view));
    ASSERT_TRUE(written(before + 2));
    ASSERT_TRUE(QTest::qWaitFor([&] { return !household().logged()->empty(); }, patience));
    EXPECT_EQ(household().logged()->at("Scullery").size(), 4U);
    // A second file of the same logger: nothing is asked again, what is there is left out.
    write(path(QStringLiteral("log2.csv")), "clock time;probe;room air C\n2031-05-02 00:00;22,5;19,5\n2031-05-02 12:00;24,5;20,5\n");
    answers_.files = {path(QStringLiteral("log2.csv"))};
    window_->action(ui::ActionId::importReadings)->trigger();
    view = newest<ReadingsView>();
    ASSERT_TRUE(canImport(view, "readingsImport")) << text(view, "readingsSummary").toStdString();
    EXPECT_EQ(view->plan()->there, 2U);
    EXPECT_EQ(view->plan()->fresh, 2U);
    EXPECT_EQ(view->mapping().stack, "Scullery");
    click(button("readingsImport", view));
    ASSERT_TRUE(QTest::qWaitFor([&] { return household().journal()->pending.empty() && household().logged()->at("Scullery").back().readings == 2; }, patience));
    EXPECT_EQ(entries(), before + 2) << "the day's entry was brought up to date";
    household().undoStack()->undo();
    ASSERT_TRUE(QTest::qWaitFor([&] { return household().logged()->at("Scullery").back().readings == 1; }, patience));
    household().undoStack()->undo();
    ASSERT_TRUE(written(before));
    EXPECT_TRUE(QTest::qWaitFor([&] { return household().logged()->empty(); }, patience));
    household().undoStack()->redo();
    ASSERT_TRUE(written(before + 2));
    EXPECT_TRUE(QTest::qWaitFor([&] { return household().logged()->size() == 1; }, patience));
}

TEST_F(ExchangeTest, AHundredThousandReadingsComeInWhileTheWindowLives)
{
    openSample();
    const std::size_t before = entries();
    std::string rows = "time,temp C\n";
    char row[64];
    for (int i = 0; i < 100'000; ++i) {
        const std::chrono::year_month_day date{tests::sampleToday() - std::chrono::days{70} + std::chrono::days{i / 1440}};
        std::snprintf(row, sizeof row, "%d-%02u-%02u %02d:%02d,%d.%d\n", static_cast<int>(date.year()), static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()), i % 1440 / 60, i % 60,
                      18 + i % 9, i % 10);
        rows += row;
    }
    write(path(QStringLiteral("long.csv")), rows);
    answers_.files = {path(QStringLiteral("long.csv"))};
    window_->action(ui::ActionId::importReadings)->trigger();
    auto* view = newest<ReadingsView>();
    ASSERT_TRUE(QTest::qWaitFor([&] { return view->findChild<QComboBox*>(QStringLiteral("loggerColumn1")) != nullptr; }, patience));
    auto* stack = view->findChild<QComboBox*>(QStringLiteral("readingsStack"));
    choose(view, "readingsStack", stack->findData(QStringLiteral("Scullery")));
    ASSERT_TRUE(canImport(view, "readingsImport")) << text(view, "readingsSummary").toStdString();
    // Called off half way: nothing of it is kept.
    view->findChild<QPushButton*>(QStringLiteral("readingsImport"))->click();
    view->findChild<QPushButton*>(QStringLiteral("readingsCallOff"))->click();
    ASSERT_TRUE(QTest::qWaitFor([&] { return text(view, "readingsSummary").contains(QStringLiteral("Called off")); }, patience)) << text(view, "readingsSummary").toStdString();
    EXPECT_EQ(entries(), before);
    EXPECT_TRUE(household().logged()->empty());
    QElapsedTimer since;
    since.start();
    view->findChild<QPushButton*>(QStringLiteral("readingsImport"))->click();
    ASSERT_TRUE(QTest::qWaitFor([&] { return !household().logged()->empty(); }, patience));
    std::printf("100,000 readings written in %lld ms\n", static_cast<long long>(since.elapsed()));
    int readings = 0;
    for (const auto& day : household().logged()->at("Scullery")) readings += day.readings;
    EXPECT_EQ(readings, 100'000) << "thinned for display, not lost";
    EXPECT_EQ(entries(), before + 70);
}

TEST_F(ExchangeTest, WhatWaitsForAnAnswerCannotBeImportedYet)
{
    openSample();
    write(path(QStringLiteral("half.csv")), "day;what was done;bin;how much;unit\n3/4/2031;fed;Scullery;211;g\n;note;Scullery;;\n2031-04-05;fed;Scullery;215;g\n");
    JournalSheetView* view = importing("half.csv");
    ASSERT_FALSE(view->plan()->entries.empty()) << "else there is nothing that could be imported too early";
    auto* import = view->findChild<QPushButton*>(QStringLiteral("sheetImport"));
    EXPECT_FALSE(import->isEnabled());
    EXPECT_FALSE(import->text().contains(QRegularExpression{QStringLiteral("\\d")})) << import->text().toStdString();
    choose(view, "askOrder", 1);
    EXPECT_TRUE(canImport(view, "sheetImport"));
    view->close();
}

TEST_F(ExchangeTest, AFieldThatComesFreeGoesToTheColumnThatNamesIt)
{
    openSample();
    write(path(QStringLiteral("what.csv")), "date,stack,What,amount,unit,Material\n2031-04-05,Scullery,let off,300,g,coffee grounds\n");
    JournalSheetView* view = importing("what.csv");
    auto* what = view->findChild<QComboBox*>(QStringLiteral("column2"));
    auto* material = view->findChild<QComboBox*>(QStringLiteral("column5"));
    ASSERT_TRUE(what && material);
    ASSERT_FALSE(material->currentData().isValid());
    what->setCurrentIndex(what->findData(static_cast<int>(exchange::SheetField::action)));
    Q_EMIT what->activated(what->currentIndex());
    EXPECT_EQ(material->currentData().toInt(), static_cast<int>(exchange::SheetField::item));
    EXPECT_TRUE(material->currentData().isValid());
    view->close();
}

TEST_F(ExchangeTest, RowsOfNextYearAreAtFault)
{
    openSample();
    write(path(QStringLiteral("ahead.csv")), "date,stack,action,amount,unit\n2198-04-05,Scullery,feed,300,g\n");
    JournalSheetView* view = importing("ahead.csv");
    EXPECT_EQ(view->plan()->count(exchange::RowFate::fault), 1U);
    EXPECT_TRUE(view->plan()->entries.empty());
    view->close();
}

}
