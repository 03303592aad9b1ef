#pragma once

#include "core/model/block.h"
#include "core/model/elementary.h"
#include "core/model/masses.h"

/// A loop over the members of a block. No two pools share memory, which the compiler cannot see and which it must know to vectorise.
#define TIERLOAM_EACH_MEMBER(m) _Pragma("GCC ivdep") for (int m = 0; m < lanes; ++m) // NOLINT(bugprone-macro-parentheses): m is declared

namespace tierloam::model {
namespace {

/// Rows of ParameterBlock::value by the names of parameters.h, as plain integers for the kernels.
enum Row : int {
    rowIngestion, rowHalfSaturation, rowAssimilation, rowMaintenance, rowReserveRate, rowLayingShare, rowHatchSuccess, rowYoung,
    rowIncubation, rowDeath, rowCrowdingGrowth, rowCrowdingLaying, rowSofteningFood, rowSofteningPaper, rowWormFactor, rowAirHalf,
    rowRespiredSoftening, rowCastingsRespiration, rowGrowthColdest, rowGrowthBest, rowGrowthHottest, rowFieldCapacity, rowBypass,
    rowEvaporation, rowLightDrying, rowSaltYield
};

inline constexpr double nothing = 1e-30;               ///< keeps 0/0 out where a pool is empty

/// kg C per kg DM of what has softened in a tray and of its castings: what is left when the carbon of the unsoftened is taken off. In a tray just
/// bedded both are rounding, and their quotient can be anything: no matter is more than carbon.
[[gnu::always_inline]] inline double carbonShareOfSoftened(double carbon, double unsoftenedCarbon, double dry)
{
    return least(greatest(carbon - unsoftenedCarbon, 0.0) / (dry + nothing), 1.0);
}

/// What the processes of one step share: the state, and what is computed once a step.
struct StepContext {
    StackBlock& stack;
    TrayBlock* trays;
    const TrayShape* shapes;
    int trayCount;
    const ParameterBlock& parameters;
    const MassClassTable& classes;
    const StepForcing& forcing;
    bool backward;         ///< which of the pair
    Members respired;      ///< kg DM in this step, all of the stack
    Members assimilated;   ///< kg DM in this step, on its way into the reserve
    Members q10;           ///< microbes, 1 at 25 °C
    Members arrhenius;     ///< maintenance, 1 at 25 °C
    Members growth;        ///< g(T)/g(25) of growth and ingestion
    Members laying;        ///< g(T)/g(25) of laying
    Members biomass;       ///< kg LW, kept up by what changes it
    Members appetite;      ///< Σ n (m/1 g)^(2/3), likewise
    Members feeders;       ///< kg LW that shred and crowd in this step: at the beginning of the pair, and then as far on again
    Members eaters;        ///< Σ n (m/1 g)^(2/3) that eat in this step, likewise
    Members cocoons;       ///< number in all trays, likewise
};

}
}
