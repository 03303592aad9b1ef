#include "core/exchange/sheet_row.h"

#include "core/exchange/cells.h"
#include "core/exchange/spreadsheet_safe.h"
#include "core/exchange/text.h"
#include "core/journal/action.h"

#include <algorithm>

namespace tierloam::exchange {

namespace {

std::string_view trimmed(std::string_view text)
{
    while (!text.empty() && (text.front() == ' ' || text.front() == '\t')) text.remove_prefix(1);
    while (!text.empty() && (text.back() == ' ' || text.back() == '\t')) text.remove_suffix(1);
    return text;
}

Fault fault(SheetField field, std::string_view found, const QString& allowed) { return {0, fieldText(field), shown(found), allowed}; }

bool hasMark(std::string_view number) { return number.find_first_of(".,") != std::string_view::npos; }

}

SheetCells::SheetCells(const std::vector<SheetColumn>& columns)
{
    for (std::size_t at = 0; at < columns.size(); ++at) {
        if (!columns[at].field) continue;
        auto& place = places_[static_cast<std::size_t>(*columns[at].field)];
        if (place) continue;
        place = at;
        if (*columns[at].field == SheetField::amount) unit_ = columns[at].unit;
    }
}

std::string_view SheetCells::asItIs(const csv::Record& record, SheetField field) const
{
    const auto place = places_[static_cast<std::size_t>(field)];
    if (!place || *place >= record.cells.size()) return {};
    const std::string& cell = record.cells[*place];
    return std::string_view{cell}.substr(cell.size() - fromSpreadsheetSafe(cell).size()); // what was put before it goes
}

std::string_view SheetCells::of(const csv::Record& record, SheetField field) const { return trimmed(asItIs(record, field)); }

SheetCells::Amount SheetCells::amount(const csv::Record& record) const
{
    Amount amount;
    const std::string_view cell = of(record, SheetField::amount);
    std::size_t end = cell.size();
    // The unit is what follows the last digit.
    const std::size_t lastDigit = cell.find_last_of("0123456789");
    if (lastDigit != std::string_view::npos) end = lastDigit + 1;
    amount.number = trimmed(cell.substr(0, end));
    amount.unit = trimmed(cell.substr(end));
    if (amount.unit.empty()) amount.unit = of(record, SheetField::unit);
    if (amount.unit.empty() && unit_) amount.unit = nameOf(*unit_);
    return amount;
}

bool mayBeAnEntry(const SheetCells& cells, const csv::Record& record)
{
    if (!cells.has(SheetField::date)) return true;
    const std::string_view date = cells.of(record, SheetField::date), time = cells.of(record, SheetField::time);
    constexpr int century = 2000; // a year of two digits may be asked for
    return dayAndTimeOf(date, time, {DecimalMark::point, DateOrder::dayFirst, false, century}) || dayAndTimeOf(date, time, {DecimalMark::point, DateOrder::monthFirst, false, century});
}

bool isLeftOut(const SheetCells& cells, const csv::Record& record, const WordAnswers& words, std::optional<std::string_view> action)
{
    const auto leaves = [&](SheetField field, const WordAnswers::Meant& meant) {
        if (meant.empty()) return false;
        const std::string_view said = cells.of(record, field);
        const auto found = said.empty() ? meant.end() : meant.find(comparable(said));
        return found != meant.end() && !found->second;
    };
    return leaves(SheetField::action, words.actions) || leaves(SheetField::stack, words.stacks) || (takesMaterial(action) && leaves(SheetField::item, words.materials));
}

SheetRows::SheetRows(const Sheet& sheet, const SheetAnswers& answers, const SheetQuestions& questions, StackNames names)
    : sheet_{sheet}, answers_{answers}, questions_{questions}, names_{std::move(names)}, cells_{answers.columns}
{
    for (const std::string& name : answers.words.newStacks) names_.add(name);
    const auto decimal = answers.decimal ? answers.decimal : questions.decimal.settled;
    const auto order = answers.order ? answers.order : questions.order.settled;
    decimalKnown_ = decimal || !questions.decimal.mustBeAsked();
    orderKnown_ = order || !questions.order.mustBeAsked();
    ways_.decimal = decimal.value_or(DecimalMark::point);
    ways_.thousandsTold = answers.decimal && questions.decimal.open;
    ways_.order = order.value_or(DateOrder::dayFirst); // where the cells are the same either way
    ways_.century = answers.century;
}

std::string SheetRows::detailOf(std::string_view detail) const
{
    std::string made;
    while (!detail.empty()) {
        const std::size_t end = std::min(detail.find(';'), detail.size());
        const std::string_view pair = detail.substr(0, end);
        const std::size_t equals = pair.find('=');
        if (!made.empty()) made += ';';
        const auto number = equals == std::string_view::npos ? std::nullopt : plainNumber(pair.substr(equals + 1), ways_.decimal, ways_.thousandsTold);
        if (number && hasMark(pair.substr(equals + 1))) made.append(pair.substr(0, equals + 1)).append(*number);
        else made += pair;
        detail.remove_prefix(std::min(end + 1, detail.size()));
    }
    return made;
}

std::string SheetRows::stackOf(std::string_view written) const
{
    if (answers_.words.stacks.empty()) return names_.meant(written).value_or(std::string{written});
    if (const auto answered = answers_.words.stacks.find(comparable(written)); answered != answers_.words.stacks.end() && answered->second) return *answered->second;
    return names_.meant(written).value_or(std::string{written});
}

std::variant<Row, Fault, SheetRows::LeftOut> SheetRows::read(std::size_t index)
{
    const csv::Record& record = sheet_.rows[index];
    const std::string_view said = cells_.of(record, SheetField::action);
    const auto action = actions_.meant(said.empty() ? std::string_view{answers_.action} : said, answers_.words);
    if (isLeftOut(cells_, record, answers_.words, action)) return LeftOut{};
    if (record.cells.size() > sheet_.header.size() && std::ranges::any_of(record.cells.begin() + static_cast<std::ptrdiff_t>(sheet_.header.size()), record.cells.end(), [](const std::string& cell) { return !trimmed(cell).empty(); }))
        return Fault{0, {}, shown(record.raw), ExchangeText::tr("%1 cells, as the first row has; there are %2").arg(QString::number(sheet_.header.size()), QString::number(record.cells.size()))};
    Row row;
    const std::string_view date = cells_.of(record, SheetField::date);
    const std::string_view time = cells_.of(record, SheetField::time);
    DateWitness openDate;
    openDate.hear(date, 1);
    if (openDate.shortYears() && !ways_.century) return fault(SheetField::date, date, ExchangeText::tr("a year of four digits, or the answer which century is meant"));
    if (openDate.evidence().mustBeAsked() && !orderKnown_) return fault(SheetField::date, date, ExchangeText::tr("a date that can be read in one way alone, or the answer which of day and month comes first"));
    const auto moment = dayAndTimeOf(date, time, ways_);
    if (!moment) return fault(SheetField::date, time.empty() ? std::string{date} : std::string{date} + ' ' + std::string{time}, ExchangeText::tr("a date from 1900 to 2199, such as 2031-05-01 or 2031-05-01 18:30"));
    row[Column::date] = dayAndTimeText(*moment);

    if (!action) return fault(SheetField::action, said, Cells::joined(journal::actionNames));
    row[Column::action] = *action;
    if (const std::string_view stack = cells_.of(record, SheetField::stack); !stack.empty()) row[Column::stack] = *action == "material" ? std::string{stack} : stackOf(stack);
    else if (*action != "material") row[Column::stack] = answers_.stack;
    row[Column::slot] = cells_.of(record, SheetField::slot);

    const auto amount = cells_.amount(record);
    if (!amount.number.empty()) {
        DecimalWitness openNumber;
        openNumber.hear(amount.number, 1);
        if (openNumber.evidence().open && !decimalKnown_) return fault(SheetField::amount, amount.number, ExchangeText::tr("the answer whether its mark is a decimal mark"));
        const auto number = plainNumber(amount.number, ways_.decimal, ways_.thousandsTold);
        if (!number)
            return fault(SheetField::amount, amount.number, ways_.decimal == DecimalMark::comma ? ExchangeText::tr("a number with a comma as decimal mark, such as 0,35")
                                                                                                : ExchangeText::tr("a number with a point as decimal mark, such as 0.35"));
        const auto unit = amount.unit.empty() ? (*action == "count" ? std::optional{Unit::count} : answers_.unit) : unitMeant(amount.unit);
        if (!unit && amount.unit.empty()) return fault(SheetField::unit, {}, ExchangeText::tr("a unit, or the answer in which unit the amounts are"));
        row[Column::amount] = *number;
        // Ounces of water can be fluid ounces alone.
        const bool fluid = unit == Unit::oz && (*action == "water" || *action == "drain" || *action == "flush");
        row[Column::unit] = fluid ? std::string{nameOf(Unit::floz)} : unit ? std::string{nameOf(*unit)} : amount.unit;
    } else if (!cells_.of(record, SheetField::amount).empty()) {
        return fault(SheetField::amount, cells_.of(record, SheetField::amount), ExchangeText::tr("a number, such as 0.35"));
    }
    row[Column::item] = cells_.of(record, SheetField::item);
    if (takesMaterial(action) && !answers_.words.materials.empty())
        if (const auto answered = answers_.words.materials.find(comparable(row[Column::item])); answered != answers_.words.materials.end() && answered->second) row[Column::item] = *answered->second;
    const std::string_view detail = cells_.of(record, SheetField::detail);
    if (!decimalKnown_) {
        DecimalWitness openDetail;
        cells_.eachNumber(record, [&](std::string_view number) { openDetail.hear(number, 1); });
        if (openDetail.evidence().open) return fault(SheetField::detail, detail, ExchangeText::tr("the answer whether its mark is a decimal mark"));
    }
    row[Column::detail] = detailOf(detail);
    row[Column::note] = cells_.asItIs(record, SheetField::note);
    // Somebody looked and wrote down what he saw in words alone: that is a note, and not lost.
    if ((*action == "check" || *action == "reading") && detail.empty() && amount.number.empty() && !cells_.of(record, SheetField::note).empty()) row[Column::action] = "note";
    const bool isOwnWord = !said.empty() && !actions_.meant(said); // which says more than the action that it was said to mean
    if (isOwnWord && *action == "event" && row[Column::item].empty()) row[Column::item] = said;
    if (isOwnWord && *action == "note" && row[Column::note].empty()) row[Column::note] = said;
    return row;
}

}
