#include "tests/support/pictures.h"
#include "tests/support/sample_reckoning.h"
#include "ui/trends/plot_frame.h"
#include "ui/trends/series_pens.h"
#include "ui/trends/trend_chart.h"
#include "ui/trends/trend_table.h"
#include "ui/trends/trend_words.h"

#include <gtest/gtest.h>

#include <QAbstractItemModelTester>
#include <QGraphicsTextItem>
#include <QSignalSpy>
#include <QTest>
#include <QtCharts/QCategoryAxis>
#include <QtCharts/QChart>

#include <tuple>

namespace tierloam::trends {

namespace {

using std::chrono::days;

Period yearOf(Day today)
{
    return {today - days{365}, today, today + days{91}};
}

Series waveOf(int place, int count, Day last)
{
    Series series;
    series.stack = place == 0 ? QStringLiteral("Scullery") : QStringLiteral("Cellar");
    series.place = place;
    for (int i = count - 1; i >= 0; --i) {
        const double y = 20 + 8 * std::sin(i * 0.05) + place * 6;
        series.past.push_back({last - days{i}, {y * 0.8, y, y * 1.3}});
    }
    series.ahead = {series.past.back(), {last + days{7}, {15, 20, 28}}, {last + days{90}, {10, 18, 30}}};
    return series;
}

class ChartTest : public testing::Test {
protected:
    void SetUp() override
    {
        theme_ = std::make_unique<ui::Theme>();
        theme_->setMode(ui::ThemeMode::light);
        chart_ = std::make_unique<TrendChart>(*theme_);
        chart_->resize(500, 220);
    }
    void TearDown() override
    {
        chart_.reset();
        qApp->setStyleSheet({});
        QApplication::setFont(font_);
    }
    QImage drawn() { return chart_->grab().toImage(); }

