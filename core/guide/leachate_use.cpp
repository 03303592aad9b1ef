#include "core/guide/leachate_use.h"

#include "core/guide/figures.h"

#include <algorithm>

namespace tierloam::guide {

Dilution diluteTo(const Spread& leachate, double wished, double water, Volume volume)
{
    Dilution result;
    if (leachate.high <= wished) {
        result.answer = DilutionAnswer::weakEnough;
        result.whole = {volume.base(), volume.base(), volume.base()};
        return result;
    }
    if (water >= wished) {
        result.answer = DilutionAnswer::cannot;
        return result;
    }
    const auto parts = [&](double strength) { return std::max(0.0, (strength - wished) / (wished - water)); };
    result.answer = DilutionAnswer::dilute;
    result.parts = {parts(leachate.low), parts(leachate.middle), parts(leachate.high)};
    const auto whole = [&](double each) { return volume.base() * (1.0 + each); };
    result.whole = {whole(result.parts.low), whole(result.parts.middle), whole(result.parts.high)};
    return result;
}

double saltsPerLitre(double milliSiemens) { return milliSiemens * lowOf(Figure::saltPerConductivity); }

}
