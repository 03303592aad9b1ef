#pragma once

#include "core/reckoning/plans.h"

#include <optional>
#include <stop_token>

/// Answers to "what if" that are more than one changed plan.
namespace tierloam::planning {

/// How many worms can be given away so that the stack processes as much as today again within the time.
struct GiveAway {
    double share = 0;                ///< of the colony; 0: it is not back by then even as it is
    double kg = 0;                   ///< of the median colony
    double processingNow = 0, processingThen = 0; ///< g dry matter a day, medians; then: with that share gone
};
/// `days` is rounded up to whole weeks, at most a year.
std::optional<GiveAway> mostToGiveAway(const reckoning::StackReckoning& stack, int days, int threads, std::stop_token stop = {});

/// What to leave for a stack while nobody is there, and what happens meanwhile.
struct Absence {
    double feedKg = 0;               ///< on the last day before, within the limit of the feeding plan; 0: none fits
    double waterL = 0;               ///< into the tray that is fed, up to 0.95 of what it holds
    bool drainBefore = false;        ///< the sump would be full before the return with at least 0.2
    double dryChance = 0;            ///< water below 0.65 of what the tray being fed holds, on the return
    double hungryChance = 0;         ///< ration below 1 on the return
    double colonyChange = 0;         ///< kg, median of the members, 60 days from today
};
std::optional<Absence> prepareAbsence(const reckoning::StackReckoning& stack, Day from, Day to, int threads, std::stop_token stop = {});

/// The shortest way of a stack that has fallen behind: which of harvest, a new tray and more food bring its processing back soonest.
struct WayBack {
    bool harvest = false;            ///< tomorrow, of the bottom tray
    bool newTray = false;            ///< tomorrow, with the bedding of the last one
    double feedKgPerWeek = 0;
    double goal = 0;                 ///< g dry matter a day: nine tenths of the best week of the last year
    std::optional<Day> on;           ///< when the median reaches it; nullopt: not within half a year by any of them
    std::optional<Day> asItIs;       ///< when it would by itself
};
/// nullopt also when the stack is not behind: it processes at least 0.7 of its best.
std::optional<WayBack> shortestWayBack(const reckoning::StackReckoning& stack, int threads, std::stop_token stop = {});

}
