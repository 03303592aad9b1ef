#pragma once

#include "core/journal/settings.h"

#include <optional>
#include <string>
#include <vector>

namespace tierloam::journal {

/// One life of a tray, from its bedding to its harvest. Numbered 1, 2, … per stack in order of bedding.
struct Batch {
    int number = 0;
    int tray = 0;                    ///< 1 to owned
    Day bedded{};
    std::optional<Day> ended;        ///< the day of its whole harvest
    std::string name;                ///< reserved for labels; empty
    std::size_t entry = 0;           ///< index of the `bed` that began it: what a batch is known by when numbers shift
};

/// What stands where at one moment.
struct Standing {
    StackSettings settings;
    Spigot spigot = Spigot::open;
    bool lidOn = true;               ///< taken off by a rotation, back on when the drying ends; `lid` turns it either way
    bool retired = false;            ///< the slots then stay as they last stood
    std::vector<int> slots;          ///< batch numbers, bottom to top
    std::optional<int> drying;       ///< batch number of the tray in light-drying; it is always in the highest slot
    std::optional<Day> dryingSince;

    int slotOf(int batch) const;     ///< 1-based; 0 when it does not stand
    std::optional<int> feedSlot() const; ///< highest slot not drying
    int trays() const { return static_cast<int>(slots.size()); }
    int spare() const { return settings.trays - trays(); } ///< trays in storage
    bool has(int slot) const { return slot >= 1 && slot <= trays(); }
    int batchIn(int slot) const { return slots[static_cast<std::size_t>(slot) - 1]; } ///< slot must be there
    std::optional<int> dryingSlot() const { return drying ? std::optional{trays()} : std::nullopt; }
};

/// The lowest number, 1 to owned, of a tray that stands in storage; nullopt when none is spare.
/// A tray keeps its number while it stands, also when fewer are owned later.
std::optional<int> lowestSpareTray(const Standing& standing, const std::vector<Batch>& batches);

}
