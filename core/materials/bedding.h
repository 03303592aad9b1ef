#pragma once

#include "core/materials/table.h"

#include <string_view>

namespace tierloam::materials {

/// Room that a material takes once wetted and laid, as a share of its loose bulk: paper collapses, cardboard less, the rest stays.
/// Our judgement; the same shares as those of the reckoning's volumes.
double laidShare(SofteningClass softening);

/// Share of the water that bedding holds at field capacity to which it is wetted when laid; common practice (a wrung-out sponge), no source.
inline constexpr double wettedShare = 0.95;

/// What a tray is bedded with where nobody says otherwise; common practice, no source: 2.5 to 5 cm as laid.
inline constexpr std::string_view usualBedding = "corrugated cardboard shredded";
inline constexpr double usualBeddingDepthCm = 5.0;

/// What a new tray takes.
struct BeddingForTray {
    Mass asItComes;  ///< of the material, before it is wetted
    Mass dry;        ///< dry matter in it
    Volume water;    ///< to pour over it, less what it holds already; 0 when it comes wetter than that
    Mass laid;       ///< wetted
    double moisturePercent = 0; ///< of wet mass, once laid
};

/// Bedding to lay `depth` deep over `area`, from the loose bulk and laidShare of the material. Both are positive.
BeddingForTray beddingForTray(Area area, Length depth, const Material& material);

/// The depth that so much of the material makes once laid; the way back.
Length laidDepth(Mass asItComes, Area area, const Material& material);

/// Water to bring so much of the material to what it is wetted to when laid.
Volume waterForBedding(Mass asItComes, const Material& material);

}
