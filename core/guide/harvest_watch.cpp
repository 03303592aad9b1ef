#include "core/guide/harvest_watch.h"

#include "core/guide/figures.h"

#include <algorithm>

namespace tierloam::guide {

namespace {

constexpr double wetterThanDrained = 1.05; ///< of field capacity; the reckoning slows light-drying there

const reckoning::TrayEstimate* trayOf(const reckoning::StackEstimate* on, int batch)
{
    if (!on) return nullptr;
    const auto found = std::ranges::find(on->slots, batch, &reckoning::TrayEstimate::batch);
    return found == on->slots.end() ? nullptr : &*found;
}

/// Worms in a tray, by number.
double wormsIn(const reckoning::StackEstimate& on, double share) { return share * on.worms.p50; }

const journal::Step* stepOf(const journal::StackHistory& history, std::size_t entry)
{
    const auto found = std::ranges::find_if(history.steps, [&](const journal::Step& step) { return step.entry == entry && !step.incoming; });
    return found == history.steps.end() ? nullptr : &*found;
}

}

std::vector<DryingDay> dryingDays(const reckoning::StackReckoning& stack, const journal::StackHistory& history, const journal::Entries& entries, Day today)
{
    std::vector<DryingDay> days;
    const journal::Standing* standing = history.on(today);
    if (!standing || !standing->drying || !standing->dryingSince) return days;
    const int batch = *standing->drying;
    const Day since = *standing->dryingSince;
    const reckoning::TrayEstimate* then = trayOf(stack.on(since - std::chrono::days{1}), batch);
    if (!then) then = trayOf(stack.on(since), batch); // no estimate of the day before: the evening of the first day stands for it
    if (!then) return days;
    const double start = then->wormsKgPerM2.p50;
    for (Day day = since; day <= today; day += std::chrono::days{1}) {
        const reckoning::StackEstimate* on = stack.on(day);
        const reckoning::TrayEstimate* tray = on && on->day == day ? trayOf(on, batch) : nullptr;
        if (!tray) continue;
        DryingDay made;
        made.day = day;
        made.number = daysBetween(since, day) + 1;
        const auto left = [&](double kgPerM2) { return start > 0 ? std::clamp(kgPerM2 / start, 0.0, 1.0) : 0.0; };
        made.wormsLeft = left(tray->wormsKgPerM2.p50);
        made.wormsLeftLow = left(tray->wormsKgPerM2.p05);
        made.wormsLeftHigh = left(tray->wormsKgPerM2.p95);
        made.moisturePct = tray->moisturePct;
        made.tooWet = tray->waterShare.p50 > wetterThanDrained;
        for (std::size_t i = 0; i < entries.size(); ++i) {
            if (entries[i].stack != stack.name || entries[i].date.day != day || !std::holds_alternative<journal::Feed>(entries[i].action)) continue;
            const journal::Step* step = stepOf(history, i);
            if (step && step->batch == batch) made.fedOnTop = true;
        }
        days.push_back(made);
    }
    return days;
}

bool mayTake(const DryingDay& day) { return 100.0 * day.wormsLeft <= lowOf(Figure::leftAfterDrying); }

CastingsCare castingsCare(std::string_view stack, Day harvested, const journal::Entries& entries, Day today)
{
    CastingsCare care;
    for (const journal::Entry& entry : entries) {
        if (entry.stack != stack || entry.date.day < harvested || entry.date.day > today) continue;
        if (const auto* event = std::get_if<journal::Event>(&entry.action)) {
            if (event->what == lightAgainEvent && !care.lightAgain) care.lightAgain = entry.date.day;
            if (event->what == baitEvent && !care.baited) care.baited = entry.date.day;
        } else if (std::holds_alternative<journal::Stock>(entry.action) && (care.lightAgain || care.baited) && !care.carriedBack) {
            care.carriedBack = entry.date.day;
        }
    }
    return care;
}

std::optional<HarvestOutcome> latestHarvest(const reckoning::StackReckoning& stack, const journal::StackHistory& history, const journal::Entries& entries, Day today, int days)
{
    for (std::size_t i = entries.size(); i-- > 0;) {
        const auto* harvest = std::get_if<journal::Harvest>(&entries[i].action);
        if (!harvest || !harvest->whole() || entries[i].stack != stack.name || entries[i].date.day > today) continue;
        if (daysBetween(entries[i].date.day, today) > days) return std::nullopt;
        const journal::Step* step = stepOf(history, i);
        if (!step || !step->batch) return std::nullopt;
        HarvestOutcome made;
        made.day = entries[i].date.day;
        made.batch = *step->batch;
        made.moistureRead = harvest->moisture.has_value();
        const double moisture = harvest->moisture ? harvest->moisture->percent() : lowOf(Figure::takenMoisture);
        made.taken = harvest->taken.mass() ? CastingsBatch{*harvest->taken.mass(), moisture} : batchOf(harvest->taken.volume().value_or(Volume{}), moisture);
        for (const reckoning::HarvestCheck& check : stack.harvests)
            if (check.day == made.day && check.batch == made.batch) made.expectedKg = check.expectedKg;
        const reckoning::StackEstimate* before = stack.on(made.day - std::chrono::days{1});
        if (const reckoning::TrayEstimate* tray = trayOf(before, made.batch)) {
            made.dryInput = tray->inputDryKg;
            if (tray->inputDryKg.p50 > 0) made.yield = yieldAgainst(kilograms(tray->inputDryKg.p50), made.taken.dry());
            made.wormsGone = wormsIn(*before, tray->wormShare.p50);
            made.cocoonsGone = tray->cocoons.p50;
        }
        return made;
    }
    return std::nullopt;
}

}
