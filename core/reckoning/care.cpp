#include "core/reckoning/care.h"

#include "core/journal/absences.h"
#include "core/reckoning/usual.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>

namespace tierloam::reckoning {

namespace {

constexpr int weeksBack = 8;
constexpr int weeksOfHabit = 4; ///< from so many on a middle week tells more than a mean

double middle(std::vector<double> values)
{
    if (values.empty()) return 0.0;
    std::sort(values.begin(), values.end());
    const std::size_t half = values.size() / 2;
    return values.size() % 2 != 0 ? values[half] : 0.5 * (values[half - 1] + values[half]);
}

}

namespace {

/// Median of the days from one feeding to the next.
double usualGap(const std::vector<Day>& feeds)
{
    std::vector<double> gaps;
    for (std::size_t i = 1; i < feeds.size(); ++i) gaps.push_back(daysBetween(feeds[i - 1], feeds[i]));
    return gaps.empty() ? 7.0 : middle(gaps);
}

/// Weeks for which these feedings last: from the first to the last and its gap, or longer where the next one is late. Over so many calendar weeks a
/// stack's first feedings would seem rare on the eve of each and frequent on the day after.
double weeksOfFeeding(const std::vector<Day>& feeds, Day asOf, const std::vector<journal::AwayDays>& away)
{
    const double sinceFirst = journal::daysPresentSince(feeds.front(), asOf, away);
    const double sinceLast = journal::daysPresentSince(feeds.back(), asOf, away);
    return (sinceFirst - sinceLast + std::max(usualGap(feeds), sinceLast)) / 7.0;
}

}

bool isLook(const journal::Action& action)
{
    return std::holds_alternative<journal::Check>(action) || std::holds_alternative<journal::Weigh>(action)
        || std::holds_alternative<journal::Count>(action) || std::holds_alternative<journal::TrayWeight>(action);
}

UsualCare usualCare(const journal::Entries& entries, const journal::StackHistory& history, const Deeds& deeds, Day asOf)
{
    UsualCare care;
    std::vector<journal::AwayDays> away;
    for (const journal::Step& step : history.steps)
        if (const auto days = journal::awayDaysOf(entries[step.entry])) away.push_back(*days);
    // Weeks on which somebody was there: those away are no habit.
    const auto ago = [&](Day day) { return journal::daysPresentSince(day, asOf, away); };
    const int lived = history.firstBedding ? ago(*history.firstBedding) + 1 : 1;
    const double weeks = std::clamp(lived / 7.0, 1.0, static_cast<double>(weeksBack));
    const Day from = lived < 7 * weeksBack ? asOf - std::chrono::days{history.firstBedding ? daysBetween(*history.firstBedding, asOf) : 0}
                                           : journal::startOfDaysPresent(7 * weeksBack, asOf, away);
    std::map<std::string, UsualCare::Weekly> sums;
    std::vector<double> fed(static_cast<std::size_t>(weeks), 0.0); // by whole weeks back
    double water = 0.0;
    double drained = 0.0;
    const auto add = [&](const std::string& material, const Amount& amount, bool isFood, Day day) {
        const auto portion = deeds.portion(material, amount);
        if (!portion) return;
        UsualCare::Weekly& sum = sums[material];
        sum.what = portion->what;
        sum.isFood = isFood;
        sum.kg += portion->kg;
        const std::size_t week = static_cast<std::size_t>(ago(day) / 7);
        if (isFood && week < fed.size()) fed[week] += portion->kg;
    };
    std::vector<Day> feeds;
    struct Habit { double each = 0; int every = 1; };
    std::array<std::optional<Habit>, 2> routines; // water, cover, in force at asOf
    for (const journal::Step& step : history.steps) {
        const journal::Entry& entry = entries[step.entry];
        const Day day = entry.date.day;
        if (day > asOf) break;
        if (const auto* routine = std::get_if<journal::Routine>(&entry.action)) {
            const double each = routine->of == journal::RoutineOf::water ? routine->each.volume().value_or(Volume{}).base()
                                                                         : routine->each.mass().value_or(Mass{}).base();
            auto& habit = routines[routine->of == journal::RoutineOf::water ? 0 : 1];
            habit = each > 0.0 ? std::optional{Habit{each, routine->everyDays.value_or(1)}} : std::nullopt;
        }
        if (day < from) continue;
        if (const auto* feed = std::get_if<journal::Feed>(&entry.action)) {
            add(feed->material.empty() ? std::string{journal::defaultFood} : feed->material, feed->food, true, day);
            if (feeds.empty() || feeds.back() != day) feeds.push_back(day);
        } else if (const auto* cover = std::get_if<journal::Cover>(&entry.action)) {
            add(cover->material.empty() ? std::string{journal::defaultCover} : cover->material, cover->paper.value_or(journal::defaultCoverAmount), false, day);
        } else if (const auto* poured = std::get_if<journal::Water>(&entry.action)) {
            water += poured->poured.volume().value_or(Volume{}).base();
        } else if (const auto* drain = std::get_if<journal::Drain>(&entry.action)) {
            if (drain->volume) drained += drain->volume->volume().value_or(Volume{}).base();
        } else if (const auto* flush = std::get_if<journal::Flush>(&entry.action)) {
            // What ran out again is no watering, and its running out no drain: a flush leaves with itself.
            const double through = flush->poured.volume().value_or(Volume{}).base();
            water += std::max(through - (flush->drained ? flush->drained->base() : through), 0.0);
        }
    }
    const double weeksFed = feeds.empty() ? weeks : weeksOfFeeding(feeds, asOf, away);
    for (auto& [name, sum] : sums) {
        sum.kg /= sum.isFood ? weeksFed : weeks;
        care.given.push_back(sum);
        if (sum.isFood) care.feedKg += sum.kg;
    }
    // Food before what covers it.
    std::stable_partition(care.given.begin(), care.given.end(), [](const UsualCare::Weekly& each) { return each.isFood; });
    care.waterLitres = water / weeks + (routines[0] ? routines[0]->each * 7.0 / routines[0]->every : 0.0);
    if (routines[1]) {
        if (const auto paper = deeds.portion(std::string{journal::defaultCover}, Amount{routines[1]->each, Unit::kg}))
            care.given.push_back({paper->what, paper->kg * 7.0 / routines[1]->every, false});
    }
    care.drainLitres = drained / weeks;
    care.medianFeedKg = weeks >= weeksOfHabit ? middle(fed) : care.feedKg;
    if (!feeds.empty()) care.firstIn = std::clamp(static_cast<int>(std::lround(usualGap(feeds))) - daysBetween(feeds.back(), asOf), 1, 7);
    return care;
}

UsualCare careWith(UsualCare care, double feedKgPerWeek, const model::Substance& kitchen)
{
    if (care.feedKg > 0.0) {
        for (UsualCare::Weekly& each : care.given)
            if (each.isFood) each.kg *= feedKgPerWeek / care.feedKg;
    } else {
        care.given.insert(care.given.begin(), {kitchen, feedKgPerWeek, true});
    }
    care.feedKg = feedKgPerWeek;
    return care;
}

std::vector<char> careForAWeek(model::Ensemble& stack, const UsualCare& care)
{
    std::vector<char> cut(static_cast<std::size_t>(stack.members()), 0);
    const int slot = stack.topToFeed();
    if (slot < 0) return cut;
    for (const UsualCare::Weekly& each : care.given) {
        const std::vector<char> now = Deeds::giveWithinRoom(stack, slot, each.what, each.kg, each.isFood);
        if (each.isFood)
            for (std::size_t i = 0; i < cut.size(); ++i) cut[i] = cut[i] != 0 || now[i] != 0 ? 1 : 0;
    }
    if (care.waterLitres > 0.0) model::pour(stack, slot, care.waterLitres);
    if (care.drainLitres > 0.0) model::drain(stack, care.drainLitres);
    return cut;
}

Record recordOf(const journal::Entries& entries, const journal::StackHistory& history, const materials::Table& materials, Day asOf)
{
    Record record;
    std::vector<Day> feeds;
    const Day from = asOf - std::chrono::days{7 * weeksBack - 1};
    double poured = 0.0;
    double routineLPerWeek = 0.0;
    for (const journal::Step& step : history.steps) {
        const journal::Entry& entry = entries[step.entry];
        const Day day = entry.date.day;
        record.lastEntry = day;
        if (std::holds_alternative<journal::Feed>(entry.action)) {
            record.lastFeed = day;
            if (day >= from && (feeds.empty() || feeds.back() != day)) feeds.push_back(day);
        }
        if (const auto* drain = std::get_if<journal::Drain>(&entry.action); drain != nullptr && drain->volume) record.lastDrain = day;
        if (std::holds_alternative<journal::Flush>(entry.action)) {
            record.lastDrain = record.lastFlush = day;
        }
        if (const auto* routine = std::get_if<journal::Routine>(&entry.action); routine != nullptr && routine->of == journal::RoutineOf::water)
            routineLPerWeek = routine->each.volume().value_or(Volume{}).base() * 7.0 / std::max(routine->everyDays.value_or(1), 1);
        if (const auto* water = std::get_if<journal::Water>(&entry.action)) {
            record.lastWater = day;
            if (day >= from) poured += water->poured.volume().value_or(Volume{}).base();
        }
        if (std::holds_alternative<journal::Bed>(entry.action) && step.slot && *step.slot >= 2 && step.batch
            && history.batch(*step.batch).entry == step.entry)
            record.lastTrayAdded = day;
        if (const auto away = journal::awayDaysOf(entry)) {
            record.awayFrom = away->from;
            record.awayUntil = away->to;
        }
        if (const auto* reading = std::get_if<journal::Reading>(&entry.action)) {
            if (reading->squeeze) {
                record.lastSqueeze = day;
                record.squeeze = *reading->squeeze;
            }
            if (reading->sump) record.lastSumpLook = day;
            if (reading->bin) {
                record.lastBedRead = day;
                record.bedReadC = reading->bin->base();
            }
            if (reading->squeeze || reading->moisture) record.lastMoistureLook = day;
        }
        if (isLook(entry.action)) record.lastLook = day;
    }
    record.medianFeedGapDays = usualGap(feeds);
    const int lived = history.firstBedding ? daysBetween(*history.firstBedding, asOf) + 1 : 1;
    record.waterLPerWeek = poured / std::clamp(lived / 7, 1, weeksBack) + routineLPerWeek;
    const Usual usual = usualOf(entries, materials, history);
    record.usualFeed = usual.feed;
    record.usualFeedKg = usualFeedKg(usual, materials).value_or(0.0);
    if (const journal::Standing* now = history.on(asOf)) {
        record.daysDrying = now->dryingSince ? daysBetween(*now->dryingSince, asOf) : 0;
        record.spigotShut = now->spigot == journal::Spigot::shut;
        record.sumpCapacityL = now->settings.sump.base();
        record.spareTrays = std::max(now->spare(), 0);
        record.trayHeightCm = now->settings.height.base();
        record.areaM2 = now->settings.area.base();
        record.dryingSince = now->dryingSince;
    }
    return record;
}

}
