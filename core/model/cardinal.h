#pragma once

namespace tierloam::model {
namespace {

/// Rosso's cardinal temperature curve: 1 at the best temperature, 0 at and beyond the coldest and the hottest.
///     g(T) = (T−Tmax)(T−Tmin)² / {(Topt−Tmin)[(Topt−Tmin)(T−Topt) − (Topt−Tmax)(Topt+Tmin−2T)]}
/// Source: Rosso et al. 1993, J. Theor. Biol. 162:447–463, from memory.
inline double cardinal(double t, double coldest, double best, double hottest)
{
    const double span = best - coldest;
    const double above = t - coldest;
    const double numerator = (t - hottest) * above * above;
    const double denominator = span * (span * (t - best) - (best - hottest) * (best + coldest - 2.0 * t));
    const bool outside = t <= coldest || t >= hottest;
    const double value = numerator / (outside ? 1.0 : denominator);
    return outside ? 0.0 : value;
}

}
}
