#include "ui/trends/plot_layer.h"

#include "ui/trends/dense_ink.h"
#include "ui/trends/mark_sign.h"
#include "ui/trends/series_pens.h"
#include "ui/trends/trend_words.h"

#include <QFontMetricsF>
#include <QPainter>
#include <QWidget>

#include <algorithm>
#include <cmath>
#include <set>
#include <span>

namespace tierloam::trends {

PlotLayer::PlotLayer(QGraphicsItem* parent) : QGraphicsItem{parent}
{
    setFlag(ItemClipsToShape);
    setZValue(2.5); // above the grid, below the axes
}

void PlotLayer::touched()
{
    picture_ = {};
    update();
}

void PlotLayer::setFrame(const Frame& frame)
{
    if (frame.area != frame_.area) prepareGeometryChange();
    frame_ = frame;
    touched();
}

void PlotLayer::setContents(std::vector<Series> series, const Period& period, bool grouped)
{
    series_ = std::move(series);
    period_ = period;
    grouped_ = grouped;
    touched();
}

void PlotLayer::setLook(const drawing::Palette& palette, double scale, const QColor& alone, const QFont& small)
{
    palette_ = palette;
    alone_ = alone;
    scale_ = scale;
    small_ = small;
    touched();
}

QPen PlotLayer::linePen(const Series& series) const
{
    QPen pen = penOf(grouped_ ? series.place : 0, palette_, 1.6 * scale_);
    if (!grouped_) pen.setColor(alone_);
    return pen;
}

void PlotLayer::paint(QPainter* painter, const QStyleOptionGraphicsItem*, QWidget* widget)
{
    if (frame_.area.isEmpty()) return;
    if (!widget) { // on paper: as lines, not as a picture
        DenseInk ink{*painter};
        paintAll(ink);
        return;
    }
    const double sharp = widget->devicePixelRatioF();
    if (picture_.isNull() || picture_.devicePixelRatio() != sharp) {
        picture_ = QPixmap{(frame_.area.size() * sharp).toSize() + QSize{1, 1}};
        picture_.setDevicePixelRatio(sharp);
        picture_.fill(Qt::transparent);
        QPainter inner{&picture_};
        inner.translate(-frame_.area.topLeft());
        DenseInk ink{inner, frame_.area, sharp};
        paintAll(ink);
    }
    painter->drawPixmap(frame_.area.topLeft(), picture_);
}

void PlotLayer::paintAll(DenseInk& ink) const
{
    QPainter& painter = ink.painter();
    painter.save();
    painter.setClipRect(frame_.area, Qt::IntersectClip);
    painter.setRenderHint(QPainter::Antialiasing);
    paintForecastShade(painter);
    for (const Series& series : series_) paintBand(ink, series);
    paintBars(ink);
    paintYields(painter);
    if (ready_) paintReadyLine(painter);
    for (const Series& series : series_) {
        paintTotals(painter, series);
        paintLogged(painter, series);
    }
    for (const Series& series : series_) paintLines(ink, series);
    for (const Series& series : series_) paintMarks(painter, series);
    painter.restore();
}

void PlotLayer::paintForecastShade(QPainter& painter) const
{
    const QRectF& area = frame_.area;
    const double now = frame_.x(period_.today);
    if (now >= area.right()) return;
    const QRectF ahead{QPointF{std::max(now, area.left()), area.top()}, area.bottomRight()};
    painter.fillRect(ahead, drawing::mixed(palette_.panel, palette_.rail, 0.75));
    if (now < area.left()) return;
    painter.setPen(QPen{palette_.outline, 1, Qt::DotLine});
    painter.drawLine(ahead.topLeft(), ahead.bottomLeft());
}

void PlotLayer::paintReadyLine(QPainter& painter) const
{
    const double y = frame_.y(*ready_);
    painter.setPen(QPen{palette_.moss, 1.2 * scale_, Qt::DashLine});
    painter.drawLine(QPointF{frame_.area.left(), y}, QPointF{frame_.area.right(), y});
    painter.setFont(small_);
    painter.setPen(palette_.moss);
    const QFontMetricsF metrics{small_};
    const QString words = readyLineText();
    // Beneath it, where ready trays lie, unless there is no room.
    const bool beneath = frame_.area.bottom() - y > metrics.height();
    painter.drawText(QPointF{frame_.area.left() + 4, beneath ? y + metrics.ascent() + 1 : y - metrics.descent() - 2}, words);
}

namespace {

/// Calls `use` with each stretch of one batch.
template <class Use>
void eachBatch(const std::vector<Point>& points, Use use)
{
    for (std::size_t from = 0, to = 0; from < points.size(); from = to) {
        while (to < points.size() && points[to].batch == points[from].batch) ++to;
        use(std::span{points}.subspan(from, to - from));
    }
}

}

void PlotLayer::paintBand(DenseInk& ink, const Series& series) const
{
    const auto band = [&](const DenseInk& on, const std::vector<Point>& all, const QBrush& fill) {
        on.painter().setBrush(fill);
        eachBatch(all, [&](std::span<const Point> points) {
            QPolygonF high, low;
            high.reserve(static_cast<qsizetype>(points.size() * 2)); // it takes both where they are one shape
            low.reserve(static_cast<qsizetype>(points.size()));
            for (const Point& point : points) {
                high << at(point.day, point.band.p95);
                low << at(point.day, point.band.p05);
            }
            on.between(high, low);
        });
    };
    const double share = grouped_ ? 0.14 : 0.22;
    QColor fill = linePen(series).color();
    fill.setAlphaF(static_cast<float>(share));
    if (!series.past.empty()) ink.veiled(fill, [&](const DenseInk& on, const QColor& colour) { band(on, series.past, colour); });
    fill.setAlphaF(static_cast<float>(share * 0.7));
    if (!series.ahead.empty()) ink.veiled(fill, [&](const DenseInk& on, const QColor& colour) { band(on, series.ahead, colour); });
    if (!series.changed.empty()) band(DenseInk{ink.painter()}, series.changed, changedBrush(grouped_ ? linePen(series).color() : palette_.ink));
}

void PlotLayer::paintLines(DenseInk& ink, const Series& series) const
{
    ink.painter().setBrush(Qt::NoBrush);
    const auto line = [&](const DenseInk& on, const std::vector<Point>& all, const QPen& pen) {
        on.painter().setPen(pen);
        eachBatch(all, [&](std::span<const Point> points) {
            QPolygonF way;
            way.reserve(static_cast<qsizetype>(points.size()));
            for (const Point& point : points) way << at(point.day, point.band.p50);
            on.polyline(way);
        });
    };
    QPen pen = linePen(series);
    line(ink, series.past, pen);
    if (!series.changed.empty()) line(ink, series.changed, changedPen(grouped_ ? pen.color() : palette_.ink, scale_));
    if (series.ahead.empty()) return;
    QColor faint = pen.color();
    faint.setAlphaF(0.75f);
    if (!grouped_) pen.setStyle(Qt::DashLine);
    ink.veiled(faint, [&](const DenseInk& on, const QColor& colour) {
        pen.setColor(colour);
        line(on, series.ahead, pen);
    });
}

/// What was drained in all, as steps.
void PlotLayer::paintTotals(QPainter& painter, const Series& series) const
{
    if (series.totals.empty()) return;
    QPolygonF way;
    for (const Total& total : series.totals) {
        if (!way.isEmpty()) way << QPointF{frame_.x(total.day), way.back().y()};
        way << at(total.day, total.litres);
    }
    painter.setBrush(Qt::NoBrush);
    QPen pen = linePen(series);
    pen.setWidthF(pen.widthF() * 1.5);
    if (!grouped_) pen.setColor(palette_.water);
    painter.setPen(pen);
    painter.drawPolyline(way);
}

/// A bar for what was taken, and beside its middle an upright stroke for what was to be expected: its range, a dot at the median.
void PlotLayer::paintYields(QPainter& painter) const
{
    const auto many = static_cast<double>(series_.size());
    double place = 0;
    for (const Series& series : series_) {
        const QColor colour = grouped_ ? penOf(series.place, palette_, 1).color() : palette_.amber;
        QColor fill = colour;
        fill.setAlphaF(0.55f);
        for (const Yield& yield : series.yields) {
            double left = frame_.x(yield.from), width = 10 * scale_;
            if (yield.ofYear()) {
                const double whole = (frame_.x(yield.until) - left) * 0.86 / many;
                width = std::max(3.0, whole);
                left += (frame_.x(yield.until) - left) * 0.07 + place * whole;
            } else {
                left += (place - many / 2) * width * 0.6;
            }
            const QRectF bar{QPointF{left, frame_.y(yield.kg)}, QPointF{left + width, frame_.y(0)}};
            painter.setPen(QPen{colour, 1});
            painter.setBrush(grouped_ ? fillOf(series.place, fill) : QBrush{fill});
            painter.drawRect(bar);
            if (!yield.expected) continue;
            const double x = std::clamp(bar.center().x(), frame_.area.left() + 4, frame_.area.right() - 4), cap = std::min(4.0 * scale_, width / 2);
            const double high = frame_.y(yield.expected->p95), low = frame_.y(yield.expected->p05);
            painter.setPen(QPen{palette_.ink, 1.3 * scale_});
            painter.drawLine(QPointF{x, high}, QPointF{x, low});
            painter.drawLine(QPointF{x - cap, high}, QPointF{x + cap, high});
            painter.drawLine(QPointF{x - cap, low}, QPointF{x + cap, low});
            painter.setBrush(palette_.ink);
            painter.drawEllipse(QPointF{x, frame_.y(yield.expected->p50)}, 2.2 * scale_, 2.2 * scale_);
        }
        ++place;
    }
}

void PlotLayer::paintBars(DenseInk& ink) const
{
    const auto many = static_cast<double>(series_.size());
    double place = 0;
    for (const Series& series : series_) {
        QColor fill = grouped_ ? penOf(series.place, palette_, 1).color() : palette_.water;
        fill.setAlphaF(palette_.isDark ? 0.75f : 0.8f);
        if (!series.bars.empty()) {
            ink.veiled(fill, [&](const DenseInk& on, const QColor& colour) {
                for (const Bar& bar : series.bars) {
                    if (bar.perWeek <= 0) continue;
                    // A day stands at its end, where its estimate is: the days a bar sums lie before that.
                    const Day before = bar.from - std::chrono::days{1};
                    const QPointF from = at(before, 0);
                    const QPointF to = at(before + std::chrono::days{bar.days}, bar.perWeek);
                    const double gap = std::min((to.x() - from.x()) * 0.2, 2.0 * scale_);
                    const double width = (to.x() - from.x() - gap) / many;
                    const QRectF box{from.x() + gap / 2 + place * width, to.y(), width, from.y() - to.y()};
                    if (!grouped_ || series.place % 8 == 0) {
                        on.painter().fillRect(box, colour);
                        continue;
                    }
                    on.painter().setPen(QPen{colour, 1});
                    on.painter().setBrush(fillOf(series.place, colour));
                    on.painter().drawRect(box);
                }
            });
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
        if (!grouped_) continue;
        // Of stacks over each other: with bars at both ends, above, below, at the mean, or plain.
        const int form = series.place % 5;
        const double reach = 2.5 * scale_;
        for (const auto& [place, wanted] : {std::pair{high, form == 1 || form == 2}, {low, form == 1 || form == 3}, {at(span.day, span.mean), form == 4}})
            if (wanted) painter.drawLine(place - QPointF{reach, 0}, place + QPointF{reach, 0});
    }
}

void PlotLayer::paintMarks(QPainter& painter, const Series& series) const
{
    const double size = 8 * scale_;
    const QRectF& area = frame_.area;
    for (const Mark& mark : series.marks) {
        if (!isFrequent(mark.kind) || grouped_) continue; // in one chart together the small ticks of several stacks could not be told apart
        paintSign(painter, mark.kind, {frame_.x(mark.day), area.bottom() - size / 2}, size * 0.7, palette_);
    }
    std::set<MarkKind> told;
    painter.setFont(small_);
    const QFontMetricsF metrics{small_};
    for (auto mark = series.marks.rbegin(); mark != series.marks.rend(); ++mark) {
        if (isFrequent(mark->kind)) continue;
        QPointF centre{frame_.x(mark->day), mark->value ? frame_.y(*mark->value) : area.top() + size * (0.7 + 1.15 * laneOf(mark->kind))};
        paintSign(painter, mark->kind, centre, size, palette_);
        const QString words = markWords(mark->kind);
        if (words.isEmpty() || grouped_ || !told.insert(mark->kind).second) continue; // the latest of its kind has its words beside it
        const double wide = metrics.horizontalAdvance(words), gap = size * 0.8;
        const bool after = centre.x() + gap + wide <= area.right();
        const double left = after ? centre.x() + gap : area.right() - wide - 2;
        if (left < area.left()) continue;
        // Beneath the row of signs where there is no room after the last one: before it stand the others.
        const QRectF box{left - 1, after ? centre.y() - metrics.height() / 2 : centre.y() + size * 0.7, wide + 2, metrics.height()};
        QColor ground = palette_.panel;
        ground.setAlphaF(0.8f);
        painter.fillRect(box, ground);
        painter.setPen(palette_.ink);
        painter.drawText(QPointF{left, box.top() + metrics.ascent()}, words);
    }
}

}
