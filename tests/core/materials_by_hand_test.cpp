// Further mixes by hand, from the formulas of the sources that checks of the mix arithmetic rest on.
#include "core/materials/bedding.h"
#include "core/materials/kitchen_measure.h"
#include "core/materials/mix.h"

#include <gtest/gtest.h>

using namespace tierloam;
using namespace tierloam::materials;

namespace {

const Material& row(const char* name) { return *Table::builtIn().find(name); }

// USDA National Nutrient Database for Standard Reference (water, protein, ash in % of fresh mass); N by 6.25, C by (100 − ash)/1.8 of dry matter
// (Cornell Waste Management Institute; Adams et al. 1951). By hand: carrot 0.93/6.25/11.71 = 1.2707 %, (100 − 0.97/0.1171)/1.8 = 50.954 %.
struct ByHand { const char* name; double nitrogen, carbon, ratio; };
class FoodByHand : public testing::TestWithParam<ByHand> {};
INSTANTIATE_TEST_SUITE_P(Usda, FoodByHand,
    testing::Values(ByHand{"carrot", 1.2707, 50.954, 40.10},              // NDB 11124
                    ByHand{"banana flesh", 0.6951, 53.740, 77.31},        // NDB 09040
                    ByHand{"kale", 4.2907, 48.559, 11.317},               // NDB 11233
                    ByHand{"oats, dry", 2.9444, 54.514, 18.515}));        // NDB 20038
TEST_P(FoodByHand, HasTheNitrogenAndCarbonOfTheFormula)
{
    const Material& food = row(GetParam().name);
    EXPECT_NEAR(food.nitrogenPercent, GetParam().nitrogen, 0.0005);
    EXPECT_NEAR(100 * food.carbonShare(), GetParam().carbon, 0.005);
    EXPECT_NEAR(*food.carbonToNitrogen, GetParam().ratio, 0.01);
}

Material material(double moisture, double carbonPercent, double nitrogenPercent)
{
    Material made;
    made.moisturePercent = moisture;
    made.nitrogenPercent = nitrogenPercent;
    made.carbonToNitrogen = carbonPercent / nitrogenPercent;
    made.bulkKgPerM3 = 200;
    return made;
}
const Material grass = material(77, 45, 2.4), leaves = material(35, 50, 0.75);

// Cornell's formula for moisture, (a·Ma + b·Mb)/(a + b), by hand: 6 kg at 82 % with 2 kg at 10 % are at 64 %.
TEST(ByHandMoisture, OfTwoMaterials)
{
    const Mix mix = mixOf(kilograms(6), material(82, 45, 2)) + mixOf(kilograms(2), material(10, 45, 2));
    EXPECT_NEAR(*mix.moisturePercent(), 64, 1e-9);
}

// The same formula turned round, Cornell's example at other wishes: 10·(77 − 65)/(65 − 35) = 4; 10·(77 − 50)/(50 − 35) = 18.
TEST(ByHandMoisture, OfCornellsGrassAtOtherWishes)
{
    const Mix ten = mixOf(kilograms(10), grass);
    EXPECT_NEAR(addForMoisture(ten, leaves, 65).material.base(), 4.0, 1e-9);
    EXPECT_NEAR(addForMoisture(ten, leaves, 50).material.base(), 18.0, 1e-9);
    // With water to wet it: (0.8·10 − 7.7)/0.2 = 1.5 L.
    EXPECT_NEAR(addWater(ten, 80).water.base(), 1.5, 1e-9);
}

// Cornell's formula for C:N, by hand: 10 kg grass hold 2.3·0.45 = 1.035 kg C and 0.0552 kg N; leaves 0.325 and 0.004875 a kg.
// Wished 25: (25·0.0552 − 1.035)/(0.325 − 25·0.004875) = 0.345/0.203125 = 1.6985 kg. Wished 40: 1.173/0.13 = 9.0231 kg.
TEST(ByHandRatio, OfCornellsGrassAtOtherWishes)
{
    const Mix ten = mixOf(kilograms(10), grass);
    EXPECT_NEAR(addForCarbonToNitrogen(ten, leaves, 25).material.base(), 1.6985, 5e-5);
    EXPECT_NEAR(addForCarbonToNitrogen(ten, leaves, 40).material.base(), 9.0231, 5e-5);
}

// Three materials: (1.035 + 0.65 + 0.46)/(0.0552 + 0.00975 + 0.00092) with 2 kg of leaves and 1 kg dry-matter-rich paper (M 8, C 50, N 0.1).
TEST(ByHandRatio, OfThreeMaterials)
{
    const Mix mix = mixOf(kilograms(10), grass) + mixOf(kilograms(2), leaves) + mixOf(kilograms(1), material(8, 50, 0.1));
    EXPECT_NEAR(*mix.carbonToNitrogen(), (1.035 + 0.65 + 0.46) / (0.0552 + 0.00975 + 0.00092), 1e-9);
    EXPECT_NEAR(*mix.carbonToNitrogen(), 32.56, 0.005);
}

// Container 20 g, with wet sample 120 g, dried 45 g: 75 %. Cornell Waste Management Institute, on moisture.
TEST(ByHandMoisture, OfASample) { EXPECT_NEAR(*sampleMoisturePercent(grams(20), grams(120), grams(45)), 75, 1e-9); }

// Own arithmetic: 0.25 m², 4 cm are 10 L; newspaper lies at 0.4 of its loose 30 kg/m³: 25 L, 0.75 kg, 5 % moist: 0.7125 kg dry;
// wetted to 0.95·3 = 2.85 kg/kg: 2.030625 − 0.0375 = 1.993125 L.
TEST(ByHandBedding, OfNewspaper)
{
    const BeddingForTray bedding = beddingForTray(squareMetres(0.25), centimetres(4), row("newspaper shredded"));
    EXPECT_NEAR(bedding.asItComes.base(), 0.75, 1e-12);
    EXPECT_NEAR(bedding.dry.base(), 0.7125, 1e-12);
    EXPECT_NEAR(bedding.water.base(), 1.993125, 1e-12);
}

// University of Illinois Extension: 3 parts of water to one of paper. What we lay it with is a little less, since it must not drip.
TEST(ByHandBedding, TakesNoMoreWaterThanPublishedForPaper)
{
    const BeddingForTray bedding = beddingForTray(squareMetres(0.16), centimetres(5), row("newspaper shredded"));
    const double parts = bedding.water.base() / bedding.asItComes.base();
    EXPECT_LE(parts, 3.0);
    EXPECT_GE(parts, 2.5);
}

TEST(KitchenMeasure, IsAMassOrAVolumeByTheBulk)
{
    const Material& scraps = row("kitchen mix"); // 450 kg/m³
    EXPECT_DOUBLE_EQ(freshMass(300, KitchenMeasure::gram, scraps).base(), 0.3);
    EXPECT_DOUBLE_EQ(freshMass(2, KitchenMeasure::litre, scraps).base(), 0.9);
    EXPECT_DOUBLE_EQ(freshMass(1, KitchenMeasure::bucket, scraps).base(), 4.5);
    EXPECT_NEAR(freshMass(1, KitchenMeasure::tablespoon, scraps).base(), 0.00675, 1e-12);
    EXPECT_NEAR(freshMass(1, KitchenMeasure::pound, scraps).base(), 0.45359237, 1e-12);
    int number = 0;
    for (const MeasureRow& each : kitchenMeasures()) {
        EXPECT_EQ(static_cast<int>(each.measure), number++);
        EXPECT_NE(each.mass.has_value(), each.volume.has_value());
        EXPECT_FALSE(each.source.empty());
    }
}

}
