#include "core/exchange/json_text.h"
#include "core/exchange/summary.h"
#include "core/quantity/day_text.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <limits>

// The summary is an interface: keys, their order, and what is null stand here as the format states them.
namespace tierloam::exchange {

using namespace reckoning;

namespace {

constexpr double notANumber = std::numeric_limits<double>::quiet_NaN();
constexpr double infinite = std::numeric_limits<double>::infinity();

Day day(std::string_view text) { return parseDay(text).value(); }

std::shared_ptr<Reckoning> sample()
{
    auto reckoning = std::make_shared<Reckoning>();
    reckoning->asOf = day("2031-07-01");
    StackReckoning stack;
    stack.name = "Mill \"north\"";
    stack.firstBedding = day("2031-01-01");
    stack.asOf = reckoning->asOf;
    stack.now.colonyKg = {0.123456789, 1.0 / 3.0, 2};
    stack.now.worms = {1000, 1234567.8, 2000000};
    stack.forecast.sumpFullOn = {day("2031-07-05"), day("2031-08-01"), std::nullopt};
    stack.forecast.feedLowKg = 0.5;
    stack.forecast.feedUsualKg = 1;
    stack.forecast.feedHighKg = 1.5;
    stack.forecast.feedNowKg = 1.25;
    TrayEstimate tray;
    tray.slot = 1;
    tray.tray = 2;
    tray.batch = 5;
    tray.ageDays = 181;
    tray.state = TrayState::ready;
    tray.feedToCast = {0.05, 1500, infinite};
    tray.readyProbability = 0.93;
    tray.readyOn = {day("2031-06-20"), day("2031-06-28"), day("2031-07-20")};
    stack.now.slots.push_back(tray);
    reckoning->stacks.push_back(stack);
    return reckoning;
}

std::vector<advice::Advice> advices()
{
    return {{"Mill \"north\"", advice::Code::harvestReady, advice::Severity::due, 1, day("2031-07-01"), "Lift the bottom tray", "Feed-to-cast 0.07"},
            {"Yard", advice::Code::sumpFull, advice::Severity::urgent, std::nullopt, day("2031-07-02"), "Drain", "full"},
            {"Mill \"north\"", advice::Code::sumpFull, advice::Severity::urgent, std::nullopt, day("2031-07-02"), "Drain", "3.9 L"}};
}

constexpr std::string_view zero = R"({"p05": 0, "p50": 0, "p95": 0})";

}

TEST(Summary, IsAsTheFormatStatesKeyByKey)
{
    std::string expected = R"({
 "tierloam": "0.1.0",
 "as_of": "2031-07-01",
 "household": "cottage",
 "stacks": [
  {
   "name": "Mill \"north\"",
   "day": 181,
   "colony_kg": {"p05": 0.123457, "p50": 0.333333, "p95": 2},
   "worms": {"p05": 1000, "p50": 1234570, "p95": 2000000},
   "adults": ZERO,
   "processing_g_dry_per_day": ZERO,
   "ration": ZERO,
   "bin_temp_c": ZERO,
   "sump_l": ZERO,
   "sump_full_on": {"p10": "2031-07-05", "p50": "2031-08-01", "p90": null},
   "drained_expected_l_per_week": ZERO,
   "leachate_ec_ms_cm": ZERO,
   "feed_next_week_kg": {"low": 0.5, "usual": 1, "high": 1.25},
   "turn_on": null,
   "slots": [
    {
     "slot": 1,
     "tray": 2,
     "batch": 5,
     "age_days": 181,
     "state": "ready",
     "input_dry_kg": ZERO,
     "castings_dry_kg": ZERO,
     "unprocessed_dry_kg": ZERO,
     "slow_dry_kg": ZERO,
     "castings_depth_cm": ZERO,
     "feed_to_cast": {"p05": 0.05, "p50": 999, "p95": 999},
     "ready_probability": 0.93,
     "ready_on": {"p10": "2031-06-20", "p50": "2031-06-28", "p90": "2031-07-20"},
     "cn_ratio": ZERO,
     "moisture_pct": ZERO,
     "water_share": ZERO,
     "worm_share": ZERO,
     "cocoons": ZERO,
     "weight_kg": ZERO
    }
   ],
   "advice": [
    {
     "code": "harvest-ready",
     "severity": "due",
     "slot": 1,
     "on": "2031-07-01",
     "text": "Lift the bottom tray",
     "because": "Feed-to-cast 0.07"
    },
    {
     "code": "sump-full",
     "severity": "urgent",
     "slot": null,
     "on": "2031-07-02",
     "text": "Drain",
     "because": "3.9 L"
    }
   ]
  }
 ]
}
)";
    for (std::size_t at = 0; (at = expected.find("ZERO", at)) != std::string::npos;) expected.replace(at, 4, zero);
    EXPECT_EQ(summaryJson({"0.1.0", "cottage"}, sample(), advices()), expected);
}

