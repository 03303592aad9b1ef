#include "ui/drawing/lanes.h"

#include <QCoreApplication>
#include <QGuiApplication>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace tierloam::drawing {

namespace {

class Words {
    Q_DECLARE_TR_FUNCTIONS(Lanes)
};

constexpr double nameShare = 0.17, mostShare = 0.3; ///< of the width, for names
constexpr double headGap = 8;         ///< between names and lanes
constexpr double bandLess = 0.30;     ///< of a row, above and below a window's band
constexpr double readyLow = 0.22;     ///< of a row, from its lower edge: where the line of a tray's readiness runs, beneath that band
constexpr double readyRing = 0.22;    ///< of a row: radius of its ring

double slotHeight(const Type& type) { return std::ceil(lineHeight(type.small) * 1.12); }
double laneGap(const Type& type) { return std::ceil(lineHeight(type.small) * 0.7); }
double headHeight(const Lane& lane, double width, const Type& type) { return wrappedHeight(type.strong, lane.name, width) + wrappedHeight(type.small, lane.note, width); }
double laneHeight(const Lane& lane, double headWidth, const Type& type) { return std::max(lane.slots * slotHeight(type), headHeight(lane, headWidth, type)) + laneGap(type); }

/// For the names: as wide as the longest asks for, within bounds; what is longer goes on in the next line.
double headWidth(const Lanes& lanes, double width, const Type& type)
{
    double names = std::min(width * nameShare, 220.0);
    for (const Lane& lane : lanes.lanes) names = std::max(names, std::min(std::max(textWidth(type.strong, lane.name), textWidth(type.small, lane.note)) + 12, width * mostShare));
    return names - headGap;
}

QColor fillOf(const Lane::Stay& stay, const Palette& palette) { return mixed(palette.panel, palette.ageColour(stay.ageAtFrom), stay.planned ? 0.55 : 0.85); }
QColor inkOn(const QColor& fill) { return fill.lightnessF() < 0.45f ? QColor{0xFB, 0xF6, 0xEA} : QColor{0x2B, 0x24, 0x20}; }

void drawStay(QPainter& painter, const QRectF& bar, const Lane::Stay& stay, const Palette& palette)
{
    const QColor fill = fillOf(stay, palette);
    painter.setPen(QPen{palette.outline, 1, stay.planned ? Qt::DashLine : Qt::SolidLine});
    painter.setBrush(fill);
    painter.drawRect(bar);
    if (stay.drying) { // seen without colours too
        painter.setPen(Qt::NoPen);
        painter.setBrush(QBrush{mixed(fill, inkOn(fill), 0.6), Qt::BDiagPattern});
        painter.drawRect(bar);
    }
}

/// Over the bands of the turns, which would tint it.
void nameStay(QPainter& painter, const QRectF& bar, const Lane::Stay& stay, const Palette& palette, const Type& type)
{
    const QColor fill = fillOf(stay, palette);
    const QString label = Words::tr("tray %1").arg(stay.tray);
    const QRectF words = bar.adjusted(stay.planned ? bar.height() * 0.8 : 5.0, 0, -3, 0); // clear of the mark that begins it
    const QString shown = textWidth(type.small, label) <= words.width() ? label : QString::number(stay.tray);
    if (textWidth(type.small, shown) > words.width()) return;
    if (stay.drying) painter.fillRect(QRectF{words.left() - 2, bar.top() + 1, textWidth(type.small, shown) + 4, bar.height() - 2}, fill);
    painter.setFont(type.small);
    painter.setPen(inkOn(fill));
    painter.drawText(words, Qt::AlignVCenter | Qt::AlignLeft | Qt::AlignAbsolute | Qt::TextSingleLine, shown);
}

QPolygonF markShape(Lane::Mark::Kind kind, const QRectF& box)
{
    const double x = box.center().x();
    switch (kind) {
    case Lane::Mark::Kind::lift: return {{{x, box.top()}, {box.right(), box.bottom()}, {box.left(), box.bottom()}}};
    case Lane::Mark::Kind::take: return {{{box.left(), box.top()}, {box.right(), box.top()}, {x, box.bottom()}}};
    case Lane::Mark::Kind::add: {
        const double a = box.width() / 3;
        const double l = box.left(), t = box.top();
        return {{{l + a, t}, {l + 2 * a, t}, {l + 2 * a, t + a}, {l + 3 * a, t + a}, {l + 3 * a, t + 2 * a}, {l + 2 * a, t + 2 * a},
                 {l + 2 * a, t + 3 * a}, {l + a, t + 3 * a}, {l + a, t + 2 * a}, {l, t + 2 * a}, {l, t + a}, {l + a, t + a}}};
    }
    }
    return {};
}

QColor markColour(Lane::Mark::Kind kind, const Palette& palette)
{
    return kind == Lane::Mark::Kind::take ? palette.amber : kind == Lane::Mark::Kind::add ? palette.water : palette.moss;
}

void drawWindow(QPainter& painter, const QRectF& row, const Lane::Window& window, const Lanes& lanes, const QRectF& plot, const Palette& palette)
{
    const double from = std::max(lanes.axis.xOf(window.early, plot), plot.left());
    const double to = std::min(lanes.axis.xOf(window.late, plot), plot.right());
    if (to <= from) return;
    const QRectF band = QRectF{QPointF{from, row.top() + row.height() * bandLess}, QPointF{to, row.bottom() - row.height() * bandLess}};
    painter.setPen(Qt::NoPen);
    QColor soft = palette.moss;
    soft.setAlphaF(0.38f);
    painter.setBrush(soft);
    painter.drawRect(band);
    painter.setPen(QPen{palette.moss, 1.4});
    painter.drawLine(QPointF{from, row.top() + 2}, QPointF{from, row.bottom() - 2});
    if (!window.lateOpen) painter.drawLine(QPointF{to, row.top() + 2}, QPointF{to, row.bottom() - 2});
    const double middle = lanes.axis.xOf(window.middle, plot);
    painter.setPen(QPen{palette.moss, 2.2});
    if (middle >= plot.left() && middle <= plot.right()) painter.drawLine(QPointF{middle, row.top() + 1}, QPointF{middle, row.bottom() - 1});
}

/// Over the bars and beside the bands of the turns: told apart by dots and rings, not by colour alone.
void drawReady(QPainter& painter, double from, double middle, double to, double y, double radius, const Lane::Ready& ready, const Palette& palette)
{
    for (const auto& [colour, width] : {std::pair{palette.panel, 1.5 * radius}, std::pair{palette.moss, 0.6 * radius}}) { // light beneath, so that it is seen on any age
        painter.setPen(QPen{colour, width, colour == palette.panel ? Qt::SolidLine : Qt::DotLine, Qt::FlatCap});
        painter.drawLine(QPointF{from, y}, QPointF{to, y});
    }
    painter.setPen(QPen{palette.moss, 0.5 * radius});
    if (!ready.already) painter.drawLine(QPointF{from, y - radius}, QPointF{from, y + radius});
    if (!ready.lateOpen) painter.drawLine(QPointF{to, y - radius}, QPointF{to, y + radius});
    if (ready.middleOpen && !ready.already) return;
    painter.setBrush(ready.already ? palette.moss : palette.panel);
    painter.drawEllipse(QPointF{middle, y}, radius, radius);
}

}

