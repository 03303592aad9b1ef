// The filter on problems with exact answers: it must know no worms.
#include "core/model/random.h"
#include "core/reckoning/distribution.h"
#include "core/reckoning/filter.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numeric>

namespace tierloam::reckoning {
namespace {

constexpr std::size_t many = 8192;
constexpr std::uint64_t key = 0x5eed;

double normalAt(int step, int use, std::size_t i) { return model::standardNormal(model::streamOf(key, step, model::Use::look, use), static_cast<int>(i)); }

std::vector<double> normalsAt(int step, int use, std::size_t count)
{
    std::vector<double> normals(count);
    for (std::size_t i = 0; i < count; ++i) normals[i] = normalAt(step, use, i);
    return normals;
}

struct Moment { double mean, variance; };
Moment weighted(const std::vector<double>& x, const std::vector<double>& w)
{
    double mean = 0.0;
    double square = 0.0;
    for (std::size_t i = 0; i < x.size(); ++i) {
        mean += w[i] * x[i];
        square += w[i] * x[i] * x[i];
    }
    return {mean, square - mean * mean};
}

/// x' = 0.9 x + 0.5 n, y = x + 0.8 n; the filter's greatest error of mean and variance over 60 steps, beside Kalman's recursion
/// (Kalman 1960). `noiseScale` is what the filter believes of the observation's noise.
struct Gap { double mean = 0, variance = 0; int resampled = 0; };
Gap beside(double noiseScale)
{
    std::vector<double> x(many);
    for (std::size_t i = 0; i < many; ++i) x[i] = normalAt(-1, 0, i);
    LogWeights weights{many};
    double truth = 0.7;
    double mean = 0.0;
    double variance = 1.0;
    Gap gap;
    for (int t = 0; t < 60; ++t) {
        truth = 0.9 * truth + 0.5 * normalAt(t, 1, 0);
        const double y = truth + 0.8 * normalAt(t, 2, 0);
        mean *= 0.9;
        variance = 0.81 * variance + 0.25;
        const double gain = variance / (variance + 0.64);
        mean += gain * (y - mean);
        variance *= 1.0 - gain;

        std::vector<double> log(many);
        for (std::size_t i = 0; i < many; ++i) {
            x[i] = 0.9 * x[i] + 0.5 * normalAt(t, 3, i);
            Expectation expected;
            expected.centre = x[i];
            expected.sd = 0.8 * noiseScale;
            log[i] = logDensity(expected, y);
        }
        const Update update = reckoning::update(weights, log, model::uniform(model::streamOf(key, t, model::Use::resample), 0),
            [&](std::span<const int> ancestors, std::span<const double>) {
                const std::vector<double> before = x;
                for (std::size_t i = 0; i < many; ++i) x[i] = before[static_cast<std::size_t>(ancestors[i])];
            });
        gap.resampled += update.resampled ? 1 : 0;
        const Moment found = weighted(x, weights.normalised());
        gap.mean = std::max(gap.mean, std::abs(found.mean - mean));
        gap.variance = std::max(gap.variance, std::abs(found.variance - variance) / variance);
    }
    return gap;
}

TEST(Filter, MatchesKalmanOnALinearGaussianToy)
{
    // Monte-Carlo error of a mean: 0.5/√(8192 · ⅓) ≈ 0.01; 60 steps, so 4 of them.
    const Gap gap = beside(1.0);
    EXPECT_LT(gap.mean, 0.04);
    EXPECT_LT(gap.variance, 0.12);
    EXPECT_GT(gap.resampled, 5);
    const Gap wrong = beside(0.5); // half the noise
    EXPECT_GT(wrong.mean, 0.15);
    EXPECT_GT(wrong.variance, 0.3);
}

/// Two rows, one read with noise of variance R: the members' mean and covariance beside Kalman's, after one value that is told in `parts`.
TEST(MoveTowards, MatchesKalmanAndSharesAValueOut)
{
    constexpr std::size_t n = many;
    Crew crew{2};
    for (const int parts : {1, 4}) {
        std::vector<double> z(2 * n), expected(n);
        for (std::size_t i = 0; i < n; ++i) {
            z[i] = normalAt(1, 30, i);
            z[n + i] = 0.8 * z[i] + 0.6 * normalAt(1, 31, i);
        }
        const std::vector<double> weights(n, 1.0 / n);
        const double noise = 0.5;
        const double read = 1.4;
        for (int part = 0; part < parts; ++part) {
            for (std::size_t i = 0; i < n; ++i) expected[i] = z[i];
            moveTowards(z, weights, 2, expected, read, noise * parts, normalsAt(2 + part, 32, weights.size()), crew);
        }
        const std::vector<double> first(z.begin(), z.begin() + n), second(z.begin() + n, z.end());
        const double gain = 1.0 / (1.0 + noise); // of the first row, whose variance is 1; the second follows by its covariance of 0.8
        EXPECT_NEAR(weighted(first, weights).mean, gain * read, 0.04) << parts;
        EXPECT_NEAR(weighted(first, weights).variance, 1.0 - gain, 0.03) << parts;
        EXPECT_NEAR(weighted(second, weights).mean, 0.8 * gain * read, 0.04) << parts;
        EXPECT_NEAR(weighted(second, weights).variance, 1.0 - 0.64 * gain, 0.04) << parts;
    }
}

TEST(MoveTowards, LeavesWhatGoesWithItByChanceAloneAndTakesTheImpossibleAsFarAsItIsLikely)
{
    constexpr std::size_t n = 512;
    Crew crew{2};
    std::vector<double> z(n), expected(n);
    double square = 0.0;
    double moved = 0.0;
    const std::vector<double> weights(n, 1.0 / n);
    for (int trial = 0; trial < 40; ++trial) {
        for (std::size_t i = 0; i < n; ++i) {
            z[i] = normalAt(trial, 40, i);
            expected[i] = normalAt(trial, 41, i);
        }
        const std::vector<double> before = z;
        moveTowards(z, weights, 1, expected, 2.0, 0.25, normalsAt(trial, 42, weights.size()), crew);
        for (std::size_t i = 0; i < n; ++i) {
            moved += (z[i] - before[i]) * (z[i] - before[i]) / n / 40;
            square += z[i] * z[i] / n / 40;
        }
    }
    EXPECT_LT(moved, 0.004);
    EXPECT_NEAR(square, 1.0, 0.03);
    // 40 sd away: the mean goes a third of the way to three sd, not to the value.
    for (std::size_t i = 0; i < n; ++i) z[i] = expected[i] = normalAt(1, 43, i);
    moveTowards(z, weights, 1, expected, 40.0, 0.25, normalsAt(1, 44, weights.size()), crew);
    EXPECT_LT(weighted(z, weights).mean, 4.0);
    EXPECT_GT(weighted(z, weights).mean, 0.1);
    EXPECT_GT(weighted(z, weights).variance, 0.8); // and little is learned of it
}

TEST(Filter, MatchesTheForwardAlgorithmOnATwoStateToy)
{
    // Hidden Markov chain, stay 0.95; the signal is read right in 4 of 5. Exact forward recursion (Rabiner 1989).
    std::vector<double> state(many);
    for (std::size_t i = 0; i < many; ++i) state[i] = i % 2 == 0 ? 0.0 : 1.0;
    LogWeights weights{many};
    double exact = 0.5;
    double greatest = 0.0;
    int truth = 1;
    for (int t = 0; t < 80; ++t) {
        if (model::uniform(model::streamOf(key, t, model::Use::look, 7), 0) < 0.05) truth = 1 - truth;
        const bool right = model::uniform(model::streamOf(key, t, model::Use::look, 8), 0) < 0.8;
        const int seen = right ? truth : 1 - truth;
        exact = exact * 0.95 + (1.0 - exact) * 0.05;
        const double one = exact * (seen == 1 ? 0.8 : 0.2);
        const double zero = (1.0 - exact) * (seen == 0 ? 0.8 : 0.2);
        exact = one / (one + zero);
        std::vector<double> log(many);
        for (std::size_t i = 0; i < many; ++i) {
            if (model::uniform(model::streamOf(key, t, model::Use::look, 9), static_cast<int>(i)) < 0.05) state[i] = 1.0 - state[i];
            log[i] = std::log(state[i] == seen ? 0.8 : 0.2);
        }
        update(weights, log, model::uniform(model::streamOf(key, t, model::Use::resample), 0), [&](std::span<const int> ancestors, std::span<const double>) {
            const std::vector<double> before = state;
            for (std::size_t i = 0; i < many; ++i) state[i] = before[static_cast<std::size_t>(ancestors[i])];
        });
        greatest = std::max(greatest, std::abs(weighted(state, weights.normalised()).mean - exact));
    }
    EXPECT_LT(greatest, 0.03);
    EXPECT_GT(greatest, 0.0);
}

TEST(Systematic, GivesEachMemberItsShareToWithinOneAndMovesAsFewAsItCan)
{
    const std::vector<double> weights{0.5, 0.0, 0.1, 0.15, 0.25, 0.0, 0.0, 0.0};
    for (const double u : {0.01, 0.37, 0.5, 0.99}) {
        const std::vector<int> ancestors = systematic(weights, u);
        ASSERT_EQ(ancestors.size(), weights.size());
        for (std::size_t i = 0; i < weights.size(); ++i) {
            const auto offspring = std::count(ancestors.begin(), ancestors.end(), static_cast<int>(i));
            EXPECT_LT(std::abs(static_cast<double>(offspring) - 8.0 * weights[i]), 1.0) << i << " at " << u;
            if (offspring > 0) {
                EXPECT_EQ(ancestors[i], static_cast<int>(i));
            }
        }
    }
    EXPECT_EQ(systematic(std::vector<double>(4, 0.25), 0.5), (std::vector<int>{0, 1, 2, 3}));
    EXPECT_EQ(systematic({{0.0, 1.0, 0.0}}, 0.999), (std::vector<int>{1, 1, 1}));
}

TEST(LiuWest, KeepsMeanAndCovarianceOfWhatIsResampled)
{
    constexpr std::size_t n = 4096;
    std::vector<double> z(2 * n), weights(n);
    double sum = 0.0;
    for (std::size_t i = 0; i < n; ++i) {
        z[i] = normalAt(1, 20, i);
        z[n + i] = 0.8 * z[i] + 0.6 * normalAt(1, 21, i);
        sum += weights[i] = std::exp(0.7 * z[i]);
    }
    for (double& w : weights) w /= sum;
    const std::vector<double> before = z;
    const std::vector<int> ancestors = systematic(weights, 0.4);
    for (std::size_t r = 0; r < 2; ++r)
        for (std::size_t i = 0; i < n; ++i) z[r * n + i] = before[r * n + static_cast<std::size_t>(ancestors[i])];
    const std::vector<double> resampled = z;
    Crew crew{2};
    liuWest(z, before, weights, 2, 0.9, [](std::size_t r, std::span<double> out) { std::ranges::copy(normalsAt(2, static_cast<int>(r), out.size()), out.begin()); }, crew);
    const auto moment = [&](const std::vector<double>& of, std::size_t r, std::size_t s) {
        double a = 0.0, b = 0.0, ab = 0.0;
        for (std::size_t i = 0; i < n; ++i) {
            a += of[r * n + i];
            b += of[s * n + i];
            ab += of[r * n + i] * of[s * n + i];
        }
        return std::pair{a / n, ab / n - a / n * (b / n)};
    };
    EXPECT_NEAR(moment(z, 0, 0).first, 0.7, 0.06); // e^{0.7 z} shifts a standard normal by 0.7
    for (const auto& [r, s] : {std::pair<std::size_t, std::size_t>{0, 0}, {0, 1}, {1, 1}}) {
        EXPECT_NEAR(moment(z, r, s).first, moment(resampled, r, s).first, 0.03);
        EXPECT_NEAR(moment(z, r, s).second, moment(resampled, r, s).second, 0.06);
    }
    double moved = 0.0;
    for (std::size_t i = 0; i < n; ++i) moved += std::abs(z[i] - resampled[i]);
    EXPECT_GT(moved / n, 0.1);
    // A plain jitter without the pull to the mean widens what it moves: the check above would see it.
    std::vector<double> plain = resampled;
    for (std::size_t i = 0; i < n; ++i) plain[i] += std::sqrt(1 - 0.81) * normalAt(2, 0, i);
    EXPECT_GT(moment(plain, 0, 0).second, moment(resampled, 0, 0).second + 0.1);
}

TEST(Update, TempersWhatNoMemberExplains)
{
    LogWeights weights{512};
    std::vector<double> log(512);
    for (std::size_t i = 0; i < 512; ++i) log[i] = -40.0 * static_cast<double>(i);
    bool inherited = false;
    const Update update = reckoning::update(weights, log, 0.5, [&](std::span<const int>, std::span<const double> before) {
        inherited = true;
        EXPECT_NEAR(1.0 / std::inner_product(before.begin(), before.end(), before.begin(), 0.0), 64.0, 2.0);
    });
    EXPECT_TRUE(inherited);
    EXPECT_LT(update.effectiveSize, 10.0);
    EXPECT_LT(update.exponent, 1.0);
    EXPECT_TRUE(weights.equal());
}

TEST(LogWeights, StayFiniteOverYearsAndWhenEveryMemberIsRuledOut)
{
    LogWeights weights{4};
    const std::vector<double> log{-1.0, -2.0, -1.0, -3.0};
    for (int i = 0; i < 100000; ++i) weights.add(log);
    EXPECT_NEAR(weights.normalised()[0], 0.5, 1e-12);
    EXPECT_NEAR(weights.effectiveSize(), 2.0, 1e-9);
    const double never = -std::numeric_limits<double>::infinity();
    weights.add(std::vector<double>(4, never));
    EXPECT_EQ(weights.effectiveSize(), 0.0);
    for (const double w : weights.normalised()) EXPECT_EQ(w, 0.25);
}

TEST(Distribution, CumulativeNormalAgreesWithTheStandardTable)
{
    // C library's erfc, and tables of the normal distribution (Abramowitz & Stegun 1964, table 26.1, from memory): Φ(1.96) = 0.9750021.
    EXPECT_NEAR(normalCdf(1.96), 0.9750021, 1e-7);
    for (double x = -8.0; x <= 8.0; x += 0.17) {
        const double exact = 0.5 * std::erfc(-x / std::sqrt(2.0));
        EXPECT_NEAR(normalCdf(x) / exact, 1.0, 3e-5) << x;
        EXPECT_NEAR(logNormalCdf(x), std::log(exact), 3e-5) << x;
    }
    EXPECT_NEAR(logNormalCdf(-40.0), -804.608442, 1e-3); // asymptotic expansion by hand: −800 − ln 40 − ½ ln 2π − 1/1600
}

TEST(Distribution, EvenedValuesAreReadWithOneVariance)
{
    Expectation depth{Expectation::Shape::censored, 3.0, 0.67, 0.0, 11.0, nullptr, 0, 0.2, 0.3};
    Expectation mass{Expectation::Shape::logNormal, 0.4, 0.15, 0, 0, nullptr, 0, 0, 0};
    for (const Expectation& e : {depth, mass})
        for (const double centre : {1.5, 3.0, 6.0}) {
            Expectation at = e;
            at.centre = centre;
            if (e.constant > 0.0) at.sd = std::sqrt(0.04 * centre * centre + 0.09);
            double sum = 0.0, square = 0.0;
            constexpr int n = 20000;
            for (int i = 0; i < n; ++i) {
                const double gap = evened(at, std::min(drawn(at, normalAt(6, 1, static_cast<std::size_t>(i)), 0.5), 10.99)).value_or(0.0) - *evened(at, centre);
                sum += gap;
                square += gap * gap;
            }
            EXPECT_NEAR(sum / n, 0.0, 0.15);
            EXPECT_NEAR(square / n, 1.0, 0.15) << centre;
        }
    EXPECT_FALSE(evened(depth, 0.0)); // at the end of its range
    const double cuts[] = {0.0};
    EXPECT_FALSE(evened({Expectation::Shape::ordered, 0.2, 0.6, 0, 0, cuts, 1, 0, 0}, 1));
}

TEST(Distribution, DrawsFollowTheDensityTheyComeFrom)
{
    const double cuts[] = {-0.5, 0.7};
    Expectation normal, censored, logNormal, counts, ordered;
    normal.centre = 3.0;
    normal.sd = 2.0;
    censored = {Expectation::Shape::censored, 8.0, 10.0, 0.0, 100.0, nullptr, 0};
    logNormal = {Expectation::Shape::logNormal, 0.4, 0.3, 0, 0, nullptr, 0};
    counts = {Expectation::Shape::negativeBinomial, 6.0, 3.0, 0, 0, nullptr, 0};
    ordered = {Expectation::Shape::ordered, 0.2, 0.6, 0, 0, cuts, 2};
    for (const Expectation& e : {normal, censored, logNormal, counts, ordered}) {
        double sum = 0.0, square = 0.0;
        constexpr int n = 40000;
        for (int i = 0; i < n; ++i) {
            const double x = drawn(e, normalAt(5, 1, static_cast<std::size_t>(i)), model::uniform(model::streamOf(key, 5, model::Use::look, 2), i));
            sum += x;
            square += x * x;
        }
        const Moments expected = moments(e);
        const double mean = sum / n;
        EXPECT_NEAR(mean, expected.mean, 4.0 * std::sqrt(expected.variance / n));
        EXPECT_NEAR((square / n - mean * mean) / expected.variance, 1.0, 0.06);
    }
    // Point masses and intervals sum to one.
    double total = 0.0;
    for (int k = 0; k <= 2; ++k) total += std::exp(logDensity(ordered, k));
    EXPECT_NEAR(total, 1.0, 1e-6);
    EXPECT_NEAR(std::exp(logDensity(censored, 0.0)), normalCdf(-0.8), 1e-9);
}

}
}
