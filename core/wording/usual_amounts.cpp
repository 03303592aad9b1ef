#include "core/wording/usual_amounts.h"

#include "core/wording/formats.h"

#include <algorithm>
#include <cmath>

namespace tierloam::wording {

Amount roundAmount(const Amount& proposed)
{
    if (measures() != Measures::us) return proposed;
    const double base = proposed.value * inBaseUnit(proposed.unit);
    if (kindOf(proposed.unit) == UnitKind::volume) return volumeAmount(base);
    if (kindOf(proposed.unit) != UnitKind::mass) return proposed;
    const double ounces = base / inBaseUnit(Unit::oz);
    const double step = ounces < 5.0 ? 1.0 : 2.0; // marks of a kitchen scale that one looks for
    return {std::max(step, std::round(ounces / step) * step), Unit::oz};
}

reckoning::Usual roundDefaults(reckoning::Usual usual)
{
    if (!usual.feedKnown) usual.feed = roundAmount(usual.feed);
    if (!usual.waterKnown) usual.water = roundAmount(usual.water);
    if (!usual.drainKnown) usual.drain = roundAmount(usual.drain);
    if (!usual.coverKnown && usual.coverWithFeed) usual.coverWithFeed = roundAmount(*usual.coverWithFeed);
    return usual;
}

}
