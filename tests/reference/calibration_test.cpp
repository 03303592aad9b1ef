// Simulation-based calibration (Talts, Betancourt, Simpson, Vehtari & Gelman 2018, arXiv:1804.06788): a household is drawn from the prior,
// its journal is written down, and the reckoning of that journal is asked for the truth. Ranks of the truth are uniform and 90 % bands hold
// it in 85 to 95 of 100. A filter that ignores the data keeps ranks of the state uniform; what it misses is asked as in Modrák et al. 2023
// (arXiv:2211.02383): the rank of the log-density of values that were read.
// 24 households with bounds for so few; 200 and their bounds with TIERLOAM_LONG (tests/long.sh), any number with TIERLOAM_HOUSEHOLDS.
#include "tests/support/households.h"

#include "core/model/random.h"
#include "core/reckoning/quantiles.h"

#include <gtest/gtest.h>

#include <atomic>
#include <cmath>
#include <cstdlib>
#include <thread>

namespace tierloam::tests {
namespace {

int ensembleSize()
{
    const char* wanted = std::getenv("TIERLOAM_MEMBERS");
    return wanted != nullptr ? std::atoi(wanted) : 512;
}

/// work(i) for each household, on two threads.
template <class Work>
void forEach(int number, Work work)
{
    std::atomic<int> next{0};
    const auto all = [&] {
        for (int i = next++; i < number; i = next++) work(i);
    };
    std::jthread other{all};
    all();
}

struct Series {
    std::vector<double> colony, castings, ratio, data, readyRank;
};

Series calibrate(int number, const reckoning::FilterManner& manner, const Looking& looking = {}, const Misfit& misfit = {})
{
    const std::size_t n = static_cast<std::size_t>(number);
    Series all;
    all.colony.resize(n);
    all.castings.resize(n);
    all.ratio.resize(n);
    all.data.resize(n);
    all.readyRank.resize(n);
    forEach(number, [&](int i) {
        const std::size_t k = static_cast<std::size_t>(i);
        const MadeUp household = makeHousehold(0xca11b, i, looking, misfit);
        const Reckoned reckoned = reckonHousehold(household, ensembleSize(), manner);
        all.colony[k] = reckoned.rank(reckoned.colony(), household.colonyKg);
        all.castings[k] = reckoned.rank(reckoned.castings(), household.castingsKg);
        all.ratio[k] = reckoned.rank(reckoned.feedToCast(), household.feedToCast);
        all.data[k] = reckoned.rank(reckoned.logDensityOfLast(household), household.logDensityOfLast);
        const auto& present = *reckoned.stack->present;
        const auto& first = present.base.firsts.at(present.members.stack.shapes.front().batch).ready;
        const std::vector<double> days(first.begin(), first.end());
        const double truth = household.readyOn ? daysBetween(household.firstBedding, *household.readyOn) : reckoning::never;
        // Days are whole, and what lies beyond the horizon is all one: a rank drawn evenly between those before and those up to the truth.
        const double before = reckoned.rank(days, truth);
        all.readyRank[k] = before + model::uniform(0xca11b, i) * (reckoned.rank(days, truth + 1.0) - before);
    });
    return all;
}

double held(const std::vector<double>& ranks)
{
    double sum = 0.0;
    for (const double rank : ranks) sum += rank >= 0.05 && rank <= 0.95 ? 1.0 : 0.0;
    return sum / static_cast<double>(ranks.size());
}

/// χ² at 1 %: 9 degrees of freedom 21.67, 3 degrees 11.34 (tables of the χ² distribution, from memory).
/// `data` is ours and not a test of uniformity: looks count for less than they say on purpose (FilterManner), so that the values
/// read are a little less expected than they could be. A filter that ignores them is several times beyond it.
/// `broken`: a filter that claims too much must fall below.
struct Bounds { int bins; double chi, least, most, data, broken; };
Bounds bounds(int number) { return number >= 100 ? Bounds{10, 21.67, 0.85, 0.95, 200.0, 0.85} : Bounds{4, 11.34, 0.70, 1.0, 20.0, 0.75}; }

void print(const char* name, const Series& all, const Bounds& b)
{
    std::printf("%-22s %6s %6s\n", name, "chi2", "held");
    for (const auto& [what, ranks] : {std::pair{"colony", &all.colony}, {"castings", &all.castings}, {"feed to cast", &all.ratio}, {"values read", &all.data},
                                      {"ready date", &all.readyRank}})
        std::printf("  %-20s %6.2f %6.3f  (%zu)\n", what, chiSquare(*ranks, b.bins), held(*ranks), ranks->size());
}

TEST(Calibration, RanksAreUniformAndBandsHoldWhatTheySay)
{
    const int number = householdsAsked();
    const Bounds b = bounds(number);
    const Series all = calibrate(number, {});
    print("as it is", all, b);
    for (const std::vector<double>* ranks : {&all.colony, &all.castings, &all.ratio, &all.readyRank}) {
        EXPECT_LT(chiSquare(*ranks, b.bins), b.chi);
        EXPECT_GE(held(*ranks), b.least);
        EXPECT_LE(held(*ranks), b.most);
    }
    EXPECT_LT(chiSquare(all.data, b.bins), b.data);
}

TEST(Calibration, FilterThatIgnoresTheDataFails)
{
    const int number = householdsAsked();
    reckoning::FilterManner manner;
    manner.ignoresLooks = true;
    const Series all = calibrate(number, manner);
    print("ignores the data", all, bounds(number));
    EXPECT_GT(chiSquare(all.data, bounds(number).bins), bounds(number).data);
}

TEST(Calibration, FilterWithHalfTheNoiseFails)
{
    const int number = householdsAsked();
    reckoning::FilterManner manner;
    manner.noiseScale = 0.5;
    const Series all = calibrate(number, manner);
    print("half the noise", all, bounds(number));
    EXPECT_LT(held(all.colony), bounds(number).broken);
    EXPECT_LT(held(all.castings), bounds(number).broken);
    EXPECT_LT(held(all.ratio), bounds(number).broken);
}

}
}
