#pragma once

#include "core/exchange/row.h"
#include "core/journal/entry.h"

#include <optional>

namespace tierloam::exchange {

/// What a bad row would do to the trays once it is put right: enough of an entry to replay the rows behind it, so that one bad row
/// is told once and not again by each row that builds on it. nullopt when it moves no tray, or when that cannot be known.
std::optional<journal::Entry> outlineOf(const Row& row);

/// Whether the row moves trays in a way that its outline cannot tell (its date or slot cannot be read).
bool leavesTraysUnknown(const Row& row);

}
