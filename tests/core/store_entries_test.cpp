#include "tests/core/store_samples.h"

#include <bit>
#include <set>

namespace tierloam::store {

namespace {

using namespace samples;
using journal::EntryId;

TEST(StoreEntries, EveryActionComesBackBitForBit)
{
    const Place place;
    const auto all = everyAction();
    std::set<std::size_t> kinds;
    for (const auto& one : all) kinds.insert(one.action.index());
    ASSERT_EQ(kinds.size(), std::variant_size_v<journal::Action>) << "a new action needs a sample";

    std::vector<EntryId> ids;
    {
        const auto file = opened(place.path());
        ids = idsOf(file->apply({all, {}, {}}));
        ASSERT_EQ(ids.size(), all.size());
    }
    const auto back = journalOf(*opened(place.path(), HouseholdFile::Mode::mustExist));
    ASSERT_EQ(back.size(), all.size());
    for (std::size_t i = 0; i < all.size(); ++i) {
        auto expected = all[i];
        expected.id = ids[i];
        expected.positionInDay = back[i].positionInDay;
        EXPECT_EQ(back[i], expected) << "row " << i << ", " << journal::actionName(all[i].action);
    }
}

TEST(StoreEntries, WelcomeAndDoubtOfAnOwnMaterialComeBack)
{
    const Place place;
    journal::Entries all;
    for (int welcome = -1; welcome < 3; ++welcome) {
        for (int doubt = -1; doubt < static_cast<int>(journal::Doubt::count); ++doubt) {
            journal::OwnMaterial own{"hulls " + std::to_string(all.size()), {}, {}, {}, {}, {}, {}};
            if (welcome >= 0) own.welcome = static_cast<journal::Welcome>(welcome);
            if (doubt >= 0) own.doubt = static_cast<journal::Doubt>(doubt);
            all.push_back(entry(own, day(2031, 1, 1)));
        }
    }
    idsOf(opened(place.path())->apply({all, {}, {}}));
    const auto back = journalOf(*opened(place.path(), HouseholdFile::Mode::mustExist));
    ASSERT_EQ(back.size(), all.size());
    for (std::size_t i = 0; i < all.size(); ++i) EXPECT_EQ(back[i].action, all[i].action) << i;
}

TEST(StoreEntries, NumbersKeepTheirLastBit)
{
    const Place place;
    const auto file = opened(place.path());
    const std::vector<double> numbers{0.1, 1.0 / 3.0, 1e-300, 5e-324, 999.9999999999999, 1e15 + 0.125, 123456789012345678.0};
    journal::Entries entries;
    for (const double number : numbers) entries.push_back(feed(number));
    idsOf(file->apply({entries, {}, {}}));
    const auto back = journalOf(*file);
    ASSERT_EQ(back.size(), numbers.size());
    for (std::size_t i = 0; i < numbers.size(); ++i)
        EXPECT_EQ(std::bit_cast<std::uint64_t>(std::get<journal::Feed>(back[i].action).food.value), std::bit_cast<std::uint64_t>(numbers[i]));
}

TEST(StoreEntries, WhatIsNotANumberIsRefusedAndNothingOfTheEditIsWritten)
{
    const Place place;
    const auto file = opened(place.path());
    for (const double bad : {std::nan(""), HUGE_VAL, -HUGE_VAL}) {
        const auto failure = failureOf(file->apply({{feed(300), feed(bad)}, {}, {}}));
        EXPECT_TRUE(failure.refused);
        EXPECT_TRUE(failure.why.contains(QStringLiteral("amount"))) << failure.why.toStdString();
    }
    EXPECT_TRUE(journalOf(*file).empty());
}

TEST(StoreEntries, OrderIsByDayThenByPlaceInTheDay)
{
    const Place place;
    const auto file = opened(place.path());
    const Day may1 = day(2031, 5, 1);
    const Day may2 = day(2031, 5, 2);
    auto early = feed(3, may1);
    early.date.minuteOfDay = 5; // the time orders nothing
    const auto ids = idsOf(file->apply({{feed(1, may2), feed(2, may1), early, feed(4, may2)}, {}, {}}));
    std::vector<double> grams;
    for (const auto& one : journalOf(*file)) grams.push_back(std::get<journal::Feed>(one.action).food.value);
    EXPECT_EQ(grams, (std::vector<double>{2, 3, 1, 4}));
    EXPECT_EQ(journalOf(*file)[1].positionInDay, 2);
    EXPECT_EQ(journalOf(*file)[3].id, ids[3]);
}

TEST(StoreEntries, ADeletedRowKeepsItsPlaceAndComesBackUnderItsOwnId)
{
    const Place place;
    auto file = opened(place.path());
    const auto ids = idsOf(file->apply({{feed(1), feed(2), feed(3)}, {}, {}}));
    const auto before = journalOf(*file);
    EXPECT_TRUE(idsOf(file->apply({{}, {}, {ids[1], ids[2]}})).empty());
    EXPECT_EQ(journalOf(*file).size(), 1U);
    const auto fourth = idsOf(file->apply({{feed(4)}, {}, {}}));
    EXPECT_GT(fourth.front(), ids[2]);

    file = opened(place.path(), HouseholdFile::Mode::mustExist); // also after a restart
    EXPECT_EQ(idsOf(file->apply({{before[2], before[1]}, {}, {}})), (std::vector{ids[2], ids[1]}));
    auto back = journalOf(*file);
    ASSERT_EQ(back.size(), 4U);
    EXPECT_EQ(back[3].id, fourth.front()) << "what was written meanwhile stays behind them";
    back.pop_back();
    EXPECT_EQ(back, before);
}

TEST(StoreEntries, TheEndOfADayCountsDeletedEntries)
{
    const Place place;
    const auto file = opened(place.path());
    const auto ids = idsOf(file->apply({{feed(1), feed(2), feed(3, day(2031, 5, 2))}, {}, {}}));
    idsOf(file->apply({{}, {}, {ids[1]}}));
    const auto ends = std::get<std::map<Day, std::int64_t>>(file->endsOfDays());
    EXPECT_EQ(ends, (std::map<Day, std::int64_t>{{day(2031, 5, 1), 2}, {day(2031, 5, 2), 1}}));
}

TEST(StoreEntries, IdsAreNeverGivenTwice)
{
    const Place place;
    const auto file = opened(place.path());
    const auto first = idsOf(file->apply({{feed(1)}, {}, {}}));
    failureOf(file->apply({{feed(std::nan(""))}, {}, {}}));
    idsOf(file->apply({{}, {}, first}));
    EXPECT_GT(idsOf(file->apply({{feed(1)}, {}, {}})).front(), first.front());
}

TEST(StoreEntries, AReplacedRowKeepsItsIdAndMovesToTheEndOfAnotherDay)
{
    const Place place;
    const auto file = opened(place.path());
    const Day may1 = day(2031, 5, 1);
    const Day may2 = day(2031, 5, 2);
    const auto ids = idsOf(file->apply({{feed(1, may1), feed(2, may1), feed(3, may2)}, {}, {}}));
    const auto before = journalOf(*file);

    auto changed = before[0];
    changed.action = journal::Water{{2, Unit::L}}; // every old detail goes with it
    changed.positionInDay = 0;
    EXPECT_EQ(idsOf(file->apply({{}, {changed}, {}})), std::vector{ids[0]});
    EXPECT_EQ(journalOf(*file)[0].action, changed.action);
    EXPECT_EQ(journalOf(*file)[0].positionInDay, before[0].positionInDay) << "the same day: its place stays";

    changed.date.day = may2;
    idsOf(file->apply({{}, {changed}, {}}));
    const auto moved = journalOf(*file);
    EXPECT_EQ(moved[2].id, ids[0]);
    EXPECT_EQ(moved[2].positionInDay, 2);

    idsOf(file->apply({{}, {before[0]}, {}})); // its place given: as undo does it
    EXPECT_EQ(journalOf(*file), before);
}

TEST(StoreEntries, ARowThatIsNotAsTheEditTakesItFailsTheWholeEdit)
{
    const Place place;
    const auto file = opened(place.path());
    const auto ids = idsOf(file->apply({{feed(1), feed(2)}, {}, {}}));
    const auto before = journalOf(*file);
    auto unknown = before[0];
    unknown.id = EntryId{4711};
    EXPECT_TRUE(failureOf(file->apply({{feed(9)}, {unknown}, {}})).refused);
    EXPECT_TRUE(failureOf(file->apply({{feed(9)}, {}, {EntryId{4711}}})).refused);
    EXPECT_TRUE(failureOf(file->apply({{feed(9)}, {}, {ids[0], ids[0]}})).refused);
    EXPECT_TRUE(failureOf(file->apply({{feed(9), before[1]}, {}, {}})).refused) << "brought back, but live";
    EXPECT_EQ(journalOf(*file), before);
}

TEST(StoreEntries, AnImportIsOneTransactionThatRollsBackWhole)
{
    const Place place;
    const auto file = opened(place.path());
    journal::Entries many(500, feed(1));
    many.push_back(entry(journal::Feed{{-1, Unit::g}, "", {}})); // against a CHECK of the table
    EXPECT_FALSE(failureOf(file->apply({many, {}, {}}, QStringLiteral("winter.csv"))).why.isEmpty());
    EXPECT_TRUE(journalOf(*file).empty());
    many.pop_back();
    EXPECT_EQ(idsOf(file->apply({many, {}, {}}, QStringLiteral("winter.csv"))).size(), 500U);
    EXPECT_EQ(journalOf(*file).back().positionInDay, 500);
}

TEST(StoreEntries, OnlyTheEntriesAskedForInTheOrderAsked)
{
    const Place place;
    const auto file = opened(place.path());
    const auto ids = idsOf(file->apply({{feed(1), feed(2), feed(3)}, {}, {}}));
    idsOf(file->apply({{}, {}, {ids[1]}}));
    const std::vector wanted{ids[2], ids[1], ids[0]};
    const auto found = file->entriesWith(wanted);
    const auto& entries = std::get<journal::Entries>(found);
    ASSERT_EQ(entries.size(), 2U);
    EXPECT_EQ(entries[0].id, ids[2]);
    EXPECT_EQ(entries[1].id, ids[0]);
}

TEST(StoreEntries, SettingsAreKeptAsTheyAreWritten)
{
    const Place place;
    {
        const auto file = opened(place.path());
        EXPECT_EQ(file->setting(QStringLiteral("name")), std::nullopt);
        EXPECT_FALSE(file->setSetting(QStringLiteral("name"), QStringLiteral("Mühle")));
        EXPECT_FALSE(file->setSetting(QStringLiteral("name"), QStringLiteral("Mühle am Bach")));
        EXPECT_FALSE(file->setSetting(QStringLiteral("empty"), QString{}));
    }
    const auto file = opened(place.path());
    EXPECT_EQ(file->setting(QStringLiteral("name")), QStringLiteral("Mühle am Bach"));
    EXPECT_EQ(file->setting(QStringLiteral("empty")), QStringLiteral(""));
    EXPECT_EQ((std::get<std::map<QString, QString>>(file->settings()).size()), 2U);
}

}

}
