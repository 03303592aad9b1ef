#pragma once

#include "core/advice/advice.h"

#include <algorithm>
#include <functional>
#include <string>
#include <vector>

/// A stack of which no rule has anything to say, for tests of advice that change one thing of it.
namespace tierloam::tests {

using advice::Advice;
using advice::Code;
using namespace reckoning;

inline const Day today{std::chrono::year{2031} / 5 / 2};
inline Day in(int days) { return today + std::chrono::days{days}; }

inline TrayEstimate tray(int slot, double ratio)
{
    TrayEstimate made;
    made.slot = made.tray = made.batch = slot;
    made.feedToCast = {ratio * 0.7, ratio, ratio * 1.4};
    made.castingsDepthCm = {2.6, 3.0, 3.4};
    made.unprocessedDryKg = {0.1, 0.2, 0.3};
    made.depthCm = 6.0;
    made.strata.softenedCm = 1.0;
    made.waterShare = {0.9, 0.97, 1.02};
    made.moisturePct = {72, 76, 80};
    made.weightKg = {5.0, 6.0, 7.0};
    made.cnRatio = {20, 24, 28};
    made.wormShare = {0.2, 0.3, 0.4};
    return made;
}

/// Two trays, a steady month behind it, nothing due.
inline StackReckoning calm()
{
    StackReckoning stack;
    stack.name = "Mill";
    stack.asOf = today;
    stack.now.day = today;
    stack.now.colonyKg = {0.9, 1.1, 1.4};
    stack.now.ration = {1.1, 1.4, 1.7};
    stack.now.binTempC = {19, 21, 23};
    stack.now.sumpL = {0.1, 0.1, 0.1};
    stack.now.drainedLPerWeek = {0.5, 0.7, 0.9};
    stack.now.slots = {tray(1, 0.4), tray(2, 1.5)};
    stack.forecast.colonyMedianIn60DaysKg = 1.1;
    stack.forecast.feedLowKg = 0.3;
    stack.forecast.feedUsualKg = stack.forecast.feedGivenKg = 0.9;
    stack.forecast.feedHighKg = stack.forecast.feedNowKg = 1.6;
    stack.forecast.roomTopTrayFreshKg = 4.0;
    stack.forecast.drainedExpectedLPerWeek = {0.5, 0.7, 0.9};
    stack.forecast.usualCarbonKg = 0.075;
    stack.forecast.usualNitrogenKg = 0.0026;
    stack.record.lastFeed = stack.record.lastEntry = in(-3);
    stack.record.usualFeedKgPerWeek = 0.9;
    stack.record.usualFeed = {900, Unit::g};
    stack.record.usualFeedKg = 0.9;
    Foresight& ahead = stack.now.ahead.emplace();
    ahead.bedIn7Days = ahead.bedIn14Days = stack.now.binTempC;
    ahead.drainedLPerWeek = stack.forecast.drainedExpectedLPerWeek;
    ahead.roomTopTrayFreshKg = stack.forecast.roomTopTrayFreshKg;
    ahead.usualCarbonKg = stack.forecast.usualCarbonKg;
    ahead.usualNitrogenKg = stack.forecast.usualNitrogenKg;
    for (int day = -40; day <= 0; ++day) {
        stack.history.push_back(stack.now);
        stack.history.back().day = in(day);
    }
    return stack;
}

/// Today and the days before it, down to `from` days ago.
inline void since(StackReckoning& stack, int from, const std::function<void(StackEstimate&)>& change)
{
    for (StackEstimate& each : stack.history)
        if (each.day >= in(from)) change(each);
    change(stack.now);
}

inline std::vector<std::string> codes(const StackReckoning& stack)
{
    std::vector<std::string> names;
    for (const Advice& each : advice::adviceFor(stack)) names.emplace_back(advice::codeName(each.code));
    return names;
}

inline const Advice* find(const std::vector<Advice>& all, Code code)
{
    const auto found = std::find_if(all.begin(), all.end(), [code](const Advice& each) { return each.code == code; });
    return found == all.end() ? nullptr : &*found;
}

/// Why today's piece of that code is given, in its words; empty where there is none.
inline std::string reasonOf(const StackReckoning& stack, Code code)
{
    const std::vector<Advice> all = advice::adviceFor(stack);
    const Advice* found = find(all, code);
    return found != nullptr ? found->because : std::string{};
}

}
