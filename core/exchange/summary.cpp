#include "core/exchange/summary.h"

#include "core/advice/food_limit.h"
#include "core/advice/household_advice.h"
#include "core/exchange/json_text.h"
#include "core/quantity/day_text.h"

#include <algorithm>

namespace tierloam::exchange {

namespace {

using namespace reckoning;
using Layout = JsonText::Layout;

constexpr double mostFeedToCast = 999.0;

class Writer {
public:
    std::string whole(const SummaryHead& head, const Reckoning& reckoning, const std::vector<advice::Advice>& all)
    {
        json_.openObject();
        word("tierloam", head.version);
        word("as_of", dayText(reckoning.asOf));
        word("household", head.household);
        json_.key("stacks");
        json_.openArray();
        for (const StackReckoning& stack : reckoning.stacks) this->stack(stack, all);
        json_.close();
        json_.close();
        return std::move(json_).take();
    }

private:
    void word(std::string_view key, std::string_view value)
    {
        json_.key(key);
        json_.text(value);
    }
    void integer(std::string_view key, long long value)
    {
        json_.key(key);
        json_.whole(value);
    }
    void number(std::string_view key, double value)
    {
        json_.key(key);
        json_.number(value);
    }

    void band(std::string_view key, const Band& band)
    {
        json_.key(key);
        json_.openObject(Layout::onOneLine);
        number("p05", band.p05);
        number("p50", band.p50);
        number("p95", band.p95);
        json_.close();
    }

    void day(std::string_view key, const std::optional<Day>& day)
    {
        json_.key(key);
        if (day) json_.text(dayText(*day));
        else json_.null();
    }

    void dates(std::string_view key, const Dates& dates)
    {
        json_.key(key);
        if (!dates.any()) return json_.null();
        json_.openObject(Layout::onOneLine);
        day("p10", dates.p10);
        day("p50", dates.p50);
        day("p90", dates.p90);
        json_.close();
    }

    void stack(const StackReckoning& stack, const std::vector<advice::Advice>& all)
    {
        const StackEstimate& now = stack.now;
        const Forecast& ahead = stack.forecast;
        json_.openObject();
        word("name", stack.name);
        integer("day", daysBetween(stack.firstBedding, stack.asOf));
        band("colony_kg", now.colonyKg);
        band("worms", now.worms);
        band("adults", now.adults);
        band("processing_g_dry_per_day", now.processingGDryPerDay);
        band("ration", now.ration);
        band("bin_temp_c", now.binTempC);
        band("sump_l", now.sumpL);
        dates("sump_full_on", ahead.sumpFullOn);
        band("drained_expected_l_per_week", ahead.drainedExpectedLPerWeek);
        band("leachate_ec_ms_cm", now.leachateEc);
        json_.key("feed_next_week_kg");
        json_.openObject(Layout::onOneLine);
        const std::vector<advice::Advice> said = advice::ofStack(all, stack.name);
        const double most = advice::foodLimit(stack, said).weekKg;
        number("low", std::min(ahead.feedLowKg, most));
        number("usual", std::min(ahead.feedUsualKg, most));
        number("high", most);
        json_.close();
        dates("turn_on", ahead.turnOn);
        json_.key("slots");
        json_.openArray();
        for (const TrayEstimate& tray : now.slots) slot(tray);
        json_.close();
        json_.key("advice");
        json_.openArray();
        for (const advice::Advice& one : said) advice(one);
        json_.close();
        json_.close();
    }

    void slot(const TrayEstimate& tray)
    {
        Band feedToCast = tray.feedToCast;
        for (double* value : {&feedToCast.p05, &feedToCast.p50, &feedToCast.p95}) *value = std::min(*value, mostFeedToCast);
        json_.openObject();
        integer("slot", tray.slot);
        integer("tray", tray.tray);
        integer("batch", tray.batch);
        integer("age_days", tray.ageDays);
        word("state", stateName(tray.state));
        band("input_dry_kg", tray.inputDryKg);
        band("castings_dry_kg", tray.castingsDryKg);
        band("unprocessed_dry_kg", tray.unprocessedDryKg);
        band("slow_dry_kg", tray.slowDryKg);
        band("castings_depth_cm", tray.castingsDepthCm);
        band("feed_to_cast", feedToCast);
        number("ready_probability", tray.readyProbability);
        dates("ready_on", tray.readyOn);
        band("cn_ratio", tray.cnRatio);
        band("moisture_pct", tray.moisturePct);
        band("water_share", tray.waterShare);
        band("worm_share", tray.wormShare);
        band("cocoons", tray.cocoons);
        band("weight_kg", tray.weightKg);
        json_.close();
    }

    void advice(const advice::Advice& one)
    {
        json_.openObject();
        word("code", advice::codeName(one.code));
        word("severity", advice::severityName(one.severity));
        json_.key("slot");
        if (one.slot) json_.whole(*one.slot);
        else json_.null();
        word("on", dayText(one.on));
        word("text", one.text);
        word("because", one.because);
        json_.close();
    }

    JsonText json_;
};

}

std::string_view stateName(TrayState state)
{
    switch (state) {
    case TrayState::working: return "working";
    case TrayState::nearly: return "nearly";
    case TrayState::ready: return "ready";
    case TrayState::overdue: return "overdue";
    case TrayState::drying: return "drying";
    }
    return {};
}

std::string summaryJson(const SummaryHead& head, const std::shared_ptr<const Reckoning>& reckoning, const std::vector<advice::Advice>& advice)
{
    return Writer{}.whole(head, *reckoning, advice);
}

}
