#pragma once

#include "core/store/household_file.h"

#include <condition_variable>
#include <deque>
#include <map>
#include <memory>
#include <mutex>
#include <string>
#include <thread>
#include <utility>
#include <vector>

namespace tierloam::store {

/// What a household file holds at one moment.
struct Contents {
    journal::Entries entries;          ///< live, in journal order
    std::map<Day, std::int64_t> ends;  ///< the last position taken on each day, deleted entries included
    std::map<QString, QString> settings;
    LoggedDays logged;
};

/// One transaction that is asked for: an edit of the journal, a setting, or both.
struct WriteJob {
    journal::Edit edit;
    std::optional<std::pair<QString, QString>> setting; ///< name and value; beside entries, but not beside logged readings
    std::optional<QString> settingStanding; ///< its value now, as the asker takes it to be: see HouseholdFile::setSetting
    std::optional<PhotoJob> photo;     ///< likewise instead of the edit
    std::shared_ptr<const LoggedJob> logged; ///< together with the edit, in its transaction
    QString importName;
    Guard guard;
    std::uint64_t series = 0;          ///< see Writer::write
};

/// The answer to a job: durable, with the rows as they now stand (added, then replaced), or failed with nothing written.
struct WriteAnswer {
    std::optional<WriteFailure> failure;
    std::vector<journal::EntryId> ids;
    journal::Entries stored;
    qint64 photo = 0;                  ///< id of the picture, for a job with one
    std::vector<qint64> series;        ///< ids of the logged series that were added
    std::optional<LoggedDays> logged;  ///< all that is logged now, for a job that may have changed it
};

/// Something people must know that is no answer to a job: where a backup went, or why there is none. Called from the writer's thread.
using Tell = std::function<void(const QString&)>;

/// What has become of the file since the last look.
struct Look {
    bool movedAway = false;
    std::optional<Contents> foreign;   ///< another connection has written: all that the file now holds
    std::optional<WriteFailure> failure; ///< the look itself failed; the next one will try again
};

/// The thread that owns a household file: the only one that touches it. Jobs are done one after another in the order in which they
/// were asked for; each answer is given from that thread. The destructor first does all that was asked for. The day's backup is made
/// after the first change of the day has been answered, one before each import; a backup that fails is told and stops nothing.
class Writer {
public:
    /// Waits until the file is open. `contents` is what it holds.
    static std::variant<std::unique_ptr<Writer>, OpenFailure> open(const QString& path, HouseholdFile::Mode mode, std::chrono::milliseconds busyTimeout,
                                                                   Contents& contents, Tell tell = {});
    ~Writer();
    Writer(const Writer&) = delete;
    Writer& operator=(const Writer&) = delete;

    QString path() const { return path_; }
    bool readOnly() const { return readOnly_; }
    bool newerSchema() const { return newerSchema_; }
    int schema() const { return schema_; }       ///< when it was opened

    /// After a failure every job of the same or an earlier series fails too, untried: it was asked for in the belief that the failed one
    /// would stand. The asker begins a new series once it has heard of the failure.
    void write(WriteJob job, std::function<void(WriteAnswer)> answer);
    void look(std::function<void(Look)> answer);
    void listLogged(const std::string& stack, Day from, Day to, std::function<void(std::variant<LoggedBefore, WriteFailure>)> answer);
    void listPhotos(journal::EntryId entry, std::function<void(std::variant<std::vector<Photo>, WriteFailure>)> answer);
    /// Entries that were taken out, latest first; or why they cannot be read.
    void listDeleted(std::function<void(std::variant<std::vector<DeletedEntry>, WriteFailure>)> answer);
    /// A copy under a new name of what was asked for before; why there is none. It has a thread and a connection of its own, so that what is written
    /// meanwhile does not wait for a slow disk; the answer comes from there. Called off by the destructor. Where a reader would hold up
    /// the writes (no log), or the file lies elsewhere by now, it is made in turn with them.
    void saveCopy(const QString& target, const CopyControl& control, std::function<void(std::optional<QString>)> answer);
    /// Blocks until all that was asked for so far has been answered.
    void finish();

private:
    using Task = std::function<void(HouseholdFile&)>;

    Writer() = default;
    void post(Task task);
    void run(HouseholdFile& file);
    WriteAnswer perform(HouseholdFile& file, const WriteJob& job);
    Look lookNow(HouseholdFile& file);
    void tellOf(HouseholdFile& file);
    void copyBeside(const QString& target, const CopyControl& control, std::function<void(std::optional<QString>)> answer);

    QString path_;
    bool readOnly_ = false;
    bool newerSchema_ = false;
    int schema_ = 0;
    Tell tell_;

    std::mutex mutex_;
    std::condition_variable wake_;
    std::deque<Task> tasks_;
    bool closing_ = false;

    std::optional<std::uint64_t> failedSeries_; ///< used by the thread alone, as is the next
    qint64 versionSeen_ = 0;
    struct Copying;
    std::vector<std::unique_ptr<Copying>> copies_; ///< likewise
    std::jthread thread_;                       ///< last: the others outlive it
};

}
