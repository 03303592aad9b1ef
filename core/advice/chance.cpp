#include "core/advice/chance.h"

#include <algorithm>

namespace tierloam::advice {

namespace {

constexpr int replayed = 60; ///< days

/// Share of the distribution below x.
double below(const reckoning::Band& band, double x)
{
    if (band.p95 <= band.p05) return x > band.p50 ? 1.0 : 0.0;
    const auto line = [x](double x0, double x1, double y0, double y1) { return x1 > x0 ? y0 + (x - x0) / (x1 - x0) * (y1 - y0) : (x < x0 ? y0 : y1); };
    const double share = x < band.p50 ? line(band.p05, band.p50, 0.05, 0.50) : line(band.p50, band.p95, 0.50, 0.95);
    return std::clamp(share, 0.0, 1.0);
}

bool isKnown(const reckoning::Band& band) { return band != reckoning::Band{}; }

}

std::optional<double> chanceAbove(const reckoning::Band& band, double x)
{
    return isKnown(band) ? std::optional{1.0 - below(band, x)} : std::nullopt;
}

std::optional<double> chanceBelow(const reckoning::Band& band, double x)
{
    return isKnown(band) ? std::optional{below(band, x)} : std::nullopt;
}

bool stands(const reckoning::StackReckoning& stack, const ChanceOn& chance, Thresholds at, std::optional<double> now)
{
    bool raised = false;
    const auto note = [&](std::optional<double> p) {
        if (!p || *p <= at.withdraw) raised = false;
        if (p && *p >= at.raise) raised = true;
    };
    for (const reckoning::StackEstimate& day : stack.history)
        if (day.day < stack.asOf && daysBetween(day.day, stack.asOf) <= replayed) note(chance(day));
    note(now ? now : chance(stack.now));
    return raised;
}

std::optional<double> nearness(const std::optional<Day>& on, Day today, int raise, int kept)
{
    if (!on) return std::nullopt;
    return std::clamp(static_cast<double>(kept + 1 - daysBetween(today, *on)) / (kept + 1 - raise), 0.0, 1.0);
}

const reckoning::TrayEstimate* trayOfBatch(const reckoning::StackEstimate& on, int batch)
{
    const auto found = std::find_if(on.slots.begin(), on.slots.end(), [batch](const reckoning::TrayEstimate& tray) { return tray.batch == batch; });
    return found == on.slots.end() ? nullptr : &*found;
}

}
