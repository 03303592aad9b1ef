#include "core/journal/absences.h"

#include <algorithm>
#include <map>
#include <set>

namespace tierloam::journal {

namespace {

constexpr int fedWithin = 16 * 7; ///< days

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

std::vector<AwayDays> merged(std::vector<AwayDays> away)
{
    std::erase_if(away, [](const AwayDays& days) { return days.to < days.from; });
    std::ranges::sort(away, {}, &AwayDays::from);
    std::vector<AwayDays> apart;
    for (const AwayDays& days : away) {
        if (apart.empty() || daysBetween(apart.back().to, days.from) > 1) apart.push_back(days);
        else apart.back().to = std::max(apart.back().to, days.to);
    }
    return apart;
}

std::vector<AwayDays> inBoth(const std::vector<AwayDays>& one, const std::vector<AwayDays>& other)
{
    std::vector<AwayDays> both;
    for (auto a = one.begin(), b = other.begin(); a != one.end() && b != other.end();) {
        const AwayDays common{std::max(a->from, b->from), std::min(a->to, b->to)};
        if (common.from <= common.to) both.push_back(common);
        a->to < b->to ? ++a : ++b;
    }
    return both;
}

std::vector<AwayDays> absencesOf(const Entries& entries, const std::string& stack)
{
    std::vector<AwayDays> all;
    for (const Entry& entry : entries)
        if (const auto days = entry.stack == stack ? awayDaysOf(entry) : std::nullopt) all.push_back(*days);
    return merged(std::move(all));
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
        std::vector<AwayDays> own = merged(away[*stack]);
        all = stack == fed.begin() ? std::move(own) : inBoth(all, own);
    }
    return merged(std::move(all));
}

int daysPresentSince(Day day, Day today, const std::vector<AwayDays>& away)
{
    if (!std::ranges::is_sorted(away, {}, &AwayDays::from)) return daysPresentSince(day, today, merged(away)); // the journal's order is by their first day
    if (away.empty()) return daysBetween(day, today);
    int present = std::max(daysBetween(day, today), 0);
    Day counted = day; // up to here days away are taken off already
    for (const AwayDays& days : away) {
        const Day before = std::max(days.from - std::chrono::days{1}, counted);
        const Day last = std::min(days.to, today);
        if (last <= before) continue;
        present -= daysBetween(before, last);
        counted = last;
    }
    return present;
}

Day startOfDaysPresent(int days, Day today, const std::vector<AwayDays>& away)
{
    for (Day day = today;;) {
        const auto gone = std::ranges::find_if(away, [day](const AwayDays& each) { return each.holds(day); });
        if (gone != away.end()) {
            day = gone->from - std::chrono::days{1};
            continue;
        }
        if (--days <= 0) return day;
        day -= std::chrono::days{1};
    }
}

}
