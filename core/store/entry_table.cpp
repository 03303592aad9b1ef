#include "core/store/entry_table.h"

#include "core/store/entry_row.h"
#include "core/store/text.h"

#include <QDateTime>

namespace tierloam::store {

namespace {

const QString& columnList()
{
    static const QString list = [] {
        QString names;
        for (const auto name : columnNames) names += (names.isEmpty() ? QString{} : QStringLiteral(", ")) + toQString(name);
        return names;
    }();
    return list;
}

/// What is read in their place: of a file that is read as an earlier release left it, nothing for columns that came later.
QString columnsToRead(const Connection& connection)
{
    const auto schema = connection.value(QStringLiteral("PRAGMA user_version"));
    const auto* number = std::get_if<QVariant>(&schema);
    if (!number || number->toInt() >= 5) return columnList(); // an error is that of the reading, too
    QString names;
    for (std::size_t i = 0; i < columnCount; ++i)
        names += (i == 0 ? QString{} : QStringLiteral(", ")) + (i < static_cast<std::size_t>(firstOfSchema5) ? toQString(columnNames[i]) : QStringLiteral("NULL"));
    return names;
}

RowTrouble troubleOf(const QSqlQuery& query) { return {query.lastError(), {}}; }

RowTrouble notAsExpected(journal::EntryId id)
{
    return {std::nullopt, StoreText::tr("Entry %1 has meanwhile been changed or deleted. Nothing was written; look at the journal and try again.")
                              .arg(static_cast<qint64>(id))};
}

RowTrouble notANumber(Column column)
{
    return {std::nullopt, StoreText::tr("An entry holds something that is not a number in %1. Nothing was written.")
                              .arg(toQString(columnNames[static_cast<std::size_t>(column)]))};
}

/// Columns 0 = id, then those of columnNames.
std::variant<journal::Entry, RowTrouble> entryAt(const QSqlQuery& query)
{
    EntryRow row;
    for (std::size_t i = 0; i < columnCount; ++i) row.values[i] = query.value(static_cast<int>(i) + 1);
    const qint64 id = query.value(0).toLongLong();
    auto read = entryOf(row);
    if (const auto* column = std::get_if<Column>(&read))
        return RowTrouble{std::nullopt, StoreText::tr("Entry %1 cannot be read: %2 makes no sense to this release.")
                                            .arg(id).arg(toQString(columnNames[static_cast<std::size_t>(*column)]))};
    auto& entry = std::get<journal::Entry>(read);
    entry.id = journal::EntryId{id};
    return std::move(entry);
}

}

std::variant<journal::Entries, RowTrouble> readEntries(const Connection& connection)
{
    QSqlQuery query{connection.database()};
    query.setForwardOnly(true);
    if (!query.exec(QStringLiteral("SELECT id, ") + columnsToRead(connection) + QStringLiteral(" FROM entries WHERE deleted_at IS NULL ORDER BY day, position_in_day, id")))
        return troubleOf(query);
    journal::Entries entries;
    while (query.next()) {
        auto entry = entryAt(query);
        if (auto* trouble = std::get_if<RowTrouble>(&entry)) return std::move(*trouble);
        entries.push_back(std::move(std::get<journal::Entry>(entry)));
    }
    if (query.lastError().isValid()) return troubleOf(query);
    return entries;
}

std::variant<std::optional<journal::Entry>, RowTrouble> readEntry(const Connection& connection, journal::EntryId id)
{
    QSqlQuery query{connection.database()};
    query.setForwardOnly(true);
    if (!query.exec(QStringLiteral("SELECT id, ") + columnsToRead(connection) + QStringLiteral(" FROM entries WHERE deleted_at IS NULL AND id = %1").arg(static_cast<qint64>(id))))
        return troubleOf(query);
    if (!query.next()) {
        if (query.lastError().isValid()) return troubleOf(query);
        return std::optional<journal::Entry>{};
    }
    auto entry = entryAt(query);
    if (auto* trouble = std::get_if<RowTrouble>(&entry)) return std::move(*trouble);
    return std::optional{std::move(std::get<journal::Entry>(entry))};
}

std::variant<std::vector<DeletedEntry>, RowTrouble> readDeleted(const Connection& connection)
{
    QSqlQuery query{connection.database()};
    query.setForwardOnly(true);
    if (!query.exec(QStringLiteral("SELECT id, ") + columnsToRead(connection) + QStringLiteral(", deleted_at FROM entries WHERE deleted_at IS NOT NULL ORDER BY deleted_at DESC, id DESC")))
        return troubleOf(query);
    std::vector<DeletedEntry> deleted;
    while (query.next()) {
        auto entry = entryAt(query);
        if (auto* trouble = std::get_if<RowTrouble>(&entry)) return std::move(*trouble);
        const auto when = QDateTime::fromString(query.value(static_cast<int>(columnCount) + 1).toString(), Qt::ISODateWithMs);
        deleted.push_back({std::move(std::get<journal::Entry>(entry)), when});
    }
    if (query.lastError().isValid()) return troubleOf(query);
    return deleted;
}

EntryChanges::EntryChanges(const Connection& connection, std::optional<qint64> importId)
    : connection_{connection}, importId_{importId}, now_{QDateTime::currentDateTimeUtc().toString(Qt::ISODateWithMs)}, insert_{connection.database()}
{
}

std::variant<qint64, RowTrouble> EntryChanges::endOfDay(Day day)
{
    auto end = ends_.find(day);
    if (end == ends_.end()) {
        // Deleted rows count: they keep their place for the day they are brought back.
        const auto found = connection_.value(QStringLiteral("SELECT coalesce(max(position_in_day), 0) FROM entries WHERE day = '%1'").arg(toQString(dayText(day))));
        if (const auto* error = std::get_if<QSqlError>(&found)) return RowTrouble{*error, {}};
        end = ends_.emplace(day, std::get<QVariant>(found).toLongLong()).first;
    }
    return ++end->second;
}

std::variant<journal::EntryId, RowTrouble> EntryChanges::insert(const journal::Entry& entry)
{
    const auto position = endOfDay(entry.date.day);
    if (const auto* trouble = std::get_if<RowTrouble>(&position)) return *trouble;
    EntryRow row = rowOf(entry);
    row[Column::positionInDay] = std::get<qint64>(position);
    if (const auto column = notFinite(row)) return notANumber(*column);

    if (insert_.lastQuery().isEmpty()) {
        QString marks = QStringLiteral("?");
        for (std::size_t i = 1; i < columnCount + 3; ++i) marks += QStringLiteral(", ?");
        if (!insert_.prepare(QStringLiteral("INSERT INTO entries (") + columnList() + QStringLiteral(", import_id, created_at, changed_at) VALUES (") + marks
                             + QStringLiteral(")")))
            return troubleOf(insert_);
    }
    int place = 0;
    for (const QVariant& value : row.values) insert_.bindValue(place++, value);
    insert_.bindValue(place++, importId_ ? QVariant{*importId_} : QVariant{});
    insert_.bindValue(place++, now_);
    insert_.bindValue(place++, now_);
    if (!insert_.exec()) return troubleOf(insert_);
    return journal::EntryId{insert_.lastInsertId().toLongLong()};
}

std::optional<RowTrouble> EntryChanges::replace(const journal::Entry& entry)
{
    const auto found = readEntry(connection_, entry.id);
    if (const auto* trouble = std::get_if<RowTrouble>(&found)) return *trouble;
    const auto& before = std::get<std::optional<journal::Entry>>(found);
    if (!before) return notAsExpected(entry.id);

    EntryRow row = rowOf(entry);
    if (entry.positionInDay == 0) {
        qint64 position = before->positionInDay;
        if (before->date.day != entry.date.day) {
            const auto end = endOfDay(entry.date.day);
            if (const auto* trouble = std::get_if<RowTrouble>(&end)) return *trouble;
            position = std::get<qint64>(end);
        }
        row[Column::positionInDay] = position;
    }
    if (const auto column = notFinite(row)) return notANumber(*column);

    QString sets;
    for (const auto name : columnNames) sets += toQString(name) + QStringLiteral(" = ?, ");
    QSqlQuery query{connection_.database()};
    if (!query.prepare(QStringLiteral("UPDATE entries SET ") + sets + QStringLiteral("changed_at = ? WHERE id = ?"))) return troubleOf(query);
    int place = 0;
    for (const QVariant& value : row.values) query.bindValue(place++, value);
    query.bindValue(place++, now_);
    query.bindValue(place++, static_cast<qint64>(entry.id));
    if (!query.exec()) return troubleOf(query);
    return std::nullopt;
}

std::optional<RowTrouble> EntryChanges::remove(journal::EntryId id)
{
    QSqlQuery query{connection_.database()};
    if (!query.exec(QStringLiteral("UPDATE entries SET deleted_at = '%1' WHERE id = %2 AND deleted_at IS NULL").arg(now_).arg(static_cast<qint64>(id))))
        return troubleOf(query);
    if (query.numRowsAffected() != 1) return notAsExpected(id);
    return std::nullopt;
}

std::optional<RowTrouble> EntryChanges::bringBack(journal::EntryId id)
{
    QSqlQuery query{connection_.database()};
    if (!query.exec(QStringLiteral("UPDATE entries SET deleted_at = NULL, changed_at = '%1' WHERE id = %2 AND deleted_at IS NOT NULL")
                        .arg(now_).arg(static_cast<qint64>(id))))
        return troubleOf(query);
    if (query.numRowsAffected() != 1) return notAsExpected(id);
    return std::nullopt;
}

}
