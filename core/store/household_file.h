#pragma once

#include "core/journal/edit.h"
#include "core/store/logged.h"
#include "core/store/photo.h"

#include <QDateTime>
#include <QString>

#include <array>
#include <chrono>
#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <span>
#include <stop_token>
#include <variant>
#include <vector>

namespace tierloam::store {

enum class OpenProblem { absent, notAHousehold, damaged, newer, noPermission, inUse, diskFull, noBackup, other };

/// Why a file could not be opened: what happened, what was kept, what to do.
struct OpenFailure {
    OpenProblem problem{};
    QString why;
};

/// Why a write did not happen; nothing of it was written.
struct WriteFailure {
    bool inUse = false;      ///< another program held the file for more than 5 s, or kept taking its log away
    bool diskFull = false;
    bool gone = false;       ///< the file was moved or removed while it was open
    bool refused = false;    ///< the guard refused the edit, or a row or setting that it names is not as it is taken to be
    QString why;
};

/// Ids of the entries added and replaced, in the order of the edit.
using Written = std::variant<std::vector<journal::EntryId>, WriteFailure>;

/// Looks at an edit again, inside the transaction that writes it: gets the live entries as they now stand, whoever wrote them, and
/// returns why the edit must not be written, or nothing.
using Guard = std::function<std::optional<QString>(const journal::Entries& now)>;

enum class BackupKind { day, beforeImport, beforeStep };

/// A backup as its name tells it; `made` holds what the clock there showed, as if it were UTC.
struct Backup {
    QString path;
    QDateTime made;
    BackupKind kind{};
};

/// How a copy is followed and called off; both may be empty. `progress` is told the share that is done, about, in the thread that copies.
struct CopyControl {
    std::function<void(double)> progress;
    std::stop_token stop;
};

/// An entry that was taken out and when (UTC). It can be brought back by an edit that adds it with its id.
struct DeletedEntry {
    journal::Entry entry;
    QDateTime deletedAt;
};

/// A setting to be written: see HouseholdFile::setSetting.
struct SettingChange {
    QString name, value;
    std::optional<QString> standing;
};

/// As Written, with the ids of the logged series that were added.
struct LoggedWritten {
    Written written;
    std::vector<qint64> series;
};

/// What is known of a stack's logged readings in a span of days: the readings by kind, in no order, and the journal's entry of each day
/// that an import of such readings made.
struct LoggedBefore {
    std::array<std::vector<LoggedReading>, loggedKinds> readings;
    std::map<Day, journal::EntryId> entries;
};

/// One household file, one SQLite connection, used by one thread. Every write is one BEGIN IMMEDIATE transaction and durable
/// (fdatasync) before the call returns. Busy timeout 5 s.
class HouseholdFile {
public:
    /// readOnly also opens a file of a newer release; the others refuse it (OpenProblem::newer), and a file that may not be written.
    /// createIfAbsent also sets up a file of 0 bytes.
    enum class Mode { mustExist, createIfAbsent, readOnly };

    /// When every page of the file is looked at: before open() returns, or beside what is then read, where nothing has to be done to the file first.
    /// With `beside`, nothing may be written or shown before whyNotWhole() has answered.
    enum class Check { first, beside };

    static std::variant<std::unique_ptr<HouseholdFile>, OpenFailure> open(const QString& path, Mode mode,
                                                                          std::chrono::milliseconds busyTimeout = std::chrono::seconds{5}, Check check = Check::first);
    /// Waits for a check that goes on beside; what it found, once. Nothing where the file is whole.
    std::optional<OpenFailure> whyNotWhole();
    ~HouseholdFile();

