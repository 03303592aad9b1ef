#include "core/exchange/journal_csv.h"

#include "core/exchange/csv.h"
#include "core/exchange/spreadsheet_safe.h"
#include "core/exchange/whole_file.h"

#include <unordered_set>

namespace tierloam::exchange {

std::string writeJournal(const journal::Entries& entries)
{
    std::string csv;
    csv::writeRecord(csv, {columnNames.begin(), columnNames.end()});
    std::unordered_set<std::string> setUp;
    for (const journal::Entry& entry : entries) {
        Row row = entryToRow(entry);
        if (const auto* setup = std::get_if<journal::Setup>(&entry.action); setup && setUp.insert(entry.stack).second && !setup->key) {
            journal::Setup keyed = *setup;
            keyed.key = journal::stackKey(entry.stack);
            row[Column::detail] = detailText(keyed);
        }
        for (const Column free : {Column::stack, Column::item, Column::detail, Column::note}) row[free] = spreadsheetSafe(row[free]);
        csv::writeRecord(csv, {row.cells.begin(), row.cells.end()});
    }
    return csv;
}

std::optional<QString> exportJournal(const QString& path, const journal::Entries& entries) { return writeWholeFile(path, writeJournal(entries)); }

}
