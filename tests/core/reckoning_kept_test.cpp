// Estimates that are kept as bytes: the same when they come back, nothing when a byte is wrong.
#include "core/reckoning/kept_members.h"
#include "core/reckoning/reckon.h"
#include "core/reckoning/stack_run.h"
#include "tests/core/reckoning_notes.h"

#include <gtest/gtest.h>

namespace tierloam::reckoning {
namespace {

/// Of every sort of entry that leaves something behind in a run: routines, readings, looks, a harvest after a lift, a gap in the feedings, an odd value.
Notes notes()
{
    Notes notes;
    notes.begun("Mill").fedWeekly("Mill", 2, 170, 600).fedWeekly("Mill", 191, 230, 600).add(80, "Mill", Bed{{480, Unit::g}, "corrugated cardboard shredded", {}});
    notes.add(85, "Mill", Routine{{0.1, Unit::L}, RoutineOf::water, 3}).add(120, "Mill", Weigh{{700, Unit::g}, Share::fromPercent(100)});
    notes.add(121, "Mill", Check{{}, Share::fromPercent(90), {}, {}}, 1).add(150, "Mill", Drain{Amount{0.5, Unit::L}, {}, {}, {}, {}});
    notes.add(160, "Mill", Bed{{480, Unit::g}, "corrugated cardboard shredded", {}}).add(185, "Mill", Weigh{{5, Unit::g}, Share::fromPercent(100)});
    notes.add(190, "Mill", Rotate{}).add(196, "Mill", Harvest{{1.5, Unit::kg}, {}, {}});
    return notes;
}

std::shared_ptr<const Reckoning> made() { return reckon(notes().entries(), until(210)); }

const KeptFor here{"1.2.3", false};

TEST(Kept, ComesBackAsItWas)
{
    const auto before = made();
    const std::string bytes = keptBytes(*before, here);
    const auto after = fromKept(bytes, here);
    ASSERT_TRUE(after);
    EXPECT_EQ(keptBytes(*after, here), bytes);
    ASSERT_EQ(after->stacks.size(), 1u);
    const StackReckoning& stack = after->stacks.front();
    const StackReckoning& was = before->stacks.front();
    EXPECT_EQ(stack.name, "Mill");
    EXPECT_EQ(stack.digest, was.digest);
    EXPECT_EQ(stack.now.colonyKg, was.now.colonyKg);
    ASSERT_EQ(stack.history.size(), was.history.size());
    EXPECT_EQ(stack.history.back().slots.front().feedToCast, was.history.back().slots.front().feedToCast);
    EXPECT_EQ(stack.now.slots.front().readyOn, was.now.slots.front().readyOn);
    EXPECT_EQ(stack.forecast.turnOn, was.forecast.turnOn);
    EXPECT_EQ(stack.drains, was.drains);
    EXPECT_EQ(stack.disagreements, was.disagreements);
    EXPECT_EQ(stack.nextLooks, was.nextLooks);
    EXPECT_FALSE(stack.present);
    EXPECT_TRUE(was.present);
}

TEST(Kept, IsNothingForAnotherReleaseOrHemisphere)
{
    const std::string bytes = keptBytes(*made(), here);
    EXPECT_FALSE(fromKept(bytes, {"1.2.4", false}));
    EXPECT_FALSE(fromKept(bytes, {"1.2.3", true}));
}

TEST(Kept, IsNothingWhenItIsDamagedOrCutShort)
{
    const std::string bytes = keptBytes(*made(), here);
    for (std::size_t at = 0; at < bytes.size(); at += 1 + bytes.size() / 400) {
        std::string flipped = bytes;
        flipped[at] = static_cast<char>(flipped[at] ^ 0x10);
        EXPECT_FALSE(fromKept(flipped, here)) << at;
        EXPECT_FALSE(fromKept(bytes.substr(0, at), here)) << at;
    }
    EXPECT_FALSE(fromKept(bytes + "x", here));
    EXPECT_FALSE(fromKept("", here));
}

/// What another session finds: estimates as bytes, and members as bytes put to them.
std::shared_ptr<const Reckoning> found(const Reckoning& before, bool few = false)
{
    auto again = std::make_shared<Reckoning>(*fromKept(keptBytes(before, here), here));
    KeptSnapshots written, read;
    const std::string bytes = keptMembers(before.stacks.front(), here, few, written);
    again->stacks.front().snapshots = membersFromKept(bytes, here, again->stacks.front(), read);
    EXPECT_EQ(read.held.size(), written.held.size());
    EXPECT_FALSE(read.held.empty());
    return again;
}

TEST(KeptMembers, GoOnAsIfTheyHadNeverLeft)
{
    for (const bool few : {false, true}) {
        const auto before = found(*made(), few);
        EXPECT_EQ(before->stacks.front().snapshots.size(), few ? 1u : 2u) << "yesterday's, and one of a month ago";
        for (const int later : {0, 1, 12}) {
            Notes more = notes();
            more.add(210 + later, "Mill", Feed{{500, Unit::g}, {}, {}}).add(205, "Mill", Water{{0.3, Unit::L}});
            Options options = until(210 + later);
            const std::string anew = keptBytes(*reckon(more.entries(), options), here);
            options.previous = before;
            const auto goesOn = reckon(more.entries(), options);
            EXPECT_EQ(keptBytes(*goesOn, here), anew) << later << " days later";
            auto other = std::make_shared<Reckoning>(*before); // would it be seen?
            auto spoiled = std::make_shared<Snapshot>(*other->stacks.front().snapshots.front());
            spoiled->state.members.stack.blocks.front().stack.reserve[3] *= 1.01;
            other->stacks.front().snapshots = {spoiled};
            options.previous = other;
            if (!few) {
                EXPECT_NE(keptBytes(*reckon(more.entries(), options), here), anew);
            }
            const auto first = [](const Reckoning& of) { return of.stacks.front().snapshots.front()->prefix; };
            if (!few) {
                EXPECT_EQ(first(*goesOn), first(*before)) << "it did go on from there";
            }
        }
    }
}

TEST(KeptMembers, AreNothingWhenDamagedOrOfSomethingElse)
{
    const auto before = made();
    StackReckoning stack = before->stacks.front();
    KeptSnapshots held;
    const std::string bytes = keptMembers(stack, here, true, held);
    ASSERT_EQ(membersFromKept(bytes, here, stack, held).size(), 1u);
    for (std::size_t at = 0; at < bytes.size(); at += 1 + bytes.size() / 150) {
        std::string flipped = bytes;
        flipped[at] = static_cast<char>(flipped[at] ^ 0x10);
        EXPECT_TRUE(membersFromKept(flipped, here, stack, held).empty()) << at;
        EXPECT_TRUE(membersFromKept(bytes.substr(0, at), here, stack, held).empty()) << at;
    }
    EXPECT_TRUE(held.held.empty());
    EXPECT_TRUE(membersFromKept(bytes + "x", here, stack, held).empty());
    EXPECT_TRUE(membersFromKept(bytes, {"1.2.4", false}, stack, held).empty());
    EXPECT_TRUE(membersFromKept(bytes, {"1.2.3", true}, stack, held).empty());
    stack.name = "Barn";
    EXPECT_TRUE(membersFromKept(bytes, here, stack, held).empty());
}

TEST(KeptMembers, AreWrittenAnewOnlyWhenTheyHoldNoMoreOrAreAWeekOld)
{
    const auto before = made();
    KeptSnapshots held;
    EXPECT_FALSE(held.standFor(before->stacks.front())) << "none yet";
    keptMembers(before->stacks.front(), here, false, held);
    EXPECT_TRUE(held.standFor(before->stacks.front()));
    const auto on = [&](int day, const Notes& journal) {
        Options options = until(day);
        options.previous = found(*before);
        return held.standFor(reckon(journal.entries(), options)->stacks.front());
    };
    EXPECT_TRUE(on(217, notes()));
    EXPECT_FALSE(on(218, notes())) << "a week old";
    EXPECT_TRUE(on(210, notes().add(210, "Mill", Feed{{500, Unit::g}, {}, {}}))) << "an entry of today leaves yesterday's as it was";
    EXPECT_FALSE(on(210, notes().add(200, "Mill", Feed{{500, Unit::g}, {}, {}}))) << "the days before hold no more";
}

}
}
