#include "core/store/schema_check.h"

#include "core/store/schema.h"

#include <QSqlQuery>

#include <map>

namespace tierloam::store {

namespace {

/// The words of a statement, however it is laid out.
QString plain(const QString& sql) { return sql.simplified(); }

}

std::variant<bool, QSqlError> tablesAreOurs(const Connection& connection, int schema)
{
    std::map<QString, std::pair<QString, QString>> held; // name: type and statement
    QSqlQuery query{connection.database()};
    query.setForwardOnly(true);
    if (!query.exec(QStringLiteral("SELECT name, type, sql FROM sqlite_schema"))) return query.lastError();
    while (query.next()) held[query.value(0).toString()] = {query.value(1).toString(), plain(query.value(2).toString())};
    if (query.lastError().isValid()) return query.lastError();

    const QString making = QStringLiteral("CREATE TABLE ");
    for (int step = 0; step < schema; ++step) {
        for (const QString& sql : schemaSteps()[static_cast<std::size_t>(step)]) {
            const QString expected = plain(sql);
            if (!expected.startsWith(making)) continue; // an index holds nothing of its own, and SQLite's check compares it with its table
            const QString name = expected.mid(making.size()).section(QLatin1Char(' '), 0, 0);
            const auto found = held.find(name);
            if (found == held.end() || found->second != std::pair{QStringLiteral("table"), expected}) return false;
        }
    }
    return true;
}

}
