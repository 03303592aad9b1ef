#pragma once

#include <chrono>
#include <cmath>
#include <compare>
#include <optional>

namespace tierloam {

/// A civil day; days are compared, counted and stored as days, never as instants.
using Day = std::chrono::sys_days;

/// Whole days from one civil day to another, negative when `to` lies before `from`.
constexpr int daysBetween(Day from, Day to) { return static_cast<int>((to - from).count()); }

/// One physical dimension held in its base unit. Only sums, scaling and ratios exist, so that no operator
/// can give a wrong dimension. "Not measured" is std::optional, never zero.
template <class Dimension>
class Measure {
public:
    constexpr Measure() = default;
    constexpr explicit Measure(double inBaseUnit) : value_{inBaseUnit} {}
    /// The value in the base unit of the dimension: kg, L, cm, °C, m².
    constexpr double base() const { return value_; }

    constexpr Measure operator+(Measure other) const { return Measure{value_ + other.value_}; }
    constexpr Measure operator-(Measure other) const { return Measure{value_ - other.value_}; }
    constexpr Measure operator*(double factor) const { return Measure{value_ * factor}; }
    constexpr Measure operator/(double divisor) const { return Measure{value_ / divisor}; }
    constexpr double operator/(Measure other) const { return value_ / other.value_; }
    constexpr auto operator<=>(const Measure&) const = default;

private:
    double value_ = 0.0;
};

using Mass = Measure<struct MassDimension>;               ///< kg
using Volume = Measure<struct VolumeDimension>;           ///< L
using Length = Measure<struct LengthDimension>;           ///< cm
using Area = Measure<struct AreaDimension>;               ///< m²
using Temperature = Measure<struct TemperatureDimension>; ///< °C

constexpr Mass kilograms(double kg) { return Mass{kg}; }
constexpr Mass grams(double g) { return Mass{g / 1000.0}; }
constexpr Volume litres(double l) { return Volume{l}; }
constexpr Length centimetres(double cm) { return Length{cm}; }
constexpr Area squareMetres(double m2) { return Area{m2}; }
constexpr Temperature celsius(double c) { return Temperature{c}; }

/// A share of a whole, 0 to 1.
class Share {
public:
    constexpr Share() = default;
    /// nullopt outside 0…100 or when not a number.
    static std::optional<Share> fromPercent(double percent)
    {
        if (!(percent >= 0.0 && percent <= 100.0)) return std::nullopt;
        return Share{percent};
    }
    constexpr double percent() const { return percent_; }
    constexpr double fraction() const { return percent_ / 100.0; }
    constexpr double of(double whole) const { return percent_ / 100.0 * whole; }
    constexpr auto operator<=>(const Share&) const = default;

private:
    explicit constexpr Share(double percent) : percent_{percent} {} ///< kept in percent, so that text goes both ways exactly
    double percent_ = 0.0;
};

}
