#include "ui/materials/gauge.h"

#include "ui/common/panels.h"
#include "ui/drawing/type.h"

#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <cmath>

namespace tierloam::materials_page {

namespace {

/// A drop that stands on the line at x.
QPainterPath drop(double x, double line, double size)
{
    QPainterPath path;
    path.moveTo(x, line);
    path.lineTo(x - 0.6 * size, line - size);
    path.lineTo(x + 0.6 * size, line - size);
    path.closeSubpath();
    return path;
}

}

Gauge::Gauge(const ui::Theme& theme, QWidget* parent) : QWidget{parent}, theme_{theme}
{
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    connect(&theme_, &ui::Theme::changed, this, [this] { updateGeometry(); update(); });
}

void Gauge::setReading(const Reading& reading)
{
    reading_ = reading;
    QString said = reading.value.isEmpty() ? tr("nothing yet") : reading.value;
    if (!reading.after.isEmpty()) said = tr("%1; %2").arg(said, reading.after);
    ui::setAccess(this, tr("%1: %2").arg(reading.title, said), reading.aim);
    update();
}

QSize Gauge::sizeHint() const
{
    const auto type = drawing::Type::from(font());
    return {theme_.px(150), static_cast<int>(2 * drawing::lineHeight(type.small) + theme_.px(28))};
}

void Gauge::paintEvent(QPaintEvent*)
{
    QPainter painter{this};
    painter.setRenderHint(QPainter::Antialiasing);
    const auto& palette = theme_.palette();
    const auto type = drawing::Type::from(font());
    const QString head = reading_.value.isEmpty() ? reading_.title : tr("%1  %2", "name of a measure, its value").arg(reading_.title, reading_.value);
    const double text = drawing::lineHeight(type.strong);
    drawing::drawLine(painter, QRectF(0, 0, width() * 0.62, text), head, type.strong, palette.ink);
    if (!reading_.after.isEmpty()) drawing::drawLine(painter, QRectF(width() * 0.4, 0, width() * 0.6, text), reading_.after, type.small, palette.moss, true);
    const double size = theme_.px(9), line = text + size + theme_.px(4), left = size, right = width() - size;
    const auto at = [&](double value) {
        const double v = std::clamp(value, reading_.least, reading_.most);
        const double share = reading_.logarithmic ? std::log(v / reading_.least) / std::log(reading_.most / reading_.least) : (v - reading_.least) / (reading_.most - reading_.least);
        return isRightToLeft() ? right - share * (right - left) : left + share * (right - left);
    };
    painter.setPen(QPen{palette.outline, 1});
    painter.drawLine(QPointF(left, line), QPointF(right, line));
    const QRectF aim{QPointF(std::min(at(reading_.from), at(reading_.to)), line - theme_.px(3)), QPointF(std::max(at(reading_.from), at(reading_.to)), line + theme_.px(3))};
    painter.setBrush(palette.mossSoft);
    painter.setPen(QPen{palette.moss, 1});
    painter.drawRect(aim);
    if (reading_.then) {
        painter.setBrush(palette.panel);
        painter.setPen(QPen{palette.moss, 2});
        painter.drawPath(drop(at(*reading_.then), line, size));
    }
    if (reading_.now) {
        painter.setBrush(palette.ink);
        painter.setPen(Qt::NoPen);
        painter.drawPath(drop(at(*reading_.now), line, size));
    }
    drawing::drawLine(painter, QRectF(0, line + theme_.px(5), width(), drawing::lineHeight(type.small)), reading_.aim, type.small, palette.mutedInk);
}

}
