#pragma once

#include "core/exchange/fault.h"
#include "core/journal/edit.h"

#include <optional>
#include <string_view>
#include <vector>

namespace tierloam::exchange {

/// A row of a file taken apart, as it was found.
struct GivenRow {
    int line = 1;                    ///< where it starts, 1-based
    std::string_view raw;            ///< as it stands in the file
    Row row;
    std::optional<Fault> fault;      ///< why it cannot be read as a row at all; Fault::line is not set
};

/// What rows would add to a journal, each with what is wrong with it.
struct RowsRead {
    journal::Edit edit;              ///< the rows that say something, in the order of the file; an added entry bears the negative of its place (from 1) as its id
    journal::EditEffect effect;      ///< of that edit, ids likewise
    std::vector<std::optional<Fault>> faults;           ///< one place for each row
    std::vector<std::optional<journal::Entry>> entries; ///< what each sound row says; nullopt where it cannot be read
};

/// Reads rows one by one, then the journal that they would make: every row is looked at, also when an earlier one is bad, and a bad row
/// is told once, not again by those that build on it. Own materials serve rows before and after them.
RowsRead readRows(std::vector<GivenRow> rows, const journal::Entries& existing);

/// Whether an entry of RowsRead::effect is one of the rows.
bool isAddedRow(const journal::Entry& entry);

}
