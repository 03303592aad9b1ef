// The step: same bits on every instruction set, positive, closed, second order in its length; what each process does on its own.
#include "core/model/acts.h"
#include "core/model/ensemble.h"
#include "core/model/masses.h"
#include "core/model/elementary.h"
#include "core/model/measures.h"
#include "core/model/random.h"
#include "core/model/step.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>
#include <cstring>
#include <vector>

namespace tierloam::model {
namespace {

const Substance kitchen{1, 0.16, 0.0195, 0.4875, 4.0, 450};
const Substance cardboard{4, 0.92, 0.001, 0.563, 3.0, 60};

PerMember all(const Ensemble& stack, double value) { return PerMember(static_cast<std::size_t>(stack.members()), value); }

void give(Ensemble& stack, int slot, const Substance& what, double kg, bool feeding)
{
    addMatter(stack, slot, what, all(stack, kg), all(stack, what.dryShare), feeding ? std::nullopt : std::optional{0.95 * what.held}, feeding);
}

Ensemble threeTrays(Ensemble stack)
{
    for (int t = 0; t < 3; ++t) {
        addTray(stack, t + 1, t + 1, 0);
        give(stack, t, cardboard, 0.48, false);
        give(stack, t, kitchen, 0.8, true);
        if (t == 0) stock(stack, 0, 0.45, std::nullopt, true);
    }
    return stack;
}

Ensemble drawnStack(int members = 128) { return threeTrays(Ensemble::drawn(77, members, {}, 20)); }
Ensemble medianStack() { return threeTrays(Ensemble::median({}, 20)); }

void feedAndAdvance(Ensemble& stack, int days, int steps = stepsPerDay)
{
    for (int day = 0; day < days; ++day) {
        if (day % 7 == 3) give(stack, 2, kitchen, 0.9, true);
        DayForcing forcing;
        forcing.day = day;
        forcing.usualTemperature = 20;
        advanceDay(stack, forcing, steps);
    }
}

/// Each set of kernels wider than the plain one that this processor runs.
class WideKernels : public testing::TestWithParam<int> {
protected:
    static Kernels wider() { return kernelSetsHere().set[GetParam()].kernels; }
};

TEST_P(WideKernels, StepsGiveTheSameBits)
{
    Ensemble base = drawnStack();
    Ensemble wide = base;
    const StepPair baseStep = baseKernels().step;
    const StepPair wideStep = wider().step;
    StepForcing forcing{};
    forcing.days = 0.5;
    forcing.area = base.area;
    forcing.height = base.height;
    forcing.sumpCapacity = 4;
    forcing.relativeHumidity = 0.55;
    for (int k = 0; k < 240; ++k) {
        forcing.usualTemperature = k < 120 ? 20 : 33; // heat deaths too
        forcing.spigotOpen = k < 60;
        forcing.lidOff = k > 200;
        for (std::size_t b = 0; b < base.blocks.size(); ++b) {
            baseStep(base.blocks[b].stack, base.blocks[b].trays.data(), base.shapes.data(), 3, base.blocks[b].parameters, massClassTable(), forcing);
            wideStep(wide.blocks[b].stack, wide.blocks[b].trays.data(), wide.shapes.data(), 3, wide.blocks[b].parameters, massClassTable(), forcing);
            ASSERT_EQ(std::memcmp(&base.blocks[b].stack, &wide.blocks[b].stack, sizeof(StackBlock)), 0) << "step " << k;
            for (std::size_t t = 0; t < 3; ++t)
                ASSERT_EQ(std::memcmp(&base.blocks[b].trays[t], &wide.blocks[b].trays[t], sizeof(TrayBlock)), 0) << "step " << k << " tray " << t;
        }
    }
}

TEST_P(WideKernels, NoiseGivesTheSameBits)
{
    StackBlock base = drawnStack().blocks[0].stack;
    StackBlock wide = base;
    for (int day = 0; day < 100; ++day) {
        const std::uint64_t stream = streamOf(5, day, Use::noise);
        baseKernels().noise(base, stream, 1, day == 0);
        wider().noise(wide, stream, 1, day == 0);
        ASSERT_EQ(std::memcmp(&base, &wide, sizeof base), 0) << "day " << day;
        Members plain, vectors;
        baseKernels().normals(stream, day, plain);
        wider().normals(stream, day, vectors);
        ASSERT_EQ(std::memcmp(&plain, &vectors, sizeof plain), 0) << "day " << day;
    }
}

TEST(Kernels, AtLeastOneWiderSetRunsHere) { EXPECT_GE(kernelSetsHere().count, 2) << "these checks need a processor with AVX2"; }

INSTANTIATE_TEST_SUITE_P(OfThisProcessor, WideKernels, testing::Range(1, kernelSetsHere().count), [](const auto& each) { return kernelSetsHere().set[each.param].name; });

TEST(Noise, HasItsSpreadAndMemory)
{
    // AR(1), 30 d: stationary sd 1.2 K and 0.15; correlation e^(−1) after 30 days. Bounds of four standard errors of 64·200 draws,
    // of which those of one member within 30 days count as one.
    Ensemble stack = Ensemble::drawn(3, 512, {}, 20);
    double squares = 0.0, together = 0.0, soft = 0.0, across = 0.0;
    int count = 0;
    std::vector<double> before;
    for (int day = 0; day <= 600; ++day) {
        advanceDay(stack, {.day = day});
        if (day % 30 != 0) continue;
        std::vector<double> now;
        for (const Ensemble::Block& block : stack.blocks)
            for (int m = 0; m < lanes; ++m) {
                now.push_back(block.stack.drift[m]);
                soft += block.stack.softNoise[m] * block.stack.softNoise[m];
                across += block.stack.softNoise[m] * block.stack.drift[m];
                EXPECT_EQ(block.stack.softFactor[m], exponential(block.stack.softNoise[m]));
            }
        for (std::size_t i = 0; i < now.size(); ++i) {
            squares += now[i] * now[i];
            if (!before.empty()) together += now[i] * before[i];
        }
        count += 512;
        before = now;
    }
    EXPECT_NEAR(std::sqrt(squares / count), 1.2, 0.04);
    EXPECT_NEAR(std::sqrt(soft / count), 0.15, 0.005);
    EXPECT_NEAR(across / count / (1.2 * 0.15), 0.0, 0.05) << "the two are independent";
    EXPECT_NEAR(together / (count - 512) / 1.44, std::exp(-1.0), 0.05);
}

TEST(Step, EveryPoolStaysPositiveAndSharesSumToOne)
{
    Ensemble stack = drawnStack();
    for (int round = 0; round < 20; ++round) {
        feedAndAdvance(stack, 10);
        for (const Ensemble::Block& block : stack.blocks) {
            for (int m = 0; m < lanes; ++m) {
                double shares = 0.0;
                for (const TrayBlock& tray : block.trays) {
                    for (const Members& pool : tray.unsoftened) ASSERT_GE(pool[m], 0.0);
                    for (const Members* pool : {&tray.softened, &tray.castings, &tray.nitrogen, &tray.carbon, &tray.salts, &tray.water, &tray.share, &tray.tracer})
                        ASSERT_GE((*pool)[m], 0.0);
                    shares += tray.share[m];
                }
                ASSERT_NEAR(shares, 1.0, 1e-9);
                for (const Members& number : block.stack.worms) ASSERT_GE(number[m], 0.0);
                ASSERT_GE(block.stack.reserve[m], 0.0);
                ASSERT_GE(block.stack.wormCarbon[m], 0.0);
                ASSERT_TRUE(std::isfinite(block.stack.bed[m]));
            }
        }
    }
}

double colonyAfter(int days, int steps)
{
    Ensemble stack = medianStack();
    stack.noisy = false;
    feedAndAdvance(stack, days, steps);
    return colony(MemberOf{stack, 0});
}

double castingsAfter(int days, int steps)
{
    Ensemble stack = medianStack();
    feedAndAdvance(stack, days, steps);
    return stack.blocks[0].trays[2].castings[0];
}

/// Something of a stack that has lived 20 days (young trays take more steps), on each of 40 days more at so many steps a day.
template <class Reading>
std::vector<double> over40Days(int steps, bool holdTemperature, Reading reading)
{
    static const Ensemble grown = [] {
        Ensemble stack = medianStack();
        feedAndAdvance(stack, 20);
        return stack;
    }();
    Ensemble stack = grown;
    std::vector<double> readings;
    for (int day = 20; day < 60; ++day) {
        if (day % 7 == 3) give(stack, 2, kitchen, 0.9, true);
        DayForcing forcing;
        forcing.day = day;
        forcing.usualTemperature = 20;
        forcing.holdTemperature = holdTemperature;
        advanceDay(stack, forcing, steps);
        readings.push_back(reading(stack.blocks[0]));
    }
    return readings;
}

double distance(const std::vector<double>& a, const std::vector<double>& b)
{
    double squares = 0.0;
    for (std::size_t i = 0; i < a.size(); ++i) squares += (a[i] - b[i]) * (a[i] - b[i]);
    return std::sqrt(squares);
}

/// Error at so many steps a day ÷ error at twice as many, against 256: about four for a method of second order, two for first.
template <class Reading>
double fallOfError(int steps, bool holdTemperature, Reading reading)
{
    const std::vector<double> fine = over40Days(256, holdTemperature, reading);
    return distance(over40Days(steps, holdTemperature, reading), fine) / distance(over40Days(2 * steps, holdTemperature, reading), fine);
}

double biomassOf(const Ensemble::Block& block)
{
    double kg = 0.0;
    for (int i = 0; i < massClasses; ++i) kg += block.stack.worms[i][0] * massClassTable().kilograms[i];
    return kg;
}

TEST(Step, HalvingTheStepShowsSecondOrder)
{
    using ::testing::AllOf, ::testing::Ge, ::testing::Le;
    const auto castings = [](const Ensemble::Block& block) { return block.trays[2].castings[0]; };
    const auto softened = [](const Ensemble::Block& block) { return block.trays[2].softened[0]; };
    const auto cardboardLeft = [](const Ensemble::Block& block) { return block.trays[1].unsoftened[4][0]; };
    for (const int steps : {2, 4}) {
        EXPECT_THAT(fallOfError(steps, true, softened), AllOf(Ge(2.8), Le(6.0))) << steps;
        // What softens in a step is of third order, how fast it does of second: the error falls faster than by four while the first is the greater.
        EXPECT_THAT(fallOfError(steps, true, cardboardLeft), AllOf(Ge(2.8), Le(12.0))) << steps;
        // The colony takes the shares of its reserve from its sums at the beginning of a process: of first order, and small.
        EXPECT_THAT(fallOfError(steps, true, castings), AllOf(Ge(1.6), Le(6.0))) << steps;
        EXPECT_THAT(fallOfError(steps, true, biomassOf), AllOf(Ge(1.6), Le(6.0))) << steps;
    }
    EXPECT_NEAR(over40Days(2, true, castings).back() / over40Days(256, true, castings).back(), 1.0, 0.002);
    EXPECT_NEAR(over40Days(2, true, biomassOf).back() / over40Days(256, true, biomassOf).back(), 1.0, 0.002);
}

// The heat of respiration and evaporation is that of the step just made.

TEST(Step, OwnHeatLagsWithFirstOrder)
{
    const auto bed = [](const Ensemble::Block& block) { return block.stack.bed[0]; };
    using ::testing::AllOf, ::testing::Ge, ::testing::Le;
    for (const int steps : {4, 8}) EXPECT_THAT(fallOfError(steps, false, bed), AllOf(Ge(1.8), Le(3.2))) << steps;
}

TEST(Step, DefaultStepIsWithinOnePercentOfAFineOneOverAYear)
{
    EXPECT_NEAR(colonyAfter(365, 2) / colonyAfter(365, 32), 1.0, 0.01);
    EXPECT_NEAR(castingsAfter(365, 2) / castingsAfter(365, 32), 1.0, 0.01);
}

TEST(Softening, IsFasterWithWormsAndInWarmth)
{
    const auto left = [](double worms, double celsius) {
        Ensemble stack = Ensemble::median({}, celsius);
        addTray(stack, 1, 1, 0);
        give(stack, 0, kitchen, 1.0, true);
        if (worms > 0) stock(stack, 0, worms, std::nullopt, true);
        for (int day = 0; day < 7; ++day) {
            DayForcing forcing;
            forcing.day = day;
            forcing.usualTemperature = celsius;
            forcing.holdTemperature = true;
            advanceDay(stack, forcing);
        }
        return tracerLeft(MemberOf{stack, 0}, 0);
    };
    EXPECT_LT(left(0.45, 20), left(0.0, 20));
    EXPECT_LT(left(0.45, 25), left(0.45, 15));
    EXPECT_GT(left(0.0, 20), 50.0);
    // Without worms, mix at 25 °C: rate 0.12·0.30 a day, held exactly: exp(−0.252).
    EXPECT_NEAR(left(0.0, 25), 100.0 * std::exp(-0.12 * 0.30 * 7), 0.05);
}

TEST(Air, FallsWithMuchFoodInOneTray)
{
    Ensemble stack = Ensemble::median({}, 22);
    addTray(stack, 1, 1, 0);
    stock(stack, 0, 0.45, std::nullopt, true);
    give(stack, 0, kitchen, 12.0, true);
    DayForcing forcing;
    forcing.usualTemperature = 22;
    advanceDay(stack, forcing);
    EXPECT_LT(stack.blocks[0].trays[0].air[0], 0.5);
    Ensemble modest = Ensemble::median({}, 22);
    addTray(modest, 1, 1, 0);
    stock(modest, 0, 0.45, std::nullopt, true);
    give(modest, 0, kitchen, 0.5, true);
    advanceDay(modest, forcing);
    EXPECT_GT(modest.blocks[0].trays[0].air[0], 0.95);
}

TEST(Death, OfHeatAndColdFollowsTheStatedPoints)
{
    const auto survivors = [](double celsius) {
        Ensemble stack = Ensemble::median({}, celsius);
        for (int m = 0; m < lanes; ++m) stack.blocks[0].parameters.value[static_cast<int>(Parameter::death)][m] = 0.0;
        addTray(stack, 1, 1, 0);
        give(stack, 0, cardboard, 0.5, false);
        stock(stack, 0, 0.45, std::nullopt, true);
        for (double& reserve : stack.blocks[0].stack.reserve) reserve *= 5.0; // nobody goes hungry
        const double before = worms(MemberOf{stack, 0});
        DayForcing forcing;
        forcing.usualTemperature = celsius;
        forcing.holdTemperature = true;
        advanceDay(stack, forcing);
        return worms(MemberOf{stack, 0}) / before;
    };
    EXPECT_NEAR(survivors(20), 1.0, 1e-3);
    EXPECT_NEAR(survivors(33), std::exp(-0.02), 0.002);
    EXPECT_NEAR(survivors(35), std::exp(-0.15), 0.004);
    EXPECT_NEAR(survivors(38), std::exp(-0.7), 0.02);
    EXPECT_NEAR(survivors(1), std::exp(-0.02), 0.002);
    EXPECT_NEAR(survivors(-1), std::exp(-0.3), 0.006);
    EXPECT_LT(survivors(40), 0.3);
}

TEST(Cocoons, HatchAfterTheirIncubation)
{
    // 437/(25−6) = 23 days at 25 °C: Venter & Reinecke 1988. An Erlang chain of four has that mean.
    Ensemble stack = Ensemble::median({}, 25);
    addTray(stack, 1, 1, 0);
    for (int m = 0; m < lanes; ++m) stack.blocks[0].trays[0].cocoons[0][m] = 1000.0;
    double sum = 0.0, weighted = 0.0, before = 1000.0;
    for (int day = 0; day < 200; ++day) {
        DayForcing forcing;
        forcing.day = day;
        forcing.usualTemperature = 25;
        forcing.holdTemperature = true;
        advanceDay(stack, forcing);
        const double now = cocoons(MemberOf{stack, 0}, 0);
        sum += before - now;
        weighted += (before - now) * (day + 0.5);
        before = now;
    }
    EXPECT_NEAR(sum, 1000.0, 1.0);
    EXPECT_NEAR(weighted / sum, 23.0, 0.5);
    const double hatched = stack.blocks[0].stack.worms[0][0] + stack.blocks[0].stack.worms[1][0];
    EXPECT_GT(hatched, 0.0);
}

TEST(Temperature, OwnHeatWarmsAnOverfedBed)
{
    Ensemble stack = medianStack();
    stack.noisy = false;
    feedAndAdvance(stack, 30);
    const double usual = stack.blocks[0].stack.bed[0];
    give(stack, 2, kitchen, 6.0, true);
    DayForcing forcing;
    forcing.usualTemperature = 20;
    forcing.day = 30;
    advanceDay(stack, forcing);
    forcing.day = 31;
    advanceDay(stack, forcing);
    EXPECT_GT(stack.blocks[0].stack.bed[0], usual + 1.0);
}

TEST(Temperature, FollowsTheAirWhenItIsRead)
{
    Ensemble stack = medianStack();
    DayForcing forcing;
    forcing.usualTemperature = 20;
    forcing.airTemperature = 10.0;
    for (int day = 0; day < 10; ++day) {
        forcing.day = day;
        advanceDay(stack, forcing);
    }
    const StackBlock& block = stack.blocks[0].stack;
    EXPECT_NEAR(block.bed[0], 10.0 + block.warmth[0], 0.3);
}

/// Castings in the light come to what air-dry matter holds, 10 to 15 % of moisture, and no further.
TEST(Evaporation, StopsAtAirDry)
{
    Ensemble stack = medianStack();
    feedAndAdvance(stack, 30);
    DayForcing forcing;
    forcing.usualTemperature = 24;
    forcing.lidOff = true;
    const int top = stack.trays() - 1;
    for (int day = 30; day < 90; ++day) {
        forcing.day = day;
        advanceDay(stack, forcing);
    }
    const double moist = moisture(MemberOf{stack, 0}, top);
    EXPECT_GT(moist, 10.0);
    EXPECT_LT(moist, 15.0);
}

TEST(Season, IsWarmestInMidsummerOfItsHemisphere)
{
    EXPECT_DOUBLE_EQ(seasonOffset(6.0, 200, false), 6.0);
    EXPECT_DOUBLE_EQ(seasonOffset(9.0, 17, true), 9.0);
    EXPECT_LT(seasonOffset(6.0, 17, false), -5.9);
}

}
}
