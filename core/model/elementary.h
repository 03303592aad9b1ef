#pragma once

/// exp, log and pow of our own, in plain arithmetic, so that the same journal gives the same bits with any C library and on any
/// instruction set. Relative error below 2e-15 over the ranges used. In an unnamed namespace because they are compiled
/// into kernels for several instruction sets and must not be merged across them.
namespace tierloam::model {
namespace {

inline double least(double a, double b) { return a < b ? a : b; }
inline double greatest(double a, double b) { return a > b ? a : b; }

/// e^x; x is clamped to ±700.
inline double exponential(double x)
{
    x = x > 700.0 ? 700.0 : x;
    x = x < -700.0 ? -700.0 : x;
    constexpr double roundBits = 6755399441055744.0; // 1.5·2^52: adding it leaves the rounded integer in the low bits
    const double shifted = x * 1.4426950408889634 + roundBits;
    const double n = shifted - roundBits;
    const double r = (x - n * 0.69314718036912381649) - n * 1.9082149292705877e-10;
    double p = 1.0 / 479001600.0;
    p = p * r + 1.0 / 39916800.0;
    p = p * r + 1.0 / 3628800.0;
    p = p * r + 1.0 / 362880.0;
    p = p * r + 1.0 / 40320.0;
    p = p * r + 1.0 / 5040.0;
    p = p * r + 1.0 / 720.0;
    p = p * r + 1.0 / 120.0;
    p = p * r + 1.0 / 24.0;
    p = p * r + 1.0 / 6.0;
    p = p * r + 0.5;
    p = p * r + 1.0;
    p = p * r + 1.0;
    const unsigned long long bits = __builtin_bit_cast(unsigned long long, shifted);
    return p * __builtin_bit_cast(double, (bits + 1023ULL) << 52);
}

/// e^x to a relative error below 1e-9, for rates; x is clamped to ±700.
inline double roughExponential(double x)
{
    x = x > 700.0 ? 700.0 : x;
    x = x < -700.0 ? -700.0 : x;
    constexpr double roundBits = 6755399441055744.0;
    const double shifted = x * 1.4426950408889634 + roundBits;
    const double r = x - (shifted - roundBits) * 0.6931471805599453;
    double p = 1.0 / 40320.0;
    p = p * r + 1.0 / 5040.0;
    p = p * r + 1.0 / 720.0;
    p = p * r + 1.0 / 120.0;
    p = p * r + 1.0 / 24.0;
    p = p * r + 1.0 / 6.0;
    p = p * r + 0.5;
    p = p * r + 1.0;
    p = p * r + 1.0;
    const unsigned long long bits = __builtin_bit_cast(unsigned long long, shifted);
    return p * __builtin_bit_cast(double, (bits + 1023ULL) << 52);
}

/// ln x for a normal x > 0.
inline double naturalLog(double x)
{
    // x = 2^e · f with f in [√½, √2): the offset moves the border of the exponent from 1 to √½.
    const unsigned long long bits = __builtin_bit_cast(unsigned long long, x);
    const unsigned long long moved = bits + (0x3ff0000000000000ULL - 0x3fe6a09e667f3bcdULL);
    const unsigned long long exponentBits = moved >> 52;
    const double e = __builtin_bit_cast(double, exponentBits | 0x4330000000000000ULL) - 4503599627370496.0 - 1023.0;
    const double f = __builtin_bit_cast(double, (moved & 0x000fffffffffffffULL) + 0x3fe6a09e667f3bcdULL);
    const double s = (f - 1.0) / (f + 1.0);
    const double z = s * s;
    double p = 1.0 / 21.0;
    p = p * z + 1.0 / 19.0;
    p = p * z + 1.0 / 17.0;
    p = p * z + 1.0 / 15.0;
    p = p * z + 1.0 / 13.0;
    p = p * z + 1.0 / 11.0;
    p = p * z + 1.0 / 9.0;
    p = p * z + 1.0 / 7.0;
    p = p * z + 1.0 / 5.0;
    p = p * z + 1.0 / 3.0;
    const double series = 2.0 * s + 2.0 * s * z * p;
    return e * 0.69314718036912381649 + (e * 1.9082149292705877e-10 + series);
}

/// x^y for x > 0.
inline double power(double x, double y) { return exponential(y * naturalLog(x)); }

/// The share that leaves a pool in a step at rate·time = x: x(1+x/2)/(1 + x(1+x/2)), positive, below 1, second order, without exp.
inline double lossFactor(double x)
{
    const double h = x * (1.0 + 0.5 * x);
    return h / (1.0 + h);
}

/// The same to third order.
inline double finerLossFactor(double x)
{
    const double h = x * (1.0 + x * (0.5 + x * (1.0 / 6.0)));
    return h / (1.0 + h);
}

/// lossFactor(amount/pool) with a single division.
inline double lossFactor(double amount, double pool)
{
    const double h = amount * (pool + 0.5 * amount);
    return h / (pool * pool + h);
}

/// lossFactor of x and of y with a single division.
[[gnu::always_inline]] inline void lossFactors(double x, double y, double& ofX, double& ofY)
{
    const double hx = x * (1.0 + 0.5 * x);
    const double hy = y * (1.0 + 0.5 * y);
    const double inverse = 1.0 / ((1.0 + hx) * (1.0 + hy));
    ofX = least(hx * (1.0 + hy) * inverse, 1.0); // rounding could pass 1 where all leaves
    ofY = least(hy * (1.0 + hx) * inverse, 1.0);
}

/// x^(−1/3) for a normal x > 0, without division: a guess from the exponent bits, then Newton's y(4 − x·y³)/3. Relative error below 1e-14.
inline double inverseCubeRoot(double x)
{
    const unsigned long long bits = __builtin_bit_cast(unsigned long long, x);
    // The upper half of the bits as a number, −1/3 of it, back again.
    const double high = __builtin_bit_cast(double, (bits >> 32) | 0x4330000000000000ULL) - 4503599627370496.0;
    const double guess = 4503599627370496.0 + (1430188664.0 - 0.3333333333333333 * high); // within 3.5 %
    double y = __builtin_bit_cast(double, __builtin_bit_cast(unsigned long long, guess) << 32);
    for (int round = 0; round < 4; ++round) y = y * (4.0 - x * y * y * y) * (1.0 / 3.0);
    return y;
}

}
}
