// The page under a person's hands: wheel, drag, keys, crosshair, buttons.
#include "tests/ui/page_fixture.h"
#include "ui/trends/line_key.h"
#include "ui/trends/readout_line.h"
#include "ui/trends/trend_chart.h"
#include "ui/trends/trends_page.h"

#include "ui/common/dates.h"

#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QTableView>
#include <QWheelEvent>

#include <set>

namespace tierloam::trends {

namespace {

using std::chrono::days;

class TrendsPageTest : public tests::PageTest<TrendsPage> {
protected:
    void open(QSize size = {1200, 900})
    {
        showPage(size);
        page_->activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(page_.get()));
    }
    std::vector<TrendChart*> charts() const
    {
        std::vector<TrendChart*> all;
        for (auto* chart : page_->findChildren<TrendChart*>(QStringLiteral("chart")))
            if (chart->isVisibleTo(page_.get())) all.push_back(chart);
        return all;
    }
    TrendChart* first() const { return charts().front(); }
    static QPoint placeOf(const TrendChart& chart, double share) { return QPointF{chart.frame().area.left() + share * chart.frame().area.width(), chart.frame().area.center().y()}.toPoint(); }
    static bool wheel(TrendChart& chart, QPoint at, QPoint turned, Qt::KeyboardModifiers keys = Qt::NoModifier)
    {
        QWidget* target = chart.viewport();
        QWheelEvent event{at, target->mapToGlobal(at), {}, turned, Qt::NoButton, keys, Qt::NoScrollPhase, false};
        QCoreApplication::sendEvent(target, &event);
        return event.isAccepted();
    }
    /// Charts that are in sight show the view; the others follow when they come into sight.
    bool shown()
    {
        return QTest::qWaitFor([this] { return first()->period() == page_->view(); }, patience);
    }
    int length() const { return daysBetween(page_->view().from, page_->view().until); }
};

}

/// What the signs mean is read before the charts; in a small window, where it would push them out of sight, after them.
TEST_F(TrendsPageTest, TheKeyOfSignsStandsAboveTheFirstChart)
{
    open();
    const QWidget* key = page_->findChild<SignKey*>();
    ASSERT_NE(key, nullptr);
    const auto top = [this](const QWidget* widget) { return widget->mapTo(page_.get(), QPoint{}).y(); };
    EXPECT_TRUE(QTest::qWaitFor([&] { return top(key) < top(first()); }, patience));
    EXPECT_GE(key->visibleRegion().boundingRect().height(), key->height()) << "in sight when the page is opened";
    bool told = false;
    for (const QLabel* each : key->findChildren<QLabel*>()) told = told || each->text().contains(QStringLiteral("no tray lifted"));
    EXPECT_TRUE(told) << "what the forecast takes for granted";
    page_->resize(620, 420);
    theme_.setFontScale(200);
    EXPECT_TRUE(QTest::qWaitFor([&] { return top(key) > top(first()); }, patience));
}

TEST_F(TrendsPageTest, EveryMeasureHasItsChartOrASentence)
{
    open();
    ASSERT_GE(charts().size(), 7u);
    for (const TrendChart* chart : charts()) {
        EXPECT_FALSE(chart->accessibleName().isEmpty());
        EXPECT_GT(chart->accessibleDescription().size(), 10) << chart->accessibleName().toStdString();
    }
    const SeenTrends seen = page_->seen();
    ASSERT_EQ(seen.measures.size(), std::size(allMeasures));
    for (const SeenMeasure& measure : seen.measures)
        for (const SeenChart& chart : measure.charts) EXPECT_FALSE(chart.sentence.isEmpty());
}

TEST_F(TrendsPageTest, AnEmptyHouseholdSaysWhatWillStandInEachChart)
{
    showPage({1000, 640}, false);
    std::set<QString> sentences;
    for (const auto* label : page_->findChildren<QLabel*>())
        if (label->isVisibleTo(page_.get()) && label->text().startsWith(QStringLiteral("Here stand"))) sentences.insert(label->text());
    EXPECT_EQ(sentences.size(), std::size(allMeasures)) << "one for each, and no two alike";
    EXPECT_TRUE(charts().empty());
}

