// What is advised where things stand otherwise than usual: nobody at home, one tray only, much given already, litres that tell two stories.
#include "core/advice/household_advice.h"
#include "core/wording/dates.h"

#include "tests/support/calm_stack.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tierloam::tests {
namespace {

using ::testing::Contains;
using ::testing::HasSubstr;
using ::testing::Not;
using advice::adviceFor;

StackReckoning away(int from, int until)
{
    StackReckoning stack = calm();
    stack.record.awayFrom = in(from);
    stack.record.awayUntil = in(until);
    return stack;
}

TEST(AdviceWhileAway, IsForTheDayOfTheReturnUnlessItPresses)
{
    StackReckoning stack = away(-2, 9);
    stack.record.spareTrays = 1;
    stack.turnSince = in(-1);
    const auto all = adviceFor(stack);
    ASSERT_NE(find(all, Code::addTray), nullptr);
    EXPECT_EQ(find(all, Code::addTray)->on, in(10));
    stack.record.awayUntil = in(-1); // back since this morning
    EXPECT_EQ(find(adviceFor(stack), Code::addTray)->on, in(0));

    StackReckoning hot = away(-2, 9);
    since(hot, 0, [](StackEstimate& day) { day.binTempC = {31, 32, 33}; });
    const auto presses = adviceFor(hot);
    ASSERT_NE(find(presses, Code::heat), nullptr);
    EXPECT_EQ(find(presses, Code::heat)->on, in(0));
}

TEST(AdviceWhileAway, AsksForNoLookAndNoFood)
{
    const auto drying = [](StackReckoning stack) {
        since(stack, 0, [](StackEstimate& day) { day.slots[1].waterShare = {0.60, 0.72, 0.85}; });
        stack.record.lastFeed = in(-9);
        return stack;
    };
    const StackReckoning there = drying(calm());
    EXPECT_THAT(codes(there), Contains("too-dry"));
    EXPECT_THAT(codes(there), Contains("feed-due"));
    const StackReckoning gone = drying(away(-2, 9));
    EXPECT_THAT(codes(gone), Not(Contains("too-dry")));
    EXPECT_THAT(codes(gone), Not(Contains("feed-due")));
}

/// Nobody feeds meanwhile, and on the return it is another question; what says that the bed lacks air now is told all the same.
TEST(AdviceWhileAway, ThatNoFoodIsToBeGivenLapses)
{
    const auto lacksAir = [](StackReckoning stack, double share) {
        stack.forecast.airLowWithin14Days = 0.6;
        stack.forecast.feedHighKg = stack.forecast.feedNowKg = 0.0;
        since(stack, 0, [share](StackEstimate& day) { day.slots[1].air = share; });
        return stack;
    };
    const auto told = adviceFor(lacksAir(calm(), 0.9));
    ASSERT_NE(find(told, Code::overfed), nullptr);
    EXPECT_EQ(find(told, Code::overfed)->severity, advice::Severity::due);
    EXPECT_EQ(find(told, Code::overfed)->food, advice::Food::withhold);
    EXPECT_THAT(codes(lacksAir(away(-2, 9), 0.9)), Not(Contains("overfed")));
    EXPECT_THAT(codes(lacksAir(away(-2, 9), 0.6)), Contains("overfed")) << "a concern";
    StackReckoning only = away(-2, 9);
    only.now.slots.resize(1);
    only.now.slots[0].state = TrayState::ready;
    only.readySince = only.turnSince = in(-3);
    const auto all = adviceFor(only);
    ASSERT_NE(find(all, Code::harvestReady), nullptr) << "it is of the castings";
    EXPECT_EQ(find(all, Code::harvestReady)->on, in(10));
}

/// A tray lifted the day before they leave would hang in the light until they are back.
TEST(AdviceBeforeLeaving, LiftsWaitForTheReturnAndFoodComesBefore)
{
    StackReckoning stack = calm();
    stack.record.spareTrays = 0;
    since(stack, -3, [](StackEstimate& day) {
        day.slots[0].feedToCast = {0.04, 0.06, 0.08};
        day.slots[0].readyProbability = 0.95;
        day.slots[0].state = TrayState::ready;
    });
    stack.turnSince = stack.readySince = in(-1);
    stack.record.lastFeed = in(-5); // due in two days
    stack.record.medianFeedGapDays = 7;
    const auto there = adviceFor(stack);
    ASSERT_NE(find(there, Code::harvestReady), nullptr);
    EXPECT_EQ(find(there, Code::harvestReady)->on, in(0));
    ASSERT_NE(find(there, Code::feedDue), nullptr);
    EXPECT_EQ(find(there, Code::feedDue)->on, in(2));
    stack.record.nextAwayFrom = in(1);
    stack.record.nextAwayUntil = in(14);
    const auto leaving = adviceFor(stack);
    EXPECT_EQ(find(leaving, Code::harvestReady)->on, in(15));
    EXPECT_THAT(find(leaving, Code::harvestReady)->because, HasSubstr("nobody is there"));
    EXPECT_EQ(find(leaving, Code::feedDue)->on, in(0)) << "the day before";
    stack.record.lastFeed = in(-2); // due in five days: more than what is else told ahead
    ASSERT_NE(find(adviceFor(stack), Code::feedDue), nullptr);
    EXPECT_EQ(find(adviceFor(stack), Code::feedDue)->on, in(0));
    EXPECT_THAT(tests::reasonOf(stack, Code::feedDue), HasSubstr("nobody is there"));
    stack.record.nextAwayFrom = in(4);
    EXPECT_EQ(find(adviceFor(stack), Code::feedDue), nullptr) << "told two days before it is to be given";
    stack.record.nextAwayFrom = in(1);
    stack.record.lastFeed = in(-5);
    stack.record.nextAwayUntil = in(2); // two days are no matter
    EXPECT_EQ(find(adviceFor(stack), Code::harvestReady)->on, in(0));
    stack.record.nextAwayFrom = in(8); // the castings are taken by then
    stack.record.nextAwayUntil = in(20);
    EXPECT_EQ(find(adviceFor(stack), Code::harvestReady)->on, in(0));
    // More than one absence: two days are no matter, the fortnight after them is; and the day of the return may lie on the eve of the next.
    stack.record.nextAwayFrom = in(1);
    stack.record.nextAwayUntil = in(2);
    stack.record.laterAway = {{in(5), in(18)}};
    EXPECT_EQ(find(adviceFor(stack), Code::harvestReady)->on, in(19));
    EXPECT_THAT(find(adviceFor(stack), Code::harvestReady)->because, HasSubstr(wording::dayRange(in(5), in(18), stack.asOf).toStdString()));
    stack.record.nextAwayUntil = in(14);
    stack.record.laterAway = {{in(17), in(30)}, {in(60), in(70)}};
    EXPECT_EQ(find(adviceFor(stack), Code::harvestReady)->on, in(31)) << "it would hang through the second one";
    // What is due in the second is given on the day before that, not before the first.
    stack.record.nextAwayFrom = stack.record.nextAwayUntil = in(1);
    stack.record.laterAway = {{in(3), in(12)}};
    stack.record.lastFeed = in(-3);
    ASSERT_NE(find(adviceFor(stack), Code::feedDue), nullptr);
    EXPECT_EQ(find(adviceFor(stack), Code::feedDue)->on, in(2));
}

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

TEST(AdviceOfLooks, ASqueezeOrALevelIsALookThisWeek)
{
    StackReckoning stack = calm();
    stack.firstBedding = in(-200);
    stack.record.lastLook = in(-40);
    stack.now.slots[0].readyOn = {in(10), in(60), in(200)};
    stack.nextLooks = {{LookKind::bits, 1, 0.7, 2.0}};
    const auto told = adviceFor(stack);
    ASSERT_NE(find(told, Code::lookNext), nullptr);
    EXPECT_THAT(find(told, Code::lookNext)->because, HasSubstr("nothing measured of trays or worms for 40 day"));
    for (std::optional<Day> reckoning::Record::*look : {&reckoning::Record::lastSqueeze, &reckoning::Record::lastSumpLook}) {
        StackReckoning lately = stack;
        lately.record.*look = in(-2);
        EXPECT_THAT(codes(lately), Not(Contains("look-next")));
        lately.record.*look = in(-7);
        EXPECT_THAT(codes(lately), Contains("look-next"));
    }
}

TEST(AdviceOfLooks, TheOneThatWasToldStandsUntilAnotherIsClearlyBetter)
{
    StackReckoning stack = calm();
    stack.firstBedding = in(-200);
    stack.record.lastLook = in(-60);
    stack.now.slots[0].readyOn = {in(10), in(60), in(200)};
    const auto looks = [](double bits, double left) {
        std::vector<LookChoice> both{{LookKind::bits, 1, 2.0, bits}, {LookKind::left, 2, 2.0, left}};
        std::stable_sort(both.begin(), both.end(), [](const LookChoice& a, const LookChoice& b) { return a.perMinute() > b.perMinute(); });
        return both;
    };
    const auto toldOn = [&](int day, double bits, double left) {
        for (StackEstimate& each : stack.history)
            if (each.day == in(day)) each.ahead->looks = LookForesight{{in(10), in(60), in(200)}, {}, looks(bits, left), {}, {}};
    };
    const auto look = [&] {
        const auto all = adviceFor(stack);
        return find(all, Code::lookNext)->look;
    };
    stack.nextLooks = looks(0.4, 0.5); // on the eve of a meal
    EXPECT_EQ(look(), LookKind::left) << "none was told before";
    toldOn(-14, 0.5, 0.4);
    EXPECT_EQ(look(), LookKind::bits);
    EXPECT_THAT(find(adviceFor(stack), Code::lookNext)->because, HasSubstr("it was told before, and no look tells clearly more"));
    toldOn(-7, 0.4, 0.5);
    EXPECT_EQ(look(), LookKind::bits) << "kept from week to week";
    stack.nextLooks = looks(0.3, 0.5);
    EXPECT_EQ(look(), LookKind::left) << "clearly better";
    stack.nextLooks = looks(0.05, 0.06);
    EXPECT_THAT(codes(stack), Not(Contains("look-next"))) << "not worth a word any more";
    stack.nextLooks = looks(0.4, 0.5);
    stack.record.lastLook = in(-30); // what was told before it was done
    for (StackEstimate& each : stack.history)
        if (each.day == in(-7)) each.ahead->looks.reset();
    EXPECT_EQ(look(), LookKind::left);
}

TEST(AdviceOfLooks, ADepthThatDecidesTheTurnIsAskedForUntilTheTurnIsWellOff)
{
    StackReckoning stack = calm();
    stack.record.spareTrays = 1;
    const auto foreseen = [&](int daysOff) {
        for (StackEstimate& day : stack.history)
            if (day.day >= in(-3)) day.ahead->turnLikelyOn = day.day + std::chrono::days{daysOff};
    };
    stack.forecast.turnLikelyOn = in(9);
    EXPECT_THAT(codes(stack), Not(Contains("look-next")));
    foreseen(7);
    EXPECT_THAT(codes(stack), Contains("look-next")) << "asked for yesterday";
    stack.forecast.turnLikelyOn = in(11);
    EXPECT_THAT(codes(stack), Not(Contains("look-next")));
    foreseen(8);
    stack.forecast.turnLikelyOn = in(7);
    EXPECT_THAT(codes(stack), Contains("look-next"));
    EXPECT_THAT(reasonOf(stack, Code::lookNext), HasSubstr("with more than that, the turn has come; with less, go on as before and look again in a week"));
}

TEST(AdviceOfWater, ASqueezeIsAskedForUntilTheChanceIsSmall)
{
    // Of a band from p05 to a middle of 0.95 the share below 0.65: 0.29 of 0.30, 0.16 of 0.55 — between both thresholds —, none of 0.80.
    const auto band = [](double p05) { return Band{p05, 0.95, 1.05}; };
    StackReckoning stack = calm();
    const auto today = [&](double p05) { since(stack, 0, [&](StackEstimate& day) { day.slots[1].waterShare = band(p05); }); };
    today(0.55);
    EXPECT_THAT(codes(stack), Not(Contains("too-dry")));
    since(stack, -3, [&](StackEstimate& day) { day.slots[1].waterShare = band(0.30); });
    today(0.55);
    EXPECT_THAT(codes(stack), Contains("too-dry")) << "it was asked for the day before";
    today(0.80);
    EXPECT_THAT(codes(stack), Not(Contains("too-dry")));
}

/// A household whose stacks could all be looked at, `days` ago the last time each.
reckoning::Reckoning lookable(const std::vector<int>& daysAgo)
{
    reckoning::Reckoning all;
    all.asOf = today;
    for (std::size_t i = 0; i < daysAgo.size(); ++i) {
        StackReckoning stack = calm();
        stack.name = "Stack " + std::to_string(i + 1);
        stack.firstBedding = in(-200);
        stack.record.lastLook = in(-daysAgo[i]);
        stack.now.slots[0].readyOn = {in(10), in(60), in(120 + 40 * static_cast<int>(i))};
        stack.nextLooks = {{LookKind::bits, 1, 0.7, 2.0}};
        all.stacks.push_back(std::move(stack));
    }
    return all;
}

std::vector<std::string> lookedAt(const reckoning::Reckoning& all)
{
    std::vector<std::string> stacks;
    for (const Advice& each : advice::adviceForAll(all))
        if (each.code == Code::lookNext) stacks.push_back(each.stack);
    return stacks;
}

TEST(AdviceOfAHousehold, AsksForOneLookAtATimeAndOneAWeek)
{
    using ::testing::ElementsAre;
    EXPECT_THAT(lookedAt(lookable({40, 40, 40})), ElementsAre("Stack 3")) << "worth most";
    EXPECT_THAT(lookedAt(lookable({40, 40, 3})), ElementsAre()) << "one was looked at this week";
    EXPECT_THAT(lookedAt(lookable({40, 40, 8})), ElementsAre("Stack 2"));
    EXPECT_THAT(lookedAt(lookable({60, 40, 3})), ElementsAre("Stack 1")) << "nobody has looked at it for two months";
}

TEST(AdviceOfAHousehold, TheDiaryHoldsTheLooksThatCameUp)
{
    const auto line = [](const char* stack, double worth, int from, std::optional<int> to) {
        advice::DiaryLine made;
        made.advice.stack = stack;
        made.advice.code = Code::lookNext;
        made.advice.worth = worth;
        made.from = in(from);
        if (to) made.to = in(*to);
        return made;
    };
    std::map<std::string, std::vector<advice::DiaryLine>> diaries;
    diaries["A"] = {line("A", 5, -40, -30), line("A", 5, -20, -10)};
    diaries["B"] = {line("B", 9, -38, -32), line("B", 9, -33, -25), line("B", 9, -20, {})};
    diaries["B"].push_back(line("B", 0, -39, -20)); // no routine: stands on its own
    advice::oneLookAtATime(diaries);
    ASSERT_EQ(diaries["A"].size(), 1U);
    EXPECT_EQ(diaries["A"][0].from, in(-40));
    ASSERT_EQ(diaries["B"].size(), 3U);
    EXPECT_EQ(diaries["B"][0].from, in(-30)) << "once the other was done";
    EXPECT_EQ(diaries["B"][1].from, in(-20)) << "of two on one day what is worth more";
    EXPECT_EQ(diaries["B"][2].from, in(-39));
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

TEST(AdviceOfLooks, OneAStackAndDay)
{
    StackReckoning stack = calm();
    stack.record.spareTrays = 0;
    stack.now.slots[1].waterShare = {0.45, 0.75, 0.95};
    const auto looks = [&] {
        std::vector<reckoning::LookKind> kinds;
        for (const Advice& each : adviceFor(stack))
            if (each.look) kinds.push_back(*each.look);
        return kinds;
    };
    EXPECT_EQ(looks(), std::vector{LookKind::squeeze});
    stack.bitsRule = BitsRule{12.0, in(30)};
    stack.forecast.turnLikelyOn = in(9);
    EXPECT_EQ(looks(), std::vector{LookKind::bits}) << "what decides a turn comes first";
    since(stack, -9, [](StackEstimate& day) { day.slots[1].waterShare = {0.2, 0.6, 1.1}; });
    EXPECT_EQ(looks(), std::vector{LookKind::squeeze}) << "a bed that is probably dry comes before it";
    StackReckoning telling = calm();
    telling.firstBedding = in(-200);
    telling.record.lastLook = in(-40);
    telling.now.slots[0].readyOn = {in(10), in(60), in(200)};
    telling.nextLooks = {{LookKind::bits, 1, 0.7, 2.0}};
    stack = telling;
    EXPECT_EQ(looks(), std::vector{LookKind::bits});
    stack.now.slots[1].waterShare = {0.45, 0.75, 0.95};
    EXPECT_EQ(looks(), std::vector{LookKind::squeeze}) << "a squeeze that is asked for is a look this week too";
}

}
}
