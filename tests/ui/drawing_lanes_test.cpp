// The names beside the lanes of a year: whatever their length and the letters' size, all of their words are painted.
#include "ui/drawing/lanes.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QImage>
#include <QPainter>

namespace tierloam::drawing {
namespace {

using std::chrono::days;

constexpr Day today{days{22400}};

Lanes year()
{
    Lanes lanes;
    lanes.axis = TimeAxis{today, today + days{365}, {}, {}};
    lanes.today = today;
    for (const auto& [name, slots] : {std::pair{"Porch", 3}, {"Laundry room, beneath the long shelf", 1}, {"Weatherproofgreenhouseextension", 2}}) {
        Lane lane;
        lane.name = QString::fromLatin1(name);
        lane.note = QStringLiteral("tomorrow: lift the bottom tray to the top and take its castings");
        lane.slots = slots;
        lane.stays = {{1, 1, today, today + days{120}, 60, false, false}};
        lanes.lanes.push_back(lane);
    }
    return lanes;
}

qsizetype ink(const QImage& image, const QRectF& room)
{
    qsizetype count = 0;
    const QRect all = room.toAlignedRect() & image.rect();
    for (int y = all.top(); y <= all.bottom(); ++y)
        for (int x = all.left(); x <= all.right(); ++x) count += qGray(image.pixel(x, y)) < 160;
    return count;
}

QImage blank(const QSize& size)
{
    QImage image{size, QImage::Format_RGB32};
    image.fill(Qt::white);
    return image;
}

/// Lanes whose names lack ink that they have where nothing bounds them.
QStringList cutNames(const Lanes& lanes, const LanesLayout& layout, const QSize& size, const Type& type)
{
    QImage drawn = blank(size);
    QPainter painter{&drawn};
    drawLanes(painter, lanes, layout, Palette::light(), type);
    painter.end();
    QStringList cut;
    for (std::size_t i = 0; i < lanes.lanes.size(); ++i) {
        const Lane& lane = lanes.lanes[i];
        QImage free = blank({size.width(), 2000});
        QPainter freely{&free};
        const QRectF head{layout.heads[i].left(), 0, layout.heads[i].width(), 2000};
        const double beneath = drawWrapped(freely, head, lane.name, type.strong, Palette::light().ink);
        drawWrapped(freely, head.adjusted(0, beneath, 0, 0), lane.note, type.small, Palette::light().mutedInk);
        freely.end();
        if (ink(drawn, layout.heads[i]) != ink(free, head)) cut << lane.name;
    }
    return cut;
}

}

TEST(NamesOfLanes, ArePaintedWhole)
{
    const Lanes lanes = year();
    for (const double letters : {1.0, 1.5, 2.0}) {
        QFont font = QApplication::font();
        font.setPointSizeF(font.pointSizeF() * letters);
        const Type type = Type::from(font);
        for (const int width : {420, 640, 1400}) {
            const QSize size{width, static_cast<int>(lanesHeight(lanes, width, type))};
            const LanesLayout layout = layOutLanes(lanes, QRectF{QPointF{}, size}, type);
            EXPECT_TRUE(cutNames(lanes, layout, size, type).isEmpty()) << letters << ' ' << width << ": " << cutNames(lanes, layout, size, type).join(u'\n').toStdString();
            EXPECT_GT(layout.plot.width(), 0.6 * width) << "the year keeps its room";
            EXPECT_LE(layout.rows.back().bottom(), size.height());
        }
    }
}

TEST(NamesOfLanes, PlantedCutsAreFound)
{
    const Lanes lanes = year();
    const Type type = Type::from(QApplication::font());
    const QSize size{640, static_cast<int>(lanesHeight(lanes, 640, type))};
    const LanesLayout whole = layOutLanes(lanes, QRectF{QPointF{}, size}, type);
    ASSERT_TRUE(cutNames(lanes, whole, size, type).isEmpty());
    LanesLayout low = whole;
    low.heads[1].setHeight(lineHeight(type.strong)); // as high as one line
    EXPECT_EQ(cutNames(lanes, low, size, type), QStringList{lanes.lanes[1].name});
    EXPECT_FALSE(cutNames(lanes, whole, QSize{size.width(), size.height() / 2}, type).isEmpty());
}

/// An absence of one stack is shaded in its lane, over the bars that fill it, and in no other.
TEST(DaysAway, OfOneStackAreDrawnInItsLaneAlone)
{
    const Type type = Type::from(QFont{});
    Lanes lanes = year();
    const QSize size{900, 400};
    const auto drawn = [&] {
        QImage image = blank(size);
        QPainter painter{&image};
        drawLanes(painter, lanes, layOutLanes(lanes, QRectF{QPointF{}, size}, type), Palette::light(), type);
        return image;
    };
    const QImage before = drawn();
    const auto away = std::pair{today + days{30}, today + days{60}};
    lanes.lanes[2].away = {away};
    const QImage after = drawn();
    const LanesLayout layout = layOutLanes(lanes, QRectF{QPointF{}, size}, type);
    const QRectF room = layout.awayRoom(lanes, away, 2);
    ASSERT_FALSE(room.isEmpty());
    EXPECT_NEAR(room.width(), layout.plot.width() * 31 / 365, 1.0);
    EXPECT_NEAR(room.height(), 2 * layout.rowHeight, 0.5);
    qsizetype within = 0, without = 0, overTheBar = 0;
    const QRectF bar = layout.slotRoom(lanes, 2, 1).adjusted(0, 3, 0, -3);
    for (int y = 0; y < size.height(); ++y)
        for (int x = 0; x < size.width(); ++x) {
            if (before.pixel(x, y) == after.pixel(x, y)) continue;
            const QPointF at{x + 0.5, y + 0.5};
            ++(room.adjusted(-1, -1, 1, 1).contains(at) ? within : without);
            overTheBar += room.contains(at) && bar.contains(at) ? 1 : 0;
        }
    EXPECT_GT(within, 100);
    EXPECT_GT(overTheBar, 50) << "a bar must not hide it";
    EXPECT_EQ(without, 0);
    EXPECT_EQ(layout.laneAt(room.center()), 2);
    EXPECT_TRUE(layout.awayRoom(lanes, {today + days{400}, today + days{410}}, 2).isEmpty()) << "beyond the axis";
}

}
