#pragma once

#include "ui/common/theme.h"
#include "ui/trends/trend_data.h"

#include <QtCharts/QChartView>

#include <optional>

class QCategoryAxis;
class QLineSeries;
class QValueAxis;

namespace tierloam::trends {

class PlotLayer;

/// One chart: one measure of one stack, or of several laid over each other. Left and Right walk a crosshair by a day, with Ctrl by a
/// week, Home and End go to its ends; it follows the pointer too. What stands at the crosshair is its accessible value.
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
    int minimumPlotHeight() const;

Q_SIGNALS:
    void cursorMoved(std::optional<tierloam::Day> day);

protected:
    void mouseMoveEvent(QMouseEvent* event) override;
    void leaveEvent(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;

private:
    void rebuildLines();
    void style();
    void layTicks();
    QRectF plotRect() const;
    void placeLayer();
    void walk(int days);

    const ui::Theme& theme_;
    Measure measure_{};
    std::vector<Series> series_;
    Period period_;
    double top_ = 1, bottom_ = 0;
    std::optional<Day> cursor_;
    QString sentence_;
    QCategoryAxis* days_ = nullptr;
    QValueAxis* values_ = nullptr;
    QLineSeries* ground_ = nullptr;  ///< never seen; gives the layer its coordinates even when nothing is drawn
    std::vector<QLineSeries*> lines_; ///< past and forecast of each series in turn
    PlotLayer* layer_ = nullptr;
};

}
