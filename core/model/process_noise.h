#pragma once

#include "core/model/normals.h"
#include "core/model/step_context.h"

namespace tierloam::model {
namespace {

inline constexpr double noiseMemory = 30.0;    ///< d, time constant of both
inline constexpr double warmthNoise = 1.2;     ///< K, sd of u
inline constexpr double softeningNoise = 0.15; ///< sd of log softening

inline void exponentialsOf(const Members& x, Members& out)
{
    TIERLOAM_EACH_MEMBER(m) out[m] = exponential(x[m]);
}

inline void logarithmsOf(const Members& x, Members& out)
{
    TIERLOAM_EACH_MEMBER(m) out[m] = naturalLog(x[m]);
}

/// Process noise, once a day: AR(1) of the bed's temperature and of log softening, stationary from the first day.
///     x → x·e^(−1/30) + sd·√(1 − e^(−2/30))·z
inline void noise(StackBlock& stack, Bits64 stream, int index, bool firstDay)
{
    const double memory = exponential(-1.0 / noiseMemory);
    const double keep = firstDay ? 0.0 : memory;
    const double renew = firstDay ? 1.0 : __builtin_sqrt(1.0 - memory * memory);
    Members warmth, softening;
    normalPairsOf(stream, index, warmth, softening);
    TIERLOAM_EACH_MEMBER(m) {
        stack.drift[m] = stack.drift[m] * keep + warmthNoise * renew * warmth[m];
        stack.softNoise[m] = stack.softNoise[m] * keep + softeningNoise * renew * softening[m];
        stack.softFactor[m] = exponential(stack.softNoise[m]);
    }
}

}
}
