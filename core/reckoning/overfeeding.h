#pragma once

#include <algorithm>

/// What counts as too much food, wherever it is asked: the week's limit, the advice, the plans. Ours unless said.
namespace tierloam::reckoning {

inline constexpr double mostFreshPerM2AndDay = 0.7; ///< kg of fresh food a day on a m² of tray area in use
/// kg of fresh food a day for each kg of worms, where these are few: half of their weight (common practice, no source).
inline constexpr double mostFreshPerWormsAndDay = 0.5;
inline constexpr double overfedAir = 0.7;           ///< multiplier of the air (core/model/process_air.h)
inline constexpr double overfedWarmth = 30.0;       ///< °C of the bed; that something is to be done from 30 on is common practice, no source
inline constexpr double foodsOwnWarmth = 0.5;       ///< K that food adds to a bed beyond that before it is the food's doing and not the place's
inline constexpr double noFoodWarmth = 33.0;        ///< °C; from overfedWarmth on less is borne, and here none: two in a hundred die a day (core/model/process_death.h)
inline constexpr double asGoodAs = 1.05;            ///< of the limit, which nobody knows to 5 %: else words and buttons would change from day to day
inline constexpr double leastWorthGiving = 0.05;    ///< kg of fresh food; below it the tray is left alone
inline constexpr double overfedChance = 0.05;       ///< of either within a week, that is borne

/// kg of fresh food within any seven days that the area of `trays` trays and a colony of so many kg take at most.
constexpr double mostInAWeek(double trayM2, int trays, double colonyKg)
{
    const double byArea = 7.0 * mostFreshPerM2AndDay * trayM2 * std::max(trays, 1);
    return std::min(byArea, std::max(7.0 * mostFreshPerWormsAndDay * colonyKg, leastWorthGiving));
}

/// Whether a usual feeding may be given whole.
constexpr bool isBorne(double usualKg, double limitKg) { return usualKg > 0.0 && usualKg <= asGoodAs * limitKg; }

}
