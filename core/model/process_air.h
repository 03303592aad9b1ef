#pragma once

#include "core/model/process_softening.h"

namespace tierloam::model {
namespace {

/// air = 1/(1 + (X/X50)^4), X = kg DM respired by softening and from H per m² of the tray and day, at the present state.
/// Also the moisture multiplier on ingestion by water over field capacity w:
/// 0 at w ≤ 0.35, 1 from 0.65 to 1.05, falling to 0.3 at 1.3 and beyond; linear between.
inline void breathe(StepContext& at, int t)
{
    TrayBlock& tray = at.trays[t];
    const TrayShape& shape = at.shapes[t];
    const Members& respiredShare = at.parameters.value[rowRespiredSoftening];
    const Members& half = at.parameters.value[rowAirHalf];
    const Members& capacityScale = at.parameters.value[rowFieldCapacity];
    Members factor;
    shredding(at, tray, factor);
    Members rate;
    Members held;
    TIERLOAM_EACH_MEMBER(m) {
        rate[m] = 0.0;
        held[m] = softenedHeld * tray.softened[m] + castingsHeld * tray.castings[m];
    }
    for (int c = 0; c < softeningClasses; ++c) {
        if (shape.weight[c] <= 0.0) continue;
        const Members& scale = at.parameters.value[softeningScaleRow(c)];
        TIERLOAM_EACH_MEMBER(m) {
            rate[m] += softeningRate[c] * scale[m] * tray.unsoftened[c][m];
            held[m] += shape.held[c] * tray.unsoftened[c][m];
        }
    }
    TIERLOAM_EACH_MEMBER(m) {
        const double x = (rate[m] * factor[m] * respiredShare[m] + softenedRespiration * at.q10[m] * tray.softened[m]) / at.forcing.area;
        const double ratio = (x / half[m]) * (x / half[m]);
        tray.air[m] = 1.0 / (1.0 + ratio * ratio);
        tray.capacity[m] = held[m] * capacityScale[m];
        const double w = at.forcing.holdWater ? 1.0 : tray.water[m] / (tray.capacity[m] + nothing);
        const double rising = least(greatest((w - 0.35) / 0.3, 0.0), 1.0);
        const double falling = greatest(1.0 - 2.8 * (w - 1.05), 0.3);
        tray.wet[m] = least(rising, falling);
    }
}

}
}
