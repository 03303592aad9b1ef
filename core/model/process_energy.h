#pragma once

#include "core/model/process_softening.h"

namespace tierloam::model {
namespace {

inline constexpr double growthCost = 0.66;      ///< g DM per g LW of growth: 0.18 stored, the rest respired
inline constexpr double shrinkYield = 0.44;     ///< g DM of maintenance covered by shrinking by 1 g LW
inline constexpr double cocoonCost = growthCost * cocoonMass;
inline constexpr double cocoonStored = dryPerLive * cocoonMass;

/// k_R·R a day is mobilised and shared among worms by m^(2/3). Maintenance is paid first; what is left of it grows the worm,
/// an adult lays with a share of it. A deficit shrinks it; in the lowest class it is death. What cannot be used is respired.
/// Growth moves worms up a class at gain ÷ gap, deficit down; the sweep over classes turns with the half of the day.
/// Everything that the worms do not store is respired, so the ledger closes whatever the rates are.
inline void spendEnergy(StepContext& at)
{
    StackBlock& stack = at.stack;
    const MassClassTable& classes = at.classes;
    const double days = at.forcing.days;
    const auto row = [&](Row r) -> const Members& { return at.parameters.value[r]; };
    Members mobilised, perAppetite, upkeep, taper, layingMost, crowded, stored, laid, upkeepSum;
    const double areaInUse = at.forcing.area * greatest(at.trayCount, 1);
    TIERLOAM_EACH_MEMBER(m) {
        mobilised[m] = stack.reserve[m] * lossFactor(row(rowReserveRate)[m] * days);
        stack.reserve[m] -= mobilised[m];
        perAppetite[m] = mobilised[m] / (at.appetite[m] + nothing);
        upkeep[m] = 1e-3 * row(rowMaintenance)[m] * at.arrhenius[m] * days; // kg DM of a worm of 1 g
        const double density = at.biomass[m] / areaInUse;
        taper[m] = exponential(naturalLog((1.0 + density / row(rowCrowdingGrowth)[m]) / 1.6) * (1.0 / 3.0)); // 1/m_max^(1/3), m in g
        const double crowding = density / row(rowCrowdingLaying)[m];
        crowded[m] = exponential(-crowding * crowding) * at.laying[m];
        layingMost[m] = 0.7 / 0.5e-3 * days; // cocoons per kg of adult
        stored[m] = laid[m] = upkeepSum[m] = 0.0;
    }
    Members airShare;
    TIERLOAM_EACH_MEMBER(m) airShare[m] = 0.0;
    for (int t = 0; t < at.trayCount; ++t)
        TIERLOAM_EACH_MEMBER(m) airShare[m] += at.trays[t].share[m] * at.trays[t].air[m];

    for (int k = 0; k < massClasses; ++k) {
        const int i = at.forcing.backward ? massClasses - 1 - k : k;
        const double kg = classes.kilograms[i];
        const double adults = classes.adultShare[i];
        const double upGap = classes.gapUp[i];
        const double upRate = upGap > 0.0 ? 1.0 / (growthCost * upGap) : 0.0;
        const double downRate = 1.0 / (shrinkYield * classes.gapDown[i]);
        Members& here = stack.worms[i];
        Members& above = stack.worms[i + 1 < massClasses ? i + 1 : i];
        Members& below = stack.worms[i > 0 ? i - 1 : 0];
        const bool lowest = i == 0;
        TIERLOAM_EACH_MEMBER(m) {
            const double need = upkeep[m] * classes.threeQuarters[i];
            const double net = perAppetite[m] * classes.twoThirds[i] - need;
            const double surplus = greatest(net, 0.0);
            const double deficit = greatest(-net, 0.0);
            const double laying = adults * row(rowLayingShare)[m];
            const double use = least(1.0, 2.0 * greatest(0.0, 1.0 - classes.cubeRoot[i] * taper[m]));
            const double gain = surplus * (1.0 - laying) * use;
            const double moved = here[m] * lossFactor(gain * upRate + deficit * downRate);
            const double up = net > 0.0 ? moved : 0.0;
            const double down = net > 0.0 ? 0.0 : moved;
            const double cocoons = adults * here[m]
                * least(row(rowLayingShare)[m] * surplus / cocoonCost * crowded[m] * airShare[m], layingMost[m] * kg);
            upkeepSum[m] += here[m] * need;
            here[m] -= moved;
            above[m] += up;
            below[m] += lowest ? 0.0 : down; // from the lowest class they die, burnt as maintenance
            stored[m] += up * upGap - down * classes.gapDown[i];
            laid[m] += cocoons;
        }
    }
    TIERLOAM_EACH_MEMBER(m) {
        stack.maintenanceNeed[m] += upkeepSum[m];
        const double breathed = mobilised[m] - dryPerLive * stored[m] - cocoonStored * laid[m];
        // Carbon follows at the share of the worms' pool, whose dry matter is what stays plus what is breathed.
        const double live = dryPerLive * at.biomass[m] + stack.reserve[m] + mobilised[m];
        const double carbon = least(stack.wormCarbon[m], greatest(breathed, 0.0) * stack.wormCarbon[m] / (live + nothing));
        stack.wormCarbon[m] -= carbon;
        stack.carbonRespired[m] += carbon;
        at.respired[m] += breathed;
    }
    for (int t = 0; t < at.trayCount; ++t) {
        TrayBlock& tray = at.trays[t];
        TIERLOAM_EACH_MEMBER(m) {
            tray.cocoons[0][m] += laid[m] * tray.share[m];
            // The worms breathe where they are.
            tray.water[m] += waterOfRespiration * tray.share[m] * greatest(mobilised[m] - dryPerLive * stored[m] - cocoonStored * laid[m], 0.0);
        }
    }
}

}
}
