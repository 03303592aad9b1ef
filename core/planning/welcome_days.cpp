#include "core/planning/welcome_days.h"

#include <algorithm>

namespace tierloam::planning {

namespace {

bool isAway(int day, const HarvestWishes& wishes)
{
    return std::any_of(wishes.away.begin(), wishes.away.end(), [day](const DaysAway& away) { return day >= away.from && day <= away.to; });
}

/// Somebody is there on that day, and it is one of the chosen days of the week.
bool isFree(int day, const HarvestWishes& wishes)
{
    const unsigned mask = (wishes.weekdays & 0x7fU) == 0U ? 0x7fU : wishes.weekdays;
    const int weekday = ((day + wishes.todaysWeekday) % 7 + 7) % 7;
    return (mask >> weekday & 1U) != 0U && !isAway(day, wishes);
}

/// The first free day from the one that is wanted on, else the last before it.
std::optional<int> freeBetween(int least, int wanted, int most, const HarvestWishes& wishes)
{
    for (int day = wanted; day <= most; ++day)
        if (isFree(day, wishes)) return day;
    for (int day = wanted - 1; day >= least; --day)
        if (isFree(day, wishes)) return day;
    return std::nullopt;
}

HarvestWishes withOwn(HarvestWishes wishes, const std::vector<DaysAway>& away)
{
    wishes.away.insert(wishes.away.end(), away.begin(), away.end());
    return wishes;
}

}

bool isWelcome(int day, const HarvestWishes& wishes) { return isFree(day, wishes) && takingAfter(day, wishes); }

std::optional<int> takingAfter(int lift, const HarvestWishes& wishes)
{
    return freeBetween(lift + wishes.leastDrying, lift + wishes.daysDrying, lift + wishes.mostDrying, wishes);
}

int takingOfBegun(int lift, int wanted, const HarvestWishes& wishes)
{
    const int least = std::max(lift + wishes.leastDrying, 0);
    if (const auto day = freeBetween(least, wanted, std::max(wanted, lift + wishes.mostDrying), wishes)) return *day;
    for (int day = std::max(wanted, least); day < wanted + longestSearch; ++day)
        if (!isAway(day, wishes)) return day;
    return wanted;
}

WelcomeDays::WelcomeDays(const HarvestWishes& wishes) : wishes_{wishes}, is_(static_cast<std::size_t>(reach))
{
    for (int day = 0; day < reach; ++day) is_[static_cast<std::size_t>(day)] = isWelcome(day, wishes) ? 1 : 0;
}

WelcomeOfEach::Own::Own(const HarvestWishes& common, const std::vector<DaysAway>& away) : wishes{withOwn(common, away)}, is{wishes} {}

WelcomeOfEach::WelcomeOfEach(const std::vector<StackTurns>& stacks, const HarvestWishes& wishes) : common_{wishes}, own_(stacks.size())
{
    for (std::size_t i = 0; i < stacks.size(); ++i)
        if (!stacks[i].away.empty()) own_[i] = std::make_unique<Own>(wishes, stacks[i].away);
}

}
