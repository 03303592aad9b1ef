#pragma once

#include "core/guide/castings_use.h"
#include "core/journal/replay.h"
#include "core/materials/table.h"
#include "core/reckoning/reckoning.h"

#include <optional>
#include <string_view>
#include <vector>

/// A harvest from day to day: what the estimates say of the tray in light-drying, and what became of the last one that was taken.
namespace tierloam::guide {

/// One day of light-drying.
struct DryingDay {
    Day day{};
    int number = 1;                  ///< the day it was lifted is 1
    double wormsLeft = 0;            ///< median share, by mass, of those that were in it when it was lifted, 0…1
    double wormsLeftLow = 0, wormsLeftHigh = 0;
    reckoning::Band moisturePct;
    bool tooWet = false;             ///< wetter than what castings hold when drained: loosen again
    bool fedOnTop = false;           ///< that day food went into the drying tray, which keeps worms in it
};

/// From the day it was lifted up to today; empty while nothing dries. Days without an estimate are left out.
std::vector<DryingDay> dryingDays(const reckoning::StackReckoning& stack, const journal::StackHistory& history, const journal::Entries& entries, Day today);

/// Few enough are left to take the castings (row leftAfterDrying of the table of figures).
bool mayTake(const DryingDay& day);

/// The last whole harvest of a stack.
struct HarvestOutcome {
    Day day{};
    int batch = 0;
    CastingsBatch taken;
    bool moistureRead = false;       ///< else the table's takenMoisture
    std::optional<reckoning::Band> expectedKg; ///< wet, before it was weighed
    std::optional<Yield> yield;      ///< against the dry matter that went into the batch, where it is known
    reckoning::Band dryInput;        ///< kg
    double wormsGone = 0, cocoonsGone = 0; ///< estimates, number
};
/// What the journal says of the castings after a harvest: laid in the light again, a bait laid on them, worms carried back.
struct CastingsCare {
    std::optional<Day> lightAgain, baited, carriedBack; ///< the first of each on or after the day of the harvest
};
/// Words of the events that say so.
inline constexpr std::string_view lightAgainEvent = "second light-drying", baitEvent = "bait tray";
/// Read from the events of the stack; worms put in (`stock`) after one of them are those carried back.
CastingsCare castingsCare(std::string_view stack, Day harvested, const journal::Entries& entries, Day today);

/// nullopt when none was taken in the last `days`.
std::optional<HarvestOutcome> latestHarvest(const reckoning::StackReckoning& stack, const journal::StackHistory& history, const journal::Entries& entries, Day today, int days);

}
