#pragma once

#include <QColor>
#include <QImage>
#include <QPainter>
#include <QPolygonF>

namespace tierloam::trends {

/// Paints lines and bands that have a point for almost every pixel column. QPainter takes the square of the points for a shape in one piece, and
/// hands what shines through to other threads a few rows at a time, which costs more than the painting; so on a screen shapes are painted in short
/// pieces, and what shines through is painted whole onto a sheet of its own that is laid over once. On paper everything is one shape of lines.
class DenseInk {
public:
    /// `painter`: onto a picture of that area with so many pixels to a unit of length, moved so that the area's corner is the picture's.
    DenseInk(QPainter& painter, const QRectF& area, double sharp) : painter_{painter}, area_{area}, sharp_{sharp} {}
    /// Onto paper, or as one shape each.
    explicit DenseInk(QPainter& painter) : painter_{painter} {}

    QPainter& painter() const { return painter_; }
    bool inPieces() const { return sharp_ > 0; }

    /// With the painter's pen. What shines through is painted by veiled().
    void polyline(const QPolygonF& way) const;
    /// What lies between two lines over the same places from left to right, with the painter's brush and no outline.
    void between(const QPolygonF& high, const QPolygonF& low) const;
    /// Calls `use` with an ink and the colour to paint with, so that all of it together shines through as that colour does.
    template <class Use>
    void veiled(const QColor& colour, Use use)
    {
        if (!inPieces() || colour.alpha() == 255) {
            use(*this, colour);
            return;
        }
        QColor opaque = colour;
        opaque.setAlpha(255);
        layOver(colour.alphaF(), [&](DenseInk& ink) { use(ink, opaque); });
    }

private:
    template <class Use>
    void layOver(double opacity, Use use)
    {
        freshSheet();
        {
            QPainter over{&sheet_};
            over.setRenderHints(painter_.renderHints());
            over.translate(-area_.topLeft());
            DenseInk ink{over, area_, sharp_};
            use(ink);
        }
        laySheet(opacity);
    }
    void freshSheet();
    void laySheet(double opacity) const;

    QPainter& painter_;
    QRectF area_;
    double sharp_ = 0;               ///< pixels to a unit; 0: as one shape
    QImage sheet_;
};

}
