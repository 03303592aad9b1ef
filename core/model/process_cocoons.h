#pragma once

#include "core/model/process_energy.h"

namespace tierloam::model {
namespace {

/// Incubation of 437/(T−6) days in four stages, none below 8 or above 32 °C; of those that end it a share hatches, each into
/// young of 5.3 mg or of what the cocoon holds, if that is less. Cocoons that do not hatch, and what is left over, enter H.
/// Keeps the sums of worms and cocoons.
/// Source: Venter & Reinecke 1988, S. Afr. J. Zool. 23:161–165.
inline void develop(StepContext& at)
{
    StackBlock& stack = at.stack;
    const double days = at.forcing.days;
    const bool removed = at.forcing.hatchlingsRemoved;
    const double keep = removed ? 0.0 : 1.0;
    const Members& incubation = at.parameters.value[rowIncubation];
    const Members& success = at.parameters.value[rowHatchSuccess];
    const Members& young = at.parameters.value[rowYoung];
    const MassClassTable& classes = at.classes;
    const double first = classes.kilograms[0];
    const double second = classes.kilograms[1];
    const double perFirst = 1.0 / first;
    const double perGap = 1.0 / classes.gapUp[0];
    Members loss, number, toFirst, toSecond, left, leftCarbon;
    TIERLOAM_EACH_MEMBER(m) {
        const double t = stack.bed[m];
        // The rate, and the young of a cocoon with their mass, with one division.
        const double inverse = 1.0 / (incubation[m] * young[m]);
        const double rate = cocoonStages * (t - 6.0) * (inverse * young[m]);
        loss[m] = lossFactor((t >= 8.0 && t <= 32.0 ? rate : 0.0) * days);
        const double each = least(hatchlingMass, cocoonMass * (inverse * incubation[m]));
        const double hatch = success[m] * young[m];
        // To the two neighbouring classes so that number and mass hold; one lighter than the first class keeps its mass.
        const double upper = greatest((each - first) * perGap, 0.0);
        const double lower = each < first ? each * perFirst : 1.0 - upper;
        toFirst[m] = hatch * lower;
        toSecond[m] = hatch * upper;
        left[m] = greatest(cocoonStored - dryPerLive * (toFirst[m] * first + toSecond[m] * second), 0.0);
        const double live = dryPerLive * at.biomass[m] + cocoonStored * at.cocoons[m] + stack.reserve[m];
        leftCarbon[m] = stack.wormCarbon[m] / (live + nothing);
        number[m] = 0.0;
    }
    for (int b = 0; b < at.trayCount; ++b) {
        TrayBlock& tray = at.trays[b];
        Members ended;
        // The sweep along the chain turns with the half of the day.
        Members& c0 = tray.cocoons[0];
        Members& c1 = tray.cocoons[1];
        Members& c2 = tray.cocoons[2];
        Members& c3 = tray.cocoons[3];
        static_assert(cocoonStages == 4);
        if (at.backward) {
            TIERLOAM_EACH_MEMBER(m) {
                ended[m] = c3[m] * loss[m];
                c3[m] += c2[m] * loss[m] - ended[m];
                c2[m] += c1[m] * loss[m] - c2[m] * loss[m];
                c1[m] += c0[m] * loss[m] - c1[m] * loss[m];
                c0[m] -= c0[m] * loss[m];
            }
        } else {
            TIERLOAM_EACH_MEMBER(m) {
                const double from0 = c0[m] * loss[m];
                const double from1 = (c1[m] + from0) * loss[m];
                const double from2 = (c2[m] + from1) * loss[m];
                const double from3 = (c3[m] + from2) * loss[m];
                c0[m] -= from0;
                c1[m] += from0 - from1;
                c2[m] += from1 - from2;
                c3[m] += from2 - from3;
                ended[m] = from3;
            }
        }
        TIERLOAM_EACH_MEMBER(m) {
            const double rest = left[m] * ended[m];
            const double carbon = least(stack.wormCarbon[m], rest * leftCarbon[m]);
            tray.softened[m] += rest;
            tray.carbon[m] += carbon;
            stack.wormCarbon[m] -= carbon;
            number[m] += ended[m];
        }
    }
    TIERLOAM_EACH_MEMBER(m) {
        const double intoFirst = number[m] * toFirst[m];
        const double intoSecond = number[m] * toSecond[m];
        const double hatched = intoFirst * first + intoSecond * second;
        stack.worms[0][m] += keep * intoFirst;
        stack.worms[1][m] += keep * intoSecond;
        at.biomass[m] += keep * hatched;
        at.appetite[m] += keep * (intoFirst * classes.twoThirds[0] + intoSecond * classes.twoThirds[1]);
        at.cocoons[m] -= number[m];
    }
    if (removed)
        TIERLOAM_EACH_MEMBER(m) {
            const double hatched = dryPerLive * number[m] * (toFirst[m] * first + toSecond[m] * second);
            const double carbon = least(stack.wormCarbon[m], hatched * leftCarbon[m]);
            stack.takenOut[m] += hatched;
            stack.wormCarbon[m] -= carbon;
            stack.carbonOut[m] += carbon;
        }
}

}
}
