#include "core/reckoning/filter.h"

#include "core/model/elementary.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <numeric>

namespace tierloam::reckoning {

namespace {

constexpr double ruledOut = -std::numeric_limits<double>::infinity();

/// e^(x − top), exactly 0 for what is ruled out.
double relative(double logWeight, double top)
{
    const double below = logWeight - top;
    return below < -600.0 ? 0.0 : model::exponential(below);
}

double effective(std::span<const double> log)
{
    const double top = *std::max_element(log.begin(), log.end());
    if (!(top > ruledOut)) return 0.0;
    double sum = 0.0;
    double squares = 0.0;
    for (const double each : log) {
        const double w = relative(each, top);
        sum += w;
        squares += w * w;
    }
    return sum * sum / squares;
}

/// Lower Cholesky factor, row by row; a direction in which nothing varies gives a column of zeros.
std::vector<double> cholesky(std::vector<double> a, std::size_t n)
{
    for (std::size_t j = 0; j < n; ++j) {
        double pivot = a[j * n + j];
        for (std::size_t k = 0; k < j; ++k) pivot -= a[j * n + k] * a[j * n + k];
        const double root = pivot > 1e-14 ? std::sqrt(pivot) : 0.0;
        a[j * n + j] = root;
        for (std::size_t i = j + 1; i < n; ++i) {
            double sum = a[i * n + j];
            for (std::size_t k = 0; k < j; ++k) sum -= a[i * n + k] * a[j * n + k];
            a[i * n + j] = root > 0.0 ? sum / root : 0.0;
        }
    }
    return a;
}

}

void LogWeights::add(std::span<const double> logLikelihood, double exponent)
{
    double top = ruledOut;
    for (std::size_t i = 0; i < log_.size(); ++i) {
        log_[i] += exponent * logLikelihood[i];
        top = std::max(top, log_[i]);
    }
    if (top > ruledOut)
        for (double& each : log_) each -= top; // the sum of years stays near 0
    equal_ = false;
}

void LogWeights::reset()
{
    std::fill(log_.begin(), log_.end(), 0.0);
    equal_ = true;
}

void LogWeights::restore(std::vector<double> log)
{
    log_ = std::move(log);
    equal_ = std::all_of(log_.begin(), log_.end(), [](double each) { return each == 0.0; });
}

std::vector<double> LogWeights::normalised() const
{
    std::vector<double> weights(log_.size(), 1.0 / static_cast<double>(log_.size()));
    if (equal_ || log_.empty()) return weights;
    const double top = *std::max_element(log_.begin(), log_.end());
    if (!(top > ruledOut)) return weights;
    double sum = 0.0;
    for (std::size_t i = 0; i < log_.size(); ++i) sum += weights[i] = relative(log_[i], top);
    for (double& each : weights) each /= sum;
    return weights;
}

double LogWeights::effectiveSize() const { return equal_ ? static_cast<double>(log_.size()) : effective(log_); }

double LogWeights::effectiveSizeWith(std::span<const double> logLikelihood, double exponent) const
{
    std::vector<double> log(log_);
    for (std::size_t i = 0; i < log.size(); ++i) log[i] += exponent * logLikelihood[i];
    return effective(log);
}

std::vector<int> systematic(std::span<const double> weights, double u)
{
    const std::size_t n = weights.size();
    std::vector<int> offspring(n, 0);
    double sum = 0.0;
    std::size_t next = 0; // points (next + u)/n
    for (std::size_t i = 0; i < n; ++i) {
        sum += weights[i];
        while (next < n && (static_cast<double>(next) + u) / static_cast<double>(n) < sum) {
            ++offspring[i];
            ++next;
        }
    }
    // Rounding may leave the last points beyond the sum: they are the last member's that has weight.
    if (next < n) {
        std::size_t last = n - 1;
        while (last > 0 && weights[last] <= 0.0) --last;
        offspring[last] += static_cast<int>(n - next);
    }
    std::vector<int> ancestors(n, -1);
    for (std::size_t i = 0; i < n; ++i)
        if (offspring[i] > 0) {
            ancestors[i] = static_cast<int>(i);
            --offspring[i];
        }
    std::size_t giver = 0;
    for (int& ancestor : ancestors) {
        if (ancestor >= 0) continue;
        while (offspring[giver] == 0) ++giver;
        ancestor = static_cast<int>(giver);
        --offspring[giver];
    }
    return ancestors;
}

void liuWest(std::span<double> z, std::span<const double> before, std::span<const double> weights, std::size_t rows, double a,
             const std::function<void(std::size_t, std::span<double>)>& normals, Crew& crew)
{
    const std::size_t members = weights.size();
    const int pieces = static_cast<int>(rows);
    std::vector<double> mean(rows, 0.0);
    std::vector<double> centred(members * rows); // member by member, so that a sum over members runs along all rows at once
    std::vector<double> n(rows * members);
    crew.each(pieces, [&](int piece) {
        const std::size_t r = static_cast<std::size_t>(piece);
        for (std::size_t i = 0; i < members; ++i) mean[r] += weights[i] * before[r * members + i];
        for (std::size_t i = 0; i < members; ++i) centred[i * rows + r] = before[r * members + i] - mean[r];
        normals(r, std::span{n}.subspan(r * members, members));
    });
    std::vector<double> covariance(rows * rows, 0.0);
    crew.each(pieces, [&](int piece) {
        const std::size_t r = static_cast<std::size_t>(piece);
        double* const sum = covariance.data() + r * rows;
        for (std::size_t i = 0; i < members; ++i) {
            const double* const of = centred.data() + i * rows;
            const double weighted = weights[i] * of[r];
            for (std::size_t s = 0; s <= r; ++s) sum[s] += weighted * of[s];
        }
    });
    const std::vector<double> factor = cholesky(std::move(covariance), rows);
    const double spread = std::sqrt(1.0 - a * a);
    constexpr std::size_t abreast = 64;
    crew.each(static_cast<int>((members + abreast - 1) / abreast), [&](int piece) {
        const std::size_t from = static_cast<std::size_t>(piece) * abreast;
        const std::size_t count = std::min(abreast, members - from);
        std::array<double, abreast> move;
        for (std::size_t r = 0; r < rows; ++r) {
            move.fill(0.0);
            for (std::size_t s = 0; s <= r; ++s) {
                const double by = factor[r * rows + s];
                const double* const of = n.data() + s * members + from;
                for (std::size_t i = 0; i < count; ++i) move[i] += by * of[i];
            }
            double* const value = z.data() + r * members + from;
            for (std::size_t i = 0; i < count; ++i) value[i] = mean[r] + a * (value[i] - mean[r]) + spread * move[i];
        }
    });
}

void moveTowards(std::span<double> z, std::span<const double> weights, std::size_t rows, std::span<const double> expected, double read, double noiseVariance,
                 std::span<const double> normals, Crew& crew)
{
    constexpr std::size_t folds = 4;
    const std::size_t members = weights.size();
    double mean = 0.0;
    double squares = 0.0;
    for (std::size_t i = 0; i < members; ++i) {
        mean += weights[i] * expected[i];
        squares += weights[i] * weights[i];
    }
    std::vector<double> off(members); // w·(h − mean)
    std::array<double, folds> weight{}, variance{};
    for (std::size_t i = 0; i < members; ++i) {
        const double d = expected[i] - mean;
        off[i] = weights[i] * d;
        weight[i % folds] += weights[i];
        variance[i % folds] += off[i] * d;
    }
    const double all = std::accumulate(variance.begin(), variance.end(), 0.0);
    if (!(all > 0.0)) return;
    const double far = (read - mean) * (read - mean) / (surprising * surprising);
    const double noise = std::max(noiseVariance, far - all);
    // What each member is told, the noise centred so that the mean moves by what was read alone.
    std::vector<double> told(members);
    double noiseMean = 0.0;
    for (std::size_t i = 0; i < members; ++i) noiseMean += weights[i] * normals[i];
    for (std::size_t i = 0; i < members; ++i) told[i] = read + std::sqrt(noise) * (normals[i] - noiseMean) - expected[i];
    crew.each(static_cast<int>(rows), [&](int r) {
        double* const row = z.data() + static_cast<std::size_t>(r) * members;
        // Members by fours, a fold each: sums that do not wait for each other.
        std::array<double, folds> means{}, rowVariance{}, covariance{};
        for (std::size_t i = 0; i < members; i += folds)
            for (std::size_t f = 0; f < folds; ++f) means[f] += weights[i + f] * row[i + f];
        const double rowMean = std::accumulate(means.begin(), means.end(), 0.0);
        for (std::size_t i = 0; i < members; i += folds)
            for (std::size_t f = 0; f < folds; ++f) {
                const double d = row[i + f] - rowMean;
                rowVariance[f] += weights[i + f] * d * d;
                covariance[f] += off[i + f] * d;
            }
        const double rowAll = std::accumulate(rowVariance.begin(), rowVariance.end(), 0.0);
        const double covarianceAll = std::accumulate(covariance.begin(), covariance.end(), 0.0);
        std::array<double, folds> gain{};
        for (std::size_t f = 0; f < folds; ++f) {
            const double rest = 1.0 - weight[f];
            const double c = covarianceAll - covariance[f];
            const double v = all - variance[f];
            const double x = rowAll - rowVariance[f];
            if (!(rest > 0.0 && v > 0.0 && x > 0.0)) continue;
            const double correlation = c * c / (x * v);
            const double kept = std::max(0.0, 1.0 - squares / rest * (1.0 - correlation) / std::max(correlation, 1e-12));
            gain[f] = kept * c / (v + noise * rest);
        }
        for (std::size_t i = 0; i < members; i += folds)
            for (std::size_t f = 0; f < folds; ++f) row[i + f] += gain[f] * told[i + f];
    });
}

double temperedExponent(const LogWeights& weights, std::span<const double> logLikelihood, double wanted)
{
    if (weights.effectiveSizeWith(logLikelihood, 1.0) >= wanted) return 1.0;
    double low = 0.0;
    double high = 1.0;
    for (int halving = 0; halving < 30; ++halving) {
        const double middle = 0.5 * (low + high);
        (weights.effectiveSizeWith(logLikelihood, middle) >= wanted ? low : high) = middle;
    }
    return low;
}

Update update(LogWeights& weights, std::span<const double> logLikelihood, double u,
              const std::function<void(std::span<const int>, std::span<const double>)>& inherit)
{
    constexpr double tooFew = 10.0;
    constexpr double temperedShare = 0.125; // of the members stay after an observation that was tempered
    const double members = static_cast<double>(weights.size());
    Update result;
    result.effectiveSize = weights.effectiveSizeWith(logLikelihood, 1.0);
    if (result.effectiveSize < tooFew) result.exponent = temperedExponent(weights, logLikelihood, std::max(temperedShare * members, tooFew));
    weights.add(logLikelihood, result.exponent);
    if (weights.effectiveSize() < 0.5 * members) {
        const std::vector<double> before = weights.normalised();
        inherit(systematic(before, u), before);
        weights.reset();
        result.resampled = true;
    }
    return result;
}

}