double lanesHeight(const Lanes& lanes, double width, const Type& type)
{
    const double head = headWidth(lanes, width, type);
    double height = axisHeight(type) + 2;
    for (const Lane& lane : lanes.lanes) height += laneHeight(lane, head, type);
    return std::ceil(height);
}

LanesLayout layOutLanes(const Lanes& lanes, const QRectF& room, const Type& type)
{
    LanesLayout layout;
    const double head = headWidth(lanes, room.width(), type);
    layout.plot = room.adjusted(head + headGap, 0, -8, 0);
    layout.rowHeight = slotHeight(type);
    layout.axisRoom = QRectF{layout.plot.left(), room.top(), layout.plot.width(), axisHeight(type)};
    double y = layout.axisRoom.bottom() + 2;
    for (const Lane& lane : lanes.lanes) {
        const double height = laneHeight(lane, head, type);
        layout.heads.emplace_back(room.left(), y, head, height - laneGap(type));
        layout.rows.emplace_back(room.left(), y, room.width(), height);
        y += height;
    }
    return layout;
}

QRectF LanesLayout::slotRoom(const Lanes& lanes, int lane, int slot) const
{
    const QRectF& row = rows[static_cast<std::size_t>(lane)];
    const int slots = lanes.lanes[static_cast<std::size_t>(lane)].slots;
    return {plot.left(), row.top() + (slots - std::clamp(slot, 1, slots)) * rowHeight, plot.width(), rowHeight};
}

