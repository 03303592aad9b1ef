#pragma once

#include "core/planning/changes.h"

#include <vector>

/// Another stack started from one: both go on with the same members, so that the new one has the worms, the place and the hands of the old.
namespace tierloam::planning {

/// The new stack's first tray on today's bedding, under its own feeding; a second tray is laid when half of the members have filled the first.
struct NewStack {
    double wormsKg = 0;              ///< weighed out and put in
    double boughtKg = 0;             ///< of these, since the old stack cannot spare so many
    double beddingKg = 0;            ///< fresh, as the old stack's last
    std::vector<reckoning::ChangedPlan::FeedFrom> feed; ///< kg fresh a week, from tomorrow on
    reckoning::Dates secondTray;     ///< the first tray is filled
    reckoning::Dates firstReady;     ///< feed-to-cast of the first tray at most 0.10, the second tray laid on the middle day
    reckoning::Band colonyIn60Days, colonyInAYear; ///< kg
    double airLowWithin14Days = 0;   ///< probability, as for any plan
    std::vector<reckoning::StackEstimate> days; ///< weekly

    // A first tray begins with 0.11 to 0.45 kg of worms: common practice, no source.
    static constexpr double leastWormsKg = 0.11, mostWormsKg = 0.45;
};

struct AnotherStack {
    GiveAway give;                   ///< the most that the old one can spare
    double share = 0;                ///< of the old colony that goes; 0: none can go, and there is no new stack
    NewStack young;
    reckoning::Dates backOn;         ///< the old stack processes again what it does today, or what it would with all its worms where that is less (GiveAway::asGoodAs), member by member
};

/// The changed plan of the old stack.
reckoning::ChangedPlan planOf(const AnotherStack& another, Day tomorrow);

/// `days`: until the old stack is to be back, as mostToGiveAway takes them. Of what can go the new stack gets mostWormsKg at most; where less than leastWormsKg
/// can, it is begun with so many, the rest being bought. nullopt when it was stopped or the reckoning holds no members.
std::optional<AnotherStack> startAnother(const reckoning::StackReckoning& stack, int days, int threads, std::stop_token stop = {});

}
