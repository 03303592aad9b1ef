#include "ui/trends/crosshair.h"

#include <QPainter>

#include <algorithm>

namespace tierloam::trends {

Crosshair::Crosshair(QGraphicsItem* parent) : QGraphicsItem{parent}
{
    setZValue(20);
}

void Crosshair::setLook(const drawing::Palette& palette)
{
    palette_ = palette;
    update();
}

void Crosshair::setFrame(const Frame& frame)
{
    prepareGeometryChange();
    frame_ = frame;
}

void Crosshair::setDay(std::optional<Day> day)
{
    if (day == day_) return;
    prepareGeometryChange();
    day_ = day;
}

void Crosshair::setSpan(std::optional<std::pair<double, double>> x)
{
    prepareGeometryChange();
    span_ = x;
}

QRectF Crosshair::boundingRect() const
{
    QRectF box;
    if (day_) box = QRectF{frame_.x(*day_) - 1, frame_.area.top(), 2, frame_.area.height()};
    if (span_) box |= QRectF{QPointF{std::min(span_->first, span_->second), frame_.area.top()}, QPointF{std::max(span_->first, span_->second), frame_.area.bottom()}}.adjusted(-1, 0, 1, 0);
    return box & frame_.area.adjusted(-1, 0, 1, 0);
}

void Crosshair::paint(QPainter* painter, const QStyleOptionGraphicsItem*, QWidget*)
{
    painter->setRenderHint(QPainter::Antialiasing, false);
    if (span_) {
        QColor fill = palette_.moss;
        fill.setAlphaF(0.18f);
        const QRectF box = QRectF{QPointF{std::min(span_->first, span_->second), frame_.area.top()}, QPointF{std::max(span_->first, span_->second), frame_.area.bottom()}} & frame_.area;
        painter->fillRect(box, fill);
        painter->setPen(QPen{palette_.moss, 1});
        painter->drawLine(box.topLeft(), box.bottomLeft());
        painter->drawLine(box.topRight(), box.bottomRight());
    }
    if (day_) {
        const double x = frame_.x(*day_);
        if (x < frame_.area.left() - 0.5 || x > frame_.area.right() + 0.5) return;
        painter->setPen(QPen{palette_.ink, 1});
        painter->drawLine(QPointF{x, frame_.area.top()}, QPointF{x, frame_.area.bottom()});
    }
}

}
