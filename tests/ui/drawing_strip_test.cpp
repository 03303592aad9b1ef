#include "tests/support/pictures.h"
#include "ui/drawing/legend.h"
#include "ui/drawing/ring.h"
#include "ui/drawing/strip.h"
#include "ui/drawing/tray_icon.h"

#include <QGuiApplication>
#include <QPainter>

#include <gtest/gtest.h>

#include <functional>

using namespace tierloam;
using namespace tierloam::drawing;
using std::chrono::days;

namespace {

constexpr Day start = std::chrono::sys_days{std::chrono::year{2031} / 1 / 1};

Type typeAt(int percent)
{
    QFont font = QGuiApplication::font();
    font.setPointSizeF(font.pointSizeF() * percent / 100);
    return Type::from(font);
}

QImage drawn(QSize size, const Palette& palette, const std::function<void(QPainter&)>& draw)
{
    QImage image{size, QImage::Format_RGB32};
    image.fill(palette.ground);
    QPainter painter{&image};
    draw(painter);
    return image;
}

/// Rows of the image, within `plot`, in which the line's colour is seen at x: the middle of them.
double lineRow(const QImage& image, int x, const QColor& colour)
{
    double sum = 0;
    int count = 0;
    for (int y = 0; y < image.height(); ++y)
        if (tests::near(image.pixelColor(x, y), colour, 40)) {
            sum += y;
            ++count;
        }
    return count ? sum / count : -1;
}

}

TEST(Strip, LineLiesAtItsShareOfTheTop)
{
    const Palette& palette = Palette::light();
    const Type type = typeAt(100);
    const TimeAxis axis{start, start + days{100}, {}};
    Strip strip;
    strip.colour = palette.moss;
    strip.top = 40;
    for (int i = 0; i <= 100; i += 10) strip.points.push_back({start + days{i}, 10, i < 50 ? 10.0 : 30.0, 30});
    const QRectF room{0, 0, 400, 120};
    const QImage image = drawn({400, 120}, palette, [&](QPainter& p) { drawStrip(p, room, strip, axis, palette, type); });
    const QRectF plot = plotOf(room, type);
    EXPECT_NEAR(lineRow(image, 100, palette.moss), plot.bottom() - plot.height() * 0.25, 1.5);
    EXPECT_NEAR(lineRow(image, 300, palette.moss), plot.bottom() - plot.height() * 0.75, 1.5);
}

TEST(Strip, PointsOutsideTheAxisAreLeftOut)
{
    const Palette& palette = Palette::light();
    const Type type = typeAt(100);
    Strip strip;
    strip.colour = palette.moss;
    strip.top = 40;
    strip.points = {{start - days{50}, 10, 20, 30}, {start - days{40}, 10, 20, 30}};
    const QImage image = drawn({200, 60}, palette, [&](QPainter& p) { drawStrip(p, {0, 0, 200, 60}, strip, {start, start + days{10}, {}}, palette, type); });
    EXPECT_EQ(tests::countColour(image, image.rect(), palette.moss, 40), 0);
}

TEST(Strip, TitleValueAndRangeGiveWayInTurnAndNeverOverlap)
{
    const Palette& palette = Palette::light();
    Strip strip;
    strip.title = QStringLiteral("processing, dry");
    strip.value = QStringLiteral("31 g/d");
    strip.range = QStringLiteral("24–39");
    for (const int percent : {100, 150, 200}) {
        const Type type = typeAt(percent);
        const double needed = textWidth(type.small, strip.title) + 6 + textWidth(type.smallStrong, strip.value);
        QImage image{600, 100, QImage::Format_RGB32};
        QPainter painter{&image};
        EXPECT_TRUE(drawStrip(painter, {0, 0, needed + 2, 90}, strip, {start, start + days{10}, {}}, palette, type)) << percent;
        EXPECT_FALSE(drawStrip(painter, {0, 0, needed - 20, 90}, strip, {start, start + days{10}, {}}, palette, type)) << percent;
    }
}

