#pragma once

#include "core/journal/replay.h"
#include "core/materials/table.h"

#include <optional>

namespace tierloam::guide {

/// What the journal itself says of the last weeks of a stack, as it bears on what may be wrong.
struct Circumstances {
    double fedKg14 = 0;                       ///< fresh, the last 14 days
    double doubtfulShare = 0;                 ///< of what was fed in 30 days: a material to be kept out counts in full, one that is welcome a little by a third
    double uncoveredShare = 0;                ///< of the feedings of 21 days, without paper on that day or the next; 0 with a routine of covers
    int feedings21 = 0;
    std::optional<double> carbonToNitrogen;   ///< of food and covers of 21 days together
    std::optional<int> daysSinceFed;
    std::optional<int> daysSinceDisturbed;    ///< worms put in or moved, a tray lifted or added
    std::optional<int> squeeze;               ///< 1 to 5, the last within 14 days
    std::optional<double> ph;                 ///< likewise
    std::optional<double> bedCelsius;         ///< likewise, as read
    int ageDays = 0;                          ///< since the first bedding
};

/// Of one stack up to the end of a day. Entries are in journal order; an unknown stack gives the default.
Circumstances circumstancesOf(const journal::Entries& entries, const journal::StackHistory& stack, const materials::Table& materials, Day today);

}
