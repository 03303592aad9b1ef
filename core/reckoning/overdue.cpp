#include "core/reckoning/overdue.h"

#include "core/reckoning/overfeeding.h"

#include <algorithm>

namespace tierloam::reckoning {

namespace {

// Of the present median colony, 60 days on. Each week one day of the past looked so far ahead; today does every day, nearer to a feeding or further from it, which
// moves it by some hundredths: it raises or takes back alone only what is clearer than that.
constexpr double declineTo = 0.85, declineFrom = 0.92;
constexpr double clearlyTo = 0.82, clearlyFrom = 0.95;
constexpr int unfedFor = 14;                 ///< days, or two usual gaps
constexpr double farLess = 0.8;              ///< of what keeps the colony; ours
constexpr int replayed = 60;                 ///< days
constexpr int declineWithin = 60;            ///< days ahead

}

bool wantsFood(const StackReckoning& stack)
{
    const Record& record = stack.record;
    const int unfed = record.lastFeed ? daysBetween(*record.lastFeed, stack.now.day) : 0;
    if (unfed > std::max(unfedFor, static_cast<int>(2.0 * record.medianFeedGapDays))) return true;
    return stack.forecast.feedGivenKg < farLess * stack.forecast.feedLowKg; // one meal after a famine ends none
}

bool isOutOfSeason(const StackReckoning& stack)
{
    const auto kills = [](const StackEstimate& day) { return day.binTempC != Band{} && (day.binTempC.p50 < chilledBelow || day.binTempC.p50 > overfedWarmth); };
    return kills(stack.now) || std::any_of(stack.forecast.days.begin(), stack.forecast.days.end(), [&](const StackEstimate& week) {
        return daysBetween(stack.now.day, week.day) <= declineWithin && kills(week);
    });
}

bool isOverdueEarly(const StackReckoning& result, double colonyIn60Days)
{
    const auto isOfReady = [batch = result.now.slots.front().batch](const StackEstimate& day) {
        return !day.slots.empty() && day.slots.front().batch == batch && (day.slots.front().state == TrayState::ready || day.slots.front().state == TrayState::overdue);
    };
    bool declines = false;
    bool full = false;
    const auto note = [&](const StackEstimate& day) {
        if (!isOfReady(day)) {
            declines = full = false;
            return;
        }
        if (day.ahead && day.ahead->colonyKeptIn60Days) declines = *day.ahead->colonyKeptIn60Days <= (declines ? declineFrom : declineTo);
        const auto top = std::find_if(day.slots.rbegin(), day.slots.rend(), [](const TrayEstimate& tray) { return tray.state != TrayState::drying; });
        full = day.slots.size() > 1 && top != day.slots.rend() && top->depthCm >= result.record.trayHeightCm - (full ? rimAgainCm : rimCm);
    };
    for (const StackEstimate& day : result.history)
        if (day.day < result.now.day && daysBetween(day.day, result.now.day) <= replayed) note(day);
    note(result.now);
    const double now = result.now.colonyKg.p50;
    const double kept = now > 0.0 ? colonyIn60Days / now : 1.0;
    declines = isOfReady(result.now) && (declines ? kept <= clearlyFrom : kept <= clearlyTo);
    return (declines && !wantsFood(result) && !isOutOfSeason(result)) || full;
}

}
