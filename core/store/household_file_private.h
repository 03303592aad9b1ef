#pragma once

#include "core/store/entry_table.h"
#include "core/store/failures.h"
#include "core/store/household_file.h"
#include "core/store/opening.h"
#include "core/store/transaction.h"

#include <functional>
#include <set>

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
    bool renewing = false;           ///< the connection has to be opened anew, and that failed the last time
    std::set<journal::EntryId> idsBefore; ///< live entries on the log that was taken away
    QString toldOfLog;               ///< not yet told
    int renewals = 0;

    std::optional<WriteFailure> standOnLog();
    /// Does a step that writes, and again on the log that then lies there when its own was taken away before or while it was written.
    template <class Step>
    auto onStandingLog(const Step& step) -> decltype(step())
    {
        constexpr int tries = 3;
        for (int tried = 1;; ++tried) {
            if (auto why = standOnLog()) return *why;
            auto done = step();
            if (!failureIn(done) || !connection().logTakenAway() || tried == tries) return done;
        }
    }
    static const WriteFailure* failureIn(const std::optional<WriteFailure>& done) { return done ? &*done : nullptr; }
    template <class Value>
    static const WriteFailure* failureIn(const std::variant<Value, WriteFailure>& done) { return std::get_if<WriteFailure>(&done); }

    std::optional<WriteFailure> mayNotWrite() const;
    std::optional<WriteFailure> checkAgain(const Guard& guard) const;
    std::variant<std::optional<qint64>, WriteFailure> noteImport(const QString& name, std::size_t entries) const;
    /// The edit, looked at once more, and what is written beside it, in one transaction; a failure of either leaves nothing.
    Written writeInOne(const journal::Edit& edit, const QString& importName, const Guard& guard, const std::function<std::optional<WriteFailure>()>& beside) const;
    Written applyInOne(const journal::Edit& edit, const QString& importName, const Guard& guard, const std::optional<SettingChange>& setting) const;
    std::optional<WriteFailure> writeSetting(const SettingChange& change) const;
    std::optional<QString> setting(const QString& name) const;
    Written write(const journal::Edit& edit, const QString& importName) const;
    Written applyReadingsInOne(const journal::Edit& edit, const LoggedJob& job, const QString& importName, const Guard& guard, std::vector<qint64>& series) const;
    std::variant<qint64, WriteFailure> changePhotoInOne(const PhotoJob& job) const;
    std::optional<WriteFailure> setInOne(const SettingChange& change) const;
    std::optional<WriteFailure> writeLogged(const LoggedJob& job, qint64 import, std::vector<qint64>& ids) const;
    /// The readings of an import stand while one of its entries does: entries that come back from the deleted ones bring them back too.
    std::optional<WriteFailure> loggedFollows(const journal::Edit& edit) const;
    std::optional<WriteFailure> commit(const Transaction& transaction) const;
};

}
