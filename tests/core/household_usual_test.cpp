#include "core/household/usual_cover.h"
#include "tests/core/household_fixture.h"

namespace tierloam::household {

namespace {

const Day first = day(2031, 3, 1);

journal::Entries weekly(const std::vector<journal::Action>& actions, const std::string& stack = "Scullery")
{
    journal::Entries entries;
    for (std::size_t i = 0; i < actions.size(); ++i) entries.push_back(entry(actions[i], first + std::chrono::days{7 * i}, stack));
    return entries;
}

journal::Action fed(double value, Unit unit = Unit::g, std::string material = {}) { return journal::Feed{Amount{value, unit}, std::move(material), {}}; }

Usual usual(const journal::Entries& entries) { return usualOf(entries, materials::Table::builtIn(), "Scullery", day(2032, 1, 1)); }

TEST(HouseholdUsual, WithoutARecordTheDefaults)
{
    const Usual none = usual({});
    EXPECT_FALSE(none.feedKnown || none.waterKnown || none.drainKnown);
    EXPECT_EQ(none.feed, (Amount{300, Unit::g}));
    EXPECT_EQ(none.coverWithFeed, journal::defaultCoverAmount);
}

TEST(HouseholdUsual, IsTheMedianOfTheLastFive)
{
    const Usual of = usual(weekly({fed(5000), fed(5000), fed(100), fed(900), fed(250), fed(400), fed(300)}));
    EXPECT_TRUE(of.feedKnown);
    EXPECT_EQ(of.feed, (Amount{300, Unit::g})) << "100 250 300 400 900";
    EXPECT_EQ(usual(weekly({fed(100), fed(200), fed(300), fed(451)})).feed, (Amount{250, Unit::g})) << "of an even number: the mean of the middle two";
    EXPECT_EQ(usual(weekly({fed(123.4567)})).feed, (Amount{123.4567, Unit::g})) << "as typed";
}

/// The form for a new stack asks for no cover: the first feeding must not talk people out of every later one.
TEST(HouseholdUsual, TheFirstDaysFeedingIsNoHabitOfLeavingFoodOpen)
{
    journal::Entries entries = {entry(journal::Bed{Amount{800, Unit::g}, "cardboard shredded"}, first, "Scullery"), entry(fed(200), first, "Scullery")};
    EXPECT_EQ(usual(entries).coverWithFeed, journal::defaultCoverAmount);
    EXPECT_TRUE(usual(entries).feedKnown);
    entries.push_back(entry(fed(200), first + std::chrono::days{7}, "Scullery"));
    EXPECT_FALSE(usual(entries).coverWithFeed) << "left open by a later feeding";
}

/// What was given eight months ago is no habit of a stack that got a handful today.
TEST(HouseholdUsual, WhatWasGivenBeforeALongGapIsForgotten)
{
    journal::Entries entries = weekly({fed(400), fed(400), fed(400)});
    entries.push_back(entry(fed(50), first + std::chrono::days{14 + 56}, "Scullery"));
    EXPECT_EQ(usual(entries).feed, (Amount{400, Unit::g})) << "eight weeks: a summer away";
    entries.back().date.day = first + std::chrono::days{14 + 57};
    EXPECT_EQ(usual(entries).feed, (Amount{50, Unit::g}));
    entries.push_back(entry(fed(70), first + std::chrono::days{14 + 64}, "Scullery"));
    EXPECT_EQ(usual(entries).feed, (Amount{60, Unit::g}));
}

/// A bucket in twelve portions is one feeding, and the next one is not a twelfth of it.
TEST(HouseholdUsual, PortionsOfOneDayAreOneFeeding)
{
    journal::Entries burst;
    for (int i = 0; i < 12; ++i) burst.push_back(entry(fed(150), first, "Scullery"));
    EXPECT_EQ(usual(burst).feed, (Amount{1800, Unit::g}));
    for (int week = 1; week <= 3; ++week)
        for (int portion = 0; portion < 2; ++portion) burst.push_back(entry(fed(0.1 + 0.1 * portion, Unit::kg), first + std::chrono::days{7 * week}, "Scullery"));
    EXPECT_EQ(usual(burst).feed, (Amount{0.3, Unit::kg})) << "1.8, 0.3, 0.3, 0.3 kg of four days";

    journal::Entries mixed = weekly({fed(400), fed(400)});
    mixed.push_back(entry(fed(0.9, Unit::kg, "coffee grounds"), first + std::chrono::days{14}, "Scullery"));
    mixed.push_back(entry(fed(100), first + std::chrono::days{14}, "Scullery"));
    mixed.push_back(entry(fed(300), first + std::chrono::days{14}, "Scullery"));
    EXPECT_EQ(usual(mixed).feed, (Amount{400, Unit::g})) << "of the material that came last: 400, 400, 400";
    EXPECT_EQ(usual(mixed).feedMaterial, "");

    journal::Entries covered;
    for (int i = 0; i < 4; ++i) {
        covered.push_back(entry(fed(150), first, "Scullery"));
        covered.push_back(entry(journal::Cover{Amount{20, Unit::g}, {}}, first, "Scullery"));
    }
    EXPECT_EQ(usual(covered).coverWithFeed, (Amount{80, Unit::g})) << "what goes with all of it";
    journal::Entries watered;
    for (int i = 0; i < 2; ++i) watered.push_back(entry(journal::Water{Amount{1, Unit::L}}, first, "Scullery"));
    EXPECT_EQ(usual(watered).water, (Amount{1, Unit::L})) << "a can is poured at a time";
}

TEST(HouseholdUsual, IsInTheUnitOfTheLast)
{
    EXPECT_EQ(usual(weekly({fed(200), fed(0.3, Unit::kg), fed(1, Unit::lb)})).feed, (Amount{0.661, Unit::lb})) << "300 g in lb, three digits";
    const Usual drained = usual(weekly({journal::Drain{Amount{1, Unit::gal}, {}, {}, {}, {}}, journal::Drain{Amount{2, Unit::L}, {}, {}, {}, {}},
                                        journal::Drain{Amount{3, Unit::L}, {}, {}, {}, {}}}));
    EXPECT_EQ(drained.drain, (Amount{3, Unit::L})) << "2, 3 and 3.785 L";
}

TEST(HouseholdUsual, FoodByVolumeAndByMassMeetByItsBulk)
{
    const materials::Material* mix = materials::Table::builtIn().find(journal::defaultFood);
    ASSERT_NE(mix, nullptr);
    const double twoLitres = 2.0 / 1000.0 * mix->bulkKgPerM3 * 1000.0; // g
    const Usual inGrams = usual(weekly({fed(2, Unit::L), fed(1), fed(1e6)}));
    EXPECT_EQ(inGrams.feed.unit, Unit::g);
    EXPECT_NEAR(inGrams.feed.value, twoLitres, twoLitres * 0.005);
    const Usual inLitres = usual(weekly({fed(twoLitres), fed(1e6), fed(0.1, Unit::L)}));
    EXPECT_EQ(inLitres.feed.unit, Unit::L);
    EXPECT_NEAR(inLitres.feed.value, 2.0, 0.01);
}

TEST(HouseholdUsual, OfAllStacksAtOnceIsThatOfEach)
{
    journal::Entries entries = weekly({fed(100), fed(200), journal::Water{}, fed(300)});
    for (const journal::Entry& each : weekly({fed(900), fed(5, Unit::L), fed(800)}, "Cellar")) entries.push_back(each);
    for (const Day upTo : {first + std::chrono::days{8}, day(2032, 1, 1)}) {
        const auto all = usualOfAll(entries, materials::Table::builtIn(), upTo);
        ASSERT_EQ(all.size(), 2U);
        for (const auto& [stack, usual] : all) {
            const Usual alone = usualOf(entries, materials::Table::builtIn(), stack, upTo);
            EXPECT_EQ(usual.feed, alone.feed) << stack;
            EXPECT_EQ(usual.waterKnown, alone.waterKnown) << stack;
            EXPECT_EQ(usual.coverWithFeed, alone.coverWithFeed) << stack;
        }
        EXPECT_NE(all.at("Scullery").feed, all.at("Cellar").feed);
    }
}

TEST(HouseholdUsual, LooksAtOneStackAndNotIntoTheFuture)
{
    auto entries = weekly({fed(100), fed(100)});
    for (auto& other : weekly({fed(900), fed(900), fed(900)}, "Cellar")) entries.push_back(other);
    std::stable_sort(entries.begin(), entries.end(), journal::inJournalOrder);
    EXPECT_EQ(usual(entries).feed.value, 100);
    entries.push_back(feed(5000, day(2040, 1, 1)));
    EXPECT_EQ(usual(entries).feed.value, 100);
}

TEST(HouseholdUsual, CoverComesWithFeedWhenItUsuallyDid)
{
    journal::Entries entries;
    const auto week = [&](int number, bool covered) {
        const Day on = first + std::chrono::days{7 * number};
        if (covered) entries.push_back(entry(journal::Cover{Amount{20.0 + number, Unit::g}, "leaves"}, on));
        entries.push_back(feed(300, on));
    };
    for (int i = 0; i < 5; ++i) week(i, i >= 2);
    EXPECT_EQ(usual(entries).coverWithFeed, (Amount{23, Unit::g}));
    EXPECT_EQ(usual(entries).coverMaterial, "leaves");
    week(5, false);
    EXPECT_TRUE(usual(entries).coverWithFeed) << "three of the last five";
    week(6, false);
    EXPECT_TRUE(usual(entries).coverWithFeed) << "still three: weeks 2, 3 and 4";
    week(7, false);
    EXPECT_FALSE(usual(entries).coverWithFeed);
}

TEST(HouseholdUsual, ACoverOfItsOwnIsTheMedianOfTheLastFive)
{
    journal::Entries entries;
    const auto covers = [&] { return usualCovers(entries, materials::Table::builtIn(), day(2032, 1, 1)); };
    EXPECT_EQ(usualCover(covers(), "Scullery"), journal::defaultCoverAmount);
    for (const double grams : {500.0, 500.0, 20.0, 40.0, 60.0, 25.0, 45.0}) {
        entries.push_back(feed(300, first + std::chrono::days{static_cast<int>(2 * entries.size())})); // never on the day of a cover
        entries.push_back(entry(journal::Cover{Amount{grams, Unit::g}, "leaves"}, entries.back().date.day + std::chrono::days{1}));
    }
    ASSERT_FALSE(usual(entries).coverWithFeed);
    EXPECT_EQ(covers().at("Scullery"), (Amount{40, Unit::g}));
    entries.push_back(entry(journal::Cover{Amount{900, Unit::g}, "leaves"}, day(2040, 1, 1)));
    EXPECT_EQ(covers().at("Scullery"), (Amount{40, Unit::g})) << "what is to come does not count";
}

TEST(HouseholdUsual, ADrainThatGaveNothingOrOnlyTurnedTheSpigotIsNoAmount)
{
    const Usual of = usual(weekly({journal::Drain{Amount{0.8, Unit::L}, {}, {}, {}, {}}, journal::Drain{Amount{0, Unit::L}, {}, {}, {}, {}},
                                   journal::Drain{{}, {}, {}, {}, journal::Spigot::open}}));
    EXPECT_EQ(of.drain, (Amount{0.8, Unit::L}));
    EXPECT_FALSE(usual(weekly({journal::Drain{{}, {}, {}, {}, journal::Spigot::open}})).drainKnown);
}

/// 500 for 0.5: the button beside the sump would then write down "Drain 500 L" at a click.
TEST(HouseholdUsual, ADrainIsNoMoreThanTheSumpHolds)
{
    const auto drained = [](double value, Unit unit) { return journal::Drain{Amount{value, unit}, {}, {}, {}, {}}; };
    journal::Setup shut;
    shut.sump = litres(3);
    shut.spigot = journal::Spigot::shut;
    EXPECT_EQ(usual(weekly({shut, drained(500, Unit::L)})).drain, (Amount{3, Unit::L}));
    EXPECT_EQ(usual(weekly({shut, drained(500, Unit::mL)})).drain, (Amount{500, Unit::mL}));
    const Amount cups = usual(weekly({shut, drained(500, Unit::cup)})).drain;
    EXPECT_EQ(cups.unit, Unit::cup);
    EXPECT_LE(cups.volume()->base(), 3.0);
    EXPECT_GT(cups.volume()->base(), 2.98);
    journal::Drain opened = drained(12, Unit::L);
    opened.spigot = journal::Spigot::open;
    EXPECT_EQ(usual(weekly({shut, opened})).drain, (Amount{12, Unit::L})) << "what ran off stands in a jar";
    opened.volume = Amount{500, Unit::L};
    EXPECT_EQ(usual(weekly({shut, opened})).drain, (Amount{15, Unit::L}));
    journal::Setup greater;
    greater.sump = litres(6);
    EXPECT_EQ(usual(weekly({shut, drained(5, Unit::L), greater})).drain, (Amount{5, Unit::L})) << "the latest sump counts";
    EXPECT_EQ(usual({}).drain, (Amount{1, Unit::L}));
}

}

}
