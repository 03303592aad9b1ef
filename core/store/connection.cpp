#include "core/store/connection.h"

#include "core/store/held_locks.h"

#include <QFile>
#include <QSqlDriver>
#include <QSqlQuery>
#include <QUrl>

#include <sqlite3.h>
#include <sys/vfs.h>

#include <algorithm>
#include <array>
#include <atomic>
#include <cstring>

namespace tierloam::store {

namespace {

QString freshName()
{
    static std::atomic<int> made{0};
    return QStringLiteral("tierloam-household-%1").arg(++made);
}

/// A file: URI, so that no mark in a name is read as an option and no file is ever made by opening it.
QString uriOf(const QString& path, Connection::Access access)
{
    QString uri = QString::fromLatin1(QUrl::fromLocalFile(path).toEncoded(QUrl::FullyEncoded));
    switch (access) {
    case Connection::Access::readWrite:
    case Connection::Access::queryOnly: return uri + QStringLiteral("?mode=rw");
    case Connection::Access::readOnly: return uri + QStringLiteral("?mode=ro");
    case Connection::Access::immutable: break;
    }
    return uri + QStringLiteral("?mode=ro&immutable=1");
}

QSqlError trouble(const QString& text) { return QSqlError{text, {}, QSqlError::ConnectionError}; }

}

std::variant<std::unique_ptr<Connection>, QSqlError> Connection::open(const QString& path, Access access, std::chrono::milliseconds busyTimeout)
{
    holdLocks();
    std::unique_ptr<Connection> connection{new Connection{freshName()}};
    connection->path_ = path;
    connection->access_ = access;
    connection->busyTimeout_ = busyTimeout;
    if (const auto error = connection->connect()) return *error;
    return connection;
}

std::optional<QSqlError> Connection::connect()
{
    QSqlDatabase database = QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), name_);
    const bool reading = access_ == Access::readOnly || access_ == Access::immutable;
    database.setConnectOptions(QStringLiteral("QSQLITE_OPEN_URI;QSQLITE_BUSY_TIMEOUT=%1").arg(busyTimeout_.count())
                               + (reading ? QStringLiteral(";QSQLITE_OPEN_READONLY") : QString{}));
    database.setDatabaseName(uriOf(path_, access_));
    if (!database.open()) return database.lastError();
    return secure();
}

void Connection::disconnect()
{
    // SQLite would fold the log that it still has open into a file that has gone on without it, and remove the log that lies there now.
    if (logTakenAway()) sqlite3_db_config(handle_, SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, 1, nullptr);
    handle_ = nullptr;
    {
        QSqlDatabase database = QSqlDatabase::database(name_, false);
        database.close();
    }
    QSqlDatabase::removeDatabase(name_);
}

Connection::~Connection() { disconnect(); }

std::optional<QSqlError> Connection::renew()
{
    disconnect();
    auto error = connect();
    if (error) handle_ = nullptr;
    return error;
}

namespace {

/// In place of SQLite's own: a log that was taken away is not folded into the file.
int foldLogThatStands(void*, sqlite3* handle, const char* name, int pages)
{
    constexpr int pagesBeforeFolding = 1000; // as SQLite does
    if (pages < pagesBeforeFolding || !logStands(sqlite3_db_filename(handle, name))) return SQLITE_OK;
    sqlite3_wal_checkpoint_v2(handle, name, SQLITE_CHECKPOINT_PASSIVE, nullptr, nullptr); // where it fails the log grows, and the next commit tries again
    return SQLITE_OK;
}

}

