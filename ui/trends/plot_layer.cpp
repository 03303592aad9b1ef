#include "ui/trends/plot_layer.h"

#include <QPainter>
#include <QPainterPath>

namespace tierloam::trends {

namespace {

QColor markColour(MarkKind kind, const drawing::Palette& p)
{
    switch (kind) {
    case MarkKind::feed: return p.moss;
    case MarkKind::turn:
    case MarkKind::harvest: return p.amber;
    case MarkKind::worms:
    case MarkKind::weighing: return p.brick;
    case MarkKind::reading: return p.ink;
    case MarkKind::water: // over the bars of drained water
    case MarkKind::bedding: return p.outline;
    }
    return p.outline;
}

/// What is often done on one day (lifted, taken, bedded anew) stands below each other along the top, not over each other.
int laneOf(MarkKind kind)
{
    switch (kind) {
    case MarkKind::harvest: return 1;
    case MarkKind::bedding: return 2;
    default: return 0;
    }
}

bool frequent(MarkKind kind)
{
    return kind == MarkKind::feed || kind == MarkKind::water;
}

}

QPen penOf(int place, const drawing::Palette& p, double width)
{
    const QColor colours[] = {p.moss, p.brick, p.water, p.amber, p.ink};
    const Qt::PenStyle dashes[] = {Qt::SolidLine, Qt::DashLine, Qt::DashDotLine, Qt::DotLine, Qt::DashDotDotLine};
    // Colours and dashes turn at different steps, so that 25 stacks differ by one or the other and neighbours by both.
    QPen pen{colours[place % 5], width, dashes[(place + place / 5) % 5], Qt::RoundCap, Qt::RoundJoin};
    pen.setCosmetic(true);
    return pen;
}

void paintSign(QPainter& painter, MarkKind kind, QPointF c, double size, const drawing::Palette& palette)
{
    const QColor colour = markColour(kind, palette);
    const double r = size / 2;
    painter.save();
    painter.setPen(QPen{colour, std::max(1.0, size / 6)});
    painter.setBrush(Qt::NoBrush);
    switch (kind) {
    case MarkKind::feed:
    case MarkKind::water: painter.drawLine(QPointF{c.x(), c.y() - r}, QPointF{c.x(), c.y() + r}); break;
    case MarkKind::bedding:
        painter.setBrush(palette.panel);
        painter.drawPolygon(QPolygonF{{c.x(), c.y() - r}, {c.x() + r, c.y() + r}, {c.x() - r, c.y() + r}});
        break;
    case MarkKind::turn:
        painter.setBrush(palette.panel);
        painter.drawPolygon(QPolygonF{{c.x(), c.y() - r}, {c.x() + r, c.y()}, {c.x(), c.y() + r}, {c.x() - r, c.y()}});
        break;
    case MarkKind::harvest: painter.fillRect(QRectF{c.x() - r, c.y() - r, size, size}, colour); break;
    case MarkKind::worms:
        painter.setBrush(palette.panel);
        painter.drawEllipse(c, r, r);
        break;
    case MarkKind::reading:
        painter.drawLine(QPointF{c.x() - r, c.y()}, QPointF{c.x() + r, c.y()});
        painter.drawLine(QPointF{c.x(), c.y() - r}, QPointF{c.x(), c.y() + r});
        break;
    case MarkKind::weighing:
        painter.drawLine(QPointF{c.x() - r, c.y() - r}, QPointF{c.x() + r, c.y() + r});
        painter.drawLine(QPointF{c.x() - r, c.y() + r}, QPointF{c.x() + r, c.y() - r});
        break;
    }
    painter.restore();
}

PlotLayer::PlotLayer(QGraphicsItem* parent) : QGraphicsItem{parent}
{
    setFlag(ItemClipsToShape);
    setZValue(2.5); // above the grid, below axes and lines
}

void PlotLayer::setArea(const QRectF& area)
{
    if (area == area_) return;
    prepareGeometryChange();
    area_ = area;
}

void PlotLayer::setContents(std::vector<Series> series, const Period& period, bool grouped)
{
    series_ = std::move(series);
    period_ = period;
    grouped_ = grouped;
    update();
}

void PlotLayer::setLook(const drawing::Palette& palette, double scale, const QColor& alone)
{
    palette_ = palette;
    alone_ = alone;
    scale_ = scale;
    update();
}

void PlotLayer::setCursor(std::optional<Day> day)
{
    cursor_ = day;
    update();
}

QPointF PlotLayer::at(Day day, double value) const
{
    return place_(static_cast<double>(day.time_since_epoch().count()), value);
}

void PlotLayer::paint(QPainter* painter, const QStyleOptionGraphicsItem*, QWidget*)
{
    if (!place_ || area_.isEmpty()) return;
    painter->save();
    painter->setClipRect(area_);
    painter->setRenderHint(QPainter::Antialiasing);
    paintForecastShade(*painter);
    for (const Series& series : series_) paintBand(*painter, series);
    paintBars(*painter);
    for (const Series& series : series_) paintLogged(*painter, series);
    for (const Series& series : series_) paintMarks(*painter, series);
    if (cursor_) {
        const double x = at(*cursor_, 0).x();
        painter->setPen(QPen{palette_.ink, 1});
        painter->drawLine(QPointF{x, area_.top()}, QPointF{x, area_.bottom()});
    }
    painter->restore();
}

void PlotLayer::paintForecastShade(QPainter& painter) const
{
    const double now = at(period_.today, 0).x();
    const QRectF ahead{QPointF{now, area_.top()}, area_.bottomRight()};
    painter.fillRect(ahead, drawing::mixed(palette_.panel, palette_.rail, 0.75));
    painter.setPen(QPen{palette_.outline, 1, Qt::DotLine});
    painter.drawLine(ahead.topLeft(), ahead.bottomLeft());
}

void PlotLayer::paintBand(QPainter& painter, const Series& series) const
{
    const QColor colour = grouped_ ? penOf(series.place, palette_, 1).color() : alone_;
    const auto band = [&](const std::vector<Point>& points, double share) {
        if (points.size() < 2) return;
        QPolygonF outline;
        outline.reserve(static_cast<qsizetype>(points.size() * 2));
        for (const Point& point : points) outline << at(point.day, point.band.p95);
        for (auto point = points.rbegin(); point != points.rend(); ++point) outline << at(point->day, point->band.p05);
        QColor fill = colour;
        fill.setAlphaF(static_cast<float>(share));
        painter.setPen(Qt::NoPen);
        painter.setBrush(fill);
        painter.drawPolygon(outline);
    };
    const double share = grouped_ ? 0.14 : 0.22;
    band(series.past, share);
    band(series.ahead, share * 0.7);
}

void PlotLayer::paintBars(QPainter& painter) const
{
    const auto many = static_cast<double>(series_.size());
    double place = 0;
    for (const Series& series : series_) {
        QColor fill = grouped_ ? penOf(series.place, palette_, 1).color() : palette_.water;
        fill.setAlphaF(palette_.isDark ? 0.75f : 0.8f);
        for (const Bar& bar : series.bars) {
            if (bar.perWeek <= 0) continue;
            // A day stands at its end, where its estimate is: the days a bar sums lie before that.
            const Day before = bar.from - std::chrono::days{1};
            const QPointF from = at(before, 0);
            const QPointF to = at(before + std::chrono::days{bar.days}, bar.perWeek);
            const double gap = std::min((to.x() - from.x()) * 0.2, 2.0 * scale_);
            const double width = (to.x() - from.x() - gap) / many;
            painter.fillRect(QRectF{from.x() + gap / 2 + place * width, to.y(), width, from.y() - to.y()}, fill);
        }
        place += 1;
    }
}

/// A stroke from the lowest to the highest of each day.
void PlotLayer::paintLogged(QPainter& painter, const Series& series) const
{
    QColor colour = grouped_ ? penOf(series.place, palette_, 1).color() : palette_.water;
    painter.setPen(QPen{colour, std::max(1.0, 1.2 * scale_), Qt::SolidLine, Qt::FlatCap});
    for (const Logged& span : series.logged) {
        QPointF low = at(span.day, span.low);
        QPointF high = at(span.day, span.high);
        if (low.y() - high.y() < 2.0) { // one reading, or a steady day: still to be seen
            low.ry() += 1.0;
            high.ry() -= 1.0;
        }
        painter.drawLine(low, high);
    }
}

void PlotLayer::paintMarks(QPainter& painter, const Series& series) const
{
    const double size = 8 * scale_;
    const double foot = area_.bottom();
    for (const Mark& mark : series.marks) {
        if (!frequent(mark.kind) || grouped_) continue; // in one chart together the small ticks of several stacks could not be told apart
        QPointF centre = at(mark.day, 0);
        centre.setY(foot - size / 2);
        paintSign(painter, mark.kind, centre, size * 0.7, palette_);
    }
    for (const Mark& mark : series.marks) {
        if (frequent(mark.kind)) continue;
        QPointF centre = at(mark.day, mark.value.value_or(0.0));
        if (!mark.value) centre.setY(area_.top() + size * (0.7 + 1.15 * laneOf(mark.kind)));
        paintSign(painter, mark.kind, centre, size, palette_);
    }
}

}
