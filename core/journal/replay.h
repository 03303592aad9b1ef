#pragma once

#include "core/journal/entry.h"
#include "core/journal/refusal.h"
#include "core/journal/standing.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace tierloam::journal {

/// One entry, resolved: which slot and batch it meant, and how the stack stands after it.
struct Step {
    std::size_t entry = 0;           ///< index into the entries replayed
    Day day{};                       ///< of the entry
    std::optional<int> slot;         ///< resolved slot before the entry took effect; nullopt: the whole stack or none.
                                     ///< For `bed` on top: the new slot
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
