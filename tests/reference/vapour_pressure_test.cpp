// FAO Irrigation and Drainage Paper 56 (Allen et al. 1998), eq. 11 and table 2.3; the table's values by way of a library's tests.
#include "core/model/vapour_pressure.h"

#include <gtest/gtest.h>

#include <cmath>

namespace tierloam::model {
namespace {

struct Row { double celsius, kilopascal, tolerance; };
class VapourPressure : public ::testing::TestWithParam<Row> {};
INSTANTIATE_TEST_SUITE_P(Fao56Table23, VapourPressure,
                         ::testing::Values(Row{1, 0.657, 0.001}, Row{10, 1.228, 0.001}, Row{20, 2.338, 0.001}, Row{30, 4.243, 0.001}, Row{40, 7.384, 0.02}));

TEST_P(VapourPressure, AgreesWithThePrintedTable)
{
    EXPECT_NEAR(saturationVapourPressure(GetParam().celsius), GetParam().kilopascal, GetParam().tolerance);
}

// The tolerance is narrow enough to tell half a degree.
TEST(VapourPressureMutation, HalfADegreeOffIsSeen) { EXPECT_GT(std::abs(saturationVapourPressure(20.5) - 2.338), 0.001); }

}
}