TEST_F(TrendsPageTest, TheWheelZoomsAboutThePointerInAllCharts)
{
    open();
    const int before = length();
    const QPoint at = placeOf(*first(), 0.25);
    const Day under = first()->frame().dayAt(at.x());
    ASSERT_TRUE(wheel(*first(), at, {0, 120}));
    ASSERT_TRUE(shown());
    EXPECT_NEAR(length(), before * 0.8, 2);
    EXPECT_LE(std::abs(daysBetween(first()->frame().dayAt(at.x()), under)), 2) << "the day under the pointer stays there";
    for (int i = 0; i < 5; ++i) wheel(*first(), placeOf(*first(), 0.25), {0, 120});
    EXPECT_LT(length(), before / 2);
    // Charts out of sight follow when they are scrolled to.
    auto* area = page_->findChild<QScrollArea*>();
    area->verticalScrollBar()->setValue(area->verticalScrollBar()->maximum());
    EXPECT_TRUE(QTest::qWaitFor([this] { return charts().back()->period() == page_->view(); }, patience));
    for (int i = 0; i < 30; ++i) wheel(*charts().back(), placeOf(*charts().back(), 0.5), {0, -120});
    EXPECT_EQ(page_->view(), page_->period()) << "and out to the whole again";
}

TEST_F(TrendsPageTest, TheWheelSidewaysOrWithShiftMovesAlong)
{
    open();
    for (int i = 0; i < 4; ++i) wheel(*first(), placeOf(*first(), 0.5), {0, 120});
    ASSERT_TRUE(shown());
    const Period before = page_->view();
    wheel(*first(), placeOf(*first(), 0.5), {0, 120}, Qt::ShiftModifier);
    EXPECT_NEAR(daysBetween(page_->view().from, before.from), length() * 0.1, 1) << "a notch is a tenth of what is seen";
    EXPECT_EQ(daysBetween(before.from, before.until), length());
    wheel(*first(), placeOf(*first(), 0.5), {-120, 0});
    EXPECT_EQ(page_->view(), before);
}

TEST_F(TrendsPageTest, TheWheelBesideAChartScrollsAndGoesOnScrolling)
{
    open({1000, 640});
    const Period before = page_->view();
    EXPECT_FALSE(wheel(*first(), {1, first()->height() - 2}, {0, -120})) << "beneath the plot area";
    auto* area = page_->findChild<QScrollArea*>();
    const QPoint middle = area->viewport()->rect().center();
    QWheelEvent event{middle, area->viewport()->mapToGlobal(middle), {}, {0, -120}, Qt::NoButton, Qt::NoModifier, Qt::NoScrollPhase, false};
    QCoreApplication::sendEvent(area->viewport(), &event);
    EXPECT_GT(area->verticalScrollBar()->value(), 0);
    EXPECT_FALSE(wheel(*first(), placeOf(*first(), 0.5), {0, -120})) << "a chart that comes beneath the pointer does not catch the movement";
    EXPECT_EQ(page_->view(), before);
    EXPECT_TRUE(QTest::qWaitFor([&] { return wheel(*first(), placeOf(*first(), 0.5), {0, 120}); }, patience)) << "later it zooms";
}