QRectF LanesLayout::markRoom(const Lanes& lanes, int lane, int mark) const
{
    const Lane::Mark& one = lanes.lanes[static_cast<std::size_t>(lane)].marks[static_cast<std::size_t>(mark)];
    const bool held = lanes.dragged && lanes.chosen == std::pair{lane, mark};
    const QRectF row = slotRoom(lanes, lane, one.kind == Lane::Mark::Kind::lift ? 1 : lanes.lanes[static_cast<std::size_t>(lane)].slots);
    const double x = lanes.axis.xOf(held ? *lanes.dragged : one.day, plot);
    const double size = rowHeight * 0.74;
    return {x - size / 2, row.center().y() - size / 2, size, size};
}

QRectF LanesLayout::readyRoom(const Lanes& lanes, int lane) const
{
    const auto& ready = lanes.lanes[static_cast<std::size_t>(lane)].ready;
    if (!ready) return {};
    const QRectF row = slotRoom(lanes, lane, 1);
    const double radius = row.height() * readyRing;
    const double today = lanes.axis.xOf(lanes.today, plot);
    const double from = ready->already ? today : std::max(lanes.axis.xOf(ready->early, plot), today);
    const double to = std::min(lanes.axis.xOf(ready->late, plot), plot.right());
    return {from, row.bottom() - row.height() * readyLow - radius, std::max(to - from, 4 * radius), 2 * radius};
}

std::optional<int> LanesLayout::readyAt(const Lanes& lanes, QPointF at) const
{
    for (int lane = 0; lane < static_cast<int>(lanes.lanes.size()); ++lane)
        if (const QRectF room = readyRoom(lanes, lane); !room.isEmpty() && room.adjusted(-5, -3, 5, 3).contains(at)) return lane;
    return std::nullopt;
}

QRectF LanesLayout::awayRoom(const Lanes& lanes, const std::pair<Day, Day>& away) const
{
    const double from = std::max(lanes.axis.xOf(away.first, plot), plot.left());
    const double to = std::min(lanes.axis.xOf(away.second + std::chrono::days{1}, plot), plot.right());
    const double bottom = rows.empty() ? axisRoom.bottom() : rows.back().bottom();
    return to > from ? QRectF{QPointF{from, axisRoom.bottom()}, QPointF{to, bottom}} : QRectF{};
}

QRectF LanesLayout::awayRoom(const Lanes& lanes, const std::pair<Day, Day>& away, int lane) const
{
    QRectF room = awayRoom(lanes, away);
    if (room.isEmpty()) return room;
    room.setTop(slotRoom(lanes, lane, lanes.lanes[static_cast<std::size_t>(lane)].slots).top());
    room.setBottom(slotRoom(lanes, lane, 1).bottom());
    return room;
}

std::optional<int> LanesLayout::laneAt(QPointF at) const
{
    const auto row = std::find_if(rows.begin(), rows.end(), [at](const QRectF& each) { return each.top() <= at.y() && at.y() < each.bottom(); });
    return row != rows.end() ? std::optional{static_cast<int>(row - rows.begin())} : std::nullopt;
}

std::optional<std::pair<int, int>> LanesLayout::markAt(const Lanes& lanes, QPointF at) const
{
    for (int lane = 0; lane < static_cast<int>(lanes.lanes.size()); ++lane)
        for (int mark = static_cast<int>(lanes.lanes[static_cast<std::size_t>(lane)].marks.size()) - 1; mark >= 0; --mark)
            if (markRoom(lanes, lane, mark).adjusted(-5, -5, 5, 5).contains(at)) return std::pair{lane, mark};
    return std::nullopt;
}

Day LanesLayout::dayAt(const Lanes& lanes, double x) const
{
    const int span = daysBetween(lanes.axis.from, lanes.axis.to);
    const double share = plot.width() > 0 ? (x - plot.left()) / plot.width() : 0.0;
    return lanes.axis.from + std::chrono::days{std::clamp(static_cast<int>(std::lround(share * span)), 0, span)};
}

namespace {

void shadeAway(QPainter& painter, const QRectF& gone, const Palette& palette)
{
    painter.setPen(Qt::NoPen);
    painter.setBrush(QBrush{mixed(palette.ground, palette.outline, 0.45), Qt::Dense6Pattern});
    painter.drawRect(gone);
}

}

