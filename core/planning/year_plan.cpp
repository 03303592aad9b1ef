#include "core/planning/year_plan.h"

#include "core/advice/too_early.h"

#include <algorithm>
#include <atomic>
#include <set>
#include <thread>

namespace tierloam::planning {

using reckoning::Crew;
using reckoning::PlannedHarvest;
using reckoning::RotationCourse;
using reckoning::RotationWish;
using reckoning::StackReckoning;

namespace {

constexpr std::size_t fewStacks = 24;
constexpr int membersOfFew = 128;
constexpr int membersOfMany = 64;
constexpr double leverFeedKg = 0.15;
constexpr double leverWarmth = 2.0;      ///< K
constexpr int leastOfAMonth = 15;        ///< days
constexpr int pairings = 8;              ///< random meetings of members of different stacks

/// work(i) for each i, by so many threads; each has a crew of its own.
template <class Work>
void shareOut(std::size_t count, int threads, const Work& work)
{
    std::atomic<std::size_t> next{0};
    const auto help = [&] {
        Crew alone{1};
        for (std::size_t i = next++; i < count; i = next++) work(i, alone);
    };
    std::vector<std::jthread> helpers;
    for (int t = 1; t < threads && static_cast<std::size_t>(t) < count; ++t) helpers.emplace_back(help);
    help();
}

/// Harvests that are still to be put on a day; one in the light has been lifted already.
bool isOpen(const PlannedHarvest& harvest) { return !harvest.begun; }

double castingsOf(const RotationCourse& course)
{
    double litres = 0.0;
    for (const PlannedHarvest& harvest : course.harvests) litres += harvest.castingsL.p50;
    return litres;
}

int weekdayOf(Day day) { return static_cast<int>(std::chrono::weekday{day}.iso_encoding()) - 1; }

std::vector<const StackReckoning*> standing(const reckoning::Reckoning& reckoning)
{
    std::vector<const StackReckoning*> stacks;
    for (const StackReckoning& stack : reckoning.stacks)
        if (!stack.retired && stack.present && !stack.now.slots.empty()) stacks.push_back(&stack);
    return stacks;
}

HarvestWishes wishesFor(const YearWishes& wishes, Day today)
{
    HarvestWishes made;
    made.gathering = wishes.gathering;
    made.weekdays = wishes.weekdays;
    made.todaysWeekday = weekdayOf(today);
    for (const auto& [from, to] : wishes.away) made.away.push_back({daysBetween(today, from), daysBetween(today, to)});
    return made;
}

StackTurns turnsOf(const StackYear& year, const YearWishes& wishes, Day today)
{
    StackTurns turns;
    const auto pins = wishes.pinned.find(year.stack);
    for (const PlannedHarvest& harvest : year.natural.harvests) {
        if (!isOpen(harvest)) continue;
        turns.natural.push_back(daysBetween(today, harvest.liftOn)); // on its turn: nothing was wished of this course
        std::optional<int> pin;
        if (pins != wishes.pinned.end())
            if (const auto found = pins->second.find(harvest.batch); found != pins->second.end() && found->second >= today) pin = daysBetween(today, found->second);
        turns.pinned.push_back(pin);
    }
    return turns;
}

}

RotationWish plainWish(const StackReckoning& stack, int members)
{
    RotationWish wish;
    wish.members = members;
    wish.dryingSoFar = stack.record.daysDrying;
    const std::optional<advice::LifeStep> due = advice::stepDueToday(stack);
    wish.turnToday = due == advice::LifeStep::addTray || due == advice::LifeStep::lift;
    wish.takeToday = due == advice::LifeStep::take;
    return wish;
}

YearWishes withAbsences(YearWishes wishes, const journal::Entries& entries, Day today)
{
    for (const journal::Entry& entry : entries) {
        const auto* event = std::get_if<journal::Event>(&entry.action);
        if (event == nullptr || event->what != "away") continue;
        const Day to = event->until.value_or(entry.date.day);
        if (to >= today) wishes.away.emplace_back(std::max(entry.date.day, today), to);
    }
    std::sort(wishes.away.begin(), wishes.away.end());
    wishes.away.erase(std::unique(wishes.away.begin(), wishes.away.end()), wishes.away.end());
    return wishes;
}

std::optional<YearPlan> planYear(const reckoning::Reckoning& reckoning, const YearWishes& wishes, int threads, std::stop_token stop)
{
    const std::vector<const StackReckoning*> stacks = standing(reckoning);
    const Day today = reckoning.asOf;
    YearPlan plan;
    plan.from = today;
    plan.members = stacks.size() <= fewStacks ? membersOfFew : membersOfMany;
    plan.stacks.resize(stacks.size());
    std::atomic<bool> stopped{false};
    shareOut(stacks.size(), threads, [&](std::size_t i, Crew& crew) {
        plan.stacks[i].stack = stacks[i]->name;
        RotationWish wish = plainWish(*stacks[i], plan.members);
        wish.windows = stacks.size() <= fewStacks;
        if (auto course = reckoning::runRotation(*stacks[i]->present, wish, crew, stop)) plan.stacks[i].natural = *std::move(course);
        else stopped = true;
    });
    if (stopped) return std::nullopt;

    std::vector<StackTurns> turns;
    for (const StackYear& year : plan.stacks) turns.push_back(turnsOf(year, wishes, today));
    plan.days = chooseDays(turns, wishesFor(wishes, today));

    shareOut(stacks.size(), threads, [&](std::size_t i, Crew& crew) {
        StackYear& year = plan.stacks[i];
        RotationWish wish = plainWish(*stacks[i], plan.members);
        wish.windows = stacks.size() <= fewStacks;
        bool moved = false;
        std::size_t open = 0;
        for (std::size_t k = 0; k < year.natural.harvests.size(); ++k) {
            const PlannedHarvest& harvest = year.natural.harvests[k];
            const bool chosen = isOpen(harvest);
            const Day on = chosen ? today + std::chrono::days{plan.days.lift[i][open]} : harvest.liftOn;
            year.pinned.push_back(chosen && turns[i].pinned[open].has_value());
            if (chosen) {
                wish.liftOn[static_cast<int>(k)] = on;
                year.delayDays += std::max(plan.days.lift[i][open] - turns[i].natural[open], 0);
                ++open;
            }
            moved = moved || on != harvest.liftOn;
        }
        year.planned = year.natural;
        if (moved && stacks.size() <= fewStacks) {
            if (auto course = reckoning::runRotation(*stacks[i]->present, wish, crew, stop)) year.planned = *std::move(course);
            else stopped = true;
        } else if (moved) {
            for (auto& [k, on] : wish.liftOn) {
                PlannedHarvest& harvest = year.planned.harvests[static_cast<std::size_t>(k)];
                const int later = daysBetween(harvest.liftOn, on);
                harvest.liftOn = on;
                harvest.takeOn += std::chrono::days{later};
            }
        }
        year.pinned.resize(year.planned.harvests.size(), false);
        year.castingsL = castingsOf(year.planned);
        year.castingsNaturalL = castingsOf(year.natural);
        year.colonyLostKg = year.natural.colonyAtEnd.p50 - year.planned.colonyAtEnd.p50;
    });
    if (stopped || stop.stop_requested()) return std::nullopt;
    return plan;
}

WishAnswer answerWish(const YearPlan& plan, const GardenWish& wish)
{
    WishAnswer answer;
    std::set<int> monthsServed;
    const auto monthOf = [](Day day) {
        const std::chrono::year_month_day date{day};
        return static_cast<int>(date.year()) * 12 + static_cast<int>(static_cast<unsigned>(date.month()));
    };
    std::vector<double> sums(static_cast<std::size_t>(plan.members) * pairings, 0.0);
    std::size_t turn = 0;
    for (const StackYear& year : plan.stacks) {
        ++turn;
        for (const PlannedHarvest& harvest : year.planned.harvests) {
            if (harvest.takeOn > wish.by) continue;
            monthsServed.insert(monthOf(harvest.takeOn));
            const std::size_t members = harvest.litresOfMember.size();
            // Members of another stack meet in another order each time: a stride that is odd visits all of them.
            for (std::size_t i = 0; i < sums.size() && members > 0; ++i) {
                const std::size_t round = i / static_cast<std::size_t>(plan.members);
                sums[i] += harvest.litresOfMember[(i * (2 * turn + 1) + round * 37 * turn) % members];
            }
        }
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
    const auto with = [&](const auto& change, int moreTrays = 0) -> std::optional<WishAnswer> {
        YearPlan changed = plan;
        std::atomic<bool> stopped{false};
        shareOut(changed.stacks.size(), 2, [&](std::size_t i, Crew& crew) {
            const StackReckoning* stack = reckoning.stack(changed.stacks[i].stack);
            if (stack == nullptr || !stack->present) return;
            RotationWish rotation = plainWish(*stack, plan.members);
            rotation.windows = false;
            rotation.change = change(*stack);
            reckoning::Present present = *stack->present;
            present.course.surroundings.settings.trays += moreTrays;
            if (auto course = reckoning::runRotation(present, rotation, crew, stop)) changed.stacks[i].planned = *std::move(course);
            else stopped = true;
        });
        return stopped ? std::nullopt : std::optional{answerWish(changed, wish)};
    };
    const auto food = with([](const StackReckoning& stack) {
        reckoning::ChangedPlan change;
        const double usual = stack.present->course.care.feedKg;
        change.feedKgPerWeek = std::max(usual, std::min(usual + leverFeedKg, stack.forecast.feedHighKg));
        return change;
    });
    const auto warmth = with([](const StackReckoning& stack) {
        reckoning::ChangedPlan change;
        change.usualTemperature = stack.present->course.surroundings.settings.temp.base() + leverWarmth;
        return change;
    });
    const auto trays = with([](const StackReckoning&) { return reckoning::ChangedPlan{}; }, 1);
    if (!food || !warmth || !trays) return std::nullopt;
    YearPlan natural = plan;
    for (StackYear& year : natural.stacks) year.planned = year.natural;
    GardenWish patient = wish;
    patient.by += std::chrono::days{WishRaised::laterDays};
    return WishRaised{*food, *warmth, *trays, answerWish(natural, wish), answerWish(plan, patient)};
}

}
