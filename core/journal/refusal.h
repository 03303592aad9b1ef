#pragma once

#include "core/quantity/measures.h"

#include <cstddef>
#include <optional>
#include <string>

namespace tierloam::journal {

/// Why a step is impossible. The text is made by core/exchange (it follows the locale).
enum class RefusalReason {
    stackUnknown,          ///< never set up
    beforeFirstSetup,
    stackRetired,
    nameTaken,             ///< setup of a retired stack's name
    badName,               ///< a first setup under a name that cannot be written (see isStackName)
    slotMissing,           ///< the slot is not there
    noTrayToTake,          ///< feed, cover, weigh, … with no tray, or only a drying one
    noSpareTray,
    rotateNeedsTwo,
    harvestNeedsSlot,      ///< none is drying and no slot was given
    noneDrying,            ///< loosen without a drying tray, or of another slot
    tooFewTrays,           ///< setup trays below what stands
    sameStack,             ///< move to itself
    tooDeep,               ///< check depth above the tray's height
    stackNameInOwnMaterial, ///< `material` with a stack
    itemUnknown,           ///< a material or species that is not known (any more); found by core/materials, which knows them
    entryGone              ///< an edit of an entry that is not there (any more)
};

struct Refusal {
    RefusalReason reason{};
    std::size_t entry = 0;           ///< index into the entries replayed; their number for entryGone
    std::string stack;               ///< the stack at fault: for a move, possibly the receiving one
    std::optional<int> slot;         ///< the slot asked for
    int slotsThere = 0;
    Day day{};                       ///< of the entry, or for beforeFirstSetup: the first setup
};

}
