#pragma once

#include "core/journal/replay.h"
#include "core/reckoning/reckoning.h"

#include <memory>
#include <stop_token>

namespace tierloam::reckoning {

struct Options {
    Day asOf{};                      ///< the journal is read up to the end of this day
    int members = 512;               ///< a multiple of 64, 64 to 8192
    int threads = 2;
    bool southern = false;           ///< season turned by half a year
    bool fewSnapshots = false;       ///< three a stack instead of some fifteen, about a megabyte each at 512 members
    /// Stacks whose entries and options are unchanged are taken over from here; the others go on from its snapshots.
    std::shared_ptr<const Reckoning> previous;
};

/// Runs the model over the journal for every stack. Returns nullptr when it was stopped.
/// Entries are in journal order and legal. Bit-equal for any number of threads.
std::shared_ptr<const Reckoning> reckon(const journal::Entries& entries, const Options& options, std::stop_token stop = {});

}
