#include "core/guide/castings_use.h"

#include "core/guide/figures.h"

#include <algorithm>

namespace tierloam::guide {

namespace {

constexpr double leastShare = 1.0; ///< percent; below it nothing is told from none

PottingMix atShare(double asked)
{
    PottingMix mix;
    mix.sharePercent = std::clamp(asked, leastShare, lowOf(Figure::pottingMost));
    mix.held = asked > lowOf(Figure::pottingMost);
    return mix;
}

}

Mass CastingsBatch::dry() const { return wet * (1.0 - moisturePercent / 100.0); }

Volume CastingsBatch::volume() const { return litres(dry().base() / lowOf(Figure::castingsDryBulk) * 1000.0); }

CastingsBatch batchOf(Volume volume, double moisturePercent)
{
    const double dry = volume.base() / 1000.0 * lowOf(Figure::castingsDryBulk);
    return {kilograms(dry / (1.0 - moisturePercent / 100.0)), moisturePercent};
}

PottingMix pottingMix(Volume castings, double sharePercent)
{
    PottingMix mix = atShare(sharePercent);
    mix.castings = castings;
    mix.whole = castings * (100.0 / mix.sharePercent);
    mix.other = mix.whole - castings;
    return mix;
}

PottingMix pottingMixFor(Volume whole, double sharePercent)
{
    PottingMix mix = atShare(sharePercent);
    mix.whole = whole;
    mix.castings = whole * (mix.sharePercent / 100.0);
    mix.other = whole - mix.castings;
    return mix;
}

Area covered(Volume castings, Length depth) { return squareMetres(castings.base() / 1000.0 / (depth.base() / 100.0)); }

Volume neededFor(Area ground, Length depth) { return litres(ground.base() * depth.base() / 100.0 * 1000.0); }

Mass toDryOffBeforeStoring(const CastingsBatch& batch)
{
    const double stored = lowOf(Figure::storageMoisture) / 100.0;
    const double kept = batch.dry().base() / (1.0 - stored);
    return kilograms(std::max(0.0, batch.wet.base() - kept));
}

Yield yieldAgainst(Mass dryInput, Mass dryTaken)
{
    const Yield expected{dryInput / highOf(Figure::yieldRatio), dryInput / lowOf(Figure::yieldRatio), Yield::Verdict::asExpected};
    Yield result = expected;
    if (dryTaken < expected.least) result.verdict = Yield::Verdict::less;
    if (dryTaken > expected.most) result.verdict = Yield::Verdict::more;
    return result;
}

}
