#include "ui/drawing/strata.h"

#include "ui/drawing/dice.h"

#include <QPainter>
#include <QPainterPath>
#include <QPolygonF>

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <vector>

namespace tierloam::drawing {

namespace {

constexpr double thinnestCm = 0.05;

/// The uneven upper face of a stratum: a mean height above the floor and three waves that sum to zero over the width.
class Surface {
public:
    Surface(const QRectF& inside, double meanPx, double roughPx, std::uint64_t key) : inside_{inside}, mean_{meanPx}
    {
        Dice dice{key};
        constexpr std::array<double, 3> share{0.5, 0.32, 0.18};
        constexpr std::array<int, 3> waves{2, 5, 11}; // whole waves over the width: their mean is zero
        for (std::size_t i = 0; i < 3; ++i) {
            amplitude_[i] = roughPx * share[i] * dice.between(0.6, 1.0);
            turns_[i] = (waves[i] + std::floor(dice.between(0, 3))) * 2 * std::numbers::pi / inside.width();
            phase_[i] = dice.between(0, 2 * std::numbers::pi);
        }
    }

    double yAt(double x) const
    {
        double height = mean_;
        for (std::size_t i = 0; i < 3; ++i) height += amplitude_[i] * std::sin(turns_[i] * (x - inside_.left()) + phase_[i]);
        return inside_.bottom() - std::clamp(height, 0.0, inside_.height());
    }

    QPolygonF line() const
    {
        QPolygonF points;
        const int steps = std::max(8, static_cast<int>(inside_.width() / 4));
        points.reserve(steps + 3);
        for (int i = 0; i <= steps; ++i) {
            const double x = inside_.left() + inside_.width() * i / steps;
            points << QPointF{x, yAt(x)};
        }
        return points;
    }

private:
    QRectF inside_;
    double mean_;
    std::array<double, 3> amplitude_{}, turns_{}, phase_{};
};

/// Marks of a pattern, gathered and drawn in few calls.
struct Marks {
    QVector<QLineF> lines;
    QVector<QPointF> points;
    QPainterPath curves;
};

void addMark(Marks& marks, Stratum stratum, double x, double y, double size, Dice& dice)
{
    switch (stratum) {
    case Stratum::castings: // crumbs
        marks.points << QPointF{x, y};
        break;
    case Stratum::softened: { // short strokes, falling
        const double half = size * 0.26;
        marks.lines << QLineF{x - half, y - half * 0.7, x + half, y + half * 0.7};
        break;
    }
    case Stratum::food: { // rinds: open bows
        const double r = size * 0.28;
        const double start = dice.between(0, 360);
        marks.curves.arcMoveTo(x - r, y - r, 2 * r, 2 * r, start);
        marks.curves.arcTo(x - r, y - r, 2 * r, 2 * r, start, 210);
        break;
    }
    case Stratum::bedding: { // long shreds, lying
        const double half = size * dice.between(0.5, 0.85);
        const double slope = dice.between(-0.16, 0.16);
        marks.lines << QLineF{x - half, y - half * slope, x + half, y + half * slope};
        break;
    }
    }
}

/// How far a mark reaches from its middle, across and up.
QSizeF reachOf(Stratum stratum, double size)
{
    switch (stratum) {
    case Stratum::castings: return {1.5, 1.5};
    case Stratum::softened: return {size * 0.3, size * 0.24};
    case Stratum::food: return {size * 0.32, size * 0.32};
    case Stratum::bedding: return {size * 0.85, size * 0.16};
    }
    return {};
}

void drawMarks(QPainter& painter, const Marks& marks, Stratum stratum, const QColor& ink, double size)
{
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen{ink, stratum == Stratum::castings ? std::max(1.4, size * 0.16) : 1.1, Qt::SolidLine, Qt::RoundCap});
    if (!marks.points.isEmpty()) painter.drawPoints(marks.points.constData(), static_cast<int>(marks.points.size()));
    if (!marks.lines.isEmpty()) painter.drawLines(marks.lines);
    if (!marks.curves.isEmpty()) painter.drawPath(marks.curves);
}

/// Size of the cell of one mark: smaller in a thin stratum, so that it shows its pattern too.
double cellOf(Stratum stratum, double pxPerCm, double thicknessPx)
{
    const double cm = std::clamp(pxPerCm, 4.0, 14.0);
    const double wanted = stratum == Stratum::castings ? cm * 0.95 : stratum == Stratum::bedding ? cm * 1.5 : cm * 1.25;
    return std::min(wanted, std::max(4.5, thicknessPx * 0.8));
}

/// Fills the room between two faces with marks that stay whole inside it.
template <class Above, class Below>
void drawPattern(QPainter& painter, const QRectF& inside, double topmost, double lowest, Above above, Below below, Stratum stratum,
                 double pxPerCm, const QColor& ink, std::uint64_t key)
{
    const double cell = cellOf(stratum, pxPerCm, lowest - topmost);
    const QSizeF reach = reachOf(stratum, cell);
    Marks marks;
    const double rowHeight = stratum == Stratum::bedding ? cell * 0.5 : cell * 0.85;
    const int columns = static_cast<int>(inside.width() / cell) + 1;
    const int rows = std::max(1, static_cast<int>((lowest - topmost) / rowHeight));
    for (int row = 0; row < rows; ++row) {
        for (int column = 0; column < columns; ++column) {
            Dice dice{key ^ (static_cast<std::uint64_t>(row) << 20) ^ static_cast<std::uint64_t>(column)};
            const double x = inside.left() + (column + dice.between(0.15, 0.85) + (row % 2) * 0.5) * cell;
            if (x - reach.width() < inside.left() || x + reach.width() > inside.right()) continue;
            const double highest = std::max(above(x), inside.top()) + 1 + reach.height(), deepest = below(x) - 1 - reach.height();
            if (deepest < highest) continue;
            const double y = deepest - (row + dice.between(0.1, 0.9)) / rows * (deepest - highest);
            addMark(marks, stratum, x, y, cell, dice);
        }
    }
    drawMarks(painter, marks, stratum, ink, cell);
}

void addWorm(QPainterPath& path, const QPointF& middle, double length, double turn, bool flipped)
{
    const double h = length / 2, up = length * 0.24 * (flipped ? -1 : 1);
    const double c = std::cos(turn), s = std::sin(turn);
    const auto at = [&](double x, double y) { return QPointF{middle.x() + x * c - y * s, middle.y() + x * s + y * c}; };
    path.moveTo(at(-h, up * 0.4));
    path.cubicTo(at(-h * 0.6, -up), at(-h * 0.25, -up), at(0, 0));
    path.cubicTo(at(h * 0.25, up), at(h * 0.6, up), at(h, -up * 0.4));
}

void strokeWorms(QPainter& painter, const QPainterPath& path, double thickness, const Palette& palette)
{
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen{palette.wormEdge, thickness + 1.4, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin});
    painter.drawPath(path);
    painter.setPen(QPen{palette.worm, thickness, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin});
    painter.drawPath(path);
}

