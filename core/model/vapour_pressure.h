#pragma once

#include "core/model/elementary.h"

namespace tierloam::model {
namespace {

/// Saturation vapour pressure in kPa at °C. Allen et al. 1998, FAO Irrigation and Drainage Paper 56, eq. 11.
inline double saturationVapourPressure(double celsius)
{
    return 0.6108 * exponential(17.27 * celsius / (celsius + 237.3));
}

/// Of two temperatures with one division.
[[gnu::always_inline]] inline void saturationVapourPressures(double first, double second, double& ofFirst, double& ofSecond)
{
    const double a = first + 237.3;
    const double b = second + 237.3;
    const double inverse = 17.27 / (a * b);
    ofFirst = 0.6108 * roughExponential(first * b * inverse);
    ofSecond = 0.6108 * roughExponential(second * a * inverse);
}

}
}
