#pragma once

#include "core/exchange/fault.h"
#include "core/exchange/row.h"
#include "core/materials/table.h"

#include <variant>

namespace tierloam::exchange {

/// The entry that a row says, or the first thing that is wrong with it (Fault::line is left to the caller). Looks at the row alone:
/// whether the step is possible is the journal's. Materials and species must be known; they are kept as typed. Id and position are not set.
std::variant<journal::Entry, Fault> rowToEntry(const Row& row, const materials::Table& table);

}