std::optional<QSqlError> Connection::secure()
{
    const QVariant driver = database().driver()->handle();
    if (driver.isValid() && std::strcmp(driver.typeName(), "sqlite3*") == 0) handle_ = *static_cast<sqlite3* const*>(driver.data());
    // The handle may only be used when the driver and this program run the same SQLite.
    const auto source = value(QStringLiteral("SELECT sqlite_source_id()"));
    if (const auto* error = std::get_if<QSqlError>(&source)) return *error;
    if (!handle_ || std::get<QVariant>(source).toString() != QString::fromLatin1(sqlite3_sourceid()))
        return trouble(QStringLiteral("The Qt driver brings another SQLite than the system's"));

    sqlite3_extended_result_codes(handle_, 1);
    sqlite3_busy_timeout(handle_, static_cast<int>(busyTimeout_.count()));
    sqlite3_wal_hook(handle_, foldLogThatStands, nullptr);
    struct Setting { int which; int on; };
    for (const auto [which, on] : {Setting{SQLITE_DBCONFIG_DEFENSIVE, 1}, Setting{SQLITE_DBCONFIG_TRUSTED_SCHEMA, 0},
                                   Setting{SQLITE_DBCONFIG_ENABLE_TRIGGER, 0}, Setting{SQLITE_DBCONFIG_ENABLE_VIEW, 0},
                                   Setting{SQLITE_DBCONFIG_ENABLE_FKEY, 1}, Setting{SQLITE_DBCONFIG_ENABLE_LOAD_EXTENSION, 0}}) {
        int now = -1;
        if (sqlite3_db_config(handle_, which, on, &now) != SQLITE_OK || now != on)
            return trouble(QStringLiteral("SQLite would not take a safety setting"));
    }
    // Nothing of ours comes near these; a file made to exhaust the machine does.
    sqlite3_limit(handle_, SQLITE_LIMIT_LENGTH, 64 << 20);
    sqlite3_limit(handle_, SQLITE_LIMIT_EXPR_DEPTH, 200);
    sqlite3_limit(handle_, SQLITE_LIMIT_COLUMN, 200);
    if (const auto error = run(QStringLiteral("PRAGMA cell_size_check = ON"))) return error;
    if (const auto error = run(QStringLiteral("PRAGMA temp_store = MEMORY"))) return error;
    if (access_ == Access::queryOnly) return run(QStringLiteral("PRAGMA query_only = ON"));
    return std::nullopt;
}

std::optional<QSqlError> Connection::run(const QString& sql) const
{
    QSqlQuery query{database()};
    if (!query.exec(sql)) return query.lastError();
    return std::nullopt;
}

std::variant<QVariant, QSqlError> Connection::value(const QString& sql) const
{
    QSqlQuery query{database()};
    query.setForwardOnly(true);
    if (!query.exec(sql)) return query.lastError();
    if (query.next()) return query.value(0);
    if (query.lastError().isValid()) return query.lastError();
    return QVariant{};
}

Connection::Watch::Watch(const Connection& connection, std::function<bool()> goOn) : connection_{connection}, goOn_{std::move(goOn)}
{
    constexpr int steps = 5000; // of SQLite's machine, a few milliseconds
    if (connection_.handle_) sqlite3_progress_handler(connection_.handle_, steps, [](void* self) { return static_cast<Watch*>(self)->goOn_() ? 0 : 1; }, this);
}

Connection::Watch::~Watch()
{
    if (connection_.handle_) sqlite3_progress_handler(connection_.handle_, 0, nullptr, nullptr);
}

bool Connection::mayWrite() const { return handle_ && sqlite3_db_readonly(handle_, "main") == 0; }

bool Connection::movedAway() const
{
    int moved = 0;
    return handle_ && sqlite3_file_control(handle_, "main", SQLITE_FCNTL_HAS_MOVED, &moved) == SQLITE_OK && moved != 0;
}

bool Connection::logTakenAway() const
{
    // A file that was moved is another matter: its log may have gone with it.
    return handle_ && !movedAway() && !logStands(sqlite3_db_filename(handle_, "main"));
}

bool Connection::beginsLikeSqlite() const
{
    if (!handle_) return false;
    // Read through SQLite's own handle: closing a second one would drop the locks that this process holds on the file.
    sqlite3_file* file = nullptr;
    if (sqlite3_file_control(handle_, "main", SQLITE_FCNTL_FILE_POINTER, &file) != SQLITE_OK || !file || !file->pMethods) return false;
    std::array<char, sqliteMagic.size()> bytes{};
    if (file->pMethods->xRead(file, bytes.data(), static_cast<int>(bytes.size()), 0) != SQLITE_OK) return false;
    return std::string_view{bytes.data(), bytes.size()} == sqliteMagic;
}

