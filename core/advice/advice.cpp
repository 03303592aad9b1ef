#include "core/advice/advice.h"

#include "core/advice/rules.h"

#include <algorithm>

namespace tierloam::advice {

std::string_view codeName(Code code)
{
    switch (code) {
    case Code::harvestReady: return "harvest-ready";
    case Code::readyNoHurry: return "ready-no-hurry";
    case Code::harvestSoon: return "harvest-soon";
    case Code::harvestOverdue: return "harvest-overdue";
    case Code::addTray: return "add-tray";
    case Code::tooEarly: return "too-early";
    case Code::feedDue: return "feed-due";
    case Code::overfed: return "overfed";
    case Code::hungry: return "hungry";
    case Code::trayFull: return "tray-full";
    case Code::lowCarbon: return "low-carbon";
    case Code::tooWet: return "too-wet";
    case Code::tooDry: return "too-dry";
    case Code::sumpFull: return "sump-full";
    case Code::drainageLow: return "drainage-low";
    case Code::drainageHigh: return "drainage-high";
    case Code::heat: return "heat";
    case Code::cold: return "cold";
    case Code::dryingDone: return "drying-done";
    case Code::dryingLong: return "drying-long";
    case Code::staleRecord: return "stale-record";
    case Code::lookNext: return "look-next";
    case Code::recordDisagrees: return "record-disagrees";
    }
    return {};
}

std::string_view severityName(Severity severity)
{
    switch (severity) {
    case Severity::hint: return "hint";
    case Severity::due: return "due";
    case Severity::concern: return "concern";
    case Severity::urgent: return "urgent";
    }
    return {};
}

namespace {

/// While nobody is there: what presses is told all the same, since somebody may be asked to come by. All else is for the day of their return, and no look is asked for.
void forTheReturn(const reckoning::StackReckoning& stack, std::vector<Advice>& all)
{
    if (!isAway(stack.record, stack.asOf)) return;
    const Day back = *stack.record.awayUntil + std::chrono::days{1};
    std::erase_if(all, [](const Advice& each) { return each.severity < Severity::concern && (each.look || each.food == Food::give); });
    for (Advice& each : all)
        if (each.severity < Severity::concern) each.on = std::max(each.on, back);
}

}

std::vector<Advice> adviceFor(const reckoning::StackReckoning& stack)
{
    std::vector<Advice> all;
    if (stack.retired || stack.now.slots.empty()) return all;
    rulesOfHarvest(stack, all);
    rulesOfDrying(stack, all);
    rulesOfFeeding(stack, all);
    rulesOfFood(stack, all);
    rulesOfWater(stack, all);
    rulesOfDrainage(stack, all);
    rulesOfClimate(stack, all);
    rulesOfColony(stack, all);
    rulesOfRecord(stack, all);
    rulesOfLooks(stack, all);
    settleContradictions(all);
    forTheReturn(stack, all);
    std::stable_sort(all.begin(), all.end(), [](const Advice& a, const Advice& b) {
        return a.severity != b.severity ? a.severity > b.severity : a.on < b.on;
    });
    return all;
}

}
