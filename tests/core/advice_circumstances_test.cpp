// What is advised where things stand otherwise than usual: one tray only, much given already, no room, litres that tell two stories.
#include "core/advice/advice.h"

#include "tests/support/calm_stack.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tierloam::tests {
namespace {

using ::testing::Contains;
using ::testing::HasSubstr;
using ::testing::Not;
using advice::adviceFor;

StackReckoning onlyTray()
{
    StackReckoning stack = calm();
    stack.now.slots.resize(1);
    for (StackEstimate& day : stack.history) day.slots.resize(1);
    stack.record.spareTrays = 0;
    return stack;
}

TEST(AdviceOfAnOnlyTray, IsNotFedOnTheDayOnWhichItIsToBeEmptied)
{
    StackReckoning stack = onlyTray();
    stack.record.lastFeed = in(-9);
    EXPECT_THAT(codes(stack), Contains("feed-due"));
    stack.turnSince = stack.readySince = in(-2);
    since(stack, -2, [](StackEstimate& day) { day.slots[0].state = TrayState::ready; });
    const auto all = adviceFor(stack);
    ASSERT_NE(find(all, Code::harvestReady), nullptr);
    EXPECT_THAT(find(all, Code::harvestReady)->text, HasSubstr("only tray"));
    EXPECT_EQ(find(all, Code::feedDue), nullptr);
}

TEST(AdviceOfAnOnlyTray, NamesNoTrayThatIsNotThere)
{
    StackReckoning stack = onlyTray();
    stack.forecast.roomTopTrayFreshKg = 0.1;
    stack.forecast.topTrayFullOn.p50 = in(3);
    const Advice* full = nullptr;
    const auto all = adviceFor(stack);
    full = find(all, Code::trayFull);
    ASSERT_NE(full, nullptr);
    EXPECT_EQ(full->text, "The only tray is full: feed less until its castings are taken");
    EXPECT_EQ(full->on, in(0));
    stack.forecast.roomTopTrayFreshKg = 4.0;
    stack.forecast.readyAndTurnWithin14Days = 0.6;
    EXPECT_THAT(find(adviceFor(stack), Code::harvestSoon)->text, HasSubstr("only tray"));
}

TEST(AdviceOfFood, WhatWasGivenThisWeekCounts)
{
    StackReckoning stack = calm();
    stack.record.lastFeed = in(-6);
    stack.forecast.feedNowKg = 0.35;
    stack.record.areaM2 = 0.17; // two trays take 1.67 kg in seven days
    stack.record.fedKg = {0.0, 0.45, 0.0, 0.4, 0.4, 0.0, 0.0};
    const auto all = adviceFor(stack);
    ASSERT_NE(find(all, Code::feedDue), nullptr);
    EXPECT_THAT(find(all, Code::feedDue)->text, HasSubstr("at most 350 g"));
    EXPECT_THAT(find(all, Code::feedDue)->because, HasSubstr("1.3 kg were given within 7 days"));
    EXPECT_DOUBLE_EQ(find(all, Code::feedDue)->kg, 0.35);
    stack.record.fedKg = {0.0, 0.45, 0.0, 0.4, 0.2, 0.0, 0.2}; // due tomorrow, when the last of them lies a week back
    EXPECT_THAT(find(adviceFor(stack), Code::feedDue)->text, HasSubstr("at most 550 g"));
    EXPECT_THAT(find(adviceFor(stack), Code::feedDue)->because, HasSubstr("1.1 kg were given within 7 days"));
    stack.record.fedKg.back() = 0.0;
    stack.forecast.feedNowKg = 0.02; // nothing more this week
    EXPECT_THAT(codes(stack), Not(Contains("feed-due")));
    stack = calm();
    stack.record.lastFeed = in(0);
    stack.record.medianFeedGapDays = 2;
    EXPECT_THAT(find(adviceFor(stack), Code::feedDue)->because, HasSubstr("fed today"));
}

TEST(AdviceOfFood, NothingIsSaidOfHowToFeedWhereNothingIsToBeGiven)
{
    StackReckoning stack = calm();
    stack.forecast.usualCarbonKg = 0.04;
    EXPECT_THAT(codes(stack), Contains("low-carbon"));
    stack.forecast.roomTopTrayFreshKg = 0.1;
    stack.forecast.topTrayFullOn.p50 = in(3);
    EXPECT_THAT(codes(stack), Contains("tray-full"));
    EXPECT_THAT(codes(stack), Not(Contains("low-carbon"))) << "paper takes room as food does";
    since(stack, 0, [](StackEstimate& day) { day.slots[1].air = 0.55; });
    const auto all = adviceFor(stack);
    ASSERT_NE(find(all, Code::overfed), nullptr);
    EXPECT_EQ(find(all, Code::lowCarbon), nullptr);
    EXPECT_EQ(find(all, Code::trayFull), nullptr);
}

TEST(AdviceOfFood, ATrayIsAddedAndNotCalledFullBesides)
{
    StackReckoning stack = calm();
    stack.forecast.roomTopTrayFreshKg = 0.1;
    stack.forecast.topTrayFullOn.p50 = in(3);
    stack.record.spareTrays = 1;
    EXPECT_THAT(codes(stack), Contains("tray-full"));
    stack.turnSince = in(-1);
    EXPECT_THAT(codes(stack), Contains("add-tray"));
    EXPECT_THAT(codes(stack), Not(Contains("tray-full")));
    EXPECT_EQ(find(adviceFor(stack), Code::addTray)->severity, advice::Severity::concern) << "as pressing as the full tray is";
    EXPECT_THAT(reasonOf(stack, Code::addTray), HasSubstr("its turn for 1 day(s); 6.0 cm of 11.0 cm used; 100 g of the usual food still fit"));
    stack.forecast.roomTopTrayFreshKg = 4.0; // it fills up within a week
    for (StackEstimate& day : stack.history) day.ahead->topTrayFullOn.p50 = day.day + std::chrono::days{5};
    EXPECT_EQ(find(adviceFor(stack), Code::addTray)->severity, advice::Severity::due);
    EXPECT_THAT(reasonOf(stack, Code::addTray), Not(HasSubstr("still fit")));
}

TEST(AdviceOfFood, ATrayHeapedAboveItsRimIsSaidToBe)
{
    StackReckoning stack = calm();
    stack.forecast.roomTopTrayFreshKg = 0.0;
    stack.forecast.topTrayFullOn.p50 = in(3);
    stack.record.trayHeightCm = 11;
    since(stack, 0, [](StackEstimate& day) { day.slots[1].depthCm = 58.7; });
    EXPECT_THAT(find(adviceFor(stack), Code::trayFull)->because, HasSubstr("heaped above its 11"));
}

/// Fed three days ago, and nothing fits: to feed less is no way then.
TEST(AdviceOfFood, AFullTrayIsNotToBeFedLess)
{
    StackReckoning stack = calm();
    stack.record.spareTrays = 1;
    stack.forecast.topTrayFullOn.p50 = in(3);
    stack.forecast.roomTopTrayFreshKg = 0.1;
    const auto text = [&] {
        const auto all = adviceFor(stack);
        const Advice* full = find(all, Code::trayFull);
        return full != nullptr ? full->text : std::string{};
    };
    EXPECT_EQ(text(), "The top tray is full: add a tray, or feed less");
    stack.forecast.roomTopTrayFreshKg = 0.04;
    EXPECT_EQ(text(), "The top tray is full: add a tray, then feed");
}

/// 100 g of shredded paper are some 3 L.
TEST(AdviceOfFood, PaperIsAskedForWhereItFits)
{
    StackReckoning stack = calm();
    stack.forecast.usualCarbonKg = 0.045;
    stack.forecast.usualNitrogenKg = 0.003;
    const auto paper = [&](double depth) {
        stack.now.slots[1].depthCm = depth;
        const auto all = adviceFor(stack);
        const Advice* low = find(all, Code::lowCarbon);
        return low != nullptr ? low->kg : 0.0;
    };
    const double kg = paper(6.0);
    ASSERT_GT(kg, 0.0);
    const double litres = kg / 30.0 * 1000.0, cm = litres / 1000.0 / stack.record.areaM2 * 100.0;
    EXPECT_GT(paper(10.0 - cm - 0.1), 0.0);
    EXPECT_EQ(paper(10.0 - cm + 0.1), 0.0) << "1 cm under the rim stays free";
}

TEST(AdviceOfDrains, AFullSumpThatRanOverIsNoBlockedSpigot)
{
    StackReckoning stack = calm();
    stack.record.spigotShut = true;
    stack.record.sumpCapacityL = 4.0;
    for (const int day : {-40, -5}) stack.drains.push_back({in(day), 3.9, {4.5, 6.0, 8.0}});
    EXPECT_THAT(codes(stack), Not(Contains("drainage-low")));
    for (reckoning::DrainCheck& drain : stack.drains) drain.litres = 2.0;
    EXPECT_THAT(codes(stack), Contains("drainage-low"));
}

TEST(AdviceOfDrains, TheSameLitresAreToldOnce)
{
    StackReckoning stack = calm();
    stack.disagreements.push_back({7, in(-5), LookKind::drain, 0, 6.0, {1.0, 2.0, 3.0}, {}});
    EXPECT_THAT(codes(stack), Contains("record-disagrees"));
    for (const int day : {-12, -5}) stack.drains.push_back({in(day), 6.0, {1.0, 2.0, 3.0}});
    EXPECT_THAT(codes(stack), Contains("drainage-high"));
    EXPECT_THAT(codes(stack), Not(Contains("record-disagrees")));
    stack.disagreements.back().kind = LookKind::depth; // another matter
    EXPECT_THAT(codes(stack), Contains("record-disagrees"));
}

}
}
