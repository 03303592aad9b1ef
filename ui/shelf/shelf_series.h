#pragma once

#include "ui/shelf/shelf_model.h"

namespace tierloam::shelf {

/// The time that the small charts of all stacks show: `stripDays` back from today, or around a day that lies before that.
drawing::TimeAxis stripAxis(Day today, Day shown);

/// The largest of what stands as a figure under the stacks on the day shown: by it all of them have one unit, so that they can be compared.
struct Largest {
    double colonyKg = 0;
    double drainedLPerWeek = 0;
};

/// Fills processing, drained and colony of one stack; `reckoning` may be null: the strips then hold only what was measured.
void addStrips(StackModel& stack, const journal::Entries& entries, const journal::StackHistory& history, const reckoning::StackReckoning* reckoning,
               const reckoning::StackEstimate* onShown, const drawing::TimeAxis& axis, const Largest& largest);

/// What was drained in each week up to `last` and not before `from`, and what was expected to run into the sump in it; title, value and
/// height are left to the caller.
drawing::Bars weeklyDrains(const journal::Entries& entries, const journal::StackHistory& history, const reckoning::StackReckoning* reckoning, Day from, Day last);

/// Gives each measure one height over all stacks.
void shareScales(std::vector<StackModel>& stacks);

}
