#pragma once

#include "ui/forms/said_ahead.h"

namespace tierloam::forms {

/// Of a feeding of today: that it finds no room in its tray, that the stack takes less food today (advice::foodLimit), or that the advice is to give none; and
/// the amount that would be right, where there is one that is worth giving. `slot` nullopt: the tray that takes food.
Doubt foodDoubt(const FormContext& context, const journal::Feed& feed, std::optional<int> slot);

}
