#include "core/planning/feeding_ramp.h"

#include "core/reckoning/overfeeding.h"

#include <algorithm>

namespace tierloam::planning {

using namespace reckoning;

namespace {

constexpr std::size_t rampWeeks = 4;     ///< from one step to the next
constexpr double rampStep = 1.1;         ///< of the amount before: less is not worth another habit

}

double shortOfAir(const Outlook& outlook)
{
    const auto lacking = std::count_if(outlook.leastAir.begin(), outlook.leastAir.end(), [](double air) { return air < overfedAir; });
    return outlook.leastAir.empty() ? 0.0 : static_cast<double>(lacking) / static_cast<double>(outlook.leastAir.size());
}

std::vector<ChangedPlan::FeedFrom> rampOf(const Outlook& outlook, Day tomorrow, double colonyNow, double start, double most)
{
    std::vector<ChangedPlan::FeedFrom> ramp{{tomorrow, start}};
    for (std::size_t week = rampWeeks - 1; week < outlook.days.size(); week += rampWeeks) {
        const double kg = std::min(start * outlook.days[week].colonyKg.p50 / std::max(colonyNow, 1e-6), most);
        if (kg >= ramp.back().kgPerWeek * rampStep) ramp.push_back({outlook.days[week].day + std::chrono::days{1}, kg});
    }
    return ramp;
}

bool hasAir(const Outlook& outlook)
{
    if (shortOfAir(outlook) > mostShortOfAir) return false;
    return std::all_of(outlook.days.begin(), outlook.days.end(), [](const StackEstimate& week) {
        return std::all_of(week.slots.begin(), week.slots.end(), [](const TrayEstimate& tray) { return tray.air >= overfedAir; });
    });
}

}
