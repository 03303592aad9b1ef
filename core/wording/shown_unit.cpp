#include "core/wording/shown_unit.h"

#include "core/wording/formats.h"
#include "core/wording/masses.h"
#include "core/wording/volumes.h"

#include <cmath>

namespace tierloam::wording {

namespace {

/// Of OneMassUnit in kg, of OneVolumeUnit in L; negative where each value has its own unit.
thread_local double largestMass = -1.0;
thread_local double largestVolume = -1.0;

bool us() { return measures() == Measures::us; }

constexpr double leastKilogram = 0.995, leastPound = 0.995; ///< what rounds to 1.0 of them
constexpr double leastLitre = 0.0995;
constexpr double leastGallon = 0.245;

}

OneMassUnit::OneMassUnit(double largestKg) : before_{largestMass} { largestMass = std::abs(largestKg); }
OneMassUnit::~OneMassUnit() { largestMass = before_; }
OneVolumeUnit::OneVolumeUnit(double largestLitres) : before_{largestVolume} { largestVolume = std::abs(largestLitres); }
OneVolumeUnit::~OneVolumeUnit() { largestVolume = before_; }

Shown massShown(double kg)
{
    const double m = std::abs(kg), largest = largestMass < 0.0 ? m : largestMass;
    if (us()) {
        const double lb = m / inBaseUnit(Unit::lb);
        if (largest / inBaseUnit(Unit::lb) < leastPound) return {inBaseUnit(Unit::oz), m / inBaseUnit(Unit::oz) < 9.95 ? 1 : 0, Unit::oz};
        return {inBaseUnit(Unit::lb), lb < leastPound ? 2 : lb < 99.5 ? 1 : 0, Unit::lb};
    }
    if (largest < leastKilogram) return {0.001, 0, Unit::g};
    return {1.0, m < leastKilogram ? 2 : m < 9.95 ? 1 : 0, Unit::kg};
}

Shown volumeShown(double litres)
{
    const double v = std::abs(litres), largest = largestVolume < 0.0 ? v : largestVolume;
    if (us()) {
        const double gal = v / inBaseUnit(Unit::gal);
        if (largest / inBaseUnit(Unit::gal) < leastGallon) return {inBaseUnit(Unit::floz), 0, Unit::floz};
        return {inBaseUnit(Unit::gal), gal < 9.95 ? 2 : 1, Unit::gal};
    }
    if (largest > 0 && largest < leastLitre) return {0.001, 0, Unit::mL};
    return {1.0, v > 0 && v < leastLitre ? 2 : v < 99.5 ? 1 : 0, Unit::L};
}

Shown volumeShown(const reckoning::Band& litres)
{
    const Shown middle = volumeShown(litres.p50);
    const Shown upper = volumeShown(litres.p95);
    const bool us = middle.unit == Unit::floz || middle.unit == Unit::gal; // one unit by the larger end
    return middle.size < upper.size && (us || litres.p95 / middle.size >= 999.5) ? upper : middle;
}

}
