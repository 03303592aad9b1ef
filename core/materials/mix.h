#pragma once

#include "core/materials/table.h"

/// Arithmetic of mixtures: what a mix of materials holds, and how much of one more material brings it to a wish.
/// A mix is reckoned from its masses of water, dry matter, carbon and nitrogen; averaging moisture or C:N by parts would be wrong.
namespace tierloam::materials {

/// What a heap of materials holds. Bulk is as the materials come to hand, loose; nothing is taken off for settling.
struct Mix {
    Mass water;
    Mass dry;
    Mass carbon;
    Mass nitrogen;
    Volume bulk;

    Mass fresh() const { return water + dry; }
    std::optional<double> moisturePercent() const;  ///< of wet mass; nullopt when there is nothing
    std::optional<double> carbonToNitrogen() const; ///< nullopt without carbon or without nitrogen
    Mix operator+(const Mix& other) const;
};

/// So much of a material, as it comes to hand.
Mix mixOf(Mass fresh, const Material& material);
/// Poured water; it takes no room between loose stuff.
Mix poured(Volume water);

/// Moisture in % of wet mass from weighing a sample before and after drying, both with its container.
/// nullopt unless container ≤ dried ≤ wet and container < wet. Source: Cornell Waste Management Institute, on moisture.
std::optional<double> sampleMoisturePercent(Mass container, Mass wetWithContainer, Mass driedWithContainer);

/// Why a wish cannot be met by adding more of a material.
enum class Obstacle {
    none,
    nothingThere,   ///< the mix holds no matter to reckon with, or no nitrogen or carbon where C:N is wished
    wrongWay,       ///< every bit of it leads away from the wish
    notFarEnough,   ///< even twenty times the mix of it does not get there
    tooWet,         ///< the C:N wish leaves the mix wetter than wished, and more of the material would overshoot C:N
};

/// How much to add, what the mix is then, and whether that is what was wished. With an obstacle it is the nearest mix there is.
struct Addition {
    Mass material;
    Volume water;
    Mix mix;
    Obstacle obstacle = Obstacle::none;
};

/// The most that is ever advised of one material, in times the mass of the mix it is added to.
inline constexpr double mostTimesTheMix = 20.0;

/// How much of `added` brings the mix to `moisturePercent` (0 < … < 100).
/// From Σ Q·M = goal · Σ Q: x = Q·(M − goal)/(goal − M_added).
Addition addForMoisture(const Mix& mix, const Material& added, double moisturePercent);

/// How much water brings it there; tooWet when it is wetter already.
Addition addWater(const Mix& mix, double moisturePercent);

/// How much of `added` brings the mix to a C:N, whatever its moisture then is.
/// From C:N = Σ Q·C·(100 − M) / Σ Q·N·(100 − M).
Addition addForCarbonToNitrogen(const Mix& mix, const Material& added, double carbonToNitrogen);

/// Both wishes at once, by the material and by water. When they are in conflict (the mix that has the C:N is too wet already)
/// the nearest mix lies between the two single answers; near is meant in steps of 5 points of moisture and 5 of C:N (our judgement).
Addition addForBoth(const Mix& mix, const Material& added, double moisturePercent, double carbonToNitrogen);

}
