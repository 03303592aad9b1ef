#pragma once

#include "core/materials/mix.h"

namespace tierloam::planning {

// C:N 25 to 35 for composting: Cooperband 2002, second hand. Water 0.75 to 1.0 of what the tray holds: ours.
inline constexpr double leastCarbonToNitrogen = 25.0, mostCarbonToNitrogen = 35.0;
inline constexpr double leastWater = 0.75, mostWater = 1.0;

/// What a tray holds and can hold, kg.
struct TrayWater { double water = 0, capacity = 0; };

/// Paper and water to give with food.
struct WithFood {
    double paperKg = 0;           ///< as it comes to hand
    double waterL = 0;
    double carbonToNitrogen = 0;  ///< of food and paper
    double waterShare = 0;        ///< of the tray afterwards
    bool carbonReached = true;    ///< between 25 and 35
    bool waterReached = true;     ///< between 0.75 and 1.0
};

/// The least paper that brings food and paper to a C:N of at least 25, more where the tray would be too wet, up to a C:N of 35; then the least
/// water that brings the tray to 0.75. Paper is given in steps of 5 g, water in steps of 50 mL.
WithFood withFood(Mass food, const materials::Material& what, const materials::Material& paper, const TrayWater& tray);

}
