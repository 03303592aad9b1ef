#include "core/planning/harvest_days.h"

#include "core/planning/welcome_days.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <random>

namespace tierloam::planning {

namespace {

constexpr double infinite = std::numeric_limits<double>::infinity();
constexpr std::size_t mostTogether = 4;  ///< stacks: with more the joint states are too many to prove anything
constexpr int rounds = 12;               ///< of putting every stack in its best place
constexpr int fewStacks = 24;            ///< up to so many several beginnings are tried
constexpr int beginnings = 32;
constexpr int beginningsOfMany = 2;

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

std::optional<int> pinOf(const StackTurns& stack, std::size_t k) { return k < stack.pinned.size() ? stack.pinned[k] : std::nullopt; }

/// When harvest k falls due, all before it having been late by so much.
int dueOn(const StackTurns& stack, std::size_t k, int late) { return stack.natural[k] + late; }

/// What is chosen from; a pinned day is the only one.
std::vector<int> choices(const StackTurns& stack, std::size_t k, int late, const WelcomeDays& is)
{
    if (const auto pin = pinOf(stack, k)) return {*pin};
    return daysFrom(dueOn(stack, k, late), is);
}

/// How late the stack runs once harvest k was lifted on that day. One lifted early brings nothing forward.
int lateAfter(const StackTurns& stack, std::size_t k, int day) { return std::max(day - stack.natural[k], 0); }

/// Delay of one harvest as it is paid for.
double delayOf(const StackTurns& stack, std::size_t k, int day) { return std::max(day - stack.natural[k], 0); }

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
        case Gathering::gathered: return read(onDay_, day) > 0 ? 0.0 : wishes_.trip;
        }
        return 0.0;
    }
    int stretchNumber(int day) const { return day >= 0 ? day / stretch_ : (day - stretch_ + 1) / stretch_; }

private:
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
};

/// The best days of one stack while the others stay where they are: over (harvest, lateness), backwards.
std::vector<int> bestOfOne(const StackTurns& stack, const WelcomeDays& is, const Others& others)
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
        Best best{infinite, 0};
        for (const int day : choices(stack, k, late, is)) {
            const double here = delayOf(stack, k, day) + others.priceOf(day);
            if (here >= best.cost) continue;
            const double cost = here + self(self, k + 1, lateAfter(stack, k, day));
            if (cost < best.cost - 1e-9) best = {cost, day};
        }
        at(k, late) = best;
        return best.cost;
    };
    solve(solve, 0, 0);
    std::vector<int> days;
    int late = 0;
    for (std::size_t k = 0; k < stack.natural.size(); ++k) {
        const int day = at(k, late).day;
        days.push_back(day);
        late = lateAfter(stack, k, day);
    }
    return days;
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
            delay += delayOf(stacks[i], k, lift[i][k]);
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
            std::vector<int> days = bestOfOne(stacks[i], is[i], others);
            moved = moved || days != lift[i];
            lift[i] = std::move(days);
            for (const int day : lift[i]) others.put(day, 1);
        }
        if (!moved) break;
    }
    return price(stacks, wishes, is, std::move(lift));
}

HarvestDays bySettling(const std::vector<StackTurns>& stacks, const HarvestWishes& wishes, const WelcomeOfEach& is)
{
    std::vector<std::size_t> order(stacks.size());
    for (std::size_t i = 0; i < order.size(); ++i) order[i] = i;
    HarvestDays best;
    best.cost = infinite;
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
                for (std::size_t i = 0; i < stacks.size(); ++i) lift[i] = bestOfOne(stacks[i], is[i], meetings);
            }
        }
        HarvestDays found = settle(stacks, wishes, is, order, std::move(lift));
        if (found.cost < best.cost - 1e-9) best = std::move(found);
    }
    return best;
}

/// All stacks together, day by day, over what has been lifted and how late each stack runs; a state that cannot beat what is known is dropped.
class Together {
public:
    Together(const std::vector<StackTurns>& stacks, const HarvestWishes& wishes, const WelcomeOfEach& is, const HarvestDays& known, int mostStates)
        : stacks_{stacks}, wishes_{wishes}, known_{known}, is_{is}, most_{mostStates}, stretch_{stretchOf(stacks, wishes)}, rest_(stacks.size())
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

    /// The least that a stack still costs, with nothing to pay for crowds and its part of each trip.
    double restOf(std::size_t i, const Place& place)
    {
        if (place.harvested == static_cast<int>(stacks_[i].natural.size())) return 0.0;
        auto& known = rest_[i];
        if (const auto found = known.find(place); found != known.end()) return found->second;
        const double part = wishes_.gathering == Gathering::gathered ? wishes_.trip / static_cast<double>(stacks_.size()) : 0.0;
        double best = infinite;
        for (const int day : daysOf(i, place)) {
            const std::size_t k = static_cast<std::size_t>(place.harvested);
            best = std::min(best, part + delayOf(stacks_[i], k, day) + restOf(i, {place.harvested + 1, lateAfter(stacks_[i], k, day)}));
        }
        known[place] = best;
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
                then.cost += delayOf(stacks_[may[j]], k, day);
                place = {place.harvested + 1, lateAfter(stacks_[may[j]], k, day)};
                then.lifted.emplace_back(static_cast<int>(may[j]), day);
                if (wishes_.gathering == Gathering::spread) then.cost += wishes_.crowd * (then.inStretch + lifted);
                ++lifted;
            }
            if (wishes_.gathering == Gathering::gathered && lifted > 0) then.cost += wishes_.trip;
            if (wishes_.gathering == Gathering::spread) then.inStretch += lifted;
            double least = then.cost;
            for (std::size_t i = 0; i < stacks_.size(); ++i) least += restOf(i, then.at[i]);
            if (least >= known_.cost - 1e-9) continue;
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
    const WelcomeOfEach& is_;
    long most_;
    long seen_ = 0;
    int stretch_;
    std::vector<std::map<Place, double>> rest_;
    std::map<std::tuple<std::size_t, int, int>, std::vector<int>> choices_;
};

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

HarvestDays chooseDays(const std::vector<StackTurns>& stacks, const HarvestWishes& wishes, int mostStates)
{
    const WelcomeOfEach is{stacks, wishes};
    HarvestDays best = bySettling(stacks, wishes, is);
    if (wishes.gathering == Gathering::asTheyCome) {
        best.exact = true;
        return best;
    }
    if (stacks.size() > mostTogether || mostStates <= 0) return best;
    if (auto proved = Together{stacks, wishes, is, best, mostStates}.search()) {
        proved->exact = true;
        return *std::move(proved);
    }
    return best;
}

}
