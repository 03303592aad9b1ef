#include "core/reckoning/plans.h"

#include "core/reckoning/foresight.h"

#include <algorithm>

namespace tierloam::reckoning {

namespace {

PlanFigures figures(const Present& present, const Outlook& outlook)
{
    const Weights weights = present.members.shares();
    const Day start = present.course.surroundings.firstBedding;
    const int horizon = present.course.today + outlookDays;
    PlanFigures out;
    const auto asDates = [&](int batch, std::vector<int> FirstDays::*which) {
        const auto found = outlook.firsts.find(batch);
        return found == outlook.firsts.end() ? Dates{} : dates(found->second.*which, weights, start, horizon);
    };
    out.readyOn = asDates(present.members.stack.shapes.front().batch, &FirstDays::ready);
    const int top = present.members.stack.topToFeed();
    if (top >= 0) out.turnOn = asDates(present.members.stack.shapes[static_cast<std::size_t>(top)].batch, &FirstDays::filled);
    out.sumpFullOn = dates(outlook.sumpFull, weights, start, horizon);
    out.colonyIn60Days = band(std::vector<double>{outlook.colonyIn60Days}, weights);
    out.airLowWithin14Days = airLowAhead(outlook, weights);
    out.colonyInAYear = band(std::vector<double>{outlook.colonyAtEnd}, weights);
    out.days = outlook.days;
    return out;
}

}

std::optional<PlanComparison> comparePlans(const StackReckoning& stack, const ChangedPlan& plan, int threads, std::stop_token stop)
{
    if (!stack.present || stack.present->members.stack.trays() == 0) return std::nullopt;
    const Present& present = *stack.present;
    Crew crew{threads};
    const std::optional<Outlook> changed = lookAhead(present.members, present.course, plan, crew, stop);
    if (!changed) return std::nullopt;
    PlanComparison out{figures(present, present.base), figures(present, *changed), true, {}, {}};
    out.base.days = stack.forecast.days;
    const Weights weights = present.members.shares();
    const int batch = present.members.stack.shapes.front().batch;
    const int beyond = present.course.today + outlookDays + 1;
    const auto then = changed->firsts.find(batch);
    out.bottomStays = then != changed->firsts.end();
    if (out.bottomStays) {
        const std::vector<int>& usual = present.base.firsts.at(batch).ready;
        std::vector<double> earlier(usual.size());
        for (std::size_t i = 0; i < usual.size(); ++i) earlier[i] = std::min(usual[i], beyond) - std::min(then->second.ready[i], beyond);
        out.readyEarlierByDays = band(earlier, weights);
    }
    std::vector<double> more(changed->colonyIn60Days.size());
    for (std::size_t i = 0; i < more.size(); ++i) more[i] = changed->colonyIn60Days[i] - present.base.colonyIn60Days[i];
    out.colonyMoreIn60Days = band(more, weights);
    return out;
}

PastAnswer reckonAnotherPast(const journal::Entries& entries, const AnotherPast& past, const Options& options, std::stop_token stop)
{
    journal::Entries lived;
    for (const journal::Entry& entry : entries)
        if (std::find(past.without.begin(), past.without.end(), entry.id) == past.without.end()) lived.push_back(entry);
    std::int64_t place = 0;
    for (const journal::Entry& entry : entries) place = std::max(place, static_cast<std::int64_t>(entry.positionInDay));
    for (journal::Entry entry : past.with) {
        const bool replaces = std::find(past.without.begin(), past.without.end(), entry.id) != past.without.end();
        if (!replaces) entry.positionInDay = ++place;
        lived.push_back(std::move(entry));
    }
    std::stable_sort(lived.begin(), lived.end(), journal::inJournalOrder);
    const journal::Replay replay = journal::replay(lived);
    if (!replay.refusals.empty()) return {nullptr, replay.refusals};
    return {reckon(lived, options, stop), {}};
}

}
