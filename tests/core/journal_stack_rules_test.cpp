#include "journal_builder.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

// The stack rules of the journal format, one test a rule.
namespace tierloam::journal {

using namespace building;
using testing::ElementsAre;
using testing::IsEmpty;
using testing::Optional;

TEST(StackRules, FirstSetupFillsInDefaultsAndALaterOneChangesOnlyWhatItNames)
{
    Journal journal;
    journal.add("2031-01-01", "Mill", setup());
    auto later = setup();
    later.height = centimetres(14);
    later.place = Place::outdoors;
    journal.add("2031-03-01", "Mill", later);
    const Replay replayed = journal.replayed();
    const StackHistory& mill = *replayed.stack("Mill");

    StackSettings expected;
    EXPECT_EQ(mill.on(day("2031-02-28"))->settings, expected);
    EXPECT_EQ(expected.area, squareMetres(0.16));
    EXPECT_EQ(expected.height, centimetres(11));
    EXPECT_EQ(expected.trays, 3);
    EXPECT_EQ(expected.sump, litres(4));
    EXPECT_EQ(expected.place, Place::indoors);
    EXPECT_EQ(expected.temp, celsius(20));
    EXPECT_EQ(expected.stand, Stand::none);
    EXPECT_EQ(mill.on(day("2031-01-01"))->spigot, Spigot::open);

    expected.height = centimetres(14);
    expected.place = Place::outdoors;
    EXPECT_EQ(mill.on(day("2031-03-01"))->settings, expected);
    EXPECT_EQ(mill.on(day("2030-12-31")), nullptr);
}

TEST(StackRules, BedOnTopTakesTheLowestNumberedSpareAndBeginsABatch)
{
    Journal journal = stackOf(2, 4);
    journal.add("2031-02-01", "Mill", bed(), 3); // n + 1 by number
    Replay replayed = journal.replayed();
    EXPECT_THAT(last(replayed).slots, ElementsAre(1, 2, 3));
    EXPECT_EQ(replayed.stack("Mill")->batch(3).tray, 3);
    EXPECT_EQ(last(replayed).spare(), 1);

    journal.add("2031-07-01", "Mill", harvest(), 1).add("2031-07-02", "Mill", bed());
    replayed = journal.replayed();
    EXPECT_THAT(last(replayed).slots, ElementsAre(2, 3, 4));
    EXPECT_EQ(replayed.stack("Mill")->batch(4).tray, 1) << "tray 1 is in storage again and has a lower number than tray 4";
    EXPECT_EQ(replayed.stack("Mill")->batch(1).ended, day("2031-07-01"));
    EXPECT_EQ(replayed.stack("Mill")->batch(4).bedded, day("2031-07-02"));
    EXPECT_EQ(replayed.stack("Mill")->firstBedding, day("2031-01-01"));
}

TEST(StackRules, BedInASlotThatIsThereAddsToItsBatch)
{
    Journal journal = stackOf(2);
    journal.add("2031-02-01", "Mill", bed(), 1);
    const Replay replayed = journal.replayed();
    EXPECT_THAT(last(replayed).slots, ElementsAre(1, 2));
    EXPECT_THAT(lastStep(replayed).batch, Optional(1));
    EXPECT_EQ(replayed.stack("Mill")->batches.size(), 2u);
}

TEST(StackRules, RotateLiftsTheBottomTrayToTheTopAndDriesItUncovered)
{
    Journal journal = stackOf(3);
    journal.add("2031-07-01", "Mill", Rotate{});
    const Replay replayed = journal.replayed();
    EXPECT_THAT(last(replayed).slots, ElementsAre(2, 3, 1));
    EXPECT_THAT(last(replayed).drying, Optional(1));
    EXPECT_THAT(last(replayed).dryingSince, Optional(day("2031-07-01")));
    EXPECT_FALSE(last(replayed).lidOn);
    EXPECT_THAT(last(replayed).feedSlot(), Optional(2));
    EXPECT_THAT(lastStep(replayed).slot, Optional(1));
    EXPECT_THAT(lastStep(replayed).batch, Optional(1));
}

struct EndOfDrying {
    const char* what;
    Action action;
    std::optional<int> slot;
    bool ends;
};

class DryingEnds : public testing::TestWithParam<EndOfDrying> {};

TEST_P(DryingEnds, AsWritten)
{
    const auto& [what, action, slot, ends] = GetParam();
    Journal journal = stackOf(3, 5);
    journal.add("2031-07-01", "Mill", Rotate{}).add("2031-07-04", "Mill", action, slot);
    const Replay replayed = journal.replayed();
    ASSERT_THAT(replayed.refusals, IsEmpty());
    EXPECT_EQ(!last(replayed).drying.has_value(), ends) << what;
    EXPECT_EQ(last(replayed).lidOn, ends) << "the lid comes back when the drying ends";
}

INSTANTIATE_TEST_SUITE_P(Rules, DryingEnds,
                         testing::Values(EndOfDrying{"whole harvest", harvest(), {}, true},
                                         EndOfDrying{"whole harvest, said as 100 %", harvest(100), {}, true},
                                         EndOfDrying{"part of it", harvest(60), {}, false},
                                         EndOfDrying{"harvest of another slot", harvest(), 1, false},
                                         EndOfDrying{"feed in its slot", feed(), 3, true},
                                         EndOfDrying{"cover in its slot", Cover{}, 3, true},
                                         EndOfDrying{"bed in its slot", bed(), 3, true},
                                         EndOfDrying{"another tray on top", bed(), {}, true},
                                         EndOfDrying{"feed elsewhere", feed(), {}, false},
                                         EndOfDrying{"water in its slot", Water{{1, Unit::L}}, 3, false},
                                         EndOfDrying{"castings loosened", Loosen{}, {}, false},
                                         EndOfDrying{"a look at it", depth(3), 3, false}));

TEST(StackRules, AnotherTrayLiftedOnTopEndsTheDryingOfTheFirst)
{
    Journal journal = stackOf(3);
    journal.add("2031-07-01", "Mill", Rotate{}).add("2031-07-08", "Mill", Rotate{});
    const Replay replayed = journal.replayed();
    EXPECT_THAT(last(replayed).slots, ElementsAre(3, 1, 2));
    EXPECT_THAT(last(replayed).drying, Optional(2));
    EXPECT_THAT(last(replayed).dryingSince, Optional(day("2031-07-08")));
    EXPECT_FALSE(last(replayed).lidOn);
}

TEST(StackRules, HarvestTakesTheDryingTrayAndSlotsAboveMoveDown)
{
    Journal journal = stackOf(3);
    journal.add("2031-07-01", "Mill", Rotate{}).add("2031-07-05", "Mill", harvest());
    Replay replayed = journal.replayed();
    EXPECT_THAT(last(replayed).slots, ElementsAre(2, 3));
    EXPECT_THAT(lastStep(replayed).slot, Optional(3));
    EXPECT_THAT(lastStep(replayed).batch, Optional(1));
    EXPECT_EQ(last(replayed).spare(), 1);

    journal.add("2031-07-06", "Mill", harvest(), 1);
    replayed = journal.replayed();
    EXPECT_THAT(last(replayed).slots, ElementsAre(3));
}

TEST(StackRules, HarvestOfTheOnlyTrayLeavesAnEmptyStackThatCanBeBeddedAgain)
{
    Journal journal = stackOf(1);
    journal.add("2031-07-01", "Mill", harvest(), 1);
    EXPECT_THAT(last(journal.replayed()).slots, IsEmpty());
    EXPECT_EQ(last(journal.replayed()).feedSlot(), std::nullopt);
    journal.add("2031-08-01", "Mill", bed());
    const Replay replayed = journal.replayed();
    EXPECT_THAT(last(replayed).slots, ElementsAre(2));
    EXPECT_EQ(replayed.stack("Mill")->batch(2).tray, 1);
    EXPECT_EQ(replayed.stack("Mill")->firstBedding, day("2031-01-01"));
}

TEST(StackRules, ATrayKeepsItsNumberWhenFewerAreOwned)
{
    Journal journal = stackOf(3, 3);
    journal.add("2031-07-01", "Mill", harvest(), 1); // trays 2 and 3 stand
    journal.add("2031-07-02", "Mill", setup(2));
    Replay replayed = journal.replayed();
    ASSERT_THAT(replayed.refusals, IsEmpty());
    EXPECT_EQ(last(replayed).spare(), 0);
    journal.add("2031-07-03", "Mill", harvest(), 1).add("2031-07-04", "Mill", bed()).add("2031-07-05", "Mill", bed());
    replayed = journal.replayed();
    ASSERT_EQ(replayed.refusals.size(), 1u) << "two are owned, two stand";
    EXPECT_EQ(replayed.stack("Mill")->batch(4).tray, 1);
}

struct DefaultSlot {
    const char* what;
    Action action;
    std::optional<int> slot; ///< with three trays, the top one drying
};

class EmptySlot : public testing::TestWithParam<DefaultSlot> {};

TEST_P(EmptySlot, MeansAsWritten)
{
    Journal journal = stackOf(3, 4);
    journal.add("2031-01-01", "Yard", setup()).add("2031-01-01", "Yard", bed());
    journal.add("2031-07-01", "Mill", Rotate{}).add("2031-07-02", "Mill", GetParam().action);
    const Replay replayed = journal.replayed();
    ASSERT_THAT(replayed.refusals, IsEmpty());
    const Step& step = lastStep(replayed);
    EXPECT_EQ(step.slot, GetParam().slot) << GetParam().what;
    EXPECT_EQ(step.batch.has_value(), step.slot.has_value());
}

INSTANTIATE_TEST_SUITE_P(
    Rules, EmptySlot,
    testing::Values(DefaultSlot{"feed", feed(), 2}, DefaultSlot{"cover", Cover{}, 2}, DefaultSlot{"water", Water{{1, Unit::L}}, 2},
                    DefaultSlot{"stock", stock(), 2}, DefaultSlot{"check", depth(2), 2}, DefaultSlot{"trayweight", TrayWeight{{6, Unit::kg}, {}}, 3},
                    DefaultSlot{"weigh", Weigh{{300, Unit::g}, {}}, {}}, DefaultSlot{"count", Count{{40, Unit::count}, {}}, {}},
                    DefaultSlot{"remove", Remove{{100, Unit::g}}, {}}, DefaultSlot{"reading", Reading{}, {}},
                    DefaultSlot{"move", move("Yard"), {}}, DefaultSlot{"routine", Routine{{1, Unit::L}, RoutineOf::water, {}}, {}},
                    DefaultSlot{"drain", Drain{}, {}}, DefaultSlot{"event", Event{"smell", {}}, {}}, DefaultSlot{"note", Note{}, {}},
                    DefaultSlot{"bed", bed(), 4}, DefaultSlot{"harvest", harvest(60), 3}, DefaultSlot{"loosen", Loosen{}, 3}));

TEST(StackRules, MoveIsOneEntryInBothLedgers)
{
    Journal journal = stackOf(2);
    journal.add("2031-01-01", "Yard", setup()).add("2031-01-01", "Yard", bed()).add("2031-03-01", "Mill", move("Yard"), 1);
    const Replay replayed = journal.replayed();
    const Step& out = lastStep(replayed, "Mill");
    const Step& in = lastStep(replayed, "Yard");
    EXPECT_EQ(out.entry, in.entry);
    EXPECT_FALSE(out.incoming);
    EXPECT_TRUE(in.incoming);
    EXPECT_THAT(out.slot, Optional(1));
    EXPECT_THAT(in.slot, Optional(1));
    EXPECT_THAT(in.batch, Optional(1));
}

TEST(StackRules, SpigotIsTurnedBySetupAndDrainAndNotByAFlush)
{
    Journal journal = stackOf(1);
    auto shut = setup();
    shut.spigot = Spigot::shut;
    journal.add("2031-02-01", "Mill", shut);
    EXPECT_EQ(last(journal.replayed()).spigot, Spigot::shut);
    Drain open;
    open.spigot = Spigot::open;
    journal.add("2031-02-02", "Mill", open).add("2031-02-03", "Mill", Drain{Amount{1, Unit::L}, {}, {}, {}, {}});
    EXPECT_EQ(last(journal.replayed()).spigot, Spigot::open);
    journal.add("2031-02-04", "Mill", Flush{{5, Unit::L}, {}, {}, {}});
    EXPECT_EQ(last(journal.replayed()).spigot, Spigot::open);
}

TEST(StackRules, LidGoesOffAndOn)
{
    Journal journal = stackOf(1);
    journal.add("2031-02-01", "Mill", Lid{false});
    EXPECT_FALSE(last(journal.replayed()).lidOn);
    journal.add("2031-02-02", "Mill", Lid{true});
    EXPECT_TRUE(last(journal.replayed()).lidOn);
}

TEST(StackRules, ARetiredStackStandsAsItLastStoodAndOthersGoOn)
{
    Journal journal = stackOf(2);
    journal.add("2031-01-01", "Yard", setup()).add("2031-03-01", "Mill", Retire{}).add("2031-03-02", "Yard", bed());
    const Replay replayed = journal.replayed();
    EXPECT_THAT(replayed.refusals, IsEmpty());
    EXPECT_TRUE(last(replayed).retired);
    EXPECT_THAT(last(replayed).slots, ElementsAre(1, 2));
    EXPECT_FALSE(replayed.stack("Mill")->on(day("2031-02-28"))->retired);
}

TEST(StackRules, KeyIsTheHashOfTheNameUntilOneIsGiven)
{
    // FNV-1a 64: the empty string gives the offset basis, "a" gives af63dc4c8601ec8c (values published with the function, from memory).
    EXPECT_EQ(stackKey(""), 0xcbf29ce484222325ULL);
    EXPECT_EQ(stackKey("a"), 0xaf63dc4c8601ec8cULL);
    Journal journal;
    auto keyed = setup();
    keyed.key = 42;
    journal.add("2031-01-01", "a", setup()).add("2031-01-01", "b", keyed);
    EXPECT_EQ(journal.replayed().stack("a")->key, stackKey("a"));
    EXPECT_EQ(journal.replayed().stack("b")->key, 42u);
}

TEST(StackRules, TheDayShowsTheEndOfTheDay)
{
    Journal journal = stackOf(2);
    journal.add("2031-07-01", "Mill", Rotate{}).add("2031-07-01", "Mill", harvest());
    const Replay replayed = journal.replayed();
    EXPECT_THAT(replayed.stack("Mill")->on(day("2031-07-01"))->slots, ElementsAre(2));
    EXPECT_THAT(replayed.stack("Mill")->on(day("2031-06-30"))->slots, ElementsAre(1, 2));
    EXPECT_THAT(replayed.stack("Mill")->on(day("2199-12-31"))->slots, ElementsAre(2));
}

TEST(StackRules, OwnMaterialsBelongToNoStack)
{
    Journal journal;
    journal.add("2031-01-01", "", OwnMaterial{"beet pulp", {}, {}, {}, {}, {}, {}});
    EXPECT_THAT(journal.replayed().refusals, IsEmpty());
    EXPECT_THAT(journal.replayed().stacks, IsEmpty());
}

}
