#pragma once

#include "core/journal/replay.h"
#include "core/reckoning/reckoning.h"

#include <functional>
#include <memory>
#include <stop_token>

namespace tierloam::reckoning {

inline constexpr std::size_t manyStacks = 24; ///< more than these have fewer members, and keep fewer snapshots
inline constexpr int membersOfMany = 256;

struct Options {
    Day asOf{};                      ///< the journal is read up to the end of this day
    int members = 512;               ///< a multiple of 64, 64 to 8192; of a household of many stacks at most membersOfMany
    int threads = 2;
    bool southern = false;           ///< season turned by half a year
    bool fewSnapshots = false;       ///< three a stack instead of some dozen, about a megabyte each at 512 members
    std::vector<std::string> shownFirst; ///< stacks that are made before the others
    /// Called between stacks while many are made, from whichever thread has made one: how far it is, and now and then (when those shown first are
    /// there, and every two seconds) what there is: stacks that are not made yet as `previous` has them, or not at all.
    std::function<void(std::size_t made, std::size_t all, std::shared_ptr<const Reckoning> soFar)> progress;
    /// Stacks whose entries and options are unchanged are taken over from here; the others go on from its snapshots.
    std::shared_ptr<const Reckoning> previous;
};

/// Runs the model over the journal for every stack. Returns nullptr when it was stopped.
/// Entries are in journal order and legal. Bit-equal for any number of threads.
std::shared_ptr<const Reckoning> reckon(const journal::Entries& all, const Options& options, std::stop_token stop = {});

}
