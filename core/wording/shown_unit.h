#pragma once

#include "core/quantity/units.h"
#include "core/reckoning/reckoning.h"

/// In which unit a mass or a volume is told.
namespace tierloam::wording {

/// A unit that a value is shown in, how large one of it is in the base unit (kg, L), and how many decimals it is worth.
struct Shown {
    double size;
    int decimals;
    Unit unit;
};

/// By the value, or by the largest where OneMassUnit or OneVolumeUnit lives. What is small in a unit given to it has a decimal more.
Shown massShown(double kg);
Shown volumeShown(double litres);
/// Of a band with its median near nothing: the unit of its upper end, or that end would have four digits.
Shown volumeShown(const reckoning::Band& litres);

}
