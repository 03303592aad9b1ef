#pragma once

#include "core/planning/harvest_days.h"
#include "core/planning/welcome_days.h"

#include <algorithm>
#include <limits>
#include <vector>

/// What every way of choosing days has in common: which days may be taken, what one stack does for itself, what a choice costs. Days from today on.
namespace tierloam::planning {

inline std::optional<int> pinOf(const StackTurns& stack, std::size_t k) { return k < stack.pinned.size() ? stack.pinned[k] : std::nullopt; }

/// When harvest k falls due, all before it having been late by so much.
inline int dueOn(const StackTurns& stack, std::size_t k, int late) { return stack.natural[k] + late; }

/// How late the stack runs once harvest k was lifted on that day, which is its delay as it is paid for. One lifted early brings nothing forward.
inline int lateAfter(const StackTurns& stack, std::size_t k, int day) { return std::max(day - stack.natural[k], 0); }

/// The days that may be chosen for a harvest that falls due on that day.
std::vector<int> daysFrom(int due, const WelcomeDays& is);
/// The same of harvest k; a pinned day is the only one.
std::vector<int> choices(const StackTurns& stack, std::size_t k, int late, const WelcomeDays& is);

/// What the days of all the other stacks mean for one more harvest on a day.
class Others {
public:
    Others(const HarvestWishes& wishes, int stretch) : wishes_{wishes}, stretch_{stretch} {}

    void put(int day, int by)
    {
        count(onDay_, day) += by;
        count(inStretch_, stretchNumber(day)) += by;
    }
    double priceOf(int day) const
    {
        switch (wishes_.gathering) {
        case Gathering::asTheyCome: return 0.0;
        case Gathering::spread: return wishes_.crowd * read(inStretch_, stretchNumber(day));
        case Gathering::gathered: return day == closed_ ? closedPrice : read(onDay_, day) > 0 ? 0.0 : wishes_.trip;
        }
        return 0.0;
    }
    /// Nobody goes there who can go on another day.
    void close(std::optional<int> day) { closed_ = day; }
    int stretchNumber(int day) const { return day >= 0 ? day / stretch_ : (day - stretch_ + 1) / stretch_; }

private:
    static constexpr double closedPrice = 1e7;
    static constexpr int before = 64; ///< pinned days may lie in the past
    static int& count(std::vector<int>& in, int key)
    {
        const std::size_t at = static_cast<std::size_t>(std::max(key + before, 0));
        if (at >= in.size()) in.resize(at + 64);
        return in[at];
    }
    static int read(const std::vector<int>& in, int key)
    {
        const std::size_t at = static_cast<std::size_t>(std::max(key + before, 0));
        return at < in.size() ? in[at] : 0;
    }

    const HarvestWishes& wishes_;
    int stretch_;
    std::vector<int> onDay_, inStretch_;
    std::optional<int> closed_;
};

/// The days of one stack by themselves, and what they cost.
struct OneStack {
    std::vector<int> days;
    double cost = 0;
};

/// The best days of one stack where a harvest on a day costs priceOf(day) beside its delay: over (harvest, lateness), backwards.
template <class Price> OneStack bestOfOne(const StackTurns& stack, const WelcomeDays& is, const Price& priceOf)
{
    struct Best { double cost = -1.0; int day = 0; };
    std::vector<std::vector<Best>> known(stack.natural.size() + 1);
    const auto at = [&](std::size_t k, int late) -> Best& {
        if (static_cast<std::size_t>(late) >= known[k].size()) known[k].resize(static_cast<std::size_t>(late) + 32);
        return known[k][static_cast<std::size_t>(late)];
    };
    const auto solve = [&](const auto& self, std::size_t k, int late) -> double {
        if (k == stack.natural.size()) return 0.0;
        if (const double cost = at(k, late).cost; cost >= 0.0) return cost;
        Best best{std::numeric_limits<double>::infinity(), 0};
        for (const int day : choices(stack, k, late, is)) {
            const double here = lateAfter(stack, k, day) + priceOf(day);
            if (here >= best.cost) continue;
            const double cost = here + self(self, k + 1, lateAfter(stack, k, day));
            if (cost < best.cost - 1e-9) best = {cost, day};
        }
        at(k, late) = best;
        return best.cost;
    };
    OneStack made;
    made.cost = solve(solve, 0, 0);
    int late = 0;
    for (std::size_t k = 0; k < stack.natural.size(); ++k) {
        const int day = at(k, late).day;
        made.days.push_back(day);
        late = lateAfter(stack, k, day);
    }
    return made;
}

/// What a choice of days costs, whether or not it keeps the rules.
HarvestDays price(const std::vector<StackTurns>& stacks, const HarvestWishes& wishes, const WelcomeOfEach& is, std::vector<std::vector<int>> lift);

}
