#pragma once

#include "core/model/cardinal.h"
#include "core/model/step_context.h"

namespace tierloam::model {
namespace {

inline constexpr double bedDays = 0.5; ///< d, time constant of the bed
/// K of own heat: a heap at 80 to 100 °C boils off what more it makes, and nothing lives in it to make more. Judgement; far beyond what a stack reaches,
/// it keeps the rates of a heap that somebody typed in kilograms for grams within what numbers can hold.
inline constexpr double mostOwnHeat = 80.0;

/// K of own heat per (17e6·respired − 2.45e6·evaporated) in J/d.
inline double kelvinPerDailyJoule(const StepContext& at)
{
    const double area = at.forcing.area;
    const double conductance = 2.4 * (2.0 * area + 4.0 * __builtin_sqrt(area) * at.forcing.height * at.trayCount);
    return 1.0 / 86400.0 / conductance;
}

/// The bed follows its surroundings and its own heat with a time constant of 0.5 d:
///     T → temp + season + u + q − q̄     (no air reading)     T → T_air + q + u     (air known)
///     q = min(80, (17e6 · respired − 2.45e6 · evaporated)/86400/UA),  UA = 2.4·(2A + 4·√A·h·trays in use) W/K
/// with the rates of the step just made. It follows for both steps of a pair at once, between them, so that the first step has the
/// temperature before and the second the one after. q̄ is the running mean of q over 30 d. Heat of respiration 17 MJ/kg DM, of evaporation 2.45 MJ/kg (FAO-56).
inline void relaxTemperature(StepContext& at, double days)
{
    StackBlock& stack = at.stack;
    const StepForcing& forcing = at.forcing;
    const double perJoule = kelvinPerDailyJoule(at);
    const double remember = 1.0 - exponential(-days / 30.0);
    const double follow = forcing.holdTemperature ? 1.0 : 1.0 - exponential(-days / bedDays);
    const double around = forcing.airKnown && !forcing.holdTemperature ? forcing.airTemperature : forcing.usualTemperature;
    const double usual = forcing.airKnown ? 0.0 : 1.0;        // q̄ is already in what is usual
    const double own = forcing.holdTemperature ? 0.0 : 1.0;
    TIERLOAM_EACH_MEMBER(m) {
        const double q = least((17e6 * stack.respiredRate[m] - 2.45e6 * stack.evaporationRate[m]) * perJoule, mostOwnHeat);
        stack.warmth[m] = q;
        stack.meanWarmth[m] += (q - stack.meanWarmth[m]) * remember;
        const double target = around + own * (q - usual * stack.meanWarmth[m] + stack.drift[m]);
        stack.bed[m] += (target - stack.bed[m]) * follow;
    }
}

inline constexpr double hottestMicrobes = 60.0; ///< °C; beyond it they get no faster, or a heap that heats itself would do so without end. Judgement

/// Rates at the bed's temperature: microbes Q10 = 2 up to 60 °C; maintenance by Arrhenius, 0.25 eV; growth and laying by Rosso's curve.
inline void temperatureFactors(StepContext& at)
{
    constexpr double electronVoltsPerKelvin = 8.617333262e-5; // Boltzmann constant, CODATA 2018
    const Members& coldest = at.parameters.value[rowGrowthColdest];
    const Members& best = at.parameters.value[rowGrowthBest];
    const Members& hottest = at.parameters.value[rowGrowthHottest];
    const double perLayingAt25 = 1.0 / cardinal(25.0, 5.0, 24.0, 33.0);
    TIERLOAM_EACH_MEMBER(m) {
        const double t = at.stack.bed[m];
        at.q10[m] = roughExponential((least(t, hottestMicrobes) - 25.0) * (0.6931471805599453 / 10.0));
        at.arrhenius[m] = roughExponential(0.25 / electronVoltsPerKelvin * (1.0 / 298.15 - 1.0 / (t + 273.15)));
        at.growth[m] = cardinal(t, coldest[m], best[m], hottest[m]) / at.parameters.growthAt25[m];
        at.laying[m] = cardinal(t, 5.0, 24.0, 33.0) * perLayingAt25;
    }
}

}
}
