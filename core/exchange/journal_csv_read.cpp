#include "core/exchange/journal_csv.h"

#include "core/exchange/broken_record.h"
#include "core/exchange/cells.h"
#include "core/exchange/csv.h"
#include "core/exchange/journal_header.h"
#include "core/exchange/rows_against_journal.h"
#include "core/exchange/spreadsheet_safe.h"
#include "core/exchange/stack_names.h"
#include "core/exchange/text.h"

#include <algorithm>

namespace tierloam::exchange {

namespace {

using Places = decltype(JournalHeader::places);

Fault wholeRow(std::string_view raw, const QString& allowed) { return {0, {}, shown(raw), allowed}; }

GivenRow takeApart(const csv::Record& record, const Places& places)
{
    GivenRow line;
    line.line = record.line;
    line.raw = record.raw;
    line.fault = brokenRecord(record);
    if (!line.fault && record.cells.size() != columnCount)
        line.fault = wholeRow(record.raw, ExchangeText::tr("%1 cells: %2; there are %3").arg(QString::number(columnCount), Cells::joined(columnNames), QString::number(record.cells.size())));
    if (line.fault) return line;
    for (std::size_t i = 0; i < columnCount; ++i) line.row.cells[i] = record.cells[places[i]];
    for (const Column free : {Column::stack, Column::item, Column::detail, Column::note}) line.row[free] = fromSpreadsheetSafe(line.row[free]);
    return line;
}

/// Names of stacks typed in another case, in their column and behind `to=`. A set-up keeps its own: it may be that of a new stack.
void nameStacks(csv::Record& record, const journal::Entries& existing)
{
    if (record.cells.size() != columnCount) return;
    const auto cell = [&](Column column) -> std::string& { return record.cells[static_cast<std::size_t>(column)]; };
    if (cell(Column::action) == "setup") return;
    std::vector<std::string> known;
    for (const journal::StackHistory& history : journal::replay(existing).stacks) known.push_back(history.name);
    cell(Column::stack) = stackMeant(cell(Column::stack), known).value_or(cell(Column::stack));
    constexpr std::string_view to = "to=";
    std::string& detail = cell(Column::detail);
    if (cell(Column::action) != "move" || !detail.starts_with(to)) return;
    const std::string typed = detail.substr(to.size(), detail.find(';') - to.size());
    detail.replace(to.size(), typed.size(), stackMeant(typed, known).value_or(typed));
}

ReadJournal readRecords(const std::vector<csv::Record>& records, std::size_t first, const Places& places, const journal::Entries& existing)
{
    std::vector<GivenRow> rows;
    std::vector<int> lines;
    rows.reserve(records.size());
    for (std::size_t i = first; i < records.size(); ++i) {
        rows.push_back(takeApart(records[i], places));
        lines.push_back(records[i].line);
    }
    RowsRead read = readRows(std::move(rows), existing);
    ReadJournal result;
    for (std::size_t i = 0; i < read.faults.size() && result.faults.size() < mostFaults; ++i) {
        if (!read.faults[i]) continue;
        read.faults[i]->line = lines[i];
        result.faults.push_back(std::move(*read.faults[i]));
    }
    if (!result.faults.empty()) return result;
    result.edit = std::move(read.edit);
    for (journal::Entry& entry : result.edit.added) entry.id = journal::EntryId::none;
    result.effect = std::move(read.effect);
    for (journal::Warning& warning : journal::warningsOf(result.effect.after))
        if (isAddedRow(result.effect.after[warning.entry])) result.warnings.push_back(std::move(warning));
    for (journal::Entry& entry : result.effect.after)
        if (isAddedRow(entry)) entry.id = journal::EntryId::none;
    return result;
}

}

ReadJournal readJournal(std::string_view csv, const journal::Entries& existing)
{
    const auto records = csv::read(csv);
    JournalHeader header = journalHeaderOf(csv, records);
    if (!header.faults.empty()) {
        if (header.faults.size() > mostFaults) header.faults.resize(mostFaults);
        ReadJournal result;
        result.faults = std::move(header.faults);
        result.foreign = header.foreign;
        return result;
    }
    ReadJournal read = readRecords(records, 1, header.places, existing);
    read.foreign = std::ranges::any_of(records, [](const csv::Record& record) { return record.problem == csv::Problem::notUtf8; });
    return read;
}

ReadJournal readRecord(std::string_view row, const journal::Entries& existing)
{
    Places places{};
    for (std::size_t i = 0; i < columnCount; ++i) places[i] = i;
    auto records = csv::read(row);
    if (records.size() == 1) {
        nameStacks(records.front(), existing);
        return readRecords(records, 0, places, existing);
    }
    ReadJournal result;
    result.faults.push_back(wholeRow(row, ExchangeText::tr("one row")));
    return result;
}

}
