#pragma once

#include "ui/drawing/palette.h"

#include <QRectF>

#include <optional>

class QPainter;

namespace tierloam::drawing {

/// A small stack for one line of the due list: trays from the bottom up and the sump under them, with the part that the line is about filled.
struct TrayIcon {
    int trays = 3;                    ///< drawn: 1 to 5; the marked one always is
    std::optional<int> slot;          ///< 1 = bottom; 0 = the sump; absent: none is marked
    QColor colour;                    ///< of the marked part
};

/// Drawn as large as `room` allows, centred.
void drawTrayIcon(QPainter& painter, const QRectF& room, const TrayIcon& icon, const Palette& palette);

}
