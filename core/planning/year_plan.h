#pragma once

#include "core/journal/entry.h"
#include "core/planning/harvest_days.h"
#include "core/reckoning/reckoning.h"
#include "core/reckoning/rotation_run.h"

#include <map>
#include <optional>
#include <stop_token>
#include <string>
#include <string_view>
#include <vector>

/// The coming year of all stacks: what comes by itself, which days are chosen for it, and what that costs.
namespace tierloam::planning {

struct YearWishes {
    Gathering gathering = Gathering::asTheyCome;
    unsigned weekdays = 0x7f;                             ///< bit 0 = Monday
    int mostWait = usualWait;                             ///< days, 1 to longestWait, that a harvest may wait for others where they are gathered
    std::vector<std::pair<Day, Day>> away;                ///< both included; for all stacks
    std::map<std::string, std::vector<std::pair<Day, Day>>> awayOf{}; ///< by stack, those of `away` left out: of the journal, kept nowhere else
    std::map<std::string, std::map<int, Day>> pinned;     ///< by stack and batch: the day chosen by hand
    bool operator==(const YearWishes&) const = default;
};

/// With the days ahead on which the journal says that nobody is there, for all stacks that are fed or for one (core/journal/absences.h).
YearWishes withAbsences(YearWishes wishes, const journal::Entries& entries, Day today);

struct StackYear {
    std::string stack;
    reckoning::RotationCourse natural;                    ///< each step on its turn
    reckoning::RotationCourse planned;                    ///< on the chosen days
    std::vector<bool> pinned;                             ///< by harvest of `planned`
    int delayDays = 0;                                    ///< of the harvests that come in both courses, together
    double castingsL = 0, castingsNaturalL = 0;           ///< medians summed over the year
};

struct YearPlan {
    Day from{};
    std::vector<StackYear> stacks;
    YearWishes wishes;                                    ///< under which it was made, days away included
    HarvestDays days;                                     ///< as chosen, over the harvests as they come around what is pinned
    HarvestDays apart;                                    ///< the same harvests if each came as soon as days of the week and absences let it
    int liftDays = 0;                                     ///< different days of the year on which something is lifted
    int delayDays = 0;                                    ///< of all stacks
    int members = 0;                                      ///< of each stack that were looked at
};

/// Whether a plan holds the stack: one that was dissolved, or that the reckoning holds without members or trays, is left out.
bool isPlanned(const reckoning::StackReckoning& stack);
/// How many members of each stack a plan of so many stacks follows.
int yearMembers(std::size_t stacks);

/// When the next tray is added or lifted, by all members: the one date that the due list, the clock and the year tell. With a tray spare, or with a bottom tray
/// that is ready, when the top one is filled; else when both hold, member by member. nullopt where it is due today, where half of the members have it already
/// though it is not called due, and while a tray is in the light. `moreTrays`: beside those that the stack owns.
std::optional<reckoning::Dates> nextTurn(const reckoning::StackReckoning& stack, int moreTrays = 0);

/// Half of the members have the next turn already, but it is not called due: the year waits until it is surer, which a look may settle at once.
bool turnHangs(const reckoning::StackReckoning& stack);

/// A stack's year as it comes: what the due list calls due today is today, and the next turn is nextTurn.
reckoning::RotationWish plainWish(const reckoning::StackReckoning& stack, int members);

/// Begins today: a step that the due list calls due today stands on today, if today is a welcome day; what it does not is from tomorrow on.
/// nullopt when it was stopped. Stacks that the reckoning holds without members (read from estimates) are left out.
/// Up to 4 stacks are followed with all members that there are, up to 24 with 128 each, more with 64; beyond 24 the cost is told by the days alone.
std::optional<YearPlan> planYear(const reckoning::Reckoning& reckoning, const YearWishes& wishes, int threads, std::stop_token stop = {});

/// Castings that a plan gives in all, L, beside what the harvests would give on their own turns: of one stack, or (an empty name) of all of them.
struct YearCastings {
    reckoning::Band planned, natural;
    reckoning::Band less;                                 ///< natural less planned, member by member
};
YearCastings yearCastings(const YearPlan& plan, std::string_view stack = {});

/// Worms that waiting costs, kg at the end of the year in all stacks: natural less planned, member by member; negative: waiting leaves more. Nought where
/// the cost is told by the days alone.
reckoning::Band colonyLost(const YearPlan& plan);

/// A wish from the garden.
struct GardenWish {
    double litres = 0;
    Day by{};
    bool everyMonth = false;                              ///< a little each month until then
};

struct WishAnswer {
    double chance = 0;                                    ///< that so much is taken by then (and, if wished, something in each month)
    reckoning::Band litres;                               ///< by then
    int monthsWithout = 0;                                ///< of the months until then of which at least half lie within
};

/// Members of different stacks are put together at random, since stacks know nothing of each other.
WishAnswer answerWish(const YearPlan& plan, const GardenWish& wish);

/// What would raise the chance: the same with more food (150 g a week and stack, as far as each bears it), with the bed 2 °C warmer, with one tray more in each
/// stack, with every harvest on its own turn instead of a chosen day, and with a month more of patience.
struct WishRaised {
    WishAnswer moreFood, warmer, moreTrays, onTheirTurns, later;
    double leastMoreFoodKg = 0.0, mostMoreFoodKg = 0.0; ///< a week, of the stack that bears least and of the one that bears most; 0: it is at its limit
    static constexpr int laterDays = 30;
};
std::optional<WishRaised> raiseWish(const reckoning::Reckoning& reckoning, const YearPlan& plan, const GardenWish& wish, std::stop_token stop = {});

}