void drawLanes(QPainter& painter, const Lanes& lanes, const LanesLayout& layout, const Palette& palette, const Type& type)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    drawAxis(painter, layout.axisRoom, lanes.axis, palette, type);
    const double bottom = layout.rows.empty() ? layout.axisRoom.bottom() : layout.rows.back().bottom();
    const auto shade = [&](const QRectF& gone) {
        if (!gone.isEmpty()) shadeAway(painter, gone, palette);
    };
    for (const auto& away : lanes.away) shade(layout.awayRoom(lanes, away));
    painter.setPen(QPen{palette.line, 1});
    for (const TimeAxis::Tick& tick : lanes.axis.ticks(layout.plot.width(), type.small)) {
        const double x = lanes.axis.xOf(tick.day, layout.plot);
        painter.drawLine(QPointF{x, layout.axisRoom.bottom()}, QPointF{x, bottom});
    }
    for (int i = 0; i < static_cast<int>(lanes.lanes.size()); ++i) {
        const Lane& lane = lanes.lanes[static_cast<std::size_t>(i)];
        const QRectF& row = layout.rows[static_cast<std::size_t>(i)];
        const QRectF& head = layout.heads[static_cast<std::size_t>(i)];
        const double beneath = drawWrapped(painter, head, lane.name, type.strong, palette.ink);
        drawWrapped(painter, head.adjusted(0, beneath, 0, 0), lane.note, type.small, palette.mutedInk);
        const auto eachStay = [&](const auto& draw) {
            for (const Lane::Stay& stay : lane.stays) {
                const double from = std::max(lanes.axis.xOf(stay.from, layout.plot), layout.plot.left());
                const double to = std::min(lanes.axis.xOf(stay.to, layout.plot), layout.plot.right());
                if (to - from < 1.0) continue;
                const QRectF slot = layout.slotRoom(lanes, i, stay.slot);
                draw(QRectF{QPointF{from, slot.top() + 1.5}, QPointF{to, slot.bottom() - 1.5}}, stay);
            }
        };
        eachStay([&](const QRectF& bar, const Lane::Stay& stay) { drawStay(painter, bar, stay, palette); });
        for (const auto& away : lane.away) shade(layout.awayRoom(lanes, away, i)); // over the bars, which fill the lane
        for (const Lane::Mark& mark : lane.marks)
            if (mark.window) drawWindow(painter, layout.slotRoom(lanes, i, mark.kind == Lane::Mark::Kind::add ? lane.slots : 1), *mark.window, lanes, layout.plot, palette);
        if (const QRectF room = layout.readyRoom(lanes, i); !room.isEmpty()) {
            // What is ready stands beside the line of today, not beneath it.
            const double middle = lane.ready->already ? room.left() + room.height() / 2 + 2 : std::clamp(lanes.axis.xOf(lane.ready->middle, layout.plot), room.left(), room.right());
            drawReady(painter, room.left(), middle, room.right(), room.center().y(), room.height() / 2, *lane.ready, palette);
        }
        eachStay([&](const QRectF& bar, const Lane::Stay& stay) { nameStay(painter, bar, stay, palette, type); });
        for (int m = 0; m < static_cast<int>(lane.marks.size()); ++m) {
            const Lane::Mark& mark = lane.marks[static_cast<std::size_t>(m)];
            if (mark.day < lanes.axis.from || mark.day > lanes.axis.to) continue;
            const QRectF box = layout.markRoom(lanes, i, m);
            const bool chosen = lanes.chosen == std::pair{i, m};
            painter.setPen(QPen{palette.panel, 3.4, Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin});
            painter.setBrush(mark.pending ? palette.panel : markColour(mark.kind, palette));
            painter.drawPolygon(markShape(mark.kind, box));
            painter.setPen(mark.pending ? QPen{palette.ink, 1.6, Qt::DotLine, Qt::FlatCap, Qt::MiterJoin} : QPen{palette.ink, 1.1, Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin});
            painter.drawPolygon(markShape(mark.kind, box));
            if (mark.pinned) { // a pin through it
                painter.setPen(QPen{palette.ink, 2});
                painter.drawLine(QPointF{box.center().x(), box.top() - 4}, QPointF{box.center().x(), box.bottom() + 4});
                painter.setBrush(palette.ink);
                painter.drawEllipse(QPointF{box.center().x(), box.top() - 5}, 3.2, 3.2);
            }
            if (chosen) {
                painter.setBrush(Qt::NoBrush);
                painter.setPen(QPen{palette.ink, lanes.focused ? 2.4 : 1.4});
                painter.drawRect(box.adjusted(-4, -4, 4, 4));
            }
        }
        painter.setPen(QPen{palette.line, 1});
        painter.drawLine(QPointF{row.left(), row.bottom() - laneGap(type) / 2}, QPointF{row.right(), row.bottom() - laneGap(type) / 2});
    }
    const double now = lanes.axis.xOf(lanes.today, layout.plot);
    painter.setPen(QPen{palette.brick, 2});
    painter.drawLine(QPointF{now, layout.axisRoom.bottom() - 4}, QPointF{now, bottom});
    painter.restore();
}

