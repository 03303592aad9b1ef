#include "ui/drawing/strip.h"

#include <QDate>
#include <QGuiApplication>
#include <QLocale>
#include <QPainter>
#include <QPolygonF>

#include <algorithm>
#include <cmath>

namespace tierloam::drawing {

namespace {

bool drawHead(QPainter& painter, const QRectF& room, const QString& title, const QString& value, const QString& range, const Palette& palette, const Type& type)
{
    const double gap = 6;
    const double valueWidth = textWidth(type.smallStrong, value), titleWidth = textWidth(type.small, title);
    const double rangeWidth = range.isEmpty() ? 0 : textWidth(type.small, range) + gap;
    const bool withRange = !range.isEmpty() && titleWidth + gap + valueWidth + rangeWidth <= room.width();
    const bool leftToRight = QGuiApplication::layoutDirection() == Qt::LeftToRight;
    QRectF line{room.left(), room.top(), room.width(), lineHeight(type.small)};
    QRectF end = line;
    if (withRange) {
        drawLine(painter, end, range, type.small, palette.mutedInk, true);
        end.adjust(leftToRight ? 0 : rangeWidth, 0, leftToRight ? -rangeWidth : 0, 0);
    }
    bool fits = drawLine(painter, end, value, type.smallStrong, palette.ink, true);
    const double taken = valueWidth + gap + (withRange ? rangeWidth : 0);
    line.adjust(leftToRight ? 0 : taken, 0, leftToRight ? -taken : 0, 0);
    fits &= drawLine(painter, line, title, type.small, palette.mutedInk);
    return fits;
}

/// Ground of what is not yet: slanted lines and an upright edge, so that it needs no colour.
void drawFuture(QPainter& painter, const QRectF& plot, const TimeAxis& axis, const Palette& palette)
{
    if (!axis.future || *axis.future >= axis.to) return;
    const double x = std::max(plot.left(), axis.xOf(*axis.future, plot));
    painter.save();
    painter.setPen(Qt::NoPen);
    painter.setBrush(QBrush{palette.line, Qt::BDiagPattern});
    painter.drawRect(QRectF{QPointF{x, plot.top()}, plot.bottomRight()});
    painter.setPen(QPen{palette.mutedInk, 1});
    painter.drawLine(QPointF{x, plot.top()}, QPointF{x, plot.bottom()});
    painter.restore();
}

void drawBase(QPainter& painter, const QRectF& plot, const TimeAxis& axis, const Palette& palette)
{
    painter.setPen(QPen{palette.line, 1});
    painter.drawLine(plot.bottomLeft(), plot.bottomRight());
    if (axis.mark && *axis.mark >= axis.from && *axis.mark <= axis.to) {
        const double x = axis.xOf(*axis.mark, plot);
        painter.setPen(QPen{palette.ink, 1});
        painter.drawLine(QPointF{x, plot.top()}, QPointF{x, plot.bottom()});
    }
}

QDate dateOf(Day day) { return QDate{1970, 1, 1}.addDays(day.time_since_epoch().count()); }

}

double TimeAxis::xOf(Day day, const QRectF& plot) const
{
    const double span = std::max(1, daysBetween(from, to));
    return plot.left() + plot.width() * daysBetween(from, day) / span;
}

std::vector<TimeAxis::Tick> TimeAxis::ticks(double width, const QFont& font) const
{
    using namespace std::chrono;
    std::vector<Tick> found;
    if (to <= from) return found;
    const QLocale locale;
    for (const int every : {1, 2, 3, 6, 12, 24, 60, 120}) {
        found.clear();
        double end = -1e9;
        bool fits = true;
        year_month month{year_month_day{from}.year(), year_month_day{from}.month()};
        for (; sys_days{month / 1} <= to; month += months{1}) {
            const int number = int{month.year()} * 12 + static_cast<int>(unsigned{month.month()}) - 1;
            const Day day = sys_days{month / 1};
            if (number % every != 0 || day < from) continue;
            const QString name = every >= 12 ? QString::number(int{month.year()}) : locale.standaloneMonthName(dateOf(day).month(), QLocale::ShortFormat);
            const double x = width * daysBetween(from, day) / daysBetween(from, to);
            const double wide = textWidth(font, name);
            if (x + wide > width + 0.5) continue;
            if (x < end + 8) fits = false;
            end = x + wide;
            found.push_back({day, name});
        }
        if (fits) return found;
    }
    return found;
}

bool isBare(const Strip& strip, const TimeAxis& axis)
{
    std::optional<Day> first, last;
    for (const StripPoint& point : strip.points) {
        if (point.day < axis.from || point.day > axis.to) continue;
        if (!first) first = point.day;
        last = point.day;
    }
    return !first || 10 * daysBetween(*first, *last) < daysBetween(axis.from, axis.to);
}

bool isBare(const Bars& bars, const TimeAxis& axis)
{
    int days = 0;
    for (const Bars::Bar& bar : bars.bars) {
        const int seen = daysBetween(std::max(bar.from, axis.from), std::min(bar.to, axis.to + std::chrono::days{1}));
        if (seen > 0 && bar.measured) return false;
        if (seen > 0 && bar.expected) days += seen;
    }
    return 10 * days < daysBetween(axis.from, axis.to);
}

double stripHeight(const Type& type, double roomy) { return std::ceil(lineHeight(type.small) * (2.2 + 1.3 * std::clamp(roomy, pressedStrip, 1.0))); }
double axisHeight(const Type& type) { return lineHeight(type.small) + 4; }

QRectF plotOf(const QRectF& room, const Type& type) { return room.adjusted(0.5, lineHeight(type.small) + 1, -0.5, -1.5); }

double roundTop(double highest)
{
    if (!(highest > 0) || !std::isfinite(highest)) return 1;
    const double power = std::pow(10.0, std::floor(std::log10(highest)));
    for (const double step : {1.0, 1.5, 2.0, 2.5, 3.0, 4.0, 5.0, 7.5})
        if (highest <= step * power * (1 + 1e-9)) return step * power;
    return 10 * power;
}

double Strip::yOf(double at, const QRectF& plot) const
{
    const auto scaled = [this](double v) { return log ? std::log(std::max(v, 1e-9)) : v; };
    const double span = scaled(top) - scaled(bottom);
    return plot.bottom() - plot.height() * (span > 0 ? std::clamp((scaled(at) - scaled(bottom)) / span, 0.0, 1.0) : 0.0);
}

namespace {

/// In the blank part of the plot, which ends at the first thing drawn; on two lines where the plot is high enough.
bool drawNothing(QPainter& painter, const QRectF& plot, double until, const QString& text, const Palette& palette, const Type& type)
{
    if (text.isEmpty()) return true;
    const double line = lineHeight(type.small);
    QRectF room{plot.left() + 2, plot.top(), std::min(until, plot.right()) - plot.left() - 8, plot.height()};
    const double height = wrappedHeight(type.small, text, room.width());
    if (height <= line || height > plot.height()) {
        room.setTop(std::max(plot.top() - 1, plot.center().y() - line / 2));
        return drawLine(painter, room, text, type.small, palette.mutedInk);
    }
    room.setTop(plot.center().y() - height / 2);
    drawWrapped(painter, room, text, type.small, palette.mutedInk);
    return true;
}

void drawLevel(QPainter& painter, const QRectF& plot, const Strip& strip, const Palette& palette, const Type& type)
{
    if (!strip.level || strip.level->value > strip.top || strip.level->value < strip.bottom) return;
    const double y = strip.yOf(strip.level->value, plot);
    painter.setPen(QPen{palette.ink, 1.2, Qt::DotLine});
    painter.drawLine(QPointF{plot.left(), y}, QPointF{plot.right(), y});
    const double line = lineHeight(type.small);
    const double top = y - line >= plot.top() ? y - line : y + 1; // under it where there is no room above
    drawLine(painter, {plot.left() + 2, top, plot.width() - 4, line}, strip.level->name, type.small, palette.ink);
}

struct Lines {
    QPolygonF upper, lower, middle;

