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
enum class Code {
    harvestReady, readyNoHurry, harvestSoon, harvestOverdue, addTray, tooEarly,
    feedDue, overfed, hungry, trayFull, lowCarbon,
    tooWet, tooDry, sumpFull, drainageLow, drainageHigh,
    heat, cold, dryingDone, dryingLong,
    staleRecord, lookNext, recordDisagrees
};
inline constexpr int codeCount = 23;

/// A usual feeding that seems to have been given and not written down: what an entry of it would hold.
struct UnwrittenFeeding {
    Day day{};
    double kg = 0;                   ///< fresh
    std::string material;            ///< empty: kitchen mix
    bool operator==(const UnwrittenFeeding&) const = default;
};

/// Whether a piece of advice says to give food, or to give none.
enum class Food { none, give, withhold };

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
    bool wormsMissing = false;       ///< it is about a stack in which none can be
    bool ofTheSetUp = false;         ///< it is about place and usual bed temperature of the set-up
    double litres = 0;               ///< of water to pour, where that is the act
    double kg = 0;                   ///< fresh, of food or paper to put in, where that is the act
    std::optional<reckoning::LookKind> look{}; ///< what is to be read, where a look is the act
    Food food = Food::none;
    double worth = 0;                ///< of what to look at next: days that it takes off a date's range for the minute of work; 0 of all else
    bool forTurn = false;            ///< of such a look: it decides whether the stack has its turn, which cannot wait
};

std::string_view codeName(Code code);
std::string_view severityName(Severity severity);

/// All advice for one stack, most pressing first; no two of it contradict each other. Pure.
std::vector<Advice> adviceFor(const reckoning::StackReckoning& stack);

/// Whether both could not be followed on one day: feed and do not feed, water and too wet.
bool contradict(const Advice& a, const Advice& b);

/// The rule behind a code in the field's terms, thresholds included, and what happens when nothing is done. Translated.
std::string ruleOf(Code code);
std::string ifLeft(Code code);

}
