// A few charts as they were looked at once, plot area only, words masked; each planted fault must show.
#include "tests/support/golden.h"
#include "tests/support/sample_reckoning.h"
#include "ui/trends/trend_chart.h"

#include <gtest/gtest.h>

#include <QApplication>

#include <cmath>
#include <functional>

namespace tierloam::trends {

namespace {

using std::chrono::days;

constexpr double mayDiffer = 0.001; ///< of the pixels: edges that another version of the painter smooths otherwise
const QString folder = QStringLiteral(TIERLOAM_SOURCE_DIR "/tests/ui/golden");

struct Drawn {
    QImage image;
    QRect area;
};

Drawn draw(Measure measure, const std::vector<Series>& series, const Period& period, bool dark = false)
{
    ui::Theme theme;
    theme.setMode(dark ? ui::ThemeMode::dark : ui::ThemeMode::light);
    TrendChart chart{theme};
    chart.resize(520, 240);
    const Ends ends = endsOf(measure, series);
    chart.setContents(measure, series, period, ends.top, ends.bottom);
    Drawn drawn{chart.grab().toImage().convertToFormat(QImage::Format_RGB32), {}};
    drawn.area = chart.frame().area.toAlignedRect().intersected(drawn.image.rect());
    return drawn;
}

class GoldenCharts : public testing::Test {
protected:
    Day today() const { return tests::sampleToday(); }
    Period period() const { return {today() - days{365}, today(), today() + days{91}}; }

    Series wave(int place, double level) const
    {
        Series series;
        series.stack = QStringLiteral("Stack %1").arg(place);
        series.place = place;
        for (int day = 360; day >= 0; day -= 6) {
            const double y = level * (1 + 0.4 * std::sin(day * 0.05 + place));
            series.past.push_back({today() - days{day}, {y * 0.7, y, y * 1.35}});
        }
        series.ahead = {series.past.back(), {today() + days{30}, {level * 0.6, level, level * 1.6}}, {today() + days{91}, {level * 0.4, level * 0.9, level * 1.9}}};
        series.marks = {{today() - days{300}, MarkKind::bedding, {}, {}}, {today() - days{150}, MarkKind::turn, {}, {}}, {today() - days{140}, MarkKind::harvest, {}, {}}};
        return series;
    }
    Series ratio() const
    {
        Series series = wave(0, 1);
        series.marks.clear();
        for (std::size_t i = 0; i < series.past.size(); ++i) {
            const double y = 3 * std::exp(-0.09 * static_cast<double>(i % 40));
            series.past[i].band = {y / 2, y, y * 2};
            series.past[i].batch = static_cast<int>(i / 40);
        }
        series.ahead.clear();
        return series;
    }
    Series yields() const
    {
        Series series;
        series.stack = QStringLiteral("Stack 0");
        for (int i = 0; i < 4; ++i) {
            Yield one;
            one.from = one.until = today() - days{300 - 80 * i};
            one.kg = 2 + i * 0.4;
            one.expected = reckoning::Band{1.8, 2.4, 3.1};
            one.checked = 1;
            series.yields.push_back(one);
        }
        return series;
    }

    using Fault = std::function<void(std::vector<Series>&)>;
    /// The picture is as it was, and each fault is seen.
    void hold(const char* name, Measure measure, const std::vector<Series>& series, const std::vector<Fault>& faults, bool dark = false)
    {
        const Drawn drawn = draw(measure, series, period(), dark);
        tests::keepPicture(drawn.image, QString::fromLatin1(name));
        const QImage kept = tests::golden(folder, QString::fromLatin1(name), drawn.image);
        ASSERT_FALSE(kept.isNull()) << name << ": no golden picture";
        // Words that stand in the plot area: "ready" at the beginning of its line.
        std::vector<QRect> masks;
        if (measure == Measure::feedToCast) masks.push_back({drawn.area.left(), drawn.area.top(), 60, drawn.area.height()});
        const auto difference = tests::differenceOf(drawn.image, kept, drawn.area, masks);
        tests::keepPicture(difference.where, QString::fromLatin1(name) + QStringLiteral("-difference"));
        EXPECT_LE(difference.share, mayDiffer) << name;
        int number = 0;
        for (const Fault& fault : faults) {
            std::vector<Series> wrong = series;
            fault(wrong);
            EXPECT_GT(tests::differenceOf(draw(measure, wrong, period(), dark).image, kept, drawn.area, masks).share, mayDiffer) << name << ", fault " << number << " is not seen";
            ++number;
        }
    }
};

}

TEST_F(GoldenCharts, OneStackWithBandForecastAndMarks)
{
    hold("chart-one", Measure::processing, {wave(0, 20)},
         {[](auto& all) { for (Point& point : all[0].past) point.band.p95 = point.band.p50; },        // half a band
          [](auto& all) { for (Point& point : all[0].past) point.day += days{5}; },                   // five days late
          [](auto& all) { all[0].ahead.clear(); },                                                    // no forecast
          [](auto& all) { all[0].marks.clear(); }});
}

TEST_F(GoldenCharts, TwoStacksTogetherInTheDark)
{
    hold("chart-two-dark", Measure::colony, {wave(0, 0.8), wave(1, 1.4)},
         {[](auto& all) { std::swap(all[0].place, all[1].place); }, // each in the other's colour and dashes
          [](auto& all) { all.pop_back(); }}, true);
}

TEST_F(GoldenCharts, FeedToCastOnItsLogAxisWithTheReadyLine)
{
    hold("chart-feed-to-cast", Measure::feedToCast, {ratio()},
         {[](auto& all) { for (Point& point : all[0].past) point.batch = 0; }, // one line from batch to batch
          [](auto& all) { for (Point& point : all[0].past) point.band = {point.band.p05 * 1.3, point.band.p50 * 1.3, point.band.p95 * 1.3}; }});
}

TEST_F(GoldenCharts, YieldBesideWhatWasExpected)
{
    hold("chart-yield", Measure::yield, {yields()},
         {[](auto& all) { for (Yield& each : all[0].yields) each.expected.reset(); },
          [](auto& all) { all[0].yields[1].kg = 1; }});
}

}
