#pragma once

#include "core/planning/year_plan.h"

#include <functional>

namespace tierloam::planning {

using ChangeOf = std::function<reckoning::ChangedPlan(const reckoning::StackReckoning&)>;

/// Under what the courses of a plan are run.
struct CourseTrial {
    ChangeOf change;                 ///< of each stack; none: as usual
    int moreTrays = 0;               ///< that each stack owns beside those it has
    bool windows = true;             ///< the windows' edges too
};

/// The plan of `planYear` with something changed: pins, days of the week and days away are kept.
std::optional<YearPlan> coursesWith(const reckoning::Reckoning& reckoning, const YearWishes& wishes, const CourseTrial& trial, int threads, std::stop_token stop = {});

}
