#pragma once

#include <QSqlDatabase>
#include <QSqlError>
#include <QString>
#include <QVariant>

#include <chrono>
#include <functional>
#include <memory>
#include <optional>
#include <string_view>
#include <variant>

struct sqlite3;

namespace tierloam::store {

/// The first bytes of every SQLite file, and how many bytes it has at least: one page.
inline constexpr std::string_view sqliteMagic{"SQLite format 3\0", 16};
inline constexpr int smallestSqliteFile = 512;

/// One SQLite connection through Qt Sql, set up defensively: nothing that a file holds can run (no triggers, no views, no trusted
/// schema, defensive mode), foreign keys on. Used by the thread that opened it; every query on it ends before it does.
class Connection {
public:
    enum class Access {
        readWrite, ///< never makes the file
        queryOnly, ///< opened for writing, so that the log of another writer can be read, but refuses to write
        readOnly,  ///< for a file or a folder that may not be written
        immutable  ///< as readOnly, without any lock: only for a file in a folder where nobody can write
    };

    static std::variant<std::unique_ptr<Connection>, QSqlError> open(const QString& path, Access access, std::chrono::milliseconds busyTimeout);
    ~Connection();
    Connection(const Connection&) = delete;
    Connection& operator=(const Connection&) = delete;

    QSqlDatabase database() const { return QSqlDatabase::database(name_, false); }
    std::optional<QSqlError> run(const QString& sql) const;
    /// First column of the first row; invalid when there is none.
    std::variant<QVariant, QSqlError> value(const QString& sql) const;

    /// While it lives, a statement that runs for long asks it every so often whether to go on; one that may not ends with an error.
    class Watch {
    public:
        Watch(const Connection& connection, std::function<bool()> goOn);
        ~Watch();
        Watch(const Watch&) = delete;
        Watch& operator=(const Watch&) = delete;

    private:
        const Connection& connection_;
        std::function<bool()> goOn_;
    };

    bool mayWrite() const;          ///< false when SQLite could only open the file for reading
    bool movedAway() const;         ///< the path no longer leads to this file
    /// The write-ahead log was removed or replaced by another program, which took itself for the last user of the file: what was committed since,
    /// or is now, goes nowhere. Such a log is never folded into the file. Only renew() helps.
    bool logTakenAway() const;
    /// Closes and opens anew, so that the log that now lies there is used. After an error nothing is open and every statement fails; it may be tried again.
    std::optional<QSqlError> renew();
    bool beginsLikeSqlite() const;  ///< the file's first bytes are those of an SQLite file
    bool isOpen() const { return handle_ != nullptr; } ///< false only after a renew() that failed
    bool insideTransaction() const;
    qint64 fileSize() const;        ///< bytes, without the log; -1 when it cannot be told
    long fileSystemType() const;    ///< of the file, as statfs says; 0 when it says nothing

private:
    explicit Connection(QString name) : name_{std::move(name)} {}
    std::optional<QSqlError> connect();
    std::optional<QSqlError> secure();
    void disconnect();

    QString name_;
    QString path_;
    Access access_ = Access::readOnly;
    std::chrono::milliseconds busyTimeout_{};
    sqlite3* handle_ = nullptr;     ///< owned by the driver; none: not open
};

/// Makes every commit durable before it returns: a write-ahead log synced at each commit, or, where that does not work or is not wanted,
/// a rollback journal with its folder synced too. Each setting is read back. Returns what went wrong.
std::optional<QSqlError> makeDurable(const Connection& connection, bool logWanted = true);

/// Whether a write-ahead log is safe on a file system (f_type of statfs): its index is memory that all writers share, so not where they
/// may sit on several machines.
bool logIsSafeOn(long fileSystemType);

/// For a file that keeps a log in a place where the log's index cannot be shared: takes the file for itself, folds the log in and goes
/// over to a rollback journal. Nothing but reading is possible with Access::queryOnly, which then holds the file until it closes.
std::optional<QSqlError> leaveTheLog(const Connection& connection, bool queryOnly);

}
