#pragma once

#include "core/model/process_energy.h"

namespace tierloam::model {
namespace {

/// Incubation of 437/(T−6) days in four stages, none below 8 or above 32 °C; of those that end it a share hatches, each into
/// young of 5.3 mg or of what the cocoon holds, if that is less. Cocoons that do not hatch, and what is left over, enter H.
/// Source: Venter & Reinecke 1988, S. Afr. J. Zool. 23:161–165.
inline void develop(StepContext& at)
{
    StackBlock& stack = at.stack;
    const double days = at.forcing.days;
    const Members& incubation = at.parameters.value[rowIncubation];
    const Members& success = at.parameters.value[rowHatchSuccess];
    const Members& young = at.parameters.value[rowYoung];
    const double first = at.classes.kilograms[0];
    const double gap = at.classes.gapUp[0];
    Members loss;
    TIERLOAM_EACH_MEMBER(m) {
        const double t = at.stack.bed[m];
        const double rate = t >= 8.0 && t <= 32.0 ? cocoonStages * (t - 6.0) / incubation[m] : 0.0;
        loss[m] = lossFactor(rate * days);
    }
    for (int b = 0; b < at.trayCount; ++b) {
        TrayBlock& tray = at.trays[b];
        Members ended;
        TIERLOAM_EACH_MEMBER(m) ended[m] = 0.0;
        for (int k = 0; k < cocoonStages; ++k) {
            const int stage = at.forcing.backward ? cocoonStages - 1 - k : k;
            Members& here = tray.cocoons[stage];
            Members& next = stage + 1 < cocoonStages ? tray.cocoons[stage + 1] : ended;
            TIERLOAM_EACH_MEMBER(m) {
                const double leaving = here[m] * loss[m];
                here[m] -= leaving;
                next[m] += leaving;
            }
        }
        TIERLOAM_EACH_MEMBER(m) {
            const double number = ended[m] * success[m] * young[m];
            const double each = least(hatchlingMass, cocoonMass / young[m]);
            // To the two neighbouring classes so that number and mass hold; one lighter than the first class keeps its mass.
            const double upper = greatest((each - first) / gap, 0.0);
            const double lower = each < first ? each / first : 1.0 - upper;
            const double intoFirst = number * lower;
            const double intoSecond = number * upper;
            const double hatched = dryPerLive * (intoFirst * first + intoSecond * (first + gap));
            const double left = greatest(cocoonStored * ended[m] - hatched, 0.0);
            const double live = dryPerLive * at.biomass[m] + stack.reserve[m] + cocoonStored * ended[m];
            const bool removed = at.forcing.hatchlingsRemoved;
            const double carbonShare = stack.wormCarbon[m] / (live + nothing);
            const double carbon = least(stack.wormCarbon[m], left * carbonShare);
            const double carbonAway = removed ? least(stack.wormCarbon[m] - carbon, hatched * carbonShare) : 0.0;
            stack.worms[0][m] += removed ? 0.0 : intoFirst;
            stack.worms[1][m] += removed ? 0.0 : intoSecond;
            stack.takenOut[m] += removed ? hatched : 0.0;
            tray.softened[m] += left;
            tray.carbon[m] += carbon;
            stack.wormCarbon[m] -= carbon + carbonAway;
            stack.carbonOut[m] += carbonAway;
        }
    }
}

}
}
