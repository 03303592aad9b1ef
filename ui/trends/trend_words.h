#pragma once

#include "ui/trends/trend_data.h"

#include <QString>

/// The trends in words: headings, units, values and marks.
namespace tierloam::trends {

/// "Processing rate", "Drainage", "Colony".
QString measureName(Measure measure);
/// What it is and in which unit: "dry matter that the worms eat, g a day". `barDays`: how long a bar of drainage is.
QString measureNote(Measure measure, int barDays, Sums sums = {});
QString rangeName(Range range);

/// The axis: base value times `factor` is shown.
struct AxisUnit {
    double factor = 1;
    QString unit;
    double offset = 0;               ///< added to it: degrees of Fahrenheit

    double shown(double base) const { return base * factor + offset; }
};
AxisUnit axisUnit(Measure measure);
/// Smallest top of the axis, in the base unit, so that noise near zero does not fill the chart.
double leastTop(Measure measure);

/// "31 g/d (24–39)".
QString valueText(Measure measure, const reckoning::Band& band);
QString barText(double perWeek);
/// "3.2 kg taken, 2.9 kg (2.1–3.8) expected".
QString yieldText(const Yield& yield);
/// "2031" or a day.
QString yieldTime(const Yield& yield, Day today);
QString loggedText(Measure measure, const Logged& span);
/// A value that was read, not estimated: °C or % moisture.
QString readText(Measure measure, double value);
/// The state of the chart on one day, for the crosshair.
QString readoutOf(Measure measure, const Series& series, Day day, Day today);
QString markName(MarkKind kind);
/// Short words beside a mark in the chart; empty where the sign is enough.
QString markWords(MarkKind kind);
/// Of the line at which a tray is ready.
QString readyLineText();

}
