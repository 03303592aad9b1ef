#include "ui/trends/time_ticks.h"

#include "ui/common/dates.h"

#include <QLocale>

#include <algorithm>

namespace tierloam::trends {

namespace {

/// Steps in days within months, then in whole months.
struct Step {
    int days;
    int months;
};

constexpr Step steps[] = {{1, 0}, {2, 0}, {7, 0}, {14, 0}, {0, 1}, {0, 2}, {0, 3}, {0, 6}, {0, 12}, {0, 24}, {0, 60}, {0, 120}, {0, 240}};

std::vector<QDate> datesOf(QDate from, QDate until, Step step)
{
    std::vector<QDate> dates;
    QDate date = from;
    if (step.days > 0) {
        if (step.days >= 7) date = from.addDays((8 - from.dayOfWeek()) % 7); // the next Monday
        for (; date <= until; date = date.addDays(step.days)) dates.push_back(date);
        return dates;
    }
    const int months = from.year() * 12 + from.month() - 1 + (from.day() > 1 ? 1 : 0);
    int first = (months + step.months - 1) / step.months * step.months;
    for (;; first += step.months) {
        date = QDate{first / 12, first % 12 + 1, 1};
        if (date > until) break;
        dates.push_back(date);
    }
    return dates;
}

}

std::vector<Tick> timeTicks(Day from, Day until, int mostDays, int mostMonths)
{
    const QDate first = ui::qDate(from), last = ui::qDate(until);
    const QLocale locale;
    for (const Step& step : steps) {
        const auto dates = datesOf(first, last, step);
        if (dates.size() > static_cast<std::size_t>(std::max(step.days > 0 ? mostDays : mostMonths, 2))) continue;
        std::vector<Tick> ticks;
        for (const QDate date : dates) {
            QString label;
            if (step.days > 0) {
                label = ui::shortDay(ui::civilDay(date), ui::civilDay(date)); // without the year
            } else if (date.month() == 1 || step.months >= 12) {
                label = QString::number(date.year());
            } else {
                label = locale.standaloneMonthName(date.month(), QLocale::ShortFormat);
            }
            ticks.push_back({ui::civilDay(date), label});
        }
        return ticks;
    }
    return {};
}

}
