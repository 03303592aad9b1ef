#pragma once

#include "core/exchange/csv.h"
#include "core/exchange/fault.h"

#include <array>
#include <cstddef>
#include <string_view>
#include <vector>

namespace tierloam::exchange {

/// What the first bytes and the first row of a file say: the journal's own format, or in one sentence what it is instead.
struct JournalHeader {
    std::array<std::size_t, columnCount> places{}; ///< which cell of a record holds which column; only without faults
    std::vector<Fault> faults;         ///< with their line; whatever stands in the way of looking at rows
    bool foreign = false;              ///< a table of another make (columns, what parts the cells, encoding), as the window reads it
};

/// Of the file and of its records as csv::read gives them with commas. Another encoding and other marks between the cells are told once for
/// the file, not for each row; a column whose name is a known word for one of ours is told with ours.
JournalHeader journalHeaderOf(std::string_view csv, const std::vector<csv::Record>& records);

}
