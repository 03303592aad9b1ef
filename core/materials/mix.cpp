#include "core/materials/mix.h"

#include <algorithm>
#include <cmath>

namespace tierloam::materials {

namespace {

constexpr double moistureStep = 5.0; ///< points
constexpr double ratioStep = 5.0;    ///< C:N

Addition nothingAdded(const Mix& mix, Obstacle obstacle) { return {Mass{}, Volume{}, mix, obstacle}; }

Addition withMaterial(const Mix& mix, const Material& added, Mass amount, Obstacle obstacle)
{
    return {amount, Volume{}, mix + mixOf(amount, added), obstacle};
}

/// So much of the material that its `gain` per kg makes up for what the mix lacks (kg water or carbon, of either sign).
Addition addToMakeUp(const Mix& mix, const Material& added, double lacking, double gain)
{
    if (std::fabs(lacking) <= 1e-12 * mix.fresh().base()) return nothingAdded(mix, Obstacle::none);
    if (gain == 0.0 || (gain > 0.0) != (lacking > 0.0)) return nothingAdded(mix, Obstacle::wrongWay);
    const double amount = lacking / gain;
    const double most = mostTimesTheMix * mix.fresh().base();
    if (amount > most) return withMaterial(mix, added, kilograms(most), Obstacle::notFarEnough);
    return withMaterial(mix, added, kilograms(amount), Obstacle::none);
}

/// True when ever more of a material leads towards the wish, though its own value lies short of it.
bool leadsTowards(double now, double limit, double wish) { return (wish - now) * (limit - now) > 0.0; }

double distance(const Mix& mix, double moisturePercent, double carbonToNitrogen)
{
    const auto moisture = mix.moisturePercent();
    const auto ratio = mix.carbonToNitrogen();
    if (!moisture || !ratio) return INFINITY;
    return std::hypot((*moisture - moisturePercent) / moistureStep, (*ratio - carbonToNitrogen) / ratioStep);
}

/// Where a function is lowest between two amounts: the best of a grid, then golden section around it.
template <class Function>
double lowestBetween(double from, double to, Function function)
{
    constexpr int cells = 200;
    constexpr double golden = 0.6180339887498949;
    const double cell = std::fabs(to - from) / cells;
    const double start = std::min(from, to);
    int best = 0;
    for (int i = 1; i <= cells; ++i)
        if (function(start + i * cell) < function(start + best * cell)) best = i;
    double low = start + std::max(best - 1, 0) * cell;
    double high = start + std::min(best + 1, cells) * cell;
    for (int i = 0; i < 80; ++i) {
        const double left = high - golden * (high - low);
        const double right = low + golden * (high - low);
        if (function(left) <= function(right)) {
            high = right;
        } else {
            low = left;
        }
    }
    return (low + high) / 2.0;
}

}

std::optional<double> Mix::moisturePercent() const
{
    if (!(fresh().base() > 0.0)) return std::nullopt;
    return 100.0 * (water / fresh());
}

std::optional<double> Mix::carbonToNitrogen() const
{
    if (!(nitrogen.base() > 0.0) || !(carbon.base() > 0.0)) return std::nullopt;
    return carbon / nitrogen;
}

Mix Mix::operator+(const Mix& other) const
{
    return {water + other.water, dry + other.dry, carbon + other.carbon, nitrogen + other.nitrogen, bulk + other.bulk};
}

Mix mixOf(Mass fresh, const Material& material)
{
    const Mass dry = fresh * material.dryShare();
    return {fresh - dry, dry, dry * material.carbonShare(), dry * (material.nitrogenPercent / 100.0),
            litres(fresh.base() / material.bulkKgPerM3 * 1000.0)};
}

Mix poured(Volume water)
{
    Mix mix;
    mix.water = kilograms(water.base());
    return mix;
}

std::optional<double> sampleMoisturePercent(Mass container, Mass wetWithContainer, Mass driedWithContainer)
{
    if (!(container < wetWithContainer && container <= driedWithContainer && driedWithContainer <= wetWithContainer)) return std::nullopt;
    return 100.0 * ((wetWithContainer - driedWithContainer) / (wetWithContainer - container));
}

Addition addForMoisture(const Mix& mix, const Material& added, double moisturePercent)
{
    const auto now = mix.moisturePercent();
    if (!now) return nothingAdded(mix, Obstacle::nothingThere);
    const double goal = moisturePercent / 100.0;
    const double excess = mix.water.base() - goal * mix.fresh().base();
    const double takenUp = goal - added.moisturePercent / 100.0;
    Addition addition = addToMakeUp(mix, added, excess, takenUp);
    if (addition.obstacle == Obstacle::wrongWay && leadsTowards(*now, added.moisturePercent, moisturePercent))
        return withMaterial(mix, added, mix.fresh() * mostTimesTheMix, Obstacle::notFarEnough);
    return addition;
}

Addition addWater(const Mix& mix, double moisturePercent)
{
    if (!mix.moisturePercent()) return nothingAdded(mix, Obstacle::nothingThere);
    const double goal = moisturePercent / 100.0;
    const double lacking = (goal * mix.fresh().base() - mix.water.base()) / (1.0 - goal);
    if (lacking < -1e-12 * mix.fresh().base()) return nothingAdded(mix, Obstacle::tooWet);
    const Volume water = litres(std::max(0.0, lacking));
    return {Mass{}, water, mix + poured(water), Obstacle::none};
}

Addition addForCarbonToNitrogen(const Mix& mix, const Material& added, double carbonToNitrogen)
{
    const Mix one = mixOf(kilograms(1.0), added);
    if (!(mix.nitrogen.base() > 0.0) || !(mix.carbon.base() > 0.0)) return nothingAdded(mix, Obstacle::nothingThere);
    const double lacking = carbonToNitrogen * mix.nitrogen.base() - mix.carbon.base();
    const double brought = one.carbon.base() - carbonToNitrogen * one.nitrogen.base();
    Addition addition = addToMakeUp(mix, added, lacking, brought);
    const auto limit = one.carbonToNitrogen();
    if (addition.obstacle == Obstacle::wrongWay && limit && leadsTowards(*mix.carbonToNitrogen(), *limit, carbonToNitrogen))
        return withMaterial(mix, added, mix.fresh() * mostTimesTheMix, Obstacle::notFarEnough);
    return addition;
}

Addition addForBoth(const Mix& mix, const Material& added, double moisturePercent, double carbonToNitrogen)
{
    const Addition forRatio = addForCarbonToNitrogen(mix, added, carbonToNitrogen);
    if (forRatio.obstacle == Obstacle::nothingThere) return forRatio;
    const Addition wetted = addWater(forRatio.mix, moisturePercent);
    if (wetted.obstacle == Obstacle::none) return {forRatio.material, wetted.water, wetted.mix, forRatio.obstacle};

    // Too wet at the wished C:N. Water cannot be taken out, so the amount of material alone decides between the two wishes.
    const Addition forMoisture = addForMoisture(mix, added, moisturePercent);
    const auto at = [&](double amount) { return mix + mixOf(kilograms(amount), added); };
    const double nearest = lowestBetween(forRatio.material.base(), forMoisture.material.base(),
                                         [&](double amount) { return distance(at(amount), moisturePercent, carbonToNitrogen); });
    return withMaterial(mix, added, kilograms(nearest), forRatio.obstacle == Obstacle::none ? Obstacle::tooWet : forRatio.obstacle);
}

}
