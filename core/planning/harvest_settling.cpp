#include "core/planning/harvest_settling.h"

#include <limits>
#include <map>
#include <random>

namespace tierloam::planning {

namespace {

constexpr int rounds = 12;               ///< of putting every stack in its best place
constexpr int fewStacks = 24;            ///< up to so many several beginnings are tried
constexpr int beginnings = 32;
constexpr int beginningsOfMany = 2;
constexpr double worthClosing = 1.03;    ///< times the best known: what costs more is not looked at closer

std::vector<int> bestBeside(const StackTurns& stack, const WelcomeDays& is, const Others& others)
{
    return bestOfOne(stack, is, [&](int day) { return others.priceOf(day); }).days;
}

/// One stack after another into its best place, until nothing moves.
HarvestDays settle(const std::vector<StackTurns>& stacks, const HarvestWishes& wishes, const WelcomeOfEach& is, const std::vector<std::size_t>& order, std::vector<std::vector<int>> lift)
{
    Others others{wishes, stretchOf(stacks, wishes)};
    for (const auto& days : lift)
        for (const int day : days) others.put(day, 1);
    for (int round = 0; round < rounds; ++round) {
        bool moved = false;
        for (const std::size_t i : order) {
            for (const int day : lift[i]) others.put(day, -1);
            std::vector<int> days = bestBeside(stacks[i], is[i], others);
            moved = moved || days != lift[i];
            lift[i] = std::move(days);
            for (const int day : lift[i]) others.put(day, 1);
        }
        if (!moved) break;
    }
    return price(stacks, wishes, is, std::move(lift));
}

/// The days on which something is lifted, those with the fewest harvests first.
std::vector<int> leastUsed(const HarvestDays& of)
{
    std::map<int, int> onDay;
    for (const auto& days : of.lift)
        for (const int day : days) ++onDay[day];
    std::vector<std::pair<int, int>> byCount;
    for (const auto& [day, count] : onDay) byCount.emplace_back(count, day);
    std::sort(byCount.begin(), byCount.end());
    std::vector<int> days;
    for (const auto& [count, day] : byCount) days.push_back(day);
    return days;
}

/// Settling moves one stack at a time, and none leaves a day on which others stay. Here all that lift on a day leave it together.
HarvestDays withDaysClosed(const std::vector<StackTurns>& stacks, const HarvestWishes& wishes, const WelcomeOfEach& is, const std::vector<std::size_t>& order, HarvestDays best)
{
    for (bool better = true; better;) {
        better = false;
        for (const int closed : leastUsed(best)) {
            std::vector<std::vector<int>> lift = best.lift;
            Others others{wishes, stretchOf(stacks, wishes)};
            for (const auto& days : lift)
                for (const int day : days) others.put(day, 1);
            others.close(closed);
            for (const std::size_t i : order) {
                if (std::find(lift[i].begin(), lift[i].end(), closed) == lift[i].end()) continue;
                for (const int day : lift[i]) others.put(day, -1);
                lift[i] = bestBeside(stacks[i], is[i], others);
                for (const int day : lift[i]) others.put(day, 1);
            }
            HarvestDays found = settle(stacks, wishes, is, order, std::move(lift));
            if (found.cost >= best.cost - 1e-9) continue;
            best = std::move(found);
            better = true;
            break;
        }
    }
    return best;
}

}

HarvestDays bySettling(const std::vector<StackTurns>& stacks, const HarvestWishes& wishes, const WelcomeOfEach& is)
{
    std::vector<std::size_t> order(stacks.size());
    for (std::size_t i = 0; i < order.size(); ++i) order[i] = i;
    HarvestDays best;
    best.cost = std::numeric_limits<double>::infinity();
    std::mt19937 dice{20310502}; // the same plan for the same household
    const int tries = wishes.gathering == Gathering::asTheyCome ? 1 : static_cast<int>(stacks.size()) <= fewStacks ? beginnings : beginningsOfMany;
    for (int attempt = 0; attempt < tries; ++attempt) {
        std::vector<std::vector<int>> lift(stacks.size()); // empty: the first ones settle as if they were alone
        if (attempt > 0) {
            std::shuffle(order.begin(), order.end(), dice);
            // From a beginning on which all meet: every so many days, another phase each time.
            if (wishes.gathering == Gathering::gathered && attempt % 2 == 0) {
                const int every = 14 + 7 * (attempt % 3);
                Others meetings{wishes, 1};
                for (int day = static_cast<int>(dice() % static_cast<unsigned>(every)); day < wishes.horizon + wishes.mostWait; day += every) {
                    int on = day;
                    while (!isWelcome(on, wishes) && on < day + 7) ++on;
                    meetings.put(on, 1);
                }
                for (std::size_t i = 0; i < stacks.size(); ++i) lift[i] = bestBeside(stacks[i], is[i], meetings);
            }
        }
        HarvestDays found = settle(stacks, wishes, is, order, std::move(lift));
        if (wishes.gathering == Gathering::gathered && static_cast<int>(stacks.size()) <= fewStacks && found.cost < best.cost * worthClosing)
            found = withDaysClosed(stacks, wishes, is, order, std::move(found));
        if (found.cost < best.cost - 1e-9) best = std::move(found);
    }
    return best;
}

}