TEST(Bars, AreAsTallAsMeasuredAndAbsentWhereNothingWasWritten)
{
    const Palette& palette = Palette::light();
    const Type type = typeAt(100);
    Bars bars;
    bars.colour = palette.water;
    bars.top = 4;
    bars.bars = {{start, start + days{7}, 1.0, {}}, {start + days{7}, start + days{14}, {}, {}}, {start + days{14}, start + days{21}, 3.0, {}}};
    const QRectF room{0, 0, 210, 120};
    const QImage image = drawn({210, 120}, palette, [&](QPainter& p) { drawBars(p, room, bars, {start, start + days{21}, {}}, palette, type); });
    const QColor fill = mixed(palette.ground, palette.water, 0.78);
    const auto height = [&](int x) { return tests::countColour(image, {x, 0, 1, 120}, fill, 3); };
    const double plot = plotOf(room, type).height();
    EXPECT_NEAR(height(35), plot * 0.25, 2);
    EXPECT_EQ(height(105), 0);
    EXPECT_NEAR(height(175), plot * 0.75, 2);
}

TEST(TimeAxis, TicksAreFirstsOfMonthsAndKeepApart)
{
    const TimeAxis axis{start, start + days{180}, {}};
    for (const int percent : {100, 200}) {
        const Type type = typeAt(percent);
        for (const double width : {90.0, 180.0, 300.0, 900.0}) {
            const std::vector<TimeAxis::Tick> ticks = axis.ticks(width, type.small);
            double end = -10;
            for (const TimeAxis::Tick& tick : ticks) {
                EXPECT_EQ(unsigned{std::chrono::year_month_day{tick.day}.day()}, 1U);
                const double x = width * daysBetween(start, tick.day) / 180;
                EXPECT_GE(x, end + 8 - 1e-9);
                end = x + textWidth(type.small, tick.name);
                EXPECT_LE(end, width + 1);
            }
            if (width >= 300) {
                EXPECT_GE(ticks.size(), 2U) << width << " " << percent;
            }
        }
    }
    EXPECT_EQ(axis.ticks(900, typeAt(100).small).size(), 6U); // January to June
}

TEST(RoundTop, IsRoundAndHoldsTheValue)
{
    EXPECT_DOUBLE_EQ(roundTop(31), 40);
    EXPECT_DOUBLE_EQ(roundTop(0.9), 1);
    EXPECT_DOUBLE_EQ(roundTop(1.0), 1);
    EXPECT_DOUBLE_EQ(roundTop(1.2), 1.5);
    EXPECT_DOUBLE_EQ(roundTop(0), 1);
    EXPECT_DOUBLE_EQ(roundTop(-3), 1);
}

TEST(Ring, ArcGrowsWithTheChanceAndStatesDifferInShape)
{
    const Palette& palette = Palette::light();
    const Type type = typeAt(100);
    const auto ring = [&](double p, reckoning::TrayState state) {
        return drawn({60, 60}, palette, [&](QPainter& painter) { drawRing(painter, {0, 0, 60, 60}, {p, state}, palette, type); });
    };
    const auto ink = [&](const QImage& image) { return tests::countColour(image, {0, 0, 60, 60}, palette.amber, 30); };
    using reckoning::TrayState;
    EXPECT_GT(ink(ring(0.6, TrayState::working)), 1.5 * ink(ring(0.3, TrayState::working)));
    EXPECT_GT(ink(ring(0.5, TrayState::nearly)), 1.3 * ink(ring(0.5, TrayState::working)));
    const QImage ready = ring(0.93, TrayState::ready);
    EXPECT_GT(tests::countColour(ready, {15, 8, 30, 8}, palette.moss, 6), 150); // a disc
    tests::keepPicture(ready, QStringLiteral("ring-ready"));
    // Seen without colour, no two states are the same picture.
    std::vector<QImage> grey;
    for (const TrayState state : {TrayState::working, TrayState::nearly, TrayState::ready, TrayState::overdue, TrayState::drying})
        grey.push_back(ring(0.85, state).convertToFormat(QImage::Format_Grayscale8));
    for (std::size_t a = 0; a < grey.size(); ++a)
        for (std::size_t b = a + 1; b < grey.size(); ++b) EXPECT_NE(grey[a], grey[b]) << a << b;
}

TEST(Legend, WrapsWithoutLosingAnything)
{
    for (const bool dark : {false, true})
        for (const int percent : {100, 200}) {
            const Palette& palette = dark ? Palette::dark() : Palette::light();
            const Type type = typeAt(percent);
            double before = 0;
            for (const int width : {1000, 420, 240}) {
                const double height = legendHeight(width, type);
                EXPECT_GE(height, before);
                before = height;
                double used = 0;
                const QImage image = drawn({width, static_cast<int>(height) + 2}, palette, [&](QPainter& p) { used = drawLegend(p, {0, 0, static_cast<double>(width), height}, palette, type); });
                EXPECT_DOUBLE_EQ(used, height);
                tests::keepPicture(image, QStringLiteral("legend-%1-%2-%3").arg(dark ? QStringLiteral("dark") : QStringLiteral("light")).arg(percent).arg(width));
            }
        }
}