    void add(const Strip& strip, const StripPoint& point, double x, const QRectF& plot)
    {
        upper << QPointF{x, strip.yOf(point.high, plot)};
        lower << QPointF{x, strip.yOf(point.low, plot)};
        middle << QPointF{x, strip.yOf(point.middle, plot)};
    }
    void draw(QPainter& painter, const Strip& strip, bool forecast, const Palette& palette) const
    {
        if (middle.size() > 1) {
            QPolygonF band = upper;
            for (auto it = lower.crbegin(); it != lower.crend(); ++it) band << *it;
            painter.setPen(Qt::NoPen);
            painter.setBrush(mixed(palette.ground, strip.colour, forecast ? 0.16 : 0.26));
            painter.drawPolygon(band);
            painter.setBrush(Qt::NoBrush);
            painter.setPen(QPen{strip.colour, 1.7, forecast ? Qt::DashLine : Qt::SolidLine, forecast ? Qt::FlatCap : Qt::RoundCap, Qt::RoundJoin});
            painter.drawPolyline(middle);
        } else if (middle.size() == 1 && !forecast) {
            painter.setPen(QPen{strip.colour, 4, Qt::SolidLine, Qt::RoundCap});
            painter.drawPoint(middle.front());
        }
    }
};

}

bool drawStrip(QPainter& painter, const QRectF& room, const Strip& strip, const TimeAxis& axis, const Palette& palette, const Type& type)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    bool fits = drawHead(painter, room, strip.title, strip.value, strip.range, palette, type);
    const QRectF plot = plotOf(room, type);
    drawFuture(painter, plot, axis, palette);
    Lines past, ahead;
    std::optional<StripPoint> last;
    for (const StripPoint& point : strip.points) {
        if (point.day < axis.from || point.day > axis.to) continue;
        const double x = axis.xOf(point.day, plot);
        if (!axis.future || point.day <= *axis.future) {
            past.add(strip, point, x, plot);
            last = point;
        } else {
            if (ahead.middle.isEmpty() && last) ahead.add(strip, *last, axis.xOf(last->day, plot), plot); // it goes on from the past
            ahead.add(strip, point, x, plot);
        }
    }
    past.draw(painter, strip, false, palette);
    ahead.draw(painter, strip, true, palette);
    drawLevel(painter, plot, strip, palette, type);
    const bool besideIt = isBare(strip, axis) && !past.middle.isEmpty();
    fits &= drawNothing(painter, plot, besideIt ? past.middle.front().x() : plot.right(), strip.nothing, palette, type);
    drawBase(painter, plot, axis, palette);
    painter.restore();
    return fits;
}

