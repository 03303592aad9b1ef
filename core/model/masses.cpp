#include "core/model/masses.h"

#include "core/model/elementary.h"

namespace tierloam::model {

namespace {

MassClassTable made()
{
    MassClassTable table{};
    const double logRatio = naturalLog(largestWorm / smallestWorm) / (massClasses - 1);
    for (int i = 0; i < massClasses; ++i) {
        const double kg = smallestWorm * exponential(logRatio * i);
        const double g = kg * 1000.0;
        table.kilograms[i] = kg;
        table.twoThirds[i] = power(g, 2.0 / 3.0);
        table.threeQuarters[i] = power(g, 0.75);
        table.cubeRoot[i] = power(g, 1.0 / 3.0);
        // Bounds of a class are the geometric means with its neighbours.
        const double cut = naturalLog(maturity / kg) / logRatio + 0.5;
        table.adultShare[i] = 1.0 - (cut < 0.0 ? 0.0 : cut > 1.0 ? 1.0 : cut);
    }
    for (int i = 0; i < massClasses; ++i) {
        table.gapUp[i] = i + 1 < massClasses ? table.kilograms[i + 1] - table.kilograms[i] : 0.0;
        table.gapDown[i] = i > 0 ? table.kilograms[i] - table.kilograms[i - 1] : table.kilograms[0];
        table.growthRate[i] = table.gapUp[i] > 0.0 ? 1.0 / (growthCost * table.gapUp[i]) : 0.0;
        table.shrinkRate[i] = 1.0 / (shrinkYield * table.gapDown[i]);
    }
    return table;
}

}

const MassClassTable& massClassTable()
{
    static const MassClassTable table = made();
    return table;
}

double liveMass(const StackBlock& stack, int lane)
{
    double kg = 0.0;
    for (int i = 0; i < massClasses; ++i) kg += stack.worms[i][lane] * massClassTable().kilograms[i];
    return kg;
}

Neighbours neighboursOf(double kg)
{
    const MassClassTable& table = massClassTable();
    if (kg <= table.kilograms[0]) return {0, kg / table.kilograms[0], 0.0}; // mass holds; the number is that of the class
    if (kg >= table.kilograms[massClasses - 1]) return {massClasses - 2, 0.0, kg / table.kilograms[massClasses - 1]};
    int lower = 0;
    while (table.kilograms[lower + 1] < kg) ++lower;
    const double upperShare = (kg - table.kilograms[lower]) / table.gapUp[lower];
    return {lower, 1.0 - upperShare, upperShare};
}

}
