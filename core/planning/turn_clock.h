#pragma once

#include "core/reckoning/outlook.h"
#include "core/reckoning/reckoning.h"

#include <optional>
#include <stop_token>
#include <vector>

namespace tierloam::planning {

/// What holds a turn back.
enum class Limit { none, cold, food, worms, bedding, water };

/// What one change would gain: the same members with the same random numbers, once with it and once without.
struct Lever {
    Limit of{};
    double amount = 0;               ///< K warmer, kg fresh a week more, kg of worms more, L of water; bedding: half of what is not softened yet
    reckoning::Band daysGained;      ///< member by member; a turn beyond a year counts as one day after it
};

/// When the next turn of a stack comes, and what would bring it forward.
struct TurnClock {
    reckoning::Dates turn;           ///< p10, middle and p90: the top tray filled and, with no tray spare, the bottom one ready
    bool has = false;                ///< half of the members have it today
    std::optional<Day> takenOn;      ///< a tray is in the light: its castings are taken on that day, and `turn` is that of the stack as it stands then
    std::vector<Lever> levers;       ///< most days first
    Limit limit = Limit::none;       ///< of the lever that gains most, when that is at least 3 days
};

inline constexpr double leverFeedKg = 0.15, leverWarmthK = 2.0, leverWormsKg = 0.2;

/// nullopt when it was stopped or the reckoning holds no members. The date is that of the stack's year (rotation_run.h) with as many members as the
/// plan of a household of so many stacks follows, so that lanes and clock say the same. For the gains 128 members are followed for a year, once for
/// each lever; while a tray is in the light by the stack's year too, and they are those of the day on which half of them have their turn.
std::optional<TurnClock> turnClock(const reckoning::StackReckoning& stack, int threads, std::stop_token stop = {}, std::size_t stacks = 1);

}
