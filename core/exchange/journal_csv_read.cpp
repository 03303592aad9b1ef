#include "core/exchange/journal_csv.h"

#include "core/exchange/cells.h"
#include "core/exchange/csv.h"
#include "core/exchange/outline.h"
#include "core/exchange/refusal_text.h"
#include "core/exchange/row_reader.h"
#include "core/exchange/spreadsheet_safe.h"
#include "core/exchange/text.h"

#include <algorithm>
#include <set>
#include <unordered_set>

namespace tierloam::exchange {

namespace {

/// A record of the file taken apart.
struct Line {
    int number = 1;
    std::string_view raw;
    Row row;
    std::optional<Fault> fault;
};

/// Which cell of a record holds which column.
using Places = std::array<std::size_t, columnCount>;

Fault wholeRow(std::string_view raw, const QString& allowed) { return {0, {}, shown(raw), allowed}; }

std::optional<Fault> brokenRecord(const csv::Record& record)
{
    switch (record.problem) {
    case csv::Problem::none:
        return std::nullopt;
    case csv::Problem::openQuote:
        return wholeRow(record.raw, ExchangeText::tr("a closing quote mark for each opening one"));
    case csv::Problem::strayQuote:
        return wholeRow(record.raw, ExchangeText::tr("quote marks only around a whole cell, and doubled inside it"));
    case csv::Problem::notUtf8:
        return wholeRow(record.raw, ExchangeText::tr("text in UTF-8"));
    }
    return std::nullopt;
}

/// Faults of the header, or where each column stands.
std::vector<Fault> readHeader(const csv::Record& record, Places& places)
{
    if (auto broken = brokenRecord(record)) return {*broken};
    std::vector<Fault> faults;
    std::set<std::string_view> seen;
    for (std::size_t at = 0; at < record.cells.size(); ++at) {
        const std::string& name = record.cells[at];
        const auto known = std::find(columnNames.begin(), columnNames.end(), name);
        if (known == columnNames.end()) faults.push_back({0, shown(name), shown(name), Cells::joined(columnNames)});
        else if (!seen.insert(name).second) faults.push_back({0, shown(name), shown(name), ExchangeText::tr("each column once")});
        else places[static_cast<std::size_t>(known - columnNames.begin())] = at;
    }
    for (const std::string_view name : columnNames)
        if (!seen.contains(name)) faults.push_back({0, toQString(name), QString{}, ExchangeText::tr("a header with each of %1").arg(Cells::joined(columnNames))});
    return faults;
}

Line takeApart(const csv::Record& record, const Places& places)
{
    Line line;
    line.number = record.line;
    line.raw = record.raw;
    line.fault = brokenRecord(record);
    if (!line.fault && record.cells.size() != columnCount)
        line.fault = wholeRow(record.raw, ExchangeText::tr("%1 cells: %2; there are %3").arg(QString::number(columnCount), Cells::joined(columnNames), QString::number(record.cells.size())));
    if (line.fault) return line;
    for (std::size_t i = 0; i < columnCount; ++i) line.row.cells[i] = record.cells[places[i]];
    for (const Column free : {Column::stack, Column::item, Column::detail, Column::note}) line.row[free] = fromSpreadsheetSafe(line.row[free]);
    return line;
}

/// Rows read one by one, then the journal that they would make.
class Importer {
public:
    Importer(std::vector<Line> lines, const journal::Entries& existing) : lines_{std::move(lines)}, existing_{existing} {}

    ReadJournal read()
    {
        readRows();
        replayRows();
        ReadJournal result;
        for (Line& line : lines_) {
            if (!line.fault || result.faults.size() >= mostFaults) continue;
            line.fault->line = line.number;
            result.faults.push_back(std::move(*line.fault));
        }
        if (!result.faults.empty()) return result;
        result.edit = std::move(edit_);
        for (journal::Entry& entry : result.edit.added) entry.id = journal::EntryId::none;
        result.effect = std::move(effect_);
        for (journal::Warning& warning : journal::warningsOf(result.effect.after))
            if (isAdded(result.effect.after[warning.entry])) result.warnings.push_back(std::move(warning));
        for (journal::Entry& entry : result.effect.after)
            if (isAdded(entry)) entry.id = journal::EntryId::none;
        return result;
    }

private:
    // While rows and journal stand side by side, an added row bears the negative of its place in the file as its id.
    static bool isAdded(const journal::Entry& entry) { return static_cast<std::int64_t>(entry.id) < 0; }
    Line& lineOf(const journal::Entry& entry) { return lines_[static_cast<std::size_t>(-static_cast<std::int64_t>(entry.id)) - 1]; }

    void readRow(std::size_t index, const materials::Table& table, std::vector<std::optional<journal::Entry>>& read)
    {
        Line& line = lines_[index];
        auto made = rowToEntry(line.row, table);
        if (auto* fault = std::get_if<Fault>(&made)) {
            line.fault = std::move(*fault);
            read[index] = outlineOf(line.row);
            if (!read[index]) return;
        } else {
            read[index] = std::move(std::get<journal::Entry>(made));
        }
        read[index]->id = journal::EntryId{-static_cast<std::int64_t>(index) - 1};
    }