    std::unique_ptr<ui::Theme> theme_;
    std::unique_ptr<TrendChart> chart_;
    const Day today_ = tests::sampleToday();

private:
    QFont font_ = QApplication::font();
};

}

TEST_F(ChartTest, DrawsBandLineBarsAndForecastShade)
{
    Series series = waveOf(0, 300, today_);
    chart_->setContents(Measure::processing, {series}, yearOf(today_), 40);
    const QImage image = drawn();
    tests::keepPicture(image, QStringLiteral("chart-processing"));
    const drawing::Palette& palette = theme_->palette();
    EXPECT_GT(tests::countColour(image, image.rect(), palette.moss, 12), 200) << "the line";
    EXPECT_GT(tests::countColour(image, image.rect(), drawing::mixed(palette.panel, palette.moss, 0.22), 6), 1500) << "the band";
    EXPECT_GT(tests::countColour(image, image.rect(), drawing::mixed(palette.panel, palette.rail, 0.75), 2), 2000) << "the forecast";
    // The shade lies ahead of today only.
    const QRectF plot = chart_->chart()->plotArea();
    const QRect past = QRect{plot.toRect().topLeft(), QSize{static_cast<int>(plot.width() * 0.75), plot.toRect().height()}};
    EXPECT_EQ(tests::countColour(image, past, drawing::mixed(palette.panel, palette.rail, 0.75), 0), 0);

    Series drained;
    drained.stack = QStringLiteral("Scullery");
    for (int week = 0; week < 20; ++week) drained.bars.push_back({today_ - days{7 * week + 6}, 7, 1.0});
    chart_->setContents(Measure::drainage, {drained}, yearOf(today_), 2);
    const QImage bars = drawn();
    tests::keepPicture(bars, QStringLiteral("chart-drainage"));
    EXPECT_GT(tests::countColour(bars, bars.rect(), drawing::mixed(palette.panel, palette.water, 0.8), 6), 1500);
}

TEST_F(ChartTest, EmptyChartHasNoBandNoLineAndStaysWhole)
{
    chart_->setContents(Measure::processing, {waveOf(0, 300, today_)}, yearOf(today_), 40);
    Series empty;
    empty.stack = QStringLiteral("Scullery");
    chart_->setContents(Measure::processing, {empty}, yearOf(today_), 40);
    EXPECT_EQ(tests::countColour(drawn(), chart_->rect(), theme_->palette().moss, 6), 0);
    chart_->setContents(Measure::processing, {}, yearOf(today_), 40);
    EXPECT_FALSE(drawn().isNull());
}

TEST_F(ChartTest, FollowsTheThemeAndTheNumberOfStacks)
{
    chart_->setContents(Measure::colony, {waveOf(0, 300, today_), waveOf(1, 300, today_)}, yearOf(today_), 60);
    theme_->setMode(ui::ThemeMode::dark);
    const QImage image = drawn();
    tests::keepPicture(image, QStringLiteral("chart-two-dark"));
    const drawing::Palette& palette = drawing::Palette::dark();
    EXPECT_GT(tests::countColour(image, image.rect(), palette.moss, 20), 100);
    EXPECT_GT(tests::countColour(image, image.rect(), palette.brick, 20), 50);
    EXPECT_GT(tests::countColour(image, image.rect(), palette.panel, 2), 5000) << "the ground of the card";
    chart_->setContents(Measure::colony, {waveOf(0, 300, today_)}, yearOf(today_), 60);
    EXPECT_EQ(tests::countColour(drawn(), chart_->rect(), palette.moss, 20), 0) << "the colour of the first of several stacks has gone with them";
}

TEST_F(ChartTest, NeighbouringStacksDifferByColourAndByDashes)
{
    for (int place = 0; place < 24; ++place) {
        const QPen here = penOf(place, theme_->palette(), 2), next = penOf(place + 1, theme_->palette(), 2);
        EXPECT_NE(here.color(), next.color());
        EXPECT_NE(here.dashPattern(), next.dashPattern());
        for (int other = place + 1; other < 25; ++other) {
            const QPen there = penOf(other, theme_->palette(), 2);
            EXPECT_FALSE(here.widthF() == there.widthF() && here.dashPattern() == there.dashPattern()) << place << " and " << other;
        }
    }
}

TEST_F(ChartTest, CrosshairWalksByKeyAndReadsTheDay)
{
    chart_->setContents(Measure::processing, {waveOf(0, 300, today_)}, yearOf(today_), 40);
    QObject::connect(chart_.get(), &TrendChart::cursorMoved, chart_.get(), &TrendChart::setCursorDay);
    chart_->setSentence(QStringLiteral("A sentence."));
    QTest::keyClick(chart_.get(), Qt::Key_Left);
    EXPECT_EQ(chart_->cursorDay(), today_ - days{1});
    QTest::keyClick(chart_.get(), Qt::Key_Left, Qt::ControlModifier);
    EXPECT_EQ(chart_->cursorDay(), today_ - days{8});
    EXPECT_TRUE(chart_->accessibleDescription().contains(QStringLiteral("A sentence."))) << chart_->accessibleDescription().toStdString();
    EXPECT_TRUE(chart_->accessibleDescription().contains(valueText(Measure::processing, chart_->contents().front().at(today_ - days{8})->band)));
    QTest::keyClick(chart_.get(), Qt::Key_Home);
    EXPECT_EQ(chart_->cursorDay(), today_ - days{365});
    QTest::keyClick(chart_.get(), Qt::Key_Left);
    EXPECT_EQ(chart_->cursorDay(), today_ - days{365}) << "not past the end";
    QTest::keyClick(chart_.get(), Qt::Key_End);
    EXPECT_EQ(chart_->cursorDay(), today_ + days{91});
}

TEST_F(ChartTest, PointerReadsTheDayBelowIt)
{
    chart_->setContents(Measure::processing, {waveOf(0, 300, today_)}, yearOf(today_), 40);
    chart_->show();
    std::optional<Day> seen;
    QObject::connect(chart_.get(), &TrendChart::cursorMoved, chart_.get(), [&](std::optional<Day> day) { seen = day; });
    const QRectF plot = chart_->chart()->plotArea();
    const double share = (365.0 - 100.0) / (365.0 + 91.0);
    QTest::mouseMove(chart_->viewport(), QPoint{static_cast<int>(plot.left() + share * plot.width()), static_cast<int>(plot.center().y())});
    ASSERT_TRUE(QTest::qWaitFor([&] { return seen.has_value(); }, 5000));
    EXPECT_NEAR(daysBetween(*seen, today_), 100, 1);
}

// Where it is drawn is the day that is read: the column that changes is the one that the pointer calls by that day.
TEST_F(ChartTest, TheCrosshairStandsOnTheDayItReads)
{
    chart_->setContents(Measure::processing, {waveOf(0, 300, today_)}, yearOf(today_), 40);
    chart_->show();
    const QImage without = drawn();
    const QRect plot = chart_->chart()->plotArea().toAlignedRect().adjusted(3, 3, -3, -3);
    for (const int back : {300, 100, 7}) {
        chart_->setCursorDay(today_ - days{back});
        const QImage with = drawn();
        int column = 0, most = 0;
        for (int x = plot.left(); x <= plot.right(); ++x) {
            int changed = 0;
            for (int y = plot.top(); y <= plot.bottom(); ++y) changed += with.pixel(x, y) != without.pixel(x, y);
            if (changed > most) std::tie(column, most) = std::pair{x, changed};
        }
        EXPECT_GT(most, plot.height() / 2) << "a line from top to bottom";
        const double share = (column - chart_->chart()->plotArea().left()) / chart_->chart()->plotArea().width();
        EXPECT_NEAR(share * (365 + 91), 365 - back, 2.5) << back;
    }
}

TEST_F(ChartTest, LabelsAreLaidOnlyWhenTheyChangeAndThenAtOnce)
{
    Period period = yearOf(today_);
    chart_->setContents(Measure::processing, {waveOf(0, 300, today_)}, period, 40);
    std::vector<std::unique_ptr<QSignalSpy>> heard;
    for (QAbstractAxis* axis : chart_->chart()->axes()) heard.push_back(std::make_unique<QSignalSpy>(qobject_cast<QCategoryAxis*>(axis), &QCategoryAxis::categoriesChanged));
    ASSERT_EQ(heard.size(), 2U);
    chart_->setContents(Measure::processing, {waveOf(0, 200, today_)}, period, 40);
    for (const auto& each : heard) EXPECT_EQ(each->count(), 0) << "the same labels were laid again";
    const auto labels = [this](int axis) { return qobject_cast<QCategoryAxis*>(chart_->chart()->axes()[axis])->categoriesLabels(); };
    const QStringList before = labels(0);
    ASSERT_GE(before.size(), 3);
    period.from += days{200};
    chart_->setContents(Measure::processing, {waveOf(0, 200, today_)}, period, 300);
    EXPECT_NE(labels(0), before);
    EXPECT_GE(labels(0).size(), 3);
    EXPECT_GE(labels(1).size(), 3);
    // Each one more would lay out the chart once more.
    for (const auto& each : heard) EXPECT_EQ(each->count(), 1);
}

TEST_F(ChartTest, ANewViewIsDrawnInOneFrame)
{
    struct Frames : QObject {
        int count = 0;
        bool eventFilter(QObject*, QEvent* event) override
        {
            count += event->type() == QEvent::Paint;
            return false;
        }
    } frames;
    Period period = yearOf(today_);
    chart_->setContents(Measure::processing, {waveOf(0, 300, today_)}, period, 40);
    chart_->show();
    const auto settle = [] { for (int i = 0; i < 6; ++i) QCoreApplication::sendPostedEvents(), QCoreApplication::processEvents(); };
    settle();
    chart_->viewport()->installEventFilter(&frames);
    period.from += days{90};
    chart_->setContents(Measure::processing, {waveOf(0, 300, today_)}, period, 400);
    settle();
    EXPECT_EQ(frames.count, 1);
}

TEST(TrendTableTest, SaysWhatTheChartDraws)
{
    const Day today = tests::sampleToday();
    TrendTable table;
    const QAbstractItemModelTester tester{&table, QAbstractItemModelTester::FailureReportingMode::Fatal};
    Series series = waveOf(0, 300, today);
    series.bars = {{today - days{6}, 7, 1.25}};
    table.setContents(Measure::drainage, {series}, yearOf(today));
    ASSERT_EQ(table.columnCount(), 3);
    ASSERT_GT(table.rowCount(), 40);
    int todays = -1, forecasts = 0;
    for (int row = 0; row < table.rowCount(); ++row) {
        const QString date = table.index(row, 0).data().toString();
        if (date.contains(QStringLiteral("today"))) todays = row;
        forecasts += date.contains(QStringLiteral("forecast"));
    }
    ASSERT_GE(todays, 0);
    EXPECT_EQ(forecasts, todays) << "newest first";
    EXPECT_EQ(table.index(todays, 1).data().toString(), barText(1.25));
    EXPECT_EQ(table.index(todays, 2).data().toString(), valueText(Measure::drainage, series.past.back().band));
    table.setContents(Measure::processing, {}, yearOf(today));
    EXPECT_EQ(table.rowCount(), 0);
}

/// What stands beside the axes of a chart.
QStringList axisWords(const TrendChart& chart)
{
    QStringList words;
    for (const QGraphicsItem* item : chart.scene()->items()) {
        const auto* text = qgraphicsitem_cast<const QGraphicsTextItem*>(item);
        if (text && text->isVisible() && !text->toPlainText().isEmpty()) words << text->toPlainText();
    }
    return words;
}

// Where a label has less room than it needs, the axis draws dots in its place.
TEST_F(ChartTest, EveryLabelOfAnAxisIsWrittenOutAtEachHeight)
{
    for (const int scale : {100, 150, 200}) {
        theme_->setFontScale(scale);
        theme_->apply();
        for (const auto& [measure, top, bottom] : {std::tuple{Measure::processing, 40.0, 0.0}, {Measure::moisture, 100.0, 0.0}, {Measure::drainage, 1.5, 0.0}, {Measure::feedToCast, 1.0, 0.001}, {Measure::temperature, 30.0, -5.0}}) {
            for (int height = 75 * scale / 100; height <= 240 * scale / 100; height += 7) {
                chart_->resize(500, height);
                chart_->setContents(measure, {waveOf(0, 300, today_)}, yearOf(today_), top, bottom);
                (void)drawn();
                const QStringList words = axisWords(*chart_);
                EXPECT_GE(words.size(), 2) << scale << " % " << height;
                for (const QString& each : words) EXPECT_FALSE(each.contains(QStringLiteral("..")) || each.contains(u'…')) << scale << " % " << height << " px, measure " << static_cast<int>(measure) << ": " << words.join(u' ').toStdString();
            }
        }
    }
    theme_->setFontScale(100);
    theme_->apply();
}

// A little higher or lower the labels stay the same, so nothing else lays the axes anew: they must follow by themselves.
TEST_F(ChartTest, AxesFollowTheirPlotWhenTheChartIsResized)
{
    const auto settle = [] { for (int i = 0; i < 6; ++i) QCoreApplication::sendPostedEvents(), QCoreApplication::processEvents(); };
    const auto fill = [this](TrendChart& chart) { chart.setContents(Measure::processing, {waveOf(0, 300, today_)}, yearOf(today_), 40); };
    chart_->show();
    for (const QSize size : {QSize{500, 240}, QSize{500, 220}, QSize{507, 220}, QSize{507, 236}}) {
        if (size == QSize{500, 240}) {
            chart_->resize(size);
            fill(*chart_);
        } else {
            chart_->resize(size);
        }
        settle();
        TrendChart fresh{*theme_};
        fresh.resize(size);
        fresh.show();
        fill(fresh);
        settle();
        EXPECT_EQ(drawn(), fresh.grab().toImage()) << size.width() << " x " << size.height();
    }
}

}
