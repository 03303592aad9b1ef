// Arithmetic of mixtures against printed examples, and wishes that no mix can meet.
#include "core/materials/bedding.h"
#include "core/materials/mix.h"

#include <gmock/gmock.h>

#include <random>

using namespace tierloam;
using namespace tierloam::materials;

namespace {

Material material(double moisture, double carbonPercent, double nitrogenPercent)
{
    Material made;
    made.moisturePercent = moisture;
    made.nitrogenPercent = nitrogenPercent;
    made.carbonToNitrogen = carbonPercent / nitrogenPercent;
    made.bulkKgPerM3 = 200;
    return made;
}

// C and N in % of dry matter: the worked example of the Cornell Waste Management Institute.
const Material grass = material(77, 45, 2.4);
const Material leaves = material(35, 50, 0.75);
const Mix tenOfGrass = mixOf(kilograms(10), grass);

// Cornell Waste Management Institute, published text on moisture: container 4 g, with wet sample 14 g, dried 6.3 g.
TEST(SampleMoisture, AgreesWithThePrintedExample)
{
    EXPECT_NEAR(*sampleMoisturePercent(grams(4), grams(14), grams(6.3)), 77.0, 1e-9);
}

TEST(SampleMoisture, RefusesWeightsThatCannotBe)
{
    EXPECT_EQ(sampleMoisturePercent(grams(4), grams(4), grams(4)), std::nullopt);
    EXPECT_EQ(sampleMoisturePercent(grams(4), grams(14), grams(15)), std::nullopt);
    EXPECT_EQ(sampleMoisturePercent(grams(4), grams(14), grams(3)), std::nullopt);
    EXPECT_EQ(*sampleMoisturePercent(grams(4), grams(14), grams(14)), 0.0);
    EXPECT_EQ(*sampleMoisturePercent(grams(4), grams(14), grams(4)), 100.0);
}

// The same text: 10 kg of grass at 77 % and leaves at 35 %, wished 60 %: 6.8 kg of leaves.
TEST(AddForMoisture, AgreesWithThePrintedExample)
{
    const Addition addition = addForMoisture(tenOfGrass, leaves, 60);
    EXPECT_EQ(addition.obstacle, Obstacle::none);
    EXPECT_NEAR(addition.material.base(), 6.8, 1e-9);
    EXPECT_NEAR(*addition.mix.moisturePercent(), 60, 1e-9);
}

// The same example for C:N 30: printed as about 3.5 (from memory), 3.474 recomputed.
TEST(AddForCarbonToNitrogen, AgreesWithThePrintedExample)
{
    const Addition addition = addForCarbonToNitrogen(tenOfGrass, leaves, 30);
    EXPECT_EQ(addition.obstacle, Obstacle::none);
    EXPECT_NEAR(addition.material.base(), 3.474, 0.0005);
    EXPECT_NEAR(*addition.mix.carbonToNitrogen(), 30, 1e-9);
}

// The same with the 6.8 kg that moisture wants: 36.73 recomputed, 37 as printed (from memory).
TEST(MixRatio, AgreesWithThePrintedExample)
{
    const Mix mix = tenOfGrass + mixOf(kilograms(6.8), leaves);
    EXPECT_NEAR(*mix.carbonToNitrogen(), 36.73, 0.005);
    EXPECT_NEAR(*mix.carbonToNitrogen(), 37, 0.5);
    const double averagedByParts = (10 * 45 / 2.4 + 6.8 * 50 / 0.75) / 16.8;
    EXPECT_GT(std::abs(averagedByParts - *mix.carbonToNitrogen()), 1.0) << "an average of the parts' C:N is another number, and wrong";
}

TEST(Mix, AddsWhatItsPartsHold)
{
    const Mix mix = tenOfGrass + mixOf(kilograms(2), leaves) + poured(litres(1));
    EXPECT_NEAR(mix.fresh().base(), 13, 1e-12);
    EXPECT_NEAR(mix.dry.base(), 10 * 0.23 + 2 * 0.65, 1e-12);
    EXPECT_NEAR(mix.nitrogen.base(), 10 * 0.23 * 0.024 + 2 * 0.65 * 0.0075, 1e-12);
    EXPECT_NEAR(mix.carbon.base(), 10 * 0.23 * 0.45 + 2 * 0.65 * 0.50, 1e-12);
    EXPECT_NEAR(mix.bulk.base(), 12 / 0.2, 1e-9);
    EXPECT_NEAR(*mix.moisturePercent(), 100 * (13 - 3.6) / 13, 1e-9);
}

TEST(Mix, OfNothingHasNoMoistureAndNoRatio)
{
    EXPECT_EQ(Mix{}.moisturePercent(), std::nullopt);
    EXPECT_EQ(Mix{}.carbonToNitrogen(), std::nullopt);
    EXPECT_EQ(poured(litres(1)).carbonToNitrogen(), std::nullopt);
    EXPECT_EQ(mixOf(kilograms(1), *Table::builtIn().find("eggshell crushed")).carbonToNitrogen(), std::nullopt);
}

TEST(Additions, MeetTheWishWheneverTheySaySo)
{
    std::mt19937 random{17};
    std::uniform_real_distribution<> moisture{2, 95}, carbon{35, 60}, nitrogen{0.1, 6}, wishedMoisture{30, 90}, wishedRatio{8, 120}, mass{0.1, 20};
    int met = 0, obstacles = 0;
    for (int i = 0; i < 5000; ++i) {
        const Mix mix = mixOf(kilograms(mass(random)), material(moisture(random), carbon(random), nitrogen(random)));
        const Material added = material(moisture(random), carbon(random), nitrogen(random));
        const double goal = wishedMoisture(random), ratio = wishedRatio(random);
        for (const Addition& addition : {addForMoisture(mix, added, goal), addForCarbonToNitrogen(mix, added, ratio), addForBoth(mix, added, goal, ratio), addWater(mix, goal)}) {
            ASSERT_GE(addition.material.base(), 0.0);
            ASSERT_GE(addition.water.base(), 0.0);
            ASSERT_NEAR(addition.mix.fresh().base(), (mix.fresh() + addition.material).base() + addition.water.base(), 1e-9);
        }
        const Addition both = addForBoth(mix, added, goal, ratio);
        if (both.obstacle == Obstacle::none) {
            ++met;
            ASSERT_NEAR(*both.mix.moisturePercent(), goal, 1e-6);
            ASSERT_NEAR(*both.mix.carbonToNitrogen(), ratio, 1e-6);
        } else {
            ++obstacles;
            ASSERT_FALSE(std::abs(*both.mix.moisturePercent() - goal) < 1e-6 && std::abs(*both.mix.carbonToNitrogen() - ratio) < 1e-6)
                << "an obstacle where there is none";
        }
    }
    EXPECT_GT(met, 500);
    EXPECT_GT(obstacles, 500);
}

// Moisture and C:N in conflict: at C:N 30 the grass with leaves is at 66 %, at 60 % it is at C:N 37.
TEST(AddForBoth, SaysAConflictAndGivesTheNearestMix)
{
    const Addition addition = addForBoth(tenOfGrass, leaves, 60, 30);
    EXPECT_EQ(addition.obstacle, Obstacle::tooWet);
    EXPECT_EQ(addition.water.base(), 0.0);
    EXPECT_GT(addition.material.base(), 3.474);
    EXPECT_LT(addition.material.base(), 6.8);
    const auto off = [](const Mix& mix) { return std::hypot((*mix.moisturePercent() - 60) / 5, (*mix.carbonToNitrogen() - 30) / 5); };
    for (double amount = 3.4; amount < 6.9; amount += 0.01)
        ASSERT_GE(off(tenOfGrass + mixOf(kilograms(amount), leaves)), off(addition.mix) - 1e-9) << amount;
}

TEST(AddForBoth, PoursWaterWhenTheMixIsDry)
{
    const Addition addition = addForBoth(tenOfGrass, leaves, 75, 30);
    EXPECT_EQ(addition.obstacle, Obstacle::none);
    EXPECT_NEAR(addition.material.base(), 3.474, 0.0005);
    EXPECT_GT(addition.water.base(), 0.0);
    EXPECT_NEAR(*addition.mix.moisturePercent(), 75, 1e-9);
    EXPECT_NEAR(*addition.mix.carbonToNitrogen(), 30, 1e-9);
}

TEST(Additions, SayWhichWayAWishCannotBeMet)
{
    EXPECT_EQ(addForMoisture(tenOfGrass, leaves, 85).obstacle, Obstacle::wrongWay);
    EXPECT_EQ(addForMoisture(tenOfGrass, leaves, 85).material.base(), 0.0);
    EXPECT_EQ(addForMoisture(tenOfGrass, leaves, 30).obstacle, Obstacle::notFarEnough);
    EXPECT_NEAR(*addForMoisture(tenOfGrass, leaves, 30).mix.moisturePercent(), 37, 0.01); // twenty times the mix
    EXPECT_EQ(addForMoisture(tenOfGrass, leaves, 35).obstacle, Obstacle::notFarEnough);
    EXPECT_EQ(addForMoisture(tenOfGrass, leaves, 35.5).obstacle, Obstacle::notFarEnough);
    EXPECT_EQ(addForCarbonToNitrogen(tenOfGrass, leaves, 15).obstacle, Obstacle::wrongWay);
    EXPECT_EQ(addForCarbonToNitrogen(tenOfGrass, leaves, 70).obstacle, Obstacle::notFarEnough);
    EXPECT_EQ(addForCarbonToNitrogen(tenOfGrass, *Table::builtIn().find("eggshell crushed"), 30).obstacle, Obstacle::wrongWay);
    EXPECT_EQ(addWater(tenOfGrass, 70).obstacle, Obstacle::tooWet);
    EXPECT_EQ(addForMoisture(Mix{}, leaves, 60).obstacle, Obstacle::nothingThere);
    EXPECT_EQ(addForCarbonToNitrogen(Mix{}, leaves, 30).obstacle, Obstacle::nothingThere);
    EXPECT_EQ(addForBoth(Mix{}, leaves, 60, 30).obstacle, Obstacle::nothingThere);
    EXPECT_EQ(addWater(Mix{}, 60).obstacle, Obstacle::nothingThere);
}

TEST(Additions, AddNothingToWhatIsRightAlready)
{
    EXPECT_EQ(addForMoisture(tenOfGrass, leaves, 77).obstacle, Obstacle::none);
    EXPECT_EQ(addForMoisture(tenOfGrass, leaves, 77).material.base(), 0.0);
    EXPECT_EQ(addForCarbonToNitrogen(tenOfGrass, leaves, 18.75).obstacle, Obstacle::none);
    EXPECT_NEAR(addForCarbonToNitrogen(tenOfGrass, leaves, 18.75).material.base(), 0.0, 1e-9);
    EXPECT_NEAR(addWater(tenOfGrass, 77).water.base(), 0.0, 1e-9);
}

// Own arithmetic: 0.16 m² and 5 cm are 8 L laid, 8/0.6 L loose cardboard of 60 kg/m³, at 8 % moisture, wetted to 95 % of 3 kg/kg.
TEST(BeddingForTray, OfCardboard)
{
    const BeddingForTray bedding = beddingForTray(squareMetres(0.16), centimetres(5), *Table::builtIn().find("corrugated cardboard shredded"));
    EXPECT_NEAR(bedding.asItComes.base(), 0.8, 1e-12);
    EXPECT_NEAR(bedding.dry.base(), 0.736, 1e-12);
    EXPECT_NEAR(bedding.water.base(), 0.95 * 3 * 0.736 - 0.064, 1e-12);
    EXPECT_NEAR(bedding.laid.base(), 0.8 + 2.0336, 1e-9);
    EXPECT_NEAR(bedding.moisturePercent, 100 * 2.85 / 3.85, 1e-9);
}

TEST(BeddingForTray, GoesBothWaysForEveryBedding)
{
    for (const Material& row : Table::builtIn().rows()) {
        if (row.kind != Kind::bedding) continue;
        const BeddingForTray bedding = beddingForTray(squareMetres(0.21), centimetres(4), row);
        EXPECT_NEAR(laidDepth(bedding.asItComes, squareMetres(0.21), row).base(), 4, 1e-9) << row.name;
        EXPECT_NEAR(waterForBedding(bedding.asItComes, row).base(), bedding.water.base(), 1e-12) << row.name;
        EXPECT_GT(bedding.water.base(), 0.0) << row.name;
        const double held = (bedding.laid - bedding.dry) / bedding.dry / row.waterHeldKgPerKg;
        EXPECT_NEAR(held, 0.95, 1e-9) << row.name;
    }
}

TEST(BeddingForTray, TakesNoWaterOutOfWhatComesWet)
{
    Material wet = *Table::builtIn().find("leaves fallen");
    wet.moisturePercent = 90;
    const BeddingForTray bedding = beddingForTray(squareMetres(0.16), centimetres(5), wet);
    EXPECT_EQ(bedding.water.base(), 0.0);
    EXPECT_NEAR(bedding.moisturePercent, 90, 1e-9);
}

}
