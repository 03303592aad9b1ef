#pragma once

#include "core/store/connection.h"

namespace tierloam::store {

/// BEGIN IMMEDIATE … COMMIT; whatever leaves the scope without a commit is rolled back.
class Transaction {
public:
    explicit Transaction(const Connection& connection) : connection_{connection} {}
    ~Transaction()
    {
        // Nothing to be done when this fails: SQLite rolls back when it next opens the file.
        if (connection_.insideTransaction()) connection_.run(QStringLiteral("ROLLBACK"));
    }
    Transaction(const Transaction&) = delete;
    Transaction& operator=(const Transaction&) = delete;

    std::optional<QSqlError> begin() const { return connection_.run(QStringLiteral("BEGIN IMMEDIATE")); }
    /// Durable when it returns nothing (see makeDurable).
    std::optional<QSqlError> commit() const { return connection_.run(QStringLiteral("COMMIT")); }

private:
    const Connection& connection_;
};

}
