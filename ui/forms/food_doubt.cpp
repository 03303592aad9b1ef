#include "ui/forms/food_doubt.h"

#include "core/advice/food_limit.h"
#include "core/advice/too_early.h"
#include "ui/common/formats.h"

#include <QCoreApplication>

#include <algorithm>

namespace tierloam::forms {

namespace {

struct FoodDoubt {
    Q_DECLARE_TR_FUNCTIONS(FoodDoubt)
};

/// kg of that food which find room in the tray.
double roomFor(const FormContext& context, const journal::Standing& standing, const materials::Material& food, std::optional<int> slot)
{
    const double room = standing.settings.area.base() * standing.settings.height.base() / 100.0 * food.bulkKgPerM3;
    // Of the tray that takes food it is known what lies in it; of another one only how much it holds when it is empty.
    const reckoning::StackReckoning* stack = context.estimates();
    if (!stack || !stack->forecast.roomTopTrayFreshKg || (slot && slot != advice::slotForFood(*stack))) return room;
    // It is told of the food that is given most, and room is a volume.
    const double bulk = stack->forecast.foodBulkKgPerM3 > 0.0 ? food.bulkKgPerM3 / stack->forecast.foodBulkKgPerM3 : 1.0;
    return std::min(room, bulk * *stack->forecast.roomTopTrayFreshKg);
}

/// As it is measured out, rounded downwards; nullopt where so little is not worth giving.
std::optional<Amount> atMost(const FormContext& context, const journal::Feed& feed, double kg)
{
    if (kg < reckoning::leastWorthGiving) return std::nullopt;
    const reckoning::StackReckoning* stack = context.estimates();
    const bool asUsual = stack && feed.material == context.usual.feedMaterial && kindOf(feed.food.unit) == UnitKind::volume;
    const Amount most = asUsual ? advice::mostOfFood(*stack, kg) : ui::mostOf(kg);
    return most.value > 0.0 ? std::optional{most} : std::nullopt;
}

QString limitText(const advice::FoodLimit& limit, const QString& given)
{
    if (limit.kg < reckoning::leastWorthGiving)
        return limit.isSoonMore() ? FoodDoubt::tr("That is %1, and the stack takes no more food today, for what was given these days: it takes more within the week.").arg(given)
                                  : FoodDoubt::tr("That is %1, and the stack takes no more food this week.").arg(given);
    const QString most = ui::amountText(limit.most);
    return limit.isSoonMore() ? FoodDoubt::tr("That is %1. The stack takes at most %2 today, for what was given these days: more within the week.").arg(given, most)
                              : FoodDoubt::tr("That is %1. The stack takes at most %2 this week.").arg(given, most);
}

}

Doubt foodDoubt(const FormContext& context, const journal::Feed& feed, std::optional<int> slot)
{
    const materials::Material* food = context.journal->materials.find(feed.material.empty() ? journal::defaultFood : std::string_view{feed.material});
    const auto mass = food ? materials::freshMass(feed.food, *food) : std::nullopt;
    const journal::Standing* standing = context.standing(context.today);
    if (!mass || !standing) return {};
    const double room = roomFor(context, *standing, *food, slot);
    const reckoning::StackReckoning* stack = context.estimates();
    const bool known = stack && !stack->now.slots.empty();
    const advice::FoodLimit limit = known ? advice::foodLimit(*stack) : advice::FoodLimit{};
    const auto right = atMost(context, feed, known ? std::min(room, limit.kg) : room);
    const QString given = ui::massText(mass->base());
    if (mass->base() > room) {
        if (room < 0.005) return {FoodDoubt::tr("That is %1, and nothing more finds room in the tray: look at the amount and its unit.").arg(given), {}};
        const QString held = ui::volumeText(1000.0 * standing->settings.area.base() * standing->settings.height.base() / 100.0);
        return {FoodDoubt::tr("That is %1. Only about %2 find room in the tray, which holds %3 in all: look at the amount and its unit.").arg(given, ui::massText(room), held), right};
    }
    if (!known || mass->base() <= 0.0 || reckoning::isBorne(mass->base(), limit.kg)) return {};
    if (limit.isWithheld()) return {FoodDoubt::tr("By the estimates food is better left out now. %1").arg(ui::unbroken(QString::fromStdString(limit.withheld))), {}};
    return {limitText(limit, given), right};
}

}
