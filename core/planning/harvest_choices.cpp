#include "core/planning/harvest_choices.h"

#include <cmath>
#include <map>

namespace tierloam::planning {

std::vector<int> daysFrom(int due, const WelcomeDays& is)
{
    std::vector<int> days;
    const int most = is.wishes().gathering == Gathering::asTheyCome ? 0 : is.wishes().mostWait;
    days.reserve(static_cast<std::size_t>(most) + 1);
    for (int day = due; day <= due + most; ++day)
        if (is(day)) days.push_back(day);
    for (int day = due + most + 1; days.empty() && day < due + longestSearch; ++day)
        if (is(day)) days.push_back(day);
    if (days.empty()) days.push_back(due);
    return days;
}

std::vector<int> choices(const StackTurns& stack, std::size_t k, int late, const WelcomeDays& is)
{
    if (const auto pin = pinOf(stack, k)) return {*pin};
    return daysFrom(dueOn(stack, k, late), is);
}

HarvestDays price(const std::vector<StackTurns>& stacks, const HarvestWishes& wishes, const WelcomeOfEach& is, std::vector<std::vector<int>> lift)
{
    HarvestDays made;
    const int stretch = stretchOf(stacks, wishes);
    std::map<int, int> onDay, inStretch;
    const Others numbers{wishes, stretch};
    double delay = 0.0;
    for (std::size_t i = 0; i < lift.size(); ++i)
        for (std::size_t k = 0; k < lift[i].size(); ++k) {
            delay += lateAfter(stacks[i], k, lift[i][k]);
            ++onDay[lift[i][k]];
            ++inStretch[numbers.stretchNumber(lift[i][k])];
        }
    for (const auto& [number, count] : inStretch) made.crowdedPairs += count * (count - 1) / 2;
    made.delay = static_cast<int>(std::lround(delay));
    made.days = static_cast<int>(onDay.size());
    for (std::size_t i = 0; i < lift.size(); ++i) {
        const HarvestWishes& own = is[i].wishes();
        std::vector<int>& take = made.take.emplace_back();
        for (const int day : lift[i]) take.push_back(takingAfter(day, own).value_or(takingOfBegun(day, day + own.daysDrying, own))); // a pinned day may suit nobody
    }
    made.cost = delay;
    if (wishes.gathering == Gathering::spread) made.cost += wishes.crowd * made.crowdedPairs;
    if (wishes.gathering == Gathering::gathered) made.cost += wishes.trip * made.days;
    made.lift = std::move(lift);
    return made;
}

}
