#pragma once

#include "ui/drawing/palette.h"
#include "ui/drawing/stack_picture.h"

#include <QRectF>

class QPainter;

namespace tierloam::drawing {

/// What may lie in a tray, from the floor up.
enum class Stratum { castings, softened, food, bedding };
inline constexpr int stratumCount = 4;

QColor stratumColour(Stratum stratum, int ageDays, const Palette& palette);

/// What lies in a tray: strata of the estimated depth from the floor up, each with its pattern and a 1 px ink line on top of it, and
/// the worms. Surfaces are uneven, with the estimated depth as their mean over the width. What would stand above the rim is cut there.
/// A stratum thinner than 0.05 cm is left out.
void drawStrata(QPainter& painter, const QRectF& inside, const TrayPicture& tray, double pxPerCm, const Palette& palette);

/// A tray without an estimate: a slanted hatch from wall to wall, which no stratum has.
void drawUnknown(QPainter& painter, const QRectF& inside, const Palette& palette);

/// A rectangle filled like a stratum, for the legend.
void drawSwatch(QPainter& painter, const QRectF& rect, Stratum stratum, int ageDays, const Palette& palette);

/// One worm of that length lying at `middle`, for the legend.
void drawWorm(QPainter& painter, const QPointF& middle, double length, const Palette& palette);

}
