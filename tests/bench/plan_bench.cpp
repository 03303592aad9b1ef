// The days of a year's harvests: 12 stacks (bar 200 ms), 200 stacks (bar 2 s), five harvests each, any day of the week.
// What the kitchen gives, learned from ten years of feedings with three weeks away a year: in the window's thread, so a bar of 16 ms, one frame.
#include "core/planning/feeding_plan.h"
#include "core/planning/harvest_days.h"

#include <benchmark/benchmark.h>

#include <random>

namespace {

using namespace tierloam;
using namespace tierloam::planning;

std::vector<StackTurns> drawn(int stacks)
{
    std::mt19937 dice{31};
    std::vector<StackTurns> all(static_cast<std::size_t>(stacks));
    for (StackTurns& stack : all) {
        int day = static_cast<int>(dice() % 60U);
        for (int k = 0; k < 5; ++k) {
            stack.natural.push_back(day);
            day += 50 + static_cast<int>(dice() % 40U);
        }
    }
    return all;
}

void daysOfHarvests(benchmark::State& state)
{
    const auto stacks = drawn(static_cast<int>(state.range(0)));
    HarvestWishes wishes;
    wishes.gathering = state.range(1) == 0 ? Gathering::gathered : Gathering::spread;
    if (wishes.gathering == Gathering::gathered) wishes.mostWait = usualWait, wishes.trip = tripFor(usualWait);
    for (auto each : state) {
        static_cast<void>(each);
        benchmark::DoNotOptimize(chooseDays(stacks, wishes));
    }
}
BENCHMARK(daysOfHarvests)->ArgNames({"stacks", "spread"})->ArgsProduct({{12, 200}, {0, 1}})->Unit(benchmark::kMillisecond);

void kitchensSupply(benchmark::State& state)
{
    const Day today{std::chrono::year{2031} / 5 / 2};
    journal::Entries entries;
    for (int day = 3650; day >= 0; --day)
        for (int stack = 0; stack < state.range(0); ++stack) {
            journal::Entry entry;
            entry.stack = std::to_string(stack);
            entry.date.day = today - std::chrono::days{day};
            if (day % 365 == 100) {
                entry.action = journal::Event{"away", entry.date.day + std::chrono::days{20}};
                entries.push_back(entry);
            }
            if (day % 4 != 0) continue;
            entry.action = journal::Feed{{300, Unit::g}, {}, {}};
            entries.push_back(entry);
        }
    for (auto each : state) {
        static_cast<void>(each);
        benchmark::DoNotOptimize(learnedSupply(entries, materials::Table::builtIn(), today));
    }
}
BENCHMARK(kitchensSupply)->ArgNames({"stacks"})->Arg(1)->Arg(8)->Unit(benchmark::kMillisecond);

}

BENCHMARK_MAIN();
