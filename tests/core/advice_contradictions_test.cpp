// No two pieces of one day contradict each other: the pairs are those of the table in DEVELOPERS.md; over households drawn from the prior, and over
// stacks in states that no household would come to.
#include "core/advice/food_limit.h"
#include "core/advice/rules.h"

#include "tests/support/calm_stack.h"
#include "tests/support/guide_tables.h"
#include "tests/support/households.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <map>
#include <random>
#include <set>

namespace tierloam::tests {
namespace {

using advice::Food;

constexpr std::uint64_t series = 0x0ad51ce;
constexpr int households = 200; ///< unless TIERLOAM_HOUSEHOLDS asks for fewer
constexpr int fewMembers = 64;
constexpr int strangeStacks = 6000;

using Pairs = std::set<std::pair<std::string, std::string>>; ///< what stands, what goes

Pairs documented()
{
    Pairs pairs;
    for (const auto& row : tableUnder("### What contradicts what", 3))
        for (const std::string& stays : codesIn(row[0]))
            for (const std::string& goes : codesIn(row[1])) pairs.emplace(stays, goes);
    return pairs;
}

/// Steps of one stack of which the rules themselves tell one at a time.
constexpr Code oneAtATime[][2] = {{Code::harvestReady, Code::harvestOverdue}, {Code::harvestReady, Code::readyNoHurry}, {Code::harvestReady, Code::harvestSoon},
                                  {Code::harvestOverdue, Code::readyNoHurry}, {Code::harvestOverdue, Code::harvestSoon}, {Code::readyNoHurry, Code::harvestSoon},
                                  {Code::harvestReady, Code::addTray},        {Code::harvestOverdue, Code::addTray},     {Code::dryingDone, Code::dryingLong},
                                  {Code::dryingDone, Code::harvestReady},     {Code::dryingDone, Code::addTray}};

/// What nobody could follow on one day; independent of the program's own table.
bool clash(const Pairs& pairs, const Advice& a, const Advice& b)
{
    const std::string one{advice::codeName(a.code)}, other{advice::codeName(b.code)};
    if (pairs.contains({one, other}) || pairs.contains({other, one})) return true;
    if ((a.food == Food::give && b.food == Food::withhold) || (b.food == Food::give && a.food == Food::withhold)) return true;
    return std::any_of(std::begin(oneAtATime), std::end(oneAtATime), [&](const auto& pair) { return (a.code == pair[0] && b.code == pair[1]) || (a.code == pair[1] && b.code == pair[0]); });
}

/// What is to be done, whatever rule asks for it.
enum class Effect { lift, letItWork };
std::optional<Effect> effectOf(const Advice& advice)
{
    switch (advice.code) {
    case Code::harvestReady:
    case Code::harvestOverdue: return Effect::lift;
    case Code::tooEarly:
    case Code::harvestSoon: return Effect::letItWork;
    case Code::lookNext: return advice.forTurn && advice.look == LookKind::bits ? std::optional{Effect::letItWork} : std::nullopt; // look first, and lift if …
    default: return std::nullopt;
    }
}

constexpr double paperLPerKg = 1000.0 / 30.0; // newspaper shredded (resources/materials.csv)

/// What cannot be followed by what it does, over the amounts and places that are named; knows no table of codes that clash.
std::map<std::string, int> clashesByEffect(const StackReckoning& stack, const std::vector<Advice>& all)
{
    std::map<std::string, int> found;
    const auto name = [](const Advice& advice) { return std::string{advice::codeName(advice.code)}; };
    const TrayEstimate* top = advice::trayToFeed(stack);
    const double roomL = top != nullptr ? std::max(stack.record.trayHeightCm - 1.0 - top->depthCm, 0.0) * 10.0 * stack.record.areaM2 : 0.0;
    for (const Advice& one : all) {
        if (one.food == Food::give && one.kg > 1.05 * advice::foodLimitOn(stack, one.on) + 1e-9) ++found[name(one) + " names more than the limit of its day"];
        if (one.food == Food::give && stack.forecast.roomTopTrayFreshKg && one.kg > 1.05 * *stack.forecast.roomTopTrayFreshKg + 1e-9) ++found[name(one) + " names more than fits"];
        if (one.code == Code::lowCarbon && one.kg * paperLPerKg > roomL) ++found[name(one) + " names more paper than fits"];
        for (const Advice& other : all) {
            if (&one == &other) continue;
            const std::string both = name(one) + " and " + name(other);
            const bool dry = other.code == Code::tooWet || other.code == Code::drainageHigh;
            if (one.litres > 0.0 && dry) ++found[both + ": water, and none"];
            if (&one < &other && one.look && other.look && one.on == other.on && one.food != Food::withhold && other.food != Food::withhold) ++found[both + ": two looks"];
            if (effectOf(one) == Effect::lift && effectOf(other) == Effect::letItWork && one.on == other.on) ++found[both + ": lift, and wait"];
            if (one.code == Code::lowCarbon && other.code == Code::trayFull) ++found[both + ": paper where there is no room"];
            if (one.food == Food::give && other.food == Food::withhold) ++found[both + ": food, and none"];
        }
    }
    return found;
}

/// Each clash of the list, by both names.
std::map<std::string, int> clashesOf(const Pairs& pairs, const std::vector<Advice>& all)
{
    std::map<std::string, int> found;
    for (std::size_t i = 0; i < all.size(); ++i)
        for (std::size_t j = i + 1; j < all.size(); ++j)
            if (clash(pairs, all[i], all[j])) ++found[std::string{advice::codeName(all[i].code)} + " and " + std::string{advice::codeName(all[j].code)}];
    return found;
}

/// All rules, nothing settled.
std::vector<Advice> rawOf(const StackReckoning& stack)
{
    std::vector<Advice> all;
    advice::rulesOfHarvest(stack, all);
    advice::rulesOfDrying(stack, all);
    advice::rulesOfFeeding(stack, all);
    advice::rulesOfFood(stack, all);
    advice::rulesOfWater(stack, all);
    advice::rulesOfDrainage(stack, all);
    advice::rulesOfClimate(stack, all);
    advice::rulesOfColony(stack, all);
    advice::rulesOfRecord(stack, all);
    advice::rulesOfLooks(stack, all);
    return all;
}

/// Anything at once: what is drawn here contradicts nature as well.
StackReckoning strange(std::mt19937& dice)
{
    const auto chance = [&](double p) { return std::uniform_real_distribution{}(dice) < p; };
    const auto between = [&](double low, double high) { return std::uniform_real_distribution{low, high}(dice); };
    const auto band = [&](double low, double high) {
        const double middle = between(low, high);
        return Band{middle * between(0.7, 1.0), middle, middle * between(1.0, 1.3)};
    };
    StackReckoning stack = calm();
    since(stack, -9, [&, soon = between(0.0, 1.0), low = chance(0.3) ? between(0.0, 1.0) : 0.0, bed = band(0, 38), full = static_cast<int>(between(0, 20))](StackEstimate& day) {
        day.ahead->readyAndTurnWithin14Days = soon;
        day.ahead->airLowWithin14Days = low;
        day.ahead->bedIn7Days = day.ahead->bedIn14Days = bed;
        day.ahead->sumpFullOn.p50 = day.day + std::chrono::days{full};
    });
    since(stack, -5, [&, warm = band(0, 38), ration = band(0.4, 1.6), first = band(0.4, 1.4), second = band(0.4, 1.4), air = between(0.5, 1.0), soft = between(0.0, 1.0)](StackEstimate& day) {
        day.binTempC = warm;
        day.ration = ration;
        day.slots[0].waterShare = first;
        day.slots[1].waterShare = second;
        day.slots[1].air = air;
        for (TrayEstimate& tray : day.slots) tray.strata.softenedCm = soft;
    });
    stack.forecast.airLowWithin14Days = chance(0.3) ? between(0.0, 1.0) : 0.0;
    stack.forecast.ownWarmthK = between(0.0, 5.0);
    stack.forecast.roomTopTrayFreshKg = chance(0.3) ? between(0.0, 0.3) : between(0.0, 4.0);
    stack.forecast.feedHighKg = std::min(between(0.0, 2.0), *stack.forecast.roomTopTrayFreshKg);
    stack.forecast.feedLowKg = std::min(0.3, stack.forecast.feedHighKg);
    stack.record.fedKg.assign(7, 0.0);
    for (double& kg : stack.record.fedKg) kg = chance(0.3) ? between(0.0, 0.4) : 0.0;
    stack.forecast.feedNowKg = stack.forecast.feedHighKg * (chance(0.5) ? 1.0 : between(0.0, 1.0));
    since(stack, -5, [depth = between(2.0, 12.0)](StackEstimate& day) { day.slots[1].depthCm = depth; });
    if (chance(0.3)) stack.forecast.topTrayFullOn.p50 = in(static_cast<int>(between(0, 20)));
    if (chance(0.5)) { // at most 0.55 kg of carbon a kilogram of nitrogen
        stack.forecast.usualNitrogenKg = 0.004;
        stack.forecast.usualCarbonKg = between(0.03, 0.12);
    }
    if (chance(0.3)) {
        stack.record.nextAwayFrom = in(static_cast<int>(between(1, 9)));
        stack.record.nextAwayUntil = *stack.record.nextAwayFrom + std::chrono::days{static_cast<int>(between(0, 20))};
    }
    stack.firstBedding = in(-200);
    if (chance(0.5)) {
        stack.record.lastLook = in(-static_cast<int>(between(0, 50)));
        stack.now.slots[0].readyOn = {in(10), in(60), in(200)};
        stack.nextLooks = {{LookKind::bits, 1, 0.7, 2.0}};
        if (chance(0.5)) stack.bitsRule = BitsRule{12.0, in(30)};
    }
    stack.forecast.turnLikelyOn = in(static_cast<int>(between(0, 20)));
    stack.forecast.sumpFullOn = {in(static_cast<int>(between(0, 10))), in(static_cast<int>(between(10, 20))), in(static_cast<int>(between(20, 50)))};
    stack.forecast.readyAndTurnWithin14Days = between(0.0, 1.0);
    stack.forecast.drainedExpectedLPerWeek.p50 = between(0.0, 4.0);
    stack.record.waterLPerWeek = chance(0.5) ? 2.0 : 0.0;
    stack.record.lastFeed = in(-static_cast<int>(between(0, 30)));
    stack.record.lastEntry = chance(0.3) ? in(-30) : *stack.record.lastFeed;
    stack.record.spigotShut = chance(0.5);
    stack.record.spareTrays = chance(0.5) ? 1 : 0;
    if (chance(0.5)) stack.turnSince = in(-3);
    if (chance(0.5)) stack.readySince = in(-3);
    if (stack.readySince && chance(0.3)) stack.now.slots[0].state = TrayState::overdue;
    if (chance(0.3)) {
        stack.record.lastTrayAdded = in(-4);
        since(stack, -4, [](StackEstimate& day) { day.slots[0].castingsDepthCm = {1.0, 1.4, 1.8}; });
    }
    if (chance(0.3)) {
        const int days = static_cast<int>(between(1, 14));
        stack.record.dryingSince = in(-days);
        stack.record.daysDrying = days;
        since(stack, -days, [left = between(0.0, 0.3), ready = between(0.0, 1.0)](StackEstimate& day) {
            day.slots[1].state = TrayState::drying;
            day.slots[1].wormShare = {0.0, 0.3 * left, 0.3};
            day.slots[1].readyProbability = ready;
        });
    }
    if (chance(0.3)) {
        const double litres = between(0.0, 3.0);
        for (const int day : {-9, -2}) stack.drains.push_back({in(day), litres, {0.8, 1.2, 1.6}});
    }
    return stack;
}

int asked()
{
    const char* fewer = std::getenv("TIERLOAM_HOUSEHOLDS");
    return fewer != nullptr ? std::min(std::atoi(fewer) * 4, households) : households;
}

TEST(AdviceOfManyHouseholds, NeverContradictsItself)
{
    const Pairs pairs = documented();
    std::map<std::string, int> seen;
    const int wanted = asked();
    for (int number = 0; number < wanted; ++number) {
        const MadeUp household = makeHousehold(series, number);
        const Reckoned reckoned = reckonHousehold(household, fewMembers);
        const std::vector<Advice> all = advice::adviceFor(*reckoned.stack);
        for (const auto& [what, count] : clashesOf(pairs, all)) ADD_FAILURE() << "household " << number << ": " << what;
        for (const auto& [what, count] : clashesByEffect(*reckoned.stack, all)) ADD_FAILURE() << "household " << number << ": " << what;
        for (const Advice& each : all) {
            ++seen[std::string{advice::codeName(each.code)}];
            EXPECT_FALSE(each.text.empty());
            EXPECT_FALSE(each.because.empty());
            EXPECT_GE(each.on, household.asOf);
        }
    }
    for (const auto& [code, count] : seen) std::printf("%-18s %d\n", code.c_str(), count);
    EXPECT_GE(seen.size(), wanted == households ? 8u : 1u); // otherwise nothing was tested
}

/// In states that no household comes to the rules do clash, in nearly every way that is written down; what is told does not.
TEST(AdviceOfStrangeStacks, ClashesBeforeItIsSettledAndNeverAfter)
{
    const Pairs pairs = documented();
    std::mt19937 dice{20310502};
    std::map<std::string, int> before, byEffect, after;
    for (int number = 0; number < strangeStacks; ++number) {
        const StackReckoning stack = strange(dice);
        for (const auto& [what, count] : clashesOf(pairs, rawOf(stack))) before[what] += count;
        for (const auto& [what, count] : clashesByEffect(stack, rawOf(stack))) byEffect[what] += count;
        for (const auto& [what, count] : clashesOf(pairs, advice::adviceFor(stack))) after["by the table: " + what] += count;
        for (const auto& [what, count] : clashesByEffect(stack, advice::adviceFor(stack))) after[what] += count;
    }
    for (const auto& [what, count] : after) ADD_FAILURE() << what << ", " << count << " times";
    for (const auto& [what, count] : byEffect) std::printf("before it is settled: %-50s %d\n", what.c_str(), count);
    EXPECT_GE(byEffect.size(), 8u) << "the check by effect has seen what it forbids";
    for (const auto& [what, count] : before) std::printf("before it is settled: %-32s %d\n", what.c_str(), count);
    EXPECT_GE(before.size(), pairs.size() / 2) << "the check has seen what it forbids";
}

/// The program's pairs are those that are written down, and no others.
TEST(Contradictions, AreThoseOfTheTable)
{
    const Pairs pairs = documented();
    ASSERT_GE(pairs.size(), 15u);
    for (int a = 0; a < advice::codeCount; ++a)
        for (int b = 0; b < advice::codeCount; ++b) {
            Advice one, other;
            one.stack = other.stack = "Mill";
            one.code = Code{a};
            other.code = Code{b};
            const std::pair names{std::string{advice::codeName(one.code)}, std::string{advice::codeName(other.code)}};
            EXPECT_EQ(advice::contradict(one, other), pairs.contains(names) || pairs.contains({names.second, names.first})) << names.first << ", " << names.second;
            if (!pairs.contains(names)) continue;
            std::vector<Advice> both{other, one};
            advice::settleContradictions(both);
            ASSERT_EQ(both.size(), 1u) << names.first << ", " << names.second;
            EXPECT_EQ(both.front().code, one.code) << names.first << " stands";
            other.stack = "Loft";
            EXPECT_FALSE(advice::contradict(one, other)) << "of two stacks";
        }
}

/// Whatever the codes: what says to give none stands.
TEST(Contradictions, ToGiveNoneStandsAgainstToGive)
{
    Advice give, none;
    give.code = Code::tooEarly;
    give.food = Food::give;
    none.code = Code::heat;
    none.food = Food::withhold;
    EXPECT_TRUE(advice::contradict(give, none));
    EXPECT_TRUE(advice::contradict(none, give));
    std::vector<Advice> both{give, none};
    advice::settleContradictions(both);
    ASSERT_EQ(both.size(), 1u);
    EXPECT_EQ(both.front().code, Code::heat);
}

/// A bed that heats itself is not fed; one in a warm room is.
TEST(Contradictions, OwnWarmthStopsFeedingAndAWarmRoomDoesNot)
{
    StackReckoning stack = calm();
    stack.record.lastFeed = in(-9);
    since(stack, 0, [](StackEstimate& day) { day.binTempC = {30, 32, 33}; });
    stack.forecast.ownWarmthK = 4.0;
    EXPECT_NE(find(advice::adviceFor(stack), Code::heat), nullptr);
    EXPECT_EQ(find(advice::adviceFor(stack), Code::feedDue), nullptr);
    stack.forecast.ownWarmthK = 1.0;
    const std::vector<Advice> room = advice::adviceFor(stack);
    EXPECT_NE(find(room, Code::heat), nullptr);
    EXPECT_NE(find(room, Code::feedDue), nullptr);
}

TEST(Contradictions, FoodThatIsDueGoesIntoTheTrayThatWantsItAndIsToldOnce)
{
    StackReckoning stack = calm();
    stack.record.lastFeed = in(-9);
    stack.record.lastTrayAdded = in(-3);
    since(stack, -3, [](StackEstimate& day) { day.slots[0].castingsDepthCm = {1.0, 1.4, 1.8}; });
    const std::vector<Advice> all = advice::adviceFor(stack);
    const Advice* due = find(all, Code::feedDue);
    ASSERT_NE(due, nullptr);
    EXPECT_EQ(due->slot, 1) << "not into the new one";
    EXPECT_NE(due->because.find("came early"), std::string::npos);
    EXPECT_EQ(find(all, Code::tooEarly), nullptr);
}

/// Food that comes before they leave is what is borne on that day, not what would be on the day it falls due.
TEST(Contradictions, FoodBeforeLeavingIsWithinTheLimitOfThatDay)
{
    StackReckoning stack = calm();
    stack.record.lastFeed = in(-5); // due in two days, when what was given a week ago counts no more
    stack.record.fedKg = {0, 0, 0, 0, 0, 0.6, 0.2};
    stack.forecast.feedNowKg = 0.4;
    const auto at = [&] { return advice::adviceFor(stack); };
    const auto there = at();
    ASSERT_NE(find(there, Code::feedDue), nullptr);
    EXPECT_NEAR(find(there, Code::feedDue)->kg, 0.9, 1e-9);
    stack.record.nextAwayFrom = in(1);
    stack.record.nextAwayUntil = in(14);
    const auto leaving = at();
    ASSERT_NE(find(leaving, Code::feedDue), nullptr);
    EXPECT_EQ(find(leaving, Code::feedDue)->on, in(0));
    EXPECT_NEAR(find(leaving, Code::feedDue)->kg, 0.4, 1e-9);
    EXPECT_EQ(find(leaving, Code::feedDue)->text, "Feed at most 400 g this week");
    stack.forecast.feedNowKg = 0.02;
    const auto full = at();
    EXPECT_TRUE(find(full, Code::feedDue) == nullptr || find(full, Code::feedDue)->on == in(15)) << "nothing is borne before they leave";
    EXPECT_TRUE(clashesByEffect(stack, full).empty());
}

/// Each clash by effect is seen where it is planted.
TEST(Contradictions, APlantedClashIsSeenByItsEffect)
{
    const StackReckoning stack = calm();
    const auto piece = [](Code code) {
        Advice made;
        made.stack = "Mill";
        made.code = code;
        made.on = today;
        return made;
    };
    Advice feed = piece(Code::feedDue), paper = piece(Code::lowCarbon), water = piece(Code::tooDry), wet = piece(Code::tooWet), squeeze = piece(Code::tooDry), bits = piece(Code::lookNext);
    feed.food = Food::give;
    feed.kg = 1.6;
    paper.kg = 0.15;
    water.litres = 1.0;
    squeeze.look = LookKind::squeeze;
    bits.look = LookKind::bits;
    bits.forTurn = true;
    const auto seen = [&](std::vector<Advice> all) { return clashesByEffect(stack, all).size(); };
    EXPECT_EQ(seen({feed, paper, water, bits}), 0u);
    feed.kg = 1.7;
    EXPECT_EQ(seen({feed}), 1u) << "1.6 kg are the limit";
    paper.kg = 0.25;
    EXPECT_EQ(seen({paper}), 1u) << "6.4 L are free";
    EXPECT_EQ(seen({water, wet}), 1u);
    EXPECT_EQ(seen({squeeze, bits}), 1u);
    EXPECT_EQ(seen({bits, piece(Code::harvestReady)}), 1u);
    EXPECT_EQ(seen({piece(Code::trayFull), piece(Code::lowCarbon)}), 1u);
}

/// The check can fail: a planted clash is seen.
TEST(Contradictions, APlantedClashIsSeen)
{
    const Pairs pairs = documented();
    Advice feed, stop;
    feed.code = Code::feedDue;
    stop.code = Code::overfed;
    EXPECT_EQ(clashesOf(pairs, {feed, stop}).size(), 1u);
    stop.code = Code::sumpFull;
    EXPECT_TRUE(clashesOf(pairs, {feed, stop}).empty());
}

}
}
