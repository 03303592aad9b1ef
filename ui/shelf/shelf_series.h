#pragma once

#include "ui/shelf/shelf_model.h"

namespace tierloam::shelf {

/// The time that the small charts of all stacks show: `stripDays` back from today, or around a day that lies before that.
drawing::TimeAxis stripAxis(Day today, Day shown);

/// Fills processing, drained and colony of one stack; `reckoning` may be null: the strips then hold only what was measured.
void addStrips(StackModel& stack, const journal::Entries& entries, const reckoning::StackReckoning* reckoning,
               const reckoning::StackEstimate* onShown, const drawing::TimeAxis& axis);

/// Gives each measure one height over all stacks.
void shareScales(std::vector<StackModel>& stacks);

}
