#pragma once

#include "core/advice/advice.h"
#include "core/advice/put_off.h"
#include "core/journal/replay.h"
#include "core/materials/table.h"

#include <vector>

/// What was advised from day to day and what came of it: the rules of today, asked again on the estimates of each of the last 90 days and on the
/// journal as it was by then, what those days foresaw included (what looks would tell, by the week). Nothing of it is stored. Left out: turns and harvests,
/// which the reckoning notes itself, feedings that seem not to have been written down, and what asks for nothing.
namespace tierloam::advice {

struct DiaryLine {
    Advice advice;                   ///< as it was said on the first day
    Day from{};
    std::optional<Day> to;           ///< first day without it; nullopt: still said
    std::optional<Day> doneOn;       ///< of the first entry from then on, while it was said, that does what was advised; of an odd value the look that settled it
};

/// Of one stack, in order of their first days. `history` is that stack's; `kept` tells which notes say that something was done.
std::vector<DiaryLine> diaryOf(const reckoning::StackReckoning& stack, const journal::Entries& entries, const journal::StackHistory& history, const materials::Table& materials,
                               const std::vector<PutOff>& kept = {});

}
