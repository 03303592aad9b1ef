#pragma once

#include "core/reckoning/deeds.h"
#include "core/reckoning/population.h"

#include <string>
#include <vector>

namespace tierloam::reckoning {

/// A day on which a feeding was usual and none is written.
struct MissedFeeding {
    int day = 0;          ///< since the first bedding
    double kg = 0;        ///< fresh, the usual amount: median of the feedings of the 8 weeks before
    std::string material; ///< of the feeding before it
    bool operator==(const MissedFeeding&) const = default;
};

/// Days at multiples of the median gap of 8 weeks after a feeding, when the next feeding (or the end) is half a gap or more beyond them
/// and no `away` covers them. Fewer than two gaps make no habit.
std::vector<MissedFeeding> missedFeedings(const journal::Entries& entries, const journal::StackHistory& history, const Deeds& deeds, int lastDay);

/// Each member gives it with its own chance, the amount with a log-sd of 0.5, into the highest tray not drying and within its room.
void giveUnwritten(Population& population, const MissedFeeding& missed, const Deeds& deeds);

/// Feedings that most of the weight holds to have been given, month by month.
std::vector<UnwrittenGuess> guessUnwritten(const Population& population, const std::vector<MissedFeeding>& missed, Day firstBedding);

}
