#include "ui/trends/chart_picture.h"

#include "ui/trends/trend_chart.h"

#include <QCoreApplication>
#include <QPainter>
#include <QResizeEvent>

namespace tierloam::trends {

void paintChart(QPainter& painter, const QRectF& place, const ui::Theme& theme, Measure measure, const std::vector<Series>& series, const Period& view, const Ends& ends)
{
    TrendChart chart{theme};
    // It is never shown, so what a window would tell it is told here.
    const QSize size = place.size().toSize();
    chart.resize(size);
    chart.ensurePolished();
    for (QWidget* part : {static_cast<QWidget*>(&chart), chart.viewport()}) {
        QResizeEvent resized{size, {}};
        QCoreApplication::sendEvent(part, &resized);
    }
    chart.setContents(measure, series, view, ends.top, ends.bottom);
    QCoreApplication::sendPostedEvents(nullptr, QEvent::LayoutRequest);
    painter.save();
    painter.setBrush(Qt::NoBrush); // a line takes the painter's own brush for its inside
    chart.render(&painter, place, chart.rect());
    painter.restore();
}

}
