#include "core/exchange/journal_csv.h"
#include "core/journal/edit.h"

#include <benchmark/benchmark.h>

// What the journal costs: 10 years of 3 stacks, 5,000 entries.
namespace {

using namespace tierloam;
using namespace tierloam::journal;

Entries tenYears()
{
    Entries entries;
    std::int64_t id = 0;
    const Day first = *parseDay("2021-01-01");
    const auto add = [&](int day, const char* stack, Action action) {
        Entry entry;
        entry.id = EntryId{++id};
        entry.date.day = first + std::chrono::days{day};
        entry.positionInDay = id;
        entry.stack = stack;
        entry.action = std::move(action);
        entries.push_back(std::move(entry));
    };
    const auto bed = [] { return Bed{{900, Unit::g}, "corrugated cardboard shredded", {}}; };
    const std::array stacks{"Scullery", "Lean-to", "Cellar"};
    for (const char* stack : stacks) {
        add(0, stack, Setup{});
        for (int tray = 0; tray < 3; ++tray) add(0, stack, bed());
    }
    for (int day = 1; entries.size() < 5000; ++day)
        for (const char* stack : stacks) {
            if (day % 3 == 0) add(day, stack, Feed{{300, Unit::g}, {}, {}});
            if (day % 7 == 0) add(day, stack, Drain{Amount{0.5, Unit::L}, {}, {}, {}, {}});
            if (day % 70 == 60) add(day, stack, Rotate{});
            if (day % 70 == 65) {
                add(day, stack, Harvest{{2, Unit::kg}, {}, {}});
                add(day, stack, bed());
            }
        }
    return entries;
}

void replayTenYears(benchmark::State& state)
{
    const Entries entries = tenYears();
    if (!replay(entries).refusals.empty()) return state.SkipWithError("the journal is not legal");
    for (auto _ : state) benchmark::DoNotOptimize(replay(entries));
    state.counters["entries"] = static_cast<double>(entries.size());
}
BENCHMARK(replayTenYears)->Unit(benchmark::kMillisecond);

void editInTheMiddle(benchmark::State& state)
{
    const Entries entries = tenYears();
    Edit edit;
    edit.added = {entries[entries.size() / 2]};
    edit.added[0].id = EntryId::none;
    for (auto _ : state) benchmark::DoNotOptimize(applyEdit(entries, edit));
}
BENCHMARK(editInTheMiddle)->Unit(benchmark::kMillisecond);

void csvOutAndIn(benchmark::State& state)
{
    const Entries entries = tenYears();
    for (auto _ : state) {
        const std::string csv = exchange::writeJournal(entries);
        const auto read = exchange::readJournal(csv, {});
        if (!read.faults.empty()) return state.SkipWithError("the journal did not come back");
        benchmark::DoNotOptimize(read);
    }
}
BENCHMARK(csvOutAndIn)->Unit(benchmark::kMillisecond);

}

BENCHMARK_MAIN();
