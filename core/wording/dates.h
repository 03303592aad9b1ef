#pragma once

#include "core/quantity/day_text.h"
#include "core/reckoning/reckoning.h"

#include <QDate>
#include <QString>

/// Civil days in words, in the order of day and month that the locale (QLocale's default) has.
namespace tierloam::wording {

QDate qDate(Day day);
Day civilDay(QDate date);

/// "Friday 2 May"; the year is added when it is not that of `today`.
QString longDay(Day day, Day today);
/// "2 May", "May 2" with the month's whole name; the year is added when it is not that of `today`.
QString dayInWords(Day day, Day today);
/// "2 May"; the year is added when it is not that of `today`.
QString shortDay(Day day, Day today);
/// "2 May 2031".
QString fullDay(Day day);
/// "2 May 2031, 18:30"; the time only when it was given.
QString fullMoment(const DayAndTime& moment);
/// "18:42".
QString timeOfDay(int minuteOfDay);

/// When something is due: "today", "tomorrow", a weekday within the week, else the short day; "since 2 May" for the past.
QString dueDay(Day day, Day today);
/// "2–9 May", "28 Apr – 3 May", "2 May 2031 – 4 Jan 2032"; one day when both are the same.
QString dayRange(Day from, Day to, Day today);
/// A date with its uncertainty: "12 May (2 May – 3 Jun)"; "after 2 May" when only the early end is within the horizon; empty when none is.
QString datesText(const reckoning::Dates& dates, Day today);
/// "41 d".
QString daysShort(int days);
/// "41 days", with the plural of the language.
QString daysLong(int days);

}