TEST_F(TrendsPageTest, DraggingZoomsToTheDaysAndADoubleClickShowsAll)
{
    open();
    const Day from = first()->frame().dayAt(placeOf(*first(), 0.3).x()), until = first()->frame().dayAt(placeOf(*first(), 0.6).x());
    QWidget* target = first()->viewport();
    QTest::mousePress(target, Qt::LeftButton, {}, placeOf(*first(), 0.6)); // from right to left as well
    QTest::mouseMove(target, placeOf(*first(), 0.5));
    QTest::mouseMove(target, placeOf(*first(), 0.3));
    QTest::mouseRelease(target, Qt::LeftButton, {}, placeOf(*first(), 0.3));
    ASSERT_TRUE(shown());
    EXPECT_EQ(page_->view().from, from);
    EXPECT_EQ(page_->view().until, until);
    const Period before = page_->view();
    QTest::mouseClick(target, Qt::LeftButton, {}, placeOf(*first(), 0.5));
    EXPECT_EQ(page_->view(), before) << "a click is no drag";
    QTest::mousePress(target, Qt::LeftButton, {}, placeOf(*first(), 0.2));
    QTest::mouseMove(target, placeOf(*first(), 0.4));
    QTest::keyClick(first(), Qt::Key_Escape);
    QTest::mouseRelease(target, Qt::LeftButton, {}, placeOf(*first(), 0.4));
    EXPECT_EQ(page_->view(), before) << "called off";
    QTest::mouseDClick(target, Qt::LeftButton, {}, placeOf(*first(), 0.5));
    EXPECT_EQ(page_->view(), page_->period());
}

TEST_F(TrendsPageTest, KeysZoomAndMoveWithoutThePointer)
{
    open();
    first()->setFocus(Qt::TabFocusReason);
    const int before = length();
    for (int i = 0; i < 10; ++i) QTest::keyClick(first(), Qt::Key_Left, Qt::ControlModifier);
    const Day cursor = *first()->cursorDay();
    QTest::keyClick(first(), Qt::Key_Plus);
    ASSERT_TRUE(shown());
    EXPECT_NEAR(length(), before * 0.8, 2);
    EXPECT_EQ(first()->cursorDay(), cursor);
    const Day from = page_->view().from;
    QTest::keyClick(first(), Qt::Key_Left, Qt::ShiftModifier);
    EXPECT_LT(page_->view().from, from);
    QTest::keyClick(first(), Qt::Key_Minus);
    EXPECT_GE(length(), before * 0.9);
    QTest::keyClick(first(), Qt::Key_Plus);
    QTest::keyClick(first(), Qt::Key_0);
    EXPECT_EQ(page_->view(), page_->period());
    for (int i = 0; i < 60; ++i) QTest::keyClick(first(), Qt::Key_Plus);
    EXPECT_EQ(length(), 7) << "a week at least";
}

TEST_F(TrendsPageTest, TheCrosshairReadsAllSeries)
{
    open();
    QTest::mouseMove(first()->viewport(), placeOf(*first(), 0.4));
    ASSERT_TRUE(QTest::qWaitFor([this] { return first()->cursorDay().has_value(); }, patience));
    const Day day = *first()->cursorDay();
    for (const TrendChart* chart : charts()) EXPECT_EQ(chart->cursorDay(), day) << chart->accessibleName().toStdString();
    int read = 0;
    const QString date = ui::shortDay(day, tests::sampleToday());
    for (const auto* line : page_->findChildren<ReadoutLine*>())
        if (line->isVisibleTo(page_.get())) {
            EXPECT_TRUE(line->text().startsWith(date)) << line->text().toStdString();
            ++read;
        }
    EXPECT_GE(read, 7);
    const int height = first()->y();
    QTest::mouseMove(first()->viewport(), placeOf(*first(), 0.41));
    QCoreApplication::processEvents();
    EXPECT_EQ(first()->y(), height) << "other words move nothing";
}

TEST_F(TrendsPageTest, SumsAreChosenByButtonAndByKey)
{
    open();
    QTest::mouseClick(page_->findChild<QPushButton*>(QStringLiteral("sumDrainage")), Qt::LeftButton);
    EXPECT_TRUE(page_->sums().drainageAddedUp);
    bool any = false;
    for (const SeenMeasure& measure : page_->seen().measures)
        for (const Series& series : measure.whole) {
            any = any || !series.totals.empty();
            EXPECT_TRUE(series.totals.empty() || series.bars.empty());
        }
    EXPECT_TRUE(any);
    QTest::keyClick(page_.get(), Qt::Key_A);
    EXPECT_FALSE(page_->sums().drainageAddedUp);
    QTest::keyClick(page_.get(), Qt::Key_Y);
    EXPECT_TRUE(page_->sums().yieldByYear);
}

