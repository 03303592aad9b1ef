#include "core/journal/absences.h"

#include <algorithm>
#include <map>
#include <set>

namespace tierloam::journal {

namespace {

constexpr int fedWithin = 16 * 7; ///< days

/// The days that both hold; each ascending and joined.
std::vector<AwayDays> inBoth(const std::vector<AwayDays>& one, const std::vector<AwayDays>& other)
{
    std::vector<AwayDays> both;
    for (const AwayDays& a : one)
        for (const AwayDays& b : other)
            if (const AwayDays days{std::max(a.from, b.from), std::min(a.to, b.to)}; days.from <= days.to) both.push_back(days);
    return both;
}

}

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

std::vector<AwayDays> joined(std::vector<AwayDays> days)
{
    std::sort(days.begin(), days.end(), [](const AwayDays& a, const AwayDays& b) { return a.from < b.from; });
    std::vector<AwayDays> made;
    for (const AwayDays& each : days) {
        if (made.empty() || each.from > made.back().to + std::chrono::days{1}) made.push_back(each);
        else made.back().to = std::max(made.back().to, each.to);
    }
    return made;
}

std::vector<AwayDays> absencesOf(const Entries& entries, const std::string& stack)
{
    std::vector<AwayDays> all;
    for (const Entry& entry : entries)
        if (const auto days = entry.stack == stack ? awayDaysOf(entry) : std::nullopt) all.push_back(*days);
    return joined(std::move(all));
}

std::vector<AwayDays> absencesOfAll(const Entries& entries, Day today)
{
    std::set<std::string> fed;
    std::map<std::string, std::vector<AwayDays>> away;
    for (const Entry& entry : entries) {
        const int ago = daysBetween(entry.date.day, today);
        if (std::holds_alternative<Feed>(entry.action) && ago >= 0 && ago < fedWithin) fed.insert(entry.stack);
        if (const auto days = awayDaysOf(entry)) away[entry.stack].push_back(*days);
    }
    if (fed.empty())
        for (const auto& [stack, days] : away) fed.insert(stack);
    std::vector<AwayDays> all;
    for (auto stack = fed.begin(); stack != fed.end(); ++stack) {
        std::vector<AwayDays> own = joined(away[*stack]);
        all = stack == fed.begin() ? std::move(own) : inBoth(all, own);
    }
    return joined(std::move(all));
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
