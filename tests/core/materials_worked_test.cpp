// Sixteen mixes and four beddings worked by hand, apart from the program: the printed rows are written here once more, and what they give was worked out
// with the equations of the On-Farm Composting Handbook (NRAES-54, 1992; the equations from memory, the same as Cornell's that were read):
//     moisture = Σ Q·M / Σ Q           C:N = Σ Q·C·(100 − M) / Σ Q·N·(100 − M)
// with Q the mass as it is, M in % of it, C and N in % of dry matter. Foods: water, protein and ash of the USDA National Nutrient Database, N = protein/6.25,
// C = (100 − ash)/1.8 (Cornell; Adams et al. 1951). Others: N and C:N as resources/materials.csv says, each with its source there.
#include "core/materials/bedding.h"
#include "core/materials/kitchen_measure.h"
#include "core/materials/mix.h"

#include <gtest/gtest.h>

#include <map>
#include <ostream>
#include <string>
#include <vector>

using namespace tierloam;
using namespace tierloam::materials;

namespace {

struct Printed { double moisture, carbon, nitrogen; };

Printed byRatio(double moisture, double nitrogen, double ratio) { return {moisture, nitrogen * ratio, nitrogen}; }
Printed byFood(double water, double protein, double ash)
{
    const double dry = 100 - water;
    return {water, (100 - 100 * ash / dry) / 1.8, 100 * protein / 6.25 / dry};
}

const std::map<std::string, Printed> printed{
    {"corrugated cardboard shredded", byRatio(8, 0.10, 563)},   // NRAES-54, table A.1 (memory)
    {"newspaper shredded", byRatio(5, 0.12, 420)},              // NRAES-54 (memory)
    {"leaves fallen", byRatio(38, 0.90, 54)},                   // NRAES-54 (memory)
    {"horse manure aged", byRatio(72, 1.60, 30)},               // NRAES-54 (memory)
    {"coffee grounds", byRatio(60, 2.30, 20)},                  // NRAES-54, second hand
    {"tea leaves spent", byRatio(80, 3.80, 13)},                // memory
    {"lettuce, green leaf", byFood(94.98, 1.36, 0.62)},         // NDB 11253
    {"potato, flesh+skin", byFood(79.34, 2.02, 1.08)},          // NDB 11352
    {"banana flesh", byFood(74.91, 1.09, 0.82)},                // NDB 09040
    {"apple, with skin", byFood(85.56, 0.26, 0.19)},            // NDB 09003
};

const Material& row(const std::string& name) { return *Table::builtIn().find(name); }

struct Part { const char* name; double kg; };
struct Worked { std::vector<Part> parts; double moisture, ratio; };
std::ostream& operator<<(std::ostream& out, const Worked& worked)
{
    for (const Part& part : worked.parts) out << part.kg << " kg " << part.name << "; ";
    return out;
}

class WorkedMix : public testing::TestWithParam<Worked> {};
INSTANTIATE_TEST_SUITE_P(Nraes54, WorkedMix,
    testing::Values(Worked{{{"coffee grounds", 3}, {"corrugated cardboard shredded", 1}}, 47.000, 37.516},
                    Worked{{{"horse manure aged", 2}, {"newspaper shredded", 0.5}}, 58.600, 53.326},
                    Worked{{{"lettuce, green leaf", 1}, {"corrugated cardboard shredded", 0.2}}, 80.483, 54.253},
                    Worked{{{"potato, flesh+skin", 1.5}, {"leaves fallen", 0.5}}, 69.005, 41.088},
                    Worked{{{"banana flesh", 0.5}, {"apple, with skin", 0.5}, {"newspaper shredded", 0.2}}, 67.696, 155.015},
                    Worked{{{"horse manure aged", 5}, {"leaves fallen", 1}, {"coffee grounds", 0.8}}, 65.588, 31.707}));

TEST_P(WorkedMix, HasTheMoistureAndTheRatioOfTheEquations)
{
    Mix mix;
    double fresh = 0, water = 0, carbon = 0, nitrogen = 0;
    for (const Part& part : GetParam().parts) {
        mix = mix + mixOf(kilograms(part.kg), row(part.name));
        const Printed& said = printed.at(part.name);
        fresh += part.kg;
        water += part.kg * said.moisture;
        carbon += part.kg * said.carbon * (100 - said.moisture);
        nitrogen += part.kg * said.nitrogen * (100 - said.moisture);
    }
    EXPECT_NEAR(*mix.moisturePercent(), GetParam().moisture, 0.0005);
    EXPECT_NEAR(*mix.carbonToNitrogen(), GetParam().ratio, 0.0005);
    EXPECT_NEAR(*mix.moisturePercent(), water / fresh, 1e-9);
    EXPECT_NEAR(*mix.carbonToNitrogen(), carbon / nitrogen, 1e-9);
}

// Four US cups (0.2365882 L) of coffee grounds of 500 kg/m³ are 0.473176 kg, six handfuls (0.15 L) of leaves of 120 kg/m³ 0.108 kg.
TEST(WorkedKitchenMeasures, CupsAndHandfuls)
{
    const Mix mix = mixOf(freshMass(4, KitchenMeasure::cup, row("coffee grounds")), row("coffee grounds")) + mixOf(freshMass(6, KitchenMeasure::handful, row("leaves fallen")), row("leaves fallen"));
    EXPECT_NEAR(mix.fresh().base(), 0.581176, 1e-6);
    EXPECT_NEAR(*mix.moisturePercent(), 55.912, 0.0005);
    EXPECT_NEAR(*mix.carbonToNitrogen(), 24.134, 0.0005);
    EXPECT_NEAR(mix.bulk.base(), 4 * 0.2365882 + 6 * 0.15, 1e-6);
}

// A bucket (10 L) of leaves is 1.2 kg; two pounds of tea leaves are 0.907185 kg.
TEST(WorkedKitchenMeasures, BucketAndPounds)
{
    const Mix mix = mixOf(freshMass(1, KitchenMeasure::bucket, row("leaves fallen")), row("leaves fallen")) + mixOf(freshMass(2, KitchenMeasure::pound, row("tea leaves spent")), row("tea leaves spent"));
    EXPECT_NEAR(*mix.moisturePercent(), 56.082, 0.0005);
    EXPECT_NEAR(*mix.carbonToNitrogen(), 33.200, 0.0005);
}

// Ten tablespoons (15 mL) of coffee grounds are 0.075 kg, with 400 g of potato.
TEST(WorkedKitchenMeasures, TablespoonsAndGrams)
{
    const Mix mix = mixOf(freshMass(10, KitchenMeasure::tablespoon, row("coffee grounds")), row("coffee grounds")) + mixOf(freshMass(400, KitchenMeasure::gram, row("potato, flesh+skin")), row("potato, flesh+skin"));
    EXPECT_NEAR(*mix.moisturePercent(), 76.286, 0.0005);
    EXPECT_NEAR(*mix.carbonToNitrogen(), 28.904, 0.0005);
}

// x = Q·(100 − M)·(goal·N − C) / ((100 − Mx)·(Cx − goal·Nx)): 2·40·(30·2.3 − 46)/(92·(56.3 − 3)) = 1840/4903.6.
TEST(WorkedAims, CoffeeWithCardboardForThirtyToOne)
{
    const Addition addition = addForCarbonToNitrogen(mixOf(kilograms(2), row("coffee grounds")), row("corrugated cardboard shredded"), 30);
    EXPECT_EQ(addition.obstacle, Obstacle::none);
    EXPECT_NEAR(addition.material.base(), 0.375235, 1e-6);
    EXPECT_NEAR(*addition.mix.moisturePercent(), 51.785, 0.0005);
}

// x = Q·(M − goal)/(goal − Mx): (94.98 − 75)/(75 − 5) and 0.8·(74.91 − 65)/(65 − 8).
TEST(WorkedAims, MoistureOfLettuceAndOfBanana)
{
    EXPECT_NEAR(addForMoisture(mixOf(kilograms(1), row("lettuce, green leaf")), row("newspaper shredded"), 75).material.base(), 0.285429, 1e-6);
    EXPECT_NEAR(addForMoisture(mixOf(kilograms(0.8), row("banana flesh")), row("corrugated cardboard shredded"), 65).material.base(), 0.139088, 1e-6);
}

// 20·3.8·(30 − 13)/(92·53.3) = 0.263480 kg, then at 64.985 %; to 80 %: 1.26348·(80 − 64.985)/20 = 0.948528 L of water.
TEST(WorkedAims, TeaWithCardboardAndWaterForBoth)
{
    const Addition addition = addForBoth(mixOf(kilograms(1), row("tea leaves spent")), row("corrugated cardboard shredded"), 80, 30);
    EXPECT_EQ(addition.obstacle, Obstacle::none);
    EXPECT_NEAR(addition.material.base(), 0.263480, 1e-6);
    EXPECT_NEAR(addition.water.base(), 0.948528, 1e-6);
}

// Lettuce has 11.23; coffee has 20, so 30 is never reached: twenty times as much gives 19.898. Tea at 80 % with banana at 74.91 %: 75.152 %, not 60.
TEST(WorkedAims, OutOfReach)
{
    const Addition ratio = addForCarbonToNitrogen(mixOf(kilograms(1), row("lettuce, green leaf")), row("coffee grounds"), 30);
    EXPECT_EQ(ratio.obstacle, Obstacle::notFarEnough);
    EXPECT_NEAR(ratio.material.base(), 20, 1e-9);
    EXPECT_NEAR(*ratio.mix.carbonToNitrogen(), 19.898, 0.0005);
    const Addition moisture = addForMoisture(mixOf(kilograms(1), row("tea leaves spent")), row("banana flesh"), 60);
    EXPECT_EQ(moisture.obstacle, Obstacle::notFarEnough);
    EXPECT_NEAR(*moisture.mix.moisturePercent(), 75.152, 0.0005);
    // Coffee (20) and tea (13) for 30: each bit of tea leads away, so nothing is added.
    const Addition away = addForCarbonToNitrogen(mixOf(kilograms(1), row("coffee grounds")), row("tea leaves spent"), 30);
    EXPECT_EQ(away.obstacle, Obstacle::wrongWay);
    EXPECT_EQ(away.material.base(), 0.0);
}

// Lettuce with leaves: 30 : 1 at 0.305 kg is at 81.67 %; 60 % at 1.59 kg is at 45.6 : 1. Nearest by the distance that mix.h names, tried in steps of
// 10 mg: 0.953 kg, at 67.17 % and 41.59 : 1.
TEST(WorkedAims, BothInConflict)
{
    const Addition addition = addForBoth(mixOf(kilograms(1), row("lettuce, green leaf")), row("leaves fallen"), 60, 30);
    EXPECT_EQ(addition.obstacle, Obstacle::tooWet);
    EXPECT_EQ(addition.water.base(), 0.0);
    EXPECT_NEAR(addition.material.base(), 0.953, 0.002);
    EXPECT_NEAR(*addition.mix.moisturePercent(), 67.17, 0.02);
    EXPECT_NEAR(*addition.mix.carbonToNitrogen(), 41.59, 0.03);
}

// Litres laid = area · depth; loose = laid ÷ 1, 0.6 (cardboard and leaves) or 0.4 (paper); mass by the loose bulk; water = 0.95 · held · dry − what it brings.
// Coir: 7.2 L, 0.432 kg, 0.35424 dry, 0.95·8·0.35424 − 0.07776. Leaves: 10 L, 2 kg. Paper on 2 ft² (0.18580608 m²), 2 inches: 9.439 L, 0.707921 kg.
struct Laid { const char* name; double area, depth, dry, water; };
TEST(WorkedBedding, ForANewTray)
{
    for (const Laid& each : {Laid{"coconut coir (from a dry brick)", 0.12, 6, 0.35424, 2.614464}, Laid{"leaves fallen", 0.2, 5, 1.24, 1.596},
                             Laid{"newspaper shredded", 2 * 0.3048 * 0.3048, 5.08, 0.672525, 1.881300}, Laid{"corrugated cardboard shredded", 0.16, 2.5, 0.368, 1.0168}}) {
        const BeddingForTray bedding = beddingForTray(squareMetres(each.area), centimetres(each.depth), row(each.name));
        EXPECT_NEAR(bedding.dry.base(), each.dry, 1e-6) << each.name;
        EXPECT_NEAR(bedding.water.base(), each.water, 1e-6) << each.name;
    }
}

}