TEST_F(TrendsPageTest, ARangeIsShownWholeAndATableFollowsTheZoom)
{
    open();
    for (int i = 0; i < 6; ++i) wheel(*first(), placeOf(*first(), 0.3), {0, 120});
    page_->setTable(true);
    auto* table = page_->findChild<QTableView*>();
    const int rows = table->model()->rowCount();
    page_->showWhole();
    EXPECT_TRUE(QTest::qWaitFor([&] { return table->model()->rowCount() > rows; }, patience));
    page_->setTable(false);
    wheel(*first(), placeOf(*first(), 0.3), {0, 120});
    page_->setRange(Range::days90);
    EXPECT_EQ(page_->view(), page_->period());
}

TEST_F(TrendsPageTest, ARangeIsLitWhileAllOfItIsShown)
{
    open();
    page_->setRange(Range::days90);
    auto* button = page_->findChild<QPushButton*>(QStringLiteral("range90"));
    ASSERT_NE(button, nullptr);
    EXPECT_TRUE(button->isChecked());
    wheel(*first(), placeOf(*first(), 0.3), {0, 120});
    EXPECT_TRUE(QTest::qWaitFor([&] { return !button->isChecked(); }, patience)) << "other days are shown than the button says";
    page_->showWhole();
    EXPECT_TRUE(QTest::qWaitFor([&] { return button->isChecked(); }, patience));
    wheel(*first(), placeOf(*first(), 0.3), {0, 120});
    ASSERT_TRUE(QTest::qWaitFor([&] { return !button->isChecked(); }, patience));
    QTest::mouseClick(button, Qt::LeftButton);
    EXPECT_TRUE(button->isChecked()) << "and a click shows its range again";
    EXPECT_EQ(page_->view(), page_->period());
}

TEST_F(TrendsPageTest, WordsFollowTheDaysThatAreShown)
{
    open();
    const Day today = tests::sampleToday(), from = today - days{200}, until = today - days{120};
    const auto colony = [this] { return page_->seen().measures[2].charts.front().sentence; };
    const auto readout = [this] {
        for (const auto* line : page_->findChildren<ReadoutLine*>())
            if (line->isVisibleTo(page_.get())) return line->text();
        return QString{};
    };
    page_->setView(today - days{60}, page_->period().until);
    ASSERT_TRUE(shown());
    EXPECT_TRUE(colony().startsWith(QStringLiteral("The worms weigh"))) << colony().toStdString();
    page_->setView(from, until);
    ASSERT_TRUE(shown());
    EXPECT_TRUE(colony().startsWith(QStringLiteral("On "))) << colony().toStdString();
    EXPECT_TRUE(colony().contains(QStringLiteral("the worms weighed"))) << colony().toStdString();
    EXPECT_TRUE(QTest::qWaitFor([&] { return readout().startsWith(ui::shortDay(until, today)); }, patience)) << readout().toStdString();
    page_->setView(today + days{1}, page_->period().until);
    ASSERT_TRUE(shown());
    EXPECT_TRUE(colony().startsWith(QStringLiteral("From "))) << colony().toStdString() << ": the sample foresees no colony";
}

TEST_F(TrendsPageTest, WhatIsKeptIsAskedForByKeyAndMenu)
{
    open();
    QStringList asked;
    int printed = 0;
    QObject::connect(page_.get(), &TrendsPage::saveAsked, page_.get(), [&](const QString& kind) { asked << kind; });
    QObject::connect(page_.get(), &TrendsPage::printAsked, page_.get(), [&] { ++printed; });
    for (const Qt::Key key : {Qt::Key_P, Qt::Key_S, Qt::Key_D, Qt::Key_F}) QTest::keyClick(page_.get(), key, Qt::ShiftModifier);
    QTest::keyClick(page_.get(), Qt::Key_P);
    EXPECT_EQ(asked, (QStringList{QStringLiteral("png"), QStringLiteral("svg"), QStringLiteral("pdf"), QStringLiteral("csv")}));
    EXPECT_EQ(printed, 1);
}

}
