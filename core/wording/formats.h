#pragma once

#include "core/quantity/units.h"
#include "core/reckoning/reckoning.h"

#include <QString>

#include <utility>

/// Numbers for people, the same in advice, on pages, on paper and in notices: decimals by QLocale's default, units by the system of measures
/// chosen. Estimates are rounded to what they are worth; what was typed is shown as typed where its unit is of that system.
namespace tierloam::wording {

enum class Measures { metric, us };

/// The system of measures in which texts are; like QLocale's default it is one for the process. The command line leaves it metric.
Measures measures();
void setMeasures(Measures wanted);

/// Where words run from right to left a value, its unit and its range stand as one piece of their own direction, or they would change places.
void setRightToLeft(bool on);

/// As typed: "450 g", "0.5 L", "12" for a count; in the chosen system, to three digits, where it was typed in the other one. A cup is of both.
QString amountText(const Amount& amount);
/// The same as a value and a unit; to so many digits where it was typed in the other system.
Amount inMeasures(const Amount& amount, int digits = 3);
/// Rounded to so many significant digits.
double inDigits(double value, int digits);

/// "450 g", "1.1 kg", "12 kg".
QString massText(double kg);
/// What an estimate asks for, as an amount to record in the window's units: 70 g, 1.2 kg.
Amount massAmount(double kg);
/// What is to be poured, in steps of a kitchen jug, to be told and recorded alike: 300 mL, 1.25 L; by US measures half a cup, a cup, a quart: 12 fl oz, 1.25 gal. One
/// step at least.
Amount volumeAmount(double litres);
/// A limit as an amount to record, in the unit and steps of massText but rounded downwards: 450 g, 1.6 kg, 3.5 lb.
Amount mostOf(double kg);
/// The same in words, wherever "at most" is said.
QString mostText(double kg);
/// "1.1 kg (0.9–1.4)": value, then the 90 % range in the same unit.
QString massBand(const reckoning::Band& kg);
/// Only the range: "0.9–1.4", in the unit that massText gives the median.
QString massRange(const reckoning::Band& kg);
/// What was read off a scale or a measure: a digit more than an estimate is worth, so that it is found again as it was written. "0.80 kg", "0.72 L".
QString massRead(double kg);
QString volumeRead(double litres);
/// "1.4 L", "60 mL".
QString volumeText(double litres);
QString volumeBand(const reckoning::Band& litres);
/// "1.4 L of 4".
QString volumeOf(double litres, double whole);
/// "3.0 cm".
QString lengthText(double cm);
/// A threshold as it is meant, without digits that only an estimate has: "1.25 cm", "1 cm".
QString lengthMeant(double cm);
QString lengthBand(const reckoning::Band& cm);
/// "21 °C".
QString temperatureText(double celsius);
QString temperatureBand(const reckoning::Band& celsius);
/// "21.5 °C".
QString temperatureRead(double celsius);
/// "0.16 m²", "1.7 sq ft".
QString areaText(double squareMetres);
/// "12 L/m²", "0.29 gal/sq ft".
QString volumePerArea(double litresPerSquareMetre);
/// "420 kg/m³", "26 lb/cu ft"; the unit alone.
QString bulkText(double kgPerCubicMetre);
QString bulkUnit();
/// How many of bulkUnit() one kg/m³ is.
double bulkFactor();
/// Its number alone.
QString bulkNumber(double kgPerCubicMetre);
/// "1.6 kg/m²", "0.33 lb/sq ft".
QString perAreaText(double kgPerSquareMetre);
QString perAreaBand(const reckoning::Band& kgPerSquareMetre);
/// "2.1 g/L", "0.28 oz/gal": of salts.
QString strengthText(double gramsPerLitre);
QString strengthBand(const reckoning::Band& gramsPerLitre);
/// A difference in temperature: "2 °C", "3.6 °F".
QString warmerText(double kelvin);
/// "93 %" of a fraction 0…1.
QString percentText(double fraction);
/// "31 g/d", "1.1 oz/d" of a rate in g dry matter per day.
QString rateText(double gramsPerDay);
QString rateBand(const reckoning::Band& gramsPerDay);
/// The same as value and range, to be set apart; no range where both ends read alike.
std::pair<QString, QString> rateParts(const reckoning::Band& gramsPerDay);
/// "1.3 L/wk".
QString flowText(double litresPerWeek);
QString flowBand(const reckoning::Band& litresPerWeek);
/// As rateParts: {"1.3 L/wk", "0.9–1.6"}.
std::pair<QString, QString> flowParts(const reckoning::Band& litresPerWeek);
/// A plain number with that many decimals; the locale's decimal mark, no thousands marks.
QString numberText(double value, int decimals);
/// A whole number with the locale's thousands marks, rounded to two figures when `rough`.
QString countText(double count, bool rough = false);
/// "1.1 (0.9–1.4)" from ready-made pieces; one form for every range in the program.
QString withRange(const QString& value, const QString& low, const QString& high);

/// Name of a unit as people read it: "g", "L", "fl oz". Files hold the journal's own names (quantity/units.h), which are no words of a language.
QString unitText(Unit unit);
/// The same behind so many of it: what is a word has its plural in some languages.
QString unitText(Unit unit, double count);

}