double drawLanesKey(QPainter& painter, const QRectF& room, const Palette& palette, const Type& type)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    const double height = lineHeight(type.small) + 6;
    const double sign = height * 0.62;
    const bool mirrored = QGuiApplication::layoutDirection() == Qt::RightToLeft;
    double x = room.left(), y = room.top();
    const auto item = [&](double wide, const QString& words, auto draw) {
        const double whole = wide + 6 + textWidth(type.small, words) + 18;
        if (x > room.left() && x + whole > room.right()) {
            x = room.left();
            y += height;
        }
        const auto placed = [&](QRectF box) {
            if (mirrored) box.moveLeft(room.left() + room.right() - box.right());
            return box;
        };
        draw(placed({x, y + (height - sign) / 2, wide, sign}));
        drawLine(painter, placed({x + wide + 6, y + (height - lineHeight(type.small)) / 2, std::min(textWidth(type.small, words) + 1, room.right() - x - wide - 6), height}), words, type.small, palette.mutedInk);
        x += whole;
    };
    using Kind = Lane::Mark::Kind;
    for (const auto& [kind, words] : {std::pair{Kind::lift, Words::tr("lift the bottom tray")}, std::pair{Kind::take, Words::tr("take the castings, lay new bedding")},
                                      std::pair{Kind::add, Words::tr("add a tray")}}) {
        item(sign, words, [&, mark = kind](const QRectF& box) {
            painter.setPen(QPen{palette.ink, 1.1});
            painter.setBrush(markColour(mark, palette));
            painter.drawPolygon(markShape(mark, box));
        });
    }
    item(sign * 2.4, Words::tr("due: 10 %, 50 % and 90 % sure"), [&](const QRectF& box) {
        QColor soft = palette.moss;
        soft.setAlphaF(0.38f);
        painter.fillRect(box.adjusted(0, box.height() * 0.25, 0, -box.height() * 0.25), soft);
        painter.setPen(QPen{palette.moss, 1.4});
        painter.drawLine(box.topLeft(), box.bottomLeft());
        painter.drawLine(box.topRight(), box.bottomRight());
        painter.setPen(QPen{palette.moss, 2.2});
        painter.drawLine(QPointF{box.left() + box.width() * 0.4, box.top() - 1}, QPointF{box.left() + box.width() * 0.4, box.bottom() + 1});
    });
    item(sign * 2.4, Words::tr("ready: 10 %, 50 % and 90 % sure"), [&](const QRectF& box) {
        const double radius = box.height() * 0.28;
        drawReady(painter, box.left(), box.left() + box.width() * 0.4, box.right(), box.center().y(), radius, {}, palette);
    });
    item(sign, Words::tr("ready already"), [&](const QRectF& box) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(palette.moss);
        painter.drawEllipse(box.center(), box.height() * 0.28, box.height() * 0.28);
    });
    item(2, Words::tr("today"), [&](const QRectF& box) { painter.fillRect(box, palette.brick); });
    item(sign * 2, Words::tr("in the light"), [&](const QRectF& box) {
        painter.setPen(QPen{palette.outline, 1});
        painter.setBrush(palette.panel);
        painter.drawRect(box);
        painter.setPen(Qt::NoPen);
        painter.setBrush(QBrush{palette.patternOn(palette.panel), Qt::BDiagPattern});
        painter.drawRect(box);
    });
    item(sign * 2, Words::tr("planned (dashed)"), [&](const QRectF& box) {
        painter.setPen(QPen{palette.outline, 1, Qt::DashLine});
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(box);
    });
    item(7, Words::tr("day chosen by hand"), [&](const QRectF& box) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(palette.ink);
        painter.drawEllipse(box.center(), 3.2, 3.2);
    });
    item(sign * 2, Words::tr("nobody is there"), [&](const QRectF& box) { shadeAway(painter, box, palette); });
    painter.restore();
    return y + height - room.top();
}

}
