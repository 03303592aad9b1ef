#include "core/guide/lifting.h"

#include "core/guide/figures.h"

#include <algorithm>
#include <cmath>

namespace tierloam::guide {

namespace {

constexpr double fineUpTo = 1.0, hardlyAbove = 3.0;
constexpr double lowHands = 25.0;  ///< cm, below which the arms reach farther around a box
constexpr double sumpBeneath = 12.0; ///< cm, of a sump and its lid-like rim; ours

/// Grip: a rim or handle; it tells less above the reference height.
double gripFactor(Grip grip, double height)
{
    switch (grip) {
    case Grip::good: return 1.0;
    case Grip::fair: return height < lowOf(Figure::heightReference) ? lowOf(Figure::gripFair) : 1.0;
    case Grip::poor: break;
    }
    return lowOf(Figure::gripPoor);
}

}

std::optional<Mass> recommendedWeight(const Lift& lift)
{
    const double reach = std::max(lift.reach.base(), lowOf(Figure::reachReference));
    const double height = lift.from.base();
    const double travel = std::max(std::fabs(lift.travel.base()), lowOf(Figure::travelReference));
    if (reach > lowOf(Figure::reachFarthest) || height < 0.0 || height > lowOf(Figure::heightMost) || travel > lowOf(Figure::travelMost) ||
        lift.twistDegrees > lowOf(Figure::twistMost) || lift.twistDegrees < 0.0 || !(lift.frequency > 0.0)) {
        return std::nullopt;
    }
    const double horizontal = lowOf(Figure::reachReference) / reach;
    const double vertical = 1.0 - lowOf(Figure::heightLoss) * std::fabs(height - lowOf(Figure::heightReference));
    const double distance = lowOf(Figure::travelBase) + lowOf(Figure::travelShare) / travel;
    const double twist = 1.0 - lowOf(Figure::twistLoss) * lift.twistDegrees;
    return kilograms(lowOf(Figure::loadConstant) * horizontal * vertical * distance * twist * std::min(lift.frequency, 1.0) * gripFactor(lift.grip, height));
}

LiftVerdict judge(Mass weight, const Lift& lift)
{
    LiftVerdict verdict;
    verdict.recommended = recommendedWeight(lift);
    if (!verdict.recommended) {
        verdict.word = LiftVerdict::Word::dont;
        return verdict;
    }
    verdict.index = weight / *verdict.recommended;
    verdict.word = *verdict.index <= fineUpTo ? LiftVerdict::Word::fine : *verdict.index <= hardlyAbove ? LiftVerdict::Word::heavy : LiftVerdict::Word::tooHeavy;
    return verdict;
}

Lift liftOf(const TrayLift& tray)
{
    Lift lift;
    const double half = 50.0 * std::sqrt(tray.floor.base()); // cm
    const double body = tray.from.base() < lowHands ? highOf(Figure::reachBody) : lowOf(Figure::reachBody);
    lift.reach = tray.ownReach.value_or(centimetres(half + body));
    lift.from = tray.from;
    lift.travel = centimetres(std::fabs(tray.to.base() - tray.from.base()));
    lift.grip = Grip::fair;
    return lift;
}

Length rimHeight(int slot, Length trayHeight, Length stand)
{
    return centimetres(stand.base() + sumpBeneath + slot * trayHeight.base());
}

}
