#pragma once

#include "ui/forms/form_context.h"
#include "ui/forms/form_kind.h"

namespace tierloam::ui {
class ChoiceField;
}

namespace tierloam::forms {

/// What an entry stands for that names no tray; `nothing`: a kind that belongs to none.
enum class SlotMeans { nothing, fedTray, wholeStack, topTray, dryingTray };
SlotMeans meaningOfEmptySlot(FormKind kind);

/// Fills the list with the trays as they stood on that day, before them what an entry without a tray stands for; chooses `chosen`, also when it is not there
/// on that day, or what the kind means when nothing is chosen.
void fillSlots(ui::ChoiceField& slots, FormKind kind, const FormContext& context, Day day, std::optional<int> chosen);

}
