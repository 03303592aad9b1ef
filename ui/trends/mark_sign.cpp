#include "ui/trends/mark_sign.h"

#include <QPainter>
#include <QPolygonF>

#include <algorithm>

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
    case MarkKind::reading:
    case MarkKind::event: return p.ink;
    case MarkKind::drainLow:
    case MarkKind::drainHigh: return p.brick;
    case MarkKind::water: // over the bars of drained water
    case MarkKind::bedding: return p.outline;
    }
    return p.outline;
}

}

int laneOf(MarkKind kind)
{
    switch (kind) {
    case MarkKind::harvest: return 1;
    case MarkKind::bedding: return 2;
    case MarkKind::event: return 3;
    case MarkKind::drainHigh: return 1;
    default: return 0;
    }
}

bool isFrequent(MarkKind kind)
{
    return kind == MarkKind::feed || kind == MarkKind::water;
}

void paintSign(QPainter& painter, MarkKind kind, QPointF c, double size, const drawing::Palette& palette)
{
    const QColor colour = markColour(kind, palette);
    const double r = size / 2;
    painter.save();
    painter.setPen(QPen{colour, std::max(1.0, size / 6)});
    painter.setBrush(Qt::NoBrush);
    switch (kind) {
    case MarkKind::feed: painter.drawLine(QPointF{c.x(), c.y() - r}, QPointF{c.x(), c.y() + r}); break;
    case MarkKind::water: // a stroke that ends in a drop
        painter.drawLine(QPointF{c.x(), c.y() - r}, QPointF{c.x(), c.y() + r});
        painter.setBrush(colour);
        painter.drawEllipse(QPointF{c.x(), c.y() + r * 0.35}, r * 0.5, r * 0.5);
        break;
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
    case MarkKind::event: // a flag
        painter.drawLine(QPointF{c.x() - r * 0.6, c.y() - r}, QPointF{c.x() - r * 0.6, c.y() + r});
        painter.setBrush(colour);
        painter.drawPolygon(QPolygonF{{c.x() - r * 0.6, c.y() - r}, {c.x() + r, c.y() - r * 0.5}, {c.x() - r * 0.6, c.y()}});
        break;
    case MarkKind::drainLow: // a filled triangle, down for too little, up for too much
        painter.setBrush(colour);
        painter.drawPolygon(QPolygonF{{c.x() - r, c.y() - r}, {c.x() + r, c.y() - r}, {c.x(), c.y() + r}});
        break;
    case MarkKind::drainHigh:
        painter.setBrush(colour);
        painter.drawPolygon(QPolygonF{{c.x() - r, c.y() + r}, {c.x() + r, c.y() + r}, {c.x(), c.y() - r}});
        break;
    }
    painter.restore();
}

}
