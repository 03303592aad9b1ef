#include "ui/drawing/stack_drawing.h"

#include "core/quantity/units.h"
#include "core/wording/formats.h"
#include "ui/drawing/ring.h"
#include "ui/drawing/strata.h"

#include <QGuiApplication>
#include <QLineF>
#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <cmath>

namespace tierloam::drawing {

namespace {

void drawStand(QPainter& painter, const StackPicture& stack, const StackLayout& layout, const Palette& palette)
{
    if (layout.stand.isNull()) return;
    painter.setPen(Qt::NoPen);
    painter.setBrush(palette.wood);
    const QRectF& stand = layout.stand;
    if (stack.stand == journal::Stand::base) {
        painter.drawRect(stand);
        painter.setPen(QPen{palette.ground, 1.5});
        painter.drawLine(QPointF{stand.left() + 6, stand.center().y()}, QPointF{stand.right() - 6, stand.center().y()});
        return;
    }
    const double plank = std::max(4.0, stand.height() * 0.2);
    const double leg = std::max(5.0, stand.width() * 0.038);
    painter.drawRect(QRectF{stand.left(), stand.top(), stand.width(), plank});
    for (const double x : {stand.left() + stand.width() * 0.08, stand.right() - stand.width() * 0.08 - leg})
        painter.drawRect(QRectF{x, stand.top() + plank, leg, stand.height() - plank});
}

/// The spigot sits at the foot of the sump's outer wall. Open: its lever lies along the spout and drops fall. Shut: the lever stands across.
void drawSpigot(QPainter& painter, const StackPicture& stack, const StackLayout& layout, double pxPerCm, const Palette& palette)
{
    const double out = layout.mirrored ? 1 : -1;
    const double wall = layout.mirrored ? layout.sump.right() : layout.sump.left();
    const double size = std::clamp(pxPerCm * 1.9, 9.0, 20.0);
    const double y = layout.sump.bottom() - size * 0.34;
    painter.setPen(QPen{palette.outline, size * 0.24, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin});
    painter.setBrush(Qt::NoBrush);
    QPainterPath spout;
    spout.moveTo(wall, y);
    spout.lineTo(wall + out * size * 0.8, y);
    spout.lineTo(wall + out * size * 0.8, y + size * 0.5);
    painter.drawPath(spout);
    painter.setPen(QPen{palette.outline, size * 0.16, Qt::SolidLine, Qt::RoundCap});
    const double valve = wall + out * size * 0.42;
    painter.drawLine(QPointF{valve, y}, QPointF{valve, y - size * 0.42});
    if (stack.sump.spigot == journal::Spigot::open) {
        painter.drawLine(QPointF{valve - size * 0.38, y - size * 0.42}, QPointF{valve + size * 0.38, y - size * 0.42});
        painter.setPen(Qt::NoPen);
        painter.setBrush(palette.water);
        const double x = wall + out * size * 0.8;
        for (const double fall : {0.82, 1.22}) {
            QPainterPath drop;
            const double top = y + size * fall;
            drop.moveTo(x, top);
            drop.quadTo(x + size * 0.22, top + size * 0.24, x, top + size * 0.3);
            drop.quadTo(x - size * 0.22, top + size * 0.24, x, top);
            painter.drawPath(drop);
        }
    } else {
        painter.drawLine(QPointF{valve, y - size * 0.42}, QPointF{valve, y - size * 0.86});
        painter.setPen(QPen{palette.outline, size * 0.18, Qt::SolidLine, Qt::FlatCap});
        const double x = wall + out * size * 0.8;
        painter.drawLine(QPointF{x - size * 0.26, y + size * 0.56}, QPointF{x + size * 0.26, y + size * 0.56});
    }
}

constexpr double leastShownL = 0.05;

void drawSump(QPainter& painter, const StackPicture& stack, const StackLayout& layout, const ShelfScale& scale, const Palette& palette)
{
    const QRectF& box = layout.sump;
    painter.setPen(Qt::NoPen);
    painter.setBrush(mixed(palette.inside, palette.ground, 0.6));
    painter.drawRect(box);
    const QRectF& inside = layout.sumpInside;
    if (stack.sump.levelL && stack.sump.capacityL > 0) {
        // It stands on the floor; and what is told as 0.0 L has no surface.
        if (*stack.sump.levelL >= leastShownL) {
            const double share = std::clamp(*stack.sump.levelL / stack.sump.capacityL, 0.0, 1.0);
            const double top = inside.bottom() - inside.height() * share;
            painter.setBrush(palette.waterFill);
            painter.drawRect(QRectF{QPointF{inside.left(), top}, QPointF{inside.right(), box.bottom() - 2}});
            painter.setPen(QPen{palette.water, 2});
            painter.drawLine(QPointF{inside.left(), top}, QPointF{inside.right(), top});
        }
    } else {
        drawUnknown(painter, inside, palette);
    }
    const double step = sumpMark(stack.sump.capacityL);
    painter.setPen(QPen{palette.outline, 1});
    for (double l = step; l < stack.sump.capacityL + 1e-9 && stack.sump.capacityL > 0; l += step) {
        const double y = inside.bottom() - inside.height() * l / stack.sump.capacityL;
        const double end = layout.mirrored ? inside.left() - 2 : inside.right() + 2;
        painter.drawLine(QPointF{end, y}, QPointF{end + (layout.mirrored ? 6 : -6), y});
    }
    painter.setPen(QPen{palette.outline, 2, Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin});
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(box.adjusted(1, 1, -1, -1));
    drawSpigot(painter, stack, layout, scale.pxPerCm, palette);
}

void drawTray(QPainter& painter, const TrayPicture& tray, const StackLayout::Tray& place, double pxPerCm, const Palette& palette)
{
    painter.setPen(Qt::NoPen);
    painter.setBrush(palette.inside);
    painter.drawRect(place.box);
    if (tray.strata) drawStrata(painter, place.inside, tray, pxPerCm, palette);
    else drawUnknown(painter, place.inside, palette);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen{palette.outline, 2, Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin});
    painter.drawLine(place.box.topLeft() + QPointF{1, 0}, place.box.bottomLeft() + QPointF{1, -1});
    painter.drawLine(place.box.topRight() + QPointF{-1, 0}, place.box.bottomRight() + QPointF{-1, -1});
    QPen floor{palette.outline, 2.4, Qt::SolidLine, Qt::FlatCap}; // holed: the gaps let worms and water through
    floor.setDashPattern({3.2, 1.6});
    painter.setPen(floor);
    painter.drawLine(place.box.bottomLeft() + QPointF{0, -1}, place.box.bottomRight() + QPointF{0, -1});
    painter.setPen(Qt::NoPen);
    painter.setBrush(palette.outline);
    painter.drawRoundedRect(place.rim, 1.5, 1.5);
}

void drawVents(QPainter& painter, const QPointF& from, const QPointF& to, double thickness, const Palette& palette)
{
    // Whole ones, as wide as the gaps between them: a pattern that runs on would end in a sliver.
    constexpr double about = 9.0;
    const double length = QLineF{from, to}.length();
    const int vents = std::max(1, static_cast<int>(std::lround((length / about + 1) / 2)));
    const QPointF step = (to - from) / (2 * vents - 1);
    painter.setPen(QPen{palette.ground, thickness, Qt::SolidLine, Qt::FlatCap});
    for (int i = 0; i < vents; ++i) painter.drawLine(from + step * (2 * i), from + step * (2 * i + 1));
}

void drawLid(QPainter& painter, const StackPicture& stack, const StackLayout& layout, double pxPerCm, const Palette& palette)
{
    if (stack.lidOn) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(palette.wood);
        painter.drawRoundedRect(layout.lid, 2, 2);
        const QRectF middle = layout.lid.adjusted(layout.lid.width() * 0.2, 0, -layout.lid.width() * 0.2, 0);
        drawVents(painter, {middle.left(), middle.center().y()}, {middle.right(), middle.center().y()}, std::max(2.0, layout.lid.height() * 0.28), palette);
        return;
    }
    // It leans against the outer wall, its foot on the ground.
    const QRectF& wall = layout.trays.empty() ? layout.sump : layout.trays.front().box;
    const double out = layout.mirrored ? 1 : -1;
    const double edge = layout.mirrored ? wall.right() : wall.left();
    const double room = sideSpace({pxPerCm, pxPerCm});
    const double reach = std::min(wall.width() * 0.8, layout.ground - layout.top - 4);
    const QPointF foot{edge + out * (room - 3), layout.ground - 2};
    const QPointF head{edge + out * 5, layout.ground - reach};
    const double thick = std::max(5.0, pxPerCm * 0.95);
    painter.setPen(QPen{palette.wood, thick, Qt::SolidLine, Qt::RoundCap});
    painter.drawLine(foot, head);
    drawVents(painter, foot + (head - foot) * 0.22, foot + (head - foot) * 0.78, std::max(1.6, thick * 0.3), palette);
}

