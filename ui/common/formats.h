#pragma once

#include "core/wording/formats.h"
#include "ui/common/dates.h"

/// Numbers and days in words (core/wording), and what else the window makes of them.
namespace tierloam::ui {

/// A text of core with its percentages, ratios and values held to their units, so that no line begins with a lone "%" or "L".
QString unbroken(QString text);
/// One stop where a sentence ends with an abbreviation, as days do in some languages ("nach 20. Dez.").
QString oneStop(QString text);
/// A unit of two parts in one piece: a line may end after a stroke, so one that joins what follows stands behind it ("L/wk").
QString joined(QString text);
/// As in core/wording, each unit in one piece.
inline QString rateText(double gramsPerDay) { return joined(wording::rateText(gramsPerDay)); }
inline QString rateBand(const reckoning::Band& gramsPerDay) { return joined(wording::rateBand(gramsPerDay)); }
inline std::pair<QString, QString> rateParts(const reckoning::Band& gramsPerDay)
{
    auto [value, range] = wording::rateParts(gramsPerDay);
    return {joined(std::move(value)), std::move(range)};
}
inline QString flowText(double litresPerWeek) { return joined(wording::flowText(litresPerWeek)); }
inline std::pair<QString, QString> flowParts(const reckoning::Band& litresPerWeek)
{
    auto [value, range] = wording::flowParts(litresPerWeek);
    return {joined(std::move(value)), std::move(range)};
}
inline QString flowBand(const reckoning::Band& litresPerWeek) { return joined(wording::flowBand(litresPerWeek)); }
inline QString perAreaText(double kgPerSquareMetre) { return joined(wording::perAreaText(kgPerSquareMetre)); }
inline QString perAreaBand(const reckoning::Band& kgPerSquareMetre) { return joined(wording::perAreaBand(kgPerSquareMetre)); }
inline QString volumePerArea(double litresPerSquareMetre) { return joined(wording::volumePerArea(litresPerSquareMetre)); }
inline QString bulkText(double kgPerCubicMetre) { return joined(wording::bulkText(kgPerCubicMetre)); }
inline QString strengthText(double gramsPerLitre) { return joined(wording::strengthText(gramsPerLitre)); }
inline QString strengthBand(const reckoning::Band& gramsPerLitre) { return joined(wording::strengthBand(gramsPerLitre)); }
/// "0.07 : 1"; 999 and above, where there is nothing to divide by, "no castings yet".
QString ratioText(double feedToCast);
/// "0.07 : 1 (0.04–0.11)".
QString ratioBand(const reckoning::Band& feedToCast);

}
