#pragma once

#include "core/store/entry_table.h"
#include "core/store/failures.h"
#include "core/store/household_file.h"
#include "core/store/opening.h"
#include "core/store/transaction.h"

namespace tierloam::store {

class HouseholdFile::Private {
public:
    QString path;
    Opened opened;
    QDate backedUpOn;                ///< the day whose backup is known to be there, or on which the file was made, which then holds nothing older
    QDateTime backupFailedAt;        ///< the last try that made none; invalid: none failed

    const Connection& connection() const { return *opened.connection; }
    WriteFailure failure(const QSqlError& error) const { return writeFailure(error, path); }
    WriteFailure failure(const RowTrouble& trouble) const
    {
        if (trouble.error) return failure(*trouble.error);
        WriteFailure failure;
        failure.refused = true;
        failure.why = trouble.sentence;
        return failure;
    }
    std::optional<WriteFailure> mayNotWrite() const;
    std::optional<WriteFailure> checkAgain(const Guard& guard) const;
    std::variant<std::optional<qint64>, WriteFailure> noteImport(const QString& name, std::size_t entries) const;
    Written applyInOne(const journal::Edit& edit, const QString& importName, const Guard& guard, const std::optional<SettingChange>& setting) const;
    std::optional<WriteFailure> writeSetting(const SettingChange& change) const;
    std::optional<QString> setting(const QString& name) const;
    Written write(const journal::Edit& edit, const QString& importName) const;
    std::optional<WriteFailure> writeLogged(const LoggedJob& job, qint64 import, std::vector<qint64>& ids) const;
    /// The readings of an import stand while one of its entries does: entries that come back from the deleted ones bring them back too.
    std::optional<WriteFailure> loggedFollows(const journal::Edit& edit) const;
    std::optional<WriteFailure> commit(const Transaction& transaction) const;
};

}
