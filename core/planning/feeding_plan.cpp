#include "core/planning/feeding_plan.h"

#include "core/advice/food_limit.h"
#include "core/advice/too_early.h"
#include "core/journal/absences.h"
#include "core/reckoning/tray_contents.h"
#include "core/reckoning/usual.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace tierloam::planning {

namespace {

using journal::Side;

constexpr int weeksBack = 8;

double freshKg(const journal::Feed& feed, const materials::Table& table)
{
    const materials::Material* food = table.find(feed.material.empty() ? std::string_view{journal::defaultFood} : std::string_view{feed.material});
    const auto mass = food != nullptr ? materials::freshMass(feed.food, *food) : std::nullopt;
    return mass ? mass->base() : 0.0;
}

/// The food of which the stack got most in the last weeks, kitchen mix where it got none.
const materials::Material* mostGiven(const journal::Entries& entries, const std::string& stack, const materials::Table& table, Day today)
{
    std::map<std::string, double> kg;
    for (const journal::Entry& entry : entries) {
        const auto* feed = std::get_if<journal::Feed>(&entry.action);
        if (feed == nullptr || entry.stack != stack || entry.date.day > today || daysBetween(entry.date.day, today) >= 7 * weeksBack) continue;
        kg[feed->material.empty() ? std::string{journal::defaultFood} : feed->material] += freshKg(*feed, table);
    }
    const auto most = std::ranges::max_element(kg, {}, [](const auto& each) { return each.second; });
    const materials::Material* food = most != kg.end() ? table.find(most->first) : nullptr;
    return food != nullptr ? food : table.find(journal::defaultFood);
}

/// Water in the tray and what it can hold, by the medians.
TrayWater waterOf(const reckoning::TrayEstimate& tray)
{
    const double water = reckoning::waterKg(tray);
    return {water, tray.waterShare.p50 > 0.0 ? water / tray.waterShare.p50 : water};
}

/// The one that the due list names too.
const reckoning::TrayEstimate* trayToFeed(const reckoning::StackReckoning& stack)
{
    const auto slot = advice::slotForFood(stack);
    const auto tray = std::find_if(stack.now.slots.begin(), stack.now.slots.end(), [&](const reckoning::TrayEstimate& each) { return each.slot == slot; });
    return tray != stack.now.slots.end() ? &*tray : nullptr;
}

}

double learnedSupply(const journal::Entries& entries, const materials::Table& table, Day today)
{
    std::vector<double> weeks(weeksBack, 0.0);
    int known = 0;
    // Weeks in which nobody was there for any stack tell nothing of the kitchen.
    const std::vector<journal::AwayDays> away = journal::absencesOfAll(entries, today);
    // Weeks end with the last feeding: one that has only begun, on the eve of the next, is no week without food.
    const auto last = std::find_if(entries.rbegin(), entries.rend(), [today](const journal::Entry& entry) { return entry.date.day <= today && std::holds_alternative<journal::Feed>(entry.action); });
    const Day end = last != entries.rend() && journal::daysPresentSince(last->date.day, today, away) < 2 * 7 ? last->date.day : today;
    const Day start = journal::startOfDaysPresent(7 * weeksBack, end, away);
    for (const journal::Entry& entry : entries) {
        const auto* feed = std::get_if<journal::Feed>(&entry.action);
        if (feed == nullptr || entry.date.day > end) continue;
        if (entry.date.day < start) { // of years of feedings only the last weeks tell what the kitchen gives now
            known = weeksBack;
            continue;
        }
        const int ago = journal::daysPresentSince(entry.date.day, end, away);
        known = std::max(known, std::min(ago / 7 + 1, weeksBack));
        weeks[static_cast<std::size_t>(ago / 7)] += freshKg(*feed, table);
    }
    if (known == 0) return 0.0;
    weeks.resize(static_cast<std::size_t>(known));
    std::sort(weeks.begin(), weeks.end());
    const std::size_t half = static_cast<std::size_t>(known / 2);
    return known % 2 != 0 ? weeks[half] : 0.5 * (weeks[half - 1] + weeks[half]);
}

Side nextSide(const journal::Entries& entries, const std::string& stack, Day today)
{
    std::optional<Side> last;
    bool lengthwise = false; // front and back are used too
    for (const journal::Entry& entry : entries) {
        const auto* feed = std::get_if<journal::Feed>(&entry.action);
        if (feed == nullptr || entry.stack != stack || entry.date.day > today || !feed->side) continue;
        last = feed->side;
        lengthwise = lengthwise || last == Side::front || last == Side::back;
    }
    if (!last) return Side::left;
    switch (*last) {
    case Side::left: return Side::right;
    case Side::right: return lengthwise ? Side::front : Side::left;
    case Side::front: return Side::back;
    case Side::back: return Side::left;
    case Side::all: break;
    }
    return Side::all;
}

FeedingPlan planFeeding(const reckoning::Reckoning& reckoning, const journal::Entries& entries, const materials::Table& table, double supply)
{
    FeedingPlan plan;
    plan.supply = std::max(supply, 0.0);
    std::vector<Appetite> appetites;
    for (const reckoning::StackReckoning& stack : reckoning.stacks) {
        if (stack.retired || stack.now.slots.empty()) continue;
        StackFeeding one;
        one.stack = stack.name;
        const reckoning::TrayEstimate* tray = trayToFeed(stack);
        if (tray != nullptr) {
            const advice::FoodLimit limit = advice::foodLimit(stack);
            one.appetite = {stack.forecast.feedLowKg, stack.forecast.feedUsualKg, limit.weekKg};
            one.withheld = limit.withheld;
            one.slot = tray->slot;
            one.tray = tray->tray;
        }
        appetites.push_back(one.appetite);
        plan.stacks.push_back(std::move(one));
    }
    const Split split = splitSupply(plan.supply, appetites);
    plan.leftOver = split.leftOver;
    const std::map<std::string, reckoning::Usual> usual = reckoning::usualOfAll(entries, table, reckoning.asOf);
    for (std::size_t i = 0; i < plan.stacks.size(); ++i) {
        StackFeeding& one = plan.stacks[i];
        one.kg = split.kg[i];
        one.side = nextSide(entries, one.stack, reckoning.asOf);
        const reckoning::StackReckoning* stack = reckoning.stack(one.stack);
        const reckoning::TrayEstimate* tray = stack != nullptr ? trayToFeed(*stack) : nullptr;
        if (one.kg <= 0.0 || tray == nullptr) continue;
        one.from = advice::bearsFrom(*stack, one.kg);
        const auto habit = usual.find(one.stack);
        const materials::Material* food = mostGiven(entries, one.stack, table, reckoning.asOf);
        const materials::Material* paper = habit != usual.end() && !habit->second.coverMaterial.empty() ? table.find(habit->second.coverMaterial) : nullptr;
        if (paper == nullptr) paper = table.find(journal::defaultCover);
        if (food == nullptr || paper == nullptr) continue;
        one.paper = paper->name;
        one.with = withFood(kilograms(one.kg), *food, *paper, waterOf(*tray));
    }
    return plan;
}

}
