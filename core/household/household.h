#pragma once

#include "core/household/clock.h"
#include "core/journal/edit.h"
#include "core/journal/replay.h"
#include "core/materials/table.h"
#include "core/reckoning/reckoning.h"
#include "core/store/household_file.h"

#include <QObject>
#include <QString>
#include <QUndoStack>

#include <memory>
#include <variant>
#include <vector>

namespace tierloam::household {

/// Names a verb that was asked for; recorded() or failed() comes with the same ticket.
enum class Ticket : quint64 {};

/// What changed in the household: the one signal that pages listen to.
struct Changes {
    std::vector<journal::EntryId> ids;   ///< entries written, changed or taken out
    bool fromOutside = false;            ///< another process wrote
    bool settings = false;
};

/// The journal as the window holds it: a value, shared, never changed in place.
struct JournalView {
    journal::Entries entries;            ///< in journal order, those pending included
    std::vector<journal::EntryId> pending; ///< drawn as not yet durable
    journal::Replay replay;
    materials::Table materials;
};

/// The usual amounts of one stack: the median of the last five, nullopt when it was never done.
struct Usual {
    Amount feed{300.0, Unit::g};
    std::string feedMaterial;            ///< of the last feeding; empty = kitchen mix
    std::optional<Amount> coverWithFeed; ///< the usual cover, when covers usually come with feedings (default 30 g)
    Amount water{0.5, Unit::L};
    Amount drain{1.0, Unit::L};
    bool feedKnown = false, waterKnown = false, drainKnown = false; ///< false: the default above
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
    };

    static std::variant<std::unique_ptr<Household>, store::OpenFailure> open(const QString& path, std::shared_ptr<const Clock> clock, const Settings& settings);
    ~Household() override;

    QString path() const;
    QString name() const;                ///< the household's name, the file's base name until it is set
    Day today() const;
    bool readOnly() const;

    std::shared_ptr<const JournalView> journal() const;
    /// The newest estimates; nullptr until the first are there. May lag behind journal(): see reckoning().
    std::shared_ptr<const reckoning::Reckoning> reckoning() const;
    bool reckoningIsCurrent() const;
    Usual usual(const std::string& stack) const;

    /// Why the edit would be refused, as a sentence; empty when it is fine. Also lists later entries that it moves to another batch.
    QString refusalOf(const journal::Edit& edit) const;
    std::vector<journal::EntryId> movedBy(const journal::Edit& edit) const;

    // Verbs: each one transaction and one undo step, named by `label`.
    Ticket record(const journal::Entry& entry, const QString& label);
    Ticket recordAll(const journal::Entries& entries, const QString& label);
    Ticket edit(const journal::Entry& replaced, const QString& label);
    Ticket remove(const std::vector<journal::EntryId>& ids, const QString& label);
    Ticket apply(const journal::Edit& edit, const QString& label);
    Ticket rename(const QString& name);

    QUndoStack* undoStack() const;
    /// Looks at once for what another process wrote (normally once a second and on file events).
    void lookForForeignWrites();
    /// Blocks until all verbs asked for so far are durable or failed; for closing and tests.
    void finishWrites();

Q_SIGNALS:
    void recorded(tierloam::household::Ticket ticket, std::vector<tierloam::journal::EntryId> ids);
    void failed(tierloam::household::Ticket ticket, const QString& why);
    void changed(const tierloam::household::Changes& changes);
    void reckoned();
    /// Something people must know: undo steps dropped, file moved or gone.
    void notice(const QString& text);

private:
    class Private;
    explicit Household(std::unique_ptr<Private> d);
    std::unique_ptr<Private> d_;
};

}
