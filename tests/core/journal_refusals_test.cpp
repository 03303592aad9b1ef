#include "journal_builder.h"

#include "core/journal/names.h"
#include "core/journal/warnings.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <functional>

namespace tierloam::journal {

using namespace building;

// Each reason by the last entry of a journal that is legal up to it.
struct Refused {
    const char* what;
    std::function<Journal()> made;
    RefusalReason reason;
    const char* stack = "Mill";
    int slotsThere = 0;
};

void PrintTo(const Refused& refused, std::ostream* out) { *out << refused.what; }

class Refusals : public testing::TestWithParam<Refused> {};

TEST_P(Refusals, NameTheReasonAndTakeNoEffect)
{
    const Journal journal = GetParam().made();
    const Replay replayed = journal.replayed();
    ASSERT_EQ(replayed.refusals.size(), 1u);
    const Refusal& refusal = replayed.refusals.front();
    EXPECT_EQ(refusal.reason, GetParam().reason);
    EXPECT_EQ(refusal.stack, GetParam().stack);
    EXPECT_EQ(refusal.slotsThere, GetParam().slotsThere);
    const Entry& last = *std::max_element(journal.entries().begin(), journal.entries().end(), [](auto& a, auto& b) { return a.id < b.id; });
    EXPECT_EQ(journal.entries()[refusal.entry].id, last.id);
    EXPECT_EQ(refusal.slot, last.slot);
    for (const StackHistory& history : replayed.stacks)
        for (const Step& step : history.steps) EXPECT_NE(step.entry, refusal.entry);
}

Journal twoStacks()
{
    Journal journal = stackOf(2);
    journal.add("2031-02-01", "Yard", setup());
    return journal;
}

#define AFTER(start, ...) [] { return Journal{start}.add(__VA_ARGS__); }

INSTANTIATE_TEST_SUITE_P(
    Reasons, Refusals,
    testing::Values(
        Refused{"never set up", AFTER(Journal{}, "2031-02-01", "Mill", feed()), RefusalReason::stackUnknown},
        Refused{"no stack named", AFTER(Journal{}, "2031-02-01", "", feed()), RefusalReason::stackUnknown, ""},
        Refused{"set up without a name", AFTER(Journal{}, "2031-02-01", "", setup()), RefusalReason::stackUnknown, ""},
        Refused{"dated before its setup", AFTER(stackOf(1), "2030-12-31", "Mill", feed()), RefusalReason::beforeFirstSetup},
        Refused{"after it retired", AFTER(stackOf(1).add("2031-02-01", "Mill", Retire{}), "2031-02-02", "Mill", feed()), RefusalReason::stackRetired, "Mill", 1},
        Refused{"retired twice", AFTER(stackOf(1).add("2031-02-01", "Mill", Retire{}), "2031-02-02", "Mill", Retire{}), RefusalReason::stackRetired, "Mill", 1},
        Refused{"name of a retired stack", AFTER(stackOf(1).add("2031-02-01", "Mill", Retire{}), "2031-02-02", "Mill", setup()), RefusalReason::nameTaken, "Mill", 1},
        Refused{"name with a semicolon", AFTER(Journal{}, "2031-02-01", "Mill;Yard", setup()), RefusalReason::badName, "Mill;Yard"},
        Refused{"slot 3 of 2", AFTER(stackOf(2), "2031-02-01", "Mill", feed(), 3), RefusalReason::slotMissing, "Mill", 2},
        Refused{"slot 0", AFTER(stackOf(2), "2031-02-01", "Mill", feed(), 0), RefusalReason::slotMissing, "Mill", 2},
        Refused{"bed two above the top", AFTER(stackOf(1), "2031-02-01", "Mill", bed(), 3), RefusalReason::slotMissing, "Mill", 1},
        Refused{"bed below the bottom", AFTER(stackOf(1), "2031-02-01", "Mill", bed(), 0), RefusalReason::slotMissing, "Mill", 1},
        Refused{"note on a slot that is not there", AFTER(stackOf(1), "2031-02-01", "Mill", Note{}, 2), RefusalReason::slotMissing, "Mill", 1},
        Refused{"harvest of slot 4", AFTER(stackOf(2), "2031-02-01", "Mill", harvest(), 4), RefusalReason::slotMissing, "Mill", 2},
        Refused{"rotate of slot 2", AFTER(stackOf(2), "2031-02-01", "Mill", Rotate{}, 2), RefusalReason::slotMissing, "Mill", 2},
        Refused{"feed without a tray", AFTER(stackOf(0), "2031-02-01", "Mill", feed()), RefusalReason::noTrayToTake},
        Refused{"feed with only a drying tray", AFTER(stackOf(2).add("2031-07-01", "Mill", Rotate{}).add("2031-07-02", "Mill", harvest(), 1), "2031-07-03", "Mill", feed()),
                RefusalReason::noTrayToTake, "Mill", 1},
        Refused{"weigh without a tray", AFTER(stackOf(0), "2031-02-01", "Mill", Weigh{{1, Unit::g}, {}}), RefusalReason::noTrayToTake},
        Refused{"tray weight without a tray", AFTER(stackOf(0), "2031-02-01", "Mill", TrayWeight{{5, Unit::kg}, {}}), RefusalReason::noTrayToTake},
        Refused{"no spare", AFTER(stackOf(3), "2031-02-01", "Mill", bed()), RefusalReason::noSpareTray, "Mill", 3},
        Refused{"no spare, by number", AFTER(stackOf(3), "2031-02-01", "Mill", bed(), 4), RefusalReason::noSpareTray, "Mill", 3},
        Refused{"rotate one tray", AFTER(stackOf(1), "2031-02-01", "Mill", Rotate{}), RefusalReason::rotateNeedsTwo, "Mill", 1},
        Refused{"harvest of what", AFTER(stackOf(1), "2031-02-01", "Mill", harvest()), RefusalReason::harvestNeedsSlot, "Mill", 1},
        Refused{"loosen nothing", AFTER(stackOf(2), "2031-02-01", "Mill", Loosen{}), RefusalReason::noneDrying, "Mill", 2},
        Refused{"loosen another tray", AFTER(stackOf(2).add("2031-07-01", "Mill", Rotate{}), "2031-07-02", "Mill", Loosen{}, 1), RefusalReason::noneDrying, "Mill", 2},
        Refused{"fewer trays than stand", AFTER(stackOf(3), "2031-02-01", "Mill", setup(2)), RefusalReason::tooFewTrays, "Mill", 3},
        Refused{"move to itself", AFTER(stackOf(1), "2031-02-01", "Mill", move("Mill")), RefusalReason::sameStack, "Mill", 1},
        Refused{"move to an unknown stack", AFTER(stackOf(1), "2031-02-01", "Mill", move("Barn")), RefusalReason::stackUnknown, "Barn"},
        Refused{"move before the other is set up", AFTER(twoStacks(), "2031-01-31", "Mill", move("Yard")), RefusalReason::beforeFirstSetup, "Yard"},
        Refused{"move into a stack without trays", AFTER(twoStacks(), "2031-02-02", "Mill", move("Yard")), RefusalReason::noTrayToTake, "Yard"},
        Refused{"move out of one", AFTER(twoStacks(), "2031-02-02", "Yard", move("Mill")), RefusalReason::noTrayToTake, "Yard"},
        Refused{"move to a retired stack", AFTER(twoStacks().add("2031-02-02", "Yard", Retire{}), "2031-02-03", "Mill", move("Yard")), RefusalReason::stackRetired, "Yard"},
        Refused{"castings deeper than the tray", AFTER(stackOf(1), "2031-02-01", "Mill", depth(11.1)), RefusalReason::tooDeep, "Mill", 1},
        Refused{"own material of a stack", AFTER(stackOf(1), "2031-02-01", "Mill", OwnMaterial{"x", {}, {}, {}, {}, {}, {}}), RefusalReason::stackNameInOwnMaterial, "Mill", 1}));

TEST(Refusals, BeforeTheFirstSetupNamesItsDay)
{
    const Replay replayed = stackOf(1).add("2030-12-31", "Mill", feed()).replayed();
    ASSERT_EQ(replayed.refusals.size(), 1u);
    EXPECT_EQ(replayed.refusals.front().day, day("2031-01-01"));
}

TEST(Refusals, ExactlyTheTraysHeightIsNotTooDeep)
{
    EXPECT_TRUE(stackOf(1).add("2031-02-01", "Mill", depth(11)).replayed().refusals.empty());
}

TEST(StackNames, ThatCanBeWritten)
{
    for (const char* good : {"Mill", "Lean-to 2", "=1+1", "Gewölbe", "a=b"}) EXPECT_TRUE(isStackName(good)) << good;
    for (const char* bad : {"", " Mill", "Mill ", "a;b", "a\nb", "a\x7f", "a\xC2\x85" "b"}) EXPECT_FALSE(isStackName(bad)) << bad;
}

TEST(Warnings, ASecondSpeciesIsAcceptedAndSaid)
{
    Journal journal = stackOf(1);
    journal.add("2031-02-01", "Mill", stock()).add("2031-02-02", "Mill", Stock{{1, Unit::kg}, "EISENIA fetida", {}});
    EXPECT_TRUE(warningsOf(journal.entries()).empty()) << "the default by another spelling";
    journal.add("2031-02-03", "Mill", Stock{{1, Unit::kg}, "Eisenia andrei", {}});
    journal.add("2031-02-03", "Yard", setup()).add("2031-02-03", "Yard", bed()).add("2031-02-04", "Yard", stock());
    const auto warnings = warningsOf(journal.entries());
    ASSERT_EQ(warnings.size(), 1u);
    EXPECT_EQ(warnings[0].now, "Eisenia andrei");
    EXPECT_EQ(warnings[0].before, "EISENIA fetida");
    EXPECT_EQ(journal.entries()[warnings[0].entry].id, EntryId{5});
    EXPECT_TRUE(journal.replayed().refusals.empty());
}

}
