#pragma once

#include "core/store/connection.h"
#include "core/store/household_file.h"

#include <QDateTime>
#include <QString>

#include <optional>
#include <vector>

/// Copies of a household file, made by `VACUUM INTO`: one file each, whole, compact, readable by itself.
namespace tierloam::store {

/// Where the backups of a household lie: a folder of its own beside the file, or in the chosen folder. There its name also carries
/// eight digits of the file's path, so that two households of one name never thin out each other's backups.
QString backupFolderOf(const QString& householdPath, const QString& chosenFolder = {});

/// The backups in a folder, newest first. Whatever else lies there is left out.
std::vector<Backup> backupsIn(const QString& folder);

/// What the rule does not keep: of the day's backups the newest of each of the last 7 days, 8 weeks (from Monday) and 12 months that
/// have one; of those made before an import, and before a schema step, the newest 10 each. `backups` newest first.
std::vector<Backup> surplusOf(const std::vector<Backup>& backups);

/// A new file at `target`, durable, checked and under its name only when it is whole. Why not, in words; then nothing is left behind.
std::optional<QString> copyInto(const Connection& connection, const QString& target, const CopyControl& control = {});
/// The same of the file at that path, which other connections may have open, through a connection of its own.
std::optional<QString> copyOf(const QString& path, const QString& target, const CopyControl& control = {});

/// Makes a backup in the chosen folder, else in that beside the file; a step of the schema, which is not done without one, also takes
/// a place right beside the file. Then thins out. `path` is empty when none could be made; `trouble` says what did not go as wished.
struct BackupMade {
    QString path;
    QString trouble;
};
BackupMade makeBackup(const Connection& connection, const QString& householdPath, const QString& chosenFolder, BackupKind kind, const QDateTime& now);

}
