#include "core/exchange/journal_header.h"

#include "core/exchange/broken_record.h"
#include "core/exchange/cells.h"
#include "core/exchange/sheet_columns.h"
#include "core/exchange/sheet_values.h"
#include "core/exchange/text.h"
#include "core/journal/action.h"

#include <algorithm>
#include <optional>
#include <set>

namespace tierloam::exchange {

namespace {

/// A mark at the start, or every other byte zero as in plain letters.
bool isUtf16(std::string_view bytes)
{
    if (bytes.starts_with("\xFF\xFE") || bytes.starts_with("\xFE\xFF")) return true;
    constexpr std::size_t looked = 64;
    const std::string_view start = bytes.substr(0, looked);
    return start.size() >= 8 && std::ranges::count(start, '\0') * 3 > static_cast<std::ptrdiff_t>(start.size());
}

Fault ofTheFile(int line, const QString& found, const QString& allowed) { return {line, {}, found, allowed}; }

std::optional<std::size_t> columnNamed(std::string_view name)
{
    const auto known = std::ranges::find(columnNames, name);
    return known == columnNames.end() ? std::nullopt : std::optional{static_cast<std::size_t>(known - columnNames.begin())};
}

/// What parts the cells where commas do not: it gives a header more names.
std::optional<char> otherSeparator(std::string_view csv, const csv::Record& header)
{
    for (const char separator : {';', '\t'}) {
        const auto first = csv::read(csv, separator, 1);
        if (!first.empty() && first.front().cells.size() > std::max<std::size_t>(2, header.cells.size())) return separator;
    }
    return std::nullopt;
}

/// An entry where the names of the columns should stand.
bool looksLikeARow(const csv::Record& record)
{
    const auto isDay = [](const std::string& cell) {
        return dayAndTimeOf(cell, {}, {DecimalMark::point, DateOrder::dayFirst, false, 2000}) || dayAndTimeOf(cell, {}, {DecimalMark::point, DateOrder::monthFirst, false, 2000});
    };
    return std::ranges::any_of(record.cells, isDay);
}

/// The column of the journal that a foreign name stands for.
std::optional<std::size_t> columnOf(std::optional<SheetField> field)
{
    if (!field || *field == SheetField::time) return std::nullopt;
    switch (*field) {
    case SheetField::date: return columnNamed("date");
    case SheetField::time: break;
    case SheetField::stack: return columnNamed("stack");
    case SheetField::action: return columnNamed("action");
    case SheetField::slot: return columnNamed("slot");
    case SheetField::amount: return columnNamed("amount");
    case SheetField::unit: return columnNamed("unit");
    case SheetField::item: return columnNamed("item");
    case SheetField::detail: return columnNamed("detail");
    case SheetField::note: return columnNamed("note");
    }
    return std::nullopt;
}

}

JournalHeader journalHeaderOf(std::string_view csv, const std::vector<csv::Record>& records)
{
    JournalHeader header;
    const auto names = Cells::joined(columnNames);
    if (isUtf16(csv)) {
        header.foreign = true;
        header.faults.push_back(ofTheFile(1, ExchangeText::tr("text in UTF-16"), ExchangeText::tr("text in UTF-8")));
        return header;
    }
    if (records.empty()) {
        header.faults.push_back(ofTheFile(1, {}, ExchangeText::tr("a header with %1").arg(names)));
        return header;
    }
    const csv::Record& record = records.front();
    if (auto broken = brokenRecord(record)) {
        broken->line = record.line;
        header.foreign = record.problem == csv::Problem::notUtf8;
        header.faults.push_back(std::move(*broken));
        return header;
    }
    const bool nothingOfOurs = std::ranges::none_of(record.cells, [](const std::string& name) { return columnNamed(name).has_value(); });
    header.foreign = nothingOfOurs;
    if (nothingOfOurs) {
        if (const auto separator = otherSeparator(csv, record)) {
            const QString allowed = *separator == ';' ? ExchangeText::tr("cells parted by commas (,); in this file semicolons (;) part them")
                                                      : ExchangeText::tr("cells parted by commas (,); in this file tabs part them");
            header.faults.push_back(ofTheFile(record.line, shown(record.raw), allowed));
            return header;
        }
        if (looksLikeARow(record)) {
            header.faults.push_back(ofTheFile(record.line, shown(record.raw), ExchangeText::tr("a header with %1 as the first row; this one is an entry").arg(names)));
            return header;
        }
    }
    const auto meant = recogniseColumns(record.cells);
    std::set<std::size_t> seen, meantAlready;
    for (std::size_t at = 0; at < record.cells.size(); ++at) {
        const std::string& name = record.cells[at];
        if (const auto column = columnNamed(name)) {
            if (!seen.insert(*column).second) header.faults.push_back({record.line, shown(name), shown(name), ExchangeText::tr("each column once")});
            else header.places[*column] = at;
            continue;
        }
        header.foreign = true;
        const auto ours = columnOf(meant[at].field);
        const bool isTheirs = ours && std::ranges::find(record.cells, columnNames[*ours]) == record.cells.end() && meantAlready.insert(*ours).second;
        header.faults.push_back({record.line, shown(name), shown(name), isTheirs ? toQString(columnNames[*ours]) : names});
    }
    if (nothingOfOurs) return header; // each of its names has been told
    for (std::size_t column = 0; column < columnCount; ++column)
        if (!seen.contains(column)) header.faults.push_back({record.line, toQString(columnNames[column]), QString{}, ExchangeText::tr("a header with each of %1").arg(names)});
    return header;
}

}
