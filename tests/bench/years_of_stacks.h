#pragma once

#include "core/journal/entry.h"

#include <string>
#include <vector>

/// A household that goes on for years in the same way: a feeding with its cover a week, three trays, a harvest every 70 days from day 228 on.
namespace tierloam::bench {

inline journal::Entries yearsOfStacks(int years, const std::vector<std::string>& stacks)
{
    using namespace journal;
    Entries entries;
    std::int64_t number = 0;
    const Day start = *parseDay("2031-01-06");
    const auto add = [&](int day, const std::string& stack, Action action) {
        Entry entry;
        entry.id = EntryId{++number};
        entry.positionInDay = number;
        entry.date.day = start + std::chrono::days{day};
        entry.stack = stack;
        entry.action = std::move(action);
        entries.push_back(std::move(entry));
    };
    const Bed bed{{480, Unit::g}, "corrugated cardboard shredded", {}};
    for (int day = 0; day < years * 365; ++day)
        for (const std::string& stack : stacks) {
            if (day == 0) {
                add(day, stack, Setup{});
                add(day, stack, bed);
                add(day, stack, Stock{{450, Unit::g}, {}, {}});
            }
            if (day == 75 || day == 150) add(day, stack, bed);
            if (day >= 228 && (day - 228) % 70 == 0) add(day, stack, Rotate{});
            if (day >= 228 && (day - 228) % 70 == 5) {
                add(day, stack, Harvest{{3, Unit::kg}, {}, {}});
                add(day, stack, bed);
            }
            if (day % 7 == 3) {
                add(day, stack, Feed{{900, Unit::g}, {}, {}});
                add(day, stack, Cover{});
            }
        }
    return entries;
}

inline journal::Entries yearsOfThreeStacks(int years) { return yearsOfStacks(years, {"Scullery", "Lean-to", "Cellar"}); }

}
