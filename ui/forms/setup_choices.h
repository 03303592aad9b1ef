#pragma once

#include "core/journal/action.h"

namespace tierloam::ui {
class ChoiceField;
}

/// Choices and bounds that the form of a new stack and that of a changed one share.
namespace tierloam::forms {

inline constexpr int mostTrays = 100;
inline constexpr double leastHeightCm = 1.0, mostHeightCm = 100.0;

void addPlaces(ui::ChoiceField& field);
void addStands(ui::ChoiceField& field);
void addSpigots(ui::ChoiceField& field);

}