bool drawBars(QPainter& painter, const QRectF& room, const Bars& bars, const TimeAxis& axis, const Palette& palette, const Type& type)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    bool fits = drawHead(painter, room, bars.title, bars.value, bars.range, palette, type);
    const QRectF plot = plotOf(room, type);
    drawFuture(painter, plot, axis, palette);
    double first = plot.right();
    for (const Bars::Bar& bar : bars.bars) {
        const double from = std::max(axis.xOf(bar.from, plot), plot.left()), to = std::min(axis.xOf(bar.to, plot), plot.right());
        if (to - from < 0.5) continue;
        const double gap = std::min(2.0, (to - from) * 0.2);
        if (bar.measured || bar.expected) first = std::min(first, from);
        const auto y = [&](double value) { return plot.bottom() - plot.height() * std::clamp(value / bars.top, 0.0, 1.0); };
        if (bar.measured) {
            painter.setPen(Qt::NoPen);
            painter.setBrush(mixed(palette.ground, bars.colour, 0.78));
            painter.drawRect(QRectF{QPointF{from + gap / 2, y(*bar.measured)}, QPointF{to - gap / 2, plot.bottom()}});
        }
        if (bar.expected) {
            painter.setPen(QPen{palette.ink, 1.2});
            painter.drawLine(QPointF{from + gap / 2, y(*bar.expected)}, QPointF{to - gap / 2, y(*bar.expected)});
        }
    }
    fits &= drawNothing(painter, plot, first, bars.nothing, palette, type);
    drawBase(painter, plot, axis, palette);
    painter.restore();
    return fits;
}

void drawAxis(QPainter& painter, const QRectF& room, const TimeAxis& axis, const Palette& palette, const Type& type)
{
    painter.save();
    const QRectF plot = room.adjusted(0.5, 0, -0.5, 0);
    for (const TimeAxis::Tick& tick : axis.ticks(plot.width(), type.small)) {
        const double x = axis.xOf(tick.day, plot);
        painter.setPen(QPen{palette.mutedInk, 1});
        painter.drawLine(QPointF{x, room.top()}, QPointF{x, room.top() + 4});
        painter.setFont(type.small);
        painter.drawText(QRectF{x, room.top() + 3, plot.right() - x + 1, lineHeight(type.small)}, Qt::AlignLeft | Qt::AlignAbsolute | Qt::AlignTop | Qt::TextDontClip, tick.name);
    }
    painter.restore();
}

}
