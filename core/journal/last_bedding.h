#pragma once

#include "core/journal/replay.h"

namespace tierloam::journal {

/// With what the last tray laid by that day began: the bedding of one that is added goes by it, and not by what was put on top later or as a second
/// layer. nullptr: none was laid. Points into `entries`.
const Bed* lastTrayBedding(const Entries& entries, const StackHistory& history, Day until);

}
