#pragma once

#include "core/model/process_air.h"

namespace tierloam::model {
namespace {

/// What the worms of each tray eat, by a Holling type II response to softened matter:
///     dH/dt = −demand · H / (H + K·A),  demand = s · Σ n_i · 0.20 g/d · (m_i/1 g)^(2/3) · g(T) · moisture · air
/// A share of it is assimilated into the reserve, the rest becomes castings. Reads breathe() and unsoftenedSums().
/// Source: scale and half-saturation after Johnston et al. 2014, Ecol. Modelling 280:5–17.
inline void ingest(StepContext& at)
{
    StackBlock& stack = at.stack;
    const Members& rate = at.parameters.value[rowIngestion];
    const Members& half = at.parameters.value[rowHalfSaturation];
    const Members& assimilation = at.parameters.value[rowAssimilation];
    const Members& saltYield = at.parameters.value[rowSaltYield];
    const double area = at.forcing.area;
    const double scale = 1e-3 * at.forcing.days;
    Members all, eatenInAll, carbonInAll; // demand in this step, were worms everywhere and all well
    TIERLOAM_EACH_MEMBER(m) eatenInAll[m] = carbonInAll[m] = 0.0;
    TIERLOAM_EACH_MEMBER(m) all[m] = scale * rate[m] * at.appetite[m] * at.growth[m];
    for (int t = 0; t < at.trayCount; ++t) {
        TrayBlock& tray = at.trays[t];
        TIERLOAM_EACH_MEMBER(m) {
            const double demand = all[m] * tray.share[m] * tray.wet[m] * tray.air[m];
            // demand/(H + K·A) is taken at the middle of the step, by a first guess of half of what is eaten: second order, still positive.
            const double saturation = half[m] * area;
            const double guess = lossFactor(demand, tray.softened[m] + saturation);
            const double middle = tray.softened[m] * (1.0 - 0.5 * guess);
            const double eaten = tray.softened[m] * lossFactor(demand, middle + saturation);
            const double assimilated = eaten * assimilation[m];
            const double carbonShare = greatest(tray.carbon[m] - tray.unsoftenedCarbon[m], 0.0) / (tray.softened[m] + tray.castings[m] + nothing);
            const double carbon = least(tray.carbon[m], assimilated * carbonShare);
            tray.softened[m] -= eaten;
            tray.castings[m] += eaten - assimilated;
            tray.carbon[m] -= carbon;
            tray.salts[m] += saltYield[m] * eaten;
            eatenInAll[m] += eaten;
            carbonInAll[m] += carbon;
        }
    }
    TIERLOAM_EACH_MEMBER(m) {
        const double assimilated = eatenInAll[m] * assimilation[m];
        stack.saltsFormed[m] += saltYield[m] * eatenInAll[m];
        stack.wormCarbon[m] += carbonInAll[m];
        stack.reserve[m] += assimilated;
        stack.ingested[m] += eatenInAll[m];
        stack.assimilated[m] += assimilated;
    }
}

}
}
