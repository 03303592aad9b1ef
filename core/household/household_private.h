#pragma once

#include "core/household/file_watch.h"
#include "core/household/household.h"
#include "core/household/open_journal.h"
#include "core/household/open_settings.h"
#include "core/household/reckoner.h"
#include "core/household/undo_history.h"
#include "core/household/usual.h"
#include "core/store/writer.h"

#include <deque>
#include <map>
#include <mutex>

/// What stands behind the door. Everything here lives in the window's thread but the mailbox, into which the writer and the reckoner
/// put their answers; one queued call takes them out.
namespace tierloam::household {

class Household::Private {
public:
    Private(std::unique_ptr<store::Writer> writer, store::Contents contents, std::shared_ptr<const Clock> clock, const Settings& settings);

    ~Private();

    void begin(Household* q);

    // Asking (household_asking.cpp)
    /// `importName`: the file that the entries came from; empty: none.
    Ticket ask(const journal::Edit& edit, const QString& label, const QString& importName = {}, std::shared_ptr<const store::LoggedJob> logged = {},
               std::optional<UndoStep::Setting> setting = {});
    Ticket askSetting(const QString& name, const QString& value, const QString& label);
    Ticket askPhoto(const store::PhotoJob& job, const QString& label);
    void askAgain(const UndoHistory::StepRef& step, Direction direction);
    QString whyNoVerbs() const;                 ///< empty while writing is possible

    // Answering (household_answering.cpp)
    void post(std::function<void()> task);      ///< from any thread
    void takeMail();
    void lookSoon();
    bool looking() const { return lookUnderWay_; }
    bool stepUnderWay() const { return ownStepsUnderWay_ > 0; }
    QString labelUnderWay() const { return stepUnderWay() ? labelUnderWay_ : QString{}; }

    // Estimates (household_estimates.cpp)
    void startReckoner();
    void reckonIfNeeded();
    bool estimatesCurrent() const;

    std::unique_ptr<store::Writer> writer;
    std::shared_ptr<const Clock> clock;
    Settings settings;
    OpenJournal journal;
    std::shared_ptr<const store::LoggedDays> logged;
    OpenSettings keptSettings;
    UndoHistory undo;
    std::shared_ptr<const reckoning::Reckoning> reckoning;
    std::size_t stacksMade = 0, stacksAsked = 0;
    std::vector<std::string> shownFirst;
    std::shared_ptr<const JournalView> usualOn; ///< what `usual` was worked out from
    Day usualUpTo{};
    std::map<std::string, Usual> usual;

private:
    /// One write that is under way: what an answer needs to know.
    struct UnderWay {
        Ticket ticket{};
        std::uint64_t series = 0;
        journal::Edit edit;
        UndoStep step;                          ///< for a verb: `changed` holds the rows before, `went` those that leave
        UndoHistory::StepRef again;             ///< for undo and redo
        Direction direction = Direction::undo;
        std::optional<UndoStep::Setting> setting;
        std::optional<store::PhotoJob> photo;
        bool entries() const { return !photo && (!setting || !OpenJournal::changesNothing(edit)); } ///< it changes the journal
        std::shared_ptr<const store::LoggedJob> logged;
        QString importName;
    };

    Ticket nextTicket() { return Ticket{++lastTicket_}; }
    Ticket failLater(Ticket ticket, const QString& why);
    void send(UnderWay underWay);
    void rememberRowsBefore(UnderWay& underWay) const;
    void answered(const UnderWay& underWay, const store::WriteAnswer& answer);
    void succeeded(const UnderWay& underWay, const store::WriteAnswer& answer);
    void gaveUp(const UnderWay& underWay, const store::WriteFailure& failure);
    void looked(store::Look look);
    void tellMoved(bool movedAway);
    void tellChanged(std::vector<journal::EntryId> ids, bool fromOutside, bool settings, bool logged = false);
    void tellPhotos(journal::EntryId entry);

    Household* q_ = nullptr;
    quint64 lastTicket_ = 0;
    std::uint64_t series_ = 1;
    int ownStepsUnderWay_ = 0;                  ///< writes whose step is pushed when they are durable
    QString labelUnderWay_;                     ///< of the latest of these
    bool movedAway_ = false;
    bool lookUnderWay_ = false;
    bool lookAgain_ = false;

    std::mutex mailMutex_;
    std::deque<std::function<void()>> mail_;
    bool mailAnnounced_ = false;

    struct Basis {
        std::uint64_t digest = 0;
        Day asOf{};
        bool southern = false;
        bool operator==(const Basis&) const = default;
    };
    Basis basisNow() const;
    std::uint64_t asked_ = 0;
    std::optional<Basis> wanted_;               ///< of the newest request
    std::optional<Basis> have_;                 ///< of `reckoning`

    std::unique_ptr<FileWatch> watch_;
    std::unique_ptr<Reckoner> reckoner_;
};

}
