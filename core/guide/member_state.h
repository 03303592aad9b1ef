#pragma once

#include "core/reckoning/reckoning.h"

#include <vector>

namespace tierloam::guide {

/// One possible stack, as far as it bears on what may be wrong.
struct MemberState {
    double weight = 0;
    double wettest = 0, driest = 0;   ///< water over field capacity, of the trays that are not drying
    double air = 1;                   ///< least of the trays
    double softened = 0;              ///< kg dry per m² of the tray that is fed
    double sumpShare = 0;             ///< of its capacity
    double bed = 20;                  ///< °C
    double colony = 0;                ///< kg
    double ration = 1;
};

/// All of them, weights summing to 1: the members of the reckoning, or nineteen that stand for its bands when it has none.
std::vector<MemberState> memberStates(const reckoning::StackReckoning& stack);

}
