#include "ui/drawing/tray_icon.h"

#include <QPainter>

#include <algorithm>

namespace tierloam::drawing {

void drawTrayIcon(QPainter& painter, const QRectF& room, const TrayIcon& icon, const Palette& palette)
{
    const int trays = std::max(icon.trays, 1);
    const int shown = std::min(trays, 5);
    // A tall stack is told by five trays: the marked one keeps its place at the bottom, in the middle or at the top.
    int marked = icon.slot.value_or(-1);
    if (marked > shown) marked = marked >= trays ? shown : shown - 1;
    const double unit = std::min(room.height() / (shown + 1.0), room.width() * 0.55);
    const double width = std::min(room.width(), unit * 2.6);
    const double height = unit * 0.72;
    double y = room.center().y() + unit * (shown + 1) / 2 - unit + (unit - height) / 2;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    for (int part = 0; part <= shown; ++part) {
        const double wide = part == 0 ? width * 0.76 : width;
        const bool full = part == marked;
        painter.setPen(QPen{full ? icon.colour : palette.outline, full ? 1.6 : 1.1});
        painter.setBrush(full ? QBrush{icon.colour} : QBrush{palette.panel});
        painter.drawRoundedRect(QRectF{room.center().x() - wide / 2, y, wide, height}, 1.5, 1.5);
        y -= unit;
    }
    painter.restore();
}

}
