#pragma once

#include "core/journal/entry.h"
#include "core/journal/replay.h"

#include <QList>
#include <QString>

#include <optional>

namespace tierloam::forms {

/// What a small form in place records. `addTray` and `bedding` both write a `bed`: a spare tray on top, or more into a batch.
enum class FormKind {
    feed, cover, water, routine, drain, flush, reading, check, weigh, count, trayWeight, rotate, loosen, lid, harvest,
    addTray, bedding, stock, remove, move, event, note, retire, setup,
    material ///< an own material, which belongs to no stack; only to edit its entry
};

/// What the menu and the form's title call it, e.g. "Feed"; translated.
QString formName(FormKind kind);
/// What one entry of it does, for undo and for tool tips: "Record a feeding"; translated.
QString formDeed(FormKind kind);
/// The form that edits an entry; a `bed` with a slot is `bedding`, one without `addTray`.
FormKind kindOf(const journal::Entry& entry);

/// What may be done to one tray as the stack stands, the daily things first; slot is 1-based and there.
QList<FormKind> kindsForTray(const journal::Standing& standing, int slot);
/// What may be done to the sump.
QList<FormKind> kindsForSump(const journal::Standing& standing);
/// What may be done to the whole stack; `otherStacks`: how many others stand that worms could be moved to.
QList<FormKind> kindsForStack(const journal::Standing& standing, int otherStacks);

}
