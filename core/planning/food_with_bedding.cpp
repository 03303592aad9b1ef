#include "core/planning/food_with_bedding.h"

#include <algorithm>
#include <cmath>

namespace tierloam::planning {

namespace {

constexpr double paperStep = 0.005; ///< kg
constexpr double waterStep = 0.05;  ///< L
constexpr double mostPaper = 2.0;   ///< times the food

double upTo(double amount, double step) { return std::max(std::ceil(amount / step - 1e-9), 0.0) * step; }

}

WithFood withFood(Mass food, const materials::Material& what, const materials::Material& paper, const TrayWater& tray)
{
    WithFood made;
    const materials::Mix fed = materials::mixOf(food, what);
    const double carbon = fed.carbon.base();
    const double nitrogen = fed.nitrogen.base();
    const double paperDry = paper.dryShare();
    const double paperNitrogen = paperDry * paper.nitrogenPercent / 100.0;
    const double paperCarbon = paperDry * paper.carbonShare();
    const auto ratio = [&](double kg) {
        const double n = nitrogen + kg * paperNitrogen;
        return n > 0.0 ? (carbon + kg * paperCarbon) / n : 0.0;
    };
    const auto paperFor = [&](double goal) { // may be negative: there already
        const double gain = paperCarbon - goal * paperNitrogen;
        return gain > 0.0 ? (goal * nitrogen - carbon) / gain : 0.0;
    };
    const double water = tray.water + fed.water.base();
    const double capacity = tray.capacity + fed.dry.base() * what.waterHeldKgPerKg;
    const auto wet = [&](double paperKg, double poured) {
        const double holds = capacity + paperKg * paperDry * paper.waterHeldKgPerKg;
        return holds > 0.0 ? (water + paperKg * (1.0 - paperDry) + poured) / holds : 0.0;
    };
    const double most = std::min(mostPaper * food.base(), std::floor(std::max(paperFor(mostCarbonToNitrogen), 0.0) / paperStep + 1e-9) * paperStep);
    double kg = std::min(upTo(paperFor(leastCarbonToNitrogen), paperStep), std::max(most, 0.0));
    // What the paper takes up beyond its own water: kg·(dry·held − own) is wanting.
    const double takes = paperDry * paper.waterHeldKgPerKg - (1.0 - paperDry);
    if (takes > 0.0 && wet(kg, 0.0) > mostWater) kg = std::clamp(upTo((water - capacity) / takes, paperStep), kg, std::max(most, kg));
    made.paperKg = kg;
    const double holds = capacity + kg * paperDry * paper.waterHeldKgPerKg;
    made.waterL = upTo(leastWater * holds - water - kg * (1.0 - paperDry), waterStep);
    made.carbonToNitrogen = ratio(kg);
    made.waterShare = wet(kg, made.waterL);
    made.carbonReached = made.carbonToNitrogen >= leastCarbonToNitrogen - 1e-9 && made.carbonToNitrogen <= mostCarbonToNitrogen + 1e-9;
    made.waterReached = made.waterShare >= leastWater - 1e-9 && made.waterShare <= mostWater + 1e-9;
    return made;
}

}
