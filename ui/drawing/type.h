#pragma once

#include <QFont>
#include <QRectF>
#include <QString>

class QPainter;
class QColor;

namespace tierloam::drawing {

/// The one typeface in its three sizes. Everything is derived from the font of the place, so that font scaling needs no second number.
struct Type {
    QFont title;       ///< 1.35 × body, semi-bold: the name of a stack
    QFont body;
    QFont strong;      ///< body, semi-bold
    QFont small;       ///< 0.9 × body: labels, ranges, reasons
    QFont smallStrong;

    static Type from(const QFont& base);
};

/// Width of one line; height of one line with its leading. Whole pixels, rounded up.
double textWidth(const QFont& font, const QString& text);
double lineHeight(const QFont& font);

/// Height of `text` broken into lines at that width; a word longer than a line is broken inside.
double wrappedHeight(const QFont& font, const QString& text, double width);
/// Draws it from the top of `room` and returns the height used. Right-to-left text starts at the right.
double drawWrapped(QPainter& painter, const QRectF& room, const QString& text, const QFont& font, const QColor& colour);
/// One line at the top of `room`, at its start side (`atEnd`: at its end side). What does not fit is elided with …, and true is
/// returned only when all of it was drawn.
bool drawLine(QPainter& painter, const QRectF& room, const QString& text, const QFont& font, const QColor& colour, bool atEnd = false);

}
