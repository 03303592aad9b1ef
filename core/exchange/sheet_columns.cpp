#include "core/exchange/sheet_columns.h"

#include "core/exchange/row.h"
#include "core/exchange/text.h"
#include "core/journal/action.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

namespace tierloam::exchange {

namespace {

constexpr const char* context = "SheetWords";

/// Words parted by bars, lower case. A translation gives the words of its language; the English ones stay understood.
struct Words {
    const char* words;

    bool has(const std::string& word) const
    {
        const QString sought = toQString(word);
        if (QString::fromUtf8(words).split(QLatin1Char{'|'}).contains(sought)) return true;
        return QCoreApplication::translate(context, words).split(QLatin1Char{'|'}).contains(sought);
    }
};

struct FieldWords {
    SheetField field;
    Words words;
};

constexpr FieldWords fieldWords[] = {
    {SheetField::date, {QT_TRANSLATE_NOOP("SheetWords", "date|day|when|date and time|date time|datetime|timestamp")}},
    {SheetField::time, {QT_TRANSLATE_NOOP("SheetWords", "time|time of day|clock|hour")}},
    {SheetField::stack, {QT_TRANSLATE_NOOP("SheetWords", "stack|bin|worm bin|name of the stack|stack name|bin name")}},
    {SheetField::action, {QT_TRANSLATE_NOOP("SheetWords", "action|activity|what was done|done|task|work|kind|type")}},
    {SheetField::slot, {QT_TRANSLATE_NOOP("SheetWords", "slot|tray|place|level|tray from below")}},
    {SheetField::amount, {QT_TRANSLATE_NOOP("SheetWords", "amount|quantity|qty|how much|weight|mass|volume|number")}},
    {SheetField::unit, {QT_TRANSLATE_NOOP("SheetWords", "unit|units|measure")}},
    {SheetField::item, {QT_TRANSLATE_NOOP("SheetWords", "item|material|food|feed|scraps|bedding|what|of what|species")}},
    {SheetField::detail, {QT_TRANSLATE_NOOP("SheetWords", "detail|details")}},
    {SheetField::note, {QT_TRANSLATE_NOOP("SheetWords", "note|notes|remark|remarks|comment|comments|observation|observations|description")}},
};

struct ActionWords {
    std::string_view action;
    Words words;
};

constexpr ActionWords actionWords[] = {
    {"setup", {QT_TRANSLATE_NOOP("SheetWords", "setup|set up|new stack|stack set up")}},
    {"stock", {QT_TRANSLATE_NOOP("SheetWords", "stock|stocked|stocking|worms in|worms put in|worms added|added worms")}},
    {"bed", {QT_TRANSLATE_NOOP("SheetWords", "bed|bedded|bedding|bedding laid|tray added|added tray|new tray")}},
    {"feed", {QT_TRANSLATE_NOOP("SheetWords", "feed|fed|feeding|food|scraps")}},
    {"cover", {QT_TRANSLATE_NOOP("SheetWords", "cover|covered|covering|paper")}},
    {"water", {QT_TRANSLATE_NOOP("SheetWords", "water|watered|watering|misted")}},
    {"drain", {QT_TRANSLATE_NOOP("SheetWords", "drain|drained|draining|leachate|sump emptied|emptied")}},
    {"flush", {QT_TRANSLATE_NOOP("SheetWords", "flush|flushed|flushing|rinsed")}},
    {"reading", {QT_TRANSLATE_NOOP("SheetWords", "reading|readings|measured|measurement")}},
    {"check", {QT_TRANSLATE_NOOP("SheetWords", "check|checked|look|looked|inspection|inspected")}},
    {"weigh", {QT_TRANSLATE_NOOP("SheetWords", "weigh|weighed|worms weighed|weighing")}},
    {"count", {QT_TRANSLATE_NOOP("SheetWords", "count|counted|worms counted")}},
    {"trayweight", {QT_TRANSLATE_NOOP("SheetWords", "trayweight|tray weight|tray weighed|weight of a tray")}},
    {"rotate", {QT_TRANSLATE_NOOP("SheetWords", "rotate|rotated|rotation|lifted to the top")}},
    {"loosen", {QT_TRANSLATE_NOOP("SheetWords", "loosen|loosened")}},
    {"harvest", {QT_TRANSLATE_NOOP("SheetWords", "harvest|harvested|castings taken")}},
    {"remove", {QT_TRANSLATE_NOOP("SheetWords", "remove|removed|worms taken|worms out|worms given away")}},
    {"event", {QT_TRANSLATE_NOOP("SheetWords", "event|problem|something odd")}},
    {"note", {QT_TRANSLATE_NOOP("SheetWords", "note|noted|remark|comment")}},
    {"retire", {QT_TRANSLATE_NOOP("SheetWords", "retire|retired|given up")}},
};

struct UnitWords {
    Unit unit;
    Words words;
};

constexpr UnitWords unitWords[] = {
    {Unit::g, {QT_TRANSLATE_NOOP("SheetWords", "g|gr|gram|grams|gramme|grammes")}},
    {Unit::kg, {QT_TRANSLATE_NOOP("SheetWords", "kg|kgs|kilo|kilos|kilogram|kilograms|kilogramme|kilogrammes")}},
    {Unit::oz, {QT_TRANSLATE_NOOP("SheetWords", "oz|ounce|ounces")}},
    {Unit::lb, {QT_TRANSLATE_NOOP("SheetWords", "lb|lbs|pound|pounds")}},
    {Unit::mL, {QT_TRANSLATE_NOOP("SheetWords", "ml|millilitre|millilitres|milliliter|milliliters")}},
    {Unit::L, {QT_TRANSLATE_NOOP("SheetWords", "l|litre|litres|liter|liters")}},
    {Unit::cup, {QT_TRANSLATE_NOOP("SheetWords", "cup|cups")}},
    {Unit::gal, {QT_TRANSLATE_NOOP("SheetWords", "gal|gallon|gallons")}},
    {Unit::floz, {QT_TRANSLATE_NOOP("SheetWords", "floz|fl oz|fluid ounce|fluid ounces")}},
    {Unit::count, {QT_TRANSLATE_NOOP("SheetWords", "count|pieces|worms|pcs")}},
};

/// "amount (g)", "Amount [kg]", "amount in g": the name, and what stands for a unit.
std::pair<std::string, std::optional<Unit>> withoutUnit(const std::string& header)
{
    for (const auto& [open, close] : {std::pair{'(', ')'}, std::pair{'[', ']'}}) {
        const auto at = header.find(open);
        const auto end = header.find(close, at == std::string::npos ? 0 : at);
        if (at == std::string::npos || end == std::string::npos) continue;
        return {comparable(header.substr(0, at)), unitMeant(header.substr(at + 1, end - at - 1))};
    }
    const auto last = header.find_last_of(' ');
    if (last != std::string::npos) {
        if (const auto unit = unitMeant(header.substr(last + 1))) {
            std::string name = comparable(header.substr(0, last));
            if (name.ends_with(" in")) name.resize(name.size() - 3);
            return {name, unit};
        }
    }
    return {comparable(header), std::nullopt};
}

}

std::string comparable(std::string_view word)
{
    QString text = toQString(word).toLower();
    text.replace(QLatin1Char{'_'}, QLatin1Char{' '});
    text = text.simplified();
    while (text.endsWith(QLatin1Char{'.'}) || text.endsWith(QLatin1Char{':'})) text.chop(1);
    return text.trimmed().toStdString();
}

std::uint64_t headerNumber(const std::vector<std::string>& header)
{
    std::string text;
    for (const std::string& name : header) text += comparable(name) + '\n';
    std::uint64_t hash = 0xcbf29ce484222325ULL; // FNV-1a
    for (const char c : text) hash = (hash ^ static_cast<unsigned char>(c)) * 0x100000001b3ULL;
    return hash;
}

QString fieldText(SheetField field)
{
    switch (field) {
    case SheetField::date: return ExchangeText::tr("date");
    case SheetField::time: return ExchangeText::tr("time of day");
    case SheetField::stack: return ExchangeText::tr("stack");
    case SheetField::action: return ExchangeText::tr("what was done");
    case SheetField::slot: return ExchangeText::tr("slot");
    case SheetField::amount: return ExchangeText::tr("amount");
    case SheetField::unit: return ExchangeText::tr("unit");
    case SheetField::item: return ExchangeText::tr("material or word");
    case SheetField::detail: return ExchangeText::tr("details");
    case SheetField::note: return ExchangeText::tr("note");
    }
    return {};
}

void recogniseMore(const std::vector<std::string>& header, std::vector<SheetColumn>& columns, const std::set<std::size_t>& kept)
{
    std::array<bool, allSheetFields.size()> taken{};
    for (const SheetColumn& column : columns)
        if (column.field) taken[static_cast<std::size_t>(*column.field)] = true;
    const auto take = [&](std::size_t at, SheetField field, std::optional<Unit> unit) {
        bool& isTaken = taken[static_cast<std::size_t>(field)];
        if (columns[at].field || isTaken || kept.contains(at)) return;
        isTaken = true;
        columns[at] = {field, field == SheetField::amount ? unit : std::nullopt};
    };
    // The journal's own names before their synonyms: "feed" beside "item" is no second item.
    for (std::size_t at = 0; at < header.size(); ++at)
        for (const FieldWords& row : fieldWords)
            if (comparable(header[at]) == QByteArrayView{row.words.words}.toByteArray().split('|').front().toStdString()) take(at, row.field, {});
    for (std::size_t at = 0; at < header.size(); ++at) {
        const auto [name, unit] = withoutUnit(header[at]);
        for (const FieldWords& row : fieldWords)
            if (row.words.has(name) || row.words.has(comparable(header[at]))) take(at, row.field, unit);
    }
}

std::vector<SheetColumn> recogniseColumns(const std::vector<std::string>& header)
{
    std::vector<SheetColumn> columns(header.size());
    recogniseMore(header, columns);
    return columns;
}

std::vector<SheetColumn> recogniseColumns(const Sheet& sheet)
{
    std::vector<SheetColumn> columns = recogniseColumns(sheet.header);
    const auto holds = [&](SheetField field) { return std::ranges::find(columns, std::optional{field}, &SheetColumn::field); };
    const auto item = holds(SheetField::item);
    if (item == columns.end() || holds(SheetField::action) != columns.end()) return columns;
    const auto at = static_cast<std::size_t>(item - columns.begin());
    constexpr int enough = 200; // rows of a table that is much the same throughout
    int cells = 0, acts = 0;
    for (const csv::Record& record : sheet.rows) {
        if (at >= record.cells.size() || comparable(record.cells[at]).empty()) continue;
        ++cells;
        if (actionMeant(record.cells[at])) ++acts;
        if (cells == enough) break;
    }
    // Not all of them have to be known: people have words of their own.
    if (acts == 0 || acts * 2 < cells) return columns;
    columns[at] = {SheetField::action, std::nullopt};
    recogniseMore(sheet.header, columns);
    return columns;
}

std::optional<std::string_view> actionMeant(std::string_view word)
{
    const std::string sought = comparable(word);
    for (const std::string_view name : journal::actionNames)
        if (sought == name) return name;
    for (const ActionWords& row : actionWords)
        if (row.words.has(sought)) return row.action;
    return std::nullopt;
}

std::optional<Unit> unitMeant(std::string_view word)
{
    if (const auto exact = unitNamed(word)) return exact;
    const std::string sought = comparable(word);
    for (const UnitWords& row : unitWords)
        if (row.words.has(sought)) return row.unit;
    return std::nullopt;
}

}
