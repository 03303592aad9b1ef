#pragma once

#include "core/reckoning/reckoning.h"

namespace tierloam::reckoning {

inline constexpr double chilledBelow = 5.0; ///< °C of a bed in which worms hardly eat or move; common practice, no source
inline constexpr int overdueAfter = 30;     ///< days of ready and turn
inline constexpr double rimCm = 1.0, rimAgainCm = 2.0; ///< from the rim: full, and so until it has sunk

/// A colony that falls does so for want of food, which no lift brings: unfed for long, or usually given far less than keeps it.
bool wantsFood(const StackReckoning& stack);

/// Too cold or too hot, now or within 60 days by the median: a colony that falls then does so for that, and no lift keeps it.
bool isOutOfSeason(const StackReckoning& stack);

/// A bottom tray left although it is ready costs colony, and a full top tray has nowhere to go: overdue without waiting 30 days. Replayed along the
/// days before, so that it does not come and go. Of a bottom tray that is ready in a stack with no tray spare. `colonyIn60Days`: kg, median, by today's forecast.
bool isOverdueEarly(const StackReckoning& result, double colonyIn60Days);

}
