#pragma once

#include "core/model/process_softening.h"

namespace tierloam::model {
namespace {

inline constexpr double cocoonCost = growthCost * cocoonMass;
inline constexpr double cocoonStored = dryPerLive * cocoonMass;
inline constexpr double cocoonsPerAdultKg = 0.7 / 0.5e-3; ///< at most, a day: 0.7 at 0.5 g

/// What one class of worms does in a step, from the same for all classes of a member.
struct Spending {
    double perAppetite;   ///< kg DM mobilised for a worm of 1 g in this step
    double upkeep;        ///< kg DM of maintenance of a worm of 1 g in this step
    double layingShare;
    double taper;         ///< 2/m_max^(1/3), m in g
    double growthMost;    ///< kg DM that an adult of 1 g can grow by in this step
    double laysPerSpare;  ///< cocoons per kg DM that is not grown by, before the limit by mass
    double layingMost;    ///< cocoons per kg of adult in this step
    double laid;          ///< cocoons, all classes
    double needed;        ///< Σ n (m/1 g)^(3/4), all classes
};

/// What one worm of a class has beyond its maintenance, what an adult of it does not grow by, and how fast growth and deficit would empty
/// the class: up at gain ÷ gap, or down at deficit ÷ gap.
struct ClassBudget { double net, spare, rate; };
[[gnu::always_inline]] inline ClassBudget budgetOf(const MassClassTable& classes, int i, const Spending& of)
{
    const double net = of.perAppetite * classes.twoThirds[i] - of.upkeep * classes.threeQuarters[i];
    const double surplus = greatest(net, 0.0);
    const double deficit = surplus - net;
    const double use = least(1.0, greatest(0.0, 2.0 - classes.cubeRoot[i] * of.taper));
    const double ofYoung = surplus * use;
    const double ofAdult = i < firstAdultClass ? 0.0 : least(ofYoung * (1.0 - of.layingShare), of.growthMost * classes.twoThirds[i]);
    const double gain = i < firstAdultClass ? ofYoung : ofYoung + classes.adultShare[i] * (ofAdult - ofYoung);
    const double up = i + 1 < massClasses ? gain * classes.growthRate[i] : 0.0;
    return {net, surplus - ofAdult, up + deficit * classes.shrinkRate[i]};
}

/// Moves the worms of class i by the share that leaves it, and lets its adults lay.
[[gnu::always_inline]] inline void moveClass(StackBlock& stack, const MassClassTable& classes, int i, int m, const ClassBudget& budget, double share, Spending& of)
{
    const double here = stack.worms[i][m];
    const double moved = here * share;
    const double up = budget.net > 0.0 ? moved : 0.0;
    const double down = moved - up;
    of.needed += here * classes.threeQuarters[i];
    if (i >= firstAdultClass)
        of.laid += classes.adultShare[i] * here * least(of.laysPerSpare * budget.spare, of.layingMost * classes.kilograms[i]);
    stack.worms[i][m] = here - moved;
    if (i + 1 < massClasses) stack.worms[i + 1][m] += up;
    if (i > 0) stack.worms[i - 1][m] += down; // from the lowest class they die, burnt as maintenance
}

/// Two neighbouring classes with one division.
template <bool backward>
[[gnu::always_inline]] inline void movePair(StackBlock& stack, const MassClassTable& classes, int pair, int m, Spending& of)
{
    const int first = backward ? massClasses - 1 - 2 * pair : 2 * pair;
    const int second = backward ? first - 1 : first + 1;
    const ClassBudget ofFirst = budgetOf(classes, first, of);
    const ClassBudget ofSecond = budgetOf(classes, second, of);
    double firstShare, secondShare;
    lossFactors(ofFirst.rate, ofSecond.rate, firstShare, secondShare);
    moveClass(stack, classes, first, m, ofFirst, firstShare, of);
    moveClass(stack, classes, second, m, ofSecond, secondShare, of);
}

template <bool backward>
[[gnu::always_inline]] inline void moveClasses(StackBlock& stack, const MassClassTable& classes, int m, Spending& of)
{
    // Written out, so that the loop over members is the innermost and is vectorised.
    static_assert(massClasses == 16);
    movePair<backward>(stack, classes, 0, m, of);
    movePair<backward>(stack, classes, 1, m, of);
    movePair<backward>(stack, classes, 2, m, of);
    movePair<backward>(stack, classes, 3, m, of);
    movePair<backward>(stack, classes, 4, m, of);
    movePair<backward>(stack, classes, 5, m, of);
    movePair<backward>(stack, classes, 6, m, of);
    movePair<backward>(stack, classes, 7, m, of);
}

/// k_R·R a day is mobilised and shared among worms by m^(2/3). Maintenance is paid first; what is left of it grows the worm,
/// an adult lays with a share of it at least, with all that it does not grow by, and grows by 0.014 g LW/d · (m/1 g)^(2/3) · g(T)/g(25) at most.
/// A deficit shrinks it; in the lowest class it is death. What cannot be used is respired.
/// Growth moves worms up a class at gain ÷ gap, deficit down; the sweep over classes turns with the half of the day.
/// Everything that the worms do not store is respired, so the ledger closes whatever the rates are. Reads the sums, keeps them, and reads breathe() and ingest().
template <bool backward>
inline void spendEnergy(StepContext& at)
{
    StackBlock& stack = at.stack;
    const MassClassTable& classes = at.classes;
    const double days = at.forcing.days;
    const double densityPerKg = 1.0 / (at.forcing.area * greatest(at.trayCount, 1));
    const Members& reserveRate = at.parameters.value[rowReserveRate];
    const Members& maintenance = at.parameters.value[rowMaintenance];
    const Members& layingShare = at.parameters.value[rowLayingShare];
    const Members& crowdingGrowth = at.parameters.value[rowCrowdingGrowth];
    const Members& crowdingLaying = at.parameters.value[rowCrowdingLaying];
    Members laid, watered, airShare, taper, lays;
    TIERLOAM_EACH_MEMBER(m) airShare[m] = 0.0;
    for (int t = 0; t < at.trayCount; ++t) {
        const TrayBlock& tray = at.trays[t];
        TIERLOAM_EACH_MEMBER(m) airShare[m] += tray.share[m] * tray.air[m];
    }
    TIERLOAM_EACH_MEMBER(m) {
        // Both crowdings with one division.
        const double density = at.feeders[m] * densityPerKg;
        const double inverse = density / (crowdingGrowth[m] * crowdingLaying[m]);
        const double room = (1.0 + inverse * crowdingLaying[m]) * (1.0 / 1.6);
        const double root = inverseCubeRoot(room);
        taper[m] = 2.0 * room * root * root;
        const double crowding = inverse * crowdingGrowth[m];
        lays[m] = (1.0 / cocoonCost) * roughExponential(-crowding * crowding) * at.laying[m] * airShare[m];
    }
    TIERLOAM_EACH_MEMBER(m) {
        // R·L + g·(1 − L/x) with x = k_R·days, and its part for a worm of 1 g, with one division. Solved with what is assimilated meanwhile,
        // or a colony that just keeps itself would feast in one half of the day and starve in the other.
        const double x = reserveRate[m] * days;
        const double appetite = at.appetite[m] + nothing;
        const double inverse = x / ((1.0 + x * (1.0 + 0.5 * x)) * appetite);
        const double perAppetite = (stack.reserve[m] * (1.0 + 0.5 * x) + 0.5 * at.assimilated[m] * (1.0 + x)) * inverse;
        const double reserve = stack.reserve[m] + at.assimilated[m];
        const double mobilised = least(perAppetite * appetite, reserve);
        stack.reserve[m] = reserve - mobilised;
        Spending of{perAppetite, 1e-3 * maintenance[m] * at.arrhenius[m] * days, layingShare[m], taper[m],
                    adultGrowthMost * growthCost * days * at.growth[m], lays[m],
                    cocoonsPerAdultKg * days, 0.0, 0.0};
        moveClasses<backward>(stack, classes, m, of);
        double biomass = 0.0;
        double newAppetite = 0.0;
        for (int i = 0; i < massClasses; ++i) {
            biomass += stack.worms[i][m] * classes.kilograms[i];
            newAppetite += stack.worms[i][m] * classes.twoThirds[i];
        }
        const double stored = biomass - at.biomass[m];
        const double breathed = mobilised - dryPerLive * stored - cocoonStored * of.laid;
        // Carbon follows at the share of the worms' pool: worms, cocoons and reserve, and what is just being spent.
        const double live = dryPerLive * at.biomass[m] + cocoonStored * at.cocoons[m] + stack.reserve[m] + mobilised;
        const double carbon = least(stack.wormCarbon[m], greatest(breathed, 0.0) * stack.wormCarbon[m] / (live + nothing));
        stack.wormCarbon[m] -= carbon;
        stack.carbonRespired[m] += carbon;
        stack.maintenanceNeed[m] += of.needed * of.upkeep;
        at.respired[m] += breathed;
        at.biomass[m] = biomass;
        at.appetite[m] = newAppetite;
        at.cocoons[m] += of.laid;
        laid[m] = of.laid;
        watered[m] = waterOfRespiration * breathed;
    }
    for (int t = 0; t < at.trayCount; ++t) {
        TrayBlock& tray = at.trays[t];
        TIERLOAM_EACH_MEMBER(m) {
            tray.cocoons[0][m] += laid[m] * tray.share[m];
            tray.water[m] += watered[m] * tray.share[m]; // the worms breathe where they are
        }
    }
}

}
}
