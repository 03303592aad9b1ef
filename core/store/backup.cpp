#include "core/store/backup.h"

#include "core/store/durable_file.h"
#include "core/store/failures.h"
#include "core/store/opening.h"
#include "core/store/text.h"

#include <QCryptographicHash>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QRegularExpression>

#include <sqlite3.h>

#include <algorithm>
#include <array>
#include <set>

namespace tierloam::store {

namespace {

constexpr std::array kindWords{QLatin1StringView{"day"}, QLatin1StringView{"import"}, QLatin1StringView{"step"}};
constexpr int daysKept = 7, weeksKept = 8, monthsKept = 12, othersKept = 10;
const QString suffix = QStringLiteral(".tierloam");
const QString timeFormat = QStringLiteral("yyyy-MM-dd_HHmmss");

/// The name of the file without its usual suffix; any other suffix stays, so that mill.db and mill.tierloam have folders of their own.
QString stemOf(const QString& path)
{
    const QString name = QFileInfo{path}.fileName();
    return name.endsWith(suffix) && name != suffix ? name.chopped(suffix.size()) : name;
}

QString nameFor(const QString& householdPath, BackupKind kind, const QDateTime& now)
{
    return stemOf(householdPath) + QLatin1Char('_') + now.toString(timeFormat) + QLatin1Char('_') + kindWords[static_cast<std::size_t>(kind)] + suffix;
}

/// Why a copy did not come about.
QString copyTrouble(const QSqlError& error, const QString& target)
{
    switch (resultCode(error) & 0xff) {
    case SQLITE_FULL: return StoreText::tr("%1 could not be written: the disk is full. Nothing of it was kept.").arg(target);
    case SQLITE_CORRUPT:
    case SQLITE_NOTADB: return StoreText::tr("%1 could not be written: the household file is damaged. Nothing of it was kept.").arg(target);
    case SQLITE_CANTOPEN:
    case SQLITE_PERM:
    case SQLITE_READONLY: return StoreText::tr("%1 could not be written: there is no permission for its folder, or no such folder.").arg(target);
    default: return StoreText::tr("%1 could not be written. Nothing of it was kept. The reason given: %2.").arg(target, error.text().trimmed());
    }
}

std::variant<qint64, QSqlError> countEntries(const Connection& connection)
{
    const auto count = connection.value(QStringLiteral("SELECT count(*) FROM entries"));
    if (const auto* error = std::get_if<QSqlError>(&count)) return *error;
    return std::get<QVariant>(count).toLongLong();
}

/// Whether the copy is a whole SQLite file with as many entries as there were at least; the words of what is wrong with it.
std::optional<QString> checkCopy(const QString& part, const QString& target, qint64 atLeast)
{
    auto opened = Connection::open(part, Connection::Access::readOnly, std::chrono::seconds{1});
    if (const auto* error = std::get_if<QSqlError>(&opened)) return copyTrouble(*error, target);
    const Connection& copy = *std::get<std::unique_ptr<Connection>>(opened);
    const auto whole = copy.value(QStringLiteral("PRAGMA quick_check(1)"));
    if (const auto* error = std::get_if<QSqlError>(&whole)) return copyTrouble(*error, target);
    const auto count = countEntries(copy);
    if (const auto* error = std::get_if<QSqlError>(&count)) return copyTrouble(*error, target);
    if (std::get<QVariant>(whole).toString() == QStringLiteral("ok") && std::get<qint64>(count) >= atLeast) return std::nullopt;
    return StoreText::tr("%1 could not be written: what the disk gave back is not what was written. Nothing of it was kept.").arg(target);
}

/// Parts that a crash left behind.
void removeStaleParts(const QString& folder)
{
    const QDir dir{folder};
    const auto hourAgo = QDateTime::currentDateTime().addSecs(-3600);
    for (const QFileInfo& part : dir.entryInfoList({QStringLiteral(".*.part"), QStringLiteral(".*.part-journal")}, QDir::Files | QDir::Hidden))
        if (part.lastModified() < hourAgo) QFile::remove(part.filePath());
}

void thinOut(const QString& folder, const QString& justMade)
{
    // A backup that cannot be removed costs room and nothing else; the next one tries again.
    for (const Backup& backup : surplusOf(backupsIn(folder)))
        if (backup.path != justMade) QFile::remove(backup.path);
}

}

QString backupFolderOf(const QString& householdPath, const QString& chosenFolder)
{
    const QFileInfo file{householdPath};
    const QString name = stemOf(householdPath) + QStringLiteral(" backups");
    if (chosenFolder.isEmpty()) return file.absolutePath() + QLatin1Char('/') + name;
    const auto digest = QCryptographicHash::hash(file.absoluteFilePath().toUtf8(), QCryptographicHash::Sha256).toHex();
    return QDir{chosenFolder}.absolutePath() + QLatin1Char('/') + name + QLatin1Char(' ') + QString::fromLatin1(digest.left(8));
}

std::vector<Backup> backupsIn(const QString& folder)
{
    static const QRegularExpression form{QStringLiteral("_(\\d{4}-\\d{2}-\\d{2}_\\d{6})_(day|import|step)\\.tierloam$")};
    std::vector<Backup> found;
    for (const QFileInfo& file : QDir{folder}.entryInfoList(QDir::Files)) {
        const auto match = form.match(file.fileName());
        if (!match.hasMatch()) continue;
        // As if of UTC: the name says what a clock showed, and a clock may show what this place or this year has not (an hour that spring skips).
        // Only the order and the day count.
        const QString showed = match.captured(1);
        const QDate day = QDate::fromString(showed.left(10), QStringLiteral("yyyy-MM-dd"));
        const QTime time = QTime::fromString(showed.mid(11), QStringLiteral("HHmmss"));
        if (!day.isValid() || !time.isValid()) continue; // a QDateTime takes midnight for a time that is none
        const QDateTime made{day, time, Qt::UTC};
        const auto kind = std::ranges::find(kindWords, match.captured(2));
        if (kind != kindWords.end()) found.push_back({file.absoluteFilePath(), made, static_cast<BackupKind>(kind - kindWords.begin())});
    }
    std::ranges::sort(found, [](const Backup& a, const Backup& b) { return std::tie(a.made, a.path) > std::tie(b.made, b.path); });
    return found;
}

std::vector<Backup> surplusOf(const std::vector<Backup>& backups)
{
    std::set<QDate> days, weeks, months;
    std::array<int, kindWords.size()> others{};
    // The newest of a span is its first here; a span is taken until there are enough of its sort.
    const auto takes = [](std::set<QDate>& taken, QDate span, int most) { return static_cast<int>(taken.size()) < most && taken.insert(span).second; };
    std::vector<Backup> surplus;
    for (const Backup& backup : backups) {
        if (backup.kind != BackupKind::day) {
            if (++others[static_cast<std::size_t>(backup.kind)] > othersKept) surplus.push_back(backup);
            continue;
        }
        const QDate day = backup.made.date();
        const bool forDay = takes(days, day, daysKept);
        const bool forWeek = takes(weeks, day.addDays(1 - day.dayOfWeek()), weeksKept);
        const bool forMonth = takes(months, QDate{day.year(), day.month(), 1}, monthsKept);
        if (!forDay && !forWeek && !forMonth) surplus.push_back(backup);
    }
    return surplus;
}

std::optional<QString> copyInto(const Connection& connection, const QString& target, const CopyControl& control)
{
    const QFileInfo file{target};
    if (file.exists() || file.isSymLink()) return StoreText::tr("%1 is there already. It was left as it is.").arg(target);
    const auto entries = countEntries(connection);
    if (const auto* error = std::get_if<QSqlError>(&entries)) return copyTrouble(*error, target);

    // Under another name until it is whole and on the disk: a file with the name of a backup is a backup.
    const QString part = file.absolutePath() + QStringLiteral("/.") + file.fileName() + QLatin1Char('.') + uniquePart() + QStringLiteral(".part");
    const auto giveUp = [&](const QString& why) {
        QFile::remove(part);
        QFile::remove(part + QStringLiteral("-journal")); // SQLite leaves it when the disk gave out
        return std::optional{why};
    };
    QString quoted = part;
    quoted.replace(QLatin1Char('\''), QStringLiteral("''"));
    const auto calledOff = [&] { return giveUp(StoreText::tr("Called off. Nothing of %1 was kept.").arg(target)); };
    {
        const double whole = static_cast<double>(std::max<qint64>(1, connection.fileSize()));
        const Connection::Watch watch{connection, [&] {
            if (control.progress) control.progress(std::min(1.0, static_cast<double>(QFileInfo{part}.size()) / whole));
            return !control.stop.stop_requested();
        }};
        if (const auto error = connection.run(QStringLiteral("VACUUM INTO '%1'").arg(quoted))) return control.stop.stop_requested() ? calledOff() : giveUp(copyTrouble(*error, target));
    }
    if (control.stop.stop_requested()) return calledOff();
    if (const auto why = checkCopy(part, target, std::get<qint64>(entries))) return giveUp(*why);
    if (const int error = syncFile(part)) return giveUp(StoreText::tr("%1 could not be written: %2. Nothing of it was kept.").arg(target, errnoText(error)));
    if (const int error = renameToNew(part, file.absoluteFilePath()))
        return giveUp(StoreText::tr("%1 could not be written: %2. Nothing of it was kept.").arg(target, errnoText(error)));
    if (!syncFolderOf(file.absoluteFilePath())) {
        QFile::remove(file.absoluteFilePath());
        return StoreText::tr("%1 could not be written: its folder could not be put on the disk. Nothing of it was kept.").arg(target);
    }
    return std::nullopt;
}

std::optional<QString> copyOf(const QString& path, const QString& target, const CopyControl& control)
{
    auto opened = Connection::open(path, Connection::Access::readWrite, std::chrono::seconds{5});
    if (const auto* error = std::get_if<QSqlError>(&opened)) return copyTrouble(*error, target);
    return copyInto(*std::get<std::unique_ptr<Connection>>(opened), target, control);
}

BackupMade makeBackup(const Connection& connection, const QString& householdPath, const QString& chosenFolder, BackupKind kind, const QDateTime& now)
{
    std::vector<QString> folders;
    if (!chosenFolder.isEmpty()) folders.push_back(backupFolderOf(householdPath, chosenFolder));
    folders.push_back(backupFolderOf(householdPath));
    if (kind == BackupKind::beforeStep) folders.push_back(QFileInfo{householdPath}.absolutePath());

    BackupMade made;
    const QString name = nameFor(householdPath, kind, now);
    QStringList troubles;
    for (const QString& folder : folders) {
        const QString target = folder + QLatin1Char('/') + name;
        // The chosen folder itself is not made: a stick that is not plugged in must not become a folder on another disk.
        const bool chosen = !chosenFolder.isEmpty() && folder == folders.front();
        if (chosen && !QFileInfo{chosenFolder}.isDir()) {
            troubles << StoreText::tr("The folder chosen for backups is not there: %1.").arg(chosenFolder);
            continue;
        }
        if (!QDir{folder}.exists() && QDir{}.mkdir(folder)) syncFolderOf(folder);
        removeStaleParts(folder);
        // Made in this very second by another program at the same file: that is one.
        const auto why = QFileInfo::exists(target) ? std::nullopt : copyInto(connection, target);
        if (why) {
            troubles << *why;
            continue;
        }
        made.path = target;
        thinOut(folder, target);
        break;
    }
    if (troubles.isEmpty()) return made;
    made.trouble = made.path.isEmpty()
        ? StoreText::tr("No backup could be made; what you record is kept all the same. %1").arg(troubles.join(QLatin1Char(' ')))
        : StoreText::tr("The backup was made elsewhere, in %1. %2").arg(QFileInfo{made.path}.absolutePath(), troubles.join(QLatin1Char(' ')));
    return made;
}

}
