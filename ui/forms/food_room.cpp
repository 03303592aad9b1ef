#include "ui/forms/food_room.h"

#include "core/advice/too_early.h"
#include "ui/common/formats.h"

#include <QCoreApplication>

#include <algorithm>

namespace tierloam::forms {

namespace {

struct FoodRoom {
    Q_DECLARE_TR_FUNCTIONS(FoodRoom)
};

}

QString foodRoomText(const FormContext& context, const journal::Feed& feed, std::optional<int> slot)
{
    const materials::Material* food = context.journal->materials.find(feed.material.empty() ? journal::defaultFood : std::string_view{feed.material});
    const auto mass = food ? materials::freshMass(feed.food, *food) : std::nullopt;
    const journal::Standing* standing = context.standing(context.today);
    if (!mass || !standing) return {};
    const double trayM3 = standing->settings.area.base() * standing->settings.height.base() / 100.0;
    double room = trayM3 * food->bulkKgPerM3;
    // Of the tray that takes food it is known what lies in it; of another one only how much it holds when it is empty.
    const reckoning::StackReckoning* stack = context.estimates();
    if (stack && stack->forecast.roomTopTrayFreshKg && (!slot || slot == advice::slotForFood(*stack))) {
        // It is told of the food that is given most, and room is a volume.
        const double bulk = stack->forecast.foodBulkKgPerM3 > 0.0 ? food->bulkKgPerM3 / stack->forecast.foodBulkKgPerM3 : 1.0;
        room = std::min(room, bulk * *stack->forecast.roomTopTrayFreshKg);
    }
    if (mass->base() <= room) return {};
    const QString held = ui::volumeText(1000.0 * trayM3), given = ui::massText(mass->base());
    return room < 0.005 ? FoodRoom::tr("That is %1, and nothing more finds room in the tray: look at the amount and its unit.").arg(given)
                        : FoodRoom::tr("That is %1. Only about %2 find room in the tray, which holds %3 in all: look at the amount and its unit.").arg(given, ui::massText(room), held);
}

}
