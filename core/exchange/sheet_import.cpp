#include "core/exchange/sheet_import.h"

#include "core/exchange/broken_record.h"
#include "core/exchange/rows_against_journal.h"
#include "core/exchange/sheet_row.h"
#include "core/exchange/spreadsheet_safe.h"
#include "core/exchange/text.h"
#include "core/journal/absences.h"

#include <algorithm>
#include <set>

namespace tierloam::exchange {

namespace {

/// What makes two entries the same for people: not how a unit was spelled, nor whether a default was written out.
std::string sameness(const journal::Entry& entry)
{
    Row row = entryToRow(entry);
    const auto amount = amountOf(entry.action);
    if (amount) {
        char text[40];
        std::snprintf(text, sizeof text, "%.9g", amount->value * inBaseUnit(amount->unit));
        row[Column::amount] = text;
        row[Column::unit] = std::to_string(static_cast<int>(kindOf(amount->unit)));
    }
    std::string& item = row[Column::item];
    if (item.empty() && std::holds_alternative<journal::Feed>(entry.action)) item = journal::defaultFood;
    if (item.empty() && std::holds_alternative<journal::Cover>(entry.action)) item = journal::defaultCover;
    if (item.empty() && std::holds_alternative<journal::Stock>(entry.action)) item = journal::defaultSpecies;
    item = comparable(item);
    if (const auto* setup = std::get_if<journal::Setup>(&entry.action)) {
        journal::Setup keyless = *setup;
        keyless.key.reset(); // which export adds
        row[Column::detail] = detailText(keyless);
    }
    std::string& note = row[Column::note];
    note = toQString(note).simplified().toStdString();
    std::string key;
    for (const std::string& cell : row.cells) key += cell + '\x1f';
    return key;
}

/// Which rows the journal holds already, and which only say an earlier row again. Each entry of the journal answers for one row, so that
/// two feedings of a day that stand in the journal and in the file are two.
class Repeats {
public:
    explicit Repeats(const journal::Entries& existing)
    {
        for (const journal::Entry& entry : existing) ++there_[sameness(entry)];
    }

