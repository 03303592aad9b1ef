#include "ui/window/desk.h"

#include "core/store/setting_names.h"
#include "ui/common/formats.h"
#include "ui/forms/action_form.h"
#include "ui/forms/cautions.h"
#include "ui/forms/form_kind.h"
#include "ui/journal/journal_page.h"
#include "ui/shelf/form_host.h"
#include "ui/shelf/shelf_page.h"
#include "ui/window/due_acts.h"
#include "ui/window/notices.h"

#include <algorithm>

/// What a line of the due list does: written down at one click, or the form that asks for what is not known.
namespace tierloam::window {

namespace {

/// The form that takes what is read.
forms::FormKind lookForm(std::optional<reckoning::LookKind> look)
{
    using reckoning::LookKind;
    switch (look.value_or(LookKind::bits)) {
    case LookKind::weigh: return forms::FormKind::weigh;
    case LookKind::count: return forms::FormKind::count;
    case LookKind::trayWeight: return forms::FormKind::trayWeight;
    case LookKind::moisture:
    case LookKind::squeeze:
    case LookKind::sumpLevel:
    case LookKind::bedTemperature: return forms::FormKind::reading;
    case LookKind::drain: return forms::FormKind::drain;
    default: return forms::FormKind::check;
    }
}

}

/// One click records it where nothing has to be asked; undo takes it back.
void Desk::act(const advice::Advice& advice)
{
    const auto made = dueAct(household_, advice);
    if (!made) {
        openFormFor(advice);
        return;
    }
    write(*made);
}

void Desk::write(const DueAct& act)
{
    journal::Edit edit;
    edit.added = act.entries;
    if (const QString refusal = household_.refusalOf(edit); !refusal.isEmpty()) {
        lent_.notices.show(Notices::Kind::failure, tr("%1: not written down. %2").arg(act.label, refusal));
        return;
    }
    shelf_->showDay(household_.today()); // what is due is done today: it is not to be read as done on the past day that is shown
    if (act.putOff) household_.recordAndKeep(act.entries, store::settingPutOff, *act.putOff, act.label);
    else household_.recordAll(act.entries, act.label);
    tellCaution(std::ranges::any_of(act.entries, [](const journal::Entry& each) { return std::holds_alternative<journal::Drain>(each.action); }));
}

/// A form says what to beware of while it is filled in; what was recorded at one click has no form. Stands until the next act.
void Desk::tellCaution(bool leachate)
{
    const QString key = QStringLiteral("caution");
    lent_.notices.settle(key);
    if (leachate) lent_.notices.show(Notices::Kind::notice, tr("Caution: %1").arg(forms::leachateCaution().text), key);
}

void Desk::openFormFor(const advice::Advice& advice)
{
    const QString stack = QString::fromStdString(advice.stack);
    const auto* history = household_.journal()->replay.stack(advice.stack);
    const auto* standing = history ? history->on(household_.today()) : nullptr;
    const bool drying = standing && standing->drying;
    const auto look = lookOf(advice);
    shelf_->showDay(household_.today()); // which a form would take its day from
    const auto open = [&](forms::FormKind kind, std::optional<int> slot) {
        showPage(Page::shelf);
        if (!shelf_->openForm(stack, kind, slot)) return;
        const auto field = advice.ofTheSetUp ? std::optional{reckoning::LookKind::bedTemperature} : look;
        if (auto* form = qobject_cast<forms::ActionForm*>(shelf_->host()->content()); form && field) form->askFor(*field);
    };
    using Code = advice::Code;
    using forms::FormKind;
    if (advice.look) {
        open(lookForm(advice.look), advice.slot);
        return;
    }
    switch (advice.code) {
    case Code::feedDue:
    case Code::hungry: open(FormKind::feed, std::nullopt); return;
    case Code::tooEarly: open(drying ? FormKind::cover : FormKind::feed, advice.slot); return;
    case Code::lowCarbon:
    case Code::tooWet: open(FormKind::cover, advice.slot); return;
    case Code::tooDry: open(FormKind::water, advice.slot); return;
    case Code::sumpFull:
    case Code::drainageLow: open(flushesTheSump(household_, advice.stack) ? FormKind::flush : FormKind::drain, std::nullopt); return;
    case Code::drainageHigh: open(FormKind::water, std::nullopt); return;
    case Code::heat:
    case Code::cold: open(FormKind::reading, std::nullopt); return;
    case Code::dryingDone:
    case Code::dryingLong: open(FormKind::harvest, std::nullopt); return;
    case Code::overfed:
    case Code::staleRecord: open(FormKind::check, advice.slot ? advice.slot : standing ? standing->feedSlot() : std::nullopt); return;
    case Code::recordDisagrees:
        if (advice.wormsMissing) open(FormKind::stock, std::nullopt);
        else if (advice.ofTheSetUp) open(FormKind::setup, std::nullopt);
        else if (advice.unwritten) writeUnwritten(stack, *advice.unwritten);
        else if (advice.entry) checkEntry(journal::EntryId{*advice.entry});
        return;
    case Code::addTray: open(FormKind::addTray, std::nullopt); return;
    case Code::lookNext: open(lookForm(advice.look), advice.slot); return;
    case Code::harvestSoon:
    case Code::trayFull: open(FormKind::check, advice.slot); return;
    case Code::harvestReady:
    case Code::readyNoHurry:
    case Code::harvestOverdue:
        if (advice.slot.value_or(1) > 1) open(FormKind::harvest, advice.slot);
        else open(drying ? FormKind::harvest : FormKind::rotate, std::nullopt);
        return;
    }
}

/// With the first day and the usual amount filled in: one more click records it.
void Desk::writeUnwritten(const QString& stack, const advice::UnwrittenFeeding& feeding)
{
    showPage(Page::shelf);
    shelf_->openFeeding(stack, feeding.day, journal::Feed{ui::massAmount(feeding.kg), feeding.material, std::nullopt});
}

void Desk::checkEntry(journal::EntryId id)
{
    showPage(Page::journal);
    journal_->choose(id);
    if (journal_->chosen() == std::vector{id}) journal_->editChosen(); // it may have been deleted since the estimates were made
}

}
