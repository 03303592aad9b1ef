#pragma once

#include "core/quantity/measures.h"

#include <QRectF>

namespace tierloam::trends {

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

}