TEST(TrayIcon, MarksItsPart)
{
    const Palette& palette = Palette::light();
    const auto middleOfInk = [&](int trays, std::optional<int> slot) {
        const QImage image = drawn({24, 40}, palette, [&](QPainter& p) { drawTrayIcon(p, {0, 0, 24, 40}, {trays, slot, palette.brick}, palette); });
        return lineRow(image, 12, palette.brick);
    };
    EXPECT_GT(middleOfInk(3, 0), middleOfInk(3, 1));
    EXPECT_GT(middleOfInk(3, 1), middleOfInk(3, 2));
    EXPECT_GT(middleOfInk(3, 2), middleOfInk(3, 3));
    EXPECT_EQ(middleOfInk(3, {}), -1);
    EXPECT_GT(middleOfInk(9, 9), 0); // a tall stack still shows its top tray
    EXPECT_LT(middleOfInk(9, 9), middleOfInk(9, 4));
}

TEST(Strip, ALogAxisPutsEqualRatiosEquallyFarApart)
{
    Strip strip;
    strip.log = true;
    strip.bottom = 0.01;
    strip.top = 10;
    const QRectF plot{0, 0, 100, 300};
    EXPECT_NEAR(strip.yOf(10, plot), 0, 1e-9);
    EXPECT_NEAR(strip.yOf(1, plot), 100, 1e-9);
    EXPECT_NEAR(strip.yOf(0.1, plot), 200, 1e-9);
    EXPECT_NEAR(strip.yOf(0, plot), 300, 1e-9);   // held to the edge, never beyond it
    EXPECT_NEAR(strip.yOf(999, plot), 0, 1e-9);
    strip.log = false;
    EXPECT_NEAR(strip.yOf(1, plot), 300 - 300 * 0.99 / 9.99, 1e-9);
}

TEST(Strip, ForecastStandsApartAndTheLevelIsDrawn)
{
    const Palette& palette = Palette::light();
    const Type type = typeAt(100);
    const Day from = std::chrono::sys_days{std::chrono::year{2031} / 1 / 1};
    TimeAxis axis{from, from + std::chrono::days{100}, {}};
    Strip strip;
    strip.colour = palette.moss;
    strip.top = 10;
    for (int i = 0; i <= 100; ++i) strip.points.push_back({from + std::chrono::days{i}, 4, 5, 6});
    const QRect room{0, 0, 400, 80};
    const auto picture = [&] { return drawn(room.size(), palette, [&](QPainter& painter) { drawStrip(painter, room, strip, axis, palette, type); }); };
    const QImage past = picture();
    axis.future = axis.from + (axis.to - axis.from) / 2;
    const QImage ahead = picture();
    const int half = static_cast<int>(axis.xOf(*axis.future, plotOf(room, type)));
    EXPECT_EQ(past.copy(0, 30, half - 4, 50), ahead.copy(0, 30, half - 4, 50)) << "what was is drawn as before";
    EXPECT_NE(past.copy(half + 4, 30, 390 - half, 50), ahead.copy(half + 4, 30, 390 - half, 50));
    // Dashed: there is less of the line's colour in the forecast than where it was drawn through.
    const QRect right{half + 4, 20, 390 - half, 60};
    EXPECT_LT(tests::countColour(ahead, right, strip.colour, 20), 0.9 * tests::countColour(past, right, strip.colour, 20));
    strip.level = Strip::Level{strip.top / 2, QStringLiteral("full")};
    EXPECT_NE(ahead, picture());
    const QImage with = picture();
    strip.level->value = strip.top * 2; // beyond the axis: not drawn
    EXPECT_NE(with, picture());
    EXPECT_EQ(ahead, picture());
}

TEST(Legend, RatioKeepsItsOrderWithinWordsFromRightToLeft)
{
    const QString plain = legendText();
    QGuiApplication::setLayoutDirection(Qt::RightToLeft);
    const QString mirrored = legendText();
    QGuiApplication::setLayoutDirection(Qt::LeftToRight);
    EXPECT_FALSE(plain.contains(QChar{0x2066}));
    EXPECT_TRUE(mirrored.contains(QStringLiteral("\u20660.07 : 1\u2069 = "))) << mirrored.toStdString();
}
