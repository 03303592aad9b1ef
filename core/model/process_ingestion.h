#pragma once

#include "core/model/process_air.h"

namespace tierloam::model {
namespace {

/// What lies there in the middle of a step: dH/dt = g − demand·H/(H + K) over its first half by the implicit midpoint rule, q = H + g/2 − demand/2·q/(q + K).
inline double middleOf(double softened, double gain, double demand, double saturation)
{
    const double known = softened + 0.5 * gain;
    const double b = known - 0.5 * demand - saturation;
    const double q = 0.5 * (b + __builtin_sqrt(b * b + 4.0 * saturation * known));
    return greatest(2.0 * q - softened, 0.0);
}

/// H·L + g·(1 − L/x) with L = h/(1 + h), h = x·p, p = 1 + x/2·r, r = 1 + x/3·(1 + x/4): e^x to fourth order, since here x reaches 3 and
/// more; and the part of a gain that falls evenly by `fall` during the step.
inline double eatenAt(double x, double softened, double gain, double fall)
{
    const double r = 1.0 + x * (1.0 / 3.0 + x * (1.0 / 12.0));
    const double p = 1.0 + 0.5 * x * r;
    return (x * (softened * p + gain * (p - 0.5 * r)) + 0.5 * fall * (p - r)) / (1.0 + x * p);
}

/// What the worms of each tray eat, by a Holling type II response to softened matter:
///     dH/dt = −demand · H / (H + K·A),  demand = s · Σ n_i · 0.20 g/d · (m_i/1 g)^(2/3) · g(T) · moisture · air
/// solved together with what softens meanwhile (g in a step, from soften()), or H would be far off wherever worms eat it within a day:
///     eaten = H·L + g·(1 − L/x),  x = demand/(H + K·A) at the middle of the step, L its loss factor
/// second order, positive, and exact where gain and eating balance. A share of it is assimilated for spendEnergy(), the rest becomes castings. Reads breathe() and unsoftenedSums().
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
    TIERLOAM_EACH_MEMBER(m) all[m] = scale * rate[m] * at.eaters[m] * at.growth[m];
    for (int t = 0; t < at.trayCount; ++t) {
        TrayBlock& tray = at.trays[t];
        TIERLOAM_EACH_MEMBER(m) {
            const double gain = tray.gain[m];
            const double demand = all[m] * tray.share[m] * tray.wet[m] * tray.air[m];
            const double saturation = half[m] * area;
            const double middle = middleOf(tray.softened[m], 0.5 * gain + 0.125 * tray.gainFall[m], 0.5 * demand, saturation);
            const double eaten = eatenAt(demand / (middle + saturation), tray.softened[m], gain, tray.gainFall[m]);
            const double assimilated = eaten * assimilation[m];
            const double carbonShare = carbonShareOfSoftened(tray.carbon[m], tray.unsoftenedCarbon[m], tray.softened[m] + gain + tray.castings[m]);
            const double carbon = least(tray.carbon[m], assimilated * carbonShare);
            tray.softened[m] = greatest(tray.softened[m] + gain - eaten, 0.0);
            tray.gain[m] = 0.0;
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
        at.assimilated[m] = assimilated;
        stack.ingested[m] += eatenInAll[m];
        stack.assimilated[m] += assimilated;
    }
}

}
}
