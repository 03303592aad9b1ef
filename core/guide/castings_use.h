#pragma once

#include "core/quantity/measures.h"

/// What a batch of castings is good for, by volume. Shares, depths and moistures are rows of the table of figures.
namespace tierloam::guide {

/// Castings as they were taken.
struct CastingsBatch {
    Mass wet;
    double moisturePercent = 0;      ///< of wet mass, 0 to below 100

    Mass dry() const;
    /// Loosely filled, from the dry bulk of castings: what is wetter weighs more and takes no more room.
    Volume volume() const;
};
/// The batch whose volume that is.
CastingsBatch batchOf(Volume volume, double moisturePercent);

/// How much potting mix the castings make at a share by volume. The share is held to the table's greatest (pottingMost) and above 0.
struct PottingMix {
    double sharePercent = 0;         ///< as used
    bool held = false;               ///< more was asked for than is ever advised
    Volume castings, other, whole;
};
PottingMix pottingMix(Volume castings, double sharePercent);
/// Castings that so much of potting mix takes, held likewise.
PottingMix pottingMixFor(Volume whole, double sharePercent);

/// Ground that the castings cover at that depth; depth > 0.
Area covered(Volume castings, Length depth);
/// Castings that so much ground takes.
Volume neededFor(Area ground, Length depth);

/// Water that has to dry off before the castings are stored at the table's moisture; 0 when they are that dry already.
Mass toDryOffBeforeStoring(const CastingsBatch& batch);

/// Castings that a dry input can be expected to give: least and most by the table's yield, and whether what was taken lies between.
struct Yield {
    Mass least, most;                ///< dry
    enum class Verdict { less, asExpected, more } verdict{};
};
Yield yieldAgainst(Mass dryInput, Mass dryTaken);

}
