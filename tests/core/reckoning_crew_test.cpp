// Work that is shared out: what a helping hand throws reaches whoever waits for it, and does not end the program.
#include "core/reckoning/crew.h"
#include "core/reckoning/reckon.h"
#include "tests/support/households.h"

#include <gtest/gtest.h>

#include <atomic>
#include <chrono>
#include <new>
#include <stdexcept>
#include <thread>

namespace tierloam::reckoning {
namespace {

TEST(Crew, HandsOverWhatAHelperThrowsAndWorksOn)
{
    Crew crew{2};
    const auto caller = std::this_thread::get_id();
    for (int round = 0; round < 3; ++round) {
        std::atomic<bool> came{false};
        const auto until = std::chrono::steady_clock::now() + std::chrono::seconds{20};
        EXPECT_THROW(crew.each(2, [&](int) {
            if (std::this_thread::get_id() != caller) {
                came = true;
                throw std::bad_alloc{};
            }
            while (!came && std::chrono::steady_clock::now() < until) std::this_thread::yield(); // or the caller would do all alone
        }), std::bad_alloc);
        std::atomic<int> done{0};
        crew.each(50, [&](int) { ++done; });
        EXPECT_EQ(done, 50);
    }
}

TEST(Crew, WaitsForTheOthersBeforeItThrows)
{
    Crew crew{3};
    std::atomic<int> atWork{0};
    for (int round = 0; round < 20; ++round) {
        EXPECT_THROW(crew.each(60, [&](int piece) {
            ++atWork;
            if (piece == 5) {
                --atWork;
                throw std::runtime_error{"fifth"};
            }
            std::this_thread::sleep_for(std::chrono::microseconds{50});
            --atWork;
        }), std::runtime_error);
        EXPECT_EQ(atWork, 0);
    }
}

/// Several stacks at once, each by a thread of its own.
TEST(Reckon, WhatIsThrownInAHelpingThreadReachesTheCaller)
{
    tests::MadeUp made = tests::makeHousehold(0x9a7d, 2, {}, {}, 400);
    journal::Entries all = made.entries;
    for (journal::Entry each : made.entries) {
        each.stack += " too";
        all.push_back(std::move(each));
    }
    std::stable_sort(all.begin(), all.end(), [](const journal::Entry& a, const journal::Entry& b) { return a.date.day < b.date.day; });
    for (std::size_t i = 0; i < all.size(); ++i) {
        all[i].id = journal::EntryId{static_cast<std::int64_t>(i) + 1};
        all[i].positionInDay = static_cast<std::int64_t>(i) + 1;
    }
    Options options;
    options.asOf = made.asOf;
    options.members = 64;
    options.threads = 2;
    const auto caller = std::this_thread::get_id();
    std::atomic<bool> thrown{false};
    options.progress = [&](std::size_t, std::size_t, const std::shared_ptr<const Reckoning>&) {
        if (std::this_thread::get_id() == caller) return;
        thrown = true;
        throw std::bad_alloc{};
    };
    bool reached = false;
    for (int round = 0; round < 20 && !thrown; ++round) { // on a busy machine the caller may take both
        try {
            reckon(all, options);
        } catch (const std::bad_alloc&) {
            reached = true;
        }
    }
    ASSERT_TRUE(thrown);
    EXPECT_TRUE(reached);
}

}
}
