#pragma once

#include "core/reckoning/reckoning.h"

#include <QString>

#include <optional>

/// Numbers and dates of advice in words, by the current locale.
namespace tierloam::advice {

QString number(double value, int decimals);
/// "93 %"
QString percent(double share);
/// "0.07 : 1"
QString ratio(double feedToCast);
/// "450 g" below 1 kg, else "1.2 kg".
QString mass(double kg);
QString atMost(double kg);   ///< as mass(), rounded downwards: a limit is not passed by its own words
/// "3.2 L"
QString volume(double litres);
/// "today", "tomorrow", "Sunday" within six days, else "14 March" (with the year when it is another one).
QString when(Day day, Day today);
/// "14 March", with the year when it is another one than today's.
QString date(Day day, Day today);
/// "March", with the year when it is another one than today's.
QString month(Day day, Day today);
/// "Sunday (Saturday to Tuesday)": the median and the 80 % range, as far as they are known.
QString whenRange(const reckoning::Dates& dates, Day today);
QString days(int number);

}