TEST(Summary, WithoutStacksIsStillWhole)
{
    auto empty = std::make_shared<Reckoning>();
    empty->asOf = day("2031-07-01");
    EXPECT_EQ(summaryJson({"0.1.0", "h"}, empty, {}), "{\n \"tierloam\": \"0.1.0\",\n \"as_of\": \"2031-07-01\",\n \"household\": \"h\",\n \"stacks\": []\n}\n");
}

TEST(Summary, NeverHoldsWhatIsNoNumber)
{
    for (const double bad : {notANumber, infinite, -infinite}) {
        auto reckoning = sample();
        StackReckoning& stack = reckoning->stacks[0];
        for (Band* band : {&stack.now.colonyKg, &stack.now.adults, &stack.now.processingGDryPerDay, &stack.now.ration, &stack.now.binTempC, &stack.now.sumpL,
                           &stack.now.leachateEc, &stack.forecast.drainedExpectedLPerWeek})
            *band = {bad, bad, bad};
        TrayEstimate& tray = stack.now.slots[0];
        for (Band* band : {&tray.inputDryKg, &tray.castingsDryKg, &tray.unprocessedDryKg, &tray.slowDryKg, &tray.castingsDepthCm, &tray.cnRatio, &tray.moisturePct, &tray.waterShare,
                           &tray.wormShare, &tray.cocoons, &tray.weightKg})
            *band = {bad, bad, bad};
        tray.feedToCast = {notANumber, notANumber, notANumber};
        tray.readyProbability = bad;
        stack.forecast.feedLowKg = stack.forecast.feedNowKg = bad;
        const std::string json = summaryJson({"v", "h"}, reckoning, {});
        QJsonParseError error{};
        const QJsonDocument parsed = QJsonDocument::fromJson(QByteArray::fromStdString(json), &error);
        EXPECT_EQ(error.error, QJsonParseError::NoError) << error.errorString().toStdString();
        const QJsonObject first = parsed.object()[u"stacks"].toArray()[0].toObject();
        EXPECT_TRUE(first[u"colony_kg"].toObject()[u"p50"].isNull());
        EXPECT_TRUE(first[u"feed_next_week_kg"].toObject()[u"low"].isNull());
        EXPECT_TRUE(first[u"slots"].toArray()[0].toObject()[u"ready_probability"].isNull());
        EXPECT_TRUE(first[u"slots"].toArray()[0].toObject()[u"feed_to_cast"].toObject()[u"p05"].isNull());
        EXPECT_EQ(json.find("nan"), std::string::npos);
        EXPECT_EQ(json.find("inf"), std::string::npos);
    }
}

TEST(Summary, FoodThatTheAdviceWithholdsIsNoLimit)
{
    auto all = advices();
    all.push_back({"Mill \"north\"", advice::Code::cold, advice::Severity::concern, std::nullopt, day("2031-07-01"), "Wrap it, and feed no more", "bed 3 °C"});
    all.back().food = advice::Food::withhold;
    EXPECT_NE(summaryJson({"0.1.0", "cottage"}, sample(), all).find(R"("feed_next_week_kg": {"low": 0, "usual": 0, "high": 0})"), std::string::npos);
}

TEST(Summary, NamesEveryState)
{
    EXPECT_EQ(stateName(TrayState::working), "working");
    EXPECT_EQ(stateName(TrayState::nearly), "nearly");
    EXPECT_EQ(stateName(TrayState::ready), "ready");
    EXPECT_EQ(stateName(TrayState::overdue), "overdue");
    EXPECT_EQ(stateName(TrayState::drying), "drying");
}

TEST(JsonText, EscapesWhatMustBeAndReadsBack)
{
    JsonText json;
    json.openObject();
    json.key("a\"b");
    json.text("tab\tnew\nline \\ \x01 \xC3\xA4");
    json.key("list");
    json.openArray(JsonText::Layout::onOneLine);
    json.number(1e-12);
    json.number(1e20);
    json.number(-0.0);
    json.whole(-3);
    json.null();
    json.close();
    json.close();
    const QJsonObject parsed = QJsonDocument::fromJson(QByteArray::fromStdString(std::move(json).take())).object();
    EXPECT_EQ(parsed[u"a\"b"].toString(), QString::fromUtf8("tab\tnew\nline \\ \x01 \xC3\xA4"));
    const QJsonArray list = parsed[u"list"].toArray();
    ASSERT_EQ(list.size(), 5);
    EXPECT_DOUBLE_EQ(list[0].toDouble(), 1e-12);
    EXPECT_DOUBLE_EQ(list[1].toDouble(), 1e20);
    EXPECT_EQ(list[3].toInt(), -3);
    EXPECT_TRUE(list[4].isNull());
}

}
