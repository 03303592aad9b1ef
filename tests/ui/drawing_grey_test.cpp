// Who sees no colours: what the lanes of a year tell still differs by shape, dashes, hatching or lightness.
#include "ui/drawing/lanes.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QImage>
#include <QPainter>

#include <cstdlib>
#include <functional>

namespace tierloam::drawing {
namespace {

using std::chrono::days;

constexpr Day today{days{22400}};

Lanes year()
{
    Lanes lanes;
    lanes.axis = TimeAxis{today, today + days{365}, {}, {}};
    lanes.today = today;
    Lane lane;
    lane.name = QStringLiteral("Porch");
    lane.stays = {{1, 1, today, today + days{120}, 60, false, false}, {2, 2, today, today + days{200}, 10, false, false}};
    lane.marks = {{Lane::Mark::Kind::lift, today + days{150}, false, false, {}}};
    lanes.lanes = {lane};
    return lanes;
}

QImage drawn(const Lanes& lanes, bool dark)
{
    const Palette& palette = dark ? Palette::dark() : Palette::light();
    QImage image{700, 120, QImage::Format_RGB32};
    image.fill(palette.panel);
    QPainter painter{&image};
    const Type type = Type::from(QApplication::font());
    drawLanes(painter, lanes, layOutLanes(lanes, QRectF{0, 0, 700, 120}, type), palette, type);
    painter.end();
    return image;
}

/// Pixels that differ in grey by more than an eye needs.
int differ(const QImage& a, const QImage& b)
{
    int count = 0;
    for (int y = 0; y < a.height(); ++y)
        for (int x = 0; x < a.width(); ++x) count += std::abs(qGray(a.pixel(x, y)) - qGray(b.pixel(x, y))) > 48;
    return count;
}

}

TEST(WithoutColours, EachMarkAndStateOfALaneHasAShapeOfItsOwn)
{
    const std::pair<const char*, std::function<void(Lane&)>> states[] = {
        {"lift", [](Lane&) {}},
        {"take", [](Lane& lane) { lane.marks[0].kind = Lane::Mark::Kind::take; }},
        {"add", [](Lane& lane) { lane.marks[0].kind = Lane::Mark::Kind::add; }},
        {"pinned", [](Lane& lane) { lane.marks[0].pinned = true; }},
        {"with its window", [](Lane& lane) { lane.marks[0].window = Lane::Window{today + days{130}, today + days{150}, today + days{190}, false}; }},
        {"window that stays open", [](Lane& lane) { lane.marks[0].window = Lane::Window{today + days{130}, today + days{150}, today + days{190}, true}; }},
        {"tray in the light", [](Lane& lane) { lane.stays[0].drying = true; }},
        {"tray planned", [](Lane& lane) { lane.stays[0].planned = true; }},
    };
    for (const bool dark : {false, true}) {
        std::vector<QImage> seen;
        for (const auto& [name, make] : states) {
            Lanes lanes = year();
            make(lanes.lanes[0]);
            const QImage picture = drawn(lanes, dark);
            for (std::size_t other = 0; other < seen.size(); ++other) EXPECT_GE(differ(picture, seen[other]), 12) << "dark " << dark << ": " << name << " and " << states[other].first;
            seen.push_back(picture);
        }
        // What must be found: nothing that differs.
        EXPECT_LT(differ(drawn(year(), dark), drawn(year(), dark)), 12);
    }
}

// When a tray is ready is neither its turn nor its age: dots and a ring; what is ready already has a disc on today.
TEST(WithoutColours, ReadinessAndTurnAreToldApart)
{
    using Ready = Lane::Ready;
    const Lane::Window window{today + days{60}, today + days{90}, today + days{140}, false};
    const std::pair<const char*, std::function<void(Lane&)>> states[] = {
        {"nothing", [](Lane&) {}},
        {"its turn", [&](Lane& lane) { lane.marks[0].window = window; }},
        {"ready", [](Lane& lane) { lane.ready = Ready{today + days{60}, today + days{90}, today + days{140}, false, false, false, {}}; }},
        {"both", [&](Lane& lane) { lane.marks[0].window = window; lane.ready = Ready{today + days{60}, today + days{90}, today + days{140}, false, false, false, {}}; }},
        {"ready already", [](Lane& lane) { lane.ready = Ready{today, today, today, false, false, true, {}}; }},
    };
    for (const bool dark : {false, true})
        for (const auto& [name, made] : states)
            for (const auto& [other, madeToo] : states) {
                if (name == other) continue;
                Lanes one = year(), two = year();
                made(one.lanes[0]);
                madeToo(two.lanes[0]);
                EXPECT_GE(differ(drawn(one, dark), drawn(two, dark)), 12) << name << " and " << other << (dark ? ", dark" : ", light");
            }
}

// From right to left the key is the same one mirrored: its words beside its signs, none over another.
TEST(LanesKey, IsMirroredFromRightToLeft)
{
    const Type type = Type::from(QApplication::font());
    const auto inkedColumns = [&](Qt::LayoutDirection direction) {
        QGuiApplication::setLayoutDirection(direction);
        QImage image{1100, 60, QImage::Format_RGB32};
        image.fill(Palette::light().panel);
        QPainter painter{&image};
        drawLanesKey(painter, QRectF{0, 0, 1100, 60}, Palette::light(), type);
        painter.end();
        QGuiApplication::setLayoutDirection(Qt::LeftToRight);
        int count = 0;
        for (int x = 0; x < image.width(); ++x) {
            bool any = false;
            for (int y = 0; y < image.height(); ++y) any = any || qGray(image.pixel(x, y)) < 160;
            count += any;
        }
        return count;
    };
    const int plain = inkedColumns(Qt::LeftToRight);
    EXPECT_GT(plain, 300);
    EXPECT_NEAR(inkedColumns(Qt::RightToLeft), plain, plain / 10);
}

}
