#include "core/log/log.h"
#include "core/store/household_file_private.h"

#include "core/store/backup.h"
#include "core/store/setting_names.h"

#include <algorithm>
#include <utility>

/// What a household file does to be kept twice: backups and copies.
namespace tierloam::store {

namespace {

constexpr qint64 secondsBetweenTries = 600;

BackupMade makeAndLog(const Connection& connection, const QString& path, const QString& chosen, BackupKind kind, const QDateTime& now)
{
    const log::Since since;
    auto made = makeBackup(connection, path, chosen, kind, now);
    log::note(made.path.isEmpty() ? log::What::backupFailed : log::What::backupMade,
              {{"kind", static_cast<qint64>(kind)}, {"chosen-folder", !chosen.isEmpty()}, {"trouble", !made.trouble.isEmpty()}, {"ms", since.milliseconds()}});
    return made;
}

}

std::optional<QString> HouseholdFile::backUpIfDue(const QDateTime& now)
{
    if (readOnly() || d_->backedUpOn == now.date()) return std::nullopt;
    const bool justFailed = d_->backupFailedAt.isValid() && std::abs(d_->backupFailedAt.secsTo(now)) < secondsBetweenTries;
    if (justFailed) return std::nullopt;
    const QString chosen = setting(QString{settingBackupFolder}).value_or(QString{});
    for (const QString& folder : {backupFolderOf(d_->opened.realPath, chosen), backupFolderOf(d_->opened.realPath)}) {
        const auto there = backupsIn(folder);
        const bool madeToday = std::ranges::any_of(there, [&](const Backup& backup) { return backup.kind == BackupKind::day && backup.made.date() == now.date(); });
        if (!madeToday) continue;
        d_->backedUpOn = now.date();
        return std::nullopt;
    }
    const auto made = makeAndLog(d_->connection(), d_->opened.realPath, chosen, BackupKind::day, now);
    if (made.path.isEmpty()) d_->backupFailedAt = now;
    else d_->backedUpOn = now.date();
    return made.trouble.isEmpty() ? std::nullopt : std::optional{made.trouble};
}

std::optional<QString> HouseholdFile::backUpBeforeImport(const QDateTime& now)
{
    if (readOnly()) return std::nullopt;
    const auto any = d_->connection().value(QStringLiteral("SELECT EXISTS (SELECT 1 FROM entries)"));
    if (const auto* value = std::get_if<QVariant>(&any); value && !value->toBool()) return std::nullopt;
    const auto made = makeAndLog(d_->connection(), d_->opened.realPath, setting(QString{settingBackupFolder}).value_or(QString{}), BackupKind::beforeImport, now);
    return made.trouble.isEmpty() ? std::nullopt : std::optional{made.trouble};
}

QString HouseholdFile::toldWhenOpened() const
{
    const QString told = std::exchange(d_->opened.told, QString{});
    return told.isEmpty() ? std::exchange(d_->toldOfLog, QString{}) : told;
}

std::optional<QString> HouseholdFile::saveCopy(const QString& target, const CopyControl& control) const
{
    d_->standOnLog(); // where that fails, the copy fails too and says why
    const Connection& connection = d_->connection();
    if (readOnly()) connection.run(QStringLiteral("PRAGMA query_only = OFF")); // which stands in the way of writing into the copy too
    const log::Since since;
    auto why = copyInto(connection, target, control);
    log::note(why ? log::What::copyFailed : log::What::copied, {{"ms", since.milliseconds()}});
    if (readOnly()) connection.run(QStringLiteral("PRAGMA query_only = ON"));
    return why;
}

bool HouseholdFile::mayBeCopiedBeside() const
{
    if (readOnly() || movedAway() || d_->connection().logTakenAway()) return false;
    // With a rollback journal whoever reads keeps whoever writes from committing.
    const auto mode = d_->connection().value(QStringLiteral("PRAGMA journal_mode"));
    const auto* value = std::get_if<QVariant>(&mode);
    return value && value->toString() == QStringLiteral("wal");
}

std::optional<QString> HouseholdFile::saveCopyBeside(const QString& path, const QString& target, const CopyControl& control)
{
    const log::Since since;
    auto why = copyOf(path, target, control);
    log::note(why ? log::What::copyFailed : log::What::copied, {{"ms", since.milliseconds()}});
    return why;
}

}
