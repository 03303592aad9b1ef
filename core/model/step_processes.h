#pragma once

#include "core/model/process_air.h"
#include "core/model/process_cocoons.h"
#include "core/model/process_death.h"
#include "core/model/process_energy.h"
#include "core/model/process_ingestion.h"
#include "core/model/process_moving.h"
#include "core/model/process_noise.h"
#include "core/model/process_softening.h"
#include "core/model/process_temperature.h"
#include "core/model/process_water.h"
#include "core/model/step.h"

namespace tierloam::model {
namespace {

inline void countRespired(StepContext& at)
{
    const double perDay = 1.0 / at.forcing.days;
    TIERLOAM_EACH_MEMBER(m) {
        at.stack.respired[m] += at.respired[m];
        at.stack.respiredRate[m] = at.respired[m] * perDay;
    }
}

inline void forwardStep(StepContext& at)
{
    TIERLOAM_EACH_MEMBER(m) at.respired[m] = 0.0;
    at.backward = false;
    if (at.forcing.holdTemperature) relaxTemperature(at, 0.0);
    temperatureFactors(at);
    wormSums(at);
    TIERLOAM_EACH_MEMBER(m) {
        at.feeders[m] = at.biomass[m];
        at.eaters[m] = at.appetite[m];
    }
    cocoonSums(at);
    for (int t = 0; t < at.trayCount; ++t) {
        shred(at, t);
        unsoftenedSums(at, t);
        soften(at, t);
        breathe(at, t);
    }
    ingest(at);
    spendEnergy<false>(at);
    develop(at);
    die(at);
    moveWorms(at);
    drainAndEvaporate(at);
    countRespired(at);
}

/// All sums stand as the forward step left them. What feeds what (softening, eating, spending) stays in this order, since each is solved
/// with what comes in meanwhile.
inline void backwardStep(StepContext& at)
{
    TIERLOAM_EACH_MEMBER(m) at.respired[m] = 0.0;
    at.backward = true;
    temperatureFactors(at);
    // The first step had the worms of its beginning; this one has those of its end, as far as they can be foreseen.
    TIERLOAM_EACH_MEMBER(m) {
        at.feeders[m] = greatest(2.0 * at.biomass[m] - at.feeders[m], 0.0);
        at.eaters[m] = greatest(2.0 * at.appetite[m] - at.eaters[m], 0.0);
    }
    drainAndEvaporate(at);
    moveWorms(at);
    for (int t = 0; t < at.trayCount; ++t) {
        shred(at, t);
        breathe(at, t);
    }
    die(at);
    develop(at);
    for (int t = 0; t < at.trayCount; ++t) soften(at, t);
    ingest(at);
    spendEnergy<true>(at);
    countRespired(at);
}

/// A forward step and a backward one; see step.h.
inline void stepPair(StackBlock& stack, TrayBlock* trays, const TrayShape* shapes, int trayCount, const ParameterBlock& parameters,
                     const MassClassTable& classes, const StepForcing& forcing)
{
    StepContext at{stack, trays, shapes, trayCount, parameters, classes, forcing, false, {}, {}, {}, {}, {}, {}, {}, {}, {}, {}, {}};
    forwardStep(at);
    relaxTemperature(at, 2.0 * forcing.days);
    backwardStep(at);
}

}
}
