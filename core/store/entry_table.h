#pragma once

#include "core/store/connection.h"
#include "core/store/household_file.h"

#include <QSqlQuery>

#include <map>

/// The rows of the table `entries`: read and changed one by one. No function here begins or ends a transaction.
namespace tierloam::store {

/// Either the error of SQLite or what is wrong with a row, as a sentence.
struct RowTrouble {
    std::optional<QSqlError> error;
    QString sentence;
};

/// Live entries in journal order.
std::variant<journal::Entries, RowTrouble> readEntries(const Connection& connection);
/// One live entry; none when it is not there.
std::variant<std::optional<journal::Entry>, RowTrouble> readEntry(const Connection& connection, journal::EntryId id);

/// Entries that were taken out, latest first.
std::variant<std::vector<DeletedEntry>, RowTrouble> readDeleted(const Connection& connection);

/// The changes of one edit. Its statements are prepared once, and it remembers the ends of days, so that a long import stays quick.
class EntryChanges {
public:
    EntryChanges(const Connection& connection, std::optional<qint64> importId);

    /// The new id. Goes to the end of its day whatever position it names.
    std::variant<journal::EntryId, RowTrouble> insert(const journal::Entry& entry);
    std::optional<RowTrouble> replace(const journal::Entry& entry);
    std::optional<RowTrouble> remove(journal::EntryId id);
    std::optional<RowTrouble> bringBack(journal::EntryId id);

private:
    std::variant<qint64, RowTrouble> endOfDay(Day day);

    const Connection& connection_;
    std::optional<qint64> importId_;
    QString now_;
    QSqlQuery insert_;
    std::map<Day, qint64> ends_;
};

}
