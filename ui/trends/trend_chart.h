#pragma once

#include "ui/common/theme.h"
#include "ui/trends/crosshair.h"
#include "ui/trends/plot_layer.h"
#include "ui/trends/trend_data.h"

#include <QtCharts/QChartView>

#include <optional>

class QCategoryAxis;
class QLineSeries;

namespace tierloam::trends {

/// One chart: one measure of one stack, or of several laid over each other. Left and Right walk a crosshair by a day, with Ctrl by a
/// week, Home and End go to its ends; it follows the pointer too. What stands at the crosshair is its accessible value. The wheel over the
/// plot area zooms about the pointer, sideways or with Shift it moves along; dragging over days zooms to them, a double click shows
/// the whole again, Esc calls a drag off. The chart asks for all of it and is given its new period from outside, so that all charts agree.
class TrendChart : public QChartView {
    Q_OBJECT

public:
    explicit TrendChart(const ui::Theme& theme, QWidget* parent = nullptr);

    /// `top`, `bottom`: the ends of the value axis, in the measure's base, common to all charts that are compared.
    void setContents(Measure measure, std::vector<Series> series, const Period& period, double top, double bottom = 0);
    /// What it shows, in a sentence; the reading at the crosshair is told after it.
    void setSentence(const QString& sentence);
    void setCursorDay(std::optional<Day> day);
    std::optional<Day> cursorDay() const { return cursor_; }
    const std::vector<Series>& contents() const { return series_; }
    /// While the page scrolls by the wheel, the wheel goes on scrolling over charts that come beneath the pointer.
    void setScrolling(bool on) { scrolling_ = on; }
    const Period& period() const { return period_; }
    /// Of the chart: where days and values lie.
    const Frame& frame() const { return frame_; }

Q_SIGNALS:
    void cursorMoved(std::optional<tierloam::Day> day);
    /// The days shown are to become so many times as many, the day keeping its place.
    void zoomAsked(double factor, tierloam::Day about);
    void moveAsked(double share);    ///< of the days that are shown; positive: later
    void spanAsked(tierloam::Day from, tierloam::Day until);
    void wholeAsked();

protected:
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void leaveEvent(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;

private:
    void style();
    void layTicks();
    void layValueTicks();
    QRectF plotRect() const;
    void placeLayer();
    void walk(int days);
    /// In the coordinates of the chart.
    QPointF inChart(const QPointF& position) const;
    void endDrag();

    const ui::Theme& theme_;
    Measure measure_{};
    std::vector<Series> series_;
    Period period_;
    double top_ = 1, bottom_ = 0;
    std::optional<Day> cursor_;
    std::optional<double> pressed_;  ///< x of a drag's beginning
    bool dragging_ = false;
    bool scrolling_ = false;
    QString sentence_;
    QCategoryAxis* days_ = nullptr;
    QCategoryAxis* values_ = nullptr;
    QLineSeries* ground_ = nullptr;  ///< never seen; the axes hold on to it
    PlotLayer* layer_ = nullptr;
    Crosshair* crosshair_ = nullptr;
    Frame frame_;
};

}
