#include "core/household/batch_story.h"
#include "tests/core/household_fixture.h"

namespace tierloam::household {

namespace {

const Day first = day(2031, 1, 1);

journal::Entry at(int days, journal::Action action, std::optional<int> slot = {}, std::string note = {})
{
    journal::Entry made = entry(std::move(action), first + std::chrono::days{days}, "Mill");
    made.slot = slot;
    made.note = std::move(note);
    return made;
}

std::vector<BatchStory> told(const journal::Entries& entries, int upToDays)
{
    const journal::Replay replay = journal::replay(entries);
    EXPECT_TRUE(replay.refusals.empty());
    return batchStories(*replay.stack("Mill"), entries, materials::Table::builtIn(), first + std::chrono::days{upToDays});
}

const journal::Entries life{at(0, journal::Setup{}),
                            at(0, journal::Bed{{600, Unit::g}, "corrugated cardboard shredded", {}}),
                            at(1, journal::Stock{{400, Unit::g}, {}, {}}),
                            at(7, journal::Feed{{300, Unit::g}, {}, {}}),
                            at(14, journal::Feed{{1, Unit::L}, {}, {}}, {}, "smelled sour"),
                            at(20, journal::Check{centimetres(2.0), {}, {}, {}}),
                            at(60, journal::Bed{{0.5, Unit::kg}, "corrugated cardboard shredded", {}}),
                            at(63, journal::Feed{{200, Unit::g}, {}, {}}),
                            at(70, journal::Check{{}, Share::fromPercent(10), {}, {}}, 1),
                            at(200, journal::Rotate{}),
                            at(206, journal::Harvest{{2.5, Unit::kg}, {}, Share::fromPercent(50)}),
                            at(207, journal::Harvest{{3, Unit::L}, {}, {}})};

}

TEST(HouseholdBatchStory, TellsWhatWasDoneToEachBatch)
{
    const auto stories = told(life, 300);
    ASSERT_EQ(stories.size(), 2u);
    const BatchStory& one = stories[0];
    EXPECT_EQ(one.batch, 1);
    EXPECT_EQ(one.tray, 1);
    EXPECT_NEAR(one.beddingKg, 0.6, 1e-9);
    EXPECT_EQ(one.feedings, 2);
    const double litre = materials::Table::builtIn().find(journal::defaultFood)->bulkKgPerM3 / 1000.0;
    EXPECT_NEAR(one.fedKg, 0.3 + litre, 1e-9);
    ASSERT_EQ(one.fedKgByWeek.size(), 3u);
    EXPECT_EQ(one.fedKgByWeek[0], 0);
    EXPECT_NEAR(one.fedKgByWeek[1], 0.3, 1e-9);
    EXPECT_NEAR(one.fedKgByWeek[2], litre, 1e-9);
    EXPECT_EQ(one.looks, 2);
    EXPECT_EQ(one.lastLook, first + std::chrono::days{70});
    EXPECT_EQ(one.lifted, first + std::chrono::days{200});
    EXPECT_EQ(one.ended, first + std::chrono::days{207});
    EXPECT_EQ(one.daysUntil(first + std::chrono::days{300}), 207);
    EXPECT_NEAR(one.takenKg, 2.5, 1e-9);
    EXPECT_NEAR(one.takenL, 3.0, 1e-9);
    // Bedding, worms put in, the feeding with a note, two looks, the lift, two harvests.
    EXPECT_EQ(one.told, (std::vector<std::size_t>{1, 2, 4, 5, 8, 9, 10, 11}));
    EXPECT_EQ(stories[1].feedings, 1);
    EXPECT_FALSE(stories[1].ended || stories[1].lifted);
}

TEST(HouseholdBatchStory, OfOneBatchIsThatOfAll)
{
    const journal::Replay replay = journal::replay(life);
    const journal::StackHistory& history = *replay.stack("Mill");
    for (const int upTo : {13, 14, 63, 205, 300}) {
        for (const BatchStory& one : told(life, upTo)) {
            const BatchStory alone = batchStory(history.batch(one.batch), history, life, materials::Table::builtIn(), first + std::chrono::days{upTo});
            EXPECT_EQ(alone.fedKgByWeek, one.fedKgByWeek) << upTo;
            EXPECT_EQ(alone.told, one.told) << upTo;
            EXPECT_EQ(alone.beddingKg, one.beddingKg);
            EXPECT_EQ(alone.ended, one.ended);
        }
    }
    EXPECT_EQ(told(life, 13)[0].fedKgByWeek.size(), 2u) << "the feeding of day 14 is not yet";
}

TEST(HouseholdBatchStory, OfABatchThatStoodToTheLastEndsWithItsStack)
{
    journal::Entries entries = life;
    entries.push_back(at(250, journal::Retire{}));
    const auto before = told(entries, 249), after = told(entries, 400);
    ASSERT_EQ(after.size(), 2u);
    EXPECT_FALSE(before[1].retired);
    EXPECT_EQ(before[1].daysUntil(first + std::chrono::days{249}), 189);
    EXPECT_FALSE(after[0].retired) << "harvested before";
    EXPECT_EQ(after[1].retired, first + std::chrono::days{250});
    EXPECT_EQ(after[1].daysUntil(first + std::chrono::days{400}), 190) << "bedded on day 60; no day counts after the stack";
    const journal::Replay replay = journal::replay(entries);
    const journal::StackHistory& history = *replay.stack("Mill");
    EXPECT_EQ(batchStory(history.batch(2), history, entries, materials::Table::builtIn(), first + std::chrono::days{400}).retired, after[1].retired);
}

TEST(HouseholdBatchStory, EndsWithTheDayAskedFor)
{
    const auto stories = told(life, 205);
    ASSERT_EQ(stories.size(), 2u);
    EXPECT_FALSE(stories[0].ended);
    EXPECT_EQ(stories[0].takenKg, 0);
    EXPECT_EQ(stories[0].daysUntil(first + std::chrono::days{205}), 205);
    EXPECT_EQ(told(life, 59).size(), 1u);
}

}
