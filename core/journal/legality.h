#pragma once

#include "core/journal/entry.h"
#include "core/journal/refusal.h"
#include "core/journal/standing.h"

#include <variant>

namespace tierloam::journal {

/// Where a step takes effect: the slot that an empty one stands for, or none when it means the whole stack.
struct Target {
    std::optional<int> slot;
};

/// What the step means as the stack stands at that moment, or why it is impossible. Looks at one live stack only: that the
/// stack is known, not retired, and what the other stack of a `move` says is the replay's.
std::variant<Target, RefusalReason> resolve(const Entry& entry, const Standing& standing);

/// Where worms that come in by a `move` go: the highest tray not drying; noTrayToTake when there is none.
std::variant<Target, RefusalReason> resolveIncoming(const Standing& standing);

}
