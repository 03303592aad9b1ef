#pragma once

#include "ui/forms/form_context.h"

namespace tierloam::forms {

/// What a feeding that finds no room in its tray would be, in words, so that a slip in the amount or its unit is seen before it is recorded;
/// empty where it fits. It stands in nobody's way. `slot` nullopt: the tray that takes food.
QString foodRoomText(const FormContext& context, const journal::Feed& feed, std::optional<int> slot);

}
