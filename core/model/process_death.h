#pragma once

#include "core/model/process_energy.h"

namespace tierloam::model {
namespace {

/// Death a day of heat: 0 below 31 °C, 0.02 at 33, 0.15 at 35, 0.7 at 38, log-linear and on beyond. Judgement.
inline double heatDeath(double t)
{
    constexpr double steep = 1.0074515102711325;  // ln(0.15/0.02)/2
    constexpr double steeper = 0.5134817083658139; // ln(0.7/0.15)/3
    const double low = exponential(-3.912023005428146 + steep * (t - 33.0));
    const double high = exponential(-1.8971199848858813 + steeper * (t - 35.0));
    return t < 31.0 ? 0.0 : t < 35.0 ? low : high;
}

/// Death a day of cold: 0 above 3 °C, 0.02 at 1, 0.3 at −1, log-linear and on beyond. Judgement.
inline double coldDeath(double t)
{
    constexpr double steep = 1.3540251005511053; // ln(0.3/0.02)/2
    return t > 3.0 ? 0.0 : exponential(-3.912023005428146 + steep * (1.0 - t));
}

/// Share of the maintenance that the reserve does not meet at the present rates, over all worms.
inline void hunger(const StepContext& at, Members& unmet)
{
    const Members& reserveRate = at.parameters.value[rowReserveRate];
    const Members& maintenance = at.parameters.value[rowMaintenance];
    Members perAppetite, upkeep, missing, needed;
    TIERLOAM_EACH_MEMBER(m) {
        perAppetite[m] = at.stack.reserve[m] * reserveRate[m] / (at.appetite[m] + nothing);
        upkeep[m] = 1e-3 * maintenance[m] * at.arrhenius[m];
        missing[m] = needed[m] = 0.0;
    }
    for (int i = 0; i < massClasses; ++i) {
        const Members& number = at.stack.worms[i];
        const double threeQuarters = at.classes.threeQuarters[i];
        const double twoThirds = at.classes.twoThirds[i];
        TIERLOAM_EACH_MEMBER(m) {
            const double need = upkeep[m] * threeQuarters;
            missing[m] += number[m] * greatest(need - perAppetite[m] * twoThirds, 0.0);
            needed[m] += number[m] * need;
        }
    }
    TIERLOAM_EACH_MEMBER(m) unmet[m] = missing[m] / (needed[m] + nothing);
}

/// Background, unmet maintenance, heat and cold strike all worms; bad air and drought those of the tray where they are.
/// The dead enter H where they lay and take their part of the reserve along.
inline void die(StepContext& at)
{
    StackBlock& stack = at.stack;
    const double days = at.forcing.days;
    const Members& background = at.parameters.value[rowDeath];
    Members everywhere, unmet;
    hunger(at, unmet);
    double hottest = -100.0;
    double coldest = 100.0;
    TIERLOAM_EACH_MEMBER(m) {
        everywhere[m] = (at.forcing.noBackgroundDeath ? 0.0 : background[m]) + 0.03 * unmet[m];
    }
    for (int m = 0; m < lanes; ++m) {
        hottest = greatest(hottest, stack.bed[m]);
        coldest = least(coldest, stack.bed[m]);
    }
    if (hottest >= 31.0 || coldest <= 3.0)
        TIERLOAM_EACH_MEMBER(m) everywhere[m] += heatDeath(stack.bed[m]) + coldDeath(stack.bed[m]);
    Members total;
    TIERLOAM_EACH_MEMBER(m) total[m] = 0.0;
    for (int t = 0; t < at.trayCount; ++t) {
        const TrayBlock& tray = at.trays[t];
        TIERLOAM_EACH_MEMBER(m) {
            const double here = 0.06 * greatest(0.5 - tray.air[m], 0.0) + (tray.wet[m] <= 0.0 ? 0.05 : 0.0);
            total[m] += tray.share[m] * (everywhere[m] + here);
        }
    }
    Members dead;
    Members carbon;
    TIERLOAM_EACH_MEMBER(m) {
        const double share = lossFactor(total[m] * days);
        double mass = stack.reserve[m] * share;
        stack.reserve[m] -= mass;
        for (int i = 0; i < massClasses; ++i) {
            const double lost = stack.worms[i][m] * share;
            stack.worms[i][m] -= lost;
            mass += dryPerLive * at.classes.kilograms[i] * lost;
        }
        dead[m] = mass;
        carbon[m] = stack.wormCarbon[m] * share;
        stack.wormCarbon[m] -= carbon[m];
    }
    for (int t = 0; t < at.trayCount; ++t) {
        TrayBlock& tray = at.trays[t];
        TIERLOAM_EACH_MEMBER(m) {
            const double here = 0.06 * greatest(0.5 - tray.air[m], 0.0) + (tray.wet[m] <= 0.0 ? 0.05 : 0.0);
            const double part = tray.share[m] * (everywhere[m] + here) / (total[m] + nothing);
            tray.softened[m] += dead[m] * part;
            tray.carbon[m] += carbon[m] * part;
        }
    }
}

}
}
