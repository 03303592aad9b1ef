#pragma once

#include <optional>
#include <vector>

/// On which days the harvests of a year are best put, all stacks together. Days are counted from today; knows no worms.
namespace tierloam::planning {

/// Days on which nobody is there, both included.
struct DaysAway { int from, to; };

/// The turns of one stack as they come by themselves: ascending days on which the bottom tray is to be lifted. A harvest put off by a day
/// puts off all that follow it by a day, since the tray laid after it fills so much later.
struct StackTurns {
    std::vector<int> natural;
    std::vector<std::optional<int>> pinned;  ///< by harvest; a day chosen by hand, whatever it costs. Shorter than `natural`: none
    std::vector<DaysAway> away{};             ///< for this stack, beside those of the household
};

enum class Gathering {
    asTheyCome,
    spread,      ///< as few as can be in the same stretch of the year
    gathered     ///< on as few days as can be
};

/// Where harvests are gathered: how long one may wait for others, days, unless somebody says otherwise, and at most. Judgement.
inline constexpr int usualWait = 14, longestWait = 28;
/// What a day of lifting saved is worth then, in days of delay: two whole waits, since a harvest that waits holds up those of its stack that follow.
constexpr double tripFor(int mostWait) { return 2.0 * mostWait; }

struct HarvestWishes {
    Gathering gathering = Gathering::asTheyCome;
    unsigned weekdays = 0x7f;                ///< bit d: the day d days after a Monday is welcome; none set counts as all
    int todaysWeekday = 0;                   ///< 0 = Monday
    std::vector<DaysAway> away;               ///< for all stacks
    // Light-drying takes 2 to 7 days: common practice, no source. The castings are taken on a welcome day too, 6 days after the lift or as soon after
    // as can be, at most 10; where none is, before.
    int daysDrying = 6, leastDrying = 2, mostDrying = 10;
    int mostWait = longestWait;              ///< days that a harvest is put off by for the sake of the others
    double crowd = 21.0;                     ///< what each pair in the same stretch costs, in days of delay
    double trip = tripFor(longestWait);      ///< what each day with harvests costs, in days of delay
    int horizon = 365;
};

struct HarvestDays {
    std::vector<std::vector<int>> lift, take; ///< by stack and harvest
    double cost = 0;                         ///< days of delay, and what crowds or trips cost
    int delay = 0;                           ///< days of delay of all harvests together
    int days = 0;                            ///< different days on which something is lifted
    int crowdedPairs = 0;                    ///< in the same stretch
    bool exact = false;                      ///< proved to be the best
};

/// Length of a stretch for `spread`: a year over the number of harvests, 7 to 14 days.
int stretchOf(const std::vector<StackTurns>& stacks, const HarvestWishes& wishes);

/// What a choice of days costs; nullopt when it breaks a rule (not welcome, away, too early or too late). For tests and for pinned days.
std::optional<HarvestDays> priced(const std::vector<StackTurns>& stacks, const HarvestWishes& wishes, const std::vector<std::vector<int>>& lift);

/// The best days. For up to four stacks up to `mostStates` joint states are searched, which proves the answer for most households; beyond that the
/// best found by putting one stack after another in its best place, from several beginnings.
HarvestDays chooseDays(const std::vector<StackTurns>& stacks, const HarvestWishes& wishes, int mostStates = 100000);

/// How many days lie between the two harvests of different stacks that come nearest to each other without meeting; nullopt where there are none.
std::optional<int> nearestApart(const HarvestDays& days);

/// When the castings of a tray lifted on that day are taken; nullopt when no day that is welcome suits.
std::optional<int> takingAfter(int lift, const HarvestWishes& wishes);
/// The same of a tray that is in the light already, to be taken on that day or after: if no day suits, the first on which somebody is there.
int takingOfBegun(int lift, int wanted, const HarvestWishes& wishes);

/// The days that may be chosen for a harvest that falls due on that day: welcome ones within the wait, else the first welcome one after it.
std::vector<int> daysFor(int due, const HarvestWishes& wishes);

}
