// Every code of the fixed interface, one after the other: told when its time has come and with all that belongs to it, silent before, withdrawn
// when it is settled, and between its two thresholds as it was before. The table of codes in DEVELOPERS.md has a row of each.
#include "tests/support/calm_stack.h"
#include "tests/support/guide_tables.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <set>

namespace tierloam::tests {
namespace {

using ::testing::Contains;
using ::testing::Not;

/// As they are fixed for scripts and users (`--summary`); the program renames none.
constexpr const char* fixedCodes[] = {"harvest-ready", "ready-no-hurry", "harvest-soon", "harvest-overdue", "add-tray",   "too-early",     "feed-due", "overfed",
                                      "hungry",        "tray-full",      "too-wet",      "too-dry",         "sump-full",  "drainage-low",  "drainage-high",
                                      "heat",          "cold",           "drying-done",  "drying-long",     "low-carbon", "stale-record",  "look-next", "record-disagrees"};

using Change = std::function<void(StackReckoning&)>;

struct Walk {
    const char* code;
    Change raise;                    ///< on a calm stack
    Change settle;                   ///< after that
    /// Days -9 to -1 as raised, and today between the thresholds; of what is decided by dates or by two states that the reckoning itself keeps
    /// (Raised, in reckoning_run_test): none.
    std::function<void(StackEstimate&)> high = {}, between = {};
};

void allTrays(StackEstimate& day, const std::function<void(TrayEstimate&)>& change)
{
    for (TrayEstimate& tray : day.slots) change(tray);
}

void lift(StackReckoning& stack)
{
    stack.readySince.reset();
    stack.turnSince.reset();
    stack.now.slots.back().state = TrayState::drying;
    stack.record.dryingSince = today;
}

void dry(StackReckoning& stack, int days, double left)
{
    stack.record.dryingSince = in(-days);
    stack.record.daysDrying = days;
    since(stack, -days, [](StackEstimate& day) {
        day.slots[1].state = TrayState::drying;
        day.slots[1].readyProbability = 0.95;
    });
    stack.now.slots[1].wormShare = {0.0, 0.3 * left, 0.3};
}

void taken(StackReckoning& stack)
{
    stack.record.dryingSince.reset();
    stack.record.daysDrying = 0;
    since(stack, -40, [](StackEstimate& day) { day.slots[1].state = TrayState::working; day.slots[1].wormShare = {0.2, 0.3, 0.4}; });
}

void filled(StackReckoning& stack) { stack.readySince = stack.turnSince = in(-3); }

const std::vector<Walk>& walks()
{
    static const auto depth = [](double p05, double p50, double p95) { return [=](StackEstimate& day) { day.slots[0].castingsDepthCm = {p05, p50, p95}; }; };
    static const auto bed = [](Band band) { return [=](StackEstimate& day) { day.binTempC = band; }; };
    static const auto water = [](Band band) { return [=](StackEstimate& day) { allTrays(day, [&](TrayEstimate& tray) { tray.waterShare = band; }); }; };
    static const auto hunger = [](Band ration) { return [=](StackEstimate& day) { day.ration = ration; allTrays(day, [](TrayEstimate& tray) { tray.strata.softenedCm = 0.1; }); }; };
    static const auto air = [](double share) { return [=](StackEstimate& day) { day.slots[1].air = share; }; };
    static const std::vector<Walk> all{
        {"harvest-ready", filled, lift},
        {"ready-no-hurry", [](auto& s) { s.readySince = in(-3); }, lift},
        {"harvest-soon", [](auto& s) { s.forecast.readyAndTurnWithin14Days = 0.5; }, [](auto& s) { s.forecast.readyAndTurnWithin14Days = 0.49; }},
        {"harvest-overdue", [](auto& s) { filled(s); s.now.slots[0].state = TrayState::overdue; }, [](auto& s) { s.now.slots[0].state = TrayState::working; lift(s); }},
        {"add-tray", [](auto& s) { s.record.spareTrays = 1; s.turnSince = today; }, [](auto& s) { s.record.spareTrays = 0; s.turnSince.reset(); }},
        {"too-early", [](auto& s) { s.record.lastTrayAdded = in(-3); since(s, -3, depth(1.0, 1.4, 1.8)); }, [](auto& s) { since(s, 0, depth(2.6, 3.0, 3.4)); },
         depth(1.0, 1.4, 1.8), depth(2.0, 2.4, 2.8)}, // 2.5 cm with 0.39
        {"feed-due", [](auto& s) { s.record.lastFeed = in(-9); }, [](auto& s) { s.record.lastFeed = today; }},
        {"overfed", [](auto& s) { since(s, 0, air(0.69)); }, [](auto& s) { since(s, 0, air(0.81)); }, air(0.69), air(0.75)},
        {"hungry", [](auto& s) { since(s, 0, hunger({0.5, 0.7, 0.95})); }, [](auto& s) { since(s, 0, [](StackEstimate& day) { day.slots[1].strata.softenedCm = 2.0; }); },
         hunger({0.5, 0.7, 0.95}), hunger({0.6, 0.9, 1.2})},
        {"tray-full", [](auto& s) { s.forecast.roomTopTrayFreshKg = 0.3; s.forecast.topTrayFullOn.p50 = in(3); }, [](auto& s) { s.forecast.roomTopTrayFreshKg = 4.0; }},
        {"too-wet", [](auto& s) { since(s, -2, water({1.12, 1.2, 1.3})); }, [](auto& s) { since(s, 0, water({0.9, 1.0, 1.05})); }, water({1.12, 1.2, 1.3}), water({1.05, 1.14, 1.2})},
        {"too-dry", [](auto& s) { since(s, 0, water({0.5, 0.6, 0.7})); }, [](auto& s) { since(s, 0, water({0.8, 0.9, 1.0})); }, water({0.5, 0.6, 0.7}), water({0.55, 0.68, 0.8})},
        {"sump-full", [](auto& s) { s.record.spigotShut = true; s.forecast.sumpFullOn = {in(4), in(6), in(8)}; }, [](auto& s) { s.forecast.sumpFullOn = {in(50), in(60), in(70)}; }},
        {"drainage-low", [](auto& s) { s.drains = {{in(-9), 0.3, {0.8, 1.2, 1.6}}, {in(-2), 0.3, {0.8, 1.2, 1.6}}}; }, [](auto& s) { s.drains.push_back({today, 1.2, {0.8, 1.2, 1.6}}); }},
        {"drainage-high", [](auto& s) { s.drains = {{in(-9), 2.3, {0.8, 1.2, 1.6}}, {in(-2), 2.3, {0.8, 1.2, 1.6}}}; }, [](auto& s) { s.drains.push_back({today, 1.2, {0.8, 1.2, 1.6}}); }},
        {"heat", [](auto& s) { since(s, 0, bed({30, 32, 33})); }, [](auto& s) { since(s, 0, bed({20, 24, 27})); }, bed({30, 32, 33}), bed({27, 29.5, 32})},
        {"cold", [](auto& s) { since(s, 0, bed({3, 4, 6})); }, [](auto& s) { since(s, 0, bed({9, 12, 14})); }, bed({3, 4, 6}), bed({3.5, 5.4, 7})},
        {"drying-done", [](auto& s) { dry(s, 4, 0.04); }, taken},
        {"drying-long", [](auto& s) { dry(s, 11, 0.3); }, taken},
        {"low-carbon", [](auto& s) { s.forecast.usualCarbonKg = 0.045; s.forecast.usualNitrogenKg = 0.003; }, [](auto& s) { s.forecast.usualCarbonKg = 0.090; }},
        {"stale-record", [](auto& s) { s.record.lastEntry = s.record.lastFeed = in(-22); }, [](auto& s) { s.record.lastEntry = today; }},
        {"look-next", [](auto& s) { s.bitsRule = BitsRule{12.0, in(30)}; s.forecast.turnLikelyOn = in(9); }, [](auto& s) { s.record.lastLook = today; }},
        {"record-disagrees", [](auto& s) { s.disagreements = {{7, in(-9), LookKind::weigh, 0, 0.9, {0.2, 0.35, 0.52}}}; }, [](auto& s) { s.disagreements.clear(); }},
    };
    return all;
}

bool hasDigit(const std::string& text) { return std::any_of(text.begin(), text.end(), [](char c) { return c >= '0' && c <= '9'; }); }

TEST(EveryCode, IsOneOfTheFixedOnesAndNoneIsMissing)
{
    std::set<std::string> fixed(std::begin(fixedCodes), std::end(fixedCodes)), made, walked, documented;
    for (int code = 0; code < advice::codeCount; ++code) made.emplace(advice::codeName(Code{code}));
    for (const Walk& walk : walks()) walked.insert(walk.code);
    for (const Row& row : tableUnder("## Advice", 5))
        for (const std::string& code : codesIn(row[0])) documented.insert(code);
    EXPECT_EQ(made, fixed);
    EXPECT_EQ(walked, fixed);
    EXPECT_EQ(documented, fixed) << "the table of codes in DEVELOPERS.md";
}

/// Rule, withdrawal, what settles it, what follows: none of the table's cells is empty, and what settles it is an action or is said.
TEST(EveryCode, HasAWholeRowInTheTable)
{
    for (const Row& row : tableUnder("## Advice", 5)) {
        for (std::size_t cell = 0; cell < 5; ++cell) EXPECT_GT(row[cell].find_last_not_of(' ') + 1, 2u) << row[0] << ", column " << cell + 1;
        EXPECT_TRUE(hasDigit(row[1]) || row[1].find("feeding") != std::string::npos || row[1].find("worm") != std::string::npos) << row[0] << ": no threshold";
    }
}

TEST(EveryCode, IsSilentOnACalmStackToldInItsTimeAndWithdrawnWhenSettled)
{
    for (const Walk& walk : walks()) {
        SCOPED_TRACE(walk.code);
        StackReckoning stack = calm();
        EXPECT_THAT(codes(stack), Not(Contains(walk.code)));
        walk.raise(stack);
        const std::vector<Advice> all = advice::adviceFor(stack);
        const auto told = std::find_if(all.begin(), all.end(), [&](const Advice& each) { return advice::codeName(each.code) == walk.code; });
        ASSERT_NE(told, all.end());
        EXPECT_EQ(told->stack, stack.name);
        EXPECT_GE(told->on, today);
        EXPECT_FALSE(told->text.empty());
        EXPECT_TRUE(hasDigit(told->because)) << "in numbers of this stack: " << told->because;
        EXPECT_TRUE(hasDigit(advice::ruleOf(told->code)) || told->code == Code::recordDisagrees) << "with its thresholds";
        EXPECT_FALSE(advice::ifLeft(told->code).empty());
        walk.settle(stack);
        EXPECT_THAT(codes(stack), Not(Contains(walk.code)));
    }
}

TEST(EveryCode, WithTwoThresholdsStaysAsItWasBetweenThem)
{
    int walked = 0;
    for (const Walk& walk : walks()) {
        if (!walk.between) continue;
        SCOPED_TRACE(walk.code);
        StackReckoning stack = calm();
        stack.record.lastMoistureLook = today; // a look alone is not meant here
        if (std::string{walk.code} == "too-early") stack.record.lastTrayAdded = in(-9);
        since(stack, -3, walk.between);
        EXPECT_THAT(codes(stack), Not(Contains(walk.code))) << "never raised";
        since(stack, -9, walk.high);
        since(stack, -3, walk.between);
        EXPECT_THAT(codes(stack), Contains(walk.code)) << "raised before";
        ++walked;
    }
    EXPECT_EQ(walked, 7);
}

/// A filled tray: the usual 0.9 kg again fit by a little, yesterday they did not.
TEST(EveryCode, AFullTrayIsNotTakenBackByTheFirstSpoonThatFits)
{
    StackReckoning stack = calm();
    since(stack, 0, [](StackEstimate& day) { day.slots[1].depthCm = 8.9; });
    stack.forecast.roomTopTrayFreshKg = 0.95;
    stack.forecast.topTrayFullOn.p50 = in(3);
    EXPECT_THAT(codes(stack), Not(Contains("tray-full")));
    since(stack, -3, [](StackEstimate& day) { day.slots[1].depthCm = 9.5; }); // 0.43 kg then
    since(stack, 0, [](StackEstimate& day) { day.slots[1].depthCm = 8.9; });
    EXPECT_THAT(codes(stack), Contains("tray-full"));
    stack.forecast.roomTopTrayFreshKg = 1.13;
    EXPECT_THAT(codes(stack), Not(Contains("tray-full"))) << "a quarter more than the usual week fits";
}

TEST(EveryCode, HasANameARuleAndAConsequence)
{
    std::set<std::string_view> names;
    for (int i = 0; i < advice::codeCount; ++i) {
        const Code code{i};
        names.insert(advice::codeName(code));
        EXPECT_FALSE(advice::codeName(code).empty());
        EXPECT_FALSE(advice::ruleOf(code).empty()) << advice::codeName(code);
        EXPECT_FALSE(advice::ifLeft(code).empty()) << advice::codeName(code);
    }
    EXPECT_EQ(names.size(), static_cast<std::size_t>(advice::codeCount));
}

}
}
