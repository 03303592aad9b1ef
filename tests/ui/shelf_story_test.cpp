#include "core/reckoning/drained.h"
#include "tests/support/sample_shelf.h"
#include "ui/shelf/part_story.h"
#include "ui/shelf/shelf_series.h"

#include <gtest/gtest.h>

using namespace tierloam;
using namespace tierloam::shelf;
using std::chrono::days;

namespace {

struct Asked {
    ShelfInputs shelf = tests::sampleInputs();

    StoryInputs of(const std::string& stack, int daysBack = 0) const
    {
        const journal::StackHistory* history = shelf.journal->replay.stack(stack);
        const Day shown = tests::sampleToday() - days{daysBack};
        return {*shelf.journal, *history, *history->on(shown), shelf.reckoning ? shelf.reckoning->stack(stack) : nullptr, tests::sampleToday(), shown};
    }
};

QString valueOf(const Facts& facts, const QString& name)
{
    for (const auto& fact : facts)
        if (fact.first == name) return fact.second;
    return {};
}

}

TEST(TrayStory, FoodAddsUpToWhatTheJournalSaysWentIntoTheBatch)
{
    const Asked asked;
    const StoryInputs inputs = asked.of("Scullery");
    for (int slot = 1; slot <= 3; ++slot) {
        double inJournal = 0, inBars = 0;
        for (const journal::Step& step : inputs.history.steps)
            if (const auto* feed = std::get_if<journal::Feed>(&inputs.journal.entries[step.entry].action); feed && step.batch == inputs.standing.batchIn(slot)) inJournal += feed->food.mass()->base();
        const PartStory story = trayStory(inputs, slot);
        for (const auto& bar : story.bars.bars) {
            inBars += bar.measured.value_or(0);
            EXPECT_LE(bar.measured.value_or(0), story.bars.top);
        }
        EXPECT_NEAR(inBars, inJournal, 1e-9) << slot;
        EXPECT_GT(inJournal, 0) << slot;
        EXPECT_EQ(story.bars.bars.front().from, inputs.history.batch(inputs.standing.batchIn(slot)).bedded);
        EXPECT_TRUE(valueOf(story.facts, QStringLiteral("Put in, as it came")).contains(QStringLiteral("of food"))) << slot;
    }
}

TEST(TrayStory, RatioRunsFromTheBeddingToTodayOnALogAxisWithTheReadyLine)
{
    const Asked asked;
    const PartStory story = trayStory(asked.of("Scullery"), 1);
    ASSERT_EQ(story.strips.size(), 2U);
    const drawing::Strip& ratio = story.strips[1];
    EXPECT_TRUE(ratio.log);
    ASSERT_TRUE(ratio.level);
    EXPECT_DOUBLE_EQ(ratio.level->value, 0.10);
    EXPECT_EQ(ratio.points.back().day, tests::sampleToday());
    EXPECT_DOUBLE_EQ(ratio.points.back().middle, asked.shelf.reckoning->stack("Scullery")->now.slots[0].feedToCast.p50);
    EXPECT_EQ(story.axis.from, tests::sampleToday() - days{214});
    EXPECT_FALSE(story.axis.future) << "there is no forecast in the sample";
    EXPECT_TRUE(story.chartsText.contains(QStringLiteral("0.07")));
}

TEST(TrayStory, ForecastIsShownOnTodaysShelfAlone)
{
    Asked asked;
    auto reckoned = std::make_shared<reckoning::Reckoning>(*asked.shelf.reckoning);
    reckoning::StackReckoning& stack = reckoned->stacks.front();
    for (int week = 1; week <= 52; ++week) {
        stack.forecast.days.push_back(stack.now);
        stack.forecast.days.back().day += days{7 * week};
    }
    asked.shelf.reckoning = reckoned;
    const PartStory today = trayStory(asked.of(stack.name), 2);
    ASSERT_EQ(today.axis.future, tests::sampleToday());
    EXPECT_GT(today.strips[1].points.back().day, tests::sampleToday());
    EXPECT_LE(today.strips[1].points.back().day, today.axis.to);
    EXPECT_LE(today.axis.to, tests::sampleToday() + days{120}) << "the past is not pressed together";
    const PartStory before = trayStory(asked.of(stack.name, 30), 2);
    EXPECT_FALSE(before.axis.future);
    for (const auto& point : before.strips[1].points) EXPECT_LE(point.day, tests::sampleToday() - days{30});
    for (const auto& bar : before.bars.bars) EXPECT_LE(bar.from, tests::sampleToday() - days{30});
}

