#pragma once

#include "core/model/elementary.h"

namespace tierloam::model {
namespace {

/// Saturation vapour pressure in kPa at °C. Allen et al. 1998, FAO Irrigation and Drainage Paper 56, eq. 11.
inline double saturationVapourPressure(double celsius)
{
    return 0.6108 * exponential(17.27 * celsius / (celsius + 237.3));
}

}
}
