#pragma once

#include "ui/drawing/palette.h"
#include "ui/trends/trend_data.h"

#include <QGraphicsItem>

#include <functional>
#include <optional>

namespace tierloam::trends {

/// Colour and dashes of a stack among the stacks, the same in every chart; two stacks differ by both.
QPen penOf(int place, const drawing::Palette& palette, double width);

/// All that lies under the lines of a chart, as one item in its plot area: the shade of the forecast, the bands, the bars, the marks
/// along the foot, and the crosshair. It holds values and paints; where a day and a value lie is asked of the chart.
class PlotLayer : public QGraphicsItem {
public:
    using Place = std::function<QPointF(double day, double value)>; ///< in the coordinates of the item

    explicit PlotLayer(QGraphicsItem* parent);

    void setPlace(Place place) { place_ = std::move(place); }
    void setArea(const QRectF& area);
    void setContents(std::vector<Series> series, const Period& period, bool grouped);
    /// `alone`: the colour of the band when one stack is shown; several have their own.
    void setLook(const drawing::Palette& palette, double scale, const QColor& alone);
    void setCursor(std::optional<Day> day);

    QRectF boundingRect() const override { return area_; }
    void paint(QPainter* painter, const QStyleOptionGraphicsItem* option, QWidget* widget) override;

private:
    void paintForecastShade(QPainter& painter) const;
    void paintBand(QPainter& painter, const Series& series) const;
    void paintBars(QPainter& painter) const;
    void paintLogged(QPainter& painter, const Series& series) const;
    void paintMarks(QPainter& painter, const Series& series) const;
    QPointF at(Day day, double value) const;

    Place place_;
    QRectF area_;
    std::vector<Series> series_;
    Period period_;
    bool grouped_ = false;
    std::optional<Day> cursor_;
    drawing::Palette palette_;
    double scale_ = 1;
    QColor alone_;
};

/// The sign of a kind of mark, centred on `centre`; also drawn in the key below the charts.
void paintSign(QPainter& painter, MarkKind kind, QPointF centre, double size, const drawing::Palette& palette);

}
