#include "core/planning/harvest_search.h"

#include <limits>
#include <map>
#include <tuple>

namespace tierloam::planning {

namespace {

class Together {
public:
    Together(const std::vector<StackTurns>& stacks, const HarvestWishes& wishes, const WelcomeOfEach& is, const HarvestDays& known, const TripPrices& prices, int mostStates)
        : stacks_{stacks}, wishes_{wishes}, known_{known}, prices_{prices}, is_{is}, most_{mostStates}, stretch_{stretchOf(stacks, wishes)}, rest_(stacks.size())
    {
    }

    /// The proved best, or nullopt when there were too many states.
    std::optional<HarvestDays> search()
    {
        State start;
        start.at.assign(stacks_.size(), {0, 0});
        std::map<Key, State> now{{keyOf(start, 0), start}};
        const int end = lastDay();
        std::optional<State> best;
        for (int day = firstDay(); day <= end && !now.empty(); ++day) {
            std::map<Key, State> next;
            for (const auto& [key, state] : now) {
                step(state, day, next);
                if (seen_ > most_) return std::nullopt;
            }
            now.clear();
            for (auto& [key, state] : next) {
                const bool done = std::all_of(state.at.begin(), state.at.end(), [&, i = std::size_t{0}](const Place& place) mutable { return place.harvested == static_cast<int>(stacks_[i++].natural.size()); });
                if (!done) now.emplace(key, std::move(state));
                else if (!best || state.cost < best->cost - 1e-9) best = std::move(state);
            }
        }
        if (!best) return known_;
        std::vector<std::vector<int>> lift(stacks_.size());
        for (const auto& [stack, on] : best->lifted) lift[static_cast<std::size_t>(stack)].push_back(on);
        HarvestDays made = price(stacks_, wishes_, is_, std::move(lift));
        return made.cost < known_.cost - 1e-9 ? made : known_;
    }

private:
    struct Place {
        int harvested = 0, late = 0;
        auto operator<=>(const Place&) const = default;
    };
    struct State {
        std::vector<Place> at;
        int inStretch = 0;               ///< harvests in the present stretch
        double cost = 0;
        std::vector<std::pair<int, int>> lifted; ///< stack, day
    };
    using Key = std::pair<std::vector<Place>, int>;

    static Key keyOf(const State& state, int inStretch) { return {state.at, inStretch}; }

    int firstDay() const
    {
        int first = 0;
        for (const StackTurns& stack : stacks_) {
            for (const int day : stack.natural) first = std::min(first, day);
            for (const auto& pin : stack.pinned)
                if (pin) first = std::min(first, *pin);
        }
        return first;
    }
    int lastDay() const
    {
        int last = 0;
        for (const StackTurns& stack : stacks_) {
            const int wait = static_cast<int>(stack.natural.size()) * (wishes_.mostWait + 7);
            for (const int day : stack.natural) last = std::max(last, day + wait);
            for (const auto& pin : stack.pinned)
                if (pin) last = std::max(last, *pin + wait);
        }
        for (std::size_t i = 0; i < stacks_.size(); ++i)
            for (const DaysAway& away : is_[i].wishes().away) last = std::max(last, away.to + longestSearch / 4);
        return last;
    }

    const std::vector<int>& daysOf(std::size_t i, const Place& place)
    {
        auto& known = choices_[{i, place.harvested, place.late}];
        if (known.empty()) known = choices(stacks_[i], static_cast<std::size_t>(place.harvested), place.late, is_[i]);
        return known;
    }

    /// The least that a stack still costs from that day on, with nothing to pay for crowds and its share of each trip.
    double restOf(std::size_t i, const Place& place, int from)
    {
        if (place.harvested == static_cast<int>(stacks_[i].natural.size())) return 0.0;
        const std::vector<int>& days = daysOf(i, place);
        from = std::max(from, days.front());
        auto& known = rest_[i];
        if (const auto found = known.find({place, from}); found != known.end()) return found->second;
        double best = std::numeric_limits<double>::infinity();
        for (auto day = std::lower_bound(days.begin(), days.end(), from); day != days.end(); ++day) {
            const int late = lateAfter(stacks_[i], static_cast<std::size_t>(place.harvested), *day);
            best = std::min(best, prices_.of(i, *day) + late + restOf(i, {place.harvested + 1, late}, 0));
        }
        known[{place, from}] = best;
        return best;
    }

    void step(const State& state, int day, std::map<Key, State>& to)
    {
        const bool newStretch = wishes_.gathering == Gathering::spread && day % stretch_ == 0;
        std::vector<std::size_t> may;
        unsigned must = 0;
        for (std::size_t i = 0; i < stacks_.size(); ++i) {
            if (state.at[i].harvested == static_cast<int>(stacks_[i].natural.size())) continue;
            const std::vector<int>& days = daysOf(i, state.at[i]);
            if (!std::binary_search(days.begin(), days.end(), day)) {
                if (days.back() < day) return; // its last day has passed
                continue;
            }
            if (days.back() == day) must |= 1U << may.size();
            may.push_back(i);
        }
        for (unsigned chosen = 0; chosen < 1U << may.size(); ++chosen) {
            if ((chosen & must) != must) continue;
            State then = state;
            if (newStretch) then.inStretch = 0;
            int lifted = 0;
            for (std::size_t j = 0; j < may.size(); ++j) {
                if ((chosen >> j & 1U) == 0U) continue;
                Place& place = then.at[may[j]];
                const std::size_t k = static_cast<std::size_t>(place.harvested);
                then.cost += lateAfter(stacks_[may[j]], k, day);
                place = {place.harvested + 1, lateAfter(stacks_[may[j]], k, day)};
                then.lifted.emplace_back(static_cast<int>(may[j]), day);
                if (wishes_.gathering == Gathering::spread) then.cost += wishes_.crowd * (then.inStretch + lifted);
                ++lifted;
            }
            if (wishes_.gathering == Gathering::gathered && lifted > 0) then.cost += wishes_.trip;
            if (wishes_.gathering == Gathering::spread) then.inStretch += lifted;
            double least = then.cost + prices_.pinnedAfter(day);
            for (std::size_t i = 0; i < stacks_.size(); ++i) least += restOf(i, then.at[i], day + 1);
            if (least >= known_.cost - prices_.leastStep()) continue;
            ++seen_;
            const Key key = keyOf(then, then.inStretch);
            const auto found = to.find(key);
            if (found == to.end()) to.emplace(key, std::move(then));
            else if (then.cost < found->second.cost) found->second = std::move(then);
        }
    }

    const std::vector<StackTurns>& stacks_;
    const HarvestWishes& wishes_;
    const HarvestDays& known_;
    const TripPrices& prices_;
    const WelcomeOfEach& is_;
    long most_;
    long seen_ = 0;
    int stretch_;
    std::vector<std::map<std::pair<Place, int>, double>> rest_;
    std::map<std::tuple<std::size_t, int, int>, std::vector<int>> choices_;
};

}

std::optional<HarvestDays> bestTogether(const std::vector<StackTurns>& stacks, const HarvestWishes& wishes, const WelcomeOfEach& is, const HarvestDays& known,
                                        const TripPrices& prices, int mostStates)
{
    return Together{stacks, wishes, is, known, prices, mostStates}.search();
}

}
