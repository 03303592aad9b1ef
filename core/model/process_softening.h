#pragma once

#include "core/model/process_sums.h"

namespace tierloam::model {
namespace {

inline constexpr double softenedRespiration = 0.006;   ///< 1/d at 25 °C
inline constexpr double waterOfRespiration = 0.6;      ///< kg water per kg DM respired

/// Worms shred and inoculate: Q10 · noise · (0.30 + w·b/(b + 0.5)), b in kg LW per m² of this tray.
inline void shred(const StepContext& at, int t)
{
    TrayBlock& tray = at.trays[t];
    const Members& wormFactor = at.parameters.value[rowWormFactor];
    const double half = 0.5 * at.forcing.area;
    TIERLOAM_EACH_MEMBER(m) {
        const double here = tray.share[m] * at.feeders[m];
        tray.shredding[m] = at.q10[m] * at.stack.softFactor[m] * (0.30 + wormFactor[m] * here / (here + half));
    }
}

/// F[c] → H at k_c · Q10 · noise · (0.30 + w·b/(b+0.5)), of which a share is respired; H and C are respired directly.
/// Carbon leaves at the C share of the pool that the matter leaves; water is made. What enters H is left in `gain` for ingest().
/// Reads shred() and unsoftenedSums(), and keeps these.
inline void soften(StepContext& at, int t)
{
    TrayBlock& tray = at.trays[t];
    const TrayShape& shape = at.shapes[t];
    const double days = at.forcing.days;
    const Members& respiredShare = at.parameters.value[rowRespiredSoftening];
    const Members& castingsRate = at.parameters.value[rowCastingsRespiration];
    Members gone;
    Members slowing;
    Members carbonGone;
    TIERLOAM_EACH_MEMBER(m) gone[m] = slowing[m] = carbonGone[m] = tray.rateFall[m] = 0.0;
    for (int c = 0; c < softeningClasses; ++c) {
        if (shape.weight[c] <= 0.0 || softeningRate[c] <= 0.0) continue;
        const double carbonShare = shape.carbonShare[c];
        const double held = shape.held[c];
        const double perDay = softeningRate[c];
        const double rate = perDay * days;
        const Members& scale = at.parameters.value[softeningScaleRow(c)];
        if (shape.tracerClass == c)
            TIERLOAM_EACH_MEMBER(m) tray.tracer[m] -= tray.tracer[m] * finerLossFactor(rate * scale[m] * tray.shredding[m]);
        TIERLOAM_EACH_MEMBER(m) {
            const double loss = finerLossFactor(rate * scale[m] * tray.shredding[m]);
            const double softened = tray.unsoftened[c][m] * loss;
            tray.unsoftened[c][m] -= softened;
            gone[m] += softened;
            slowing[m] += softened * loss;
            carbonGone[m] += softened * carbonShare;
            tray.unsoftenedHeld[m] = greatest(tray.unsoftenedHeld[m] - softened * held, 0.0);
            tray.rateFall[m] += softened * perDay * scale[m];
        }
    }
    TIERLOAM_EACH_MEMBER(m) {
        const double breathed = gone[m] * respiredShare[m];
        const double softenedIn = gone[m] - breathed;
        tray.unsoftenedDry[m] = greatest(tray.unsoftenedDry[m] - gone[m], 0.0);
        tray.unsoftenedRate[m] = greatest(tray.unsoftenedRate[m] - tray.rateFall[m], 0.0);
        const double restShare = carbonShareOfSoftened(tray.carbon[m], tray.unsoftenedCarbon[m], tray.softened[m] + tray.castings[m]);
        double lossOfSoftened, lossOfCastings;
        lossFactors(softenedRespiration * days * at.q10[m], castingsRate[m] * days * at.q10[m], lossOfSoftened, lossOfCastings);
        // Half of the gain is there while H is respired.
        const double ofSoftened = tray.softened[m] * lossOfSoftened;
        const double ofGain = 0.5 * softenedIn * lossOfSoftened;
        const double ofCastings = tray.castings[m] * lossOfCastings;
        tray.softened[m] -= ofSoftened;
        tray.castings[m] -= ofCastings;
        tray.gain[m] = softenedIn - ofGain;
        tray.gainFall[m] = slowing[m] * (1.0 - respiredShare[m]);
        const double direct = ofSoftened + ofGain + ofCastings;
        const double all = breathed + direct;
        const double carbon = least(tray.carbon[m], carbonGone[m] * respiredShare[m] + direct * restShare);
        tray.carbon[m] -= carbon;
        tray.unsoftenedCarbon[m] -= carbonGone[m];
        at.stack.carbonRespired[m] += carbon;
        tray.water[m] += waterOfRespiration * all;
        at.respired[m] += all;
    }
}

}
}
