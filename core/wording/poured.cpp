#include "core/wording/formats.h"

#include <algorithm>
#include <cmath>

namespace tierloam::wording {

namespace {

/// From `from` litres on an amount is told in this unit, and in whole steps of it.
struct Mark {
    double from;
    double step;                     ///< in `unit`
    Unit unit;
};

// 0.1 L, and 0.25 L from about a litre on; half a cup, a cup from about a quart on, a quart from about a gallon on. Amounts between two kinds of mark go to the
// next of either.
constexpr Mark metricMarks[] = {{1.125, 0.25, Unit::L}, {0.95, 1.0, Unit::L}, {0.0, 100.0, Unit::mL}};
constexpr Mark usMarks[] = {{3.667, 0.25, Unit::gal}, {1.064, 8.0, Unit::floz}, {0.0, 4.0, Unit::floz}};

}

Amount volumeAmount(double litres)
{
    const Mark* mark = measures() == Measures::us ? usMarks : metricMarks;
    while (litres < mark->from) ++mark; // the last begins at nothing
    const double steps = std::max(std::round(litres / inBaseUnit(mark->unit) / mark->step), 1.0);
    return {steps * mark->step, mark->unit};
}

}