TEST(TrayStory, SaysWhyAStepIsEarlyOrImpossible)
{
    const Asked asked;
    EXPECT_TRUE(trayStory(asked.of("Scullery"), 1).reasons.join(u' ').contains(QStringLiteral("its turn has not come")));
    EXPECT_TRUE(trayStory(asked.of("Lean-to"), 1).reasons.join(u' ').contains(QStringLiteral("Too early to lift")));
    EXPECT_TRUE(trayStory(asked.of("Scullery"), 2).reasons.join(u' ').contains(QStringLiteral("only the tray in slot 1")));
    EXPECT_TRUE(stackStory(asked.of("Scullery")).reasons.join(u' ').contains(QStringLiteral("no tray is spare")));
    EXPECT_TRUE(stackStory(asked.of("Lean-to")).reasons.join(u' ').contains(QStringLiteral("Too early for another tray")));
}

TEST(TrayStory, AHeavyTrayBringsTheLiftingCaution)
{
    Asked asked;
    const auto lifting = [](const PartStory& story) {
        return std::any_of(story.cautions.begin(), story.cautions.end(), [](const forms::Caution& each) { return each.topic == forms::CautionTopic::lifting; });
    };
    EXPECT_FALSE(lifting(trayStory(asked.of("Scullery"), 1)));
    auto heavy = std::make_shared<reckoning::Reckoning>(*asked.shelf.reckoning);
    heavy->stacks.front().now.slots[0].weightKg = {22, 26, 30};
    asked.shelf.reckoning = heavy;
    const PartStory story = trayStory(asked.of("Scullery"), 1);
    ASSERT_TRUE(lifting(story));
    EXPECT_TRUE(story.cautions.front().text.contains(QStringLiteral("26\u00a0kg (22–30)"))) << story.cautions.front().text.toStdString();
}

TEST(SumpStory, HasItsLevelItsDrainsAndItsCaution)
{
    const Asked asked;
    const StoryInputs inputs = asked.of("Lean-to");
    const PartStory story = sumpStory(inputs);
    ASSERT_EQ(story.strips.size(), 1U);
    EXPECT_DOUBLE_EQ(story.strips[0].level->value, 4.0);
    EXPECT_NEAR(story.strips[0].points.back().middle, 3.2, 1e-9);
    double inBars = 0, inJournal = 0;
    for (const auto& bar : story.bars.bars) inBars += bar.measured.value_or(0);
    for (const journal::Step& step : inputs.history.steps)
        if (const auto litres = reckoning::drainedBy(inputs.journal.entries[step.entry]); litres && step.day >= story.bars.bars.front().from) inJournal += *litres;
    EXPECT_NEAR(inBars, inJournal, 1e-9);
    EXPECT_GT(inBars, 0);
    EXPECT_TRUE(valueOf(story.facts, QStringLiteral("Drained last")).contains(QStringLiteral("27 Apr")));
    ASSERT_FALSE(story.cautions.isEmpty());
    EXPECT_EQ(story.cautions.front().topic, forms::CautionTopic::leachate);
}

// A line along the bottom says what it is: with the spigot open none will ever rise, and none is foretold.
TEST(SumpStory, ForetellsALevelOnlyWhereTheSpigotIsShut)
{
    Asked asked;
    auto empty = std::make_shared<reckoning::Reckoning>(*asked.shelf.reckoning);
    for (reckoning::StackReckoning& stack : empty->stacks) {
        stack.now.sumpL = {0.01, 0.02, 0.05};
        for (reckoning::StackEstimate& day : stack.history) day.sumpL = {0.01, 0.02, 0.05};
        for (auto& day : stack.forecast.days) day.sumpL = {0.01, 0.02, 0.05};
    }
    asked.shelf.reckoning = empty;
    const StoryInputs given = asked.of("Lean-to");
    const QString rises = QStringLiteral("Here rises a line"), open = QStringLiteral("The spigot is open");
    for (const auto spigot : {journal::Spigot::open, journal::Spigot::shut}) {
        journal::Standing standing = given.standing;
        standing.spigot = spigot;
        const PartStory story = sumpStory({given.journal, given.history, standing, given.reckoning, given.today, given.shown});
        const bool isOpen = spigot == journal::Spigot::open;
        EXPECT_EQ(story.strips[0].nothing.contains(open), isOpen) << story.strips[0].nothing.toStdString();
        EXPECT_EQ(story.strips[0].level.has_value(), !isOpen) << "where nothing rises no line says how high is full";
        EXPECT_EQ(story.strips[0].nothing.contains(rises), !isOpen);
        EXPECT_EQ(story.chartsText.contains(rises), !isOpen);
    }
}

TEST(PartStories, NothingIsMadeUpWithoutEstimates)
{
    Asked asked;
    asked.shelf.reckoning = nullptr;
    const PartStory tray = trayStory(asked.of("Scullery"), 1), sump = sumpStory(asked.of("Scullery"));
    EXPECT_TRUE(tray.strips[0].points.empty() && tray.strips[1].points.empty() && sump.strips[0].points.empty());
    EXPECT_FALSE(tray.bars.bars.empty()) << "what went in is known from the journal";
    EXPECT_TRUE(tray.chartsText.contains(QStringLiteral("being made")));
}
