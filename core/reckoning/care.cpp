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

constexpr std::size_t feedingsOfHabit = 3; ///< two feedings have one gap, and that is none

/// Median of the days from one feeding to the next; a week where there are not two.
double middleGap(const std::vector<Day>& feeds)
{
    std::vector<double> gaps;
    for (std::size_t i = 1; i < feeds.size(); ++i) gaps.push_back(daysBetween(feeds[i - 1], feeds[i]));
    return gaps.empty() ? 7.0 : middle(gaps);
}

/// The same as a habit: of two feedings a short gap is none yet, a long one tells at least that they are rare.
double usualGap(const std::vector<Day>& feeds) { return feeds.size() < feedingsOfHabit ? std::max(middleGap(feeds), 7.0) : middleGap(feeds); }

/// As journal::absencesOf, of the entries that the history knows: a few, where a household may have thousands.
std::vector<journal::AwayDays> absencesOf(const journal::Entries& entries, const journal::StackHistory& history)
{
    std::vector<journal::AwayDays> all;
    for (const journal::Step& step : history.steps)
        if (const auto days = journal::awayDaysOf(entries[step.entry])) all.push_back(*days);
    return journal::merged(std::move(all));
}

/// The last weeks on which somebody was there, by which habits are judged: those away are no habit. Younger stacks have the weeks that they have lived.
struct Weeks {
    double count = 1.0;
    Day from{};                      ///< the first day of them
    std::vector<journal::AwayDays> away;
};

Weeks weeksOf(const journal::Entries& entries, const journal::StackHistory& history, Day asOf)
{
    Weeks weeks;
    weeks.away = absencesOf(entries, history);
    const int lived = history.firstBedding ? journal::daysPresentSince(*history.firstBedding, asOf, weeks.away) + 1 : 1;
    weeks.count = std::clamp(lived / 7.0, 1.0, static_cast<double>(weeksBack));
    weeks.from = lived < 7 * weeksBack ? history.firstBedding.value_or(asOf) : journal::startOfDaysPresent(7 * weeksBack, asOf, weeks.away);
    return weeks;
}

/// Weeks for which these feedings last: from the first to the last and its gap, or longer where the next one is late; a whole week at least. Over so many
/// calendar weeks a stack's first feedings would seem rare on the eve of each and frequent on the day after. Before there is a habit it is those weeks at least,
/// or two meals on neighbouring days would count for a rate of seven times one of them, after a famine too.
double weeksOfFeeding(const std::vector<Day>& feeds, Day asOf, const Weeks& weeks)
{
    const double sinceFirst = journal::daysPresentSince(feeds.front(), asOf, weeks.away);
    const double sinceLast = journal::daysPresentSince(feeds.back(), asOf, weeks.away);
    return std::max((sinceFirst - sinceLast + std::max(middleGap(feeds), sinceLast)) / 7.0, feeds.size() < feedingsOfHabit ? weeks.count : 1.0);
}

}

bool isLook(const journal::Action& action)
{
    return std::holds_alternative<journal::Check>(action) || std::holds_alternative<journal::Weigh>(action)
        || std::holds_alternative<journal::Count>(action) || std::holds_alternative<journal::TrayWeight>(action);
}

bool isWormLook(const journal::Action& action)
{
    const auto* check = std::get_if<journal::Check>(&action);
    return (check != nullptr && check->worms) || std::holds_alternative<journal::Weigh>(action) || std::holds_alternative<journal::Count>(action);
}

void noteAbsences(Record& record, const std::vector<journal::AwayDays>& away, Day asOf)
{
    record.awayFrom = record.awayUntil = record.nextAwayFrom = record.nextAwayUntil = std::nullopt;
    record.laterAway.clear();
    for (const journal::AwayDays& days : away) { // ascending
        if (days.from <= asOf) {
            record.awayFrom = days.from;
            record.awayUntil = days.to;
        } else if (!record.nextAwayFrom) {
            record.nextAwayFrom = days.from;
            record.nextAwayUntil = days.to;
        } else {
            record.laterAway.emplace_back(days.from, days.to);
        }
    }
}

UsualCare usualCare(const journal::Entries& entries, const journal::StackHistory& history, const Deeds& deeds, Day asOf)
{
    UsualCare care;
    const Weeks lived = weeksOf(entries, history, asOf);
    const double weeks = lived.count;
    const Day from = lived.from;
    const auto ago = [&](Day day) { return journal::daysPresentSince(day, asOf, lived.away); };
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
    const double weeksFed = feeds.empty() ? weeks : weeksOfFeeding(feeds, asOf, lived);
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
    const Weeks lived = weeksOf(entries, history, asOf);
    double poured = 0.0;
    double routineLPerWeek = 0.0;
    std::optional<Day> placeWritten;
    for (const journal::Step& step : history.steps) {
        const journal::Entry& entry = entries[step.entry];
        const Day day = entry.date.day;
        record.lastEntry = day;
        if (std::holds_alternative<journal::Feed>(entry.action)) {
            record.lastFeed = day;
            if (day >= lived.from && (feeds.empty() || feeds.back() != day)) feeds.push_back(day);
        }
        if (const auto* drain = std::get_if<journal::Drain>(&entry.action); drain != nullptr && drain->volume) record.lastDrain = day;
        if (const auto* setup = std::get_if<journal::Setup>(&entry.action); setup != nullptr && (setup->place || setup->temp || !placeWritten)) {
            placeWritten = day;
            record.bedReadUnder.reset();
        }
        if (std::holds_alternative<journal::Flush>(entry.action)) {
            record.lastDrain = record.lastFlush = day;
        }
        if (const auto* routine = std::get_if<journal::Routine>(&entry.action); routine != nullptr && routine->of == journal::RoutineOf::water)
            routineLPerWeek = routine->each.volume().value_or(Volume{}).base() * 7.0 / std::max(routine->everyDays.value_or(1), 1);
        if (const auto* water = std::get_if<journal::Water>(&entry.action)) {
            record.lastWater = day;
            if (day >= lived.from) poured += water->poured.volume().value_or(Volume{}).base();
        }
        if (std::holds_alternative<journal::Bed>(entry.action) && step.slot && *step.slot >= 2 && step.batch
            && history.batch(*step.batch).entry == step.entry)
            record.lastTrayAdded = day;
        if (const auto* reading = std::get_if<journal::Reading>(&entry.action)) {
            if (reading->squeeze) {
                record.lastSqueeze = day;
                record.squeeze = *reading->squeeze;
            }
            if (reading->sump) record.lastSumpLook = day;
            if (reading->bin) {
                record.lastBedRead = day;
                record.bedReadC = reading->bin->base();
                record.bedReadUnder = placeWritten;
            }
            if (reading->squeeze || reading->moisture) record.lastMoistureLook = day;
            if (reading->moisture) {
                record.lastMoistureRead = day;
                record.moistureReadPct = reading->moisture->percent();
            }
        }
        if (std::holds_alternative<journal::Stock>(entry.action) || step.incoming) record.lastStocked = day;
        if (isLook(entry.action)) record.lastLook = day;
        if (isWormLook(entry.action)) record.lastWormLook = day;
    }
    noteAbsences(record, lived.away, asOf);
    record.medianFeedGapDays = usualGap(feeds);
    record.waterLPerWeek = poured / lived.count + routineLPerWeek;
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
