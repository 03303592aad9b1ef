#pragma once

#include "core/quantity/units.h"
#include "core/reckoning/reckoning.h"
#include "ui/common/dates.h"

#include <QString>

/// Numbers for people: decimals by QLocale's default, units by the system of measures chosen. Estimates are rounded to what they are
/// worth; what was typed is shown as typed.
namespace tierloam::ui {

enum class Measures { metric, us };

/// The system of measures in which estimates are shown; like QLocale's default it is one for the process and set at start.
Measures measures();
void setMeasures(Measures measures);

/// As typed: "450 g", "0.5 L", "12" for a count.
QString amountText(const Amount& amount);

/// "450 g", "1.1 kg", "12 kg".
QString massText(double kg);
/// What an estimate asks for, as an amount to record in the window's units: 70 g, 1.2 kg, 350 mL.
Amount massAmount(double kg);
Amount volumeAmount(double litres);
/// A limit as an amount to record, in the unit and steps of massText but rounded downwards: 450 g, 1.6 kg, 3.5 lb.
Amount mostOf(double kg);
/// The same in words, wherever "at most" is said.
QString mostText(double kg);
/// "1.1 kg (0.9–1.4)": value, then the 90 % range in the same unit.
QString massBand(const reckoning::Band& kg);
/// Only the range: "0.9–1.4", in the unit that massText gives the median.
QString massRange(const reckoning::Band& kg);
/// "1.4 L", "60 mL".
QString volumeText(double litres);
QString volumeBand(const reckoning::Band& litres);
/// "1.4 L of 4".
QString volumeOf(double litres, double whole);
/// "3.0 cm".
QString lengthText(double cm);
QString lengthBand(const reckoning::Band& cm);
/// "21 °C".
QString temperatureText(double celsius);
QString temperatureBand(const reckoning::Band& celsius);
/// "93 %" of a fraction 0…1.
QString percentText(double fraction);
/// A text of core with its percentages, ratios and values held to their units, so that no line begins with a lone "%" or "L".
QString unbroken(QString text);
/// "31 g/d" of a rate in g dry matter per day.
QString rateText(double gramsPerDay);
QString rateBand(const reckoning::Band& gramsPerDay);
/// "1.3 L/wk".
QString flowText(double litresPerWeek);
QString flowBand(const reckoning::Band& litresPerWeek);
/// "0.07 : 1"; 999 and above, where there is nothing to divide by, "no castings yet".
QString ratioText(double feedToCast);
/// "0.07 : 1 (0.04–0.11)".
QString ratioBand(const reckoning::Band& feedToCast);
/// A plain number with that many decimals; the locale's decimal mark, no thousands marks.
QString numberText(double value, int decimals);
/// A whole number with the locale's thousands marks, rounded to two figures when `rough`.
QString countText(double count, bool rough = false);
/// "1.1 (0.9–1.4)" from ready-made pieces; one form for every range in the program.
QString withRange(const QString& value, const QString& low, const QString& high);

/// Name of a unit as people read it: "g", "L", "fl oz".
QString unitText(Unit unit);

}
