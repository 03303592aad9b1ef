#pragma once

#include "core/quantity/measures.h"
#include "ui/drawing/palette.h"
#include "ui/drawing/type.h"

#include <QRectF>
#include <QString>

#include <optional>
#include <vector>

class QPainter;

/// Small charts that stand under each stack. They share one time axis, and per measure one height, so that stacks can be compared by eye.
namespace tierloam::drawing {

/// What all strips of the shelf share.
struct TimeAxis {
    Day from{}, to{};
    std::optional<Day> mark;          ///< a day that is looked at, drawn as an upright line
    std::optional<Day> future;        ///< what lies after this day is forecast: on hatched ground, its lines dashed

    double xOf(Day day, const QRectF& plot) const;
    /// Ticks at the first of a month (of every second, third, sixth or twelfth when they would touch), each with its short name.
    struct Tick { Day day; QString name; };
    std::vector<Tick> ticks(double width, const QFont& font) const;
};

struct StripPoint { Day day{}; double low = 0, middle = 0, high = 0; };

/// A line with its 90 % band.
struct Strip {
    QString title;                    ///< "processing, dry"
    QString value;                    ///< "31 g/d": at the day looked at
    QString range;                    ///< "24–39", lighter
    std::vector<StripPoint> points;   ///< ascending by day
    double top = 1;                   ///< value at the upper edge
    double bottom = 0;                ///< value at the lower edge; on a log axis above 0
    bool log = false;                 ///< equal ratios are equally far apart
    struct Level { double value = 0; QString name; };
    QString nothing;                  ///< what will stand here, said in a plot in which nothing is to be seen yet
    std::optional<Level> level;       ///< a value that matters, as a dotted line across with its name: "ready", "full"
    QColor colour;

    double yOf(double at, const QRectF& plot) const; ///< held to the plot
};

/// What was measured week by week as bars, with what was expected as a mark across each.
struct Bars {
    QString title, value, range;
    struct Bar {
        Day from{}, to{};             ///< [from, to)
        std::optional<double> measured; ///< absent: nothing was written down in that week
        std::optional<double> expected;
    };
    std::vector<Bar> bars;
    double top = 1;
    QString nothing;                  ///< as of a strip
    QColor colour;
};

/// Whether what would be drawn takes less than a tenth of the time shown: an eye sees an empty chart. One bar that was measured is enough.
bool isBare(const Strip& strip, const TimeAxis& axis);
bool isBare(const Bars& bars, const TimeAxis& axis);

/// Height of one strip: a line of text and its plot. `roomy` 0…1: from the least plot that can be read to a comfortable one; `pressedStrip`: half of the
/// least, where words would else push the legend out of sight.
inline constexpr double pressedStrip = -0.45;
double stripHeight(const Type& type, double roomy = 0);
double axisHeight(const Type& type);

/// Both return false when title and value did not fit side by side and the title was elided (the range is left out first), or when what
/// is said in a bare plot did not fit.
bool drawStrip(QPainter& painter, const QRectF& room, const Strip& strip, const TimeAxis& axis, const Palette& palette, const Type& type);
bool drawBars(QPainter& painter, const QRectF& room, const Bars& bars, const TimeAxis& axis, const Palette& palette, const Type& type);
void drawAxis(QPainter& painter, const QRectF& room, const TimeAxis& axis, const Palette& palette, const Type& type);

/// The plot part of a strip's room.
QRectF plotOf(const QRectF& room, const Type& type);

/// A round value at or above `highest`, for the upper edge: 1, 2, 2.5 or 5 times a power of ten; never 0.
double roundTop(double highest);

}
