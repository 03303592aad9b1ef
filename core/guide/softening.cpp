#include "core/guide/softening.h"

#include "core/model/parameters.h"
#include "core/model/process_sums.h"

#include <array>
#include <cmath>

namespace tierloam::guide {

namespace {

constexpr double unworked = 0.30;      ///< share of the rate without any worm
constexpr double halfDensity = 0.5;    ///< kg/m²

/// The day on which so much of the quick matter is left; rates per day, masses in kg.
double dayWhenLeft(const std::array<double, model::quickClasses>& dry, double total, double perDayFactor, double left)
{
    const auto leftOn = [&](double day) {
        double sum = 0;
        for (std::size_t c = 0; c < dry.size(); ++c) sum += dry[c] * std::exp(-model::softeningRate[c] * perDayFactor * day);
        return sum / total;
    };
    double early = 0, late = 1;
    while (leftOn(late) > left && late < 1e5) late *= 2;
    for (int i = 0; i < 60; ++i) {
        const double middle = (early + late) / 2;
        (leftOn(middle) > left ? early : late) = middle;
    }
    return (early + late) / 2;
}

}

Softening softeningOf(const Portions& portions, double bedCelsius, double wormsKgPerM2)
{
    std::array<double, model::quickClasses> quick{};
    double quickDry = 0, allDry = 0;
    for (const auto& [material, fresh] : portions) {
        const double dry = fresh.base() * material.dryShare();
        allDry += dry;
        const auto c = static_cast<std::size_t>(material.softening);
        if (c >= quick.size()) continue;
        quick[c] += dry;
        quickDry += dry;
    }
    Softening result;
    if (allDry > 0) result.staysShare = 1 - quickDry / allDry;
    if (!(quickDry > 0)) return result;
    const double wormFactor = model::parameterTable()[static_cast<std::size_t>(model::Parameter::wormFactor)].centre;
    const double factor = std::exp2((bedCelsius - 25.0) / 10.0) * (unworked + wormFactor * wormsKgPerM2 / (wormsKgPerM2 + halfDensity));
    result.halfDays = dayWhenLeft(quick, quickDry, factor, 0.5);
    result.mostDays = dayWhenLeft(quick, quickDry, factor, 0.1);
    return result;
}

}
