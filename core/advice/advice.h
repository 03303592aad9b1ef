#pragma once

#include "core/reckoning/reckoning.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace tierloam::advice {

enum class Severity { hint, due, concern, urgent };

/// The codes of this release; their texts in the summary are fixed ("harvest-ready", …).
enum class Code { harvestReady, readyNoHurry, harvestSoon, harvestOverdue, addTray, feedDue, trayFull, sumpFull, recordDisagrees, lookNext };

/// A usual feeding that seems to have been given and not written down: what an entry of it would hold.
struct UnwrittenFeeding {
    Day day{};
    double kg = 0;                   ///< fresh
    std::string material;            ///< empty: kitchen mix
    bool operator==(const UnwrittenFeeding&) const = default;
};

/// One thing to do or know, of one stack. `text` says what to do, `because` why in numbers; both follow the locale.
struct Advice {
    std::string stack;
    Code code{};
    Severity severity{};
    std::optional<int> slot;
    Day on{};                        ///< when it is due; today at the earliest
    std::string text;
    std::string because;
    std::optional<std::int64_t> entry{};         ///< id of the entry that it is about
    std::optional<UnwrittenFeeding> unwritten{}; ///< the first of the feedings that it is about
};

std::string_view codeName(Code code);
std::string_view severityName(Severity severity);

/// All advice for one stack, most pressing first. Pure.
std::vector<Advice> adviceFor(const reckoning::StackReckoning& stack);

}
