#pragma once

/// What counts as too much food, wherever it is asked: the week's limit, the advice, the plans. Ours unless said.
namespace tierloam::reckoning {

inline constexpr double mostFreshPerM2AndDay = 0.7; ///< kg of fresh food a day on a m² of tray area in use
inline constexpr double overfedAir = 0.7;           ///< multiplier of the air (core/model/process_air.h)
inline constexpr double overfedWarmth = 30.0;       ///< °C of the bed; that something is to be done from 30 on is common practice, no source
inline constexpr double foodsOwnWarmth = 0.5;       ///< K that food adds to a bed beyond that before it is the food's doing and not the place's
inline constexpr double noFoodWarmth = 33.0;        ///< °C; from overfedWarmth on less is borne, and here none: two in a hundred die a day (core/model/process_death.h)
inline constexpr double asGoodAs = 1.05;            ///< of the limit, which nobody knows to 5 %: else words and buttons would change from day to day
inline constexpr double leastWorthGiving = 0.05;    ///< kg of fresh food; below it the tray is left alone
inline constexpr double overfedChance = 0.05;       ///< of either within a week, that is borne

/// Whether a usual feeding may be given whole.
constexpr bool isBorne(double usualKg, double limitKg) { return usualKg > 0.0 && usualKg <= asGoodAs * limitKg; }

}
