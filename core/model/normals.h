#pragma once

#include "core/model/block.h"
#include "core/model/elementary.h"

/// Counter-based random numbers for the kernels, compiled for each instruction set with the same bits; see random.h.
namespace tierloam::model {
namespace {

using Bits64 = unsigned long long;

inline constexpr Bits64 golden = 0x9e3779b97f4a7c15ULL;

inline Bits64 mixed(Bits64 z)
{
    z = (z ^ (z >> 30)) * 0xbf58476d1ce4e5b9ULL;
    z = (z ^ (z >> 27)) * 0x94d049bb133111ebULL;
    return z ^ (z >> 31);
}

/// 52 random bits as a double in (0, 1), never 0 or 1.
inline double unit(Bits64 bits)
{
    return __builtin_bit_cast(double, (bits >> 12) | 0x3ff0000000000000ULL) - (1.0 - 0x1p-53);
}

/// cos and sin of 2πu, 0 < u < 1, by reduction to an eighth of the circle. Taylor series, error below 1e-15.
[[gnu::always_inline]] inline void circleOfTurn(double u, double& cosineOfAll, double& sineOfAll)
{
    constexpr double roundBits = 6755399441055744.0;
    const double quarters = (4.0 * u + roundBits) - roundBits; // 0…4
    const double r = (u - 0.25 * quarters) * 6.283185307179586;
    const double z = r * r;
    double s = -1.0 / 1307674368000.0;
    s = s * z + 1.0 / 6227020800.0;
    s = s * z - 1.0 / 39916800.0;
    s = s * z + 1.0 / 362880.0;
    s = s * z - 1.0 / 5040.0;
    s = s * z + 1.0 / 120.0;
    s = s * z - 1.0 / 6.0;
    const double sine = r + r * z * s;
    double c = 1.0 / 20922789888000.0;
    c = c * z - 1.0 / 87178291200.0;
    c = c * z + 1.0 / 479001600.0;
    c = c * z - 1.0 / 3628800.0;
    c = c * z + 1.0 / 40320.0;
    c = c * z - 1.0 / 720.0;
    c = c * z + 1.0 / 24.0;
    c = c * z - 0.5;
    const double cosine = 1.0 + z * c;
    const bool odd = quarters == 1.0 || quarters == 3.0;
    const bool left = quarters == 1.0 || quarters == 2.0;  // cos(x + π/2) = −sin x, cos(x + π) = −cos x
    const bool below = quarters == 2.0 || quarters == 3.0; // sin(x + π) = −sin x, sin(x + 3π/2) = −cos x
    const double across = odd ? sine : cosine;
    const double up = odd ? cosine : sine;
    cosineOfAll = left ? -across : across;
    sineOfAll = below ? -up : up;
}

/// Two independent standard normals, by Box and Muller 1958.
[[gnu::always_inline]] inline void normalPairOf(Bits64 stream, int member, double& first, double& second)
{
    const Bits64 counter = stream + golden * (2 * static_cast<Bits64>(member) + 1);
    const double radius = __builtin_sqrt(-2.0 * naturalLog(unit(mixed(counter))));
    double cosine, sine;
    circleOfTurn(unit(mixed(counter + golden)), cosine, sine);
    first = radius * cosine;
    second = radius * sine;
}

inline double normalOf(Bits64 stream, int member)
{
    double first, second;
    normalPairOf(stream, member, first, second);
    return first;
}

/// Standard normals of the 64 members of block `index`.
inline void normalsOf(Bits64 stream, int index, Members& out)
{
    const int first = index * lanes;
    _Pragma("GCC ivdep") for (int m = 0; m < lanes; ++m) out[m] = normalOf(stream, first + m);
}

/// Pairs of them.
inline void normalPairsOf(Bits64 stream, int index, Members& first, Members& second)
{
    const int from = index * lanes;
    _Pragma("GCC ivdep") for (int m = 0; m < lanes; ++m) {
        double one, other;
        normalPairOf(stream, from + m, one, other);
        first[m] = one;
        second[m] = other;
    }
}

}
}
