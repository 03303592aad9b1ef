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
    case Code::feedDue: return "feed-due";
    case Code::trayFull: return "tray-full";
    case Code::sumpFull: return "sump-full";
    case Code::recordDisagrees: return "record-disagrees";
    case Code::lookNext: return "look-next";
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

std::vector<Advice> adviceFor(const reckoning::StackReckoning& stack)
{
    std::vector<Advice> all;
    if (stack.retired || stack.now.slots.empty()) return all;
    rulesOfHarvest(stack, all);
    rulesOfFeeding(stack, all);
    rulesOfDrainage(stack, all);
    rulesOfRecord(stack, all);
    std::stable_sort(all.begin(), all.end(), [](const Advice& a, const Advice& b) {
        return a.severity != b.severity ? a.severity > b.severity : a.on < b.on;
    });
    return all;
}

}