void drawLight(QPainter& painter, const StackLayout& layout, const QRectF& rim, double pxPerCm, const Palette& palette)
{
    const double from = layout.top + 2, to = rim.top() - pxPerCm * 0.9;
    const double head = std::clamp(pxPerCm * 0.75, 3.5, 7.0);
    painter.setPen(QPen{palette.amber, 2, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin});
    painter.setBrush(Qt::NoBrush);
    for (int i = 0; i < 5; ++i) {
        const double x = rim.left() + rim.width() * (0.14 + 0.18 * i);
        painter.drawLine(QPointF{x, from}, QPointF{x, to});
        painter.drawPolyline(QPolygonF{QPointF{x - head, to - head}, QPointF{x, to}, QPointF{x + head, to - head}});
    }
}

bool drawLabels(QPainter& painter, const QRectF& room, const QString& first, const QStringList& more, const Palette& palette, const Type& type)
{
    const double height = lineHeight(type.strong) + static_cast<double>(more.size()) * lineHeight(type.small);
    double y = room.top() + std::max(0.0, (room.height() - height) / 2);
    bool fits = drawLine(painter, {room.left(), y, room.width(), room.height()}, first, type.strong, palette.ink);
    y += lineHeight(type.strong);
    for (const QString& line : more) {
        fits &= drawLine(painter, {room.left(), y, room.width(), room.height()}, line, type.small, palette.mutedInk);
        y += lineHeight(type.small);
    }
    return fits;
}

