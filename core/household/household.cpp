#include "core/household/household.h"

#include "core/household/household_private.h"

#include "core/household/mailbox.h"
#include "core/store/backup.h"

#include "core/exchange/refusal_text.h"
#include "core/household/text.h"
#include "core/store/setting_names.h"

#include <QFileInfo>
#include <QTimer>

namespace tierloam::household {

Household::Private::Private(std::unique_ptr<store::Writer> openWriter, store::Contents contents, std::shared_ptr<const Clock> givenClock,
                            const Settings& givenSettings)
    : writer{std::move(openWriter)}, clock{std::move(givenClock)}, settings{givenSettings}, journal{std::move(contents.entries), std::move(contents.ends)},
      logged{std::make_shared<const store::LoggedDays>(std::move(contents.logged))}, keptSettings{std::move(contents.settings)}, undo{[this](const UndoHistory::StepRef& step, Direction direction) { askAgain(step, direction); }}
{
}

/// The threads end while everything that they answer into is still there; the writer first does what was asked for.
Household::Private::~Private()
{
    watch_.reset();
    reckoner_.reset();
    writer.reset();
}

void Household::Private::begin(Household* q)
{
    q_ = q;
    QObject::connect(q, &Household::mailCame, q, [this] { takeMail(); }, Qt::QueuedConnection);
    watch_ = std::make_unique<FileWatch>(writer->path(), settings.lookEvery, [this] {
        lookSoon();
        reckonIfNeeded(); // the day may have changed
    });
    startReckoner();
    reckonIfNeeded();
}

std::variant<std::unique_ptr<Household>, store::OpenFailure> Household::open(const QString& path, std::shared_ptr<const Clock> clock, const Settings& settings)
{
    using Mode = store::HouseholdFile::Mode;
    store::Contents contents;
    QString notice;
    // What the writer tells before there is anybody to listen waits here; afterwards it goes by mail.
    const auto mailbox = std::make_shared<Mailbox>();
    const auto tell = [mailbox](const QString& text) { mailbox->put(text); };
    auto opened = store::Writer::open(path, settings.createIfAbsent ? Mode::createIfAbsent : Mode::mustExist, settings.busyTimeout, contents, tell);
    if (const auto* failure = std::get_if<store::OpenFailure>(&opened)) {
        // What may only be read is shown all the same, and says that it takes nothing.
        const auto problem = failure->problem;
        const bool canBeRead = problem == store::OpenProblem::newer || problem == store::OpenProblem::noPermission || problem == store::OpenProblem::noBackup
            || problem == store::OpenProblem::diskFull;
        if (!canBeRead) return *failure;
        auto toRead = store::Writer::open(path, Mode::readOnly, settings.busyTimeout, contents, tell);
        if (std::holds_alternative<store::OpenFailure>(toRead)) return *failure;
        notice = problem != store::OpenProblem::noPermission
            ? failure->why
            : HouseholdText::tr("%1 is open for reading only: there is no permission to write to it or to its folder. Nothing can be recorded until that is changed.").arg(path);
        opened = std::move(toRead);
    }
    auto d = std::make_unique<Private>(std::move(std::get<std::unique_ptr<store::Writer>>(opened)), std::move(contents), std::move(clock), settings);
    std::unique_ptr<Household> household{new Household{std::move(d)}};
    mailbox->deliverTo([inner = household->d_.get(), q = household.get()](const QString& text) { inner->post([q, text] { Q_EMIT q->notice(text); }); });
    if (!notice.isEmpty())
        QTimer::singleShot(0, household.get(), [q = household.get(), notice] { Q_EMIT q->notice(notice); });
    return household;
}

Household::Household(std::unique_ptr<Private> d) : d_{std::move(d)} { d_->begin(this); }
Household::~Household() = default;

QString Household::path() const { return d_->writer->path(); }

QString Household::name() const
{
    const QString given = d_->keptSettings.value(store::settingHouseholdName);
    return given.isEmpty() ? QFileInfo{path()}.completeBaseName() : given;
}

int Household::schema() const { return d_->writer->schema(); }
Day Household::today() const { return d_->clock->today(); }
bool Household::readOnly() const { return !d_->whyNoVerbs().isEmpty(); }
std::shared_ptr<const JournalView> Household::journal() const { return d_->journal.view(); }
std::shared_ptr<const reckoning::Reckoning> Household::reckoning() const { return d_->reckoning; }
bool Household::reckoningIsCurrent() const { return d_->estimatesCurrent(); }
Household::ReckoningProgress Household::reckoningProgress() const { return {d_->stacksMade, d_->stacksAsked}; }
void Household::setShownFirst(std::vector<std::string> stacks) { d_->shownFirst = std::move(stacks); }

Usual Household::usual(const std::string& stack) const
{
    const auto view = d_->journal.view();
    if (d_->usualOn != view || d_->usualUpTo != today()) {
        d_->usualUpTo = today();
        d_->usual = usualOfAll(view->entries, view->materials, d_->usualUpTo);
        d_->usualOn = view;
    }
    const auto known = d_->usual.find(stack);
    return known != d_->usual.end() ? known->second : usualOf({}, view->materials, stack, today());
}

QString Household::refusalOf(const journal::Edit& edit) const
{
    const journal::Edit prepared = d_->journal.prepared(edit);
    return exchange::editRefusalText(d_->journal.effectOf(prepared), prepared);
}

std::vector<journal::EntryId> Household::movedBy(const journal::Edit& edit) const
{
    return d_->journal.effectOf(d_->journal.prepared(edit)).movedToOtherBatch;
}

Ticket Household::record(const journal::Entry& entry, const QString& label) { return recordAll({entry}, label); }

Ticket Household::recordAll(const journal::Entries& entries, const QString& label)
{
    journal::Edit edit;
    edit.added = entries;
    for (auto& entry : edit.added) entry.id = journal::EntryId::none;
    return d_->ask(edit, label);
}

Ticket Household::recordAndKeep(const journal::Entries& entries, const QString& setting, const QString& value, const QString& label)
{
    journal::Edit edit;
    edit.added = entries;
    for (auto& entry : edit.added) entry.id = journal::EntryId::none;
    return d_->ask(edit, label, {}, {}, UndoStep::Setting{setting, kept(setting), value});
}

Ticket Household::edit(const journal::Entry& replaced, const QString& label) { return d_->ask({{}, {replaced}, {}}, label); }
Ticket Household::remove(const std::vector<journal::EntryId>& ids, const QString& label) { return d_->ask({{}, {}, ids}, label); }
Ticket Household::apply(const journal::Edit& edit, const QString& label) { return d_->ask(edit, label); }

Ticket Household::rename(const QString& name)
{
    return d_->askSetting(store::settingHouseholdName, name.trimmed(), HouseholdText::tr("Rename the household"));
}

Ticket Household::importAll(const journal::Entries& entries, const QString& fileName, const QString& label)
{
    journal::Edit edit;
    edit.added = entries;
    for (auto& entry : edit.added) entry.id = journal::EntryId::none;
    return d_->ask(edit, label, fileName);
}

Ticket Household::importReadings(const journal::Edit& edit, store::LoggedJob job, const QString& fileName, const QString& label)
{
    return d_->ask(edit, label, fileName, std::make_shared<const store::LoggedJob>(std::move(job)));
}

std::shared_ptr<const store::LoggedDays> Household::logged() const { return d_->logged; }

void Household::listLogged(const std::string& stack, Day from, Day to, std::function<void(const std::variant<store::LoggedBefore, store::WriteFailure>&)> then)
{
    d_->writer->listLogged(stack, from, to, [d = d_.get(), then = std::move(then)](std::variant<store::LoggedBefore, store::WriteFailure> read) {
        d->post([then, read = std::move(read)] { then(read); });
    });
}

Ticket Household::remember(const QString& name, const QString& value, const QString& label) { return d_->askSetting(name, value, label); }
QString Household::remembered(const QString& name) const { return d_->keptSettings.value(name); }

Ticket Household::keepBackupsIn(const QString& folder)
{
    const QString absolute = folder.isEmpty() ? QString{} : QFileInfo{folder}.absoluteFilePath();
    return d_->askSetting(store::settingBackupFolder, absolute, HouseholdText::tr("Folder for backups"));
}

Ticket Household::keep(const QString& setting, const QString& value, const QString& label) { return d_->askSetting(setting, value, label); }
StackOrder Household::stackOrder() const { return orderFrom(kept(store::settingStackOrder)); }

QString Household::kept(const QString& setting) const { return d_->keptSettings.value(setting); }

QString Household::backupFolder() const { return d_->keptSettings.value(store::settingBackupFolder); }

QString Household::backupsLieIn() const
{
    const QString real = QFileInfo{path()}.canonicalFilePath();
    return store::backupFolderOf(real.isEmpty() ? path() : real, backupFolder());
}

void Household::listDeleted(std::function<void(const std::vector<store::DeletedEntry>&)> then)
{
    d_->writer->listDeleted([d = d_.get(), this, then = std::move(then)](std::variant<std::vector<store::DeletedEntry>, store::WriteFailure> read) {
        d->post([this, then, read = std::move(read)] {
            if (const auto* failure = std::get_if<store::WriteFailure>(&read)) Q_EMIT notice(failure->why);
            else then(std::get<std::vector<store::DeletedEntry>>(read));
        });
    });
}

Ticket Household::addPhoto(journal::EntryId entry, store::Photo photo, const QString& label)
{
    photo.id = 0;
    photo.entry = entry;
    return d_->askPhoto({store::PhotoJob::What::add, std::move(photo)}, label);
}

Ticket Household::removePhoto(const store::Photo& photo, const QString& label) { return d_->askPhoto({store::PhotoJob::What::remove, photo}, label); }

void Household::listPhotos(journal::EntryId entry, std::function<void(const std::vector<store::Photo>&)> then)
{
    d_->writer->listPhotos(entry, [d = d_.get(), this, then = std::move(then)](std::variant<std::vector<store::Photo>, store::WriteFailure> read) {
        d->post([this, then, read = std::move(read)] {
            if (const auto* failure = std::get_if<store::WriteFailure>(&read)) Q_EMIT notice(failure->why);
            else then(std::get<std::vector<store::Photo>>(read));
        });
    });
}

void Household::saveCopy(const QString& target, std::function<void(const QString&)> then, const store::CopyControl& control)
{
    d_->writer->saveCopy(target, control, [d = d_.get(), then = std::move(then)](const std::optional<QString>& why) {
        d->post([then, why = why.value_or(QString{})] { then(why); });
    });
}

QUndoStack* Household::undoStack() const { return d_->undo.stack(); }
bool Household::stepUnderWay() const { return d_->stepUnderWay(); }
QString Household::labelUnderWay() const { return d_->labelUnderWay(); }
void Household::lookForForeignWrites() { d_->lookSoon(); }

QStringList Household::finishWrites()
{
    QStringList reasons;
    const auto listening = connect(this, &Household::failed, this, [&reasons](Ticket, const QString& why) {
        if (!reasons.contains(why)) reasons << why;
    });
    do {
        d_->writer->finish();
        d_->takeMail();
    } while (d_->looking());
    disconnect(listening);
    return reasons;
}

}
