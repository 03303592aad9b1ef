#pragma once

#include "ui/drawing/palette.h"
#include "ui/trends/trend_data.h"

#include <QFont>
#include <QGraphicsItem>
#include <QPixmap>

#include <optional>

namespace tierloam::trends {

class DenseInk;

/// Colour and dashes of a stack among the stacks, the same in every chart; neighbours differ by both, thirty of them by dashes and width alone.
QPen penOf(int place, const drawing::Palette& palette, double width);
/// What a stack's bars are filled with among those of other stacks: eight patterns.
QBrush fillOf(int place, const QColor& colour);

/// Where days and values lie in the plot area. On a log scale nothing lies below half of its bottom.
struct Frame {
    QRectF area;
    double from = 0, until = 1;      ///< day numbers
    double bottom = 0, top = 1;      ///< in the measure's base
    bool log = false;

    double x(double day) const { return area.left() + (day - from) / (until - from) * area.width(); }
    double x(Day day) const { return x(static_cast<double>(day.time_since_epoch().count())); }
    double y(double value) const;
    /// The day at that place, held to the ends.
    Day dayAt(double x) const;
};

/// All that a chart shows in its plot area, as one item: the shade of the forecast, the bands, the bars, the lines, the marks. On a screen it
/// is painted once into a picture of its own, which stands until something changes, so that a crosshair that moves over it costs nothing.
class PlotLayer : public QGraphicsItem {
public:
    explicit PlotLayer(QGraphicsItem* parent);

    void setFrame(const Frame& frame);
    void setContents(std::vector<Series> series, const Period& period, bool grouped);
    /// `alone`: the colour of line and band when one stack is shown; several have their own.
    void setLook(const drawing::Palette& palette, double scale, const QColor& alone, const QFont& small);
    void setReadyLine(std::optional<double> at) { ready_ = at; }

    QRectF boundingRect() const override { return frame_.area; }
    void paint(QPainter* painter, const QStyleOptionGraphicsItem* option, QWidget* widget) override;

private:
    void paintAll(DenseInk& ink) const;
    void paintForecastShade(QPainter& painter) const;
    void paintReadyLine(QPainter& painter) const;
    void paintBand(DenseInk& ink, const Series& series) const;
    void paintLines(DenseInk& ink, const Series& series) const;
    void paintBars(DenseInk& ink) const;
    void paintYields(QPainter& painter) const;
    void paintTotals(QPainter& painter, const Series& series) const;
    void paintLogged(QPainter& painter, const Series& series) const;
    void paintMarks(QPainter& painter, const Series& series) const;
    QPointF at(Day day, double value) const { return {frame_.x(day), frame_.y(value)}; }
    QPen linePen(const Series& series) const;
    void touched();

    Frame frame_;
    std::vector<Series> series_;
    Period period_;
    bool grouped_ = false;
    std::optional<double> ready_;
    drawing::Palette palette_;
    double scale_ = 1;
    QColor alone_;
    QFont small_;
    QPixmap picture_;                ///< null: to be painted
};

/// The line of the crosshair and the days that are being dragged over, above everything else.
class Crosshair : public QGraphicsItem {
public:
    explicit Crosshair(QGraphicsItem* parent);

    void setLook(const drawing::Palette& palette);
    void setFrame(const Frame& frame);
    void setDay(std::optional<Day> day);
    void setSpan(std::optional<std::pair<double, double>> x);

    QRectF boundingRect() const override;
    void paint(QPainter* painter, const QStyleOptionGraphicsItem* option, QWidget* widget) override;

private:
    Frame frame_;
    std::optional<Day> day_;
    std::optional<std::pair<double, double>> span_;
    drawing::Palette palette_;
};

/// The pen and the hatching of what a tried change gives, beside the base case in that colour.
QPen changedPen(const QColor& colour, double scale);
QBrush changedBrush(const QColor& colour);

/// The sign of a kind of mark, centred on `centre`; also drawn in the key below the charts.
void paintSign(QPainter& painter, MarkKind kind, QPointF centre, double size, const drawing::Palette& palette);

}
