// Use of castings and leachate and the lifting equation, against sums by hand and what the sources print.
#include "core/guide/castings_use.h"
#include "core/guide/figures.h"
#include "core/guide/leachate_use.h"
#include "core/guide/lifting.h"
#include "core/guide/softening.h"

#include <gtest/gtest.h>

#include <cmath>

using namespace tierloam;
using namespace tierloam::guide;

namespace {

// Waters et al. 1993: at the reference posture every multiplier is 1 and the limit is the load constant.
TEST(Lifting, OfTheReferencePostureIsTheLoadConstant)
{
    const auto limit = recommendedWeight({centimetres(25), centimetres(75), centimetres(25), 0, 1, Grip::good});
    ASSERT_TRUE(limit);
    EXPECT_NEAR(limit->base(), 23.0, 1e-9);
}

// By hand from the equation: 23 · 25/50 · (1 − 0.003·55) · (0.82 + 4.5/50) · (1 − 0.0032·30) = 7.899; fair grip below 75 cm × 0.95.
TEST(Lifting, AgreesWithASumByHand)
{
    const Lift lift{centimetres(50), centimetres(20), centimetres(50), 30, 1, Grip::good};
    EXPECT_NEAR(recommendedWeight(lift)->base(), 23 * 0.5 * 0.835 * 0.91 * 0.904, 1e-9);
    EXPECT_NEAR(recommendedWeight(lift)->base(), 7.899, 0.001);
    Lift fair = lift;
    fair.grip = Grip::fair;
    EXPECT_NEAR(recommendedWeight(fair)->base() / recommendedWeight(lift)->base(), 0.95, 1e-12);
    fair.from = centimetres(80);
    Lift good = fair;
    good.grip = Grip::good;
    EXPECT_EQ(recommendedWeight(fair)->base(), recommendedWeight(good)->base()) << "from the reference height up a rim is as good as a handle";
}

TEST(Lifting, NeverGainsByReachTravelTwistOrALowerStart)
{
    const Lift easy{centimetres(25), centimetres(75), centimetres(25), 0, 1, Grip::good};
    const double most = recommendedWeight(easy)->base();
    double before = most;
    for (double reach = 26; reach <= 63; ++reach) {
        Lift lift = easy;
        lift.reach = centimetres(reach);
        const double now = recommendedWeight(lift)->base();
        EXPECT_LT(now, before) << reach;
        before = now;
    }
    for (double height = 0; height <= 175; height += 5) {
        Lift lift = easy;
        lift.from = centimetres(height);
        EXPECT_LE(recommendedWeight(lift)->base(), most) << height;
    }
    for (double twist = 5; twist <= 135; twist += 5) {
        Lift lift = easy;
        lift.twistDegrees = twist;
        EXPECT_LT(recommendedWeight(lift)->base(), most);
    }
}

TEST(Lifting, IsAdvisedAgainstOutOfReach)
{
    const Lift easy{centimetres(25), centimetres(75), centimetres(25), 0, 1, Grip::good};
    for (auto spoil : {+[](Lift& l) { l.reach = centimetres(64); }, +[](Lift& l) { l.from = centimetres(176); }, +[](Lift& l) { l.from = centimetres(-1); },
                       +[](Lift& l) { l.travel = centimetres(176); }, +[](Lift& l) { l.twistDegrees = 136; }, +[](Lift& l) { l.frequency = 0; }}) {
        Lift lift = easy;
        spoil(lift);
        EXPECT_FALSE(recommendedWeight(lift).has_value());
        EXPECT_EQ(judge(kilograms(1), lift).word, LiftVerdict::Word::dont);
    }
    EXPECT_EQ(judge(kilograms(23), easy).word, LiftVerdict::Word::fine);
    EXPECT_EQ(judge(kilograms(23.1), easy).word, LiftVerdict::Word::heavy);
    EXPECT_EQ(judge(kilograms(70), easy).word, LiftVerdict::Word::tooHeavy);
}

// By hand: a tray of 40 × 40 cm is reached at 20 + 20 cm, low down at 20 + 25 cm; a person's own reach rules.
TEST(Lifting, TakesTheReachFromTheTray)
{
    const Lift low = liftOf({squareMetres(0.16), centimetres(23), centimetres(45), {}});
    EXPECT_NEAR(low.reach.base(), 45, 1e-9);
    EXPECT_NEAR(low.travel.base(), 22, 1e-9);
    EXPECT_NEAR(liftOf({squareMetres(0.16), centimetres(40), centimetres(62), {}}).reach.base(), 40, 1e-9);
    EXPECT_NEAR(liftOf({squareMetres(0.16), centimetres(23), centimetres(45), centimetres(30)}).reach.base(), 30, 1e-9);
    EXPECT_NEAR(rimHeight(2, centimetres(11), centimetres(10)).base(), 44, 1e-9);
}

// By hand: 5 kg at 70 % hold 1.5 kg dry, 1.5/182·1000 = 8.242 L; at a tenth that makes 82.42 L of mix; 0.5 cm deep it covers 1.648 m²;
// dried to 30 % it weighs 1.5/0.7 = 2.143 kg, so 2.857 kg go.
TEST(CastingsUse, AgreesWithSumsByHand)
{
    const CastingsBatch batch{kilograms(5), 70};
    EXPECT_NEAR(batch.dry().base(), 1.5, 1e-12);
    EXPECT_NEAR(batch.volume().base(), 8.2418, 1e-4);
    EXPECT_NEAR(pottingMix(batch.volume(), 10).whole.base(), 82.418, 1e-3);
    EXPECT_NEAR(pottingMix(batch.volume(), 20).other.base(), 4 * 8.2418, 1e-3);
    EXPECT_NEAR(covered(batch.volume(), centimetres(0.5)).base(), 1.6484, 1e-4);
    EXPECT_NEAR(toDryOffBeforeStoring(batch).base(), 2.857, 1e-3);
    EXPECT_EQ(toDryOffBeforeStoring({kilograms(2), 25}).base(), 0.0);
    EXPECT_NEAR(batchOf(batch.volume(), 70).wet.base(), 5, 1e-9);
    EXPECT_NEAR(neededFor(squareMetres(2), centimetres(1)).base(), 20, 1e-12);
}

// City of Euless, Texas: at most a quarter.
TEST(CastingsUse, NeverGoesBeyondAQuarterOfAPottingMix)
{
    for (double asked : {26.0, 50.0, 100.0, 1e6}) {
        const PottingMix mix = pottingMix(litres(4), asked);
        EXPECT_TRUE(mix.held) << asked;
        EXPECT_EQ(mix.sharePercent, 25.0);
        EXPECT_NEAR(mix.castings / mix.whole, 0.25, 1e-12);
        EXPECT_NEAR(pottingMixFor(litres(40), asked).castings.base(), 10, 1e-12);
    }
    EXPECT_FALSE(pottingMix(litres(4), 25).held);
    EXPECT_NEAR(pottingMix(litres(1), 0).whole.base(), 100, 1e-9) << "a share of nothing would make an endless heap";
}

// 1.7 to 2.7 kg of dry input for one of castings: Lalander et al. 2015, Zziwa et al. 2021 (abstracts).
TEST(Yield, IsMeasuredAgainstThePublishedRatio)
{
    const Yield yield = yieldAgainst(kilograms(5.4), kilograms(2.5));
    EXPECT_NEAR(yield.least.base(), 2.0, 1e-9);
    EXPECT_NEAR(yield.most.base(), 5.4 / 1.7, 1e-9);
    EXPECT_EQ(yield.verdict, Yield::Verdict::asExpected);
    EXPECT_EQ(yieldAgainst(kilograms(5.4), kilograms(1.9)).verdict, Yield::Verdict::less);
    EXPECT_EQ(yieldAgainst(kilograms(5.4), kilograms(3.3)).verdict, Yield::Verdict::more);
}

// By hand: 2.6 to 1.0 with water of 0.2: (2.6 − 1)/(1 − 0.2) = 2 parts; a litre makes three. At 4.2 four parts.
TEST(Leachate, IsDilutedAsASumByHand)
{
    const Dilution dilution = diluteTo({1.4, 2.6, 4.2}, 1.0, 0.2, litres(1));
    EXPECT_EQ(dilution.answer, DilutionAnswer::dilute);
    EXPECT_NEAR(dilution.parts.low, 0.5, 1e-12);
    EXPECT_NEAR(dilution.parts.middle, 2.0, 1e-12);
    EXPECT_NEAR(dilution.parts.high, 4.0, 1e-12);
    EXPECT_NEAR(dilution.whole.middle, 3.0, 1e-12);
    // The way back: what was mixed has the strength that was wished.
    for (const auto& [strength, parts] : {std::pair{1.4, dilution.parts.low}, {2.6, dilution.parts.middle}, {4.2, dilution.parts.high}})
        EXPECT_NEAR((strength + parts * 0.2) / (1 + parts), 1.0, 1e-12);
}

TEST(Leachate, SaysWhenWaterCannotHelpOrIsNotNeeded)
{
    EXPECT_EQ(diluteTo({1, 2, 3}, 0.5, 0.5, litres(1)).answer, DilutionAnswer::cannot);
    EXPECT_EQ(diluteTo({1, 2, 3}, 0.5, 0.9, litres(1)).answer, DilutionAnswer::cannot);
    EXPECT_EQ(diluteTo({0.3, 0.5, 0.8}, 0.8, 0.9, litres(2)).answer, DilutionAnswer::weakEnough);
    EXPECT_EQ(diluteTo({0.3, 0.5, 0.8}, 0.8, 0.1, litres(2)).whole.middle, 2.0);
    EXPECT_EQ(diluteTo({0.3, 0.5, 0.9}, 0.8, 0.1, litres(2)).parts.middle, 0.0) << "the likely strength needs none, the strongest some";
    EXPECT_GT(diluteTo({0.3, 0.5, 0.9}, 0.8, 0.1, litres(2)).parts.high, 0.0);
    EXPECT_NEAR(saltsPerLitre(2.5), 1.6, 1e-12);
}

// By hand at 25 °C and 0.5 kg/m² with the centre of the worm factor (w/2 + 0.30): soft 0.25 a day halves in ln 2/(0.25·(0.30 + w/2)).
TEST(Softening, OfOneMaterialIsItsHalfLife)
{
    const materials::Material apple = *materials::Table::builtIn().find("apple, with skin");
    const Softening alone = softeningOf({{apple, kilograms(1)}}, 25, 0.0);
    ASSERT_TRUE(alone.halfDays);
    EXPECT_NEAR(*alone.halfDays, std::log(2.0) / (0.25 * 0.30), 1e-6) << "without worms";
    EXPECT_NEAR(*alone.mostDays, std::log(10.0) / (0.25 * 0.30), 1e-6);
    EXPECT_NEAR(*softeningOf({{apple, kilograms(1)}}, 15, 0.0).halfDays / *alone.halfDays, 2.0, 1e-6) << "Q10 = 2";
    EXPECT_LT(*softeningOf({{apple, kilograms(1)}}, 25, 1.0).halfDays, *alone.halfDays);
    EXPECT_EQ(alone.staysShare, 0.0);
}

TEST(Softening, LeavesOutWhatStays)
{
    const auto& table = materials::Table::builtIn();
    const materials::Material shavings = *table.find("pine shavings"), scraps = *table.find("kitchen mix");
    const Softening stays = softeningOf({{shavings, kilograms(1)}}, 20, 1);
    EXPECT_EQ(stays.staysShare, 1.0);
    EXPECT_FALSE(stays.halfDays);
    // 1 kg of scraps holds 0.16 kg dry, 1 kg of shavings 0.88.
    const Softening both = softeningOf({{shavings, kilograms(1)}, {scraps, kilograms(1)}}, 20, 1);
    EXPECT_NEAR(both.staysShare, 0.88 / 1.04, 1e-9);
    EXPECT_NEAR(*both.halfDays, *softeningOf({{scraps, kilograms(3)}}, 20, 1).halfDays, 1e-6);
    EXPECT_FALSE(softeningOf({}, 20, 1).halfDays);
}

}
