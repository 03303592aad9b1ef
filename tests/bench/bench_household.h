#pragma once

#include "core/household/clock.h"
#include "core/household/household.h"
#include "tests/bench/years_of_stacks.h"

#include <algorithm>
#include <cmath>

/// Household files for the bench programs.
namespace tierloam::bench {

/// Ten years of three stacks with what charts draw besides: drains of an open spigot each week, a reading each fortnight.
inline journal::Entries tenDrainedYears()
{
    constexpr int years = 10;
    const std::vector<std::string> stacks{"Scullery", "Lean-to", "Cellar"};
    journal::Entries entries = yearsOfStacks(years, stacks);
    const Day start = entries.front().date.day;
    journal::Entries more;
    for (int day = 10; day < years * 365; ++day)
        for (const std::string& stack : stacks) {
            const auto add = [&](journal::Action action) {
                journal::Entry entry;
                entry.date.day = start + std::chrono::days{day};
                entry.stack = stack;
                entry.action = std::move(action);
                more.push_back(std::move(entry));
            };
            if (day % 7 == 5) {
                journal::Drain drained;
                drained.volume = Amount{0.3 + 0.2 * std::sin(day * 0.02), Unit::L};
                add(drained);
            }
            if (day % 14 == 6) {
                journal::Reading read;
                read.bin = celsius(20 + 6 * std::sin(day * 2 * 3.14159265 / 365));
                add(read);
            }
        }
    entries.insert(entries.end(), more.begin(), more.end());
    std::stable_sort(entries.begin(), entries.end(), [](const auto& a, const auto& b) { return a.date.day < b.date.day; });
    return entries;
}

/// A new file with these entries, nothing reckoned; false when it cannot be made.
inline bool makeHousehold(const QString& path, journal::Entries entries)
{
    for (journal::Entry& entry : entries) entry.id = journal::EntryId::none;
    household::Household::Settings making;
    making.createIfAbsent = true;
    making.reckon = [](const journal::Entries&, const reckoning::Options&, std::stop_token) { return std::shared_ptr<const reckoning::Reckoning>{}; };
    auto made = household::Household::open(path, std::make_shared<household::FixedClock>(entries.back().date.day), making);
    auto* opened = std::get_if<std::unique_ptr<household::Household>>(&made);
    if (!opened) return false;
    (*opened)->recordAll(entries, QStringLiteral("bench"));
    (*opened)->finishWrites();
    return (*opened)->journal()->entries.size() == entries.size();
}

}
