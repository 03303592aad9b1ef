#pragma once

#include "core/household/clock.h"
#include "core/household/stack_order.h"
#include "core/household/usual.h"
#include "core/journal/edit.h"
#include "core/journal/replay.h"
#include "core/materials/table.h"
#include "core/reckoning/reckon.h"
#include "core/store/household_file.h"

#include <QObject>
#include <QString>
#include <QStringList>
#include <QUndoStack>

#include <chrono>
#include <functional>
#include <memory>
#include <stop_token>
#include <string>
#include <variant>
#include <vector>

namespace tierloam::household {

/// How estimates are made; reckoning::reckon unless a test puts another in its place. Called in the reckoner's thread.
using ReckonFunction = std::function<std::shared_ptr<const reckoning::Reckoning>(const journal::Entries&, const reckoning::Options&, std::stop_token)>;

/// Names a verb that was asked for; recorded() or failed() comes with the same ticket.
enum class Ticket : quint64 {};

/// What changed in the household: the one signal that pages listen to.
struct Changes {
    std::vector<journal::EntryId> ids;   ///< entries written, changed or taken out
    bool fromOutside = false;            ///< another process wrote
    bool settings = false;
    bool photos = false;                 ///< pictures of the entries in `ids`
    bool logged = false;                 ///< readings of loggers
};

/// The journal as the window holds it: a value, shared, never changed in place.
struct JournalView {
    journal::Entries entries;            ///< in journal order, those pending included
    std::vector<journal::EntryId> pending; ///< drawn as not yet durable; a new entry has a negative id of its own until it is recorded
    journal::Replay replay;
    materials::Table materials;
};

/// The one door to a household file. Lives in the window's thread; the writer and the reckoner are its own threads.
/// No verb waits for the disk or the model.
class Household : public QObject {
    Q_OBJECT

public:
    struct Settings {
        int members = 512;
        int threads = 2;
        bool createIfAbsent = false;
        std::chrono::milliseconds busyTimeout{5000}; ///< how long another program's lock is waited for
        std::chrono::milliseconds lookEvery{1000};   ///< for what other programs wrote, and for the next day
        ReckonFunction reckon;                       ///< empty: reckoning::reckon
        QString estimatesFolder;                     ///< where estimates are kept from one session to the next; empty: nowhere
        std::string program;                         ///< version of the program: kept estimates of another one are not read
    };

    static std::variant<std::unique_ptr<Household>, store::OpenFailure> open(const QString& path, std::shared_ptr<const Clock> clock, const Settings& settings);
    ~Household() override;

    QString path() const;
    int schema() const;                  ///< of the file, as it was opened
    QString name() const;                ///< the household's name, the file's base name until it is set
    Day today() const;
    /// Opened for reading only, or moved or removed meanwhile: then every verb fails, and says why.
    bool readOnly() const;

    std::shared_ptr<const JournalView> journal() const;
    /// The newest estimates; nullptr until the first are there. May lag behind journal(): see reckoning().
    std::shared_ptr<const reckoning::Reckoning> reckoning() const;
    bool reckoningIsCurrent() const;
    /// How far a reckoning of many stacks is; all = 0 when none is under way.
    struct ReckoningProgress { std::size_t made = 0, all = 0; };
    ReckoningProgress reckoningProgress() const;
    /// Stacks, by key, whose estimates come first in the next reckoning of many.
    void setShownFirst(std::vector<std::string> stacks);
    Usual usual(const std::string& stack) const;

    /// Why the edit would be refused, as a sentence; empty when it is fine.
    QString refusalOf(const journal::Edit& edit) const;
    /// Later entries that it moves to another batch.
    std::vector<journal::EntryId> movedBy(const journal::Edit& edit) const;

