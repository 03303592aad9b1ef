#include "core/wording/dates.h"

#include <QCoreApplication>
#include <QLocale>
#include <QTime>

namespace tierloam::wording {

namespace {

struct Dates {
    Q_DECLARE_TR_FUNCTIONS(Dates)
};

/// Day and month in the order of the locale's own short date; "2 May", "May 2", "2. Mai".
QString dayMonthPattern()
{
    const QString own = QLocale{}.dateFormat(QLocale::ShortFormat);
    const auto day = own.indexOf(u'd');
    const auto month = own.indexOf(u'M');
    if (month >= 0 && day > month) return QStringLiteral("MMM d");
    const auto afterDay = own.indexOf(u'.');
    return afterDay > day && afterDay < month && !own.contains(u'/') && QLocale{}.language() != QLocale::C ? QStringLiteral("d. MMM")
                                                                                                         : QStringLiteral("d MMM");
}

bool monthFirst()
{
    return dayMonthPattern().startsWith(u'M');
}

QString withYear(const QString& pattern)
{
    return monthFirst() ? pattern % QStringLiteral(", yyyy") : pattern % QStringLiteral(" yyyy");
}

bool sameYear(Day a, Day b)
{
    return qDate(a).year() == qDate(b).year();
}

}

QDate qDate(Day day)
{
    return QDate::fromJulianDay(day.time_since_epoch().count() + 2440588); // the Julian day of 1970-01-01
}

Day civilDay(QDate date)
{
    return Day{std::chrono::days{date.toJulianDay() - 2440588}};
}

namespace {

QString wholeMonth(Day day, Day today)
{
    const QString pattern = sameYear(day, today) ? dayMonthPattern() : withYear(dayMonthPattern());
    return QString{pattern}.replace(QLatin1StringView("MMM"), QLatin1StringView("MMMM"));
}

}

QString longDay(Day day, Day today)
{
    return QLocale{}.toString(qDate(day), QStringLiteral("dddd ") % wholeMonth(day, today));
}

QString dayInWords(Day day, Day today)
{
    return QLocale{}.toString(qDate(day), wholeMonth(day, today));
}

QString shortDay(Day day, Day today)
{
    return sameYear(day, today) ? QLocale{}.toString(qDate(day), dayMonthPattern()) : fullDay(day);
}

QString fullDay(Day day)
{
    return QLocale{}.toString(qDate(day), withYear(dayMonthPattern()));
}

QString timeOfDay(int minuteOfDay)
{
    return QLocale{}.toString(QTime{minuteOfDay / 60, minuteOfDay % 60}, QLocale{}.language() == QLocale::C ? QStringLiteral("HH:mm")
                                                                                                        : QLocale{}.timeFormat(QLocale::ShortFormat));
}

QString fullMoment(const DayAndTime& moment)
{
    if (!moment.minuteOfDay) return fullDay(moment.day);
    return Dates::tr("%1, %2").arg(fullDay(moment.day), timeOfDay(*moment.minuteOfDay));
}

QString dueDay(Day day, Day today)
{
    const int ahead = daysBetween(today, day);
    if (ahead == 0) return Dates::tr("today");
    if (ahead == 1) return Dates::tr("tomorrow");
    if (ahead < 0) return Dates::tr("since %1").arg(shortDay(day, today));
    if (ahead < 7) return QLocale{}.dayName(qDate(day).dayOfWeek());
    return shortDay(day, today);
}

QString dayRange(Day from, Day to, Day today)
{
    if (to < from) std::swap(from, to);
    if (from == to) return shortDay(from, today);
    const QDate a = qDate(from), b = qDate(to);
    const QLocale locale;
    if (a.year() != b.year()) return Dates::tr("%1 – %2").arg(fullDay(from), fullDay(to));
    if (a.month() != b.month()) return Dates::tr("%1 – %2").arg(locale.toString(a, dayMonthPattern()), shortDay(to, today));
    if (monthFirst()) {
        const QString tail = sameYear(to, today) ? QString{} : QStringLiteral(", %1").arg(b.year());
        return Dates::tr("%1–%2").arg(locale.toString(a, dayMonthPattern()), QString::number(b.day())) % tail;
    }
    const QString dot = dayMonthPattern().startsWith(QLatin1StringView("d.")) ? QStringLiteral(".") : QString{};
    return Dates::tr("%1–%2").arg(QString::number(a.day()) % dot, shortDay(to, today));
}

QString datesText(const reckoning::Dates& dates, Day today)
{
    if (!dates.any()) return {};
    if (!dates.p50) return dates.p10 ? Dates::tr("after %1").arg(shortDay(*dates.p10, today)) : QString{};
    const QString middle = shortDay(*dates.p50, today);
    if (dates.p10 && dates.p90) {
        return *dates.p10 == *dates.p90 ? middle : Dates::tr("%1 (%2)").arg(middle, dayRange(*dates.p10, *dates.p90, today));
    }
    if (dates.p10) return Dates::tr("%1 (%2 or later)").arg(middle, shortDay(*dates.p10, today));
    return middle;
}

QString daysShort(int days)
{
    return Dates::tr("%1 d").arg(days).replace(u' ', QChar::Nbsp);
}

QString daysLong(int days)
{
    return Dates::tr("%n day(s)", nullptr, days);
}

}
