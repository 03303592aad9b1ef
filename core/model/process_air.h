#pragma once

#include "core/model/process_softening.h"

namespace tierloam::model {
namespace {

inline constexpr double drainageDays = 0.5;      ///< d, time constant of drainage

/// air = 1/(1 + (X/X50)^4), X = kg DM respired by softening and from H per m² of the tray and day, in the middle of the step.
/// Also the moisture multiplier on ingestion by water over field capacity w:
/// 0 at w ≤ 0.35, 1 from 0.65 to 1.05, falling to 0.3 at 1.3 and beyond; linear between. Reads shred() and unsoftenedSums().
inline void breathe(StepContext& at, int t)
{
    TrayBlock& tray = at.trays[t];
    const Members& respiredShare = at.parameters.value[rowRespiredSoftening];
    const Members& half = at.parameters.value[rowAirHalf];
    const Members& capacityScale = at.parameters.value[rowFieldCapacity];
    const double area = at.forcing.area;
    // After a feeding the air clears within the day: that of the middle of the step, which has been softened in the first of a pair and not yet in the second.
    const double toMiddle = at.backward ? -0.5 : 0.5;
    const double held = at.forcing.holdWater ? 1.0 : 0.0;
    // What exceeds field capacity falls within the step: its mean over a step that begins with this water, or that ends with it.
    const double drained = at.forcing.days / drainageDays;
    const double meanExcess = at.backward ? (exponential(drained) - 1.0) / drained : (1.0 - exponential(-drained)) / drained;
    TIERLOAM_EACH_MEMBER(m) {
        const double softened = tray.softened[m] + tray.gain[m];
        const double rate = greatest(tray.unsoftenedRate[m] + toMiddle * tray.rateFall[m], 0.0);
        const double respired = rate * tray.shredding[m] * respiredShare[m] + softenedRespiration * at.q10[m] * softened;
        const double ratio = respired / (half[m] * area);
        const double fourth = 1.0 + (ratio * ratio) * (ratio * ratio);
        const double capacity = (tray.unsoftenedHeld[m] + softenedHeld * softened + castingsHeld * tray.castings[m]) * capacityScale[m];
        const double filled = capacity + nothing;
        const double inverse = 1.0 / (fourth * filled); // one division for both quotients
        tray.air[m] = filled * inverse;
        tray.capacity[m] = capacity;
        const double ratioOfWater = tray.water[m] * fourth * inverse;
        const double beyond = greatest(ratioOfWater - 1.0, 0.0);
        const double w = held + (1.0 - held) * (ratioOfWater + beyond * (meanExcess - 1.0));
        const double rising = least(greatest((w - 0.35) * (1.0 / 0.3), 0.0), 1.0);
        const double falling = greatest(1.0 - 2.8 * (w - 1.05), 0.3);
        tray.wet[m] = least(rising, falling);
    }
}

}
}
