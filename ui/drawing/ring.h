#pragma once

#include "ui/drawing/palette.h"
#include "ui/drawing/stack_picture.h"
#include "ui/drawing/type.h"

#include <QRectF>

class QPainter;

namespace tierloam::drawing {

/// The chance that a tray is ready, as a ring that closes clockwise, with the chance in per cent inside. The state shows by shape too:
/// working = a thin ring, nearly = a thick one, ready and overdue = a full disc (overdue with a gap between disc and ring), drying = dashed.
/// Drawn as the largest circle in the middle of `room`.
void drawRing(QPainter& painter, const QRectF& room, const Readiness& readiness, const Palette& palette, const Type& type);

}
