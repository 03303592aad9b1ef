#pragma once

#include "core/model/process_air.h"
#include "core/model/process_cocoons.h"
#include "core/model/process_death.h"
#include "core/model/process_energy.h"
#include "core/model/process_ingestion.h"
#include "core/model/process_moving.h"
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
    StepContext at{stack, trays, shapes, trayCount, parameters, classes, forcing, {}, {}, {}, {}, {}, {}, {}};
    TIERLOAM_EACH_MEMBER(m) at.respired[m] = 0.0;
    if (!forcing.backward) {
        relaxTemperature(at, stack.respiredRate);
        temperatureFactors(at);
        colonySums(at);
        for (int t = 0; t < trayCount; ++t) soften(at, t);
        for (int t = 0; t < trayCount; ++t) breathe(at, t);
        ingest(at);
        spendEnergy(at);
        develop(at);
        die(at);
        moveWorms(at);
        drainAndEvaporate(at);
    } else {
        temperatureFactors(at);
        drainAndEvaporate(at);
        moveWorms(at);
        colonySums(at);
        for (int t = 0; t < trayCount; ++t) breathe(at, t);
        die(at);
        develop(at);
        spendEnergy(at);
        colonySums(at);
        ingest(at);
        for (int t = 0; t < trayCount; ++t) soften(at, t);
    }
    TIERLOAM_EACH_MEMBER(m) {
        stack.respired[m] += at.respired[m];
        stack.respiredRate[m] = at.respired[m] / forcing.days;
    }
    if (forcing.backward) relaxTemperature(at, stack.respiredRate);
}

}
}
