// What is handed over while a long reckoning runs, and what a later one may take from it.
#include "core/reckoning/reckon.h"

#include "tests/core/reckoning_notes.h"

#include <gtest/gtest.h>

namespace tierloam::reckoning {
namespace {

TEST(HandedOver, StacksNotYetMadeAreNoBasisForTheNextReckoning)
{
    Notes notes;
    const int many = static_cast<int>(manyStacks) + 2;
    const auto name = [](int i) { return "Stack " + std::to_string(100 + i); };
    for (int i = 0; i < many; ++i) notes.begun(name(i)).fedWeekly(name(i), 2, 10);
    Options yesterday = until(11);
    yesterday.members = 64;
    Options today = until(12);
    today.members = 64;
    today.previous = reckon(notes.entries(), yesterday);
    today.shownFirst = {name(7), name(9)};
    std::stop_source stop;
    std::shared_ptr<const Reckoning> part;
    today.progress = [&](std::size_t, std::size_t, const std::shared_ptr<const Reckoning>& soFar) {
        if (!soFar || part) return;
        part = soFar;
        stop.request_stop();
    };
    EXPECT_EQ(reckon(notes.entries(), today, stop.get_token()), nullptr) << "stopped by an entry";
    ASSERT_NE(part, nullptr);
    Options again = until(12);
    again.members = 64;
    again.previous = part;
    const auto whole = reckon(notes.entries(), again);
    ASSERT_EQ(whole->stacks.size(), static_cast<std::size_t>(many));
    for (const StackReckoning& stack : whole->stacks) EXPECT_EQ(stack.now.day, onDay(12)) << stack.name;
}

}
}
