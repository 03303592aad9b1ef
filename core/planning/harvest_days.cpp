#include "core/planning/harvest_days.h"

#include "core/planning/harvest_search.h"
#include "core/planning/harvest_settling.h"

#include <algorithm>

namespace tierloam::planning {

namespace {

constexpr std::size_t mostTogether = 4;  ///< stacks: with more the joint states are too many to prove anything
constexpr int roundsOfPrices = 150;

}

int stretchOf(const std::vector<StackTurns>& stacks, const HarvestWishes& wishes)
{
    std::size_t harvests = 0;
    for (const StackTurns& stack : stacks) harvests += stack.natural.size();
    return harvests == 0 ? 14 : std::clamp(wishes.horizon / static_cast<int>(harvests), 7, 14);
}

std::vector<int> daysFor(int due, const HarvestWishes& wishes) { return daysFrom(due, WelcomeDays{wishes}); }

std::optional<HarvestDays> priced(const std::vector<StackTurns>& stacks, const HarvestWishes& wishes, const std::vector<std::vector<int>>& lift)
{
    if (lift.size() != stacks.size()) return std::nullopt;
    const WelcomeOfEach is{stacks, wishes};
    for (std::size_t i = 0; i < stacks.size(); ++i) {
        if (lift[i].size() != stacks[i].natural.size()) return std::nullopt;
        int late = 0;
        for (std::size_t k = 0; k < lift[i].size(); ++k) {
            const std::vector<int> days = choices(stacks[i], k, late, is[i]);
            if (!std::binary_search(days.begin(), days.end(), lift[i][k])) return std::nullopt;
            late = lateAfter(stacks[i], k, lift[i][k]);
        }
    }
    return price(stacks, wishes, is, lift);
}

std::optional<int> nearestApart(const HarvestDays& days)
{
    std::vector<std::pair<int, std::size_t>> all; // day, stack
    for (std::size_t i = 0; i < days.lift.size(); ++i)
        for (const int day : days.lift[i]) all.emplace_back(day, i);
    std::sort(all.begin(), all.end());
    std::optional<int> nearest;
    for (std::size_t a = 0; a < all.size(); ++a)
        for (std::size_t b = a + 1; b < all.size() && (!nearest || all[b].first - all[a].first < *nearest); ++b)
            if (all[b].second != all[a].second && all[b].first > all[a].first) nearest = all[b].first - all[a].first;
    return nearest;
}

HarvestDays chooseDays(const std::vector<StackTurns>& stacks, const HarvestWishes& wishes, int mostStates)
{
    const WelcomeOfEach is{stacks, wishes};
    HarvestDays best = bySettling(stacks, wishes, is);
    if (wishes.gathering == Gathering::asTheyCome) {
        best.exact = true;
        return best;
    }
    if (stacks.size() > mostTogether || mostStates <= 0) return best;
    TripPrices prices{stacks, wishes, is};
    if (wishes.gathering == Gathering::gathered) prices.raise(best.cost, roundsOfPrices);
    if (prices.bound() > best.cost - prices.leastStep()) {
        best.exact = true;
        return best;
    }
    if (auto proved = bestTogether(stacks, wishes, is, best, prices, mostStates)) {
        proved->exact = true;
        return *std::move(proved);
    }
    return best;
}

}
