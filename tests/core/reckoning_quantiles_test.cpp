#include "core/reckoning/quantiles.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <numeric>
#include <random>

namespace tierloam::reckoning {
namespace {

std::vector<double> shuffled(int n, unsigned seed)
{
    std::vector<double> values(static_cast<std::size_t>(n));
    std::iota(values.begin(), values.end(), 1.0);
    std::shuffle(values.begin(), values.end(), std::mt19937{seed});
    return values;
}

TEST(Quantiles, OfEqualMembersAreTheOrderStatistics)
{
    for (unsigned seed = 0; seed < 20; ++seed) {
        std::vector<double> values = shuffled(100, seed);
        EXPECT_EQ(band(values, {}), (Band{5, 50, 95}));
        values = shuffled(512, seed);
        EXPECT_EQ(band(values, {}), (Band{26, 256, 487}));
    }
}

TEST(Quantiles, WithEqualWeightsWrittenOutAreTheSame)
{
    std::vector<double> values = shuffled(128, 3);
    const std::vector<double> weights(128, 1.0 / 128);
    std::vector<double> same = values;
    EXPECT_EQ(band(values, weights), band(same, {}));
}

TEST(Quantiles, FollowTheWeights)
{
    std::vector<double> values{10, 20, 30};
    const std::vector<double> weights{0.9, 0.04, 0.06};
    EXPECT_EQ(band(values, weights), (Band{10, 10, 30}));
}

TEST(Quantiles, OfOneMemberOrNone)
{
    std::vector<double> one{7};
    EXPECT_EQ(band(one, {}), (Band{7, 7, 7}));
    std::vector<double> none;
    EXPECT_EQ(band(none, {}), (Band{0, 0, 0}));
}

TEST(Dates, BeyondTheHorizonAreMissingEachAlone)
{
    const Day start{std::chrono::year{2031} / 1 / 1};
    std::vector<int> days(100, never);
    for (std::size_t i = 0; i < 60; ++i) days[i] = static_cast<int>(i);
    const Dates dates_ = dates(days, {}, start, 365);
    EXPECT_EQ(dates_.p10, start + std::chrono::days{9});
    EXPECT_EQ(dates_.p50, start + std::chrono::days{49});
    EXPECT_EQ(dates_.p90, std::nullopt);
    EXPECT_FALSE(dates(std::vector<int>(50, never), {}, start, 365).any());
    EXPECT_FALSE(dates(std::vector<int>(50, 366), {}, start, 365).any());
    EXPECT_EQ(dates(std::vector<int>(50, 365), {}, start, 365).p90, start + std::chrono::days{365});
}

TEST(Probability, IsTheWeightOfThoseForWhomItHolds)
{
    EXPECT_DOUBLE_EQ(probability({1, 0, 0, 1}, {}), 0.5);
    EXPECT_DOUBLE_EQ(probability({1, 0, 0}, std::vector<double>{0.7, 0.2, 0.1}), 0.7);
    EXPECT_DOUBLE_EQ(probability({}, {}), 0.0);
}

}
}
