// The days of a year's harvests: against every possible choice on small cases, against known bests on large ones.
#include "core/planning/harvest_days.h"

#include "core/planning/harvest_prices.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cstdio>
#include <map>
#include <random>

namespace tierloam::planning {
namespace {

using Lift = std::vector<std::vector<int>>;

/// Every choice there is: for each harvest in turn every day that may be chosen.
void everyChoice(const std::vector<StackTurns>& stacks, const HarvestWishes& wishes, Lift& lift, std::size_t i, int late, double& best, long& tried)
{
    if (i == stacks.size()) {
        const auto made = priced(stacks, wishes, lift);
        ASSERT_TRUE(made);
        best = std::min(best, made->cost);
        ++tried;
        return;
    }
    const std::size_t k = lift[i].size();
    if (k == stacks[i].natural.size()) return everyChoice(stacks, wishes, lift, i + 1, 0, best, tried);
    const auto days = k < stacks[i].pinned.size() && stacks[i].pinned[k] ? std::vector<int>{*stacks[i].pinned[k]} : daysFor(stacks[i].natural[k] + late, wishes);
    for (const int day : days) {
        lift[i].push_back(day);
        everyChoice(stacks, wishes, lift, i, std::max(day - stacks[i].natural[k], 0), best, tried);
        lift[i].pop_back();
    }
}

double exhaustive(const std::vector<StackTurns>& stacks, const HarvestWishes& wishes, long* tried = nullptr)
{
    Lift lift(stacks.size());
    double best = 1e18;
    long count = 0;
    everyChoice(stacks, wishes, lift, 0, 0, best, count);
    if (tried) *tried = count;
    return best;
}

std::vector<StackTurns> drawn(std::mt19937& dice, int stacks, int harvests)
{
    std::vector<StackTurns> all(static_cast<std::size_t>(stacks));
    for (StackTurns& stack : all) {
        int day = static_cast<int>(dice() % 60U);
        for (int k = 0; k < harvests; ++k) {
            stack.natural.push_back(day);
            day += 50 + static_cast<int>(dice() % 40U);
        }
    }
    return all;
}

HarvestWishes gathered(int mostWait = usualWait)
{
    HarvestWishes wishes;
    wishes.gathering = Gathering::gathered;
    wishes.mostWait = mostWait;
    wishes.trip = tripFor(mostWait);
    return wishes;
}

HarvestWishes weekends(Gathering gathering, int mostWait = usualWait)
{
    HarvestWishes wishes;
    wishes.gathering = gathering;
    wishes.trip = tripFor(mostWait);
    wishes.weekdays = 0x60; // Saturday and Sunday
    wishes.todaysWeekday = 4;
    wishes.mostWait = mostWait;
    return wishes;
}

TEST(HarvestDays, AreTheBestOfAllChoicesOnSmallCases)
{
    std::mt19937 dice{11};
    long tried = 0;
    for (int round = 0; round < 8; ++round) {
        const Gathering gathering = round % 2 == 0 ? Gathering::gathered : Gathering::spread;
        const auto stacks = drawn(dice, round % 3 == 0 ? 3 : 2, round % 3 == 0 ? 2 : 3);
        HarvestWishes wishes = weekends(gathering, 14);
        if (round % 4 == 0) wishes.away = {{30, 43}};
        if (round % 4 == 2) wishes.trip = 3.0 + round; // one that is hardly worth waiting for
        long count = 0;
        const double best = exhaustive(stacks, wishes, &count);
        tried += count;
        const HarvestDays chosen = chooseDays(stacks, wishes);
        EXPECT_TRUE(chosen.exact);
        EXPECT_NEAR(chosen.cost, best, 1e-9) << "round " << round;
        const auto again = priced(stacks, wishes, chosen.lift);
        ASSERT_TRUE(again);
        EXPECT_NEAR(again->cost, chosen.cost, 1e-9);
        const HarvestDays settled = chooseDays(stacks, wishes, 0); // without the search that proves it
        EXPECT_LE(settled.cost, 1.01 * best + 1e-9) << "round " << round;
    }
    EXPECT_GT(tried, 2000);
}

TEST(HarvestDays, AnyDayOfTheWeekIsProvedForAHouseholdOfThree)
{
    std::mt19937 dice{5};
    for (const Gathering gathering : {Gathering::gathered, Gathering::spread}) {
        const auto stacks = drawn(dice, 3, 5);
        HarvestWishes wishes = gathered();
        wishes.gathering = gathering;
        const HarvestDays chosen = chooseDays(stacks, wishes);
        EXPECT_TRUE(chosen.exact);
        const HarvestDays settled = chooseDays(stacks, wishes, 0);
        EXPECT_LE(settled.cost, 1.01 * chosen.cost + 1e-9);
    }
}

/// Twelve stacks that are alike: all together on one stack's best days, each carrying a twelfth of the trip. Nothing can be better, since
/// every day with harvests serves at most twelve.
TEST(HarvestDays, TwelveAlikeMeetOnTheDaysThatOneWouldChoose)
{
    std::mt19937 dice{3};
    for (int round = 0; round < 5; ++round) {
        const StackTurns one = drawn(dice, 1, 4).front();
        const std::vector<StackTurns> twelve(12, one);
        HarvestWishes wishes = weekends(Gathering::gathered);
        HarvestWishes shared = wishes;
        shared.trip = wishes.trip / 12.0;
        const double bound = 12.0 * exhaustive({one}, shared);
        const HarvestDays chosen = chooseDays(twelve, wishes);
        EXPECT_LE(chosen.cost, 1.01 * bound + 1e-9);
        EXPECT_GE(chosen.cost, bound - 1e-9);
    }
}

TEST(HarvestDays, FiveStacksWithoutTheProofAreWithinOnePerCentOfEveryChoice)
{
    std::mt19937 dice{41};
    long tried = 0;
    for (int round = 0; round < 6; ++round) {
        const auto stacks = drawn(dice, 5, 2);
        HarvestWishes wishes = weekends(round % 2 == 0 ? Gathering::gathered : Gathering::spread, 8);
        long count = 0;
        const double best = exhaustive(stacks, wishes, &count);
        tried += count;
        EXPECT_LE(chooseDays(stacks, wishes, 0).cost, 1.01 * best + 1e-9) << "round " << round;
    }
    EXPECT_GT(tried, 6000);
}

/// A lower bound for any stacks that are to be gathered: the day on which stack i lifts has to be paid for once by somebody. That tie is relaxed
/// with prices for each stack and day (Lagrangian relaxation; Fisher 1981, Management Science 27:1-18, from memory): each stack then goes its own
/// best way, every choice of prices gives a bound, and the prices are raised where stacks lift on days that are not paid for.
double lowerBound(const std::vector<StackTurns>& stacks, const HarvestWishes& wishes, double known, int rounds)
{
    constexpr int days = 800;
    std::vector<std::vector<int>> choices; // by the day on which a harvest falls due
    for (int due = 0; due < days - 60; ++due) choices.push_back(daysFor(due, wishes));
    std::vector<std::vector<double>> price(stacks.size(), std::vector<double>(days, wishes.trip / static_cast<double>(stacks.size())));
    double best = 0.0;
    double scale = 1.0;
    int since = 0;
    for (int round = 0; round < rounds; ++round) {
        std::vector<std::vector<int>> lifts(stacks.size(), std::vector<int>(days, 0));
        double bound = 0.0;
        for (std::size_t i = 0; i < stacks.size(); ++i) {
            const StackTurns& stack = stacks[i];
            struct Best { double cost = -1; int day = 0; };
            std::vector<std::vector<Best>> seen(stack.natural.size() + 1, std::vector<Best>(days));
            const auto solve = [&](const auto& self, std::size_t k, int late) -> double {
                if (k == stack.natural.size()) return 0.0;
                if (seen[k][static_cast<std::size_t>(late)].cost >= 0.0) return seen[k][static_cast<std::size_t>(late)].cost;
                Best found{1e18, 0};
                for (const int day : choices[static_cast<std::size_t>(stack.natural[k] + late)]) {
                    const int then = std::max(day - stack.natural[k], 0);
                    const double cost = then + price[i][static_cast<std::size_t>(day)] + self(self, k + 1, then);
                    if (cost < found.cost) found = {cost, day};
                }
                seen[k][static_cast<std::size_t>(late)] = found;
                return found.cost;
            };
            bound += solve(solve, 0, 0);
            int late = 0;
            for (std::size_t k = 0; k < stack.natural.size(); ++k) {
                const int day = seen[k][static_cast<std::size_t>(late)].day;
                lifts[i][static_cast<std::size_t>(day)] += 1;
                late = std::max(day - stack.natural[k], 0);
            }
        }
        std::vector<int> paid(days, 0);
        for (std::size_t d = 0; d < days; ++d) {
            double sum = 0.0;
            for (std::size_t i = 0; i < stacks.size(); ++i) sum += price[i][d];
            if (sum > wishes.trip) {
                paid[d] = 1;
                bound += wishes.trip - sum;
            }
        }
        if (bound > best + 1e-6) {
            best = bound;
            since = 0;
        } else if (++since == 15) {
            scale *= 0.6;
            since = 0;
        }
        double square = 0.0;
        for (std::size_t i = 0; i < stacks.size(); ++i)
            for (std::size_t d = 0; d < days; ++d) {
                const int wrong = lifts[i][d] - paid[d];
                square += wrong * wrong;
            }
        if (square == 0.0) break;
        const double step = scale * std::max(known - bound, 0.01) / square;
        for (std::size_t i = 0; i < stacks.size(); ++i)
            for (std::size_t d = 0; d < days; ++d) price[i][d] = std::max(price[i][d] + step * (lifts[i][d] - paid[d]), 0.0);
    }
    return best;
}

TEST(HarvestDays, TheLowerBoundHoldsAndIsCloseOnSmallCases)
{
    std::mt19937 dice{53};
    for (int round = 0; round < 4; ++round) {
        const auto stacks = drawn(dice, 3, 2);
        const HarvestWishes wishes = weekends(Gathering::gathered, 14);
        const double best = exhaustive(stacks, wishes);
        const double bound = lowerBound(stacks, wishes, best, 400);
        EXPECT_LE(bound, best + 1e-6);
        EXPECT_GE(bound, 0.9 * best);
    }
}

TEST(HarvestDays, TwelveStacksThatAreNotAlikeAgainstALowerBound)
{
    std::mt19937 dice{61};
    double worst = 0.0;
    for (int round = 0; round < 6; ++round) {
        const auto stacks = drawn(dice, 12, 4);
        HarvestWishes wishes = weekends(Gathering::gathered, longestWait);
        wishes.trip = 5.0;
        const HarvestDays chosen = chooseDays(stacks, wishes);
        const double bound = lowerBound(stacks, wishes, chosen.cost, 400);
        EXPECT_LE(bound, chosen.cost + 1e-6);
        worst = std::max(worst, chosen.cost / bound - 1.0);
        std::printf("12 stacks that are not alike: cost %.1f, at least %.1f: %.2f %%\n", chosen.cost, bound, 100.0 * (chosen.cost / bound - 1.0));
    }
    EXPECT_LE(worst, 0.01);
}

/// With what a day saved is worth on the page. What lies between the two is the bound's gap as well: no choice need reach it.
TEST(HarvestDays, TwelveStacksGatheredAsThePageDoesAgainstALowerBound)
{
    std::mt19937 dice{61};
    double worst = 0.0;
    for (int round = 0; round < 3; ++round) {
        const auto stacks = drawn(dice, 12, 4);
        const HarvestWishes wishes = weekends(Gathering::gathered);
        const HarvestDays chosen = chooseDays(stacks, wishes);
        const double bound = lowerBound(stacks, wishes, chosen.cost, 400);
        EXPECT_LE(bound, chosen.cost + 1e-6);
        worst = std::max(worst, chosen.cost / bound - 1.0);
        HarvestWishes apart = wishes;
        apart.gathering = Gathering::asTheyCome;
        EXPECT_LT(chosen.days, 0.8 * chooseDays(stacks, apart).days);
        std::printf("12 stacks gathered: cost %.0f, at least %.1f: %.2f %%\n", chosen.cost, bound, 100.0 * (chosen.cost / bound - 1.0));
    }
    EXPECT_LE(worst, 0.04);
}

/// What is pinned is paid for once, whoever else comes on that day; the proof must know.
TEST(HarvestDays, AreTheBestOfAllChoicesBesidePinnedDays)
{
    std::mt19937 dice{29};
    for (int round = 0; round < 6; ++round) {
        auto stacks = drawn(dice, 2, 3);
        stacks[0].pinned = {std::nullopt, stacks[0].natural[1] + 5};
        stacks[1].pinned = {stacks[0].natural[0] + 3 * (round % 3)};
        const HarvestWishes wishes = gathered(6);
        const HarvestDays chosen = chooseDays(stacks, wishes);
        EXPECT_TRUE(chosen.exact);
        EXPECT_NEAR(chosen.cost, exhaustive(stacks, wishes), 1e-9) << "round " << round;
    }
}

/// What the proof rests on: no day is dearer than its trip, pinned ones are free, and the bound is never above the best of all choices.
TEST(HarvestDays, SharesOfATripNeverComeToMoreThanIt)
{
    std::mt19937 dice{37};
    for (int round = 0; round < 4; ++round) {
        auto stacks = drawn(dice, 2, 2);
        if (round % 2 == 1) stacks[0].pinned = {std::nullopt, stacks[0].natural[1] + 4};
        if (round % 2 == 1) stacks[1].pinned = {std::nullopt, stacks[0].natural[1] + 4};
        const HarvestWishes wishes = gathered(8);
        const double best = exhaustive(stacks, wishes);
        const WelcomeOfEach is{stacks, wishes};
        TripPrices prices{stacks, wishes, is};
        prices.raise(best + 1.0, 60); // as if it were not known to be the best
        EXPECT_LE(prices.bound(), best + 1e-6) << round;
        EXPECT_GT(prices.bound(), 0.8 * best) << round;
        for (int day = 0; day < 400; ++day) EXPECT_LE(prices.of(0, day) + prices.of(1, day), wishes.trip + 1e-9) << day;
        if (round % 2 == 0) continue;
        EXPECT_EQ(prices.of(0, stacks[0].natural[1] + 4), 0.0);
        EXPECT_EQ(prices.pinnedAfter(0), wishes.trip) << "two that share a day share its trip";
        EXPECT_EQ(prices.pinnedAfter(stacks[0].natural[1] + 4), 0.0);
    }
}

/// The turns of a household of three, 4 to 10 days apart: who asks for few days gets fewer, and no harvest waits longer than it may.
TEST(HarvestDays, GatheredOnVisiblyFewerDays)
{
    const std::vector<StackTurns> three{{{61, 127, 199, 274}, {}}, {{0, 71, 141, 213, 289}, {}}, {{137, 243}, {}}};
    HarvestWishes apart = gathered();
    apart.gathering = Gathering::asTheyCome;
    EXPECT_EQ(chooseDays(three, apart).days, 11);
    EXPECT_EQ(nearestApart(chooseDays(three, apart)), 4);
    for (const int wait : {7, 10, 14, 28}) {
        const HarvestDays few = chooseDays(three, gathered(wait));
        EXPECT_TRUE(few.exact);
        EXPECT_LE(few.days, wait < 10 ? 10 : 6) << wait;
        EXPECT_LE(few.delay, 61) << wait;
        for (std::size_t i = 0; i < three.size(); ++i)
            for (std::size_t k = 0, late = 0; k < three[i].natural.size(); ++k) {
                EXPECT_LE(few.lift[i][k] - three[i].natural[k] - static_cast<int>(late), wait);
                late = static_cast<std::size_t>(std::max(few.lift[i][k] - three[i].natural[k], 0));
            }
    }
    // Two that lie further apart than one may wait are not joined, and are as soon as it may.
    const std::vector<StackTurns> two{{{10}, {}}, {{21}, {}}};
    EXPECT_EQ(chooseDays(two, gathered(10)).days, 2);
    EXPECT_EQ(chooseDays(two, gathered(11)).days, 1);
    EXPECT_EQ(nearestApart(chooseDays(two, gathered(11))), std::nullopt) << "they meet";
    EXPECT_EQ(nearestApart({}), std::nullopt);
}

TEST(HarvestDays, DaysAwayAndOtherWeekdaysAreAvoided)
{
    std::mt19937 dice{17};
    const auto stacks = drawn(dice, 6, 4);
    HarvestWishes wishes = weekends(Gathering::gathered);
    wishes.away = {{50, 80}, {200, 214}};
    const HarvestDays chosen = chooseDays(stacks, wishes);
    for (const auto& days : chosen.lift)
        for (const int day : days) {
            EXPECT_THAT((day + 4) % 7, ::testing::AnyOf(5, 6));
            const std::optional<int> taken = takingAfter(day, wishes);
            ASSERT_TRUE(taken);
            EXPECT_THAT((*taken + 4) % 7, ::testing::AnyOf(5, 6));
            EXPECT_GE(*taken, day + 2);
            EXPECT_LE(*taken, day + 10);
            for (const int on : {day, *taken}) EXPECT_FALSE((on >= 50 && on <= 80) || (on >= 200 && on <= 214)) << day;
        }
    EXPECT_EQ(takingAfter(0, {}), 6);
    HarvestWishes week;
    week.away = {{5, 20}};
    EXPECT_EQ(takingAfter(0, week), 4);  // the last day before they leave
    EXPECT_EQ(takingAfter(3, week), std::nullopt);
    EXPECT_EQ(takingOfBegun(3, 9, week), 21);
    // A choice that breaks a rule has no price.
    auto bad = chosen.lift;
    bad[0][0] += 1;
    bad[0][0] += (bad[0][0] + 4) % 7 == 6 ? 1 : 0;
    EXPECT_FALSE(priced(stacks, wishes, bad));
}

TEST(HarvestDays, GatheringAndSpreadingDoWhatTheySay)
{
    std::mt19937 dice{23};
    const auto stacks = drawn(dice, 4, 4);
    HarvestWishes wishes;
    const HarvestDays plain = chooseDays(stacks, wishes);
    EXPECT_EQ(plain.delay, 0);
    wishes.gathering = Gathering::gathered;
    wishes.trip = 40.0;
    const HarvestDays gathered = chooseDays(stacks, wishes, 0);
    EXPECT_LT(gathered.days, plain.days);
    wishes.gathering = Gathering::spread;
    wishes.crowd = 40.0;
    const HarvestDays spread = chooseDays(stacks, wishes, 0);
    EXPECT_LT(spread.crowdedPairs, plain.crowdedPairs);
}

/// Stacks that are all due today do not stay on one day, and no more than every third of them in one stretch.
TEST(HarvestDays, StacksThatAreAllDueAreSpread)
{
    for (const int count : {3, 12}) {
        std::vector<StackTurns> stacks(static_cast<std::size_t>(count));
        for (int i = 0; i < count; ++i) stacks[static_cast<std::size_t>(i)].natural = {i % 2, 110 + i % 7, 230 + i % 11};
        HarvestWishes wishes;
        wishes.gathering = Gathering::spread;
        const HarvestDays spread = chooseDays(stacks, wishes);
        const int stretch = stretchOf(stacks, wishes);
        std::map<int, int> inStretch;
        for (const auto& days : spread.lift)
            for (const int day : days) ++inStretch[day / stretch];
        for (const auto& [number, lifted] : inStretch) EXPECT_LE(lifted, count == 3 ? 2 : 4) << count << ", stretch " << number;
        EXPECT_GE(inStretch.size(), count == 3 ? 7U : 15U) << count;
    }
}

TEST(HarvestDays, APinnedDayIsKeptAndWhatFollowsIsLater)
{
    StackTurns stack{{10, 70, 140}, {std::nullopt, 90, std::nullopt}};
    HarvestWishes wishes;
    const HarvestDays chosen = chooseDays({stack}, wishes);
    EXPECT_EQ(chosen.lift.front(), (std::vector<int>{10, 90, 160}));
    EXPECT_EQ(chosen.delay, 40);
    stack.pinned = {5};
    EXPECT_EQ(chooseDays({stack}, wishes).lift.front(), (std::vector<int>{5, 70, 140}));
}

/// How long it takes is for tests/bench/plan_bench to say: a build that watches every access takes many times as long.
TEST(HarvestDays, TwelveStacksAndTwoHundredArePricedAsTold)
{
    std::mt19937 dice{31};
    for (const int count : {12, 200}) {
        const auto stacks = drawn(dice, count, 5);
        for (const Gathering gathering : {Gathering::gathered, Gathering::spread}) {
            HarvestWishes wishes = gathered();
            wishes.gathering = gathering;
            const HarvestDays chosen = chooseDays(stacks, wishes);
            const auto again = priced(stacks, wishes, chosen.lift);
            ASSERT_TRUE(again);
            EXPECT_NEAR(again->cost, chosen.cost, 1e-9 * chosen.cost);
            std::printf("%d stacks, %s: cost %.0f%s\n", count, gathering == Gathering::spread ? "spread" : "gathered", chosen.cost, chosen.exact ? ", proved" : "");
        }
    }
}

TEST(HarvestDays, AStackWaitsForItsOwnAbsenceAlone)
{
    HarvestWishes wishes;
    wishes.gathering = Gathering::gathered;
    std::vector<StackTurns> stacks{StackTurns{{10}, {}}, StackTurns{{10}, {}}};
    EXPECT_EQ(chooseDays(stacks, wishes).lift, (Lift{{10}, {10}}));
    stacks[1].away = {{8, 40}};
    const HarvestDays apart = chooseDays(stacks, wishes);
    EXPECT_EQ(apart.lift[0], (std::vector<int>{10}));
    EXPECT_GT(apart.lift[1].front(), 40);
    EXPECT_GT(apart.take[1].front(), 40);
    EXPECT_TRUE(priced(stacks, wishes, apart.lift));
    EXPECT_FALSE(priced(stacks, wishes, {{10}, {10}}));
    stacks[1].away = {{12, 40}}; // lifted on day 10 its castings would hang until the return
    EXPECT_GT(chooseDays(stacks, wishes).lift[1].front(), 12);
}

}
}