/// Worms lie anywhere in what fills the tray, more of them in its upper half, where the food is. Each takes the one of several thrown
/// places that is farthest from those already there.
std::vector<QPointF> wormPlaces(const QRectF& inside, const Surface& top, double depthPx, int count, double length, Dice& dice)
{
    constexpr int throwsEach = 10;
    std::vector<QPointF> places;
    for (int i = 0; i < count; ++i) {
        QPointF best;
        double farthest = -1;
        for (int t = 0; t < throwsEach; ++t) {
            const double x = inside.left() + length * 0.7 + dice.next() * std::max(inside.width() - 1.4 * length, 1.0);
            const double v = dice.next();
            const double reach = std::min(length * 0.35, depthPx * 0.45);
            const double ceiling = std::max({top.yAt(x), top.yAt(x - length / 2), top.yAt(x + length / 2)}) + reach;
            const double floor = inside.bottom() - reach;
            const double y = ceiling >= floor ? (ceiling + floor) / 2 : ceiling + (floor - ceiling) * v * std::sqrt(v);
            double nearest = 1e9;
            for (const QPointF& other : places) nearest = std::min(nearest, std::hypot(x - other.x(), 1.6 * (y - other.y())));
            if (nearest > farthest) {
                farthest = nearest;
                best = {x, y};
            }
        }
        places.push_back(best);
    }
    return places;
}

void drawWorms(QPainter& painter, const QRectF& inside, const Surface& top, double depthPx, const TrayPicture& tray, double pxPerCm, const Palette& palette)
{
    const int count = wormsDrawn(tray.wormsKg);
    if (count == 0 || depthPx < 4) return;
    const double length = std::clamp(pxPerCm * 2.2, 10.0, 25.0);
    Dice dice{static_cast<std::uint64_t>(tray.batch) * 7919U + 17U};
    const double tilt = depthPx < length ? 0.12 : 0.45;
    QPainterPath path;
    for (const QPointF& place : wormPlaces(inside, top, depthPx, count, length, dice))
        addWorm(path, place, length * dice.between(0.8, 1.1), dice.between(-tilt, tilt), dice.next() > 0.5);
    strokeWorms(painter, path, std::clamp(pxPerCm * 0.25, 1.3, 2.8), palette);
}

}

