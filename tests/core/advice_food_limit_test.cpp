// How much food: one limit wherever it is asked, withheld where the advice withholds, and no food onto what is not eaten.
#include "core/advice/food_limit.h"

#include "tests/support/calm_stack.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tierloam::advice {
namespace {

using namespace reckoning;
using ::testing::Contains;
using ::testing::HasSubstr;
using ::testing::Not;
using namespace tests;

TEST(AdviceFoodLimit, IsNothingWhereTheAdviceGivesNone)
{
    StackReckoning stack = calm();
    EXPECT_DOUBLE_EQ(foodLimit(stack).kg, 1.6);
    EXPECT_FALSE(foodLimit(stack).isWithheld());
    stack.record.lastBedRead = today;
    stack.record.bedReadC = 34.0;
    EXPECT_EQ(foodLimit(stack).kg, 0.0) << "urgent heat";
    EXPECT_THAT(foodLimit(stack).withheld, HasSubstr("give no food until it is cooler"));
    EXPECT_THAT(foodLimit(stack).withheld, HasSubstr("34 °C"));
    stack.record.bedReadC = 31.0;
    EXPECT_DOUBLE_EQ(foodLimit(stack).kg, 1.6) << "warm, and food is not what warms it";
    stack.record.bedReadC = 3.5;
    EXPECT_EQ(foodLimit(stack).kg, 0.0) << "cold";
    EXPECT_THAT(foodLimit(stack).withheld, HasSubstr("feed no more until it is warmer"));
}

}
}
