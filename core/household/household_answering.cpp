#include "core/household/household_private.h"

#include "core/household/text.h"

namespace tierloam::household {

void Household::Private::post(std::function<void()> task)
{
    const std::lock_guard lock{mailMutex_};
    mail_.push_back(std::move(task));
    if (mailAnnounced_) return;
    mailAnnounced_ = true;
    // A connection made beforehand: the call brings nothing along that this thread has written and the other reads without a lock.
    Q_EMIT q_->mailCame(QPrivateSignal{});
}

void Household::Private::takeMail()
{
    for (;;) {
        std::function<void()> task;
        {
            const std::lock_guard lock{mailMutex_};
            mailAnnounced_ = false;
            if (mail_.empty()) return;
            task = std::move(mail_.front());
            mail_.pop_front();
        }
        task();
    }
}

void Household::Private::answered(const UnderWay& underWay, const store::WriteAnswer& answer)
{
    const bool last = !underWay.again && --ownStepsUnderWay_ == 0;
    if (answer.failure) gaveUp(underWay, *answer.failure);
    else succeeded(underWay, answer);
    if (last && !stepUnderWay()) Q_EMIT q_->stepUnderWayChanged();
}

void Household::Private::succeeded(const UnderWay& underWay, const store::WriteAnswer& answer)
{
    std::vector<journal::EntryId> ids = answer.ids;
    ids.insert(ids.end(), underWay.edit.deleted.begin(), underWay.edit.deleted.end());
    if (underWay.setting) keptSettings.settle(static_cast<quint64>(underWay.ticket));
    if (underWay.entries()) journal.settle(static_cast<quint64>(underWay.ticket), answer.stored);
    const bool loggedDiffers = answer.logged && *answer.logged != *logged;
    if (loggedDiffers) logged = std::make_shared<const store::LoggedDays>(*answer.logged);
    if (underWay.again) {
        undo.done(underWay.again, underWay.direction);
    } else if (!underWay.entries() && underWay.setting && underWay.setting->before == underWay.setting->after) {
        // Asked for once more while it was being written: there is nothing of it to undo.
    } else if (answer.stored.size() == answer.ids.size()) {
        UndoStep step = underWay.step;
        if (step.photo) step.photo->photo.id = answer.photo;
        step.series = answer.series;
        const auto changedFrom = answer.stored.begin() + static_cast<std::ptrdiff_t>(underWay.edit.added.size());
        step.came.assign(answer.stored.begin(), changedFrom);
        for (std::size_t i = 0; i < step.changed.size(); ++i) step.changed[i].second = *(changedFrom + static_cast<std::ptrdiff_t>(i));
        undo.push(std::move(step));
    } else {
        lookSoon(); // written, but not read back: the file says what stands, and no step is made up
    }
    reckonIfNeeded();
    Q_EMIT q_->recorded(underWay.ticket, answer.ids);
    if (underWay.photo) {
        tellPhotos(underWay.photo->photo.entry);
        return;
    }
    tellChanged(std::move(ids), false, underWay.setting.has_value(), loggedDiffers);
}

void Household::Private::gaveUp(const UnderWay& underWay, const store::WriteFailure& failure)
{
    if (failure.gone) tellMoved(true);
    if (underWay.setting) keptSettings.giveUp(static_cast<quint64>(underWay.ticket));
    if (underWay.entries()) journal.giveUp(static_cast<quint64>(underWay.ticket));
    if (underWay.series == series_) {
        // Heard of for the first time: the rest of this series will fail too, and what is asked from now on is a new one.
        ++series_;
        undo.allFailed();
    }
    if (underWay.again && failure.refused) undo.drop(underWay.again);
    Q_EMIT q_->failed(underWay.ticket, failure.why);
    std::vector<journal::EntryId> ids = underWay.edit.deleted;
    for (const auto* entries : {&underWay.edit.added, &underWay.edit.replaced})
        for (const auto& entry : *entries) ids.push_back(entry.id);
    tellChanged(std::move(ids), false, underWay.setting.has_value());
}

void Household::Private::tellPhotos(journal::EntryId entry)
{
    Changes changes;
    changes.ids = {entry};
    changes.photos = true;
    Q_EMIT q_->changed(changes);
}

void Household::Private::lookSoon()
{
    // The one under way may have looked already: then another follows it.
    lookAgain_ = lookUnderWay_;
    if (lookUnderWay_) return;
    lookUnderWay_ = true;
    writer->look([this](store::Look look) {
        post([this, look = std::move(look)]() mutable { looked(std::move(look)); });
    });
}

void Household::Private::looked(store::Look look)
{
    lookUnderWay_ = false;
    if (lookAgain_) lookSoon();
    tellMoved(look.movedAway);
    if (!look.foreign) return;
    const auto differing = journal.replaceRecorded(std::move(look.foreign->entries), std::move(look.foreign->ends));
    const auto settingsDiffering = keptSettings.replaceRecorded(std::move(look.foreign->settings));
    const bool loggedDiffers = *logged != look.foreign->logged;
    if (loggedDiffers) logged = std::make_shared<const store::LoggedDays>(std::move(look.foreign->logged));
    if (differing.empty() && settingsDiffering.empty() && !loggedDiffers) return;
    const int dropped = undo.dropTouching(differing, settingsDiffering);
    reckonIfNeeded();
    tellChanged({differing.begin(), differing.end()}, true, !settingsDiffering.empty(), loggedDiffers);
    if (dropped > 0)
        Q_EMIT q_->notice(HouseholdText::tr("Another program changed this household. %n step(s) that could be undone touched what it changed and can no longer be undone.",
                                            nullptr, dropped));
}

void Household::Private::tellMoved(bool movedAway)
{
    if (movedAway == movedAway_) return;
    movedAway_ = movedAway;
    Q_EMIT q_->notice(movedAway ? HouseholdText::tr("%1 was moved or removed. Nothing more is written until it is back; what is in a form stays there.").arg(writer->path())
                                : HouseholdText::tr("%1 is back. It takes entries again.").arg(writer->path()));
}

void Household::Private::tellChanged(std::vector<journal::EntryId> ids, bool fromOutside, bool settingsChanged, bool loggedChanged)
{
    Changes changes;
    changes.ids = std::move(ids);
    changes.fromOutside = fromOutside;
    changes.settings = settingsChanged;
    changes.logged = loggedChanged;
    Q_EMIT q_->changed(changes);
}

}
