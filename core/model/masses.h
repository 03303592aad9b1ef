#pragma once

#include "core/model/block.h"

namespace tierloam::model {

inline constexpr double smallestWorm = 4e-6;      ///< kg, first class
inline constexpr double largestWorm = 1.6e-3;     ///< kg, last class
inline constexpr double maturity = 0.28e-3;       ///< kg
inline constexpr double dryPerLive = 0.18;        ///< kg DM per kg LW of worms and cocoons
inline constexpr double adultGrowthMost = 0.014e-3; ///< kg LW/d of an adult of 1 g at 25 °C. Fitted to pots A, B, C and E (tests/reference)
inline constexpr int firstAdultClass = 11;        ///< maturity lies inside this class; none below it has adults
inline constexpr double cocoonMass = 14.3e-6;     ///< kg live. Venter & Reinecke 1988
inline constexpr double hatchlingMass = 5.3e-6;   ///< kg live. Venter & Reinecke 1988
inline constexpr double growthCost = 0.66;        ///< kg DM per kg LW of growth: 0.18 stored, the rest respired
inline constexpr double shrinkYield = 0.44;       ///< kg DM of maintenance covered by shrinking by 1 kg LW
inline constexpr double softenedHeld = 3.0;       ///< kg water per kg DM at field capacity
inline constexpr double castingsHeld = 2.6;
inline constexpr double softenedDensity = 120.0;  ///< kg DM/m³
inline constexpr double castingsDensity = 182.0;

/// The one table, made once.
const MassClassTable& massClassTable();

/// kg LW of one member's colony.
double liveMass(const StackBlock& stack, int lane);

/// Shares of one worm of `kg` for the two neighbouring classes, so that number and mass hold; lighter and heavier ones go to the end classes.
struct Neighbours { int lower; double toLower, toUpper; };
Neighbours neighboursOf(double kg);

}
