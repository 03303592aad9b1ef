// The days of a year's harvests: 12 stacks (bar 200 ms), 200 stacks (bar 2 s), five harvests each, any day of the week.
#include "core/planning/harvest_days.h"

#include <benchmark/benchmark.h>

#include <random>

namespace {

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
    for (auto each : state) {
        static_cast<void>(each);
        benchmark::DoNotOptimize(chooseDays(stacks, wishes));
    }
}
BENCHMARK(daysOfHarvests)->ArgNames({"stacks", "spread"})->ArgsProduct({{12, 200}, {0, 1}})->Unit(benchmark::kMillisecond);

}

BENCHMARK_MAIN();
