#include "tests/support/sample_reckoning.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace tierloam::tests {

namespace {

using reckoning::Band;
using reckoning::Dates;
using reckoning::StackEstimate;
using reckoning::StackReckoning;
using reckoning::TrayEstimate;
using reckoning::TrayState;
using std::chrono::days;

/// One tray as it is today; before that it is scaled down with its age.
struct TraySpec {
    int age;
    reckoning::Strata strata;
    double ratio, ready, wormsKg;
    TrayState state;
    int readyInDays;
};

struct StackSpec {
    const char* name;
    double colonyKg, colonyLow, colonyHigh, temp, processing, flow, sumpL;
    journal::Spigot spigot;
    journal::Stand stand;
    double feedGrams;
    int drainEvery;
    double drainL;
    int dryingDays;                     // 0: no tray is drying
    std::vector<TraySpec> trays;        // as they stand today, from slot 1 up
};

const std::vector<StackSpec>& specs()
{
    static const std::vector<StackSpec> all{
        {"Scullery", 1.10, 0.90, 1.40, 21, 31, 1.3, 1.4, journal::Spigot::open, journal::Stand::legs, 450, 7, 1.3, 0,
         {{214, {6.0, 0.25, 0.0, 0.15}, 0.07, 0.93, 0.18, TrayState::ready, -6},
          {118, {4.2, 1.3, 0.35, 0.3}, 0.31, 0.18, 0.32, TrayState::working, 46},
          {41, {1.8, 1.9, 1.4, 2.3}, 0.5, 0.01, 0.60, TrayState::working, 118}}},
        {"Lean-to", 0.60, 0.40, 0.90, 16, 14, 0.9, 3.2, journal::Spigot::shut, journal::Stand::legs, 250, 14, 2.4, 0,
         {{131, {3.9, 1.5, 0.3, 0.4}, 0.52, 0.04, 0.25, TrayState::working, 70},
          {38, {0.8, 1.3, 1.3, 4.2}, 3.4, 0.0, 0.35, TrayState::working, 160}}},
        {"Cellar", 0.90, 0.80, 1.10, 18, 26, 1.1, 0.5, journal::Spigot::open, journal::Stand::base, 300, 7, 1.0, 4,
         {{166, {4.9, 0.8, 0.2, 0.2}, 0.16, 0.46, 0.33, TrayState::nearly, 21},
          {84, {3.2, 2.0, 0.9, 1.4}, 0.9, 0.02, 0.50, TrayState::working, 95},
          {226, {6.1, 0.2, 0.0, 0.0}, 0.05, 1.0, 0.05, TrayState::drying, -30}}}};
    return all;
}

Band around(double middle, double share = 0.2) { return {middle * (1 - share), middle, middle * (1 + share)}; }

/// A steady wave that differs from stack to stack, so that series look like records and not like rulers.
double wave(std::size_t stack, double day, double size)
{
    const double s = static_cast<double>(stack);
    return 1 + size * (0.6 * std::sin(day / 11 + s * 1.7) + 0.4 * std::sin(day / 4.3 + s * 0.9));
}

TrayEstimate trayOn(const TraySpec& spec, int slot, int batch, int age)
{
    const double grown = std::clamp(static_cast<double>(age) / spec.age, 0.0, 1.0);
    TrayEstimate tray;
    tray.slot = slot;
    tray.tray = batch;
    tray.batch = batch;
    tray.ageDays = age;
    tray.strata = {spec.strata.castingsCm * std::pow(grown, 1.3), spec.strata.softenedCm * (0.3 + 0.7 * grown) + 1.2 * (1 - grown),
                   spec.strata.foodCm + 1.1 * (1 - grown), spec.strata.beddingCm + 3.2 * (1 - grown)};
    tray.depthCm = tray.strata.total();
    const double ratio = std::min(999.0, spec.ratio / std::max(std::pow(grown, 2.2), 1e-4));
    tray.feedToCast = {ratio * 0.7, ratio, std::min(999.0, ratio * 1.5)};
    tray.readyProbability = spec.ready * std::pow(grown, 6);
    tray.nearlyProbability = std::min(1.0, tray.readyProbability * 1.6);
    tray.state = age == spec.age ? spec.state : tray.readyProbability >= 0.8 ? TrayState::ready : TrayState::working;
    tray.castingsDepthCm = around(tray.strata.castingsCm);
    tray.castingsDryKg = around(tray.strata.castingsCm * 0.16 * 1.82);
    tray.unprocessedDryKg = around(ratio * tray.castingsDryKg.p50, 0.3);
    tray.inputDryKg = around(tray.castingsDryKg.p50 * 2.2 + 0.4, 0.1);
    tray.slowDryKg = {0, 0, 0};
    tray.wormsKgPerM2 = around(spec.wormsKg * (0.5 + 0.5 * grown) / 0.16, 0.3);
    tray.wormShare = around(0.3, 0.3);
    tray.cocoons = around(240 * grown, 0.4);
    tray.cnRatio = around(24, 0.1);
    tray.moisturePct = around(78, 0.05);
    tray.waterShare = around(0.95, 0.1);
    tray.weightKg = around(1.2 + 0.9 * tray.depthCm, 0.1);
    return tray;
}

/// Batch numbers follow the order of bedding: the oldest tray is batch 1.
int batchOf(const StackSpec& spec, const TraySpec& tray)
{
    return static_cast<int>(std::count_if(spec.trays.begin(), spec.trays.end(), [&](const TraySpec& other) { return other.age >= tray.age; }));
}

StackEstimate stackOn(const StackSpec& spec, std::size_t index, int daysBack)
{
    const Day day = sampleToday() - days{daysBack};
    StackEstimate estimate;
    estimate.day = day;
    std::vector<TraySpec> standing = spec.trays;
    std::erase_if(standing, [&](const TraySpec& tray) { return tray.age < daysBack; });
    // Before the rotation the drying tray stood at the bottom.
    if (spec.dryingDays > 0 && daysBack > spec.dryingDays)
        std::sort(standing.begin(), standing.end(), [](const TraySpec& a, const TraySpec& b) { return a.age > b.age; });
    for (std::size_t i = 0; i < standing.size(); ++i) {
        estimate.slots.push_back(trayOn(standing[i], static_cast<int>(i) + 1, batchOf(spec, standing[i]), standing[i].age - daysBack));
        if (standing[i].state == TrayState::drying) { // its worms leave once it is in the light
            const double before = 1 + 15.0 * std::min(1.0, static_cast<double>(daysBack) / spec.dryingDays);
            reckoning::Band& worms = estimate.slots.back().wormsKgPerM2;
            worms = {worms.p05 * before, worms.p50 * before, worms.p95 * before};
        }
    }
    const double back = static_cast<double>(daysBack);
    const double growth = 1 - 0.0022 * back;
    const double colony = spec.colonyKg * growth * (daysBack == 0 ? 1 : wave(index, back, 0.05));
    estimate.colonyKg = {colony * spec.colonyLow / spec.colonyKg, colony, colony * spec.colonyHigh / spec.colonyKg};
    estimate.worms = around(colony * 4200, 0.25);
    estimate.adults = around(colony * 1300, 0.25);
    estimate.processingGDryPerDay = around(spec.processing * growth * (daysBack == 0 ? 1 : wave(index, back, 0.12)), 0.22);
    estimate.ration = around(1.2, 0.2);
    estimate.binTempC = {spec.temp - 1, spec.temp, spec.temp + 1};
    estimate.sumpL = daysBack == 0 ? around(spec.sumpL, 0.12) : around(std::fmod(spec.sumpL + 40 - back * spec.flow / 7, 3.2), 0.15);
    estimate.drainedLPerWeek = around(spec.flow * (0.9 + 0.1 * wave(index, back, 0.5)), 0.3);
    estimate.leachateEc = around(2.4, 0.3);
    return estimate;
}

Dates datesFrom(int inDays, int spread)
{
    const Day middle = sampleToday() + days{inDays};
    return {middle - days{spread}, middle, middle + days{spread}};
}

StackReckoning stackReckoning(const StackSpec& spec, std::size_t index)
{
    StackReckoning stack;
    stack.name = spec.name;
    int oldest = 0;
    for (const TraySpec& tray : spec.trays) oldest = std::max(oldest, tray.age);
    stack.firstBedding = sampleToday() - days{oldest};
    stack.asOf = sampleToday();
    for (int back = oldest; back >= 0; --back)
        if (back <= 90 || back % 7 == 0) stack.history.push_back(stackOn(spec, index, back));
    stack.now = stack.history.back();
    for (std::size_t i = 0; i < spec.trays.size(); ++i) stack.now.slots[i].readyOn = datesFrom(spec.trays[i].readyInDays, 9);
    stack.forecast.turnOn = datesFrom(20 + 10 * static_cast<int>(index), 8);
    if (spec.spigot == journal::Spigot::shut) stack.forecast.sumpFullOn = datesFrom(2, 1);
    stack.forecast.drainedExpectedLPerWeek = around(spec.flow, 0.3);
    stack.forecast.feedUsualKg = spec.feedGrams / 1000;
    stack.forecast.feedHighKg = stack.forecast.feedNowKg = spec.feedGrams / 400;
    stack.record.lastEntry = sampleToday() - days{1};
    stack.record.lastFeed = sampleToday() - days{4};
    stack.record.usualFeedKg = spec.feedGrams / 1000;
    stack.record.spigotShut = spec.spigot == journal::Spigot::shut;
    stack.record.daysDrying = spec.dryingDays;
    stack.record.spareTrays = 3 - static_cast<int>(spec.trays.size());
    stack.effectiveSize = 400;
    return stack;
}

constexpr int setUpBack = 230; // all on one day, in this order, so that the shelf shows them in it

struct Dated { Day day; int order; journal::Entry entry; };

void addStack(std::vector<Dated>& all, const StackSpec& spec, const std::string& name)
{
    using namespace journal;
    int order = 0;
    const auto add = [&](int back, Action action, std::optional<int> slot = {}) {
        Entry entry;
        entry.date.day = sampleToday() - days{back};
        entry.stack = name;
        entry.slot = slot;
        entry.action = std::move(action);
        all.push_back({entry.date.day, order++, entry});
    };
    std::vector<int> ages;
    for (const TraySpec& tray : spec.trays) ages.push_back(tray.age);
    std::sort(ages.rbegin(), ages.rend());
    Setup setup;
    setup.spigot = spec.spigot;
    setup.stand = spec.stand;
    add(setUpBack, setup);
    for (const int age : ages) add(age, Bed{{400, Unit::g}, "corrugated cardboard shredded", {}});
    add(ages.front(), Stock{{450, Unit::g}, {}, {}});
    // The three trays were bedded one by one; a rotation comes last.
    for (int back = ages.front() - 4; back > 3; back -= 7) {
        add(back, Feed{{spec.feedGrams + (back % 3 - 1) * 20.0, Unit::g}, {}, {}});
        add(back, Cover{Amount{30, Unit::g}, {}});
        if (back % 2 == 0) add(back, Water{{0.5, Unit::L}});
    }
    for (int back = ages.front() - 14; back > 1; back -= spec.drainEvery) {
        Drain drain;
        drain.volume = Amount{std::round(spec.drainL * (0.8 + 0.05 * (back % 9)) * 10) / 10, Unit::L};
        add(back, drain);
    }
    if (spec.dryingDays > 0) add(spec.dryingDays, Rotate{});
}

journal::Entries ordered(std::vector<Dated> all)
{
    std::stable_sort(all.begin(), all.end(), [](const Dated& a, const Dated& b) { return a.day < b.day; });
    journal::Entries entries;
    std::int64_t position = 0;
    for (Dated& each : all) {
        position = !entries.empty() && entries.back().date.day == each.day ? position + 1 : 1;
        each.entry.id = journal::EntryId{static_cast<std::int64_t>(entries.size()) + 1};
        each.entry.positionInDay = position;
        entries.push_back(each.entry);
    }
    return entries;
}

std::string nameOf(int stack)
{
    const auto& spec = specs()[static_cast<std::size_t>(stack) % specs().size()];
    return stack < static_cast<int>(specs().size()) ? spec.name : std::string{spec.name} + " " + std::to_string(stack + 1);
}

}

Day sampleToday()
{
    using namespace std::chrono;
    return sys_days{year{2031} / May / 2};
}

journal::Entries sampleJournal() { return sampleJournal(static_cast<int>(specs().size())); }

journal::Entries sampleJournal(int stacks)
{
    std::vector<Dated> all;
    for (int i = 0; i < stacks; ++i) addStack(all, specs()[static_cast<std::size_t>(i) % specs().size()], nameOf(i));
    return ordered(std::move(all));
}

std::shared_ptr<const reckoning::Reckoning> sampleReckoning() { return sampleReckoning(static_cast<int>(specs().size())); }

std::shared_ptr<const reckoning::Reckoning> sampleReckoning(int stacks)
{
    auto made = std::make_shared<reckoning::Reckoning>();
    made->asOf = sampleToday();
    made->members = 512;
    for (int i = 0; i < stacks; ++i) {
        const std::size_t index = static_cast<std::size_t>(i) % specs().size();
        made->stacks.push_back(stackReckoning(specs()[index], index));
        made->stacks.back().name = nameOf(i);
    }
    return made;
}

}
