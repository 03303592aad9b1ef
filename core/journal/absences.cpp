#include "core/journal/absences.h"

#include <algorithm>

namespace tierloam::journal {

std::optional<AwayDays> awayDaysOf(const Entry& entry)
{
    const auto* event = std::get_if<Event>(&entry.action);
    if (event == nullptr || event->what != "away") return std::nullopt;
    return AwayDays{entry.date.day, event->until.value_or(entry.date.day)};
}

bool isAway(Day day, const std::vector<AwayDays>& away)
{
    return std::any_of(away.begin(), away.end(), [day](const AwayDays& days) { return days.holds(day); });
}

int daysPresentSince(Day day, Day today, const std::vector<AwayDays>& away)
{
    if (away.empty()) return daysBetween(day, today);
    int present = 0;
    for (Day each = day + std::chrono::days{1}; each <= today; each += std::chrono::days{1})
        present += isAway(each, away) ? 0 : 1;
    return present;
}

Day startOfDaysPresent(int days, Day today, const std::vector<AwayDays>& away)
{
    for (Day day = today;; day -= std::chrono::days{1}) {
        if (!isAway(day, away)) --days;
        if (days <= 0) return day;
    }
}

}
