#pragma once

#include <optional>

/// The shapes of what people read off a stack: log-densities and draws, in arithmetic of our own so that the same journal gives the
/// same bits everywhere. Knows no worms.
namespace tierloam::reckoning {

/// Φ(x), the standard normal distribution function, and its logarithm, which stays finite far out. Relative error below 2e-5 beyond ±6,
/// where an asymptotic series takes over from the Taylor series of Marsaglia 2004 (from memory), and below 1e-6 within.
double logNormalCdf(double x);
double normalCdf(double x);

/// How one member expects a value to be read.
struct Expectation {
    enum class Shape {
        normal,           ///< centre, sd
        censored,         ///< normal, read as `low` or `high` at and beyond them
        logNormal,        ///< median `centre`, sd on the log scale
        negativeBinomial, ///< mean `centre`, size `sd`
        ordered,          ///< latent normal (centre, sd) between cuts; the value is the number of the interval, from 0
        atLeast           ///< the value was there: Φ(ln(centre/value)/sd)
    };
    Shape shape = Shape::normal;
    double centre = 0;
    double sd = 1;
    double low = 0, high = 0;
    const double* cuts = nullptr; ///< ascending; owned by the look's table
    int cutCount = 0;
    double share = 0, constant = 0; ///< sd² = (share·centre)² + constant², where it has this form
};

/// Up to what is the same for all members. −∞ only where a member rules the value out altogether.
double logDensity(const Expectation& expected, double value);
/// A value on the scale on which it is read with noise of variance 1, whatever the member expects: logarithms, or for sd² = (r·x)² + c² the scale
/// asinh(r·x/c)/r. nullopt where there is none: intervals, counts of none, values at the ends of their range.
std::optional<double> evened(const Expectation& expected, double value);
/// Mean and variance of what would be read.
struct Moments { double mean, variance; };
Moments moments(const Expectation& expected);
/// A value as it would be read; `normal` and `uniform` are one draw each.
double drawn(const Expectation& expected, double normal, double uniform);

}
