#include "ui/drawing/ring.h"

#include "core/wording/percent.h"

#include <QPainter>

#include <algorithm>
#include <cmath>

namespace tierloam::drawing {

void drawRing(QPainter& painter, const QRectF& room, const Readiness& readiness, const Palette& palette, const Type& type)
{
    using reckoning::TrayState;
    const double diameter = std::min(room.width(), room.height());
    const bool disc = readiness.state == TrayState::ready || readiness.state == TrayState::overdue;
    const double thick = readiness.state == TrayState::working ? diameter * 0.085 : diameter * 0.14;
    const QRectF outer{room.center().x() - diameter / 2, room.center().y() - diameter / 2, diameter, diameter};
    const QRectF arc = outer.adjusted(thick / 2 + 0.5, thick / 2 + 0.5, -thick / 2 - 0.5, -thick / 2 - 0.5);
    const bool raised = readiness.probability >= 0.8 || disc;
    const QColor colour = readiness.state == TrayState::overdue ? palette.brick
                          : readiness.state == TrayState::drying ? palette.amber
                          : raised                               ? palette.moss
                                                                 : palette.amber;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen{palette.line, thick, Qt::SolidLine, Qt::FlatCap});
    painter.drawEllipse(arc);
    QPen pen{colour, thick, Qt::SolidLine, Qt::FlatCap};
    if (readiness.state == TrayState::drying) pen.setDashPattern({1.1, 0.5});
    painter.setPen(pen);
    // Qt counts in sixteenths of a degree, against the clock from three.
    painter.drawArc(arc, 90 * 16, -static_cast<int>(std::lround(std::clamp(readiness.probability, 0.0, 1.0) * 360 * 16)));
    QColor number = colour;
    if (disc) {
        const double gap = readiness.state == TrayState::overdue ? thick * 0.55 : -0.5;
        const double r = arc.width() / 2 - thick / 2 - gap;
        painter.setPen(Qt::NoPen);
        painter.setBrush(colour);
        painter.drawEllipse(outer.center(), r, r);
        number = palette.isDark ? palette.rail : palette.panel;
    }
    const QString text = QString::number(wording::percentShown(std::clamp(readiness.probability, 0.0, 1.0)));
    QFont font = type.smallStrong;
    const double space = diameter - 2 * thick - 3;
    const double wide = textWidth(font, text);
    if (wide > space) {
        if (font.pixelSize() > 0) font.setPixelSize(std::max(6, static_cast<int>(font.pixelSize() * space / wide)));
        else font.setPointSizeF(font.pointSizeF() * space / wide);
    }
    painter.setFont(font);
    painter.setPen(number);
    painter.drawText(outer, Qt::AlignCenter | Qt::TextDontClip, text);
    painter.restore();
}

}
