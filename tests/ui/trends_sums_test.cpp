// What is summed and marked: drained in all, castings by harvest and year, drains outside what was expected, and the axis of feed-to-cast.
#include "core/exchange/csv.h"
#include "ui/trends/plot_frame.h"
#include "ui/trends/trend_csv.h"
#include "ui/trends/trend_sentence.h"
#include "ui/trends/trend_table.h"
#include "ui/trends/trend_words.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace tierloam::trends {

namespace {

using std::chrono::days;

constexpr Day first{std::chrono::sys_days{std::chrono::year{2030} / 3 / 1}};
constexpr Day today = first + days{400}; // 5 April 2031

class TrendSums : public testing::Test {
protected:
    void add(int day, journal::Action action)
    {
        journal::Entry entry;
        entry.date.day = first + days{day};
        entry.stack = "Scullery";
        entry.action = std::move(action);
        view_.entries.push_back(std::move(entry));
    }
    void drained(int day, double litres)
    {
        journal::Drain drain;
        drain.volume = Amount{litres, Unit::L};
        add(day, drain);
    }
    void harvested(int day, Amount amount, double expected = 0)
    {
        journal::Harvest harvest;
        harvest.taken = amount;
        add(day, harvest);
        if (expected > 0) stack_.harvests.push_back({first + days{day}, 1, amount.mass()->base(), {expected - 0.3, expected, expected + 0.4}, {}, 0});
    }
    /// A flat estimate a week.
    void estimated(double flow)
    {
        for (int day = 0; day <= 400; day += 5) {
            reckoning::StackEstimate estimate;
            estimate.day = first + days{day};
            estimate.drainedLPerWeek = {flow * 0.5, flow, flow * 2};
            reckoning::TrayEstimate tray;
            tray.slot = 1;
            tray.batch = day < 200 ? 1 : 2;
            const double ratio = day < 200 ? 2.0 - day * 0.0095 : 5.0;
            tray.feedToCast = {ratio / 2, ratio, ratio * 2};
            estimate.slots = {tray};
            stack_.history.push_back(estimate);
        }
    }
    Series whole(Measure measure, Sums sums = {}) { return wholeSeries(measure, {QStringLiteral("Scullery"), 0, &stack_, nullptr, changed_}, view_, period_, sums); }

    household::JournalView view_;
    reckoning::StackReckoning stack_;
    const std::vector<reckoning::StackEstimate>* changed_ = nullptr;
    const Period period_{first, today, today + days{90}};
};

}

TEST_F(TrendSums, DrainageAddedUpIsTheSumOfAllThatWasDrained)
{
    estimated(1.4);
    for (int day = 7; day <= 393; day += 7) drained(day, 0.5);
    const Series series = whole(Measure::drainage, {true, false});
    ASSERT_FALSE(series.totals.empty());
    EXPECT_TRUE(series.bars.empty()) << "the sums stand alone";
    EXPECT_NEAR(series.totals.back().litres, 28.0, 1e-9);
    EXPECT_EQ(series.totals.back().day, today) << "the last step goes on to today";
    EXPECT_NEAR(series.past.back().band.p50, 1.4 / 7 * 400, 1e-9);
    EXPECT_NEAR(series.past.back().band.p95, 2 * 1.4 / 7 * 400, 1e-9) << "as if every week erred to the same side";
    EXPECT_TRUE(std::ranges::is_sorted(series.past, {}, [](const Point& point) { return point.band.p50; }));
    const Series weekly = whole(Measure::drainage);
    EXPECT_TRUE(weekly.totals.empty());
    EXPECT_NEAR(weekly.past.back().band.p50, 1.4, 1e-12);
    // Part of the time shows the same sums.
    const Series part = seenOf(series, {today - days{50}, today, today - days{10}});
    EXPECT_NEAR(part.totalAt(today - days{10})->litres, 0.5 * 55, 0.51);
}

