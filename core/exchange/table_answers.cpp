#include "core/exchange/table_answers.h"

#include "core/exchange/text.h"
#include "core/journal/action.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include <algorithm>
#include <array>

namespace tierloam::exchange {

namespace {

// Names in the setting: they stay.
constexpr std::array<std::string_view, allSheetFields.size()> fieldNames{"date", "time", "stack", "action", "slot", "amount", "unit", "item", "detail", "note"};
const QString columnsKey = QStringLiteral("columns"), decimalKey = QStringLiteral("decimal"), orderKey = QStringLiteral("order"), centuryKey = QStringLiteral("century"),
              unitKey = QStringLiteral("unit"), actionKey = QStringLiteral("action");
const QString point = QStringLiteral("point"), comma = QStringLiteral("comma"), dayFirst = QStringLiteral("day"), monthFirst = QStringLiteral("month");

std::optional<SheetField> fieldNamed(const QString& name)
{
    const auto found = std::ranges::find(fieldNames, name.toStdString());
    return found == fieldNames.end() ? std::nullopt : std::optional{allSheetFields[static_cast<std::size_t>(found - fieldNames.begin())]};
}

}

QString tableText(const TableAnswers& answers)
{
    QJsonObject all = QJsonDocument::fromJson(wordsText(answers.words).toUtf8()).object();
    if (!answers.columns.empty()) {
        QJsonArray columns;
        for (const auto& field : answers.columns) columns.append(field ? QJsonValue{toQString(fieldNames[static_cast<std::size_t>(*field)])} : QJsonValue{});
        all.insert(columnsKey, columns);
    }
    if (answers.decimal) all.insert(decimalKey, *answers.decimal == DecimalMark::comma ? comma : point);
    if (answers.order) all.insert(orderKey, *answers.order == DateOrder::dayFirst ? dayFirst : monthFirst);
    if (answers.century) all.insert(centuryKey, *answers.century);
    if (answers.unit) all.insert(unitKey, toQString(nameOf(*answers.unit)));
    if (!answers.action.empty()) all.insert(actionKey, toQString(answers.action));
    return QString::fromUtf8(QJsonDocument{all}.toJson(QJsonDocument::Compact));
}

TableAnswers tableFrom(const QString& text)
{
    const QJsonObject all = QJsonDocument::fromJson(text.toUtf8()).object();
    TableAnswers answers;
    answers.words = wordsFrom(text);
    for (const QJsonValue& each : all.value(columnsKey).toArray()) answers.columns.push_back(fieldNamed(each.toString()));
    const QString decimal = all.value(decimalKey).toString(), order = all.value(orderKey).toString();
    if (decimal == comma || decimal == point) answers.decimal = decimal == comma ? DecimalMark::comma : DecimalMark::point;
    if (order == dayFirst || order == monthFirst) answers.order = order == dayFirst ? DateOrder::dayFirst : DateOrder::monthFirst;
    const int century = all.value(centuryKey).toInt();
    if (century == 1900 || century == 2000) answers.century = century;
    answers.unit = unitNamed(all.value(unitKey).toString().toStdString());
    const std::string action = all.value(actionKey).toString().toStdString();
    if (std::ranges::find(journal::actionNames, action) != std::end(journal::actionNames)) answers.action = action;
    return answers;
}

TableAnswers together(TableAnswers newer, const TableAnswers& older)
{
    const auto add = [](WordAnswers::Meant& to, const WordAnswers::Meant& from) { to.insert(from.begin(), from.end()); }; // what is there stays
    add(newer.words.stacks, older.words.stacks);
    add(newer.words.actions, older.words.actions);
    add(newer.words.materials, older.words.materials);
    if (newer.columns.empty()) newer.columns = older.columns;
    if (!newer.decimal) newer.decimal = older.decimal;
    if (!newer.order) newer.order = older.order;
    if (!newer.century) newer.century = older.century;
    if (!newer.unit) newer.unit = older.unit;
    if (newer.action.empty()) newer.action = older.action;
    return newer;
}

}
