#include "core/reckoning/usual.h"

#include "core/quantity/number_text.h"
#include "core/reckoning/most_drained.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace tierloam::reckoning {

namespace {

constexpr std::size_t remembered = 5;
constexpr int habitKept = 56;     ///< days, as the habits of care.h
constexpr double sumpsInAJar = 5.0;

/// One time that something was done; of food and cover all of a day.
struct Done {
    Amount amount;
    std::string material;
    Day day{};
};

/// In the unit of another amount; nullopt when there is no way from one to the other.
std::optional<double> valueIn(Unit unit, const Done& done, const Done& last, const materials::Table& materials)
{
    if (done.amount.unit == unit) return done.amount.value;
    if (kindOf(done.amount.unit) == kindOf(unit)) return done.amount.value * inBaseUnit(done.amount.unit) / inBaseUnit(unit);
    const auto named = [&](const std::string& name) { return materials.find(name.empty() ? journal::defaultFood : std::string_view{name}); };
    const materials::Material* from = named(done.material);
    const materials::Material* to = named(last.material);
    if (!from || !to || to->bulkKgPerM3 <= 0) return std::nullopt;
    const auto mass = materials::freshMass(done.amount, *from);
    if (!mass) return std::nullopt;
    if (kindOf(unit) == UnitKind::mass) return mass->base() / inBaseUnit(unit);
    return mass->base() / to->bulkKgPerM3 * 1000.0 / inBaseUnit(unit);
}

/// Three significant digits: what comes of a conversion or of a mean is an amount to be measured out, not a figure.
double rounded(double value) { return parseNumber(significantText(value, 3)).value_or(value); }

/// Median of the last few, in the unit of the last; nullopt when there is none.
std::optional<Amount> medianOf(const std::vector<Done>& latestFirst, const materials::Table& materials)
{
    if (latestFirst.empty()) return std::nullopt;
    const Done& last = latestFirst.front();
    const Unit unit = last.amount.unit;
    std::vector<std::pair<double, bool>> values; // and whether it was typed in this unit
    for (const Done& done : latestFirst)
        if (const auto value = valueIn(unit, done, last, materials)) values.emplace_back(*value, done.amount.unit == unit);
    std::sort(values.begin(), values.end());
    const std::size_t half = values.size() / 2;
    if (values.size() % 2 == 1) return Amount{values[half].second ? values[half].first : rounded(values[half].first), unit};
    if (values[half - 1].first == values[half].first) return Amount{values[half].first, unit};
    return Amount{rounded((values[half - 1].first + values[half].first) / 2.0), unit};
}

void remember(std::vector<Done>& latestFirst, const Done& done)
{
    if (latestFirst.size() < remembered) latestFirst.push_back(done);
}

/// Several portions of one day are one feeding: their sum, of the material that came last that day, in its unit. What came with it of another material
/// is no part of the amount, since the amount is written down as of that one alone.
void rememberDay(std::vector<Done>& latestFirst, const Done& done, const materials::Table& materials)
{
    if (latestFirst.empty()) return remember(latestFirst, done);
    if (daysBetween(done.day, latestFirst.back().day) > habitKept) return; // what was given before so long a gap is no habit any more
    if (latestFirst.back().day != done.day) return remember(latestFirst, done);
    Done& day = latestFirst.back();
    if (done.material != day.material) return;
    if (const auto value = valueIn(day.amount.unit, done, day, materials))
        day.amount.value = std::round((day.amount.value + *value) * 1e6) / 1e6; // 0.1 + 0.2 is 0.3 to whoever wrote it down
}

/// Not more than that, in its own unit.
Amount atMost(Amount amount, Volume most)
{
    const auto volume = amount.volume();
    if (!volume || volume->base() <= most.base()) return amount;
    return {std::floor(most.base() / inBaseUnit(amount.unit) * 100.0) / 100.0, amount.unit};
}

/// Of one stack's entries, the latest first.
Usual usualFrom(const std::vector<const journal::Entry*>& latestFirst, const materials::Table& materials)
{
    std::vector<Done> feeds, covers, waters, drains;
    std::vector<Day> coverDays;
    std::optional<Volume> sump;
    std::optional<journal::Spigot> spigot;
    std::optional<Day> begun;
    for (const journal::Entry* entry : latestFirst) {
        const Day day = entry->date.day;
        if (std::holds_alternative<journal::Bed>(entry->action)) begun = day;
        if (const auto* feed = std::get_if<journal::Feed>(&entry->action)) rememberDay(feeds, {feed->food, feed->material, day}, materials);
        if (const auto* water = std::get_if<journal::Water>(&entry->action)) remember(waters, {water->poured, {}, day});
        if (const auto* setup = std::get_if<journal::Setup>(&entry->action)) {
            if (!sump) sump = setup->sump;
            if (!spigot) spigot = setup->spigot;
        }
        const auto* drain = std::get_if<journal::Drain>(&entry->action);
        if (drain && !spigot) spigot = drain->spigot;
        if (drain && drain->volume && drain->volume->value > 0) remember(drains, {*drain->volume, {}, day});
        const auto* cover = std::get_if<journal::Cover>(&entry->action);
        if (!cover) continue;
        rememberDay(covers, {cover->paper.value_or(journal::defaultCoverAmount), cover->material, day}, materials);
        if (feeds.size() < remembered || day >= feeds.back().day) coverDays.push_back(day);
    }

    Usual usual;
    const auto take = [&](const std::vector<Done>& done, Amount& into, bool& known) {
        const auto median = medianOf(done, materials);
        if (median) into = *median;
        known = median.has_value();
    };
    take(feeds, usual.feed, usual.feedKnown);
    take(waters, usual.water, usual.waterKnown);
    take(drains, usual.drain, usual.drainKnown);
    usual.drain = atMost(usual.drain, mostDrained(sump.value_or(journal::StackSettings{}.sump), spigot.value_or(journal::Spigot::open)));
    if (!feeds.empty()) usual.feedMaterial = feeds.front().material;
    if (!covers.empty()) usual.coverMaterial = covers.front().material;
    // The form for a new stack asks for no cover: what went in on its first day is no habit of leaving food open.
    std::erase_if(feeds, [&](const Done& feed) { return begun && feed.day == *begun; });
    const auto covered = std::count_if(feeds.begin(), feeds.end(), [&](const Done& feed) { return std::ranges::find(coverDays, feed.day) != coverDays.end(); });
    const bool usually = feeds.empty() || 2 * covered > static_cast<std::ptrdiff_t>(feeds.size());
    usual.coverKnown = !covers.empty();
    if (usually) usual.coverWithFeed = medianOf(covers, materials).value_or(journal::defaultCoverAmount);
    return usual;
}

}

