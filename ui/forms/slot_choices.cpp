#include "ui/forms/slot_choices.h"

#include "ui/common/choice_field.h"
#include "ui/common/dates.h"
#include "ui/common/field_edit.h"

#include <QCoreApplication>

namespace tierloam::forms {

namespace {

struct SlotChoices {
    Q_DECLARE_TR_FUNCTIONS(SlotChoices)
};

}

SlotMeans meaningOfEmptySlot(FormKind kind)
{
    switch (kind) {
    case FormKind::feed:
    case FormKind::cover:
    case FormKind::water:
    case FormKind::stock:
    case FormKind::check: return SlotMeans::fedTray;
    case FormKind::reading:
    case FormKind::weigh:
    case FormKind::count:
    case FormKind::remove: return SlotMeans::wholeStack;
    case FormKind::trayWeight: return SlotMeans::topTray;
    case FormKind::harvest: return SlotMeans::dryingTray;
    case FormKind::bedding: return SlotMeans::fedTray; // never left empty: that would put a tray on top
    default: return SlotMeans::nothing;
    }
}

void fillSlots(ui::ChoiceField& slots, FormKind kind, const FormContext& context, Day day, std::optional<int> chosen)
{
    const journal::Standing* standing = context.standing(day);
    slots.clearChoices();
    const SlotMeans empty = meaningOfEmptySlot(kind);
    const std::optional<int> fed = standing ? standing->feedSlot() : std::nullopt;
    if (empty == SlotMeans::fedTray && kind != FormKind::bedding)
        slots.addChoice(fed ? SlotChoices::tr("the one being fed (slot %1)").arg(*fed) : SlotChoices::tr("the one being fed"));
    if (empty == SlotMeans::wholeStack || empty == SlotMeans::nothing) slots.addChoice(SlotChoices::tr("the whole stack"));
    if (empty == SlotMeans::topTray) slots.addChoice(SlotChoices::tr("the top one"));
    if (empty == SlotMeans::dryingTray && standing && standing->drying) slots.addChoice(SlotChoices::tr("the drying one (slot %1)").arg(standing->trays()));
    for (int i = standing ? standing->trays() : 0; i >= 1; --i) {
        const journal::Batch& batch = context.history()->batch(standing->batchIn(i));
        slots.addChoice(SlotChoices::tr("slot %1: tray %2, %3").arg(i).arg(batch.tray).arg(ui::daysShort(daysBetween(batch.bedded, day))), i);
    }
    if (chosen && !(standing && standing->has(*chosen))) slots.addChoice(SlotChoices::tr("slot %1, which is not there that day").arg(*chosen), *chosen);
    if (chosen) slots.setValue(*chosen);
    else if (kind == FormKind::bedding && fed) slots.setValue(*fed);
    else slots.list()->setCurrentIndex(0);
    // A whole harvest of a tray that was never dried must say which: the bottom one is the one that is meant.
    if (kind == FormKind::harvest && !chosen && standing && !standing->drying) slots.setValue(1);
}

}
