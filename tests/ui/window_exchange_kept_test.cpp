#include "tests/ui/exchange_fixture.h"

#include <QElapsedTimer>
#include <QTimer>

// What was answered of a table is not lost: not without a household, not when its window is closed; and of a long table it is asked at once.
namespace tierloam::window {

class ExchangeKept : public ExchangeTest {
protected:
    void chooseText(QWidget* view, const char* list, const QString& answer)
    {
        auto* box = view->findChild<QComboBox*>(QString::fromLatin1(list));
        ASSERT_NE(box, nullptr) << list;
        const int at = box->findText(answer);
        ASSERT_GE(at, 0) << answer.toStdString();
        choose(view, list, at);
    }
    void chooseColumn(QWidget* view, const char* column, exchange::SheetField field)
    {
        auto* list = view->findChild<QComboBox*>(QString::fromLatin1(column));
        ASSERT_NE(list, nullptr);
        list->setCurrentIndex(list->findData(static_cast<int>(field)));
        Q_EMIT list->activated(list->currentIndex());
    }
    QString chosen(QWidget* view, const char* list)
    {
        const auto* box = view->findChild<QComboBox*>(QString::fromLatin1(list));
        return box ? box->currentText() : QString{};
    }
    /// Shown, too: what is made anew is laid out a moment later.
    bool asks(QWidget* view, const char* list, int milliseconds = patience)
    {
        return QTest::qWaitFor([&] {
            const auto* box = view->findChild<QComboBox*>(QString::fromLatin1(list));
            return box && box->isVisible();
        }, milliseconds);
    }
    static std::string diary() { return "day,bin,what was done,amount,unit,said\n2031-04-01,Attic,tipped in,211,g,fine\n2031-04-02,Attic,rained,,,\n"; }
    void answer(JournalSheetView* view)
    {
        chooseColumn(view, "column5", exchange::SheetField::note);
        ASSERT_TRUE(asks(view, "askActionWord1"));
        chooseText(view, "askStackWord0", QStringLiteral("a new stack"));
        chooseText(view, "askActionWord0", QStringLiteral("Fed"));
        chooseText(view, "askActionWord1", QStringLiteral("leave out"));
    }
};

TEST_F(ExchangeKept, WithoutAHouseholdAndThenTakenOverByTheOneThatIsMade)
{
    show();
    write(path(QStringLiteral("diary.csv")), diary());
    JournalSheetView* view = importing("diary.csv");
    answer(view);
    ASSERT_TRUE(canImport(view, "sheetImport")) << text(view, "sheetSummary").toStdString();
    EXPECT_TRUE(text(view, "sheetSummary").contains(QStringLiteral("No household is open"))) << text(view, "sheetSummary").toStdString();
    delete view; // as if the program had ended
    view = importing("diary.csv");
    EXPECT_TRUE(asks(view, "askActionWord1"));
    EXPECT_NE(chosen(view, "askActionWord0"), QStringLiteral("Fed")) << "only a view that was closed keeps them";
    answer(view);
    view->close();
    settle();
    make(); // another start of the program
    show();
    view = importing("diary.csv");
    ASSERT_TRUE(canImport(view, "sheetImport")) << "all has been answered: " << text(view, "sheetSummary").toStdString();
    EXPECT_EQ(chosen(view, "column5"), exchange::fieldText(exchange::SheetField::note));
    EXPECT_EQ(chosen(view, "askActionWord0"), QStringLiteral("Fed"));
    EXPECT_EQ(chosen(view, "askActionWord1"), QStringLiteral("leave out"));
    ASSERT_FALSE(settings_->value(QStringLiteral("tables/answers")).toStringList().isEmpty());
    answers_.files = {path(QStringLiteral("made.tierloam"))};
    click(button("sheetImport", view));
    ASSERT_NE(window_->household(), nullptr);
    ASSERT_TRUE(written(3)) << "set up, bedded, fed";
    EXPECT_TRUE(settings_->value(QStringLiteral("tables/answers")).toStringList().isEmpty()) << "they are the household's now";
    household().undoStack()->undo();
    EXPECT_TRUE(written(0)) << "one undo takes the import back";
    household().undoStack()->redo();
    ASSERT_TRUE(written(3));
    // The next month's table: nothing is asked again.
    write(path(QStringLiteral("next.csv")), "day,bin,what was done,amount,unit,said\n2031-04-25,Attic,tipped in,215,g,good\n");
    view = importing("next.csv");
    ASSERT_TRUE(canImport(view, "sheetImport")) << text(view, "sheetSummary").toStdString();
    EXPECT_EQ(view->plan()->entries.size(), 1U);
    EXPECT_EQ(view->plan()->entries.front().note, "good");
    view->close();
}

TEST_F(ExchangeKept, WhatIsAskedBecauseOfAKeptAnswerIsKeptToo)
{
    openSample();
    const std::size_t before = entries();
    write(path(QStringLiteral("diary.csv")), "day,bin,action,amount,unit,material\n2031-05-01,Scullery,tipped in,211,g,veg peels\n");
    JournalSheetView* view = importing("diary.csv");
    ASSERT_TRUE(asks(view, "askActionWord0"));
    chooseText(view, "askActionWord0", QStringLiteral("Fed"));
    ASSERT_TRUE(asks(view, "askMaterialWord0"));
    chooseText(view, "askMaterialWord0", QStringLiteral("kitchen mix"));
    ASSERT_TRUE(canImport(view, "sheetImport"));
    click(button("sheetImport", view));
    ASSERT_TRUE(written(before + 1));
    write(path(QStringLiteral("next.csv")), "day,bin,action,amount,unit,material\n2031-05-02,Scullery,tipped in,311,g,veg peels\n");
    view = importing("next.csv");
    EXPECT_TRUE(canImport(view, "sheetImport")) << text(view, "sheetSummary").toStdString();
    EXPECT_EQ(chosen(view, "askMaterialWord0"), QStringLiteral("kitchen mix"));
    view->close();
}

// 60 MB are read for some seconds; people are asked by then, and the window goes on.
TEST_F(ExchangeKept, ALongTableAsksAtOnceAndTheWindowGoesOn)
{
    openSample();
    const bool longer = qEnvironmentVariableIsSet("TIERLOAM_LONG");
    std::string rows = "day,bin,what was done,amount,unit,note\n";
    const int count = longer ? 500'000 : 40'000;
    for (int i = 0; i < count; ++i)
        rows += "2031-0" + std::to_string(1 + i % 4) + "-01,the big one," + (i == count - 1 ? "hosed" : "tipped in") + "," + std::to_string(100 + i % 700) + ",g,line " + std::to_string(i) + std::string(60, 'x') + "\n";
    write(path(QStringLiteral("long.csv")), rows);
    qint64 longest = 0;
    QElapsedTimer since, whole;
    QTimer pulse;
    QObject::connect(&pulse, &QTimer::timeout, [&] { longest = std::max(longest, since.restart()); });
    answers_.files = {path(QStringLiteral("long.csv"))};
    whole.start();
    window_->action(ui::ActionId::importJournal)->trigger();
    auto* view = newest<JournalSheetView>();
    settle();
    since.start();
    pulse.start(2);
    ASSERT_TRUE(asks(view, "askActionWord0"));
    const qint64 asked = whole.elapsed();
    EXPECT_TRUE(text(view, "sheetFile").contains(QStringLiteral("the others are being read"))) << text(view, "sheetFile").toStdString();
    EXPECT_FALSE(button("sheetImport", view)->isEnabled());
    chooseText(view, "askStackWord0", QStringLiteral("Scullery"));
    chooseText(view, "askActionWord0", QStringLiteral("Fed"));
    ASSERT_TRUE(asks(view, "askActionWord1", 20 * patience)) << "the last row says another word";
    EXPECT_EQ(chosen(view, "askActionWord0"), QStringLiteral("Fed")) << "what was answered meanwhile stays";
    EXPECT_EQ(chosen(view, "askStackWord0"), QStringLiteral("Scullery"));
    chooseText(view, "askActionWord1", QStringLiteral("Watered"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return view->plan() && view->plan()->fates.size() == static_cast<std::size_t>(count) && button("saveFaults", view)->isEnabled(); }, 20 * patience));
    const qint64 read = whole.elapsed();
    view->close();
    settle();
    pulse.stop();
    std::printf("%d rows, %zu MB: first question after %lld ms, all looked at after %lld ms, longest pause of the window %lld ms\n", count, rows.size() >> 20, static_cast<long long>(asked),
                static_cast<long long>(read), static_cast<long long>(longest));
    EXPECT_LT(asked, 20'000) << "with the machine busy; found: 0.3 s";
}

}
