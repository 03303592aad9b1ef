// Estimates that are kept as bytes: the same when they come back, nothing when a byte is wrong.
#include "core/reckoning/kept.h"
#include "core/reckoning/reckon.h"
#include "tests/core/reckoning_notes.h"

#include <gtest/gtest.h>

namespace tierloam::reckoning {
namespace {

std::shared_ptr<const Reckoning> made()
{
    Notes notes;
    notes.begun("Mill").fedWeekly("Mill", 2, 200, 600).add(80, "Mill", Bed{{480, Unit::g}, "corrugated cardboard shredded", {}});
    notes.add(120, "Mill", Weigh{{700, Unit::g}, Share::fromPercent(100)}).add(121, "Mill", Check{{}, Share::fromPercent(90), {}, {}}, 1).add(150, "Mill", Drain{Amount{0.5, Unit::L}, {}, {}, {}, {}});
    Options options;
    options.asOf = onDay(210);
    options.members = 64;
    options.threads = 1;
    return reckon(notes.entries(), options);
}

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

}
}