int wormsDrawn(double wormsKg)
{
    if (!(wormsKg >= 0.005)) return 0;
    return static_cast<int>(std::clamp(std::lround(wormsKg / kgPerDrawnWorm), 1L, 40L));
}

QColor stratumColour(Stratum stratum, int ageDays, const Palette& palette)
{
    switch (stratum) {
    case Stratum::castings: return palette.ageColour(ageDays);
    case Stratum::softened: return palette.softened;
    case Stratum::food: return palette.food;
    case Stratum::bedding: return palette.bedding;
    }
    return palette.bedding;
}

void drawStrata(QPainter& painter, const QRectF& inside, const TrayPicture& tray, double pxPerCm, const Palette& palette)
{
    if (!tray.strata) return;
    const std::array<double, stratumCount> thickness{tray.strata->castingsCm, tray.strata->softenedCm, tray.strata->foodCm, tray.strata->beddingCm};
    struct Layer { Stratum stratum; double from, to; Surface top; };
    std::vector<Layer> layers;
    double floorPx = 0;
    for (int i = 0; i < stratumCount; ++i) {
        const double cm = thickness[static_cast<std::size_t>(i)];
        if (!(cm >= thinnestCm)) continue;
        const double px = cm * pxPerCm;
        const double rough = std::min({0.38 * pxPerCm, px * 0.3, 3.5});
        const std::uint64_t key = static_cast<std::uint64_t>(tray.batch) * 131U + static_cast<std::uint64_t>(i) * 17U;
        layers.push_back({Stratum{i}, floorPx, floorPx + px, Surface{inside, floorPx + px, rough, key}});
        floorPx += px;
    }
    if (layers.empty()) return;

    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    for (std::size_t i = layers.size(); i-- > 0;) { // from the top down: each covers what lies under its own face
        QPolygonF body = layers[i].top.line();
        body << inside.bottomRight() << inside.bottomLeft();
        painter.setPen(Qt::NoPen);
        painter.setBrush(stratumColour(layers[i].stratum, tray.ageDays, palette));
        painter.drawPolygon(body);
    }
    for (std::size_t i = 0; i < layers.size(); ++i) {
        const Layer& layer = layers[i];
        const QColor ink = palette.patternOn(stratumColour(layer.stratum, tray.ageDays, palette));
        const auto above = [&](double x) { return layer.top.yAt(x); };
        const auto below = [&](double x) { return i == 0 ? inside.bottom() : layers[i - 1].top.yAt(x); };
        const double topmost = std::max(inside.bottom() - layer.to - 4, inside.top());
        drawPattern(painter, inside, topmost, inside.bottom() - layer.from, above, below, layer.stratum, pxPerCm, ink,
                    static_cast<std::uint64_t>(tray.batch) * 1009U + static_cast<std::uint64_t>(layer.stratum));
    }
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen{palette.ink, 1});
    for (const Layer& layer : layers) painter.drawPolyline(layer.top.line());
    drawWorms(painter, inside, layers.back().top, std::min(floorPx, inside.height()), tray, pxPerCm, palette);
    painter.restore();
}

void drawUnknown(QPainter& painter, const QRectF& inside, const Palette& palette)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setClipRect(inside);
    painter.setPen(QPen{mixed(palette.inside, palette.outline, 0.35), 1});
    QVector<QLineF> lines;
    constexpr int every = 9;
    const double from = inside.left() - inside.height();
    for (int i = 0; from + i * every < inside.right(); ++i) {
        const double x = from + i * every;
        lines << QLineF{x, inside.bottom(), x + inside.height(), inside.top()};
    }
    painter.drawLines(lines);
    painter.restore();
}

void drawSwatch(QPainter& painter, const QRectF& rect, Stratum stratum, int ageDays, const Palette& palette)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    const QColor fill = stratumColour(stratum, ageDays, palette);
    painter.setPen(QPen{palette.outline, 1});
    painter.setBrush(fill);
    painter.drawRect(rect);
    const QRectF within = rect.adjusted(1, 1, -1, -1);
    drawPattern(painter, within, within.top(), within.bottom(), [&](double) { return within.top(); }, [&](double) { return within.bottom(); },
                stratum, 6, palette.patternOn(fill), 5);
    painter.restore();
}

void drawWorm(QPainter& painter, const QPointF& middle, double length, const Palette& palette)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    QPainterPath path;
    addWorm(path, middle, length, 0, false);
    strokeWorms(painter, path, 1.7, palette);
    painter.restore();
}

}
