#include "ui/drawing/stack_motion.h"

#include <QGuiApplication>

#include <gtest/gtest.h>

using namespace tierloam::drawing;

namespace {

StackMoment momentOf(const std::vector<int>& batches, double ground = 400)
{
    StackMoment moment;
    for (const int batch : batches) {
        TrayPicture tray;
        tray.slot = static_cast<int>(moment.picture.trays.size()) + 1;
        tray.batch = batch;
        tray.ageLabel = QStringLiteral("10 d");
        moment.picture.trays.push_back(tray);
    }
    const Type type = Type::from(QGuiApplication::font());
    const LabelSpace labels = labelSpace({&moment.picture, 1}, type);
    moment.layout = layOut(moment.picture, {5, 4}, labels, 20, 200, ground);
    return moment;
}

}

TEST(StackMotion, BatchesTellWhetherSomethingMoves)
{
    EXPECT_FALSE(standsOtherwise(momentOf({1, 2}).picture, momentOf({1, 2}).picture));
    EXPECT_TRUE(standsOtherwise(momentOf({1, 2}).picture, momentOf({1, 2, 3}).picture)); // added
    EXPECT_TRUE(standsOtherwise(momentOf({1, 2}).picture, momentOf({2, 1}).picture));    // lifted
    EXPECT_TRUE(standsOtherwise(momentOf({1, 2, 3}).picture, momentOf({1, 2}).picture)); // harvested
}

TEST(StackMotion, BeginsWhereItStoodAndEndsWhereItStands)
{
    const StackMoment from = momentOf({1, 2, 3}), to = momentOf({2, 3, 1});
    const StackMoment first = between(from, to, 0), middle = between(from, to, 0.5), last = between(from, to, 1);
    ASSERT_EQ(first.layout.trays.size(), 3U);
    EXPECT_EQ(first.layout.trays[2].box, from.layout.trays[0].box); // the lifted one is still at the bottom
    EXPECT_EQ(first.layout.trays[0].box, from.layout.trays[1].box);
    for (std::size_t i = 0; i < 3; ++i) {
        EXPECT_EQ(last.layout.trays[i].box, to.layout.trays[i].box);
        EXPECT_DOUBLE_EQ(middle.layout.trays[i].opacity, 1);
    }
    EXPECT_NEAR(middle.layout.trays[2].box.top(), (from.layout.trays[0].box.top() + to.layout.trays[2].box.top()) / 2, 1e-9);
}

TEST(StackMotion, ANewTrayComesDownAndATakenOneGoesUpBothFading)
{
    const StackMoment two = momentOf({1, 2}), three = momentOf({1, 2, 3});
    const StackMoment adding = between(two, three, 0.5);
    EXPECT_LT(adding.layout.trays[2].box.top(), three.layout.trays[2].box.top());
    EXPECT_DOUBLE_EQ(adding.layout.trays[2].opacity, 0.5);
    EXPECT_DOUBLE_EQ(between(two, three, 0).layout.trays[2].opacity, 0);
    const StackMoment taking = between(three, two, 0.5);
    ASSERT_EQ(taking.picture.trays.size(), 3U);
    ASSERT_EQ(taking.layout.trays.size(), 3U);
    EXPECT_EQ(taking.picture.trays[2].batch, 3);
    EXPECT_LT(taking.layout.trays[2].box.top(), three.layout.trays[2].box.top());
    EXPECT_DOUBLE_EQ(between(three, two, 1).layout.trays[2].opacity, 0);
}

TEST(StackMotion, FollowsAGroundThatWasLaidAnew)
{
    const StackMoment from = momentOf({1, 2}, 300), to = momentOf({2, 1}, 420);
    const StackMoment first = between(from, to, 0);
    EXPECT_NEAR(first.layout.trays[1].box.top(), from.layout.trays[0].box.top() + 120, 1e-9);
}
