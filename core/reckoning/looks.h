#pragma once

#include "core/journal/action.h"
#include "core/journal/standing.h"
#include "core/model/measures.h"
#include "core/reckoning/distribution.h"
#include "core/reckoning/look_kind.h"

#include <optional>
#include <vector>

namespace tierloam::reckoning {

/// One value that was read. The likelihoods and their widths are those of the model's description.
struct Look {
    LookKind kind{};
    int slot = -1;                ///< 0-based; −1: the whole stack
    double value = 0;
    double share = 1;             ///< of the bed searched, or of the tray taken
    double litres = 0;            ///< of the bed searched; of water poured before a drain
    bool spigotOpen = false;
    std::optional<double> tareKg;
};

/// Every value that an entry reads off the stack, in the order in which they are weighed. `before` is how the stack stood before it.
std::vector<Look> looksOf(const journal::Action& action, std::optional<int> slot, const journal::Standing& before);

/// What this member expects. `ranOffBefore`: L that had run off when the sump was last emptied.
Expectation expectation(const Look& look, const model::MemberOf& of, double ranOffBefore);

/// Worms heavier than `kg`, number and kg, the class that is cut shared by its log-width.
struct Heavier { double number, kg; };
Heavier heavierThan(const model::MemberOf& of, double kg);

}
