#pragma once

#include "ui/drawing/palette.h"

#include <QBrush>
#include <QPen>

/// How lines, bars and bands of a stack look in the charts, without colour too.
namespace tierloam::trends {

/// Colour and dashes of a stack among the stacks, the same in every chart; neighbours differ by both, thirty of them by dashes and width alone.
QPen penOf(int place, const drawing::Palette& palette, double width);
/// What a stack's bars are filled with among those of other stacks: eight patterns.
QBrush fillOf(int place, const QColor& colour);
/// The pen and the hatching of what a tried change gives, beside the base case in that colour.
QPen changedPen(const QColor& colour, double scale);
QBrush changedBrush(const QColor& colour);

}
