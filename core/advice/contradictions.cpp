#include "core/advice/rules.h"
#include "core/advice/words.h"

#include <algorithm>
#include <iterator>

namespace tierloam::advice {

namespace {

/// The first of each pair stands, the second goes. Not to be done on one day: feed and do not, water and not, lift and do not.
struct Pair { Code stays, goes; };
constexpr Pair pairs[] = {
    {Code::overfed, Code::hungry},       {Code::overfed, Code::feedDue},      {Code::hungry, Code::feedDue},       {Code::trayFull, Code::hungry},
    {Code::cold, Code::hungry},          {Code::cold, Code::feedDue},         {Code::heat, Code::hungry},          {Code::tooDry, Code::tooWet},
    {Code::tooDry, Code::drainageHigh},  {Code::staleRecord, Code::feedDue},  {Code::staleRecord, Code::hungry},   {Code::addTray, Code::tooEarly},
    {Code::dryingLong, Code::tooEarly},  {Code::tooEarly, Code::dryingDone},  {Code::harvestReady, Code::tooEarly}, {Code::harvestOverdue, Code::tooEarly},
    {Code::harvestSoon, Code::tooEarly}, {Code::drainageLow, Code::drainageHigh}, {Code::heat, Code::cold},      {Code::addTray, Code::trayFull},
    {Code::trayFull, Code::lowCarbon},
};

/// What says how to feed, of a stack that is to get no food.
bool isOfFeeding(const Advice& advice) { return advice.food == Food::give || advice.code == Code::lowCarbon || advice.code == Code::trayFull; }

bool has(const std::vector<Advice>& all, Code code)
{
    return std::any_of(all.begin(), all.end(), [code](const Advice& each) { return each.code == code; });
}

/// Before the other where two looks are asked for on one day: what presses, then what decides a turn, then what a rule asks for and not what tells most.
bool beforeAsLook(const Advice& a, const Advice& b)
{
    if (a.severity != b.severity) return a.severity > b.severity;
    if (a.forTurn != b.forTurn) return a.forTurn;
    return a.worth < b.worth; // 0 of what a rule asks for
}

/// One look a day: who has squeezed a handful is not sent to the sump as well. The other is asked for once the first is taken. The look whether there is anybody to
/// feed stands in any case, since no food hangs on it.
void oneLookADay(std::vector<Advice>& all)
{
    std::vector<Advice> kept;
    for (const Advice& one : all) {
        const auto comesFirst = [&](const Advice& other) {
            return other.look && other.on == one.on && (beforeAsLook(other, one) || (!beforeAsLook(one, other) && &other < &one));
        };
        if (!one.look || one.food == Food::withhold || std::none_of(all.begin(), all.end(), comesFirst)) kept.push_back(one);
    }
    all = std::move(kept);
}

/// The tray that is added is the room that is wanted: told once, as pressing as the full tray is and with its figures.
void fullTrayAsks(std::vector<Advice>& all)
{
    const auto of = [&all](Code code) { return std::find_if(all.begin(), all.end(), [code](const Advice& each) { return each.code == code; }); };
    const auto add = of(Code::addTray), full = of(Code::trayFull);
    if (add == all.end() || full == all.end() || full->severity <= add->severity) return;
    add->severity = full->severity;
    add->because = plain(withMore(QString::fromStdString(add->because), QString::fromStdString(full->because)));
}

}

bool contradict(const Advice& a, const Advice& b)
{
    if (a.stack != b.stack) return false;
    if ((isOfFeeding(a) && b.food == Food::withhold) || (isOfFeeding(b) && a.food == Food::withhold)) return true;
    return std::any_of(std::begin(pairs), std::end(pairs),
                       [&](const Pair& pair) { return (a.code == pair.stays && b.code == pair.goes) || (b.code == pair.stays && a.code == pair.goes); });
}

void settleContradictions(std::vector<Advice>& all)
{
    // What asks for a look gives way to what is known, unless it is of whether there is anybody to feed.
    const std::vector<Advice> told = all;
    std::erase_if(all, [&](const Advice& one) {
        return one.look && one.food != Food::withhold && std::any_of(told.begin(), told.end(), [&](const Advice& other) { return !other.look && contradict(one, other); });
    });
    // To give none stands: what is given cannot be taken back.
    if (std::any_of(all.begin(), all.end(), [](const Advice& each) { return each.food == Food::withhold; }))
        std::erase_if(all, isOfFeeding);
    // And is told once: a hint to wait adds nothing to it.
    const auto isHintToWait = [](const Advice& each) { return each.code == Code::overfed && each.severity == Severity::hint; };
    if (std::any_of(all.begin(), all.end(), [&](const Advice& each) { return each.food == Food::withhold && !isHintToWait(each); })) std::erase_if(all, isHintToWait);
    fullTrayAsks(all);
    for (const Pair& pair : pairs)
        if (has(all, pair.stays)) std::erase_if(all, [&](const Advice& each) { return each.code == pair.goes; });
    oneLookADay(all);
    // Fed once, into the tray that wants it: what is due names it, and says why it is not the highest.
    const auto early = std::find_if(all.begin(), all.end(), [](const Advice& each) { return each.code == Code::tooEarly && each.food == Food::give; });
    const auto feed = std::find_if(all.begin(), all.end(), [](const Advice& each) { return each.code == Code::feedDue || each.code == Code::hungry; });
    if (early == all.end() || feed == all.end()) return;
    feed->because = plain(withMore(QString::fromStdString(feed->because), say(QT_TRANSLATE_NOOP("Advice", "into the tray beneath the new one, which came early: %1")).arg(QString::fromStdString(early->because))));
    all.erase(early);
}

}
