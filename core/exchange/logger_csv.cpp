#include "core/exchange/logger_csv.h"

#include "core/exchange/sheet_columns.h"
#include "core/exchange/sheet_import.h"
#include "core/exchange/spreadsheet_safe.h"
#include "core/exchange/text.h"
#include "core/quantity/number_text.h"
#include "core/wording/formats.h"

#include <QCoreApplication>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include <algorithm>

namespace tierloam::exchange {

namespace {

constexpr double coldest = -40.0, hottest = 80.0; // °C, as the journal takes them

bool mentions(const QString& name, const char* words)
{
    const auto any = [&](const QString& list) {
        const auto parts = list.split(QLatin1Char{'|'});
        return std::ranges::any_of(parts, [&](const QString& word) { return !word.isEmpty() && name.contains(word); });
    };
    return any(QString::fromUtf8(words)) || any(QCoreApplication::translate("LoggerWords", words));
}

/// Words of headers, lower case, parted by bars; a translation adds those of its language.
constexpr const char* timeWords = QT_TRANSLATE_NOOP("LoggerWords", "time|date|stamp");
constexpr const char* temperatureWords = QT_TRANSLATE_NOOP("LoggerWords", "temp|°c|°f|celsius|fahrenheit|degrees|(c)|(f)|[c]|[f]");
constexpr const char* airWords = QT_TRANSLATE_NOOP("LoggerWords", "air|ambient|room|outside|outdoor");
constexpr const char* humidityWords = QT_TRANSLATE_NOOP("LoggerWords", "humid|rh");
constexpr const char* moistureWords = QT_TRANSLATE_NOOP("LoggerWords", "moist|water content|vwc");

std::optional<Degree> degreeOf(const QString& name)
{
    if (mentions(name, "°c|celsius|(c)|[c]") || name.endsWith(QStringLiteral(" c"))) return Degree::celsius;
    if (mentions(name, "°f|fahrenheit|(f)|[f]") || name.endsWith(QStringLiteral(" f"))) return Degree::fahrenheit;
    return std::nullopt;
}

constexpr std::array roleNames{"none", "moment", "timeOfDay", "bin", "air", "moisture", "humidity"};

std::optional<store::LoggedKind> kindOf(LoggerRole role)
{
    switch (role) {
    case LoggerRole::bin: return store::LoggedKind::bin;
    case LoggerRole::air: return store::LoggedKind::air;
    case LoggerRole::moisture: return store::LoggedKind::moisture;
    case LoggerRole::humidity: return store::LoggedKind::humidity;
    default: return std::nullopt;
    }
}

bool isTemperature(LoggerRole role) { return role == LoggerRole::bin || role == LoggerRole::air; }

std::string_view trimmed(std::string_view text)
{
    while (!text.empty() && (text.front() == ' ' || text.front() == '\t')) text.remove_prefix(1);
    while (!text.empty() && (text.back() == ' ' || text.back() == '\t')) text.remove_suffix(1);
    return text;
}

std::string_view cellOf(const csv::Record& record, std::optional<std::size_t> at) { return at && *at < record.cells.size() ? trimmed(record.cells[*at]) : std::string_view{}; }

std::optional<std::size_t> placeOf(const LoggerMapping& mapping, LoggerRole role)
{
    const auto found = std::ranges::find(mapping.columns, role, &LoggerColumn::role);
    return found == mapping.columns.end() ? std::nullopt : std::optional{static_cast<std::size_t>(found - mapping.columns.begin())};
}

/// "21.5 °C" without its unit: what follows the last digit, as long as it is a unit that can stand there.
std::string_view withoutUnit(std::string_view cell)
{
    for (const std::string_view unit : {"%", "°C", "°F", "C", "F"})
        if (cell.ends_with(unit)) return trimmed(cell.substr(0, cell.size() - unit.size()));
    return cell;
}

/// Words that instruments write where they have no reading.
bool isNoReading(std::string_view cell)
{
    const std::string word = comparable(cell);
    return word.empty() || word == "nan" || word == "null" || word == "n/a" || word == "na" || word == "--" || word == "-" || word == "---";
}

}

LoggerMapping guessMapping(const std::vector<std::string>& header)
{
    LoggerMapping mapping;
    bool timeFound = false, timeOfDayFound = false;
    const bool dateApart = std::ranges::any_of(header, [](const std::string& name) { return comparable(name) == "date"; });
    for (const std::string& given : header) {
        const QString name = toQString(comparable(given));
        LoggerColumn column;
        if (mentions(name, humidityWords)) column.role = LoggerRole::humidity;
        else if (mentions(name, moistureWords)) column.role = LoggerRole::moisture;
        else if (mentions(name, temperatureWords) || degreeOf(name)) column = {mentions(name, airWords) ? LoggerRole::air : LoggerRole::bin, degreeOf(name)};
        else if (mentions(name, timeWords)) {
            const bool isTimeOfDay = dateApart && name != QStringLiteral("date");
            if (isTimeOfDay && !timeOfDayFound) column.role = LoggerRole::timeOfDay;
            else if (!isTimeOfDay && !timeFound) column.role = LoggerRole::moment;
            timeOfDayFound = timeOfDayFound || column.role == LoggerRole::timeOfDay;
            timeFound = timeFound || column.role == LoggerRole::moment;
        }
        // Of two columns that could be the same thing the first is taken.
        if (kindOf(column.role) && placeOf(mapping, column.role)) column = {};
        mapping.columns.push_back(column);
    }
    return mapping;
}

QString mappingName(const std::vector<std::string>& header)
{
    return QStringLiteral("logger_columns_%1").arg(headerNumber(header), 16, 16, QLatin1Char{'0'});
}

QString mappingText(const LoggerMapping& mapping)
{
    QJsonArray columns;
    for (const LoggerColumn& column : mapping.columns) {
        QJsonObject made{{QStringLiteral("holds"), QString::fromLatin1(roleNames[static_cast<std::size_t>(column.role)])}};
        if (column.degree) made.insert(QStringLiteral("degrees"), *column.degree == Degree::celsius ? QStringLiteral("C") : QStringLiteral("F"));
        columns.append(made);
    }
    QJsonObject all{{QStringLiteral("columns"), columns}, {QStringLiteral("stack"), toQString(mapping.stack)}};
    if (mapping.decimal) all.insert(QStringLiteral("decimal"), *mapping.decimal == DecimalMark::comma ? QStringLiteral(",") : QStringLiteral("."));
    if (mapping.order) all.insert(QStringLiteral("first"), *mapping.order == DateOrder::dayFirst ? QStringLiteral("day") : QStringLiteral("month"));
    if (mapping.century) all.insert(QStringLiteral("century"), *mapping.century);
    return QString::fromUtf8(QJsonDocument{all}.toJson(QJsonDocument::Compact));
}

std::optional<LoggerMapping> mappingFrom(const QString& text, std::size_t columns)
{
    const QJsonObject all = QJsonDocument::fromJson(text.toUtf8()).object();
    const QJsonArray held = all.value(QStringLiteral("columns")).toArray();
    if (static_cast<std::size_t>(held.size()) != columns) return std::nullopt;
    LoggerMapping mapping;
    for (const QJsonValue value : held) {
        const QByteArray role = value[QStringLiteral("holds")].toString().toLatin1();
        const auto found = std::ranges::find_if(roleNames, [&](const char* name) { return role == name; });
        if (found == roleNames.end()) return std::nullopt;
        LoggerColumn column{static_cast<LoggerRole>(found - roleNames.begin()), std::nullopt};
        const QString degrees = value[QStringLiteral("degrees")].toString();
        if (!degrees.isEmpty()) column.degree = degrees == QStringLiteral("F") ? Degree::fahrenheit : Degree::celsius;
        mapping.columns.push_back(column);
    }
    mapping.stack = all.value(QStringLiteral("stack")).toString().toStdString();
    if (const QString mark = all.value(QStringLiteral("decimal")).toString(); !mark.isEmpty()) mapping.decimal = mark == QStringLiteral(",") ? DecimalMark::comma : DecimalMark::point;
    if (const QString first = all.value(QStringLiteral("first")).toString(); !first.isEmpty()) mapping.order = first == QStringLiteral("month") ? DateOrder::monthFirst : DateOrder::dayFirst;
    if (const int century = all.value(QStringLiteral("century")).toInt(); century == 1900 || century == 2000) mapping.century = century;
    return mapping;
}

LoggerQuestions questionsOf(const Sheet& sheet, const LoggerMapping& mapping)
{
    LoggerQuestions questions;
    const auto moment = placeOf(mapping, LoggerRole::moment);
    questions.noTime = !moment;
    questions.noValue = std::ranges::none_of(mapping.columns, [](const LoggerColumn& column) { return kindOf(column.role).has_value(); });
    questions.degrees = std::ranges::any_of(mapping.columns, [](const LoggerColumn& column) { return isTemperature(column.role) && !column.degree; });
    DecimalWitness decimals;
    DateWitness dates;
    for (const csv::Record& record : sheet.rows) {
        dates.hear(cellOf(record, moment), record.line);
        for (std::size_t at = 0; at < mapping.columns.size(); ++at)
            if (kindOf(mapping.columns[at].role)) decimals.hear(withoutUnit(cellOf(record, at)), record.line);
    }
    questions.decimal = decimals.evidence();
    questions.order = dates.evidence();
    questions.century = dates.shortYears();
    return questions;
}

std::size_t LoggerRead::count() const
{
    std::size_t count = 0;
    for (const auto& kind : readings) count += kind.size();
    return count;
}

LoggerRead readLogger(const Sheet& sheet, const LoggerMapping& mapping, std::optional<Day> today, const std::function<void(double)>& progress, const std::stop_token& stop)
{
    constexpr std::size_t step = 5000;
    LoggerRead read;
    const LoggerQuestions questions = questionsOf(sheet, mapping);
    WaysOfWriting ways;
    const auto decimal = mapping.decimal ? mapping.decimal : questions.decimal.settled;
    const auto order = mapping.order ? mapping.order : questions.order.settled;
    if (questions.any() || (questions.decimal.mustBeAsked() && !decimal) || (questions.order.mustBeAsked() && !order) || (questions.century && !mapping.century)) return read;
    ways.decimal = decimal.value_or(DecimalMark::point);
    ways.thousandsTold = mapping.decimal && questions.decimal.open;
    ways.order = order.value_or(DateOrder::dayFirst);
    ways.century = mapping.century;
    const auto momentAt = placeOf(mapping, LoggerRole::moment);
    const auto timeAt = placeOf(mapping, LoggerRole::timeOfDay);
    bool any = false;
    std::size_t lastAtFault = 0; // one more than the row, so that 0 is none
    for (std::size_t row = 0; row < sheet.rows.size(); ++row) {
        if (row % step == 0) {
            if (stop.stop_requested()) return {};
            if (progress) progress(static_cast<double>(row) / static_cast<double>(sheet.rows.size()));
        }
        const csv::Record& record = sheet.rows[row];
        const auto refuse = [&](const QString& column, std::string_view found, const QString& allowed) {
            if (row + 1 == lastAtFault) return;
            lastAtFault = row + 1;
            ++read.faultyRows;
            if (read.faults.size() < LoggerRead::mostFaults) read.faults.try_emplace(row, Fault{record.line, column, shown(found), allowed});
        };
        const std::string_view when = cellOf(record, momentAt);
        const auto moment = momentOf(when, cellOf(record, timeAt), ways);
        if (!moment) {
            refuse(toQString(sheet.header[*momentAt]), when, ExchangeText::tr("a date and a time, such as 2031-05-01 18:30"));
            continue;
        }
        if (today && moment->day > *today) {
            refuse(toQString(sheet.header[*momentAt]), when, hasNotCome());
            continue;
        }
        const std::int64_t second = std::chrono::duration_cast<std::chrono::seconds>(moment->day.time_since_epoch()).count() + moment->secondOfDay.value_or(0);
        for (std::size_t at = 0; at < mapping.columns.size(); ++at) {
            const auto kind = kindOf(mapping.columns[at].role);
            if (!kind) continue;
            const std::string_view cell = cellOf(record, at);
            if (isNoReading(cell)) continue;
            const auto number = plainNumber(withoutUnit(cell), ways.decimal, ways.thousandsTold);
            auto value = number ? parseNumber(*number) : std::nullopt;
            const bool temperature = isTemperature(mapping.columns[at].role);
            if (value && temperature && mapping.columns[at].degree == Degree::fahrenheit) value = (*value - 32.0) / 1.8;
            const bool possible = value && (temperature ? *value >= coldest && *value <= hottest : *value >= 0.0 && *value <= 100.0);
            if (!possible) {
                refuse(toQString(sheet.header[at]), cell, temperature ? ExchangeText::tr("a temperature from %1 to %2").arg(wording::temperatureText(coldest), wording::temperatureText(hottest)) : ExchangeText::tr("a share from 0 to 100 %"));
                continue;
            }
            read.readings[static_cast<std::size_t>(*kind)].push_back({second, *value});
            read.first = any ? std::min(read.first, moment->day) : moment->day;
            read.last = any ? std::max(read.last, moment->day) : moment->day;
            any = true;
        }
    }
    return read;
}

std::string faultyRows(const Sheet& sheet, const LoggerRead& read)
{
    SheetPlan plan;
    plan.faults = read.faults;
    return faultyRows(sheet, plan);
}

}
