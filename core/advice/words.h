#pragma once

#include "core/reckoning/reckoning.h"
#include "core/wording/dates.h"
#include "core/wording/formats.h"

#include <QString>

#include <optional>

/// Numbers and dates of advice in words: core/wording's, in the units and the locale chosen, and what advice alone says of them.
namespace tierloam::advice {

using wording::areaText, wording::lengthText, wording::massRead, wording::massText, wording::mostText, wording::temperatureText, wording::volumeText;

/// A reason and one clause more, joined as the language joins clauses; the reason alone where there is none.
QString withMore(const QString& reason, const QString& clause);
QString number(double value, int decimals);
/// "93 %"
QString percent(double share);
/// "0.07 : 1"
QString ratio(double feedToCast);
/// "today", "tomorrow", "Sunday" within six days, else "14 March" (with the year when it is another one).
QString when(Day day, Day today);
/// "14 March", with the year when it is another one than today's.
QString date(Day day, Day today);
/// "March", with the year when it is another one than today's.
QString month(Day day, Day today);
/// "Sunday (Saturday to Tuesday)": the median and the 80 % range, as far as they are known; an open end is said to be one.
QString whenRange(const reckoning::Dates& dates, Day today);
/// "its turn about Sunday (Saturday to Tuesday)"; without a middle "its turn not before 3 June", or "its turn not within a year".
QString turnAbout(const reckoning::Dates& all, Day today);
/// Likewise "right about Sunday (…)".
QString rightAbout(const reckoning::Dates& all, Day today);
QString days(int number);

}
