#pragma once

#include <QColor>

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

/// Colour measures for the checks of the palettes; sRGB, D65.
namespace tierloam::test {

struct Lab { double L, a, b; };
using Rgb = std::array<double, 3>; ///< linear, 0…1

inline double linearOf(double c) { return c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4); }

inline Rgb linearRgb(const QColor& c)
{
    return {linearOf(c.red() / 255.0), linearOf(c.green() / 255.0), linearOf(c.blue() / 255.0)};
}

/// Relative luminance and contrast ratio of WCAG 2.
inline double luminance(const QColor& c)
{
    const Rgb l = linearRgb(c);
    return 0.2126 * l[0] + 0.7152 * l[1] + 0.0722 * l[2];
}

inline double contrast(const QColor& a, const QColor& b)
{
    const auto [low, high] = std::minmax(luminance(a), luminance(b));
    return (high + 0.05) / (low + 0.05);
}

inline Lab labOf(const Rgb& l)
{
    const auto f = [](double t) { return t > 216.0 / 24389.0 ? std::cbrt(t) : (24389.0 / 27.0 * t + 16.0) / 116.0; };
    const double x = (0.4124564 * l[0] + 0.3575761 * l[1] + 0.1804375 * l[2]) / 0.95047;
    const double y = 0.2126729 * l[0] + 0.7151522 * l[1] + 0.0721750 * l[2];
    const double z = (0.0193339 * l[0] + 0.1191920 * l[1] + 0.9503041 * l[2]) / 1.08883;
    return {116 * f(y) - 16, 500 * (f(x) - f(y)), 200 * (f(y) - f(z))};
}

inline Lab labOf(const QColor& c) { return labOf(linearRgb(c)); }

/// Deuteranopia, severity 1.0: matrix of Machado, Oliveira & Fernandes 2009, IEEE TVCG 15:1291–1298, applied to linear RGB.
/// The matrix is from memory; its rows sum to one, so that grey stays grey (tested).
inline Rgb deuteranopia(const Rgb& l)
{
    constexpr double m[3][3] = {{0.367322, 0.860646, -0.227968}, {0.280085, 0.672501, 0.047413}, {-0.011820, 0.042940, 0.968881}};
    Rgb seen{};
    for (std::size_t i = 0; i < 3; ++i)
        seen[i] = std::clamp(m[i][0] * l[0] + m[i][1] * l[1] + m[i][2] * l[2], 0.0, 1.0);
    return seen;
}

/// Colour difference CIEDE2000 with kL = kC = kH = 1, after Sharma, Wu & Dalal 2005, Color Res. Appl. 30:21–30.
inline double ciede2000(const Lab& one, const Lab& two)
{
    constexpr double pi = std::numbers::pi;
    const auto degrees = [](double radians) { return radians * 180.0 / std::numbers::pi; };
    const auto radians = [](double deg) { return deg * std::numbers::pi / 180.0; };
    const double meanC = (std::hypot(one.a, one.b) + std::hypot(two.a, two.b)) / 2;
    const double c7 = std::pow(meanC, 7);
    const double g = 0.5 * (1 - std::sqrt(c7 / (c7 + std::pow(25.0, 7))));
    const double a1 = (1 + g) * one.a, a2 = (1 + g) * two.a;
    const double c1 = std::hypot(a1, one.b), c2 = std::hypot(a2, two.b);
    const auto hue = [&](double b, double a) {
        if (a == 0 && b == 0) return 0.0;
        const double h = std::atan2(b, a);
        return degrees(h < 0 ? h + 2 * pi : h);
    };
    const double h1 = hue(one.b, a1), h2 = hue(two.b, a2);
    const double dL = two.L - one.L, dC = c2 - c1;
    double dh = 0;
    if (c1 * c2 != 0) {
        dh = h2 - h1;
        if (dh > 180) dh -= 360;
        if (dh < -180) dh += 360;
    }
    const double dH = 2 * std::sqrt(c1 * c2) * std::sin(radians(dh) / 2);
    const double L = (one.L + two.L) / 2, C = (c1 + c2) / 2;
    double h = h1 + h2;
    if (c1 * c2 != 0) {
        if (std::abs(h1 - h2) <= 180) h = (h1 + h2) / 2;
        else h = (h1 + h2 < 360) ? (h1 + h2 + 360) / 2 : (h1 + h2 - 360) / 2;
    }
    const double t = 1 - 0.17 * std::cos(radians(h - 30)) + 0.24 * std::cos(radians(2 * h)) + 0.32 * std::cos(radians(3 * h + 6))
                     - 0.20 * std::cos(radians(4 * h - 63));
    const double turn = 30 * std::exp(-std::pow((h - 275) / 25, 2));
    const double cc7 = std::pow(C, 7);
    const double rc = 2 * std::sqrt(cc7 / (cc7 + std::pow(25.0, 7)));
    const double sl = 1 + 0.015 * std::pow(L - 50, 2) / std::sqrt(20 + std::pow(L - 50, 2));
    const double sc = 1 + 0.045 * C, sh = 1 + 0.015 * C * t;
    const double rt = -std::sin(radians(2 * turn)) * rc;
    const double l = dL / sl, c = dC / sc, hh = dH / sh;
    return std::sqrt(l * l + c * c + hh * hh + rt * c * hh);
}

}
