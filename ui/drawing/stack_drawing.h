#pragma once

#include "ui/drawing/palette.h"
#include "ui/drawing/stack_layout.h"

class QPainter;

namespace tierloam::drawing {

/// One stack in side view: stand, sump with its level and spigot, trays as straight boxes with rims, holed floors and strata, lid on top or
/// leaning, light on a drying tray, labels and rings beside. For screen, print and pictures; the layout comes from layOut().
/// Returns false when a label did not fit its space and was elided.
bool drawStack(QPainter& painter, const StackPicture& stack, const StackLayout& layout, const ShelfScale& scale, const LabelSpace& labels,
               const Palette& palette, const Type& type);

/// From one mark on the side of a sump to the next, L, so that the level can be read off: a litre or a quarter of a gallon; of a large one five litres or a gallon.
double sumpMark(double capacityL);

enum class Emphasis { pointed, focused, selected };
/// Marks one part (a slot, or 0 for the sump; −1 for the whole stack): pointed = a thin line, focused = a dashed one, selected = a solid thick one.
void drawEmphasis(QPainter& painter, const StackLayout& layout, int part, Emphasis emphasis, const Palette& palette);

}
