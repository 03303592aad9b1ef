// What is to be looked at: the one that tells most, one a day and stack, one at a time in a household.
#include "core/advice/household_advice.h"

#include "tests/support/calm_stack.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tierloam::tests {
namespace {

using ::testing::Contains;
using ::testing::HasSubstr;
using ::testing::Not;
using advice::adviceFor;

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

TEST(AdviceOfLooks, ASqueezeIsAskedForUntilTheChanceIsSmall)
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
