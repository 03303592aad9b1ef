#include "core/household/household_private.h"

#include "core/exchange/refusal_text.h"
#include "core/household/named_rows.h"
#include "core/household/text.h"
#include "core/materials/edit.h"

#include <algorithm>
#include <unordered_map>

namespace tierloam::household {

namespace {

/// Whether one of these entries is there with other contents; its place within the day may be another.
bool anyDiffers(const journal::Entries& standing, const journal::Entries& now)
{
    std::unordered_map<journal::EntryId, const journal::Entry*> byId;
    if (!standing.empty())
        for (const auto& entry : now) byId.emplace(entry.id, &entry);
    return std::ranges::any_of(standing, [&](journal::Entry entry) {
        const auto found = byId.find(entry.id);
        if (found == byId.end()) return false; // the edit itself is refused for that
        entry.positionInDay = found->second->positionInDay;
        return entry != *found->second;
    });
}

/// Looks at each edit as the file then stands: runs in the writer's thread, on the journal as it then stands. `standing`: the entries that
/// it replaces or takes out, as whoever asked for it saw them; what somebody else has made of them is neither written over nor deleted.
store::Guard guardOf(const journal::Edit& edit, const journal::Entries& standing)
{
    return [edit, standing](const journal::Entries& now) -> std::optional<QString> {
        if (anyDiffers(standing, now)) return HouseholdText::tr("Another program has changed the entry meanwhile. What it wrote was kept, and nothing was written.");
        const auto effect = materials::applyEdit(now, edit);
        if (!effect.refusal) return std::nullopt;
        return exchange::editRefusalText(effect, edit);
    };
}

}

QString Household::Private::whyNoVerbs() const
{
    if (movedAway_)
        return HouseholdText::tr("%1 was moved or removed while it was open. Nothing was written; put it back, or open it where it is now.").arg(writer->path());
    if (writer->newerSchema()) return HouseholdText::tr("%1 was written by a newer release and can only be read. Nothing was written.").arg(writer->path());
    if (writer->readOnly()) return HouseholdText::tr("%1 is open for reading only. Nothing was written.").arg(writer->path());
    return {};
}

/// A verb never fails before it returns.
Ticket Household::Private::failLater(Ticket ticket, const QString& why)
{
    post([this, ticket, why] { Q_EMIT q_->failed(ticket, why); });
    return ticket;
}

void Household::Private::rememberRowsBefore(UnderWay& underWay) const
{
    const NamedRows rows{journal.view()->entries, underWay.edit};
    for (const auto& entry : underWay.edit.replaced)
        if (const auto* found = rows.find(entry.id)) underWay.step.changed.emplace_back(*found, entry);
    for (const auto id : underWay.edit.deleted)
        if (const auto* found = rows.find(id)) underWay.step.went.push_back(*found);
}

Ticket Household::Private::ask(const journal::Edit& edit, const QString& label, const QString& importName, std::shared_ptr<const store::LoggedJob> loggedJob,
                               std::optional<UndoStep::Setting> setting)
{
    const Ticket ticket = nextTicket();
    if (const QString why = whyNoVerbs(); !why.isEmpty()) return failLater(ticket, why);
    UnderWay underWay;
    underWay.ticket = ticket;
    underWay.edit = journal.prepared(edit);
    underWay.step.label = label;
    underWay.importName = importName;
    underWay.logged = std::move(loggedJob);
    underWay.setting = underWay.step.setting = std::move(setting);
    if (OpenJournal::changesNothing(underWay.edit) && !underWay.logged && !underWay.setting) {
        post([this, ticket] { Q_EMIT q_->recorded(ticket, {}); });
        return ticket;
    }
    if (OpenJournal::namesUnwritten(underWay.edit))
        return failLater(ticket, HouseholdText::tr("The entry is still being written. Nothing was changed; try again in a moment."));
    auto effect = journal.effectOf(underWay.edit);
    if (effect.refusal) return failLater(ticket, exchange::editRefusalText(effect, underWay.edit));
    rememberRowsBefore(underWay);
    std::vector<journal::EntryId> ids = underWay.edit.deleted;
    for (const auto* entries : {&underWay.edit.added, &underWay.edit.replaced})
        for (const auto& entry : *entries) ids.push_back(entry.id);
    journal.ask(static_cast<quint64>(ticket), underWay.edit, std::move(effect.after));
    const bool keeps = underWay.setting.has_value();
    if (keeps) keptSettings.ask(static_cast<quint64>(ticket), underWay.setting->name, underWay.setting->after);
    send(std::move(underWay));
    tellChanged(std::move(ids), false, keeps);
    return ticket;
}

Ticket Household::Private::askSetting(const QString& name, const QString& value, const QString& label)
{
    const Ticket ticket = nextTicket();
    if (const QString why = whyNoVerbs(); !why.isEmpty()) return failLater(ticket, why);
    if (keptSettings.stands(name, value)) {
        post([this, ticket] { Q_EMIT q_->recorded(ticket, {}); });
        return ticket;
    }
    UnderWay underWay;
    underWay.ticket = ticket;
    underWay.setting = UndoStep::Setting{name, keptSettings.value(name), value};
    underWay.step.label = label;
    underWay.step.setting = underWay.setting;
    keptSettings.ask(static_cast<quint64>(ticket), name, value);
    send(std::move(underWay));
    tellChanged({}, false, true);
    return ticket;
}

Ticket Household::Private::askPhoto(const store::PhotoJob& job, const QString& label)
{
    const Ticket ticket = nextTicket();
    if (const QString why = whyNoVerbs(); !why.isEmpty()) return failLater(ticket, why);
    UnderWay underWay;
    underWay.ticket = ticket;
    underWay.photo = job;
    underWay.step.label = label;
    underWay.step.photo = store::PhotoJob{job.what, {job.photo.id, job.photo.entry, {}, 0, 0, {}, {}}};
    send(std::move(underWay));
    return ticket;
}

/// Undo and redo. Called by the stack while it moves, so everything that moves it again comes later.
void Household::Private::askAgain(const UndoHistory::StepRef& step, Direction direction)
{
    UnderWay underWay;
    underWay.ticket = nextTicket();
    underWay.again = step;
    underWay.direction = direction;
    if (const QString why = whyNoVerbs(); !why.isEmpty()) {
        failLater(underWay.ticket, why);
        post([this] { undo.allFailed(); });
        return;
    }
    const bool undoing = direction == Direction::undo;
    if (step->setting) {
        underWay.setting = *step->setting;
        if (undoing) std::swap(underWay.setting->before, underWay.setting->after);
    }
    if (step->setting && step->came.empty()) {
        keptSettings.ask(static_cast<quint64>(underWay.ticket), underWay.setting->name, underWay.setting->after);
        send(std::move(underWay));
        tellChanged({}, false, true);
        return;
    }
    if (step->photo) {
        // What came goes and what went comes back, and the other way round.
        const bool came = step->photo->what == store::PhotoJob::What::add;
        underWay.photo = step->photo;
        underWay.photo->what = came == undoing ? store::PhotoJob::What::remove : store::PhotoJob::What::bringBack;
        send(std::move(underWay));
        return;
    }
    underWay.edit = undoing ? step->undoing() : step->redoing();
    if (!step->series.empty()) {
        store::LoggedJob job;
        (undoing ? job.remove : job.bringBack) = step->series;
        underWay.logged = std::make_shared<const store::LoggedJob>(std::move(job));
    }
    auto effect = journal.effectOf(underWay.edit);
    if (effect.refusal) {
        failLater(underWay.ticket, exchange::editRefusalText(effect, underWay.edit));
        post([this, step] { undo.drop(step); });
        return;
    }
    std::vector<journal::EntryId> ids = underWay.edit.deleted;
    for (const auto* entries : {&underWay.edit.added, &underWay.edit.replaced})
        for (const auto& entry : *entries) ids.push_back(entry.id);
    journal.ask(static_cast<quint64>(underWay.ticket), underWay.edit, std::move(effect.after));
    const bool keeps = underWay.setting.has_value();
    if (keeps) keptSettings.ask(static_cast<quint64>(underWay.ticket), underWay.setting->name, underWay.setting->after);
    send(std::move(underWay));
    tellChanged(std::move(ids), false, keeps);
}

void Household::Private::send(UnderWay underWay)
{
    underWay.series = series_;
    store::WriteJob job;
    job.series = series_;
    if (underWay.photo) {
        job.photo = underWay.photo;
    } else {
        if (underWay.setting) {
            job.setting = {underWay.setting->name, underWay.setting->after};
            if (underWay.again) job.settingStanding = underWay.setting->before; // what somebody chooses now counts; what is taken back does not write over others
        }
        if (underWay.entries()) {
            const UndoStep& step = underWay.again ? *underWay.again : underWay.step;
            const bool undoing = underWay.again && underWay.direction == Direction::undo;
            journal::Entries standing = undoing ? step.came : step.went; // those that leave
            for (const auto& [before, after] : step.changed) standing.push_back(undoing ? after : before);
            job.edit = underWay.edit;
            job.importName = underWay.importName;
            job.logged = underWay.logged;
            job.guard = guardOf(underWay.edit, standing);
        }
    }
    if (!underWay.again) {
        labelUnderWay_ = underWay.step.label;
        if (++ownStepsUnderWay_ == 1) Q_EMIT q_->stepUnderWayChanged();
    }
    writer->write(std::move(job), [this, underWay = std::move(underWay)](store::WriteAnswer answer) {
        post([this, underWay, answer = std::move(answer)] { answered(underWay, answer); });
    });
}

}
