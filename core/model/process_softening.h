#pragma once

#include "core/model/step_context.h"

namespace tierloam::model {
namespace {

/// Softening at 25 °C per day of soft, mix, coffee, paper, cardboard, wood, coir, mineral. Judgement.
inline constexpr double softeningRate[softeningClasses] = {0.25, 0.12, 0.05, 0.02, 0.015, 0.003, 0.002, 0.0};
inline constexpr double softenedRespiration = 0.006;   ///< 1/d at 25 °C
inline constexpr double waterOfRespiration = 0.6;      ///< kg water per kg DM respired
inline constexpr double nothing = 1e-30;               ///< keeps 0/0 out where a pool is empty

inline int softeningScaleRow(int c) { return c < 3 ? rowSofteningFood : rowSofteningPaper; }

/// Worms shred and inoculate: 0.30 + w·b/(b + 0.5), b in kg LW per m² of this tray.
inline void shredding(const StepContext& at, const TrayBlock& tray, Members& factor)
{
    const Members& wormFactor = at.parameters.value[rowWormFactor];
    TIERLOAM_EACH_MEMBER(m) {
        const double b = tray.share[m] * at.biomass[m] / at.forcing.area;
        factor[m] = at.q10[m] * at.stack.softFactor[m] * (0.30 + wormFactor[m] * b / (b + 0.5));
    }
}

/// F[c] → H at k_c · Q10 · noise · (0.30 + w·b/(b+0.5)), of which a share is respired; H and C are respired directly.
/// Carbon leaves at the C share of the pool that the matter leaves; water is made.
inline void soften(StepContext& at, int t)
{
    TrayBlock& tray = at.trays[t];
    const TrayShape& shape = at.shapes[t];
    const double days = at.forcing.days;
    const Members& respiredShare = at.parameters.value[rowRespiredSoftening];
    const Members& castingsRate = at.parameters.value[rowCastingsRespiration];
    Members factor;
    shredding(at, tray, factor);
    Members respired;
    Members carbonLost;
    Members classCarbon; // of all that is not softened yet, before this step
    TIERLOAM_EACH_MEMBER(m) respired[m] = carbonLost[m] = classCarbon[m] = 0.0;
    Members softenedIn;
    TIERLOAM_EACH_MEMBER(m) softenedIn[m] = 0.0;
    for (int c = 0; c < softeningClasses; ++c) {
        if (shape.weight[c] <= 0.0) continue;
        const double carbonShare = shape.carbonShare[c];
        const Members& scale = at.parameters.value[softeningScaleRow(c)];
        const double tracerHere = shape.tracerClass == c ? 1.0 : 0.0;
        TIERLOAM_EACH_MEMBER(m) {
            const double loss = lossFactor(softeningRate[c] * days * scale[m] * factor[m]);
            const double softened = tray.unsoftened[c][m] * loss;
            const double breathed = softened * respiredShare[m];
            classCarbon[m] += tray.unsoftened[c][m] * carbonShare;
            tray.unsoftened[c][m] -= softened;
            tray.tracer[m] -= tray.tracer[m] * loss * tracerHere;
            softenedIn[m] += softened - breathed;
            respired[m] += breathed;
            carbonLost[m] += breathed * carbonShare;
        }
    }
    TIERLOAM_EACH_MEMBER(m) {
        const double rest = greatest(tray.carbon[m] - classCarbon[m], 0.0);
        const double restShare = rest / (tray.softened[m] + tray.castings[m] + nothing);
        // Gain and respiration of H as one: half of the gain is there while it is respired.
        const double before = tray.softened[m] + 0.5 * softenedIn[m];
        const double ofSoftened = before * lossFactor(softenedRespiration * days * at.q10[m]);
        const double ofCastings = tray.castings[m] * lossFactor(castingsRate[m] * days * at.q10[m]);
        tray.softened[m] += softenedIn[m] - ofSoftened;
        tray.castings[m] -= ofCastings;
        const double direct = ofSoftened + ofCastings;
        const double all = respired[m] + direct;
        const double carbon = least(tray.carbon[m], carbonLost[m] + direct * restShare);
        tray.carbon[m] -= carbon;
        at.stack.carbonRespired[m] += carbon;
        tray.water[m] += waterOfRespiration * all;
        at.respired[m] += all;
    }
}

}
}
