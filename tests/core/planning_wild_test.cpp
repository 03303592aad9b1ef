// What advice and plans say of journals that nobody writes: figures stay figures, and nothing is said that cannot be.
#include "core/advice/diary.h"
#include "core/advice/rules.h"
#include "core/planning/changes.h"
#include "core/planning/feeding_plan.h"
#include "core/planning/turn_clock.h"
#include "core/planning/year_plan.h"
#include "core/reckoning/reckon.h"
#include "tests/support/wild_journal.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cctype>
#include <cstdlib>

namespace tierloam::planning {
namespace {

using reckoning::Reckoning;
using reckoning::StackReckoning;

/// A figure that is none, as a text would show it.
bool showsNoFigure(const std::string& text)
{
    std::string word;
    for (const char each : text + ' ') {
        if (std::isalpha(static_cast<unsigned char>(each))) {
            word += static_cast<char>(std::tolower(static_cast<unsigned char>(each)));
            continue;
        }
        if (word == "nan" || word == "inf" || word == "infinity") return true;
        word.clear();
    }
    return text.find("e+") != std::string::npos;
}

bool inOrder(const reckoning::Band& band) { return std::isfinite(band.p05) && band.p05 <= band.p50 && band.p50 <= band.p95 && std::isfinite(band.p95); }

TEST(Wild, AdviceAndPlansOfWhateverIsWrittenDownAreFiguresThatCanBe)
{
    const materials::Table materials = materials::Table::builtIn();
    int said = 0;
    const unsigned journals = std::getenv("TIERLOAM_LONG") != nullptr ? 60 : TIERLOAM_TEST_MEMBERS < 128 ? 1 : 4;
    for (unsigned seed = 1; seed <= journals; ++seed) {
        const journal::Entries entries = tests::anything(seed, 250);
        const journal::Replay replay = journal::replay(entries);
        reckoning::Options options;
        options.asOf = entries.back().date.day;
        options.members = 128;
        const std::shared_ptr<const Reckoning> all = reckoning::reckon(entries, options);
        for (const StackReckoning& stack : all->stacks) {
            const std::string where = std::to_string(seed) + ' ' + stack.name;
            std::vector<advice::Advice> told = advice::adviceFor(stack);
            for (const advice::DiaryLine& line : advice::diaryOf(stack, entries, *replay.stack(stack.name), materials)) told.push_back(line.advice);
            for (const advice::Advice& each : told) {
                ++said;
                EXPECT_FALSE(showsNoFigure(each.text) || showsNoFigure(each.because)) << where << ": " << each.text << " — " << each.because;
                EXPECT_TRUE(std::isfinite(each.litres) && each.litres >= 0.0) << where << ": " << each.text;
            }
            EXPECT_TRUE(std::isfinite(stack.forecast.feedHighKg) && stack.forecast.feedHighKg >= 0.0) << where;
            EXPECT_LE(stack.forecast.feedLowKg, stack.forecast.feedHighKg) << where;
            EXPECT_LE(stack.forecast.feedUsualKg, stack.forecast.feedHighKg) << where;
            const auto clock = turnClock(stack, 1);
            ASSERT_TRUE(clock) << where;
            for (const Lever& lever : clock->levers) EXPECT_TRUE(inOrder(lever.daysGained) && std::isfinite(lever.amount)) << where;
            if (const auto absence = prepareAbsence(stack, options.asOf + std::chrono::days{3}, options.asOf + std::chrono::days{17}, 1)) {
                EXPECT_TRUE(absence->feedKg >= 0.0 && absence->waterL >= 0.0 && std::isfinite(absence->feedKg + absence->waterL)) << where;
                for (const double chance : {absence->left.dryChance, absence->left.hungryChance, absence->usual.dryChance, absence->usual.hungryChance}) EXPECT_TRUE(chance >= 0.0 && chance <= 1.0) << where;
            }
            if (const auto give = mostToGiveAway(stack, 90, 1)) {
                EXPECT_TRUE(give->share >= 0.0 && give->share <= 1.0 && std::isfinite(give->kg)) << where;
            }
            if (const auto way = shortestWayBack(stack, 1)) {
                for (const auto& from : way->feed) EXPECT_TRUE(std::isfinite(from.kgPerWeek) && from.kgPerWeek >= 0.0) << where;
            }
        }
        const double supply = learnedSupply(entries, materials, options.asOf);
        EXPECT_TRUE(std::isfinite(supply) && supply >= 0.0) << seed;
        const FeedingPlan plan = planFeeding(*all, entries, materials, supply);
        double given = plan.leftOver;
        for (const StackFeeding& each : plan.stacks) {
            EXPECT_TRUE(std::isfinite(each.kg) && each.kg >= 0.0) << seed << ' ' << each.stack;
            EXPECT_TRUE(std::isfinite(each.with.paperKg) && each.with.paperKg >= 0.0) << seed << ' ' << each.stack;
            given += each.kg;
        }
        EXPECT_NEAR(given, supply, 0.011) << seed;
        EXPECT_TRUE(planYear(*all, {}, 1).has_value()) << seed;
    }
    EXPECT_GT(said, 0);
    EXPECT_TRUE(showsNoFigure("colony nan kg") && showsNoFigure("from 0.2 to inf") && showsNoFigure("1.2e+09 L"));
    EXPECT_FALSE(showsNoFigure("information of Nancy: 1.2 kg"));
}

}
}
