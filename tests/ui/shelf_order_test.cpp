#include "tests/support/sample_shelf.h"
#include "core/household/stack_order.h"

#include <gtest/gtest.h>

using namespace tierloam;
using namespace tierloam::shelf;
using namespace tierloam::household;

TEST(StackOrder, ReadsBackWhatItWrites)
{
    const StackOrder order{"Lean-to", "Scullery, upper", "Keller \u00fc"};
    EXPECT_EQ(orderFrom(orderText(order)), order);
    EXPECT_TRUE(orderFrom({}).empty());
    EXPECT_EQ(orderFrom(QStringLiteral("a\n\nb\na\n")), (StackOrder{"a", "b"})); // by another hand
}

TEST(StackOrder, NamedOnesComeFirstTheRestAsTheyCame)
{
    EXPECT_EQ(ordered({"a", "b", "c", "d"}, {"c", "gone", "a"}), (StackOrder{"c", "a", "b", "d"}));
    EXPECT_EQ(ordered({"a", "b"}, {}), (StackOrder{"a", "b"}));
}

TEST(StackOrder, MovesOneAndHoldsItToWhatIsThere)
{
    EXPECT_EQ(movedTo({"a", "b", "c"}, "a", 1), (StackOrder{"b", "a", "c"}));
    EXPECT_EQ(movedTo({"a", "b", "c"}, "c", 0), (StackOrder{"c", "a", "b"}));
    EXPECT_EQ(movedTo({"a", "b", "c"}, "a", 9), (StackOrder{"b", "c", "a"}));
    EXPECT_EQ(movedTo({"a", "b"}, "z", 0), (StackOrder{"a", "b"}));
}

TEST(StackOrder, TheShelfFollowsIt)
{
    ShelfInputs inputs = tests::sampleInputs();
    inputs.order = {"Cellar", "Scullery"};
    const ShelfModel shelf = makeShelf(inputs);
    ASSERT_EQ(shelf.stacks.size(), 3U);
    EXPECT_EQ(shelf.stacks[0].key, "Cellar");
    EXPECT_EQ(shelf.stacks[1].key, "Scullery");
    EXPECT_EQ(shelf.stacks[2].key, "Lean-to");
}
