// Advice says its amounts in the units chosen: no metric unit is left in any of its texts when US ones are.
#include "core/advice/advice.h"
#include "core/wording/formats.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <regex>

namespace tierloam::advice {
namespace {

const Day today{std::chrono::year{2031} / 5 / 2};

const std::regex metric{"[0-9] ?(kg|g|L|mL|cm|m²|°C|L/m²)([^A-Za-z/]|$)"};

class Units : public ::testing::Test {
protected:
    ~Units() override { wording::setMeasures(wording::Measures::metric); }
};

/// Due on that day: food, a shut sump, heat ahead, a filled top tray with a spare one, water, a value that does not fit.
reckoning::StackReckoning busy()
{
    reckoning::StackReckoning stack;
    stack.name = "Mill";
    stack.asOf = stack.now.day = today;
    stack.now.colonyKg = {0.9, 1.1, 1.4};
    stack.now.binTempC = {30, 32, 33};
    stack.now.sumpL = {2.9, 3.2, 3.4};
    reckoning::TrayEstimate tray;
    tray.slot = tray.tray = tray.batch = 1;
    tray.depthCm = 8.0;
    tray.feedToCast = {0.2, 0.4, 0.6};
    tray.castingsDepthCm = {2.6, 3.0, 3.4};
    tray.unprocessedDryKg = {0.1, 0.2, 0.3};
    tray.waterShare = {0.4, 0.5, 0.6};
    tray.moisturePct = {50, 55, 60};
    tray.weightKg = {5.0, 6.0, 7.0};
    stack.now.slots = {tray, tray};
    stack.now.slots.back().slot = 2;
    stack.turnSince = today;
    stack.record.spareTrays = 1;
    stack.record.spigotShut = true;
    stack.forecast.sumpFullOn = {today, today + std::chrono::days{2}, today + std::chrono::days{4}};
    stack.forecast.feedHighKg = stack.forecast.feedNowKg = 1.6;
    stack.forecast.roomTopTrayFreshKg = 0.4;
    stack.forecast.topTrayFullOn.p50 = stack.asOf + std::chrono::days{3};
    stack.forecast.feedUsualKg = 0.9;
    stack.record.usualFeed = {900, Unit::g};
    stack.record.usualFeedKg = 0.9;
    stack.record.lastFeed = today - std::chrono::days{9};
    reckoning::Disagreement odd;
    odd.entry = 4;
    odd.day = today - std::chrono::days{3};
    odd.kind = reckoning::LookKind::depth;
    odd.slot = 2;
    odd.value = 7.0;
    odd.expected = {1.2, 1.8, 2.4};
    stack.disagreements = {odd};
    stack.history = {stack.now};
    return stack;
}

std::vector<std::string> allTexts()
{
    std::vector<std::string> texts;
    for (const Advice& each : adviceFor(busy())) texts.insert(texts.end(), {each.text, each.because});
    for (int code = 0; code < codeCount; ++code) texts.insert(texts.end(), {ruleOf(static_cast<Code>(code)), ifLeft(static_cast<Code>(code))});
    return texts;
}

int metricOnes(const std::vector<std::string>& texts)
{
    return static_cast<int>(std::count_if(texts.begin(), texts.end(), [](const std::string& text) { return std::regex_search(text, metric); }));
}

TEST_F(Units, AdviceAndItsRulesFollowTheMeasuresChosen)
{
    EXPECT_GT(metricOnes(allTexts()), 10) << "metric texts are told apart";
    wording::setMeasures(wording::Measures::us);
    for (const std::string& text : allTexts()) EXPECT_FALSE(std::regex_search(text, metric)) << text;
    EXPECT_THAT(ruleOf(Code::heat), ::testing::HasSubstr("above 86 °F now"));
    EXPECT_THAT(ruleOf(Code::addTray), ::testing::HasSubstr("1.0 in of castings"));
    EXPECT_THAT(ruleOf(Code::drainageHigh), ::testing::HasSubstr("more than 0.29 gal/sq ft a week"));
}

/// Figures that are to be compared stand in one unit.
TEST_F(Units, TheSumpIsToldInOne)
{
    wording::setMeasures(wording::Measures::us);
    reckoning::StackReckoning stack = busy();
    stack.record.spigotShut = true;
    stack.record.sumpCapacityL = 4.0;
    stack.now.sumpL = {0.2, 2.0, 3.9};
    stack.forecast.sumpFullOn = {stack.asOf + std::chrono::days{5}, stack.asOf + std::chrono::days{20}, stack.asOf + std::chrono::days{90}};
    const auto all = adviceFor(stack);
    const auto told = std::find_if(all.begin(), all.end(), [](const Advice& each) { return each.code == Code::sumpFull; });
    ASSERT_NE(told, all.end());
    EXPECT_THAT(told->because, ::testing::HasSubstr("gal"));
    EXPECT_THAT(told->because, ::testing::Not(::testing::HasSubstr("fl oz")));
}

TEST_F(Units, ThresholdsKeepTheirDigits)
{
    EXPECT_THAT(ruleOf(Code::harvestReady), ::testing::AllOf(::testing::HasSubstr("(2.5 cm of castings"), ::testing::HasSubstr("at least 1.25 cm)")));
    EXPECT_THAT(ruleOf(Code::trayFull), ::testing::HasSubstr("less 1 cm,"));
    EXPECT_THAT(ruleOf(Code::drainageHigh), ::testing::HasSubstr("more than 12 L/m² a week"));
    for (int code = 0; code < codeCount; ++code) EXPECT_EQ((ruleOf(static_cast<Code>(code)) + ifLeft(static_cast<Code>(code))).find('{'), std::string::npos);
}

}
}
