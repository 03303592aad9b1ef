#include "core/planning/feeding_plan.h"

#include "core/advice/food_limit.h"
#include "core/advice/too_early.h"
#include "core/journal/absences.h"
#include "core/reckoning/tray_contents.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

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

/// Water in the tray and what it can hold, by the medians.
TrayWater waterOf(const reckoning::TrayEstimate& tray)
{
    const double water = reckoning::waterKg(tray);
    return {water, tray.waterShare.p50 > 0.0 ? water / tray.waterShare.p50 : water};
}

/// Days on which nobody was there for any stack that is fed: their weeks tell nothing of the kitchen. As journal::merged makes them.
std::vector<journal::AwayDays> nobodyThere(const journal::Entries& entries, Day today)
{
    std::set<std::string> fed;
    std::map<std::string, std::vector<journal::AwayDays>> away;
    for (const journal::Entry& entry : entries) {
        if (std::holds_alternative<journal::Feed>(entry.action) && daysBetween(entry.date.day, today) < 2 * 7 * weeksBack) fed.insert(entry.stack);
        if (const auto days = journal::awayDaysOf(entry)) away[entry.stack].push_back(*days);
    }
    std::optional<std::vector<journal::AwayDays>> all;
    for (const std::string& stack : fed) {
        auto gone = journal::merged(away[stack]);
        all = all ? journal::inBoth(*all, gone) : std::move(gone);
        if (all->empty()) break;
    }
    return all.value_or(std::vector<journal::AwayDays>{});
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
    const std::vector<journal::AwayDays> away = nobodyThere(entries, today);
    const Day start = journal::startOfDaysPresent(7 * weeksBack, today, away);
    for (const journal::Entry& entry : entries) {
        const auto* feed = std::get_if<journal::Feed>(&entry.action);
        if (feed == nullptr || entry.date.day > today) continue;
        if (entry.date.day < start) { // of years of feedings only the last weeks tell what the kitchen gives now
            known = weeksBack;
            continue;
        }
        const int ago = journal::daysPresentSince(entry.date.day, today, away);
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
            one.appetite = {stack.forecast.feedLowKg, stack.forecast.feedUsualKg, limit.kg};
            one.withheld = limit.withheld;
            one.slot = tray->slot;
            one.tray = tray->tray;
        }
        appetites.push_back(one.appetite);
        plan.stacks.push_back(std::move(one));
    }
    const Split split = splitSupply(plan.supply, appetites);
    plan.leftOver = split.leftOver;
    const materials::Material* food = table.find(journal::defaultFood);
    const materials::Material* paper = table.find(journal::defaultCover);
    for (std::size_t i = 0; i < plan.stacks.size(); ++i) {
        StackFeeding& one = plan.stacks[i];
        one.kg = split.kg[i];
        one.side = nextSide(entries, one.stack, reckoning.asOf);
        const reckoning::StackReckoning* stack = reckoning.stack(one.stack);
        const reckoning::TrayEstimate* tray = stack != nullptr ? trayToFeed(*stack) : nullptr;
        if (one.kg > 0.0 && tray != nullptr && food != nullptr && paper != nullptr) one.with = withFood(kilograms(one.kg), *food, *paper, waterOf(*tray));
    }
    return plan;
}

}
