#pragma once

#include "core/model/process_air.h"

namespace tierloam::model {
namespace {

/// What the worms of each tray eat, by a Holling type II response to softened matter:
///     dH/dt = −demand · H / (H + K·A),  demand = s · Σ n_i · 0.20 g/d · (m_i/1 g)^(2/3) · g(T) · moisture · air
/// A share of it is assimilated into the reserve, the rest becomes castings.
/// Source: scale and half-saturation after Johnston et al. 2014, Ecol. Modelling 280:5–17.
inline void ingest(StepContext& at)
{
    StackBlock& stack = at.stack;
    const Members& rate = at.parameters.value[rowIngestion];
    const Members& half = at.parameters.value[rowHalfSaturation];
    const Members& assimilation = at.parameters.value[rowAssimilation];
    const Members& saltYield = at.parameters.value[rowSaltYield];
    for (int t = 0; t < at.trayCount; ++t) {
        TrayBlock& tray = at.trays[t];
        const TrayShape& shape = at.shapes[t];
        Members classCarbon;
        TIERLOAM_EACH_MEMBER(m) classCarbon[m] = 0.0;
        for (int c = 0; c < softeningClasses; ++c) {
            if (shape.weight[c] <= 0.0) continue;
            TIERLOAM_EACH_MEMBER(m) classCarbon[m] += tray.unsoftened[c][m] * shape.carbonShare[c];
        }
        TIERLOAM_EACH_MEMBER(m) {
            const double demand = 1e-3 * rate[m] * tray.share[m] * at.appetite[m] * at.growth[m] * tray.wet[m] * tray.air[m];
            // demand/(H + K·A) is taken at the middle of the step, by a first guess of half of what is eaten: second order, still positive.
            const double saturation = half[m] * at.forcing.area;
            const double guess = lossFactor(demand * at.forcing.days / (tray.softened[m] + saturation));
            const double middle = tray.softened[m] * (1.0 - 0.5 * guess);
            const double eaten = tray.softened[m] * lossFactor(demand * at.forcing.days / (middle + saturation));
            const double assimilated = eaten * assimilation[m];
            const double carbonShare = greatest(tray.carbon[m] - classCarbon[m], 0.0) / (tray.softened[m] + tray.castings[m] + nothing);
            const double carbon = least(tray.carbon[m], assimilated * carbonShare);
            tray.softened[m] -= eaten;
            tray.castings[m] += eaten - assimilated;
            tray.carbon[m] -= carbon;
            const double formed = saltYield[m] * eaten;
            tray.salts[m] += formed;
            stack.saltsFormed[m] += formed;
            stack.wormCarbon[m] += carbon;
            stack.reserve[m] += assimilated;
            stack.ingested[m] += eaten;
            stack.assimilated[m] += assimilated;
        }
    }
}

}
}
