#pragma once

#include "ui/drawing/palette.h"
#include "ui/trends/plot_frame.h"
#include "ui/trends/trend_data.h"

#include <QFont>
#include <QGraphicsItem>
#include <QPen>
#include <QPixmap>

#include <optional>

namespace tierloam::trends {

class DenseInk;

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

}
