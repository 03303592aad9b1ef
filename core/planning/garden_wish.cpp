#include "core/planning/year_courses.h"

#include <algorithm>
#include <functional>
#include <set>

namespace tierloam::planning {

using reckoning::PlannedHarvest;
using reckoning::StackReckoning;

namespace {

constexpr double leverFeedKg = 0.15;
constexpr double leverWarmth = 2.0;      ///< K
constexpr int leastOfAMonth = 15;        ///< days
constexpr int pairings = 8;              ///< random meetings of members of different stacks

/// What the lever gives a stack beyond its usual food, kg a week: not more than it bears.
double moreFoodFor(const StackReckoning& stack) { return std::clamp(stack.forecast.feedHighKg - stack.present->course.care.feedKg, 0.0, leverFeedKg); }

/// Adds a figure of a stack's members to sums over stacks: member by member, each in several meetings with those of the others. `turn`: of the
/// stack, from 1; members of another stack meet in another order each time: a stride that is odd visits all of them.
void addMembers(std::vector<double>& sums, const YearPlan& plan, const std::vector<double>& ofMember, std::size_t turn, double sign = 1.0)
{
    const std::size_t members = ofMember.size();
    for (std::size_t i = 0; i < sums.size() && members > 0; ++i) {
        const std::size_t round = i / static_cast<std::size_t>(plan.members);
        sums[i] += sign * ofMember[(i * (2 * turn + 1) + round * 37 * turn) % members];
    }
}

/// What they give by that day.
void addLitres(std::vector<double>& sums, const YearPlan& plan, const std::vector<PlannedHarvest>& harvests, std::size_t turn, std::optional<Day> by)
{
    for (const PlannedHarvest& harvest : harvests)
        if (!by || harvest.takeOn <= *by) addMembers(sums, plan, harvest.litresOfMember, turn);
}

}

YearCastings yearCastings(const YearPlan& plan, std::string_view stack)
{
    const std::size_t meetings = static_cast<std::size_t>(plan.members) * pairings;
    std::vector<double> planned(meetings, 0.0), natural(meetings, 0.0);
    std::size_t turn = 0;
    for (const StackYear& year : plan.stacks) {
        ++turn;
        if (!stack.empty() && year.stack != stack) continue;
        addLitres(planned, plan, year.planned.harvests, turn, {});
        addLitres(natural, plan, year.natural.harvests, turn, {});
    }
    std::vector<double> less(meetings);
    std::ranges::transform(natural, planned, less.begin(), std::minus{});
    YearCastings castings;
    if (meetings == 0) return castings;
    castings.less = reckoning::band(less, {});
    castings.planned = reckoning::band(planned, {});
    castings.natural = reckoning::band(natural, {});
    return castings;
}

reckoning::Band colonyLost(const YearPlan& plan)
{
    std::vector<double> lost(static_cast<std::size_t>(plan.members) * pairings, 0.0);
    std::size_t turn = 0;
    for (const StackYear& year : plan.stacks) {
        ++turn;
        addMembers(lost, plan, year.natural.colonyOfMember, turn);
        addMembers(lost, plan, year.planned.colonyOfMember, turn, -1.0);
    }
    return lost.empty() ? reckoning::Band{} : reckoning::band(lost, {});
}

WishAnswer answerWish(const YearPlan& plan, const GardenWish& wish)
{
    WishAnswer answer;
    if (plan.stacks.empty()) return answer; // nor are there members to draw
    std::set<int> monthsServed;
    const auto monthOf = [](Day day) {
        const std::chrono::year_month_day date{day};
        return static_cast<int>(date.year()) * 12 + static_cast<int>(static_cast<unsigned>(date.month()));
    };
    std::vector<double> sums(static_cast<std::size_t>(plan.members) * pairings, 0.0);
    std::size_t turn = 0;
    for (const StackYear& year : plan.stacks) {
        ++turn;
        for (const PlannedHarvest& harvest : year.planned.harvests)
            if (harvest.takeOn <= wish.by) monthsServed.insert(monthOf(harvest.takeOn));
        addLitres(sums, plan, year.planned.harvests, turn, wish.by);
    }
    for (int month = monthOf(plan.from); month <= monthOf(wish.by); ++month) {
        // Of a month cut off at either end nothing is expected unless half of it is there.
        using namespace std::chrono;
        const year_month that = year{(month - 1) / 12} / (month - 12 * ((month - 1) / 12));
        const int within = daysBetween(std::max(plan.from, Day{that / 1}), std::min(wish.by, Day{that / last})) + 1;
        if (within >= leastOfAMonth && !monthsServed.contains(month)) ++answer.monthsWithout;
    }
    const auto enough = std::count_if(sums.begin(), sums.end(), [&](double litres) { return litres >= wish.litres; });
    answer.chance = sums.empty() ? 0.0 : static_cast<double>(enough) / static_cast<double>(sums.size());
    if (wish.everyMonth && answer.monthsWithout > 0) answer.chance = 0.0;
    answer.litres = reckoning::band(sums, {});
    return answer;
}

std::optional<WishRaised> raiseWish(const reckoning::Reckoning& reckoning, const YearPlan& plan, const GardenWish& wish, std::stop_token stop)
{
    // Days away, days of the week and pins stand under each lever as they do in the plan: a lever is not to be praised for what undoing them gains.
    const auto with = [&](ChangeOf change, int moreTrays = 0) -> std::optional<WishAnswer> {
        const auto changed = coursesWith(reckoning, plan.wishes, {std::move(change), moreTrays, false}, 2, stop);
        return changed ? std::optional{answerWish(*changed, wish)} : std::nullopt;
    };
    const auto food = with([](const StackReckoning& stack) {
        reckoning::ChangedPlan change;
        change.feedKgPerWeek = stack.present->course.care.feedKg + moreFoodFor(stack);
        return change;
    });
    const auto warmth = with([](const StackReckoning& stack) {
        reckoning::ChangedPlan change;
        change.usualTemperature = stack.present->course.surroundings.settings.temp.base() + leverWarmth;
        return change;
    });
    const auto trays = with({}, 1);
    if (!food || !warmth || !trays) return std::nullopt;
    YearPlan natural = plan;
    for (StackYear& year : natural.stacks) year.planned = year.natural;
    GardenWish patient = wish;
    patient.by += std::chrono::days{WishRaised::laterDays};
    WishRaised raised{*food, *warmth, *trays, answerWish(natural, wish), answerWish(plan, patient)};
    bool first = true;
    for (const StackReckoning& stack : reckoning.stacks) {
        if (!isPlanned(stack)) continue;
        const double more = moreFoodFor(stack);
        raised.leastMoreFoodKg = first ? more : std::min(raised.leastMoreFoodKg, more);
        raised.mostMoreFoodKg = std::max(raised.mostMoreFoodKg, more);
        first = false;
    }
    return raised;
}

}
