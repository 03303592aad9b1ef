#pragma once

#include "core/model/process_energy.h"

namespace tierloam::model {
namespace {

/// Death a day when no maintenance is met. Fitted to measured pot C (Reinecke & Viljoen 1990), whose worms shrank to a seventh of their mass
/// through two famines of forty days and laid again: at 0.03 a day half of them would have died in each.
inline constexpr double hungerDeath = 0.01;

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
    const MassClassTable& classes = at.classes;
    TIERLOAM_EACH_MEMBER(m) {
        const double perAppetite = at.stack.reserve[m] * reserveRate[m] / (at.appetite[m] + nothing);
        const double upkeep = 1e-3 * maintenance[m] * at.arrhenius[m];
        double missing = 0.0;
        double needed = 0.0;
        for (int i = 0; i < massClasses; ++i) {
            const double need = upkeep * classes.threeQuarters[i];
            missing += at.stack.worms[i][m] * greatest(need - perAppetite * classes.twoThirds[i], 0.0);
            needed += at.stack.worms[i][m] * need;
        }
        unmet[m] = missing / (needed + nothing);
    }
}

/// What kills a share of the worms of one tray a day besides what kills everywhere: bad air and drought.
inline double deathHere(double air, double wet) { return 0.06 * greatest(0.5 - air, 0.0) + (wet <= 0.0 ? 0.05 : 0.0); }

/// Any member outside the range where neither heat nor cold kills.
inline bool anyHotOrCold(const Members& bed)
{
    Members outside;
    TIERLOAM_EACH_MEMBER(m) outside[m] = greatest(bed[m] - 31.0, 3.0 - bed[m]);
    for (int half = lanes / 2; half > 0; half /= 2)
        for (int m = 0; m < half; ++m) outside[m] = greatest(outside[m], outside[m + half]);
    return outside[0] >= 0.0;
}

/// Background, unmet maintenance, heat and cold strike all worms; bad air and drought those of the tray where they are.
/// The dead enter H where they lay and take their part of the reserve along. Reads breathe() and keeps the sums of worms.
inline void die(StepContext& at)
{
    StackBlock& stack = at.stack;
    const double days = at.forcing.days;
    const double background = at.forcing.noBackgroundDeath ? 0.0 : 1.0;
    const Members& backgroundDeath = at.parameters.value[rowDeath];
    Members everywhere, total, dead, carbon, inverse;
    hunger(at, everywhere);
    TIERLOAM_EACH_MEMBER(m) everywhere[m] = background * backgroundDeath[m] + hungerDeath * everywhere[m];
    if (anyHotOrCold(stack.bed))
        TIERLOAM_EACH_MEMBER(m) everywhere[m] += heatDeath(stack.bed[m]) + coldDeath(stack.bed[m]);
    TIERLOAM_EACH_MEMBER(m) total[m] = 0.0;
    for (int t = 0; t < at.trayCount; ++t) {
        const TrayBlock& tray = at.trays[t];
        TIERLOAM_EACH_MEMBER(m) total[m] += tray.share[m] * (everywhere[m] + deathHere(tray.air[m], tray.wet[m]));
    }
    TIERLOAM_EACH_MEMBER(m) {
        const double x = total[m] * days;
        const double h = x * (1.0 + 0.5 * x);
        const double both = 1.0 / ((1.0 + h) * (total[m] + nothing));
        const double share = least(h * (total[m] + nothing) * both, 1.0); // rounding could pass 1 where all die
        inverse[m] = (1.0 + h) * both;
        const double stays = 1.0 - share;
        for (int i = 0; i < massClasses; ++i) stack.worms[i][m] *= stays;
        const double reserve = stack.reserve[m] * share;
        const double live = at.biomass[m] * share;
        stack.reserve[m] -= reserve;
        dead[m] = reserve + dryPerLive * live;
        // Of the carbon of worms, cocoons and reserve the part of what died.
        const double living = cocoonStored * at.cocoons[m] + (stack.reserve[m] + reserve) + dryPerLive * at.biomass[m];
        carbon[m] = stack.wormCarbon[m] * least(1.0, dead[m] / (living + nothing));
        stack.wormCarbon[m] -= carbon[m];
        at.biomass[m] -= live;
        at.appetite[m] *= stays;
    }
    for (int t = 0; t < at.trayCount; ++t) {
        TrayBlock& tray = at.trays[t];
        TIERLOAM_EACH_MEMBER(m) {
            const double part = tray.share[m] * (everywhere[m] + deathHere(tray.air[m], tray.wet[m])) * inverse[m];
            tray.softened[m] += dead[m] * part;
            tray.carbon[m] += carbon[m] * part;
        }
    }
}

}
}
