#include "core/advice/household_advice.h"

#include "core/reckoning/next_look.h"

#include <algorithm>

namespace tierloam::advice {

namespace {

constexpr int unseenFor = 56;        ///< days without a look, after which those at other stacks no longer stand for one

bool isNextLook(const Advice& advice) { return advice.worth > 0.0; }
bool canWait(const Advice& advice) { return isNextLook(advice) && !advice.forTurn; }

/// Before the other where both are asked for.
bool before(const Advice& a, const Advice& b) { return a.forTurn != b.forTurn ? a.forTurn : a.worth > b.worth; }

/// Somebody looked at another stack this week.
bool lookedElsewhere(const reckoning::Reckoning& reckoning, const std::string& stack)
{
    return std::any_of(reckoning.stacks.begin(), reckoning.stacks.end(), [&](const reckoning::StackReckoning& each) {
        return each.name != stack && !each.retired && each.record.lastLook && daysBetween(*each.record.lastLook, reckoning.asOf) < reckoning::lookAgainAfter;
    });
}

}

std::vector<Advice> adviceForAll(const reckoning::Reckoning& reckoning)
{
    std::vector<Advice> all;
    for (const reckoning::StackReckoning& stack : reckoning.stacks) {
        std::vector<Advice> said = adviceFor(stack);
        const Day seen = stack.record.lastLook.value_or(stack.firstBedding);
        if (daysBetween(seen, reckoning.asOf) < unseenFor && lookedElsewhere(reckoning, stack.name)) std::erase_if(said, canWait);
        std::move(said.begin(), said.end(), std::back_inserter(all));
    }
    const auto most = std::min_element(all.begin(), all.end(), before);
    if (most == all.end() || !isNextLook(*most)) return all;
    const std::string chosen = most->stack;
    std::erase_if(all, [&](const Advice& each) { return isNextLook(each) && each.stack != chosen; });
    return all;
}

std::vector<Advice> ofStack(const std::vector<Advice>& all, const std::string& stack)
{
    std::vector<Advice> said;
    std::copy_if(all.begin(), all.end(), std::back_inserter(said), [&](const Advice& each) { return each.stack == stack; });
    return said;
}

void oneLookAtATime(std::map<std::string, std::vector<DiaryLine>>& diaries)
{
    std::vector<DiaryLine*> looks;
    for (auto& [stack, lines] : diaries)
        for (DiaryLine& line : lines)
            if (isNextLook(line.advice)) looks.push_back(&line);
    std::stable_sort(looks.begin(), looks.end(), [](const DiaryLine* a, const DiaryLine* b) { return a->from != b->from ? a->from < b->from : before(a->advice, b->advice); });
    constexpr Day never = Day::max();
    Day free = Day::min();           // from when on no earlier one stands
    for (DiaryLine* look : looks) {
        look->from = std::max(look->from, free);
        if (look->from < look->to.value_or(never)) free = look->to.value_or(never);
    }
    const auto neverCameUp = [never](const DiaryLine& line) { return isNextLook(line.advice) && line.from >= line.to.value_or(never); };
    for (auto& [stack, lines] : diaries) std::erase_if(lines, [&](const DiaryLine& line) { return neverCameUp(line) || (line.doneOn && *line.doneOn < line.from); });
}

}
