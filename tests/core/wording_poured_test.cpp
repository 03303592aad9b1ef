// What is to be poured is a step of a kitchen jug, in the unit in which it is told and recorded.
#include "core/wording/formats.h"

#include <gtest/gtest.h>

#include <cmath>

namespace tierloam::wording {
namespace {

struct Case { double litres; Amount poured; };

void expectAll(std::initializer_list<Case> cases)
{
    for (const Case& each : cases) {
        const Amount got = volumeAmount(each.litres);
        EXPECT_DOUBLE_EQ(got.value, each.poured.value) << each.litres;
        EXPECT_EQ(got.unit, each.poured.unit) << each.litres;
    }
}

TEST(Poured, IsAStepOfAJug)
{
    expectAll({{0.0, {100, Unit::mL}}, {0.24, {200, Unit::mL}}, {0.94, {900, Unit::mL}}, {0.96, {1, Unit::L}}, {1.12, {1, Unit::L}}, {1.2, {1.25, Unit::L}}, {1.4, {1.5, Unit::L}}, {7.6, {7.5, Unit::L}}});
    EXPECT_EQ(amountText(volumeAmount(1.2)), QStringLiteral("1.25\u00a0L"));
}

// 1 cup 0.2366 L, 1 fl oz 29.57 mL, 1 quart 0.946 L (NIST Handbook 44)
TEST(Poured, IsAStepOfACupOrAQuartByUsMeasures)
{
    setMeasures(Measures::us);
    expectAll({{0.0, {4, Unit::floz}}, {0.24, {8, Unit::floz}}, {0.95, {32, Unit::floz}}, {1.2, {40, Unit::floz}}, {3.6, {120, Unit::floz}}, {3.8, {1, Unit::gal}}, {4.8, {1.25, Unit::gal}}});
    setMeasures(Measures::metric);
}

/// More is never told as less, whatever the unit, and what is told is within half a step of what is wanted.
TEST(Poured, RisesWithWhatIsWanted)
{
    for (const Measures measures : {Measures::metric, Measures::us}) {
        setMeasures(measures);
        double before = 0.0;
        for (double litres = 0.1; litres < 12.0; litres += 0.003) {
            const Amount got = volumeAmount(litres);
            const double told = got.value * inBaseUnit(got.unit);
            EXPECT_GE(told, before - 1e-9) << litres;
            EXPECT_LE(std::abs(told - litres), litres < 0.9 ? 0.06 : litres < 3.5 ? 0.126 : 0.48) << litres;
            before = told;
        }
    }
    setMeasures(Measures::metric);
}

}
}