qint64 Connection::fileSize() const
{
    sqlite3_file* file = nullptr;
    sqlite3_int64 size = 0;
    if (!handle_ || sqlite3_file_control(handle_, "main", SQLITE_FCNTL_FILE_POINTER, &file) != SQLITE_OK || !file || !file->pMethods) return -1;
    return file->pMethods->xFileSize(file, &size) == SQLITE_OK ? size : -1;
}

bool Connection::insideTransaction() const { return handle_ && sqlite3_get_autocommit(handle_) == 0; }

long Connection::fileSystemType() const
{
    struct statfs found{};
    return ::statfs(QFile::encodeName(path_).constData(), &found) == 0 ? static_cast<long>(found.f_type) : 0;
}

bool logIsSafeOn(long fileSystemType)
{
    // Numbers of statfs(2): NFS, SMB, SMB2, CIFS, 9P, AFS, Coda, NCP, Ceph, FUSE (which may be any of them).
    constexpr std::array<long, 10> shares{0x6969, 0x517B, 0xFE534D42L, 0xFF534D42L, 0x01021997, 0x5346414F, 0x73757245, 0x564C, 0x00C36400, 0x65735546};
    return std::ranges::find(shares, fileSystemType & 0xFFFFFFFFL) == shares.end();
}

std::optional<QSqlError> leaveTheLog(const Connection& connection, bool queryOnly)
{
    if (const auto error = connection.run(QStringLiteral("PRAGMA locking_mode = EXCLUSIVE"))) return error;
    const auto read = connection.value(QStringLiteral("SELECT count(*) FROM sqlite_schema"));
    if (const auto* error = std::get_if<QSqlError>(&read)) return *error;
    if (queryOnly) return std::nullopt;
    if (const auto error = connection.run(QStringLiteral("PRAGMA synchronous = EXTRA"))) return error;
    const auto mode = connection.value(QStringLiteral("PRAGMA journal_mode = DELETE"));
    if (const auto* error = std::get_if<QSqlError>(&mode)) return *error;
    if (const auto error = connection.run(QStringLiteral("PRAGMA locking_mode = NORMAL"))) return error;
    const auto again = connection.value(QStringLiteral("SELECT count(*) FROM sqlite_schema")); // lets go of the lock
    if (const auto* error = std::get_if<QSqlError>(&again)) return *error;
    return std::nullopt;
}

std::optional<QSqlError> makeDurable(const Connection& connection, bool logWanted)
{
    const auto journalMode = [&](const QString& sql) {
        const auto answer = connection.value(sql);
        const auto* value = std::get_if<QVariant>(&answer);
        return value ? value->toString().toLower() : QString{};
    };
    const QString log = QStringLiteral("wal");
    QString mode = journalMode(QStringLiteral("PRAGMA journal_mode"));
    if (mode != log && logWanted) mode = journalMode(QStringLiteral("PRAGMA journal_mode = WAL"));
    if (mode != log || !logWanted) mode = journalMode(QStringLiteral("PRAGMA journal_mode = DELETE"));
    if (mode != log && mode != QStringLiteral("delete")) return trouble(QStringLiteral("No journal mode that keeps writes safe works here"));

    // With a rollback journal a commit is final once the journal's removal is on the disk: that takes EXTRA.
    const int wanted = mode == log ? 2 : 3;
    if (const auto error = connection.run(QStringLiteral("PRAGMA synchronous = %1").arg(wanted))) return error;
    const auto answer = connection.value(QStringLiteral("PRAGMA synchronous"));
    if (const auto* error = std::get_if<QSqlError>(&answer)) return *error;
    if (std::get<QVariant>(answer).toInt() != wanted) return trouble(QStringLiteral("SQLite would not sync every commit"));
    return std::nullopt;
}

}