    /// Own materials first: they serve all rows.
    void readRows()
    {
        std::vector<std::optional<journal::Entry>> read(lines_.size());
        const auto isMaterial = [](const Line& line) { return line.row[Column::action] == "material"; };
        journal::Entries own;
        for (const journal::Entry& entry : existing_)
            if (std::holds_alternative<journal::OwnMaterial>(entry.action)) own.push_back(entry);
        for (std::size_t i = 0; i < lines_.size(); ++i) {
            if (lines_[i].fault || !isMaterial(lines_[i])) continue;
            readRow(i, materials::Table::builtIn(), read);
            if (read[i]) own.push_back(*read[i]);
            else own.push_back(nameOnly(lines_[i].row)); // so that rows that use it are not told as well
        }
        const materials::Table table = materials::Table::withOwn(own);
        for (std::size_t i = 0; i < lines_.size(); ++i)
            if (!lines_[i].fault && !isMaterial(lines_[i])) readRow(i, table, read);
        for (auto& entry : read)
            if (entry) edit_.added.push_back(std::move(*entry));
    }

    static journal::Entry nameOnly(const Row& row)
    {
        journal::OwnMaterial material;
        material.name = row[Column::item];
        journal::Entry entry;
        entry.action = std::move(material);
        return entry;
    }

    /// Stacks whose trays cannot be followed: what seems impossible there may only follow from a bad row, which is told already.
    std::unordered_set<std::string> unsureStacks() const
    {
        std::unordered_set<std::string> unsure;
        for (const Line& line : lines_)
            if (line.fault && leavesTraysUnknown(line.row)) unsure.insert(line.row[Column::stack]);
        return unsure;
    }

    void replayRows()
    {
        effect_ = journal::applyEdit(existing_, edit_);
        if (!effect_.refusal) return;
        const auto unsure = unsureStacks();
        const journal::Entries& after = effect_.after;
        for (const journal::Refusal& refusal : journal::replay(after).refusals) {
            if (unsure.contains(refusal.stack)) continue;
            const journal::Entry& refused = after[refusal.entry];
            if (isAdded(refused)) {
                Line& line = lineOf(refused);
                const Column column = columnOf(refusal, refused);
                if (!line.fault) line.fault = Fault{0, columnText(column), shown(line.row[column]), allowedText(refusal, after)};
            } else if (Line* line = culprit(refusal)) {
                if (!line->fault)
                    line->fault = wholeRow(line->raw, ExchangeText::tr("a row that leaves later entries possible; this one stands against entry %1 (%2): %3")
                                                          .arg(QString::number(static_cast<qint64>(refused.id)), entryText(refused), refusalText(refusal, after)));
            }
        }
    }

    /// The added row behind an entry that was possible before: the last one before it in that stack that moves trays.
    Line* culprit(const journal::Refusal& refusal)
    {
        Line* last = nullptr;
        for (std::size_t i = 0; i < refusal.entry; ++i) {
            const journal::Entry& entry = effect_.after[i];
            if (!isAdded(entry) || entry.stack != refusal.stack) continue;
            const auto& action = entry.action;
            const bool movesTrays = std::holds_alternative<journal::Setup>(action) || std::holds_alternative<journal::Bed>(action) || std::holds_alternative<journal::Feed>(action)
                || std::holds_alternative<journal::Cover>(action) || std::holds_alternative<journal::Rotate>(action)
                || std::holds_alternative<journal::Harvest>(action) || std::holds_alternative<journal::Retire>(action);
            if (movesTrays) last = &lineOf(entry);
        }
        return last;
    }

    std::vector<Line> lines_;
    const journal::Entries& existing_;
    journal::Edit edit_;
    journal::EditEffect effect_;
};

ReadJournal readRows(const std::vector<csv::Record>& records, std::size_t first, const Places& places, const journal::Entries& existing)
{
    std::vector<Line> lines;
    lines.reserve(records.size());
    for (std::size_t i = first; i < records.size(); ++i) lines.push_back(takeApart(records[i], places));
    return Importer{std::move(lines), existing}.read();
}

}

ReadJournal readJournal(std::string_view csv, const journal::Entries& existing)
{
    const auto records = csv::read(csv);
    Places places{};
    std::vector<Fault> faults;
    if (records.empty()) faults.push_back(wholeRow({}, ExchangeText::tr("a header with %1").arg(Cells::joined(columnNames))));
    else faults = readHeader(records.front(), places);
    if (!faults.empty()) {
        for (Fault& fault : faults) fault.line = records.empty() ? 1 : records.front().line;
        if (faults.size() > mostFaults) faults.resize(mostFaults);
        ReadJournal result;
        result.faults = std::move(faults);
        return result;
    }
    return readRows(records, 1, places, existing);
}

ReadJournal readRecord(std::string_view row, const journal::Entries& existing)
{
    Places places{};
    for (std::size_t i = 0; i < columnCount; ++i) places[i] = i;
    const auto records = csv::read(row);
    if (records.size() == 1) return readRows(records, 0, places, existing);
    ReadJournal result;
    result.faults.push_back(wholeRow(row, ExchangeText::tr("one row")));
    return result;
}

}
