#include "core/advice/food_limit.h"

#include "core/advice/rules.h"

#include <algorithm>

namespace tierloam::advice {

FoodLimit foodLimit(const reckoning::StackReckoning& stack, const std::vector<Advice>& said)
{
    const auto none = std::find_if(said.begin(), said.end(), [](const Advice& each) { return each.food == Food::withhold; });
    if (none == said.end()) return {stack.forecast.feedNowKg, {}};
    return {0.0, plain(say(QT_TRANSLATE_NOOP("Advice", "%1: %2")).arg(QString::fromStdString(none->text), QString::fromStdString(none->because)))};
}

FoodLimit foodLimit(const reckoning::StackReckoning& stack) { return foodLimit(stack, adviceFor(stack)); }

}
