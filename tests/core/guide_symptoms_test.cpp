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

double probability(const std::vector<Ranked>& ranked, Cause cause)
{
    for (const Ranked& each : ranked)
        if (each.cause == cause) return each.probability;
    return 0;
}

TEST(RankCauses, GivesThePriorsWhereNothingSpeaksForOneMoreThanForAnother)
{
    for (int s = 0; s < static_cast<int>(Symptom::count); ++s) {
        const auto symptom = static_cast<Symptom>(s);
        double priors = 0;
        for (int c = 0; c < static_cast<int>(Cause::count); ++c) priors += priorOf(symptom, static_cast<Cause>(c));
        EXPECT_NEAR(priors, 1.0, 1e-9) << eventWord(symptom);
        const auto ranked = rankCauses(symptom, goodStack(), goodCare());
        double sum = 0;
        for (const Ranked& each : ranked) {
            sum += each.probability;
            EXPECT_NEAR(each.probability, priorOf(symptom, each.cause), 0.04) << eventWord(symptom) << " " << static_cast<int>(each.cause);
        }
        EXPECT_NEAR(sum, 1.0, 1e-9);
        for (std::size_t i = 1; i < ranked.size(); ++i) EXPECT_GE(ranked[i - 1].probability, ranked[i].probability);
    }
}

// Bayes by hand: water at 1.2 of what the tray holds in every member shows fully, the other cause of standing water not at all:
// 0.44 · 14 against 0.44 · 0.12 and 0.12 · 0.12.
TEST(RankCauses, IsBayesByHand)
{
    reckoning::StackReckoning stack = goodStack();
    stack.now.slots[0].waterShare = band(1.2, 1.2, 1.2);
    const auto ranked = rankCauses(Symptom::standingWater, stack, goodCare());
    ASSERT_EQ(ranked.size(), 3u);
    EXPECT_EQ(ranked[0].cause, Cause::tooWet);
    const double wet = 0.44 * 14, sump = 0.44 * 0.12, fed = 0.12 * 0.12;
    EXPECT_NEAR(probability(ranked, Cause::tooWet), wet / (wet + sump + fed), 0.005);
    ASSERT_FALSE(ranked[0].evidence.empty());
    EXPECT_EQ(ranked[0].evidence[0].quantity, Quantity::waterShareMost);
    EXPECT_NEAR(ranked[0].evidence[0].value.p50, 1.2, 1e-9);
    EXPECT_TRUE(ranked[0].evidence[0].speaksFor);
    EXPECT_FALSE(ranked[1].evidence[0].speaksFor);
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
    void count(const std::vector<Ranked>& ranked, Cause planted)
    {
        const auto place = std::ranges::find(ranked, planted, &Ranked::cause) - ranked.begin();
        ++households;
        if (place == 0) ++first;
        if (place < 3) ++three;
    }
};

// The bar: the planted cause is first in 70 % and within the first three in 95 %. Blind to the stack, by priors alone, it must fail.
TEST(PlantedFaults, AreFoundFirstOrWithinTheFirstThree)
{
    constexpr std::uint64_t series = 0x77aa; // thresholds were looked at on another series
    const int households = std::getenv("TIERLOAM_LONG") ? 260 : 39;
    Score seen, blind;
    std::map<Cause, Score> by;
    for (int number = 0; number < households; ++number) {
        const tests::Faulty faulty = tests::makeFaulty(series, number);
        const auto reckoned = tests::reckonHousehold(faulty.household, std::max(TIERLOAM_TEST_MEMBERS, 64));
        const auto replay = journal::replay(faulty.household.entries);
        const auto table = materials::Table::withOwn(faulty.household.entries);
        const auto ranked = rankCauses(faulty.symptom, *reckoned.stack, circumstancesOf(faulty.household.entries, replay.stacks.front(), table, faulty.household.asOf));
        seen.count(ranked, faulty.cause);
        by[faulty.cause].count(ranked, faulty.cause);
        blind.count(rankCauses(faulty.symptom, goodStack(), goodCare()), faulty.cause);
    }
    std::printf("planted cause first in %.3f, within three in %.3f of %d households; by priors alone %.3f, %.3f\n", double(seen.first) / households,
                double(seen.three) / households, households, double(blind.first) / households, double(blind.three) / households);
    for (const auto& [cause, one] : by) std::printf("  cause %d: first %d, within three %d of %d\n", static_cast<int>(cause), one.first, one.three, one.households);
    EXPECT_GE(seen.first, 0.70 * households);
    EXPECT_GE(seen.three, 0.95 * households);
    EXPECT_LT(blind.first, 0.70 * households) << "a ranking that knows nothing of the stack must fail";
}

}