TEST_F(TrendSums, WeeksShowWhenTheViewIsShortAndFourWeeksWhenItIsLong)
{
    for (int day = 1; day <= 400; ++day) drained(day, 0.1);
    Period longer{today - days{800}, today, today + days{90}};
    const Series series = wholeSeries(Measure::drainage, {QStringLiteral("Scullery"), 0, nullptr, nullptr, nullptr}, view_, longer);
    const Series all = seenOf(series, longer);
    ASSERT_FALSE(all.bars.empty());
    EXPECT_EQ(all.bars.back().days, 28);
    EXPECT_LE(all.bars.size(), 30u);
    const Series part = seenOf(series, {today - days{100}, today, today});
    EXPECT_EQ(part.bars.back().days, 7);
    EXPECT_NEAR(part.bars.back().perWeek, 0.7, 1e-9);
    EXPECT_NEAR(all.bars.back().perWeek, 0.7, 1e-9) << "a flow a week in both";
    for (const Bar& bar : part.bars) EXPECT_GT(bar.from + days{bar.days}, today - days{100});
}

TEST_F(TrendSums, AFullSumpThatWasShutGaveAllItHolds)
{
    for (const int day : {30, 40}) stack_.drains.push_back({first + days{day}, 3.8, {4.5, 6.0, 8.0}});
    EXPECT_EQ(whole(Measure::drainage).marks.size(), 1u);
    stack_.record.spigotShut = true; // of 4 L: the rest ran over, as the advice has it
    EXPECT_TRUE(whole(Measure::drainage).marks.empty());
}

TEST_F(TrendSums, TwoDrainsInARowOutsideTheBandAreMarkedWithWords)
{
    const auto check = [&](int day, double litres) { stack_.drains.push_back({first + days{day}, litres, {0.5, 1.0, 1.5}}); };
    check(10, 0.2); // alone: not marked
    check(20, 1.0);
    check(30, 0.2);
    check(40, 0.3); // the second in a row
    check(50, 2.0);
    check(60, 2.1); // too much, twice
    const Series series = whole(Measure::drainage);
    ASSERT_EQ(series.marks.size(), 2u);
    EXPECT_EQ(series.marks[0].day, first + days{40});
    EXPECT_EQ(series.marks[0].kind, MarkKind::drainLow);
    EXPECT_EQ(series.marks[1].day, first + days{60});
    EXPECT_EQ(series.marks[1].kind, MarkKind::drainHigh);
    EXPECT_FALSE(markWords(MarkKind::drainLow).isEmpty());
    EXPECT_NE(markWords(MarkKind::drainLow), markWords(MarkKind::drainHigh));
    EXPECT_TRUE(readoutOf(Measure::drainage, series, first + days{40}, today).contains(markName(MarkKind::drainLow)));
}

TEST_F(TrendSums, YieldStandsBesideWhatWasExpectedByHarvestAndByYear)
{
    harvested(100, {3.0, Unit::kg}, 2.8);
    harvested(200, {2.0, Unit::kg}, 2.6);
    harvested(250, {5.0, Unit::L}); // by volume: a mark and no bar
    harvested(390, {1500, Unit::g}, 1.4);
    const Series each = whole(Measure::yield);
    ASSERT_EQ(each.yields.size(), 3u);
    EXPECT_NEAR(each.yields[2].kg, 1.5, 1e-12);
    ASSERT_TRUE(each.yields[0].expected);
    EXPECT_NEAR(each.yields[0].expected->p50, 2.8, 1e-12);
    ASSERT_EQ(each.marks.size(), 1u);
    const QString sentence = sentenceOf(Measure::yield, each, period_, true);
    EXPECT_TRUE(sentence.contains(QStringLiteral("2 of 3"))) << sentence.toStdString(); // 2.0 kg lies below 2.3 to 3.0

    const Series years = whole(Measure::yield, {false, true});
    ASSERT_EQ(years.yields.size(), 2u);
    EXPECT_NEAR(years.yields[0].kg, 5.0, 1e-12) << "of 2030";
    EXPECT_EQ(years.yields[0].harvests, 2);
    EXPECT_EQ(yieldTime(years.yields[0], today), QStringLiteral("2030"));
    EXPECT_NEAR(years.yields[0].expected->p50, 5.4, 1e-9);
    EXPECT_NEAR(years.yields[0].expected->p95 - 5.4, 0.4 * std::sqrt(2.0), 1e-9) << "they err apart";
    EXPECT_NEAR(years.yields[1].kg, 1.5, 1e-12);

    TrendTable table;
    table.setContents(Measure::yield, {each}, period_);
    EXPECT_EQ(table.rowCount(), 3);
    EXPECT_EQ(table.columnCount(), 3);
    table.setContents(Measure::yield, {years}, period_);
    EXPECT_EQ(table.rowCount(), 2);
    EXPECT_EQ(table.index(1, 0).data().toString(), QStringLiteral("2030"));
}

