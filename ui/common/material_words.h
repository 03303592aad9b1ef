#pragma once

#include "core/materials/kitchen_measure.h"
#include "core/materials/table.h"

#include <QString>

/// What the table of materials says, in words; names of materials stay as the journal has them.
namespace tierloam::ui {

/// "welcome", "a little", "no".
QString welcomeText(materials::Welcome welcome);
/// A mark that stands beside the word: ✓, ◐, ✗.
QString welcomeMark(materials::Welcome welcome);
/// Why a material is not welcome, or only a little: a whole sentence; empty without a doubt.
QString doubtText(materials::Doubt doubt);
/// The same in a word or two, for a list to choose from: "salty".
QString doubtName(materials::Doubt doubt);
/// "soft fruit and leaves", "wood; it stays".
QString softeningText(materials::SofteningClass softening);
QString kindText(materials::Kind kind);
/// "g", "cup", "handful".
QString measureText(materials::KitchenMeasure measure);

}
