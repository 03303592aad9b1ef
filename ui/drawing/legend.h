#pragma once

#include "ui/drawing/palette.h"
#include "ui/drawing/type.h"

#include <QRectF>

class QPainter;

namespace tierloam::drawing {

/// Tight: the ages in one line with their ends alone, lines closer together; for where the whole would have to be scrolled to. Shades: of that only what
/// the shades and patterns of the trays mean, for where there is no room for more.
enum class LegendForm { roomy, tight, shades };

/// What the drawing of a stack means: ages of castings, strata with their patterns, worms, the ring, the ratio, the sump. Items wrap to the width;
/// every item is a swatch with its words.
double legendHeight(double width, const Type& type, LegendForm form = LegendForm::roomy);
/// Returns the height used; nothing is elided at a width of 12 letters or more.
double drawLegend(QPainter& painter, const QRectF& room, const Palette& palette, const Type& type, LegendForm form = LegendForm::roomy);

/// The same in words, for screen readers.
QString legendText();

}
