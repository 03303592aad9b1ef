// Who sees no colours: two stacks that lie over each other in one chart still differ, and so do the signs of what happened.
#include "tests/support/sample_reckoning.h"
#include "ui/trends/dense_ink.h"
#include "ui/trends/line_key.h"
#include "ui/trends/mark_sign.h"
#include "ui/trends/plot_layer.h"
#include "ui/trends/trend_words.h"

#include <gtest/gtest.h>

#include <QImage>
#include <QPainter>

#include <cmath>
#include <cstdlib>

namespace tierloam::trends {
namespace {

using std::chrono::days;

constexpr int seen = 64;             ///< steps of grey, of 255, that an eye tells on thin lines

/// Pixels that differ in grey by more than an eye needs.
int differ(const QImage& a, const QImage& b)
{
    int count = 0;
    for (int y = 0; y < a.height(); ++y)
        for (int x = 0; x < a.width(); ++x) count += std::abs(qGray(a.pixel(x, y)) - qGray(b.pixel(x, y))) > seen;
    return count;
}

const drawing::Palette& paletteOf(bool dark) { return dark ? drawing::Palette::dark() : drawing::Palette::light(); }

enum class Kind { line, bars, sum, logged, harvests };

Series seriesOf(Kind kind, int place)
{
    const Day today = tests::sampleToday();
    Series series;
    series.place = place;
    for (int week = 40; week >= 0; --week) {
        const Day day = today - days{7 * week};
        if (kind == Kind::line) series.past.push_back({day, {28, 30, 32}});
        if (kind == Kind::bars) series.bars.push_back({day, 7, 30});
        if (kind == Kind::sum) series.totals.push_back({day, 30});
        if (kind == Kind::logged) series.logged.push_back({day, 1, 10, 30, 50});
        if (kind == Kind::harvests && week % 8 == 0) series.yields.push_back({day, day, 30, 0, {}});
    }
    return series;
}

/// One of two stacks over each other, as the first or the second of them would look; where it lies is the same.
QImage drawn(Kind kind, int place, bool dark)
{
    const Day today = tests::sampleToday();
    PlotLayer layer{nullptr};
    const QRectF area{0, 0, 400, 160};
    const auto number = [](Day day) { return static_cast<double>(day.time_since_epoch().count()); };
    layer.setFrame({area, number(today - days{290}), number(today + days{10}), 0, 60, false});
    layer.setContents({seriesOf(kind, place)}, Period{today - days{290}, today, today + days{10}}, true);
    layer.setLook(paletteOf(dark), 1.0, Qt::black, QFont{});
    QImage image{area.size().toSize(), QImage::Format_RGB32};
    image.fill(paletteOf(dark).panel);
    QPainter painter{&image};
    layer.paint(&painter, nullptr, nullptr);
    painter.end();
    return image;
}

TEST(WithoutColours, StacksOverEachOtherDifferInEveryKindOfChart)
{
    for (const bool dark : {false, true})
        for (const auto& [kind, places] : {std::pair{Kind::line, 20}, {Kind::sum, 20}, {Kind::bars, 8}, {Kind::logged, 5}, {Kind::harvests, 8}}) {
            std::vector<QImage> pictures;
            for (int place = 0; place < places; ++place) {
                const QImage picture = drawn(kind, place, dark);
                for (std::size_t other = 0; other < pictures.size(); ++other)
                    EXPECT_GE(differ(picture, pictures[other]), 60) << "dark " << dark << ", kind " << static_cast<int>(kind) << ", places " << other << " and " << place;
                pictures.push_back(picture);
            }
        }
    // What must be found: places that come round to the same shape and only differ by their colour.
    EXPECT_LT(differ(drawn(Kind::bars, 1, false), drawn(Kind::bars, 9, false)), 60);
    EXPECT_LT(differ(drawn(Kind::logged, 1, false), drawn(Kind::logged, 6, false)), 60);
}

TEST(WithoutColours, TheKeyShowsTheSameDifferences)
{
    for (const bool bars : {false, true}) {
        std::vector<QImage> pictures;
        ui::Theme theme;
        for (int place = 0; place < (bars ? 8 : 10); ++place) {
            LineSample sample{theme, place, bars};
            sample.resize(sample.sizeHint());
            QImage picture = sample.grab().toImage().convertToFormat(QImage::Format_RGB32);
            for (std::size_t other = 0; other < pictures.size(); ++other) EXPECT_GE(differ(picture, pictures[other]), 5) << bars << ", places " << other << " and " << place;
            pictures.push_back(picture);
        }
    }
}

TEST(WithoutColours, EachSignOfWhatHappenedHasAShapeOfItsOwn)
{
    for (const bool dark : {false, true}) {
        std::vector<QImage> signs;
        for (const MarkKind kind : {MarkKind::feed, MarkKind::bedding, MarkKind::turn, MarkKind::harvest, MarkKind::worms, MarkKind::weighing, MarkKind::water, MarkKind::reading, MarkKind::event,
                                    MarkKind::drainLow, MarkKind::drainHigh}) {
            QImage sign{16, 16, QImage::Format_RGB32};
            sign.fill(paletteOf(dark).panel);
            QPainter painter{&sign};
            painter.setRenderHint(QPainter::Antialiasing);
            paintSign(painter, kind, {8, 8}, 8, paletteOf(dark));
            painter.end();
            for (std::size_t other = 0; other < signs.size(); ++other)
                EXPECT_GE(differ(sign, signs[other]), 5) << "dark " << dark << ": " << markName(kind).toStdString() << " and sign " << other;
            signs.push_back(sign);
        }
    }
}

}
}