    // Verbs: each one transaction and one undo step, named by `label`. What is asked for is seen in journal() at once, as pending.
    // recorded() or failed() comes later, never before the verb returns. After a failure all that was asked for before it was told
    // fails too, and the view goes back. A verb that changes nothing is answered by recorded() without ids, writes nothing and is no undo step.
    Ticket record(const journal::Entry& entry, const QString& label);
    Ticket recordAll(const journal::Entries& entries, const QString& label);
    /// As recordAll, and one of the household's settings with them.
    Ticket recordAndKeep(const journal::Entries& entries, const QString& setting, const QString& value, const QString& label);
    Ticket edit(const journal::Entry& replaced, const QString& label);
    Ticket remove(const std::vector<journal::EntryId>& ids, const QString& label);
    Ticket apply(const journal::Edit& edit, const QString& label);
    /// As recordAll, from a file of that name: a backup is made first, and the entries stay known as one import.
    Ticket importAll(const journal::Entries& entries, const QString& fileName, const QString& label);
    /// As importAll, with readings of a logger: one transaction and one undo step for both. `edit` holds the entries of the days.
    Ticket importReadings(const journal::Edit& edit, store::LoggedJob job, const QString& fileName, const QString& label);
    /// What loggers have read, day by day.
    std::shared_ptr<const store::LoggedDays> logged() const;
    /// The readings themselves, of one stack, or why they could not be read: `then` is called in this thread, later, in either case.
    void listLogged(const std::string& stack, Day from, Day to, std::function<void(const std::variant<store::LoggedBefore, store::WriteFailure>&)> then);
    /// A setting that belongs to the household, such as what the columns of a logger hold; the store's names are not to be used here.
    Ticket remember(const QString& name, const QString& value, const QString& label);
    QString remembered(const QString& name) const;
    Ticket rename(const QString& name);
    /// Absolute path of the folder for backups; empty: beside the file.
    Ticket keepBackupsIn(const QString& folder);
    QString backupFolder() const;        ///< as chosen; empty: beside the file
    QString backupsLieIn() const;        ///< where the next one goes

    /// One of the household's settings (core/store/setting_names.h), kept in the file and undone like every verb.
    Ticket keep(const QString& setting, const QString& value, const QString& label);
    /// How people put the stacks; empty: as they were set up.
    StackOrder stackOrder() const;
    QString kept(const QString& setting) const;  ///< with what is still being written; empty when it was never set

    /// Entries that were taken out, latest first, also those of earlier days: `then` is called in this thread, later. An entry is brought
    /// back by apply() with it among the added ones, under its own id.
    void listDeleted(std::function<void(const std::vector<store::DeletedEntry>&)> then);
    /// Pictures of an entry: see readPhoto for how one is made ready. Undone like every verb.
    Ticket addPhoto(journal::EntryId entry, store::Photo photo, const QString& label);
    Ticket removePhoto(const store::Photo& photo, const QString& label);
    void listPhotos(journal::EntryId entry, std::function<void(const std::vector<store::Photo>&)> then);
    /// A copy of the file under a new name; `then` is told why there is none, or an empty text.
    /// `control` is told from another thread. What is recorded meanwhile is written meanwhile; called off when the household goes.
    void saveCopy(const QString& target, std::function<void(const QString&)> then, const store::CopyControl& control = {});

    /// Undo and redo are writes like the verbs: seen at once, answered by recorded() or failed() with a ticket of their own. A failed one
    /// leaves its step where it was; one that has become impossible takes its step off the stack.
    QUndoStack* undoStack() const;
    /// A verb is being written whose step is not on the stack yet. Whoever offers undo and redo lets what is asked for wait for it: else the step
    /// before it would be taken back, and could not be done again once this one has come.
    bool stepUnderWay() const;
    /// What the latest of them is called, as it will be on the stack; empty when none is under way.
    QString labelUnderWay() const;
    /// Looks at once for what another process wrote (normally once a second and on file events).
    void lookForForeignWrites();
    /// Blocks until all verbs asked for so far are durable or failed; for closing and tests. Why some failed, each reason once, since
    /// who hears of failed() later may be gone by then; empty when all is written.
    QStringList finishWrites();

Q_SIGNALS:
    void recorded(tierloam::household::Ticket ticket, std::vector<tierloam::journal::EntryId> ids);
    void failed(tierloam::household::Ticket ticket, const QString& why);
    void changed(const tierloam::household::Changes& changes);
    void stepUnderWayChanged();
    void reckoned();
    /// reckoningProgress() has changed.
    void reckoningProgressed();
    /// Something people must know: undo steps dropped, file moved or gone.
    void notice(const QString& text);
    /// From the writer or the reckoner to the window's thread; for nobody else.
    void mailCame(QPrivateSignal);

private:
    class Private;
    explicit Household(std::unique_ptr<Private> d);
    std::unique_ptr<Private> d_;
};

}
