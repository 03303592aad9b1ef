#pragma once

#include "core/advice/advice.h"

#include <optional>

namespace tierloam::advice {

/// Steps of a stack's life that have their time.
enum class LifeStep { addTray, lift, take };

/// Why the step would be too early today, and the day when it would be right (`on`; in `because` its 80 % range); nullopt when its time has
/// come. It forbids nothing.
std::optional<Advice> tooEarly(const reckoning::StackReckoning& stack, LifeStep step);

/// The slot that food is for: the highest tray not drying, or the one beneath it where that came too early. nullopt: no tray takes food.
std::optional<int> slotForFood(const reckoning::StackReckoning& stack);

/// The step that the advice calls due today: the year's plan begins with it.
std::optional<LifeStep> stepDueToday(const reckoning::StackReckoning& stack);

}
