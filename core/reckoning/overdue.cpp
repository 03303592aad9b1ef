#include "core/reckoning/overdue.h"

#include <algorithm>

namespace tierloam::reckoning {

namespace {

constexpr double declineTo = 0.85;           ///< of the present median colony, 60 days on …
constexpr double declineFrom = 0.92;         ///< … and what takes that back
constexpr double rimCm = 1.0, rimAgainCm = 2.0; ///< from the rim: full, and so until it has sunk
constexpr int replayed = 60;                 ///< days

}

bool isOverdueEarly(const StackReckoning& result, double colonyIn60Days)
{
    const auto on = [batch = result.now.slots.front().batch, height = result.record.trayHeightCm](const StackEstimate& day, double kept, bool& declines, bool& full) {
        const TrayState bottom = day.slots.empty() ? TrayState::working : day.slots.front().state;
        if ((bottom != TrayState::ready && bottom != TrayState::overdue) || day.slots.front().batch != batch) {
            declines = full = false;
            return;
        }
        declines = kept <= (declines ? declineFrom : declineTo);
        const auto top = std::find_if(day.slots.rbegin(), day.slots.rend(), [](const TrayEstimate& tray) { return tray.state != TrayState::drying; });
        full = day.slots.size() > 1 && top != day.slots.rend() && top->depthCm >= height - (full ? rimAgainCm : rimCm);
    };
    bool declines = false;
    bool full = false;
    for (const StackEstimate& day : result.history)
        if (day.day < result.now.day && daysBetween(day.day, result.now.day) <= replayed) on(day, day.ahead ? day.ahead->colonyKeptIn60Days : 1.0, declines, full);
    const double now = result.now.colonyKg.p50;
    on(result.now, now > 0.0 ? colonyIn60Days / now : 1.0, declines, full);
    return declines || full;
}

}
