#pragma once

#include "core/journal/replay.h"

#include <QString>

namespace tierloam::forms {

/// "tray 3, slot 2, batch 5 of 12 March 2031".
QString trayText(const journal::StackHistory& history, int slot, int batch);
/// What one replayed step does, as a sentence: which tray it falls to, which batch it begins or ends. `step` is one of `history`.
QString stepText(const journal::StackHistory& history, const journal::Step& step, const journal::Entry& entry);

}
