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

/// The order of a step, forward and backward; see step.h.
inline void step(StackBlock& stack, TrayBlock* trays, const TrayShape* shapes, int trayCount, const ParameterBlock& parameters,
                 const MassClassTable& classes, const StepForcing& forcing)
{
    StepContext at{stack, trays, shapes, trayCount, parameters, classes, forcing, {}, {}, {}, {}, {}, {}, {}, {}};
    TIERLOAM_EACH_MEMBER(m) at.respired[m] = 0.0;
    if (!forcing.backward) {
        relaxTemperature(at);
        temperatureFactors(at);
        wormSums(at);
        cocoonSums(at);
        for (int t = 0; t < trayCount; ++t) {
            shred(at, t);
            unsoftenedSums(at, t);
            soften(at, t);
            unsoftenedSums(at, t);
            breathe(at, t);
        }
        ingest(at);
        spendEnergy<false>(at);
        develop(at);
        die(at);
        moveWorms(at);
        drainAndEvaporate(at);
    } else {
        temperatureFactors(at);
        wormSums(at);
        cocoonSums(at);
        for (int t = 0; t < trayCount; ++t) unsoftenedSums(at, t);
        drainAndEvaporate(at);
        moveWorms(at);
        for (int t = 0; t < trayCount; ++t) {
            shred(at, t);
            breathe(at, t);
        }
        die(at);
        develop(at);
        spendEnergy<true>(at);
        ingest(at);
        for (int t = 0; t < trayCount; ++t) {
            shred(at, t);
            soften(at, t);
        }
    }
    const double perDay = 1.0 / forcing.days;
    TIERLOAM_EACH_MEMBER(m) {
        stack.respired[m] += at.respired[m];
        stack.respiredRate[m] = at.respired[m] * perDay;
    }
    if (forcing.backward) relaxTemperature(at);
}

}
}
