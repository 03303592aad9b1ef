#include "core/reckoning/distribution.h"

#include "core/model/elementary.h"

#include <algorithm>
#include <cmath>

namespace tierloam::reckoning {

namespace {

using model::exponential;
using model::naturalLog;
using Shape = Expectation::Shape;

constexpr double halfLogTwoPi = 0.91893853320467274178;
constexpr double faintest = 1e-300; ///< stands for 0 where a logarithm is taken

double logOf(double x) { return naturalLog(std::max(x, faintest)); }

/// ln Φ for x < −6: φ(x)/|x| · (1 − 1/x² + 3/x⁴ − 15/x⁶ + 105/x⁸).
double logLowerTail(double x)
{
    const double q = 1.0 / (x * x);
    return -0.5 * x * x - halfLogTwoPi - naturalLog(-x) + naturalLog(1.0 - q * (1.0 - 3.0 * q * (1.0 - 5.0 * q * (1.0 - 7.0 * q))));
}

/// ln(Φ(b) − Φ(a)), a < b, without loss on either side.
double logBetween(double a, double b)
{
    if (a > 0.0) return logBetween(-b, -a);
    const double upper = logNormalCdf(b);
    const double lower = logNormalCdf(a);
    return upper + logOf(1.0 - exponential(std::min(lower - upper, 0.0)));
}

double probabilityOfInterval(const Expectation& e, int k)
{
    const double below = k == 0 ? 0.0 : normalCdf((e.cuts[k - 1] - e.centre) / e.sd);
    const double above = k == e.cutCount ? 1.0 : normalCdf((e.cuts[k] - e.centre) / e.sd);
    return above - below;
}

}

double logNormalCdf(double x)
{
    if (x < -6.0) return logLowerTail(std::max(x, -1e8));
    return naturalLog(std::max(normalCdf(x), faintest));
}

double normalCdf(double x)
{
    if (x < -6.0) return exponential(logLowerTail(std::max(x, -1e8)));
    if (x > 6.0) return 1.0 - exponential(logLowerTail(-std::min(x, 1e8)));
    if (x < 0.0) { // the series loses digits where the sum is small
        if (x > -1.0) return 1.0 - normalCdf(-x);
    }
    double sum = x;
    double before = 0.0;
    double term = x;
    const double square = x * x;
    for (int i = 3; sum != before && i < 400; i += 2) {
        before = sum;
        term *= square / i;
        sum += term;
    }
    return std::clamp(0.5 + sum * exponential(-0.5 * square - halfLogTwoPi), 0.0, 1.0);
}

double logDensity(const Expectation& e, double value)
{
    switch (e.shape) {
    case Shape::censored:
        if (value <= e.low) return logNormalCdf((e.low - e.centre) / e.sd);
        if (value >= e.high) return logNormalCdf((e.centre - e.high) / e.sd);
        [[fallthrough]];
    case Shape::normal: {
        const double z = (value - e.centre) / e.sd;
        return -0.5 * z * z - naturalLog(e.sd);
    }
    case Shape::logNormal: {
        const double z = (logOf(value) - logOf(e.centre)) / e.sd;
        return -0.5 * z * z - naturalLog(e.sd);
    }
    case Shape::negativeBinomial: {
        const double mean = std::max(e.centre, 1e-9);
        return e.sd * naturalLog(e.sd / (e.sd + mean)) + (value > 0.0 ? value * naturalLog(mean / (e.sd + mean)) : 0.0);
    }
    case Shape::ordered: {
        const int k = std::clamp(static_cast<int>(value), 0, e.cutCount);
        if (k == 0) return logNormalCdf((e.cuts[0] - e.centre) / e.sd);
        if (k == e.cutCount) return logNormalCdf((e.centre - e.cuts[k - 1]) / e.sd);
        return logBetween((e.cuts[k - 1] - e.centre) / e.sd, (e.cuts[k] - e.centre) / e.sd);
    }
    case Shape::atLeast:
        return logNormalCdf((logOf(e.centre) - logOf(value)) / e.sd);
    }
    return 0.0;
}

std::optional<double> evened(const Expectation& e, double value)
{
    const auto inverseSinh = [](double x) { return x < 0.0 ? -naturalLog(std::sqrt(x * x + 1.0) - x) : naturalLog(x + std::sqrt(x * x + 1.0)); };
    switch (e.shape) {
    case Shape::censored:
        if (value <= e.low || value >= e.high) return std::nullopt;
        [[fallthrough]];
    case Shape::normal:
        if (!(e.constant > 0.0)) return std::nullopt;
        return e.share > 0.0 ? inverseSinh(e.share * value / e.constant) / e.share : value / e.constant;
    case Shape::logNormal:
        return logOf(value) / e.sd;
    case Shape::negativeBinomial:
    case Shape::ordered:
    case Shape::atLeast:
        break;
    }
    return std::nullopt;
}

Moments moments(const Expectation& e)
{
    switch (e.shape) {
    case Shape::normal:
        return {e.centre, e.sd * e.sd};
    case Shape::censored: {
        const double a = (e.low - e.centre) / e.sd;
        const double b = (e.high - e.centre) / e.sd;
        const double below = normalCdf(a);
        const double above = 1.0 - normalCdf(b);
        const auto bell = [](double x) { return exponential(-0.5 * x * x - halfLogTwoPi); };
        const double inside = 1.0 - below - above;
        const double first = e.centre * inside + e.sd * (bell(a) - bell(b));
        const double second = (e.centre * e.centre + e.sd * e.sd) * inside + e.sd * ((e.centre + e.low) * bell(a) - (e.centre + e.high) * bell(b));
        const double mean = first + e.low * below + e.high * above;
        return {mean, std::max(second + e.low * e.low * below + e.high * e.high * above - mean * mean, 0.0)};
    }
    case Shape::logNormal: {
        const double grow = exponential(0.5 * e.sd * e.sd);
        const double mean = e.centre * grow;
        return {mean, mean * mean * (grow * grow - 1.0)};
    }
    case Shape::negativeBinomial:
        return {e.centre, e.centre + e.centre * e.centre / e.sd};
    case Shape::ordered: {
        double mean = 0.0;
        double square = 0.0;
        for (int k = 0; k <= e.cutCount; ++k) {
            const double p = probabilityOfInterval(e, k);
            mean += p * k;
            square += p * k * k;
        }
        return {mean, std::max(square - mean * mean, 0.0)};
    }
    case Shape::atLeast:
        break;
    }
    return {0.0, 0.0};
}

double drawn(const Expectation& e, double normal, double uniform)
{
    switch (e.shape) {
    case Shape::normal:
        return e.centre + e.sd * normal;
    case Shape::censored:
        return std::clamp(e.centre + e.sd * normal, e.low, e.high);
    case Shape::logNormal:
        return e.centre * exponential(e.sd * normal);
    case Shape::negativeBinomial: {
        // By inversion: p(0) = (r/(r+μ))^r, p(k+1)/p(k) = (k+r)/(k+1) · μ/(r+μ).
        const double ratio = e.centre / (e.sd + e.centre);
        double p = model::power(1.0 - ratio, e.sd);
        double sum = p;
        int k = 0;
        while (uniform > sum && k < 100000) {
            p *= (k + e.sd) / (k + 1.0) * ratio;
            sum += p;
            ++k;
        }
        return k;
    }
    case Shape::ordered: {
        const double latent = e.centre + e.sd * normal;
        int k = 0;
        while (k < e.cutCount && latent >= e.cuts[k]) ++k;
        return k;
    }
    case Shape::atLeast:
        break;
    }
    return 0.0;
}

}
