#include "core/materials/bedding.h"

#include <algorithm>

namespace tierloam::materials {

namespace {

constexpr double litresPerSquareMetreAndCentimetre = 10.0;

}

double laidShare(SofteningClass softening)
{
    switch (softening) {
    case SofteningClass::paper: return 0.4;
    case SofteningClass::cardboard: return 0.6;
    case SofteningClass::soft:
    case SofteningClass::mix:
    case SofteningClass::coffee:
    case SofteningClass::wood:
    case SofteningClass::coir:
    case SofteningClass::mineral: break;
    }
    return 1.0;
}

Volume waterForBedding(Mass asItComes, const Material& material)
{
    const double dry = asItComes.base() * material.dryShare();
    const double water = asItComes.base() - dry;
    return litres(std::max(0.0, wettedShare * material.waterHeldKgPerKg * dry - water));
}

BeddingForTray beddingForTray(Area area, Length depth, const Material& material)
{
    const double laidLitres = area.base() * depth.base() * litresPerSquareMetreAndCentimetre;
    const double looseLitres = laidLitres / laidShare(material.softening);
    BeddingForTray result;
    result.asItComes = kilograms(looseLitres / 1000.0 * material.bulkKgPerM3);
    result.dry = result.asItComes * material.dryShare();
    result.water = waterForBedding(result.asItComes, material);
    result.laid = result.asItComes + kilograms(result.water.base());
    if (result.laid.base() > 0.0) result.moisturePercent = 100.0 * (1.0 - result.dry / result.laid);
    return result;
}

Length laidDepth(Mass asItComes, Area area, const Material& material)
{
    const double looseLitres = asItComes.base() / material.bulkKgPerM3 * 1000.0;
    return centimetres(looseLitres * laidShare(material.softening) / (area.base() * litresPerSquareMetreAndCentimetre));
}

}
