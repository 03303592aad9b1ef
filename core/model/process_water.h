#pragma once

#include "core/model/process_air.h"
#include "core/model/process_temperature.h"
#include "core/model/vapour_pressure.h"

namespace tierloam::model {
namespace {

inline constexpr double sumpKeeps = 0.1;        ///< L that stay below an open spigot
inline constexpr double evaporationLidOff = 1.6; ///< kg/m²/d/kPa, lid off and castings loosened

/// kg per kg DM that no air takes away: 12 % of moisture, wet basis. Judgement; what is left in the light for weeks does not fall to dust.
inline constexpr double airDryWater = 0.136;

/// The highest tray, which alone lies open under the lid, evaporates k·A·(es(T_bed) − RH·es(T_air))·min(1, free water ÷ free water at 0.60 of moisture).
inline void evaporate(StepContext& at)
{
    StackBlock& stack = at.stack;
    const StepForcing& forcing = at.forcing;
    if (at.trayCount <= 0) {
        TIERLOAM_EACH_MEMBER(m) stack.evaporationRate[m] = 0.0;
        return;
    }
    TrayBlock& tray = at.trays[at.trayCount - 1];
    const Members& lidEvaporation = at.parameters.value[rowEvaporation];
    Members demand; // kPa, greatest(es(T_bed) − RH·es(T_air), 0)
    const double humidity = forcing.relativeHumidity;
    if (forcing.airKnown) {
        const double ofAir = humidity * saturationVapourPressure(forcing.airTemperature);
        TIERLOAM_EACH_MEMBER(m) demand[m] = greatest(saturationVapourPressure(stack.bed[m]) - ofAir, 0.0);
    } else {
        // The air is cooler than the bed by its own heat, of what was respired in this step, or in the one before when that is still to come.
        const Members& respired = at.backward ? stack.respiredRate : at.respired;
        const double perJoule = kelvinPerDailyJoule(at);
        const double heat = 17e6 * perJoule * (at.backward ? 1.0 : 1.0 / forcing.days);
        const double cold = 2.45e6 * perJoule;
        TIERLOAM_EACH_MEMBER(m) {
            const double warmth = heat * respired[m] - cold * stack.evaporationRate[m];
            double ofBed, ofAir;
            saturationVapourPressures(stack.bed[m], stack.bed[m] - warmth, ofBed, ofAir); // NOLINT(readability-suspicious-call-argument)
            demand[m] = greatest(ofBed - humidity * ofAir, 0.0);
        }
    }
    // A bed that has run hot under an open lid would give off more than the heat that it holds: kg by which it cools by 1 K.
    const double perStoredKelvin = bedDays / (2.45e6 * kelvinPerDailyJoule(at));
    const double lidOn = forcing.lidOff ? 0.0 : 1.0;
    const double lidOff = forcing.lidOff ? evaporationLidOff : 0.0;
    const double area = forcing.area;
    const double days = forcing.days;
    const double perDay = 1.0 / days;
    TIERLOAM_EACH_MEMBER(m) {
        const double dry = tray.unsoftenedDry[m] + tray.softened[m] + tray.castings[m];
        const double bound = airDryWater * dry;
        const double free = greatest(tray.water[m] - bound, 0.0);
        const double full = least((lidOn * lidEvaporation[m] + lidOff) * area * demand[m] * days, greatest(stack.bed[m] + 5.0, 0.0) * perStoredKelvin);
        // Wetter than 0.60 it goes at an even rate, drier at one in proportion to what is left above air-dry.
        const double lost = least(full, free * lossFactor(full, greatest(0.60 * (tray.water[m] + dry) - bound, 0.0) + nothing));
        tray.water[m] -= lost;
        stack.evaporated[m] += lost;
        stack.evaporationRate[m] = lost * perDay;
    }
}

/// What exceeds field capacity of tray t drains into the tray below with a time constant of 0.5 d, salts with it; from the lowest into the sump.
inline void drainTray(StepContext& at, int t)
{
    StackBlock& stack = at.stack;
    TrayBlock& tray = at.trays[t];
    const Members& capacityScale = at.parameters.value[rowFieldCapacity];
    const double drains = at.forcing.holdWater ? 1.0 : 1.0 - exponential(-at.forcing.days / drainageDays);
    Members out, saltsOut;
    TIERLOAM_EACH_MEMBER(m) {
        const double capacity = capacityScale[m] * (tray.unsoftenedHeld[m] + softenedHeld * tray.softened[m] + castingsHeld * tray.castings[m]);
        out[m] = greatest(tray.water[m] - capacity, 0.0) * drains;
        saltsOut[m] = tray.salts[m] * (out[m] / (tray.water[m] + nothing));
        tray.capacity[m] = capacity;
        tray.water[m] -= out[m];
        tray.salts[m] -= saltsOut[m];
    }
    if (at.forcing.holdWater)
        TIERLOAM_EACH_MEMBER(m) { // given as it is missing
            stack.waterIn[m] += tray.capacity[m] - tray.water[m];
            tray.water[m] = tray.capacity[m];
        }
    Members& water = t > 0 ? at.trays[t - 1].water : stack.sump;
    Members& salts = t > 0 ? at.trays[t - 1].salts : stack.sumpSalts;
    TIERLOAM_EACH_MEMBER(m) {
        water[m] += out[m];
        salts[m] += saltsOut[m];
    }
    if (t == 0)
        TIERLOAM_EACH_MEMBER(m) stack.intoSump[m] += out[m];
}

/// An open spigot lets all but 0.1 L run off; a full sump runs over outside, never into slot 1.
inline void runOff(StepContext& at)
{
    StackBlock& stack = at.stack;
    const bool open = at.forcing.spigotOpen;
    const double most = open ? least(sumpKeeps, at.forcing.sumpCapacity) : at.forcing.sumpCapacity;
    Members& beyond = open ? stack.ranOff : stack.overflowed;
    TIERLOAM_EACH_MEMBER(m) {
        const double kept = least(stack.sump[m], most);
        const double saltsKept = stack.sumpSalts[m] * (kept / (stack.sump[m] + nothing));
        beyond[m] += stack.sump[m] - kept;
        stack.saltsOut[m] += stack.sumpSalts[m] - saltsKept;
        stack.sump[m] = kept;
        stack.sumpSalts[m] = saltsKept;
    }
}

/// Evaporation from above and drainage from the highest tray down; in the other half of the day from the lowest up.
inline void drainAndEvaporate(StepContext& at)
{
    if (at.backward) {
        for (int t = 0; t < at.trayCount; ++t) drainTray(at, t);
        evaporate(at);
    } else {
        evaporate(at);
        for (int t = at.trayCount - 1; t >= 0; --t) drainTray(at, t);
    }
    runOff(at);
}

}
}