    QString path() const;                    ///< absolute
    int schema() const;                      ///< of the file as it now is
    qint64 bytes() const;                    ///< without its log
    bool readOnly() const;
    bool newerSchema() const;                ///< written by a newer release; only with Mode::readOnly
    bool createdNow() const;                 ///< open() made the file, or set up one of 0 bytes
    bool movedAway() const;                  ///< the path no longer leads to the file that was opened
    /// Live entries in journal order.
    std::variant<journal::Entries, WriteFailure> entries() const;
    /// The last position taken on each day, deleted entries included: an entry that is added goes behind it.
    std::variant<std::map<Day, std::int64_t>, WriteFailure> endsOfDays() const;
    /// Writes the edit as given (legality is the caller's). Added entries go to the end of their day and get a new id, unless
    /// they name the id of a deleted entry: that row is brought back, id and position with it (this is how a deletion is undone).
    /// Deletion sets deleted_at. Replaced rows keep their id; one moved to another day is appended there unless its positionInDay is given (not 0).
    /// A row that is not as the edit takes it to be (replaced or deleted but not there; brought back but live) fails the whole edit.
    /// `setting` is written in the same transaction.
    Written apply(const journal::Edit& edit, const QString& importName = {}, const Guard& guard = {}, const std::optional<SettingChange>& setting = std::nullopt);
    /// Live entries with these ids, in this order; those that are not there are left out.
    std::variant<journal::Entries, WriteFailure> entriesWith(std::span<const journal::EntryId> ids) const;
    std::optional<QString> setting(const QString& name) const;
    std::variant<std::map<QString, QString>, WriteFailure> settings() const;
    /// Refused when `standing` is given and the file holds another value, whoever wrote it; empty: there is none.
    std::optional<WriteFailure> setSetting(const QString& name, const QString& value, const std::optional<QString>& standing = std::nullopt);
    /// As apply, and what the job does to logged readings in the same transaction. Readings that are added need an import name.
    LoggedWritten applyWithReadings(const journal::Edit& edit, const LoggedJob& job, const QString& importName = {}, const Guard& guard = {});
    std::variant<LoggedDays, WriteFailure> loggedDays() const;
    std::variant<LoggedBefore, WriteFailure> loggedBetween(const std::string& stack, Day from, Day to) const;
    /// Pictures of an entry, oldest first.
    std::variant<std::vector<Photo>, WriteFailure> photosOf(journal::EntryId entry) const;
    /// Adds, removes or brings back a picture in a transaction of its own; its id.
    std::variant<qint64, WriteFailure> changePhoto(const PhotoJob& job);
    /// Entries that were taken out, latest first.
    std::variant<std::vector<DeletedEntry>, WriteFailure> deletedEntries() const;
    /// Makes the day's backup unless there is one, or open() made the file on that day: it then holds nothing older. To be called after a change.
    /// Returns what people must be told: none could be made (it is tried again ten minutes later at the earliest), or it lies elsewhere.
    std::optional<QString> backUpIfDue(const QDateTime& now = QDateTime::currentDateTime());
    /// Before an import; nothing is done for a file without entries. Returns what people must be told.
    std::optional<QString> backUpBeforeImport(const QDateTime& now = QDateTime::currentDateTime());
    /// What was done when it was opened, or anew since (a log that was taken away), that people must be told; once. Empty: nothing.
    QString toldWhenOpened() const;
    /// A copy under a new name, durable. Returns why there is none.
    std::optional<QString> saveCopy(const QString& target, const CopyControl& control = {}) const;
    /// Whether saveCopyBeside() would copy this file as it stands and hold up nobody who writes: a file with its log, where it was opened, for writing.
    bool mayBeCopiedBeside() const;
    /// As saveCopy, on a connection of its own: in another thread than the one that writes to the file at that path.
    static std::optional<QString> saveCopyBeside(const QString& path, const QString& target, const CopyControl& control = {});
    /// Differs when another connection has written since the last call (PRAGMA data_version) or taken the log away, which is followed.
    qint64 dataVersion() const;
    /// Closes and removes a file that createdNow(), or empties it when it was one of 0 bytes; for an import that failed.
    /// A file that was there before is only closed.
    static void discard(std::unique_ptr<HouseholdFile> file);

private:
    class Private;
    explicit HouseholdFile(std::unique_ptr<Private> d);
    std::unique_ptr<Private> d_;
};

}
