#pragma once

#include "core/journal/entry.h"
#include "core/journal/replay.h"
#include "core/reckoning/reckoning.h"

#include <memory>

/// A household of three stacks, made up for tests of pages and drawings: a legal journal and estimates that agree with it in what stands
/// where. The estimates follow plain curves, not the model: nothing that is claimed of the model may be tested on them.
///
/// "Scullery": three trays of three, spigot open, bottom tray ready at 0.93. "Lean-to": two trays of three, spigot shut, sump near full.
/// "Cellar": three trays, the top one four days in light-drying, lid off.
namespace tierloam::tests {

/// Friday 2 May 2031.
Day sampleToday();
/// In journal order, ids 1, 2, …
journal::Entries sampleJournal();
/// History weekly, daily for the last 90 days, up to sampleToday().
std::shared_ptr<const reckoning::Reckoning> sampleReckoning();
/// The same with so many stacks of other names, copied in turn from the three; for long shelves.
std::shared_ptr<const reckoning::Reckoning> sampleReckoning(int stacks);
journal::Entries sampleJournal(int stacks);

}