Volume mostDrained(Volume sump, journal::Spigot spigot) { return spigot == journal::Spigot::shut ? sump : sump * sumpsInAJar; }

Usual usualOf(const journal::Entries& entries, const materials::Table& materials, const std::string& stack, Day upTo)
{
    std::vector<const journal::Entry*> its;
    for (auto entry = entries.rbegin(); entry != entries.rend(); ++entry)
        if (entry->stack == stack && entry->date.day <= upTo) its.push_back(&*entry);
    return usualFrom(its, materials);
}

std::map<std::string, Usual> usualOfAll(const journal::Entries& entries, const materials::Table& materials, Day upTo)
{
    std::map<std::string, std::vector<const journal::Entry*>> own;
    for (auto entry = entries.rbegin(); entry != entries.rend(); ++entry)
        if (entry->date.day <= upTo) own[entry->stack].push_back(&*entry);
    std::map<std::string, Usual> all;
    for (const auto& [stack, ofStack] : own) all.emplace(stack, usualFrom(ofStack, materials));
    return all;
}

Usual usualOf(const journal::Entries& entries, const materials::Table& materials, const journal::StackHistory& history)
{
    std::vector<const journal::Entry*> its;
    for (auto step = history.steps.rbegin(); step != history.steps.rend(); ++step)
        if (!step->incoming) its.push_back(&entries[step->entry]);
    return usualFrom(its, materials);
}

std::optional<double> usualFeedKg(const Usual& usual, const materials::Table& materials)
{
    if (!usual.feedKnown) return std::nullopt;
    const materials::Material* food = materials.find(usual.feedMaterial.empty() ? std::string{journal::defaultFood} : usual.feedMaterial);
    const auto mass = food != nullptr ? materials::freshMass(usual.feed, *food) : std::nullopt;
    return mass ? std::optional{mass->base()} : std::nullopt;
}

}
