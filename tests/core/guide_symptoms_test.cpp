// From symptom to cause: the arithmetic, and drawn households with a planted fault.
#include "core/guide/symptoms.h"
#include "tests/support/faults.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cstdlib>
#include <map>
#include <numeric>

using namespace tierloam;
using namespace tierloam::guide;

namespace {

reckoning::Band band(double low, double middle, double high) { return {low, middle, high}; }

/// A stack in good order, by its bands alone.
reckoning::StackReckoning goodStack()
{
    reckoning::StackReckoning stack;
    stack.name = "Mill";
    reckoning::TrayEstimate tray;
    tray.slot = 1;
    tray.ageDays = 150;
    tray.waterShare = band(0.85, 0.95, 1.0);
    tray.air = 0.97;
    stack.now.slots = {tray};
    stack.now.colonyKg = band(0.2, 0.25, 0.3);
    stack.now.binTempC = band(18, 20, 22);
    stack.now.sumpL = band(0.5, 1.0, 1.5);
    stack.now.ration = band(0.9, 1.1, 1.4);
    stack.record.areaM2 = 0.16;
    stack.record.sumpCapacityL = 4;
    return stack;
}

Circumstances goodCare()
{
    Circumstances care;
    care.fedKg14 = 0.8;
    care.feedings21 = 3;
    care.carbonToNitrogen = 28;
    care.daysSinceFed = 3;
    care.daysSinceDisturbed = 60;
    care.ageDays = 300;
    return care;
}

double probability(const Ranking& ranking, Cause cause)
{
    for (const Ranked& each : ranking.causes)
        if (each.cause == cause) return each.probability;
    return 0;
}

void expectWhole(const Ranking& ranking)
{
    double sum = ranking.elsewhere;
    for (const Ranked& each : ranking.causes) sum += each.probability;
    EXPECT_NEAR(sum, 1.0, 1e-9);
    for (std::size_t i = 1; i < ranking.causes.size(); ++i) EXPECT_GE(ranking.causes[i - 1].probability, ranking.causes[i].probability);
}

// The record of a stack in good order speaks against every cause: for no symptom is one of them likely enough for its remedy, and the old
// stack is not young at all.
TEST(RankCauses, SaysSomethingElseWhereTheRecordShowsNoneOfTheCauses)
{
    for (int s = 0; s < static_cast<int>(Symptom::count); ++s) {
        const auto symptom = static_cast<Symptom>(s);
        double priors = 0;
        for (int c = 0; c < static_cast<int>(Cause::count); ++c) priors += priorOf(symptom, static_cast<Cause>(c));
        EXPECT_NEAR(priors, 1.0, 1e-9) << eventWord(symptom);
        const Ranking ranking = rankCauses(symptom, goodStack(), goodCare());
        expectWhole(ranking);
        EXPECT_GT(ranking.elsewhere, 0.75) << eventWord(symptom);
        for (const Ranked& each : ranking.causes) {
            EXPECT_FALSE(each.isWorthARemedy()) << eventWord(symptom) << " " << static_cast<int>(each.cause) << ": " << each.probability;
            for (const Evidence& evidence : each.evidence) EXPECT_FALSE(evidence.speaksFor) << eventWord(symptom);
        }
        EXPECT_EQ(probability(ranking, Cause::young), 0.0) << eventWord(symptom);
    }
}

// As the keeper of a stack 370 days old met it: always covered, driest tray at 99 % (87 to 100).
TEST(RankCauses, TakesItsChanceFromWhatTheRecordRulesOut)
{
    reckoning::StackReckoning stack = goodStack();
    stack.now.slots[0].waterShare = band(0.87, 0.99, 1.0);
    Circumstances care = goodCare();
    care.ageDays = 370;
    const Ranking few = rankCauses(Symptom::fewWorms, stack, care);
    EXPECT_LT(probability(few, Cause::tooDry), 0.05);
    EXPECT_EQ(probability(few, Cause::young), 0.0);
    const Ranking flies = rankCauses(Symptom::flies, stack, care);
    EXPECT_LT(probability(flies, Cause::overfed), 0.06);
    EXPECT_LT(probability(flies, Cause::uncovered), 0.08);
    for (const Ranking& ranking : {few, flies}) EXPECT_GT(ranking.elsewhere, 0.8);
}

struct State {
    const char* what;
    Symptom symptom;
    Cause first;
    void (*make)(reckoning::StackReckoning&, Circumstances&);
};

TEST(RankCauses, PutsFirstWhatTheRecordShows)
{
    const State states[] = {
        {"dry", Symptom::fewWorms, Cause::tooDry, [](auto& stack, auto&) { stack.now.slots[0].waterShare = band(0.40, 0.50, 0.60); }},
        {"dry, pressed", Symptom::ants, Cause::tooDry, [](auto&, auto& care) { care.squeeze = 1; }},
        {"wet", Symptom::smell, Cause::tooWet, [](auto& stack, auto&) { stack.now.slots[0].waterShare = band(1.1, 1.15, 1.2); }},
        {"overfed", Symptom::flies, Cause::overfed, [](auto& stack, auto& care) { care.fedKg14 = 4; stack.now.slots[0].air = 0.6; }},
        {"young", Symptom::fewWorms, Cause::young, [](auto&, auto& care) { care.ageDays = 20; }},
        {"uncovered", Symptom::flies, Cause::uncovered, [](auto&, auto& care) { care.uncoveredShare = 1; }},
    };
    for (const State& state : states) {
        reckoning::StackReckoning stack = goodStack();
        Circumstances care = goodCare();
        state.make(stack, care);
        const Ranking ranking = rankCauses(state.symptom, stack, care);
        expectWhole(ranking);
        ASSERT_FALSE(ranking.causes.empty());
        EXPECT_EQ(ranking.causes.front().cause, state.first) << state.what;
        EXPECT_GT(ranking.causes.front().probability, 0.7) << state.what;
        EXPECT_TRUE(ranking.causes.front().isWorthARemedy()) << state.what;
        EXPECT_LT(ranking.elsewhere, 0.2) << state.what;
        ASSERT_FALSE(ranking.causes.front().evidence.empty());
        EXPECT_TRUE(ranking.causes.front().evidence.front().speaksFor) << state.what;
    }
}

// Bayes by hand: water at 1.2 of what the tray holds in every member shows fully, the other causes of standing water not at all:
// 0.44 · 14 against 0.44 · 0.04 and 0.12 · 0.04, all of four fifths, and the fifth that comes of something else.
TEST(RankCauses, IsBayesByHand)
{
    reckoning::StackReckoning stack = goodStack();
    stack.now.slots[0].waterShare = band(1.2, 1.2, 1.2);
    const Ranking ranking = rankCauses(Symptom::standingWater, stack, goodCare());
    ASSERT_EQ(ranking.causes.size(), 3u);
    EXPECT_EQ(ranking.causes[0].cause, Cause::tooWet);
    const double wet = 0.8 * 0.44 * 14, sump = 0.8 * 0.44 * 0.04, fed = 0.8 * 0.12 * 0.04, sum = wet + sump + fed + 0.2;
    EXPECT_NEAR(probability(ranking, Cause::tooWet), wet / sum, 0.002);
    EXPECT_NEAR(ranking.elsewhere, 0.2 / sum, 0.002);
    ASSERT_FALSE(ranking.causes[0].evidence.empty());
    EXPECT_EQ(ranking.causes[0].evidence[0].quantity, Quantity::waterShareMost);
    EXPECT_NEAR(ranking.causes[0].evidence[0].value.p50, 1.2, 1e-9);
    EXPECT_TRUE(ranking.causes[0].evidence[0].speaksFor);
    EXPECT_FALSE(ranking.causes[1].evidence[0].speaksFor);
}

TEST(RankCauses, IsLessSureWhereTheMembersDisagree)
{
    reckoning::StackReckoning sure = goodStack(), unsure = goodStack();
    sure.now.binTempC = band(33, 34, 35);
    unsure.now.binTempC = band(20, 29, 38);
    const double p = probability(rankCauses(Symptom::wormsDying, sure, goodCare()), Cause::tooHot);
    const double q = probability(rankCauses(Symptom::wormsDying, unsure, goodCare()), Cause::tooHot);
    EXPECT_GT(p, q);
    EXPECT_GT(q, priorOf(Symptom::wormsDying, Cause::tooHot));
    EXPECT_GT(p, 0.85);
}

TEST(Circumstances, AreReadOffTheJournal)
{
    const Day today{std::chrono::year{2031} / 5 / 1};
    journal::Entries entries;
    std::int64_t number = 0;
    const auto add = [&](int ago, journal::Action action) {
        journal::Entry entry;
        entry.id = journal::EntryId{++number};
        entry.date.day = today - std::chrono::days{ago};
        entry.positionInDay = number;
        entry.stack = "Mill";
        entry.action = std::move(action);
        entries.push_back(entry);
    };
    add(100, journal::Setup{});
    add(100, journal::Bed{{480, Unit::g}, "corrugated cardboard shredded", {}});
    add(100, journal::Stock{{400, Unit::g}, {}, {}});
    add(40, journal::Feed{{900, Unit::g}, {}, {}});            // too long ago for any window
    add(20, journal::Feed{{1, Unit::kg}, "coffee grounds", {}}); // bare
    add(10, journal::Feed{{600, Unit::g}, "meat", {}});
    add(10, journal::Cover{});
    add(4, journal::Feed{{400, Unit::g}, "onion", {}});
    add(3, journal::Cover{});                                  // the day after counts
    add(2, journal::Reading{{}, {}, {}, {}, 5, {}});
    const journal::Replay replay = journal::replay(entries);
    ASSERT_TRUE(replay.refusals.empty());
    const Circumstances care = circumstancesOf(entries, replay.stacks.front(), materials::Table::builtIn(), today);
    EXPECT_NEAR(care.fedKg14, 1.0, 1e-9);
    EXPECT_NEAR(care.doubtfulShare, (0.6 + 0.4 / 3) / 2.0, 1e-9);
    EXPECT_EQ(care.feedings21, 3);
    EXPECT_NEAR(care.uncoveredShare, 1.0 / 3, 1e-9);
    EXPECT_EQ(care.daysSinceFed, 4);
    EXPECT_EQ(care.daysSinceDisturbed, 100);
    EXPECT_EQ(care.squeeze, 5);
    EXPECT_EQ(care.ageDays, 100);
    ASSERT_TRUE(care.carbonToNitrogen);
    EXPECT_GT(*care.carbonToNitrogen, 7);
    EXPECT_LT(*care.carbonToNitrogen, 40);
}

struct Score {
    int households = 0, first = 0, three = 0;
    void count(const Ranking& ranking, Cause planted)
    {
        const auto place = std::ranges::find(ranking.causes, planted, &Ranked::cause) - ranking.causes.begin();
        ++households;
        if (place == 0) ++first;
        if (place < 3) ++three;
    }
};

/// How the chance of the answer that is told first, something else among the answers, compares with how often it is right.
struct Reliability {
    int answers = 0, right = 0;
    double told = 0;
    void count(const Ranking& ranking, std::optional<Cause> truth)
    {
        const Ranked& first = ranking.causes.front();
        const bool elsewhere = ranking.elsewhere >= first.probability;
        ++answers;
        told += elsewhere ? ranking.elsewhere : first.probability;
        if (truth ? !elsewhere && first.cause == *truth : elsewhere) ++right;
    }
};

Ranking rankingOf(const tests::MadeUp& household, Symptom symptom)
{
    const auto reckoned = tests::reckonHousehold(household, std::max(TIERLOAM_TEST_MEMBERS, 64));
    const auto replay = journal::replay(household.entries);
    const auto table = materials::Table::withOwn(household.entries);
    return rankCauses(symptom, *reckoned.stack, circumstancesOf(household.entries, replay.stacks.front(), table, household.asOf));
}

/// How often each fault is planted: 3 times, 20 with TIERLOAM_LONG, once where TIERLOAM_HOUSEHOLDS asks for one (under sanitizers).
int timesPlanted()
{
    if (const char* wanted = std::getenv("TIERLOAM_HOUSEHOLDS")) return std::clamp(std::atoi(wanted), 1, 20);
    return std::getenv("TIERLOAM_LONG") != nullptr ? 20 : 3;
}

// The bar: the planted cause is first in 70 % and within the first three in 95 %. Blind to the stack, by priors alone, it must fail.
TEST(PlantedFaults, AreFoundFirstOrWithinTheFirstThree)
{
    constexpr std::uint64_t series = 0x77aa; // thresholds were looked at on another series
    const int households = timesPlanted() * static_cast<int>(Cause::count);
    Score seen, blind;
    Reliability answers;
    int passedOver = 0; // planted, and its remedy not offered
    std::map<Cause, Score> by;
    for (int number = 0; number < households; ++number) {
        const tests::Faulty faulty = tests::makeFaulty(series, number);
        const Ranking ranked = rankingOf(faulty.household, faulty.symptom);
        seen.count(ranked, faulty.cause);
        by[faulty.cause].count(ranked, faulty.cause);
        blind.count(rankCauses(faulty.symptom, goodStack(), goodCare()), faulty.cause);
        answers.count(ranked, faulty.cause);
        if (probability(ranked, faulty.cause) < 0.10) ++passedOver;
        // One symptom in five comes of something else: to four households with a fault one in which none was planted.
        if (number % 4 == 3) answers.count(rankingOf(tests::makeHousehold(series + 1, number), static_cast<Symptom>(number / 4 % static_cast<int>(Symptom::count))), {});
    }
    std::printf("planted cause first in %.3f, within three in %.3f of %d households; by priors alone %.3f, %.3f\n", double(seen.first) / households,
                double(seen.three) / households, households, double(blind.first) / households, double(blind.three) / households);
    std::printf("chance of the first answer as told %.3f, right %.3f of %d; planted and without its remedy %d\n", answers.told / answers.answers,
                double(answers.right) / answers.answers, answers.answers, passedOver);
    for (const auto& [cause, one] : by) std::printf("  cause %d: first %d, within three %d of %d\n", static_cast<int>(cause), one.first, one.three, one.households);
    EXPECT_GE(seen.first, 0.70 * households);
    EXPECT_GE(seen.three, 0.95 * households);
    EXPECT_NEAR(answers.told / answers.answers, double(answers.right) / answers.answers, 0.15) << "a chance that is told is how often it comes true";
    EXPECT_LE(passedOver, 0.10 * households);
    EXPECT_LT(blind.first, 0.70 * households) << "a ranking that knows nothing of the stack must fail";
}

}
