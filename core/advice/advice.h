#pragma once

#include "core/reckoning/reckoning.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace tierloam::advice {

enum class Severity { hint, due, concern, urgent };

/// The codes of this release; their texts in the summary are fixed ("harvest-ready", …).
enum class Code { harvestReady, readyNoHurry, harvestSoon, harvestOverdue, addTray, feedDue, trayFull, sumpFull };

/// One thing to do or know, of one stack. `text` says what to do, `because` why in numbers; both follow the locale.
struct Advice {
    std::string stack;
    Code code{};
    Severity severity{};
    std::optional<int> slot;
    Day on{};                        ///< when it is due; today at the earliest
    std::string text;
    std::string because;
};

std::string_view codeName(Code code);
std::string_view severityName(Severity severity);

/// All advice for one stack, most pressing first. Pure.
std::vector<Advice> adviceFor(const reckoning::StackReckoning& stack);

}
