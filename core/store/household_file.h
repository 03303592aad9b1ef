#pragma once

#include "core/journal/edit.h"

#include <QString>

#include <memory>
#include <optional>
#include <variant>
#include <vector>

namespace tierloam::store {

enum class OpenProblem { absent, notAHousehold, damaged, newer, noPermission, inUse, diskFull, other };

/// Why a file could not be opened: what happened, what was kept, what to do.
struct OpenFailure {
    OpenProblem problem{};
    QString why;
};

/// Why a write did not happen; nothing of it was written.
struct WriteFailure {
    bool inUse = false;      ///< another program held the file for more than 5 s
    bool diskFull = false;
    QString why;
};

/// Ids of the entries added and replaced, in the order of the edit.
using Written = std::variant<std::vector<journal::EntryId>, WriteFailure>;

/// One household file, one SQLite connection, used by one thread. Every write is one BEGIN IMMEDIATE transaction and durable
/// (fdatasync) before the call returns. Busy timeout 5 s.
class HouseholdFile {
public:
    enum class Mode { mustExist, createIfAbsent, readOnly };

    static std::variant<std::unique_ptr<HouseholdFile>, OpenFailure> open(const QString& path, Mode mode);
    ~HouseholdFile();

    bool readOnly() const;
    bool createdNow() const;                 ///< open() made the file
    /// Live entries in journal order.
    std::variant<journal::Entries, WriteFailure> entries() const;
    /// Writes the edit as given (legality is the caller's). Added entries go to the end of their day and get a new id, unless
    /// they name the id of a deleted entry: that row is brought back, id and position with it (this is how a deletion is undone).
    /// Deletion sets deleted_at. Replaced rows keep their id; one moved to another day is appended there unless its positionInDay is given (not 0).
    Written apply(const journal::Edit& edit, const QString& importName = {});
    std::optional<QString> setting(const QString& name) const;
    std::optional<WriteFailure> setSetting(const QString& name, const QString& value);
    /// PRAGMA data_version: differs when another connection has written since the last call.
    qint64 dataVersion() const;
    /// Closes and removes a file that createdNow(); for an import that failed.
    static void discard(std::unique_ptr<HouseholdFile> file);

private:
    class Private;
    explicit HouseholdFile(std::unique_ptr<Private> d);
    std::unique_ptr<Private> d_;
};

}