bool drawTrayLabels(QPainter& painter, const TrayPicture& tray, const QRectF& room, bool mirrored, const LabelSpace& labels, const Palette& palette, const Type& type)
{
    QRectF text = room;
    const double ring = labels.ring + 6;
    text.setWidth(room.width() - ring);
    if (mirrored) text.moveLeft(room.left() + ring);
    const bool fits = drawLabels(painter, text, tray.ageLabel, tray.labels, palette, type);
    if (tray.ready) {
        const double left = mirrored ? room.left() : room.right() - labels.ring;
        drawRing(painter, {left, room.center().y() - labels.ring / 2, labels.ring, labels.ring}, *tray.ready, palette, type);
    }
    return fits;
}

QRectF partRect(const StackLayout& layout, int part)
{
    if (part == 0) return layout.sump.adjusted(-3, -1, 3, 1);
    if (part > 0 && part <= static_cast<int>(layout.trays.size())) return layout.trays[static_cast<std::size_t>(part) - 1].whole().adjusted(-2, -1, 2, 1);
    QRectF all = layout.sump.united(layout.stand).united(layout.lid);
    for (const StackLayout::Tray& tray : layout.trays) all = all.united(tray.whole());
    return all.adjusted(-4, -4, 4, 3);
}

}

double sumpMark(double capacityL)
{
    const bool large = capacityL > 12;
    if (wording::measures() == wording::Measures::us) return inBaseUnit(Unit::gal) * (large ? 1.0 : 0.25);
    return large ? 5.0 : 1.0;
}

bool drawStack(QPainter& painter, const StackPicture& stack, const StackLayout& layout, const ShelfScale& scale, const LabelSpace& labels,
               const Palette& palette, const Type& type)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    drawStand(painter, stack, layout, palette);
    drawSump(painter, stack, layout, scale, palette);
    const double whole = painter.opacity();
    for (std::size_t i = 0; i < stack.trays.size(); ++i) {
        painter.setOpacity(whole * layout.trays[i].opacity);
        drawTray(painter, stack.trays[i], layout.trays[i], scale.pxPerCm, palette);
    }
    painter.setOpacity(whole);
    drawLid(painter, stack, layout, scale.pxPerCm, palette);
    bool fits = true;
    for (std::size_t i = 0; i < stack.trays.size(); ++i) {
        if (stack.trays[i].drying) drawLight(painter, layout, layout.trays[i].rim, scale.pxPerCm, palette);
        painter.setOpacity(whole * layout.trays[i].opacity);
        fits &= drawTrayLabels(painter, stack.trays[i], layout.trays[i].labels, layout.mirrored, labels, palette, type);
        painter.setOpacity(whole);
    }
    fits &= drawLabels(painter, layout.sumpLabels, stack.sump.levelLabel, stack.sump.labels, palette, type);
    painter.restore();
    return fits;
}

void drawEmphasis(QPainter& painter, const StackLayout& layout, int part, Emphasis emphasis, const Palette& palette)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(Qt::NoBrush);
    QRectF rect = partRect(layout, part);
    switch (emphasis) {
    case Emphasis::pointed: painter.setPen(QPen{palette.moss, 1.4}); break;
    case Emphasis::focused: {
        // On paper ground the ink stands off, on dark castings the light along it: one of the two keeps 3 to 1 on every fill.
        rect.adjust(-3, -2, 3, 2);
        painter.setPen(QPen{palette.panel, 6});
        painter.drawRoundedRect(rect, 3, 3);
        QPen pen{palette.ink, 2.4};
        pen.setDashPattern({4.0, 1.5});
        painter.setPen(pen);
        break;
    }
    case Emphasis::selected: painter.setPen(QPen{palette.moss, 3}); break;
    }
    painter.drawRoundedRect(rect, 3, 3);
    painter.restore();
}

}
