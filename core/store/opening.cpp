#include "core/store/opening.h"

#include "core/store/backup.h"
#include "core/store/failures.h"
#include "core/store/schema.h"
#include "core/store/schema_check.h"
#include "core/store/setting_names.h"
#include "core/store/text.h"
#include "core/store/transaction.h"

#include <QFile>
#include <QFileInfo>

#include <fcntl.h>
#include <sqlite3.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>

namespace tierloam::store {

namespace {

using Mode = HouseholdFile::Mode;
using Check = HouseholdFile::Check;

QByteArray encoded(const QString& path) { return QFile::encodeName(path); }
QString folderOf(const QString& path) { return QFileInfo{path}.absolutePath(); }
bool mayWrite(const QString& path) { return ::faccessat(AT_FDCWD, encoded(path).constData(), W_OK, AT_EACCESS) == 0; }
bool holdsBytes(const QString& path) { return QFileInfo{path}.size() > 0; }

/// A log without its file is all that is left of a household that was moved or removed: opening a new one over it would lose it.
std::optional<OpenFailure> orphanedLog(const QString& path, std::initializer_list<QString> suffixes)
{
    for (const QString& suffix : suffixes) {
        if (!holdsBytes(path + suffix)) continue;
        return OpenFailure{OpenProblem::other, StoreText::tr("%1 is not there, but %2 beside it holds the last writes of a household that was. Nothing was "
                                                             "made; put the household back beside it, or move it away.").arg(path, path + suffix)};
    }
    return std::nullopt;
}

OpenProblem problemOfErrno()
{
    switch (errno) {
    case ENOENT:
    case ENOTDIR: return OpenProblem::absent;
    case EACCES:
    case EPERM:
    case EROFS: return OpenProblem::noPermission;
    case ENOSPC:
    case EDQUOT: return OpenProblem::diskFull;
    default: return OpenProblem::other;
    }
}

/// SQLite takes a file of one byte for an empty one and would build over it. No household is this small, so none is open here and
/// the file may be read (and closed) directly.
OpenProblem problemOfTinyFile(const QString& path)
{
    QFile file{path};
    if (!file.open(QIODevice::ReadOnly)) return OpenProblem::noPermission;
    return file.read(sqliteMagic.size()) == QByteArray{sqliteMagic.data(), sqliteMagic.size()} ? OpenProblem::damaged : OpenProblem::notAHousehold;
}

/// What lies at the path, seen from outside.
std::variant<Origin, OpenFailure> lookAt(const QString& path, Mode mode)
{
    struct stat found{};
    if (::stat(encoded(path).constData(), &found) == 0) {
        if (!S_ISREG(found.st_mode)) return openFailure(OpenProblem::notAHousehold, path);
        if (::faccessat(AT_FDCWD, encoded(path).constData(), R_OK, AT_EACCESS) != 0) return openFailure(OpenProblem::noPermission, path);
        if (found.st_size > 0 && found.st_size < smallestSqliteFile) return openFailure(problemOfTinyFile(path), path);
        return found.st_size > 0 ? Origin::wasThere : Origin::wasEmpty;
    }
    const OpenProblem problem = problemOfErrno();
    if (problem != OpenProblem::absent || mode != Mode::createIfAbsent) return openFailure(problem, path);
    if (const auto orphan = orphanedLog(path, {QStringLiteral("-wal"), QStringLiteral("-journal")})) return *orphan;
    const int made = ::open(encoded(path).constData(), O_CREAT | O_EXCL | O_RDWR | O_CLOEXEC, 0666);
    if (made < 0) {
        if (errno == EEXIST && QFileInfo{path}.isSymLink() && !QFileInfo::exists(path)) return openFailure(OpenProblem::absent, path); // leads nowhere
        if (errno == EEXIST) return Origin::wasThere; // another program was faster
        return openFailure(problemOfErrno(), path);
    }
    ::close(made);
    return Origin::madeNow;
}

/// What the file says of itself.
struct Marks {
    int application = 0;
    int schema = 0;
    int objects = 0;
    bool blank() const { return application == 0 && schema == 0 && objects == 0; }
};

std::variant<Marks, QSqlError> marksOf(const Connection& connection)
{
    Marks marks;
    for (const auto& [sql, into] : {std::pair{QStringLiteral("SELECT count(*) FROM sqlite_schema"), &marks.objects},
                                    std::pair{QStringLiteral("PRAGMA application_id"), &marks.application},
                                    std::pair{QStringLiteral("PRAGMA user_version"), &marks.schema}}) {
        const auto answer = connection.value(sql);
        if (const auto* error = std::get_if<QSqlError>(&answer)) return *error;
        *into = std::get<QVariant>(answer).toInt();
    }
    return marks;
}

/// All marks as they were at one moment: another program may just be setting the file up, and half of its marks would make it a stranger's.
std::variant<Marks, QSqlError> marksAtOnce(const Connection& connection)
{
    if (auto error = connection.run(QStringLiteral("BEGIN"))) return *error;
    auto marks = marksOf(connection);
    if (auto error = connection.run(QStringLiteral("COMMIT")); error && std::holds_alternative<Marks>(marks)) return *error;
    return marks;
}

std::optional<QSqlError> runStep(const Connection& connection, int from)
{
    for (const QString& sql : schemaSteps()[static_cast<std::size_t>(from)])
        if (auto error = connection.run(sql)) return error;
    if (auto error = connection.run(QStringLiteral("PRAGMA application_id = %1").arg(applicationId))) return error;
    return connection.run(QStringLiteral("PRAGMA user_version = %1").arg(from + 1));
}

/// A step of the schema is not done without a backup: nothing else undoes it. Fills `told`.
std::optional<OpenFailure> backUpBeforeSteps(const Connection& connection, const QString& path, QString& told)
{
    const auto chosen = connection.value(QStringLiteral("SELECT value FROM settings WHERE name = '%1'").arg(settingBackupFolder));
    const auto* folder = std::get_if<QVariant>(&chosen);
    const auto made = makeBackup(connection, path, folder ? folder->toString() : QString{}, BackupKind::beforeStep, QDateTime::currentDateTime());
    told = made.trouble;
    if (!made.path.isEmpty()) return std::nullopt;
    return OpenFailure{OpenProblem::noBackup, StoreText::tr("%1 was written by an older release and has to be brought up to date, but the backup that is made before could not "
                                                            "be. It was left as it is and can be read. %2").arg(path, made.trouble)};
}

/// Brings a household file up to date, each step a transaction; a blank one in a single transaction, so that it is either blank or whole.
std::optional<OpenFailure> runSteps(const Connection& connection, const QString& path)
{
    for (;;) {
        const Transaction transaction{connection};
        if (const auto error = transaction.begin()) return openFailure(*error, path);
        // Read inside the transaction: another program may have done the step meanwhile.
        const auto found = marksOf(connection);
        if (const auto* error = std::get_if<QSqlError>(&found)) return openFailure(*error, path);
        const Marks marks = std::get<Marks>(found);
        if (!marks.blank() && marks.application != applicationId) return openFailure(OpenProblem::notAHousehold, path);
        if (marks.schema >= newestSchema()) return std::nullopt;
        const int last = marks.blank() ? newestSchema() : marks.schema + 1;
        for (int step = marks.schema; step < last; ++step)
            if (const auto error = runStep(connection, step)) return openFailure(*error, path);
        if (const auto error = transaction.commit()) return openFailure(*error, path);
    }
}

/// SQLite reads what is missing of the last page as zeros, and its check may find nothing wrong with them. A log may hold that page.
bool cutWithinAPage(const Connection& connection, const QString& path)
{
    if (holdsBytes(path + QStringLiteral("-wal")) || holdsBytes(path + QStringLiteral("-journal"))) return false;
    const auto page = connection.value(QStringLiteral("PRAGMA page_size"));
    const auto* size = std::get_if<QVariant>(&page);
    return size && size->toLongLong() > 0 && connection.fileSize() % size->toLongLong() != 0;
}

std::optional<OpenFailure> checkWhole(const Connection& connection, const QString& path)
{
    if (cutWithinAPage(connection, path)) return openFailure(OpenProblem::damaged, path);
    const auto answer = connection.value(QStringLiteral("PRAGMA quick_check(1)"));
    if (const auto* error = std::get_if<QSqlError>(&answer)) return openFailure(*error, path);
    if (std::get<QVariant>(answer).toString() != QStringLiteral("ok")) return openFailure(OpenProblem::damaged, path);
    return std::nullopt;
}

/// The same in a thread and on a connection of its own, which only reads.
std::future<std::optional<OpenFailure>> checkWholeBeside(const QString& path, std::chrono::milliseconds busyTimeout)
{
    return std::async(std::launch::async, [path, busyTimeout]() -> std::optional<OpenFailure> {
        const auto own = Connection::open(path, Connection::Access::queryOnly, busyTimeout);
        if (const auto* error = std::get_if<QSqlError>(&own)) return openFailure(*error, path);
        return checkWhole(*std::get<std::unique_ptr<Connection>>(own), path);
    });
}

bool keepsALog(const Connection& connection)
{
    const auto mode = connection.value(QStringLiteral("PRAGMA journal_mode"));
    const auto* answer = std::get_if<QVariant>(&mode);
    return answer && answer->toString() == QStringLiteral("wal");
}

/// A place where the log that the file keeps cannot be used, or where it does not look as if it could.
bool indexOfLogFails(const QSqlError& error)
{
    const int code = resultCode(error);
    switch (code) {
    case SQLITE_IOERR_SHMOPEN:
    case SQLITE_IOERR_SHMSIZE:
    case SQLITE_IOERR_SHMLOCK:
    case SQLITE_IOERR_SHMMAP: return true;
    default: return (code & 0xff) == SQLITE_CANTOPEN || (code & 0xff) == SQLITE_PROTOCOL;
    }
}

/// SQLite gives the log and its index the permissions of the file. Whoever read a file that could not be written leaves them behind so, and they
/// would keep everybody from writing once it can be: they take on those of the file, where they are one's own.
void loosenLog(const QString& path)
{
    struct stat found{};
    if (!mayWrite(path) || ::stat(encoded(path).constData(), &found) != 0) return;
    for (const QString& suffix : {QStringLiteral("-wal"), QStringLiteral("-shm")})
        if (QFileInfo::exists(path + suffix) && !mayWrite(path + suffix)) ::chmod(encoded(path + suffix).constData(), found.st_mode & 0777);
}

/// The connection that the mode and the permissions allow, with a first read done on it.
std::variant<std::unique_ptr<Connection>, OpenFailure> connect(const QString& path, Mode mode, std::chrono::milliseconds busyTimeout)
{
    using Access = Connection::Access;
    const bool writable = mayWrite(path) && mayWrite(folderOf(path));
    std::vector<Access> ways{Access::readWrite};
    if (mode == Mode::readOnly) ways = {writable ? Access::queryOnly : Access::readOnly};
    // Without any lock only where no log is left to be read: nobody can be writing, or nobody is.
    if (mode == Mode::readOnly && !holdsBytes(path + QStringLiteral("-wal")) && !holdsBytes(path + QStringLiteral("-journal")))
        ways.push_back(Access::immutable);

    if (writable) loosenLog(path);
    OpenFailure failure;
    for (const Access way : ways) {
        auto opened = Connection::open(path, way, busyTimeout);
        if (const auto* error = std::get_if<QSqlError>(&opened)) {
            failure = openFailure(*error, path);
            continue;
        }
        auto& connection = std::get<std::unique_ptr<Connection>>(opened);
        if (mode != Mode::readOnly && !connection->mayWrite()) return openFailure(OpenProblem::noPermission, path);
        const bool forWriting = way == Access::readWrite || way == Access::queryOnly;
        auto first = connection->value(QStringLiteral("SELECT count(*) FROM sqlite_schema"));
        const auto* error = std::get_if<QSqlError>(&first);
        if (error && forWriting && indexOfLogFails(*error) && !leaveTheLog(*connection, way == Access::queryOnly)) error = nullptr;
        if (!error) return std::move(connection);
        failure = openFailure(*error, path);
        if (failure.problem == OpenProblem::damaged && !connection->beginsLikeSqlite()) return openFailure(OpenProblem::notAHousehold, path);
        if (failure.problem != OpenProblem::noPermission && failure.problem != OpenProblem::diskFull) return failure;
    }
    return failure;
}

std::variant<Opened, OpenFailure> openWhatIsThere(const QString& path, Mode mode, Origin origin, std::chrono::milliseconds busyTimeout, Check check)
{
    if (origin == Origin::wasEmpty) {
        if (mode != Mode::createIfAbsent) return openFailure(OpenProblem::notAHousehold, path);
        // A rollback journal is that of a program which is just setting the file up, or died of it: SQLite deals with both.
        const auto orphan = orphanedLog(path, {QStringLiteral("-wal")});
        if (orphan && !holdsBytes(path)) return *orphan;
    }
    auto connected = connect(path, mode, busyTimeout);
    if (auto* failure = std::get_if<OpenFailure>(&connected)) return std::move(*failure);
    Opened opened;
    opened.connection = std::move(std::get<std::unique_ptr<Connection>>(connected));
    opened.origin = origin;
    opened.realPath = path;
    opened.readOnly = mode == Mode::readOnly;
    const Connection& connection = *opened.connection;

    const auto found = marksAtOnce(connection);
    if (const auto* error = std::get_if<QSqlError>(&found)) return openFailure(*error, path);
    const Marks marks = std::get<Marks>(found);
    const bool toSetUp = marks.blank() && mode == Mode::createIfAbsent;
    if (!toSetUp) {
        if (marks.application != applicationId) return openFailure(OpenProblem::notAHousehold, path);
        if (marks.schema < 1) return openFailure(OpenProblem::damaged, path);
        opened.newer = marks.schema > newestSchema();
        opened.schema = marks.schema;
        // Before the check of the whole file, which computes what its tables say: only tables of this program are let through.
        if (!opened.newer) {
            const auto ours = tablesAreOurs(connection, marks.schema);
            if (const auto* error = std::get_if<QSqlError>(&ours)) return openFailure(*error, path);
            if (!std::get<bool>(ours)) return openFailure(OpenProblem::damaged, path);
        }
        // Beside only where nothing is done to the file until it has been found whole: no step, no change of its journal.
        if (check == Check::beside && !opened.readOnly && marks.schema == newestSchema() && keepsALog(connection) && logIsSafeOn(connection.fileSystemType())) opened.whole = checkWholeBeside(path, busyTimeout);
        else if (const auto failure = checkWhole(connection, path)) return *failure;
        if (opened.newer && !opened.readOnly) return openFailure(OpenProblem::newer, path);
    }
    if (opened.readOnly) return opened;
    opened.schema = newestSchema();

    // Until makeDurable() chooses: a journal whose removal is lost in a power cut would undo what has been written since.
    if (const auto error = connection.run(QStringLiteral("PRAGMA synchronous = EXTRA"))) return openFailure(*error, path);
    if (toSetUp) {
        // Before the write-ahead log is switched on, so that a new file holds all of its schema itself.
        if (origin == Origin::wasThere) opened.origin = Origin::wasEmpty; // a blank database, as a crash while it was made leaves it
        if (const auto failure = runSteps(connection, path)) return *failure;
    }
    std::optional<OpenFailure> failure;
    const bool older = !toSetUp && marks.schema < newestSchema();
    if (older) failure = backUpBeforeSteps(connection, path, opened.told);
    if (failure) return *failure;
    if (const auto error = makeDurable(connection, logIsSafeOn(connection.fileSystemType()))) failure = openFailure(*error, path);
    else if (older) failure = runSteps(connection, path);
    else if (!toSetUp) return opened;
    else if (!syncFolderOf(path)) failure = openFailure(OpenProblem::other, path);
    if (!failure) return opened;
    if (toSetUp) discardUnused(std::move(opened), path);
    return *failure;
}

}

bool syncFolderOf(const QString& absolutePath)
{
    const int folder = ::open(encoded(folderOf(absolutePath)).constData(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
    if (folder < 0) return false;
    const bool synced = ::fsync(folder) == 0 || errno == EINVAL; // EINVAL: a file system that syncs no folders
    ::close(folder);
    return synced;
}

std::variant<Opened, OpenFailure> openHousehold(const QString& absolutePath, HouseholdFile::Mode mode, std::chrono::milliseconds busyTimeout, HouseholdFile::Check check)
{
    const auto seen = lookAt(absolutePath, mode);
    if (const auto* failure = std::get_if<OpenFailure>(&seen)) return *failure;
    const Origin origin = std::get<Origin>(seen);
    auto opened = openWhatIsThere(absolutePath, mode, origin, busyTimeout, check);
    const auto* failure = std::get_if<OpenFailure>(&opened);
    // In use: another program is setting up the very file that this one made.
    if (failure && failure->problem != OpenProblem::inUse && origin == Origin::madeNow && QFileInfo{absolutePath}.size() == 0)
        QFile::remove(absolutePath);
    return opened;
}

void discardUnused(Opened opened, const QString& absolutePath)
{
    if (opened.origin == Origin::wasThere || !opened.connection) return;
    if (opened.connection->movedAway()) return;
    // Another program may have it open, or have written into it: then it stays. Leaving the log needs the file for oneself and removes the log.
    const auto mode = opened.connection->value(QStringLiteral("PRAGMA journal_mode = DELETE"));
    const auto* answer = std::get_if<QVariant>(&mode);
    if (!answer || answer->toString() != QStringLiteral("delete")) return;
    opened.connection.reset();

    // Looked at afresh: a connection that leaves the log goes on seeing its own old pages (SQLite 3.40).
    auto again = Connection::open(absolutePath, Connection::Access::readWrite, std::chrono::seconds{1});
    if (!std::holds_alternative<std::unique_ptr<Connection>>(again)) return;
    const Connection& connection = *std::get<std::unique_ptr<Connection>>(again);
    const Transaction transaction{connection};
    if (transaction.begin()) return;
    const auto rows = connection.value(QStringLiteral("SELECT (SELECT count(*) FROM entries) + (SELECT count(*) FROM settings)"));
    const auto* count = std::get_if<QVariant>(&rows);
    if (!count || count->toInt() != 0) return;
    // Removed while the lock is held: a program that waits for it finds out before it commits that the file is gone.
    QFile::remove(absolutePath);
    if (opened.origin == Origin::wasEmpty) QFile{absolutePath}.open(QIODevice::NewOnly | QIODevice::WriteOnly);
}

}
