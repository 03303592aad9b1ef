// Chances read off the bands that the reckoning hands over.
#include "core/advice/chance.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tierloam::advice {
namespace {

using namespace reckoning;

TEST(Chance, IsReadOffTheBandByStraightLines)
{
    const Band band{1, 2, 4};
    EXPECT_DOUBLE_EQ(*chanceBelow(band, 1), 0.05);
    EXPECT_DOUBLE_EQ(*chanceBelow(band, 2), 0.5);
    EXPECT_DOUBLE_EQ(*chanceBelow(band, 3), 0.725);
    EXPECT_DOUBLE_EQ(*chanceAbove(band, 3), 0.275);
    EXPECT_DOUBLE_EQ(*chanceAbove(band, 9), 0.0);
    EXPECT_EQ(chanceAbove(Band{}, 1), std::nullopt);
    EXPECT_DOUBLE_EQ(*chanceAbove(Band{3, 3, 3}, 2), 1.0);
}

}
}
