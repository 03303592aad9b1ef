#pragma once

#include "ui/drawing/stack_picture.h"
#include "ui/drawing/type.h"

#include <QRectF>

#include <span>
#include <vector>

namespace tierloam::drawing {

/// One scale for all stacks that stand side by side.
struct ShelfScale {
    double pxPerCm = 6;               ///< heights: trays and the depths in them
    double pxPerWidthCm = 4.5;        ///< widths: a tray is drawn as wide as the side of a square of its area
    double sumpPxPerCm() const { return sumpStretch * pxPerCm; }

    static constexpr double sumpStretch = 2; ///< a sump is shallow: its level is drawn at twice the scale of depths, in every stack
};

/// Where each part of one stack is drawn. The stack stands on `ground`; everything is in painter units.
struct StackLayout {
    struct Tray {
        QRectF box;                   ///< walls, from under its rim to its floor
        QRectF rim;
        QRectF inside;                ///< where strata may lie: its bottom is the floor, its height the tray's
        QRectF labels;                ///< beside it, text and ring
        double opacity = 1;           ///< below 1 while it comes or goes (stack_motion.h)
        QRectF whole() const { return box.united(rim); }
    };
    std::vector<Tray> trays;          ///< from the bottom up
    QRectF lid;                       ///< on top; null when it leans beside the stack
    QRectF sump, sumpInside, sumpLabels;
    QRectF stand;                     ///< null when it stands on the floor itself
    double ground = 0;
    double top = 0;                   ///< of everything drawn, the light above a drying tray included

    bool mirrored = false;            ///< labels at the left, lid and spigot at the right

    /// Turned about a vertical axis, for languages that run from right to left.
    void mirror(double axis);
    /// Slot at that point (1 = bottom), 0 for the sump, −1 for neither. The labels beside belong to their part.
    int partAt(const QPointF& point) const;
};

/// Widths beside and under the drawing that text needs.
struct LabelSpace {
    double width = 0;                 ///< of the widest label with its ring
    double height = 0;                ///< of the tallest block of labels of one tray
    double sumpHeight = 0;            ///< of the tallest block of labels of a sump
    double ring = 0;                  ///< diameter of a ring
};
LabelSpace labelSpace(std::span<const StackPicture> stacks, const Type& type);

/// Height in cm of the whole drawing of a stack, at the stretch of its parts.
double heightCm(const StackPicture& stack);
/// Smallest pxPerCm at which no label of a tray runs into the next.
double smallestScale(std::span<const StackPicture> stacks, const LabelSpace& labels);
/// The largest scale at which every stack fits a room of that size (the width is that of one tray box), but never below smallestScale
/// and never above a shape that would look stretched.
ShelfScale scaleFor(std::span<const StackPicture> stacks, const LabelSpace& labels, double boxWidth, double height);

/// `left` is where the widest box of the shelf begins; narrower ones are centred on it. `boxWidth` is the width given to scaleFor.
StackLayout layOut(const StackPicture& stack, const ShelfScale& scale, const LabelSpace& labels, double left, double boxWidth, double ground);

/// Space at the start side of a box that a leaning lid and a spigot take.
double sideSpace(const ShelfScale& scale);
/// Space between a box and its labels, that the overhang of a rim and the mark around a tray take.
double labelGap(const ShelfScale& scale);

}
