#include "core/store/schema_check.h"

#include "core/store/schema.h"

#include <QSqlQuery>

#include <map>

namespace tierloam::store {

namespace {

/// The words of a statement, however it is laid out.
QString plain(const QString& sql) { return sql.simplified(); }

/// The statement of a table with one column more, as SQLite keeps it: after the last column, before what is said of the whole table.
QString withColumn(const QString& table, const QString& column)
{
    qsizetype end = table.indexOf(QStringLiteral(", CHECK ("));
    if (end < 0) end = table.lastIndexOf(QLatin1Char(')'));
    return table.left(end) + QStringLiteral(", ") + column + table.mid(end);
}

/// Tables of a schema by name: their statements.
std::map<QString, QString> tablesOf(int schema)
{
    const QString making = QStringLiteral("CREATE TABLE "), changing = QStringLiteral("ALTER TABLE "), adding = QStringLiteral(" ADD COLUMN ");
    std::map<QString, QString> tables;
    for (int step = 0; step < schema; ++step) {
        for (const QString& sql : schemaSteps()[static_cast<std::size_t>(step)]) {
            const QString statement = plain(sql); // an index holds nothing of its own, and SQLite's check compares it with its table
            if (statement.startsWith(making)) tables[statement.mid(making.size()).section(QLatin1Char(' '), 0, 0)] = statement;
            if (!statement.startsWith(changing)) continue;
            QString& table = tables[statement.mid(changing.size()).section(QLatin1Char(' '), 0, 0)];
            table = withColumn(table, statement.mid(statement.indexOf(adding) + adding.size()));
        }
    }
    return tables;
}

}

std::variant<bool, QSqlError> tablesAreOurs(const Connection& connection, int schema)
{
    std::map<QString, std::pair<QString, QString>> held; // name: type and statement
    QSqlQuery query{connection.database()};
    query.setForwardOnly(true);
    if (!query.exec(QStringLiteral("SELECT name, type, sql FROM sqlite_schema"))) return query.lastError();
    while (query.next()) held[query.value(0).toString()] = {query.value(1).toString(), plain(query.value(2).toString())};
    if (query.lastError().isValid()) return query.lastError();

    for (const auto& [name, expected] : tablesOf(schema)) {
        const auto found = held.find(name);
        if (found == held.end() || found->second != std::pair{QStringLiteral("table"), expected}) return false;
    }
    return true;
}

}
