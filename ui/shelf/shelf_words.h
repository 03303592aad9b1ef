#pragma once

#include "core/journal/replay.h"
#include "ui/shelf/shelf_model.h"

/// Sentences of the shelf: labels beside trays, what a part is and says, what a click writes down.
namespace tierloam::shelf {

/// "working", "nearly ready", "ready", "overdue", "drying".
QString stateWord(reckoning::TrayState state);

/// One tray as it stands on a day: what the journal knows, and the estimate when there is one.
struct TrayFacts {
    int slot = 1, slots = 1;
    int tray = 1, batch = 1;
    Day bedded{};
    int ageDays = 0;
    bool drying = false;
    int dryingDays = 0;
    bool fed = false;                ///< the tray that food goes into
    double areaM2 = 0.16;
    const reckoning::TrayEstimate* estimate = nullptr;
    Day today{};
};

/// Lines under the age, beside the tray: ratio and a word.
QStringList trayLabels(const TrayFacts& tray);
Part trayPart(const TrayFacts& tray);

struct SumpFacts {
    double capacityL = 4;
    journal::Spigot spigot = journal::Spigot::open;
    const reckoning::StackEstimate* estimate = nullptr;
    std::optional<reckoning::Dates> fullOn;
    Day today{};
};

QString sumpLabel(const SumpFacts& sump);
QStringList sumpLabels(const SumpFacts& sump);
Part sumpPart(const SumpFacts& sump);

/// "colony 1.1 kg (0.9–1.4) · 21 °C", in the unit of the largest colony beside it; "estimating…" without an estimate.
QString colonyLine(const reckoning::StackEstimate* estimate, double largestKg);
/// "fed 450 g today · drained 27 Apr"; empty when neither was ever done up to that day.
QString lastLine(const journal::Entries& entries, const journal::StackHistory& history, Day shown, Day today);

}
