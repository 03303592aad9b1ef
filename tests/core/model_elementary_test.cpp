// Our own elementary functions and random numbers against the C library and against shape.
#include "core/model/cardinal.h"
#include "core/model/elementary.h"
#include "core/model/ensemble.h"
#include "core/model/masses.h"
#include "core/model/random.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>
#include <set>
#include <vector>

namespace tierloam::model {
namespace {

TEST(Elementary, ExponentialAgreesWithTheCLibrary)
{
    std::mt19937_64 random{1};
    std::uniform_real_distribution<double> any{-690.0, 690.0};
    for (int i = 0; i < 100000; ++i) {
        const double x = i % 2 != 0 ? any(random) : any(random) / 100.0;
        EXPECT_NEAR(exponential(x) / std::exp(x), 1.0, 2e-15) << x;
    }
    EXPECT_EQ(exponential(0.0), 1.0);
}

TEST(Elementary, RoughExponentialIsExactToABillionth)
{
    std::mt19937_64 random{5};
    std::uniform_real_distribution<double> any{-60.0, 60.0};
    for (int i = 0; i < 100000; ++i) {
        const double x = any(random);
        EXPECT_NEAR(roughExponential(x) / std::exp(x), 1.0, 1e-9) << x;
    }
    EXPECT_EQ(roughExponential(0.0), 1.0);
}

TEST(Elementary, LogarithmAgreesWithTheCLibrary)
{
    std::mt19937_64 random{2};
    std::uniform_real_distribution<double> exponent{-280.0, 280.0};
    for (int i = 0; i < 100000; ++i) {
        const double x = std::pow(10.0, i % 2 != 0 ? exponent(random) : exponent(random) / 200.0);
        EXPECT_NEAR(naturalLog(x), std::log(x), 2e-15 * std::max(1.0, std::fabs(std::log(x)))) << x;
    }
    EXPECT_EQ(naturalLog(1.0), 0.0);
}

TEST(Elementary, LossFactorIsSecondOrderAndBelowOne)
{
    for (const double x : {1e-9, 1e-3, 0.01, 0.1}) EXPECT_NEAR(lossFactor(x), 1.0 - std::exp(-x), 0.2 * x * x * x + 1e-16) << x;
    for (const double x : {1.0, 10.0, 1e6}) {
        EXPECT_GT(lossFactor(x), 0.0);
        EXPECT_LE(lossFactor(x), 1.0);
    }
    EXPECT_EQ(lossFactor(0.0), 0.0);
}

TEST(Elementary, FinerLossFactorIsThirdOrderAndBelowOne)
{
    for (const double x : {1e-9, 1e-3, 0.01, 0.1, 0.4}) {
        EXPECT_NEAR(finerLossFactor(x), 1.0 - std::exp(-x), 0.05 * x * x * x * x + 1e-16) << x;
        EXPECT_LE(finerLossFactor(x), 1.0);
    }
    for (const double x : {1.0, 10.0, 1e6}) {
        EXPECT_GT(finerLossFactor(x), lossFactor(x));
        EXPECT_LE(finerLossFactor(x), 1.0);
    }
    EXPECT_EQ(finerLossFactor(0.0), 0.0);
}

TEST(Elementary, MergedLossFactorsAgreeWithTheSingleOne)
{
    std::mt19937_64 random{3};
    std::uniform_real_distribution<double> exponent{-8.0, 4.0};
    for (int i = 0; i < 10000; ++i) {
        const double x = std::pow(10.0, exponent(random)), y = std::pow(10.0, exponent(random)), pool = std::pow(10.0, exponent(random));
        double ofX = 0.0, ofY = 0.0;
        lossFactors(x, y, ofX, ofY);
        EXPECT_NEAR(ofX / lossFactor(x), 1.0, 2e-15) << x;
        EXPECT_NEAR(ofY / lossFactor(y), 1.0, 2e-15) << y;
        EXPECT_NEAR(lossFactor(x * pool, pool) / lossFactor(x), 1.0, 2e-15) << x;
        EXPECT_LE(ofX, 1.0);
    }
    double all = 0.0, none = 1.0;
    lossFactors(1e30, 0.0, all, none);
    EXPECT_EQ(all, 1.0);
    EXPECT_EQ(none, 0.0);
}

TEST(Elementary, InverseCubeRootAgreesWithTheCLibrary)
{
    std::mt19937_64 random{4};
    std::uniform_real_distribution<double> exponent{-6.0, 6.0};
    for (int i = 0; i < 100000; ++i) {
        const double x = std::pow(10.0, exponent(random));
        EXPECT_NEAR(inverseCubeRoot(x) * std::cbrt(x), 1.0, 1e-14) << x;
    }
}

TEST(Cardinal, IsOneAtTheBestAndZeroOutside)
{
    EXPECT_DOUBLE_EQ(cardinal(26, 3, 26, 36), 1.0);
    EXPECT_EQ(cardinal(3, 3, 26, 36), 0.0);
    EXPECT_EQ(cardinal(36, 3, 26, 36), 0.0);
    EXPECT_EQ(cardinal(-10, 3, 26, 36), 0.0);
    EXPECT_EQ(cardinal(50, 3, 26, 36), 0.0);
    for (double t = 4; t < 26; t += 1) EXPECT_LT(cardinal(t, 3, 26, 36), cardinal(t + 1, 3, 26, 36)) << t;
    for (double t = 26; t < 36; t += 1) EXPECT_GT(cardinal(t, 3, 26, 36), cardinal(t + 1, 3, 26, 36)) << t;
}

// No drawn member of any species has a curve that is negative or passes 1.02, which Rosso's does when its best lies below the middle.
TEST(Cardinal, OfDrawnMembersStaysBetweenNothingAndTheBest)
{
    for (const char* species : {"", "Eudrilus eugeniae", "Perionyx excavatus"}) {
        const Ensemble stack = Ensemble::drawn(11, 1024, species, 20);
        for (int i = 0; i < stack.members(); ++i)
            for (double t = -5.0; t < 45.0; t += 0.5) {
                const double g = cardinal(t, stack.parameter(Parameter::growthColdest, i), stack.parameter(Parameter::growthBest, i),
                                          stack.parameter(Parameter::growthHottest, i));
                ASSERT_GE(g, 0.0) << species << " member " << i << " at " << t;
                ASSERT_LE(g, 1.02) << species << " member " << i << " at " << t;
            }
    }
    EXPECT_LT(cardinal(13.0, 12.0, 23.0, 39.0), 0.0) << "the fault that the limit keeps out";
}

TEST(MassClasses, AreGeometricWithMaturityInsideOne)
{
    const MassClassTable& table = massClassTable();
    EXPECT_NEAR(table.kilograms[0], 4e-6, 1e-18);
    EXPECT_NEAR(table.kilograms[massClasses - 1], 1.6e-3, 1e-15);
    int partly = 0;
    for (int i = 0; i < massClasses; ++i) {
        EXPECT_NEAR(table.twoThirds[i], std::pow(table.kilograms[i] * 1000.0, 2.0 / 3.0), 1e-12);
        partly += table.adultShare[i] > 0.0 && table.adultShare[i] < 1.0 ? 1 : 0;
        if (table.kilograms[i] * 1.23 < maturity) { EXPECT_EQ(table.adultShare[i], 0.0); }
        if (table.kilograms[i] / 1.23 > maturity) { EXPECT_EQ(table.adultShare[i], 1.0); }
    }
    EXPECT_EQ(partly, 1);
    // The step passes over the laying of classes without adults.
    for (int i = 0; i < firstAdultClass; ++i) EXPECT_EQ(table.adultShare[i], 0.0);
    EXPECT_GT(table.adultShare[firstAdultClass], 0.0);
}

TEST(MassClasses, NeighboursKeepNumberAndMass)
{
    const MassClassTable& table = massClassTable();
    for (const double kg : {4.1e-6, 5.3e-6, 50e-6, 250e-6, 400e-6, 1.5e-3}) {
        const Neighbours to = neighboursOf(kg);
        EXPECT_NEAR(to.toLower + to.toUpper, 1.0, 1e-12);
        EXPECT_NEAR(to.toLower * table.kilograms[to.lower] + to.toUpper * table.kilograms[to.lower + 1], kg, 1e-15);
    }
}

// Pinned: the same journal gives the same numbers for ever. A change here changes every household's estimates.
TEST(Random, NumbersArePinned)
{
    const std::uint64_t stream = streamOf(0x1234, 7, Use::noise);
    EXPECT_EQ(stream, 0xe6b59259cd57fb24ULL);
    EXPECT_EQ(uniform(stream, 0), 0.87271255757866639);
    EXPECT_EQ(standardNormal(stream, 3), 0.86340785704866685);
}

TEST(Random, StreamsDifferInEveryPartOfTheirKey)
{
    std::set<std::uint64_t> seen;
    for (std::uint64_t key : {1, 2})
        for (int day : {-1, 0, 1, 4000})
            for (Use use : {Use::parameter, Use::noise, Use::volumeTyped, Use::dryShare})
                for (int number : {0, 1, 5}) seen.insert(streamOf(key, day, use, number));
    EXPECT_EQ(seen.size(), 2u * 4u * 4u * 3u);
}

TEST(Random, UniformsFillTheirRange)
{
    // χ² over 64 cells, 63 degrees of freedom: 99.9 % point 103.4 (from memory of the tables); a fixed stream, so it cannot flicker.
    std::vector<int> cells(64, 0);
    constexpr int draws = 64000;
    for (int i = 0; i < draws; ++i) ++cells[static_cast<std::size_t>(uniform(streamOf(5, i / 512, Use::resample), i % 512) * 64.0)];
    double chi = 0.0;
    for (const int count : cells) chi += (count - 1000.0) * (count - 1000.0) / 1000.0;
    EXPECT_LT(chi, 103.4);
    EXPECT_GT(chi, 30.0) << "suspiciously even";
}

TEST(Random, NormalsHaveTheirMomentsAndShape)
{
    double sum = 0, squares = 0, cubes = 0, fourths = 0;
    int beyondTwo = 0;
    constexpr int draws = 200000;
    for (int i = 0; i < draws; ++i) {
        const double z = standardNormal(streamOf(9, i / 512, Use::volumeTyped), i % 512);
        sum += z;
        squares += z * z;
        cubes += z * z * z;
        fourths += z * z * z * z;
        beyondTwo += std::fabs(z) > 2.0 ? 1 : 0;
    }
    EXPECT_NEAR(sum / draws, 0.0, 4.0 / std::sqrt(draws));
    EXPECT_NEAR(squares / draws, 1.0, 4.0 * std::sqrt(2.0 / draws));
    EXPECT_NEAR(cubes / draws, 0.0, 4.0 * std::sqrt(15.0 / draws));
    EXPECT_NEAR(fourths / draws, 3.0, 4.0 * std::sqrt(96.0 / draws));
    EXPECT_NEAR(beyondTwo / static_cast<double>(draws), 0.0455, 4.0 * std::sqrt(0.0455 * 0.9545 / draws));
}

TEST(Random, BlocksAndSinglesAgree)
{
    const std::uint64_t stream = streamOf(3, 3, Use::jitter);
    Members block;
    standardNormals(stream, 2, block);
    for (int m = 0; m < lanes; ++m) EXPECT_EQ(block[m], standardNormal(stream, 2 * lanes + m));
}

}
}
