#pragma once

#include "core/reckoning/outlook.h"
#include "core/reckoning/reckon.h"

/// Questions about what would be: the same members with the same random numbers, so that what differs is the plan alone.
namespace tierloam::reckoning {

struct PlanFigures {
    Dates readyOn;       ///< bottom tray of today
    Dates turnOn;        ///< top tray of today filled
    Dates sumpFullOn;
    Band colonyIn60Days, colonyInAYear; ///< kg
    double airLowWithin14Days = 0;      ///< probability: air below 0.7 in some tray
    std::vector<StackEstimate> days;    ///< weekly
};

struct PlanComparison {
    PlanFigures base, changed;
    bool bottomStays = true;  ///< today's bottom tray; false: the change takes it, and of its ready date nothing is said
    Band readyEarlierByDays;  ///< member by member; negative: later. Never counts as one day beyond the horizon
    Band colonyMoreIn60Days;  ///< kg, member by member
};

/// nullopt when the reckoning carries no members (read from estimates) or nothing stands.
std::optional<PlanComparison> comparePlans(const StackReckoning& stack, const ChangedPlan& plan, int threads = 2, std::stop_token stop = {});

/// Another past: the journal without some entries and with others, reckoned with the same random numbers.
struct AnotherPast {
    std::vector<journal::EntryId> without;
    journal::Entries with;               ///< placed at the end of their days; one of an id that is left out, where that one was
};
struct PastAnswer {
    std::shared_ptr<const Reckoning> reckoning;   ///< nullptr when it cannot have been so
    std::vector<journal::Refusal> refusals;       ///< why
};
/// With the present reckoning as `options.previous` stacks that it does not touch are taken over, and the one that it does goes on from the last snapshot before.
PastAnswer reckonAnotherPast(const journal::Entries& entries, const AnotherPast& past, const Options& options, std::stop_token stop = {});

}
