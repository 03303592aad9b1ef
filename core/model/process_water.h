#pragma once

#include "core/model/process_air.h"
#include "core/model/vapour_pressure.h"

namespace tierloam::model {
namespace {

inline constexpr double sumpKeeps = 0.1;        ///< L that stay below an open spigot
inline constexpr double evaporationLidOff = 1.6; ///< kg/m²/d/kPa, lid off and castings loosened

/// What exceeds field capacity drains through the trays below with a time constant of 0.5 d, salts with it; the highest tray
/// evaporates k·A·(es(T_bed) − RH·es(T_air))·min(1, moisture/0.60). An open spigot lets all but 0.1 L run off; a full sump
/// runs over outside, never into slot 1.
inline void drainAndEvaporate(StepContext& at)
{
    StackBlock& stack = at.stack;
    const StepForcing& forcing = at.forcing;
    const int top = at.trayCount - 1;
    const Members& lidEvaporation = at.parameters.value[rowEvaporation];
    const Members& capacityScale = at.parameters.value[rowFieldCapacity];
    const double drains = 1.0 - exponential(-forcing.days / 0.5);
    Members coming, comingSalts, dry;
    TIERLOAM_EACH_MEMBER(m) coming[m] = comingSalts[m] = 0.0;
    if (top < 0)
        TIERLOAM_EACH_MEMBER(m) stack.evaporationRate[m] = 0.0;
    for (int t = top; t >= 0; --t) {
        TrayBlock& tray = at.trays[t];
        const TrayShape& shape = at.shapes[t];
        TIERLOAM_EACH_MEMBER(m) {
            tray.capacity[m] = softenedHeld * tray.softened[m] + castingsHeld * tray.castings[m];
            dry[m] = tray.softened[m] + tray.castings[m];
        }
        for (int c = 0; c < softeningClasses; ++c) {
            if (shape.weight[c] <= 0.0) continue;
            TIERLOAM_EACH_MEMBER(m) {
                tray.capacity[m] += shape.held[c] * tray.unsoftened[c][m];
                dry[m] += tray.unsoftened[c][m];
            }
        }
        if (t == top) {
            TIERLOAM_EACH_MEMBER(m) {
                const double bed = stack.bed[m];
                const double air = forcing.airKnown ? forcing.airTemperature : bed - stack.warmth[m];
                const double demand = greatest(saturationVapourPressure(bed) - forcing.relativeHumidity * saturationVapourPressure(air), 0.0);
                const double moisture = tray.water[m] / (tray.water[m] + dry[m] + nothing);
                const double k = forcing.lidOff ? evaporationLidOff : lidEvaporation[m];
                const double rate = k * forcing.area * demand * least(1.0, moisture / 0.60);
                const double lost = tray.water[m] * lossFactor(rate * forcing.days / (tray.water[m] + nothing));
                tray.water[m] -= lost;
                stack.evaporated[m] += lost;
                stack.evaporationRate[m] = lost / forcing.days;
            }
        }
        TIERLOAM_EACH_MEMBER(m) {
            tray.capacity[m] *= capacityScale[m];
            const double water = tray.water[m] + coming[m];
            const double salts = tray.salts[m] + comingSalts[m];
            const double excess = greatest(water - tray.capacity[m], 0.0);
            const double out = forcing.holdWater ? excess : excess * drains;
            const double saltsOut = salts * out / (water + nothing);
            tray.water[m] = forcing.holdWater ? tray.capacity[m] : water - out;
            stack.waterIn[m] += forcing.holdWater ? tray.capacity[m] - (water - out) : 0.0; // given as it is missing
            tray.salts[m] = salts - saltsOut;
            coming[m] = out;
            comingSalts[m] = saltsOut;
        }
    }
    TIERLOAM_EACH_MEMBER(m) {
        const double volume = stack.sump[m] + coming[m];
        const double salts = stack.sumpSalts[m] + comingSalts[m];
        const double most = forcing.spigotOpen ? least(sumpKeeps, forcing.sumpCapacity) : forcing.sumpCapacity;
        const double kept = least(volume, most);
        const double away = volume - kept;
        stack.sump[m] = kept;
        const double saltsKept = salts * (kept / (volume + nothing));
        stack.sumpSalts[m] = saltsKept;
        stack.saltsOut[m] += salts - saltsKept;
        stack.intoSump[m] += coming[m];
        stack.ranOff[m] += forcing.spigotOpen ? away : 0.0;
        stack.overflowed[m] += forcing.spigotOpen ? 0.0 : away;
    }
}

}
}
