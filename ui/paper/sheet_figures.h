#pragma once

#include "ui/drawing/palette.h"
#include "ui/drawing/type.h"
#include "ui/paper/sheet.h"
#include "ui/shelf/part_story.h"
#include "ui/trends/trend_data.h"

#include <QSizeF>

namespace tierloam::paper {

/// A figure whose size is known before it is painted.
struct Figure {
    QSizeF size;
    PaintFigure paint;
};

/// The stack in side view as on the shelf, with the legend beside it.
Figure stackFigure(const shelf::StackModel& stack, double width);
/// The charts that a tray or the sump opens with.
Figure storyFigure(const shelf::PartStory& story, double width);
/// One chart of the trends page.
Figure chartFigure(trends::Measure measure, const std::vector<trends::Series>& series, const trends::Period& period, double width);
/// What the signs in the charts mean.
Figure chartKey(double width);
Figure chartKey(double width, const drawing::Type& type, const drawing::Palette& palette);

}