    RowFate fateOf(const journal::Entry& entry)
    {
        const std::string key = sameness(entry);
        if (const auto found = there_.find(key); found != there_.end() && found->second > 0) {
            --found->second;
            seen_.insert(key);
            return RowFate::there;
        }
        return seen_.insert(key).second ? RowFate::added : RowFate::twice;
    }

private:
    std::map<std::string, int> there_;
    std::set<std::string> seen_;
};

bool isJournalFormat(const Sheet& sheet)
{
    return sheet.separator == ',' && sheet.header.size() == columnCount && std::ranges::all_of(columnNames, [&](std::string_view name) { return std::ranges::count(sheet.header, name) == 1; });
}

}

SheetQuestions questionsOf(const Sheet& sheet, const std::vector<SheetColumn>& columns, const WordAnswers& words)
{
    SheetQuestions questions;
    const SheetCells cells{columns};
    questions.noDate = !cells.has(SheetField::date);
    for (std::size_t at = 0; at < columns.size(); ++at)
        if (!columns[at].field) questions.ignored.push_back(sheet.header[at]);
    DecimalWitness decimals;
    DateWitness dates;
    ActionWordsMet actions;
    for (const csv::Record& record : sheet.rows) {
        if (record.problem != csv::Problem::none) continue;
        const std::string_view said = cells.of(record, SheetField::action);
        const auto action = actions.meant(said, words);
        if (isLeftOut(cells, record, words, action)) continue;
        dates.hear(cells.of(record, SheetField::date), record.line);
        cells.eachNumber(record, [&](std::string_view number) { decimals.hear(number, record.line); });
        if (!mayBeAnEntry(cells, record)) continue;
        questions.action = questions.action || said.empty();
        questions.stack = questions.stack || (cells.of(record, SheetField::stack).empty() && action != std::string_view{"material"});
        const auto amount = cells.amount(record);
        questions.unit = questions.unit || (!amount.number.empty() && amount.unit.empty() && action != std::string_view{"count"});
    }
    questions.decimal = decimals.evidence();
    questions.order = dates.evidence();
    questions.century = dates.shortYears();
    // The journal's own format says that its mark is the point; only a cell that contradicts it opens the question again.
    if (isJournalFormat(sheet) && questions.decimal.open) questions.decimal = {DecimalMark::point, 0, {}, false, false};
    return questions;
}

std::size_t SheetPlan::count(RowFate fate) const { return static_cast<std::size_t>(std::ranges::count(fates, fate)); }

SheetPlan planImport(const Sheet& sheet, const SheetAnswers& answers, const journal::Entries& existing, const std::stop_token& stop)
{
    SheetPlan plan;
    plan.fates.assign(sheet.rows.size(), RowFate::added);
    const SheetQuestions questions = questionsOf(sheet, answers.columns, answers.words);
    SheetRows rows{sheet, answers, questions, stackNamesOf(sheet, answers.columns, existing)};
    const auto refuse = [&](std::size_t row, Fault fault) {
        fault.line = sheet.rows[row].line;
        plan.fates[row] = RowFate::fault;
        plan.faults.emplace(row, std::move(fault));
    };

    std::vector<std::optional<std::size_t>> active; // rows of the sheet that still count; none: what begins a new stack
    std::vector<GivenRow> given;
    for (std::size_t row = 0; row < sheet.rows.size(); ++row) {
        if (auto broken = brokenRecord(sheet.rows[row])) {
            refuse(row, std::move(*broken));
            continue;
        }
        auto made = rows.read(row);
        if (auto* fault = std::get_if<Fault>(&made)) {
            refuse(row, std::move(*fault));
            continue;
        }
        if (std::holds_alternative<SheetRows::LeftOut>(made)) {
            plan.fates[row] = RowFate::unwanted;
            continue;
        }
        active.push_back(row);
        given.push_back({sheet.rows[row].line, sheet.rows[row].raw, std::move(std::get<Row>(made)), {}});
    }
    if (!answers.words.newStacks.empty()) {
        const RowsRead alone = readRows(given, existing); // a row at fault begins nothing
        std::vector<GivenRow> begins;
        for (const std::string& stack : answers.words.newStacks) {
            std::vector<Row> its;
            for (std::size_t i = 0; i < given.size(); ++i)
                if (alone.entries[i] && given[i].row[Column::stack] == stack) its.push_back(given[i].row);
            for (Row& row : rowsThatBegin(stack, its)) begins.push_back({1, {}, std::move(row), {}});
        }
        // Before all others, so that they are the first of their day.
        active.insert(active.begin(), begins.size(), std::nullopt);
        given.insert(given.begin(), std::make_move_iterator(begins.begin()), std::make_move_iterator(begins.end()));
    }

    const auto keepOnly = [&](const auto& stays) {
        std::size_t to = 0;
        for (std::size_t i = 0; i < active.size(); ++i) {
            if (!stays(i)) continue;
            if (to != i) {
                active[to] = active[i];
                given[to] = std::move(given[i]);
            }
            ++to;
        }
        active.resize(to);
        given.resize(to);
    };

    if (stop.stop_requested()) return {};
    RowsRead read = readRows(given, existing);
    if (stop.stop_requested()) return {};
    {
        Repeats repeats{existing};
        std::vector<bool> leftOut(active.size(), false);
        for (std::size_t i = 0; i < active.size(); ++i) {
            if (!read.entries[i] || !active[i]) continue;
            const RowFate fate = repeats.fateOf(*read.entries[i]);
            leftOut[i] = (fate == RowFate::there && answers.leaveOutThere) || (fate == RowFate::twice && answers.leaveOutTwice);
            if (leftOut[i]) plan.fates[*active[i]] = fate;
        }
        if (std::ranges::count(leftOut, true) > 0) {
            keepOnly([&](std::size_t i) { return !leftOut[i]; });
            read = readRows(given, existing);
        }
    }
    const auto isAhead = [&](std::size_t i) { return answers.today && read.entries[i] && read.entries[i]->date.day > *answers.today && !journal::awayDaysOf(*read.entries[i]); };
    std::vector<bool> ahead(active.size(), false);
    for (std::size_t i = 0; i < active.size(); ++i) {
        ahead[i] = isAhead(i);
        if (ahead[i] && active[i]) refuse(*active[i], {0, fieldText(SheetField::date), shown(given[i].row[Column::date]), hasNotCome()});
    }
    if (std::ranges::count(ahead, true) > 0) {
        keepOnly([&](std::size_t i) { return !ahead[i]; });
        read = readRows(given, existing);
    }
    // Each round takes rows out, so there are at most as many rounds as rows; a second or third is rare.
    while (std::ranges::any_of(read.faults, [](const auto& fault) { return fault.has_value(); })) {
        if (stop.stop_requested()) return {};
        for (std::size_t i = 0; i < active.size(); ++i)
            if (read.faults[i] && active[i]) refuse(*active[i], *read.faults[i]);
        keepOnly([&](std::size_t i) { return !read.faults[i]; });
        read = readRows(given, existing);
    }
    // A stack of which no row is left is not begun.
    std::set<std::string> said;
    for (std::size_t i = 0; i < active.size(); ++i)
        if (active[i]) said.insert(given[i].row[Column::stack]);
    const std::size_t before = active.size();
    keepOnly([&](std::size_t i) { return active[i] || said.contains(given[i].row[Column::stack]); });
    if (active.size() != before) read = readRows(given, existing);
    // What no single row is to blame for (an entry of the journal would become impossible) lets nothing in.
    if (read.effect.refusal) {
        for (const auto row : active)
            if (row) refuse(*row, {0, {}, shown(sheet.rows[*row].raw), ExchangeText::tr("rows that leave the entries of the journal possible")});
        return plan;
    }
    for (journal::Warning& warning : journal::warningsOf(read.effect.after))
        if (isAddedRow(read.effect.after[warning.entry])) plan.warnings.push_back(std::move(warning));
    plan.begun = static_cast<std::size_t>(std::ranges::count_if(active, [](const auto& row) { return !row; }));
    plan.entries = std::move(read.edit.added);
    for (journal::Entry& entry : plan.entries) entry.id = journal::EntryId::none;
    plan.after = std::move(read.effect.after);
    return plan;
}

std::string faultyRows(const Sheet& sheet, const SheetPlan& plan)
{
    std::string out;
    std::vector<std::string> cells{ExchangeText::tr("line").toStdString(), ExchangeText::tr("reason").toStdString()};
    const auto add = [&](const std::vector<std::string>& given) {
        for (const std::string& cell : given) cells.push_back(spreadsheetSafe(fromSpreadsheetSafe(cell)));
        csv::writeRecord(out, cells, sheet.separator);
    };
    add(sheet.header);
    for (const auto& [row, fault] : plan.faults) {
        cells = {std::to_string(fault.line), spreadsheetSafe(reasonText(fault).toStdString())};
        add(sheet.rows[row].cells);
    }
    return out;
}

QString hasNotCome() { return ExchangeText::tr("today or a day before: this day has not come"); }

QString reasonText(const Fault& fault)
{
    const QString said = ExchangeText::tr("found «%1»; allowed: %2").arg(fault.found, fault.allowed);
    return fault.column.isEmpty() ? said : fault.column + QStringLiteral(": ") + said;
}

}
