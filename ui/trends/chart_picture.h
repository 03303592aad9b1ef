#pragma once

#include "ui/common/theme.h"
#include "ui/trends/trend_data.h"

class QPainter;

namespace tierloam::trends {

/// Paints a chart that is never shown into that place, as lines and words, in the colours and sizes of the theme. Needs a QApplication.
void paintChart(QPainter& painter, const QRectF& place, const ui::Theme& theme, Measure measure, const std::vector<Series>& series, const Period& view, const Ends& ends);

}
