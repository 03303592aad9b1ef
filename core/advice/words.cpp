#include "core/advice/words.h"

#include <QCoreApplication>
#include <QDate>
#include <QLocale>

#include <cmath>

namespace tierloam::advice {

namespace {

QString say(const char* text) { return QCoreApplication::translate("Advice", text); }

}

QString withMore(const QString& reason, const QString& clause) { return clause.isEmpty() ? reason : reason + say(QT_TRANSLATE_NOOP("Advice", "; ")) + clause; }

QString number(double value, int decimals) { return wording::numberText(value, decimals); }

QString percent(double share) { return wording::percentText(share); }

QString ratio(double feedToCast)
{
    if (feedToCast >= 100.0) return say(QT_TRANSLATE_NOOP("Advice", "over 100 : 1"));
    return say(QT_TRANSLATE_NOOP("Advice", "%1 : 1")).arg(number(feedToCast, feedToCast < 1.0 ? 2 : 1));
}

QString when(Day day, Day today) { return day >= today && daysBetween(today, day) < 7 ? wording::dueDay(day, today) : date(day, today); }

QString date(Day day, Day today) { return wording::dayInWords(day, today); }

QString month(Day day, Day today)
{
    const QDate first = wording::qDate(day);
    const QString name = QLocale{}.standaloneMonthName(first.month());
    return first.year() == wording::qDate(today).year() ? name : say(QT_TRANSLATE_NOOP("Advice", "%1 %2")).arg(name, QString::number(first.year()));
}

QString whenRange(const reckoning::Dates& all, Day today)
{
    // Of what may be so already the range begins today: a day that has passed reads as one of next year.
    const auto fromToday = [today](const std::optional<Day>& day) { return day ? std::optional{std::max(*day, today)} : std::nullopt; };
    const reckoning::Dates dates{fromToday(all.p10), fromToday(all.p50), fromToday(all.p90)};
    if (!dates.p50) return dates.p10 ? say(QT_TRANSLATE_NOOP("Advice", "not before %1")).arg(when(*dates.p10, today)) : say(QT_TRANSLATE_NOOP("Advice", "not within a year"));
    const QString middle = when(*dates.p50, today);
    if (!dates.p90 && dates.p10 && *dates.p10 < *dates.p50)
        return say(QT_TRANSLATE_NOOP("Advice", "%1 (%2 at the earliest, perhaps not within a year)")).arg(middle, when(*dates.p10, today));
    if (!dates.p90) return say(QT_TRANSLATE_NOOP("Advice", "%1 at the earliest, perhaps not within a year")).arg(middle);
    if (!dates.p10 || !dates.p90 || (*dates.p10 == *dates.p50 && *dates.p90 == *dates.p50)) return middle;
    return say(QT_TRANSLATE_NOOP("Advice", "%1 (%2 to %3)")).arg(middle, when(*dates.p10, today), when(*dates.p90, today));
}

QString turnAbout(const reckoning::Dates& all, Day today)
{
    if (all.p50) return say(QT_TRANSLATE_NOOP("Advice", "its turn about %1")).arg(whenRange(all, today));
    return all.p10 ? say(QT_TRANSLATE_NOOP("Advice", "its turn not before %1")).arg(when(std::max(*all.p10, today), today)) : say(QT_TRANSLATE_NOOP("Advice", "its turn not within a year"));
}

QString rightAbout(const reckoning::Dates& all, Day today)
{
    if (all.p50) return say(QT_TRANSLATE_NOOP("Advice", "right about %1")).arg(whenRange(all, today));
    return all.p10 ? say(QT_TRANSLATE_NOOP("Advice", "right not before %1")).arg(when(std::max(*all.p10, today), today)) : say(QT_TRANSLATE_NOOP("Advice", "not right within a year"));
}

QString days(int number) { return QCoreApplication::translate("Advice", "%n day(s)", nullptr, number); }

}
