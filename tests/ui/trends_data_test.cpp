#include "tests/support/sample_reckoning.h"
#include "ui/trends/time_ticks.h"
#include "ui/trends/trend_data.h"
#include "ui/trends/trend_sentence.h"
#include "ui/trends/trend_words.h"

#include <gtest/gtest.h>

#include <QLocale>

namespace tierloam::trends {

namespace {

using std::chrono::days;

constexpr Day day(int year, unsigned month, unsigned dayOfMonth)
{
    return std::chrono::sys_days{std::chrono::year{year} / std::chrono::month{month} / std::chrono::day{dayOfMonth}};
}

household::JournalView viewOf(journal::Entries entries)
{
    household::JournalView view;
    view.entries = std::move(entries);
    view.replay = journal::replay(view.entries);
    return view;
}

journal::Entry entryOn(Day on, journal::Action action, const char* stack = "Scullery")
{
    journal::Entry entry;
    entry.date.day = on;
    entry.stack = stack;
    entry.action = std::move(action);
    return entry;
}

journal::Drain drained(double litre)
{
    journal::Drain drain;
    drain.volume = Amount{litre, Unit::L};
    return drain;
}

std::vector<Point> wave(int count)
{
    std::vector<Point> points;
    for (int i = 0; i < count; ++i) {
        const double y = 10 + 5 * std::sin(i * 0.1) + (i == count / 3 ? 100 : 0);
        points.push_back({day(2000, 1, 1) + days{i}, {y - 1, y, y + 1}});
    }
    return points;
}

}

TEST(TrendData, ThinnedKeepsEndsPeaksAndOrder)
{
    const auto points = wave(8000);
    const auto kept = thinned(points, 1000);
    EXPECT_LE(kept.size(), 1000u);
    EXPECT_GT(kept.size(), 800u);
    EXPECT_EQ(kept.front().day, points.front().day);
    EXPECT_EQ(kept.back().day, points.back().day);
    EXPECT_TRUE(std::ranges::is_sorted(kept, {}, &Point::day));
    const auto highest = [](const std::vector<Point>& p) {
        return std::ranges::max_element(p, {}, [](const Point& each) { return each.band.p50; })->band.p50;
    };
    EXPECT_EQ(highest(kept), highest(points)) << "the one day that stands out is what people look for";
}

TEST(TrendData, ShortSeriesIsLeftAlone)
{
    EXPECT_EQ(thinned(wave(500), 1000).size(), 500u);
}

TEST(TrendData, PeriodDoesNotStartBeforeTheFirstStack)
{
    const Day today = day(2031, 5, 2);
    const Period young = periodOf(Range::twoYears, today, day(2031, 1, 10));
    EXPECT_LT(young.from, day(2031, 1, 10));
    EXPECT_LE(daysBetween(young.from, day(2031, 1, 10)), 5);
    const Period old = periodOf(Range::days30, today, day(2029, 1, 1));
    EXPECT_EQ(old.from, today - days{30});
    EXPECT_GT(old.until, today);
    EXPECT_LE(daysBetween(today, old.until) * 2, daysBetween(old.from, today)) << "the past has most of the room";
    EXPECT_EQ(periodOf(Range::all, today, std::nullopt).from, today - days{30});
    EXPECT_LE(periodOf(Range::year, today, today).from, today - days{7}) << "a chart of no width";
}

TEST(TrendData, BarsSumWhatWasDrainedPerWeek)
{
    const Day today = day(2031, 5, 2);
    const Period period{today - days{27}, today, today};
    journal::Flush flush;
    flush.poured = Amount{2, Unit::L};
    flush.drained = litres(3.2);
    const auto view = viewOf({entryOn(today - days{20}, drained(1.0)), entryOn(today - days{6}, drained(0.5)), entryOn(today, drained(0.25)),
                              entryOn(today, flush), entryOn(today, drained(9), "Cellar")});
    const auto bars = drainedBars(view, "Scullery", period);
    ASSERT_EQ(bars.size(), 4u);
    EXPECT_DOUBLE_EQ(bars[1].perWeek, 1.0);
    EXPECT_DOUBLE_EQ(bars[2].perWeek, 0.0);
    EXPECT_NEAR(bars[3].perWeek, 0.75 + 3.2, 1e-12) << "with the water of the flush, which the estimated line holds too";
    EXPECT_EQ(bars[3].from + days{bars[3].days}, today + days{1}) << "the last week ends today";
}

TEST(TrendData, ManyYearsAreBarsOfFourWeeks)
{
    const Day today = day(2031, 5, 2);
    const Period period{today - days{365 * 10}, today, today};
    const auto bars = drainedBars(viewOf({entryOn(today, drained(8))}), "Scullery", period);
    ASSERT_FALSE(bars.empty());
    EXPECT_EQ(bars.back().days, 28);
    EXPECT_DOUBLE_EQ(bars.back().perWeek, 2.0);
    EXPECT_LE(bars.size(), 3650u / 28 + 1);
}

TEST(TrendData, SeriesOfTheSampleHoldsPastForecastAndMarks)
{
    const auto reckoning = tests::sampleReckoning();
    const auto view = viewOf(tests::sampleJournal());
    const Period period = periodOf(Range::year, tests::sampleToday(), std::nullopt);
    ASSERT_NE(reckoning->stack("Scullery"), nullptr);
    reckoning::StackReckoning stack = *reckoning->stack("Scullery");
    for (int week = 0; week < 60; ++week) { // 0: the present once more, as some forecasts begin
        stack.forecast.days.push_back(stack.now);
        stack.forecast.days.back().day = stack.now.day + days{week * 7};
    }
    const Series series = seriesOf(Measure::processing, QStringLiteral("Scullery"), 0, &stack, view, period);
    ASSERT_GT(series.past.size(), 20u);
    EXPECT_EQ(series.past.back().day, tests::sampleToday());
    EXPECT_TRUE(std::ranges::any_of(series.marks, [](const Mark& mark) { return mark.kind == MarkKind::feed; }));
    for (const Point& point : series.past) EXPECT_GE(point.day, period.from);
    ASSERT_FALSE(series.ahead.empty());
    EXPECT_EQ(series.ahead.front().day, series.past.back().day) << "no gap between past and forecast";
    EXPECT_LE(series.ahead.back().day, period.until);
    EXPECT_TRUE(std::ranges::adjacent_find(series.ahead, std::ranges::greater_equal{}, &Point::day) == series.ahead.end()) << "a day twice";
    const Point* now = series.at(tests::sampleToday());
    ASSERT_NE(now, nullptr);
    EXPECT_EQ(now->band, stack.now.processingGDryPerDay);
    EXPECT_EQ(series.at(period.from - days{40}), nullptr);
}

TEST(TrendData, WeighingOfAShareStandsAtTheWhole)
{
    journal::Weigh weigh;
    weigh.worms = Amount{200, Unit::g};
    weigh.share = Share::fromPercent(25);
    const Day today = day(2031, 5, 2);
    const Series series = seriesOf(Measure::colony, QStringLiteral("Scullery"), 0, nullptr, viewOf({entryOn(today, weigh)}), {today - days{30}, today, today});
    ASSERT_EQ(series.marks.size(), 1u);
    EXPECT_NEAR(series.marks.front().value.value(), 0.8, 1e-12);
}

TEST(TrendData, TopHoldsEverythingAndIsRound)
{
    Series series;
    series.past = {{day(2031, 1, 1), {20, 31, 39}}};
    EXPECT_DOUBLE_EQ(roundTop({series}, 10), 40);
    series.bars = {{day(2031, 1, 1), 7, 41}};
    EXPECT_DOUBLE_EQ(roundTop({series}, 10), 50);
    EXPECT_DOUBLE_EQ(roundTop({}, 0.5), 0.5);
    Series harvests;
    harvests.yields.push_back({tests::sampleToday(), tests::sampleToday(), 2.0, 0, reckoning::Band{1.0, 2.0, 3.0}, 1, 0});
    EXPECT_GT(roundTop({harvests}, 0.5), 3.0) << "the cap of the upright stroke stands within the plot";
}

TEST(TrendData, LoggedDaysKeepTheirExtremesHoweverManyThereAre)
{
    const Day today = day(2031, 5, 2);
    const Period period{today - days{1499}, today, today};
    std::vector<store::LoggedDay> held;
    for (int i = 0; i < 1500; ++i) held.push_back({period.from + days{i}, store::LoggedKind::bin, 10 + i % 3, 18.0 - (i == 700 ? 30 : 0), 20.0, 22.0 + (i == 900 ? 15 : 0)});
    held.push_back({today, store::LoggedKind::air, 1, -99, -99, -99});
    held.push_back({today + days{1}, store::LoggedKind::bin, 1, 99, 99, 99});
    const auto spans = loggedOf(store::LoggedKind::bin, held, period);
    EXPECT_LE(spans.size(), static_cast<std::size_t>(mostLogged));
    EXPECT_GT(spans.size(), 300u);
    EXPECT_DOUBLE_EQ(std::ranges::min(spans, {}, &Logged::low).low, -12.0);
    EXPECT_DOUBLE_EQ(std::ranges::max(spans, {}, &Logged::high).high, 37.0);
    EXPECT_NEAR(spans.front().mean, 20.0, 1e-12);
    EXPECT_EQ(loggedOf(store::LoggedKind::bin, held, {today - days{30}, today, today}).size(), 31u) << "a day each while there is room";

    // The entry that holds a logged day's mean is not drawn again over it; one that was read by hand is.
    journal::Reading reading;
    reading.bin = celsius(20);
    const auto view = viewOf({entryOn(today, reading), entryOn(today - days{20}, reading)});
    const std::vector<store::LoggedDay> one{{today, store::LoggedKind::bin, 96, -3.5, 20, 22}};
    const Series series = seriesOf(Measure::temperature, QStringLiteral("Scullery"), 0, nullptr, view, {today - days{30}, today, today}, &one);
    ASSERT_EQ(series.marks.size(), 1u);
    EXPECT_EQ(series.marks.front().day, today - days{20});
    ASSERT_NE(series.loggedAt(today), nullptr);
    EXPECT_EQ(series.loggedAt(today - days{1}), nullptr);
    EXPECT_DOUBLE_EQ(roundBottom({series}), -5.0);
    EXPECT_DOUBLE_EQ(roundBottom({}), 0.0);
    EXPECT_TRUE(readoutOf(Measure::temperature, series, today, today).contains(QStringLiteral("mean")));
    EXPECT_TRUE(sentenceOf(Measure::temperature, series, {today - days{30}, today, today}, true).contains(QStringLiteral("A logger read")));
}

TEST(TimeTicks, FallOnCivilDatesAndAreFewEnough)
{
    const QLocale before;
    QLocale::setDefault(QLocale{QLocale::English, QLocale::UnitedKingdom});
    const auto month = timeTicks(day(2031, 4, 2), day(2031, 5, 16), 8, 8);
    ASSERT_FALSE(month.empty());
    for (const Tick& tick : month) EXPECT_EQ((std::chrono::weekday{tick.day}), std::chrono::Monday);
    EXPECT_EQ(month.front().label.toStdString(), "7 Apr");
    const auto years = timeTicks(day(2029, 5, 2), day(2031, 11, 1), 4, 7);
    ASSERT_LE(years.size(), 7u);
    ASSERT_GE(years.size(), 4u);
    for (const Tick& tick : years) EXPECT_EQ(unsigned{std::chrono::year_month_day{tick.day}.day()}, 1u);
    EXPECT_TRUE(std::ranges::any_of(years, [](const Tick& tick) { return tick.label == QStringLiteral("2030"); }));
    for (int most = 2; most <= 14; ++most) {
        for (const int length : {7, 30, 90, 365, 800, 4000, 36500}) {
            const auto ticks = timeTicks(day(2031, 5, 2) - days{length}, day(2031, 5, 2), most, most);
            EXPECT_LE(ticks.size(), static_cast<std::size_t>(most)) << length;
        }
    }
    QLocale::setDefault(before);
}

TEST(TrendWords, EmptyChartSaysWhatWillStandThere)
{
    const Period period = periodOf(Range::year, day(2031, 5, 2), std::nullopt);
    for (const Measure measure : allMeasures) {
        const QString waiting = sentenceOf(measure, {}, period, false);
        const QString empty = sentenceOf(measure, {}, period, true);
        EXPECT_FALSE(waiting.isEmpty());
        EXPECT_TRUE(empty.startsWith(QStringLiteral("Here stand"))) << empty.toStdString();
        EXPECT_NE(waiting, empty);
    }
}

TEST(TrendWords, SentenceSaysValueRangeAndMovement)
{
    Series series;
    series.past = {{day(2031, 1, 1), {10, 20, 30}}, {day(2031, 5, 2), {24, 31, 39}}};
    const Period period{day(2031, 1, 1), day(2031, 5, 2), day(2031, 6, 1)};
    const std::string text = sentenceOf(Measure::processing, series, period, true).remove(QChar{0x2060}).replace(QChar{0xA0}, u' ').toStdString();
    EXPECT_EQ(text, "The worms eat 31 g/d (24–39) of dry matter. Up from 20 g/d on 1 Jan.");
}

TEST(TrendWords, ATimeThatHasGoneByIsToldAsSuch)
{
    const Day today = day(2031, 5, 2);
    const Period gone{day(2031, 1, 1), today, day(2031, 2, 10)};
    Series series;
    series.past = {{day(2030, 12, 28), {1, 2, 3}}, {day(2031, 1, 4), {10, 20, 30}}, {day(2031, 2, 8), {24, 31, 39}}, {day(2031, 2, 15), {80, 90, 99}}};
    series.changed = {{today, {1, 1, 1}}, {today + days{7}, {2, 2, 2}}};
    const auto told = [&](Measure measure, const Period& view) {
        return sentenceOf(measure, series, view, true).remove(QChar{0x2060}).replace(QChar{0xA0}, u' ').toStdString();
    };
    EXPECT_EQ(told(Measure::processing, gone), "On 8 Feb the worms ate 31 g/d (24–39) of dry matter. Up from 20 g/d on 4 Jan.") << "nothing of the points beyond the edges";
    for (const Measure measure : allMeasures) {
        if (measure == Measure::yield) continue;
        const std::string sentence = told(measure, gone);
        EXPECT_NE(sentence.find("8 Feb"), std::string::npos) << sentence;
        for (const char* now : {"worms eat", "worms weigh ", "bed is", "holds", "It is ready", "has held", " since", "orecast", "With the change"}) EXPECT_EQ(sentence.find(now), std::string::npos) << sentence;
    }
    series.bars = {{day(2031, 1, 27), 7, 0.5}, {day(2031, 2, 3), 7, 1.5}};
    EXPECT_EQ(told(Measure::drainage, gone).substr(0, 39), "Drained 2.0 L in 2 week(s) to 9 Feb. To");
    series.bars.clear();
    series.totals = {{day(2030, 6, 1), 1.0}, {day(2031, 2, 1), 4.0}, {day(2031, 4, 1), 9.0}};
    EXPECT_EQ(told(Measure::drainage, gone).substr(0, 45), "Drained 4.0 L in all from 1 Jun 2030 to 10 Fe");
}

TEST(TrendWords, DaysToComeAreForeseen)
{
    const Day today = day(2031, 5, 2);
    Series series;
    series.past = {{day(2031, 1, 4), {10, 20, 30}}, {today, {24, 31, 39}}};
    series.ahead = {series.past.back(), {today + days{10}, {20, 33, 45}}, {today + days{40}, {20, 34, 50}}};
    const std::string text = sentenceOf(Measure::processing, series, {today + days{3}, today, today + days{20}}, true).remove(QChar{0x2060}).replace(QChar{0xA0}, u' ').toStdString();
    EXPECT_EQ(text, "Forecast for 12 May, fed as usual, no tray lifted: 33 g/d (20–45).");
}

TEST(TrendWords, AnEmptyTimeAmongOthersSaysSo)
{
    const Period view{day(2031, 1, 1), day(2031, 5, 2), day(2031, 2, 10)};
    EXPECT_EQ(nothingThen(Measure::yield, view), QStringLiteral("No castings were taken from 1 Jan to 10 Feb."));
}

}
