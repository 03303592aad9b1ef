#include "core/guide/circumstances.h"

#include "core/materials/mix.h"

#include <algorithm>
#include <set>

namespace tierloam::guide {

namespace {

constexpr int feedWindow = 14, foodWindow = 30, coverWindow = 21, readingWindow = 14; ///< days
constexpr double aLittleCounts = 1.0 / 3.0;

std::string_view nameOr(const std::string& name, std::string_view usual) { return name.empty() ? usual : std::string_view{name}; }

}

Circumstances circumstancesOf(const journal::Entries& entries, const journal::StackHistory& stack, const materials::Table& materials, Day today)
{
    Circumstances found;
    if (stack.firstBedding) found.ageDays = std::max(0, daysBetween(*stack.firstBedding, today));
    double fed30 = 0, doubtful = 0;
    materials::Mix given;
    std::set<Day> fedOn, coveredOn;
    bool coversByRoutine = false;
    for (const journal::Entry& entry : entries) {
        const auto* moved = std::get_if<journal::Move>(&entry.action);
        const bool here = entry.stack == stack.name || (moved && moved->to == stack.name);
        const int ago = daysBetween(entry.date.day, today);
        if (!here || ago < 0) continue;
        if (const auto* routine = std::get_if<journal::Routine>(&entry.action); routine && routine->of == journal::RoutineOf::cover) coversByRoutine = routine->each.value > 0;
        if (moved || std::holds_alternative<journal::Stock>(entry.action) || std::holds_alternative<journal::Rotate>(entry.action)) found.daysSinceDisturbed = ago;
        if (const auto* bed = std::get_if<journal::Bed>(&entry.action); bed && !entry.slot) found.daysSinceDisturbed = ago;
        if (const auto* reading = std::get_if<journal::Reading>(&entry.action); reading && ago <= readingWindow) {
            if (reading->squeeze) found.squeeze = reading->squeeze;
            if (reading->ph) found.ph = reading->ph;
            if (reading->bin) found.bedCelsius = reading->bin->base();
        }
        if (const auto* cover = std::get_if<journal::Cover>(&entry.action)) {
            const materials::Material* row = materials.find(nameOr(cover->material, journal::defaultCover));
            coveredOn.insert(entry.date.day);
            if (row && ago < coverWindow) {
                if (const auto mass = materials::freshMass(cover->paper.value_or(Amount{journal::defaultCoverAmount}), *row)) given = given + materials::mixOf(*mass, *row);
            }
        }
        const auto* feed = std::get_if<journal::Feed>(&entry.action);
        if (!feed) continue;
        found.daysSinceFed = ago;
        const materials::Material* row = materials.find(nameOr(feed->material, journal::defaultFood));
        const auto mass = row ? materials::freshMass(feed->food, *row) : std::nullopt;
        if (!mass) continue;
        if (ago < feedWindow) found.fedKg14 += mass->base();
        if (ago < coverWindow) fedOn.insert(entry.date.day);
        if (ago > foodWindow) continue;
        fed30 += mass->base();
        if (row->welcome != materials::Welcome::yes) doubtful += mass->base() * (row->welcome == materials::Welcome::no ? 1.0 : aLittleCounts);
        if (ago < coverWindow) given = given + materials::mixOf(*mass, *row);
    }
    if (fed30 > 0) found.doubtfulShare = doubtful / fed30;
    if (!fedOn.empty()) found.carbonToNitrogen = given.carbonToNitrogen();
    found.feedings21 = static_cast<int>(fedOn.size());
    if (!coversByRoutine && !fedOn.empty()) {
        const auto bare = std::ranges::count_if(fedOn, [&](Day day) { return !coveredOn.contains(day) && !coveredOn.contains(day + std::chrono::days{1}); });
        found.uncoveredShare = static_cast<double>(bare) / static_cast<double>(fedOn.size());
    }
    return found;
}

}
