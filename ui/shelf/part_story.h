#pragma once

#include "core/journal/replay.h"
#include "core/reckoning/reckoning.h"
#include "ui/drawing/strip.h"
#include "ui/forms/cautions.h"
#include "ui/shelf/shelf_model.h"

#include <QList>
#include <QStringList>

#include <optional>

namespace tierloam::shelf {

/// What the story of a part is made from, as the stack stands on the day shown.
struct StoryInputs {
    const household::JournalView& journal;
    const journal::StackHistory& history;
    const journal::Standing& standing;
    const reckoning::StackReckoning* reckoning = nullptr; ///< nullptr: no estimates yet
    Day today{}, shown{};
};

/// What opens with a tray or the sump beside its facts. All charts stand on one time axis; on today's shelf it goes on into the forecast.
/// A tray: food put in week by week, castings, feed-to-cast on a log axis with the line at which it is ready, from its bedding on.
/// The sump: its level with the line at which it is full, and what was drained beside what was expected, over half a year.
struct PartStory {
    drawing::TimeAxis axis;
    drawing::Bars bars;
    std::vector<drawing::Strip> strips;
    QString chartsText;            ///< the charts in words
    Facts facts;                   ///< what the journal adds to those of the part
    QList<forms::Caution> cautions;
    QStringList reasons;           ///< why an act would be too early, or cannot be done
};

PartStory trayStory(const StoryInputs& inputs, int slot);
PartStory sumpStory(const StoryInputs& inputs);
/// The whole stack has no charts of its own beside those on the shelf.
PartStory stackStory(const StoryInputs& inputs);

/// The axis of a feed-to-cast chart: from fresh bedding down to castings that have settled.
inline constexpr double ratioTop = 10, ratioBottom = 0.01, readyRatio = 0.10;

}
