#include "core/advice/words.h"

#include <QCoreApplication>
#include <QDate>
#include <QLocale>

#include <cmath>

namespace tierloam::advice {

namespace {

QString say(const char* text) { return QCoreApplication::translate("Advice", text); }

QDate dateOf(Day day)
{
    const std::chrono::year_month_day date{day};
    return QDate{static_cast<int>(date.year()), static_cast<int>(static_cast<unsigned>(date.month())), static_cast<int>(static_cast<unsigned>(date.day()))};
}

}

QString number(double value, int decimals) { return QLocale{}.toString(value, 'f', decimals); }

QString percent(double share) { return say(QT_TRANSLATE_NOOP("Advice", "%1 %")).arg(number(100.0 * share, 0)); }

QString ratio(double feedToCast)
{
    if (feedToCast >= 100.0) return say(QT_TRANSLATE_NOOP("Advice", "over 100 : 1"));
    return say(QT_TRANSLATE_NOOP("Advice", "%1 : 1")).arg(number(feedToCast, feedToCast < 1.0 ? 2 : 1));
}

QString mass(double kg)
{
    if (kg < 0.9995) return say(QT_TRANSLATE_NOOP("Advice", "%1 g")).arg(number(kg < 0.1 ? 1000.0 * kg : 10.0 * static_cast<int>(100.0 * kg + 0.5), 0));
    return say(QT_TRANSLATE_NOOP("Advice", "%1 kg")).arg(number(kg, 1));
}

QString atMost(double kg)
{
    const double step = kg < 0.9995 ? 0.01 : 0.1;
    return mass(std::floor(kg / step + 1e-6) * step);
}

QString volume(double litres) { return say(QT_TRANSLATE_NOOP("Advice", "%1 L")).arg(number(litres, 1)); }

QString when(Day day, Day today)
{
    const int ahead = daysBetween(today, day);
    const QDate date = dateOf(day);
    if (ahead == 0) return say(QT_TRANSLATE_NOOP("Advice", "today"));
    if (ahead == 1) return say(QT_TRANSLATE_NOOP("Advice", "tomorrow"));
    if (ahead > 1 && ahead <= 6) return QLocale{}.dayName(date.dayOfWeek());
    return advice::date(day, today);
}

QString date(Day day, Day today)
{
    const bool thisYear = dateOf(day).year() == dateOf(today).year();
    return QLocale{}.toString(dateOf(day), thisYear ? say(QT_TRANSLATE_NOOP("Advice", "d MMMM")) : say(QT_TRANSLATE_NOOP("Advice", "d MMMM yyyy")));
}

QString month(Day day, Day today)
{
    const QDate first = dateOf(day);
    const QString name = QLocale{}.standaloneMonthName(first.month());
    return first.year() == dateOf(today).year() ? name : say(QT_TRANSLATE_NOOP("Advice", "%1 %2")).arg(name).arg(first.year());
}

QString whenRange(const reckoning::Dates& dates, Day today)
{
    if (!dates.p50) return dates.p10 ? say(QT_TRANSLATE_NOOP("Advice", "not before %1")).arg(when(*dates.p10, today)) : say(QT_TRANSLATE_NOOP("Advice", "not within a year"));
    const QString middle = when(*dates.p50, today);
    if (!dates.p10 || !dates.p90 || (*dates.p10 == *dates.p50 && *dates.p90 == *dates.p50)) return middle;
    return say(QT_TRANSLATE_NOOP("Advice", "%1 (%2 to %3)")).arg(middle, when(*dates.p10, today), when(*dates.p90, today));
}

QString days(int number) { return QCoreApplication::translate("Advice", "%n day(s)", nullptr, number); }

}
