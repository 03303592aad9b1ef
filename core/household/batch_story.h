#pragma once

#include "core/journal/replay.h"
#include "core/materials/table.h"

#include <vector>

namespace tierloam::household {

/// What was done to one batch from its bedding on, as the journal has it. Masses in kg as they came to hand; a volume counts by the bulk of
/// its material, a volume of an unknown material not at all. What a routine does without being written down is not in it.
struct BatchStory {
    int batch = 0, tray = 0;
    Day bedded{};
    std::optional<Day> ended;            ///< the day of its whole harvest
    std::optional<Day> retired;          ///< the day on which its stack ended, where the batch stood in it to the last
    double beddingKg = 0;
    int feedings = 0;
    double fedKg = 0;
    std::vector<double> fedKgByWeek;     ///< [weeks from the bedding on, up to the latest feeding]
    double coverKg = 0;
    int looks = 0;
    std::optional<Day> lastLook;
    std::optional<Day> lifted;           ///< to the top, the last time
    double takenKg = 0, takenL = 0;      ///< of castings, by mass and by volume
    std::vector<std::size_t> told;       ///< indices of the entries worth telling one by one: all but feedings, covers and waterings without a note

    /// Its days: they end with the batch or with its stack.
    int daysUntil(Day today) const { return daysBetween(bedded, ended.value_or(retired.value_or(today))); }
};

/// Of one batch of the history; `upTo` included. Entries are those that were replayed.
BatchStory batchStory(const journal::Batch& batch, const journal::StackHistory& history, const journal::Entries& entries, const materials::Table& materials, Day upTo);

/// Of all that were bedded by then, in order of bedding.
std::vector<BatchStory> batchStories(const journal::StackHistory& history, const journal::Entries& entries, const materials::Table& materials, Day upTo);

}
