#include "ui/shelf/usual_acts.h"

#include "core/reckoning/overfeeding.h"
#include "ui/common/formats.h"

#include <QCoreApplication>

namespace tierloam::shelf {

namespace {

struct UsualActs {
    Q_DECLARE_TR_FUNCTIONS(UsualActs)
};

using forms::FormKind;
using ui::ActionId;

}

std::optional<FormKind> formOf(ActionId id)
{
    switch (id) {
    case ActionId::feed:
    case ActionId::feedBorne:
    case ActionId::feedOther: return FormKind::feed;
    case ActionId::water:
    case ActionId::waterOther: return FormKind::water;
    case ActionId::drain:
    case ActionId::drainOther: return FormKind::drain;
    case ActionId::cover:
    case ActionId::coverOther: return FormKind::cover;
    case ActionId::flush: return FormKind::flush;
    case ActionId::rotate: return FormKind::rotate;
    case ActionId::harvest: return FormKind::harvest;
    case ActionId::addTray: return FormKind::addTray;
    case ActionId::rebed: return FormKind::bedding;
    case ActionId::loosen: return FormKind::loosen;
    case ActionId::check: return FormKind::check;
    case ActionId::weighWorms: return FormKind::weigh;
    case ActionId::countWorms: return FormKind::count;
    case ActionId::weighTray: return FormKind::trayWeight;
    case ActionId::reading: return FormKind::reading;
    case ActionId::stockWorms: return FormKind::stock;
    case ActionId::removeWorms: return FormKind::remove;
    case ActionId::moveWorms: return FormKind::move;
    case ActionId::routine: return FormKind::routine;
    case ActionId::event: return FormKind::event;
    case ActionId::note: return FormKind::note;
    case ActionId::changeStack: return FormKind::setup;
    case ActionId::retire: return FormKind::retire;
    default: return std::nullopt;
    }
}

bool isUsual(ActionId id) 
{
    switch (id) {
    case ActionId::feed:
    case ActionId::feedBorne:
    case ActionId::cover:
    case ActionId::water:
    case ActionId::drain: return true;
    default: return false;
    }
}

std::optional<int> daysMoved(ActionId id)
{
    switch (id) {
    case ActionId::dayBack: return -1;
    case ActionId::dayForward: return 1;
    case ActionId::weekBack: return -7;
    case ActionId::weekForward: return 7;
    default: return std::nullopt;
    }
}

journal::Entries usualEntries(FormKind kind, const household::Usual& usual, const std::string& stack, Day day)
{
    journal::Entries entries;
    const auto add = [&](journal::Action action) {
        journal::Entry entry;
        entry.date.day = day;
        entry.stack = stack;
        entry.action = std::move(action);
        entries.push_back(std::move(entry));
    };
    switch (kind) {
    case FormKind::feed:
        add(journal::Feed{usual.feed, usual.feedMaterial, {}});
        if (usual.coverWithFeed) add(journal::Cover{usual.coverWithFeed, usual.coverMaterial});
        break;
    case FormKind::cover: add(journal::Cover{usual.coverWithFeed.value_or(journal::defaultCoverAmount), usual.coverMaterial}); break;
    case FormKind::water: add(journal::Water{usual.water}); break;
    case FormKind::drain: {
        journal::Drain drain;
        drain.volume = usual.drain;
        add(drain);
        break;
    }
    default: break;
    }
    return entries;
}

std::optional<Amount> borneFeeding(const household::Usual& usual, const materials::Table& materials, const advice::FoodLimit& limit)
{
    if (limit.kg < reckoning::leastWorthGiving) return std::nullopt;
    if (limit.keeps) return limit.keeps; // what was usual months ago, or never, is no measure of the worms of today
    const materials::Material* food = materials.find(usual.feedMaterial.empty() ? std::string{journal::defaultFood} : usual.feedMaterial);
    const auto usually = food != nullptr ? materials::freshMass(usual.feed, *food) : std::nullopt;
    if (!usually || reckoning::isBorne(usually->base(), limit.kg)) return std::nullopt;
    return limit.most;
}

std::optional<Amount> fittingFeeding(const household::Usual& usual, const materials::Table& materials, const reckoning::StackReckoning& stack)
{
    const reckoning::Forecast& ahead = stack.forecast;
    const materials::Material* food = materials.find(usual.feedMaterial.empty() ? std::string{journal::defaultFood} : usual.feedMaterial);
    const auto usually = food ? materials::freshMass(usual.feed, *food) : std::nullopt;
    if (!usually || !ahead.roomTopTrayFreshKg) return std::nullopt;
    double roomKg = *ahead.roomTopTrayFreshKg;
    const materials::Material* paper = materials.find(usual.coverMaterial.empty() ? std::string{journal::defaultCover} : usual.coverMaterial);
    const auto cover = paper && usual.coverWithFeed ? materials::freshMass(*usual.coverWithFeed, *paper) : std::nullopt;
    // The room is told as food, and what lies over the food takes some of it.
    if (cover && paper->bulkKgPerM3 > 0.0) roomKg -= cover->base() / paper->bulkKgPerM3 * ahead.foodBulkKgPerM3;
    if (usually->base() <= roomKg) return std::nullopt;
    return advice::mostOfFood(stack, roomKg < reckoning::leastWorthGiving ? 0.0 : roomKg);
}

QString usualLabel(FormKind kind, const household::Usual& usual, const QString& stack)
{
    switch (kind) {
    case FormKind::feed: return UsualActs::tr("Feed %1, %2", "amount, stack").arg(ui::amountText(usual.feed), stack);
    case FormKind::cover: return UsualActs::tr("Cover %1, %2", "amount, stack").arg(ui::amountText(usual.coverWithFeed.value_or(journal::defaultCoverAmount)), stack);
    case FormKind::water: return UsualActs::tr("Water %1, %2", "amount, stack").arg(ui::amountText(usual.water), stack);
    case FormKind::drain: return UsualActs::tr("Drain %1, %2", "amount, stack").arg(ui::amountText(usual.drain), stack);
    default: return stack;
    }
}

}
