#pragma once

#include "core/exchange/fault.h"
#include "core/journal/edit.h"
#include "core/journal/warnings.h"

#include <QString>

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace tierloam::exchange {

/// What a journal CSV (or one row of it) would add to a journal.
struct ReadJournal {
    journal::Edit edit;                     ///< the rows in the order of the file; empty when there are faults
    journal::EditEffect effect;             ///< of that edit; `after` holds the added entries without id
    std::vector<Fault> faults;              ///< one per bad row, by line, at most mostFaults
    bool foreign = false;                   ///< not of this format (journal_header.h): a table that the window may read all the same
    std::vector<journal::Warning> warnings; ///< what the added rows bring up; index into effect.after
};

/// Reads a whole file: header, then rows. Every row is looked at, also when an earlier one is bad. The journal so far decides what is
/// possible; a row that makes an entry of it impossible is at fault as a whole. Own materials serve rows before and after them.
ReadJournal readJournal(std::string_view csv, const journal::Entries& existing);

/// One row without a header, cells in the order of columnNames; the fault's line is 1. Typed by hand, so stacks are found whatever the case of their
/// name (stack_names.h).
ReadJournal readRecord(std::string_view row, const journal::Entries& existing);

/// The journal as CSV: header, then one row an entry, in journal order. The first `setup` of each stack carries its key.
std::string writeJournal(const journal::Entries& entries);

/// Replaces the target by the whole journal, or leaves it as it was. Durable when it returns. The reason on failure.
std::optional<QString> exportJournal(const QString& path, const journal::Entries& entries);

}
