#pragma once

#include "core/reckoning/plans.h"

#include <algorithm>
#include <optional>
#include <stop_token>

/// Answers to "what if" that are more than one changed plan.
namespace tierloam::planning {

/// How many worms can be given away so that within the time the stack processes as much as today again, or, where it would process less by then
/// with all of them, as much as that. Where food decides what is processed, a tenth of the colony would do that too; so its worms have to be back to nine
/// tenths as well, and the usual food must not choke the bed meanwhile (air below 0.7 in at most 5 % more of the members than with all of them).
struct GiveAway {
    double share = 0;                ///< of the colony; 0: none
    double kg = 0;                   ///< of the median colony
    double processingNow = 0, processingUsual = 0, processingThen = 0; ///< g dry matter a day, medians; usual, then: at the end, without and with that share gone
    double colonyNow = 0, colonyUsual = 0, colonyThen = 0; ///< kg, medians of the same
    double goal() const { return std::min(processingNow, asGoodAs * processingUsual); }
    double colonyGoal() const { return asManyAs * std::min(colonyNow, colonyUsual); }
    static constexpr double asGoodAs = 0.98; ///< nobody could tell it apart
    static constexpr double asManyAs = 0.9;
};
/// `days` is rounded up to whole weeks, at most a year.
std::optional<GiveAway> mostToGiveAway(const reckoning::StackReckoning& stack, int days, int threads, std::stop_token stop = {});

/// How a stack stands on the day of the return.
struct OnReturn {
    double dryChance = 0;            ///< water below 0.65 of what the tray being fed holds
    double hungryChance = 0;         ///< ration below 1
};
/// What to leave for a stack while nobody is there, and what happens meanwhile.
struct Absence {
    double feedKg = 0;               ///< on the last day before, within the limit of the feeding plan; 0: none fits
    double waterL = 0;               ///< into the tray that is fed, up to 0.95 of what it holds
    bool drainBefore = false;        ///< the sump would be full before the return with at least 0.2
    OnReturn left, usual;            ///< with that left and nobody there; with somebody there as usual
};
/// The changed plan of such an absence: what is left the day before, then nobody.
reckoning::ChangedPlan planOf(const Absence& absence, Day from, Day to);
std::optional<Absence> prepareAbsence(const reckoning::StackReckoning& stack, Day from, Day to, int threads, std::stop_token stop = {});

/// The entry of a past in which the bottom tray was taken whole on that day: with all that lay in it by the estimate of the day, so that the amount itself
/// is no news to the filter. nullopt on a day that is not past, or when nothing stood there yet.
std::optional<journal::Entry> harvestInThePast(const reckoning::StackReckoning& stack, Day day);

/// The shortest way of a stack that has fallen behind: which of harvest, a new tray and more food bring its processing back soonest.
struct WayBack {
    bool harvest = false;            ///< tomorrow, of the bottom tray
    bool newTray = false;            ///< tomorrow, with the bedding of the last one
    std::vector<reckoning::ChangedPlan::FeedFrom> feed; ///< a week, from tomorrow on; more than one: as the colony grows
    double wormsKg = 0;              ///< put in today, where none of the other ways suffices; the least of some amounts that do
    static constexpr double mostWormsKg = 1.0; ///< that are tried
    double goal = 0;                 ///< g dry matter a day: nine tenths of the best week of the last year
    std::optional<Day> on;           ///< when the median reaches it; nullopt: not within half a year by any of them, nor with worms
    std::optional<Day> asItIs;       ///< when it would by itself
};
/// The changed plan of that way, but for its worms.
reckoning::ChangedPlan planOf(const WayBack& way, Day tomorrow);
/// nullopt also when the stack is not behind: it processes at least 0.7 of its best.
std::optional<WayBack> shortestWayBack(const reckoning::StackReckoning& stack, int threads, std::stop_token stop = {});

}
