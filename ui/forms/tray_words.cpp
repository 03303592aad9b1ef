#include "ui/forms/tray_words.h"

#include "ui/common/dates.h"

#include <QCoreApplication>

namespace tierloam::forms {

namespace {

struct TrayWords {
    Q_DECLARE_TR_FUNCTIONS(TrayWords)
};

/// How the stack stood before the step.
const journal::Standing* before(const journal::StackHistory& history, const journal::Step& step)
{
    const std::ptrdiff_t at = &step - history.steps.data();
    return at > 0 ? &history.steps[static_cast<std::size_t>(at) - 1].after : nullptr;
}

}

QString trayText(const journal::StackHistory& history, int slot, int batch)
{
    const journal::Batch& there = history.batch(batch);
    return TrayWords::tr("tray %1 in slot %2, batch %3 bedded on %4").arg(there.tray).arg(slot).arg(batch).arg(ui::fullDay(there.bedded));
}

QString stepText(const journal::StackHistory& history, const journal::Step& step, const journal::Entry& entry)
{
    const journal::Standing* stood = before(history, step);
    if (std::holds_alternative<journal::Rotate>(entry.action) && step.batch) {
        const int tray = history.batch(*step.batch).tray;
        return TrayWords::tr("Tray %1 goes from the bottom to slot %2 and dries in the light, uncovered; the others move down.").arg(tray).arg(step.after.trays());
    }
    if (const auto* harvest = std::get_if<journal::Harvest>(&entry.action); harvest && harvest->whole() && step.slot && step.batch) {
        return TrayWords::tr("Ends batch %1: tray %2 leaves slot %3 for storage.").arg(*step.batch).arg(history.batch(*step.batch).tray).arg(*step.slot);
    }
    const bool begins = std::holds_alternative<journal::Bed>(entry.action) && step.batch && (!stood || step.after.trays() > stood->trays());
    if (begins) {
        return TrayWords::tr("Begins batch %1: tray %2 goes on top, into slot %3.").arg(*step.batch).arg(history.batch(*step.batch).tray).arg(step.after.trays());
    }
    if (const auto* move = std::get_if<journal::Move>(&entry.action); move && !step.incoming) {
        return TrayWords::tr("Worms leave the whole stack and go into the fed tray of %1.").arg(QString::fromStdString(move->to));
    }
    if (std::holds_alternative<journal::Retire>(entry.action)) return TrayWords::tr("The stack ends with that day. Its record stays; its name cannot be used again.");
    QString words;
    if (step.slot && step.batch) words = TrayWords::tr("Falls to %1.").arg(trayText(history, *step.slot, *step.batch));
    const bool endsDrying = stood && stood->drying && !step.after.drying && step.after.trays() == stood->trays();
    if (endsDrying) words += QLatin1Char(' ') + TrayWords::tr("It ends the light-drying of that tray.");
    return words;
}

}
