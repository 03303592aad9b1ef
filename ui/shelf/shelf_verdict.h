#pragma once

#include "ui/shelf/shelf_model.h"

namespace tierloam::shelf {

/// What the verdict is made from, as the stack stood on the day shown.
struct VerdictFacts {
    const journal::Standing* standing = nullptr;
    const reckoning::StackEstimate* estimate = nullptr;   ///< nullptr: not there yet
    const reckoning::StackReckoning* reckoning = nullptr; ///< nullptr on a past day: no advice is given for it
    std::vector<advice::Advice> advice;                   ///< most pressing first
    double dryingWormsLeft = -1;     ///< share of the worms that the drying tray held before it was lifted; below 0 when not known
    int dryingDays = 0;
    std::optional<int> silentDays;   ///< days since the last entry, when that is long for this stack
    Day today{}, shown{};
};

Verdict verdictOf(const VerdictFacts& facts);

/// Days without an entry after which a stack counts as silent: three times its usual gap between feedings, at least 21.
int silentAfter(double medianFeedGapDays);

}