TEST_F(TrendSums, FeedToCastIsOfTheBottomTrayAndEachBatchHasItsOwnLine)
{
    estimated(1);
    const Series series = whole(Measure::feedToCast);
    ASSERT_GT(series.past.size(), 50u);
    EXPECT_EQ(series.past.front().batch, 1);
    EXPECT_EQ(series.past.back().batch, 2);
    const Ends ends = endsOf(Measure::feedToCast, {series});
    EXPECT_LE(ends.bottom, readyAtRatio / 2);
    EXPECT_GE(ends.top, 5.0);
    Frame frame{{0, 0, 100, 90}, 0, 100, 0.01, 10, true};
    EXPECT_NEAR(frame.y(10), 0, 1e-9);
    EXPECT_NEAR(frame.y(1) - frame.y(10), 30, 1e-9) << "each decade has the same height";
    EXPECT_NEAR(frame.y(0.1) - frame.y(1), 30, 1e-9);
    EXPECT_GT(frame.y(0), 90) << "nothing is below half of the bottom, and it can be drawn";
    frame.log = false;
    EXPECT_LT(frame.y(1) - frame.y(10), 82) << "a straight scale is another";
    // A fresh bed has nothing to divide by: the axis does not go up to it.
    stack_.history.back().slots.front().feedToCast = {999, 999, 999};
    EXPECT_LE(endsOf(Measure::feedToCast, {whole(Measure::feedToCast)}).top, 10);
}

TEST_F(TrendSums, AChangeStandsBesideTheBaseCaseInWordsTableAndFigures)
{
    estimated(1);
    std::vector<reckoning::StackEstimate> days(2);
    days[0].day = today + std::chrono::days{7};
    days[0].colonyKg = {1, 2, 3};
    days[1].day = today + std::chrono::days{14};
    days[1].colonyKg = {1.5, 2.5, 3.5};
    changed_ = &days;
    const Series series = whole(Measure::colony);
    ASSERT_EQ(series.changed.size(), 3u);
    EXPECT_EQ(series.changed.front().day, today) << "it leaves the base case today";
    EXPECT_TRUE(sentenceOf(Measure::colony, series, period_, true).contains(QStringLiteral("With the change")));
    EXPECT_TRUE(readoutOf(Measure::colony, series, today + std::chrono::days{14}, today).contains(valueText(Measure::colony, days[1].colonyKg)));
    TrendTable table;
    table.setContents(Measure::colony, {series}, period_);
    EXPECT_EQ(table.columnCount(), 3);
    SeenTrends seen;
    seen.view = period_;
    seen.measures.push_back({Measure::colony, {}, 1, {}, {series}});
    EXPECT_NE(seenCsv(seen).find("colony,Scullery,2031-04-19,2031-04-19,change,1.5,2.5,3.5,kg"), std::string::npos) << seenCsv(seen);
    changed_ = nullptr;
    EXPECT_TRUE(whole(Measure::colony).changed.empty());
}

TEST_F(TrendSums, FiguresHoldWhatIsSeenAndNoFormula)
{
    estimated(1);
    drained(350, 0.5);
    Series series = whole(Measure::drainage);
    series.stack = QStringLiteral("=SUM(A1,2)");
    SeenTrends seen;
    seen.view = {today - days{60}, today, today};
    seen.measures.push_back({Measure::drainage, {}, 1, {}, {series}});
    const std::string text = seenCsv(seen);
    const auto records = exchange::csv::read(text);
    ASSERT_GT(records.size(), 5u);
    for (std::size_t i = 1; i < records.size(); ++i) {
        ASSERT_EQ(records[i].cells.size(), 9u);
        EXPECT_EQ(records[i].cells[1], "\\=SUM(A1,2)");
        const auto until = parseDay(records[i].cells[3]);
        ASSERT_TRUE(until);
        EXPECT_GE(*until, seen.view.from) << "days before are not seen";
    }
    EXPECT_NE(text.find("drained"), std::string::npos);
}

}
