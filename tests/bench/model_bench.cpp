// Costs of the model and of a reckoning from scratch. Medians and ratios within one run say more than any one figure:
//     model_bench --benchmark_repetitions=5 --benchmark_report_aggregates_only=true
#include "core/model/acts.h"
#include "core/model/masses.h"
#include "core/model/step.h"
#include "core/reckoning/reckon.h"
#include "tests/bench/bench_household.h"

#include <benchmark/benchmark.h>

#include <algorithm>
#include <string>
#include <sys/resource.h>
#include <vector>

using namespace tierloam;

namespace {

constexpr int members = 512;

model::Ensemble threeTrays()
{
    using namespace model;
    Ensemble stack = Ensemble::drawn(77, members, {}, 20);
    const auto all = [&](double value) { return PerMember(static_cast<std::size_t>(stack.members()), value); };
    const Substance kitchen{1, 0.16, 0.0195, 0.4875, 4.0, 450};
    const Substance cardboard{4, 0.92, 0.001, 0.563, 3.0, 60};
    for (int t = 0; t < 3; ++t) {
        addTray(stack, t + 1, t + 1, 0);
        addMatter(stack, t, cardboard, all(0.48), all(0.92), 0.95 * 3.0, false);
        addMatter(stack, t, kitchen, all(0.8), all(0.16), std::nullopt, true);
        if (t == 0) stock(stack, 0, 0.45, std::nullopt, true);
    }
    return stack;
}

/// A day of all members: a pair of steps by one kernel, without the draws of process noise.
void memberDay(benchmark::State& state, model::StepPair step)
{
    model::Ensemble stack = threeTrays();
    model::StepForcing forcing{};
    forcing.days = 0.5;
    forcing.area = stack.area;
    forcing.height = stack.height;
    forcing.sumpCapacity = 4;
    forcing.spigotOpen = true;
    forcing.usualTemperature = 20;
    forcing.relativeHumidity = 0.55;
    for ([[maybe_unused]] auto round : state)
        for (model::Ensemble::Block& block : stack.blocks)
            step(block.stack, block.trays.data(), stack.shapes.data(), stack.trays(), block.parameters, model::massClassTable(), forcing);
    state.counters["per_member_day"] = benchmark::Counter(members, benchmark::Counter::kIsIterationInvariantRate | benchmark::Counter::kInvert);
}
BENCHMARK_CAPTURE(memberDay, base, model::baseKernels().step)->Unit(benchmark::kMicrosecond);
BENCHMARK_CAPTURE(memberDay, avx2, model::avx2Kernels().step)->Unit(benchmark::kMicrosecond);
[[maybe_unused]] const bool wider = [] {
    const model::KernelSets here = model::kernelSetsHere();
    if (here.count > 2) benchmark::RegisterBenchmark("memberDay/avx512", memberDay, here.set[2].kernels.step)->Unit(benchmark::kMicrosecond);
    return true;
}();

/// The same with process noise, as a reckoning runs it: with the widest kernels, or those that TIERLOAM_ISA names.
void memberDayWithNoise(benchmark::State& state)
{
    model::Ensemble stack = threeTrays();
    model::DayForcing forcing;
    forcing.day = 100; // the first week of a tray takes more steps
    for ([[maybe_unused]] auto round : state) {
        model::advanceDay(stack, forcing);
        ++forcing.day;
    }
    state.counters["per_member_day"] = benchmark::Counter(members, benchmark::Counter::kIsIterationInvariantRate | benchmark::Counter::kInvert);
}
BENCHMARK(memberDayWithNoise)->Unit(benchmark::kMicrosecond);

void reckoning(benchmark::State& state, const journal::Entries& entries)
{
    reckoning::Options options;
    options.asOf = entries.back().date.day;
    options.members = members;
    for ([[maybe_unused]] auto round : state) benchmark::DoNotOptimize(reckoning::reckon(entries, options));
    state.counters["entries"] = static_cast<double>(entries.size());
    rusage used{};
    getrusage(RUSAGE_SELF, &used);
    state.counters["peak_MB"] = static_cast<double>(used.ru_maxrss) / 1024.0;
}
void fromScratch(benchmark::State& state) { reckoning(state, bench::yearsOfThreeStacks(static_cast<int>(state.range(0)))); }
BENCHMARK(fromScratch)->Name("three_stacks_from_scratch_years")->Arg(2)->Arg(10)->Unit(benchmark::kMillisecond)->UseRealTime();
/// With a drain measured each week and a reading each fortnight: some 780 looks more a stack.
void drainedFromScratch(benchmark::State& state) { reckoning(state, bench::tenDrainedYears()); }
BENCHMARK(drainedFromScratch)->Name("three_stacks_from_scratch_ten_years_drained")->Unit(benchmark::kMillisecond)->UseRealTime();

/// One feeding more on one of three stacks, dated so many days ago; the others are taken over.
void oneEntryMore(benchmark::State& state)
{
    journal::Entries entries = bench::yearsOfThreeStacks(static_cast<int>(state.range(0)));
    reckoning::Options options;
    options.asOf = entries.back().date.day;
    options.members = members;
    options.previous = reckoning::reckon(entries, options);
    const Day day = options.asOf - std::chrono::days{state.range(1)};
    journal::Entry more = entries.back();
    more.id = journal::EntryId{1000000};
    more.positionInDay = 1000000;
    more.date.day = day;
    more.action = journal::Feed{{500, Unit::g}, {}, {}};
    const auto after = std::upper_bound(entries.begin(), entries.end(), day, [](Day wanted, const journal::Entry& entry) { return wanted < entry.date.day; });
    entries.insert(after, more);
    for ([[maybe_unused]] auto round : state) benchmark::DoNotOptimize(reckoning::reckon(entries, options));
}
BENCHMARK(oneEntryMore)->ArgNames({"years", "days_ago"})->Args({2, 0})->Args({10, 0})->Args({10, 30})->Unit(benchmark::kMillisecond)->UseRealTime();

/// 200 stacks of two years from scratch, and the memory that the process has taken at most.
void manyStacks(benchmark::State& state)
{
    std::vector<std::string> names;
    for (int i = 1; i <= 200; ++i) names.push_back("Row " + std::to_string(i));
    const journal::Entries entries = bench::yearsOfStacks(2, names);
    reckoning::Options options;
    options.asOf = entries.back().date.day;
    options.members = members;
    for ([[maybe_unused]] auto round : state) benchmark::DoNotOptimize(reckoning::reckon(entries, options));
    rusage used{};
    getrusage(RUSAGE_SELF, &used);
    state.counters["peak_MB"] = static_cast<double>(used.ru_maxrss) / 1024.0;
}
BENCHMARK(manyStacks)->Unit(benchmark::kSecond)->UseRealTime()->Iterations(1);

}

BENCHMARK_MAIN();
