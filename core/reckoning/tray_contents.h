#pragma once

#include "core/model/parameters.h"
#include "core/reckoning/reckoning.h"

#include <algorithm>

namespace tierloam::reckoning {

/// All that lies in a tray, kg: its median weight without an empty tray, as the parameter table takes one that nobody has weighed.
inline double contentsKg(const TrayEstimate& tray)
{
    return std::max(tray.weightKg.p50 - model::parameterTable()[static_cast<std::size_t>(model::Parameter::tare)].centre, 0.0);
}

/// Water in it, kg: its median share of that.
inline double waterKg(const TrayEstimate& tray) { return contentsKg(tray) * tray.moisturePct.p50 / 100.0; }

}
