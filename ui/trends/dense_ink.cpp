#include "ui/trends/dense_ink.h"

#include <QLineF>

#include <algorithm>
#include <cmath>

namespace tierloam::trends {

namespace {

constexpr qsizetype pointsOfAPiece = 4;   ///< what was quickest; 8 takes half as long again on lines that go up and down
constexpr qsizetype wholeUpTo = 16;       ///< points
constexpr double columnsOfAPiece = 8;     ///< pixels
constexpr double closeTogether = 4;       ///< pixels from point to point, below which nobody sees how lines are joined

/// Walks along a line from left to right.
class Along {
public:
    explicit Along(const QPolygonF& line) : line_{line} {}

    /// The line's height at a place within its ends; places only grow.
    double at(double x)
    {
        while (next_ + 1 < line_.size() && line_[next_].x() < x) ++next_;
        const QPointF& to = line_[next_];
        const QPointF& from = line_[std::max<qsizetype>(0, next_ - 1)];
        const double wide = to.x() - from.x();
        return wide > 0 ? from.y() + (to.y() - from.y()) * std::clamp((x - from.x()) / wide, 0.0, 1.0) : to.y();
    }
    /// The points right of the last place and left of this one.
    void upTo(double x, QPolygonF& points)
    {
        for (qsizetype i = next_; i < line_.size() && line_[i].x() < x; ++i) points << line_[i];
    }

private:
    const QPolygonF& line_;
    qsizetype next_ = 0;
};

}

void DenseInk::polyline(const QPolygonF& way) const
{
    if (!inPieces() || way.size() <= wholeUpTo) {
        painter_.drawPolyline(way);
        return;
    }
    const QPen whole = painter_.pen();
    QPen pen = whole;
    pen.setCosmetic(false); // its width and dashes are of this length, whatever the pixels
    if (static_cast<double>(way.size()) * closeTogether > area_.width() * sharp_) pen.setJoinStyle(Qt::BevelJoin);
    const bool dashed = pen.style() != Qt::SolidLine;
    double gone = 0;         // along the line: dashes go on from piece to piece
    for (qsizetype from = 0; from + 1 < way.size(); from += pointsOfAPiece) {
        const qsizetype count = std::min(pointsOfAPiece + 1, way.size() - from);
        if (dashed) pen.setDashOffset(whole.dashOffset() + gone / pen.widthF());
        if (dashed || from == 0) painter_.setPen(pen);
        painter_.drawPolyline(way.constData() + from, static_cast<int>(count));
        if (!dashed) continue;
        for (qsizetype i = from + 1; i < from + count; ++i) gone += QLineF{way[i - 1], way[i]}.length();
    }
    painter_.setPen(whole);
}

void DenseInk::between(const QPolygonF& high, const QPolygonF& low) const
{
    if (high.size() < 2 || low.size() < 2) return;
    painter_.setPen(Qt::NoPen);
    QPolygonF outline;
    if (!inPieces() || high.size() <= wholeUpTo) {
        outline = high;
        for (auto point = low.rbegin(); point != low.rend(); ++point) outline << *point;
        painter_.drawPolygon(outline);
        return;
    }
    // Pieces meet between two columns of pixels: within one, each would leave the ground shining through.
    const double last = std::min(high.back().x(), area_.right() + 1);
    Along above{high}, beneath{low};
    double from = std::max(high.front().x(), area_.left() - 1);
    double column = std::floor((from - area_.left()) * sharp_);
    while (from < last) {
        column += columnsOfAPiece;
        const double to = std::min(last, area_.left() + column / sharp_);
        outline.clear();
        outline << QPointF{from, above.at(from)};
        above.upTo(to, outline);
        outline << QPointF{to, above.at(to)};
        QPolygonF back{{from, beneath.at(from)}};
        beneath.upTo(to, back);
        back << QPointF{to, beneath.at(to)};
        for (auto point = back.rbegin(); point != back.rend(); ++point) outline << *point;
        painter_.drawPolygon(outline);
        from = to;
    }
}

void DenseInk::freshSheet()
{
    if (sheet_.isNull()) {
        sheet_ = QImage{(area_.size() * sharp_).toSize() + QSize{1, 1}, QImage::Format_ARGB32_Premultiplied};
        sheet_.setDevicePixelRatio(sharp_);
    }
    sheet_.fill(Qt::transparent);
}

void DenseInk::laySheet(double opacity) const
{
    painter_.setOpacity(opacity);
    painter_.drawImage(area_.topLeft(), sheet_);
    painter_.setOpacity(1);
}

}
