#pragma once

#include "core/journal/entry.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace tierloam::journal {

/// The keys of `setup` in force, defaults filled in.
struct StackSettings {
    Area area = squareMetres(0.16);
    Length height = centimetres(11);
    int trays = 3;
    Volume sump = litres(4);
    Place place = Place::indoors;
    Temperature temp = celsius(20);
    Stand stand = Stand::none;
    bool operator==(const StackSettings&) const = default;
};

/// One life of a tray, from its bedding to its harvest. Numbered 1, 2, … per stack in order of bedding.
struct Batch {
    int number = 0;
    int tray = 0;                    ///< 1 to owned
    Day bedded{};
    std::optional<Day> ended;        ///< the day of its whole harvest
    std::string name;                ///< reserved for labels; empty
};

/// What stands where at one moment.
struct Standing {
    StackSettings settings;
    Spigot spigot = Spigot::open;
    bool lidOn = true;
    bool retired = false;
    std::vector<int> slots;          ///< batch numbers, bottom to top
    std::optional<int> drying;       ///< batch number of the tray in light-drying; it is always in the highest slot
    std::optional<Day> dryingSince;

    int slotOf(int batch) const;     ///< 1-based; 0 when it does not stand
    std::optional<int> feedSlot() const; ///< highest slot not drying
    int spare() const { return settings.trays - static_cast<int>(slots.size()); }
};

/// One entry, resolved: which slot and batch it meant, and how the stack stands after it.
struct Step {
    std::size_t entry = 0;           ///< index into the entries replayed
    std::optional<int> slot;         ///< resolved slot before the entry took effect; nullopt: the whole stack or none
    std::optional<int> batch;        ///< the batch in that slot (for `bed` on top: the new batch)
    bool incoming = false;           ///< the receiving side of a `move` written under another stack
    Standing after;
};

struct StackHistory {
    std::string name;
    std::uint64_t key = 0;           ///< FNV-1a of the name at the first setup, or the exported key
    Day firstSetup{};
    std::optional<Day> firstBedding;
    std::vector<Batch> batches;      ///< batches[n-1] has number n
    std::vector<Step> steps;         ///< in journal order

    /// How it stood at the end of that day; nullopt before its first setup.
    const Standing* on(Day day) const;
    const Batch& batch(int number) const { return batches[static_cast<std::size_t>(number) - 1]; }
};

/// Why a step is impossible. The text is made by core/exchange (it follows the locale).
enum class RefusalReason {
    stackUnknown,          ///< never set up
    beforeFirstSetup,
    stackRetired,
    nameTaken,             ///< setup of a retired stack's name
    slotMissing,           ///< the slot is not there
    noTrayToTake,          ///< feed, cover, … with no tray, or only a drying one
    noSpareTray,
    rotateNeedsTwo,
    harvestNeedsSlot,      ///< none is drying and no slot was given
    noneDrying,            ///< loosen without a drying tray
    tooFewTrays,           ///< setup trays below what stands
    sameStack,             ///< move to itself
    tooDeep,               ///< check depth above the tray's height
    stackNameInOwnMaterial ///< `material` with a stack
};

struct Refusal {
    RefusalReason reason{};
    std::size_t entry = 0;           ///< index into the entries replayed
    std::string stack;
    std::optional<int> slot;         ///< the slot asked for
    int slotsThere = 0;
    Day day{};                       ///< of the entry, or for beforeFirstSetup: the first setup
};

struct Replay {
    std::vector<StackHistory> stacks;   ///< in order of their first setup
    std::vector<Refusal> refusals;      ///< empty for a legal journal; a refused entry takes no effect

    const StackHistory* stack(const std::string& name) const;
};

/// Replays the journal; entries must be in journal order. Never throws on illegal steps: they are listed.
Replay replay(const Entries& entries);

/// 64-bit FNV-1a of the UTF-8 bytes.
std::uint64_t stackKey(std::string_view name);

}
