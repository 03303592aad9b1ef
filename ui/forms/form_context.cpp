#include "ui/forms/form_context.h"

#include "core/household/seasons.h"
#include "ui/common/usual_amounts.h"

#include <algorithm>

namespace tierloam::forms {

namespace {

constexpr std::size_t mostLately = 8;

template <class A>
std::vector<std::string> lately(const journal::Entries& entries, std::string_view usual)
{
    std::vector<std::string> names;
    for (auto entry = entries.rbegin(); entry != entries.rend() && names.size() < mostLately; ++entry) {
        const A* action = std::get_if<A>(&entry->action);
        if (!action) continue;
        const std::string name = action->material.empty() ? std::string{usual} : action->material;
        if (std::find(names.begin(), names.end(), name) == names.end()) names.push_back(name);
    }
    return names;
}

}

FormContext FormContext::of(const household::Household& household, const std::string& stack)
{
    FormContext context;
    context.journal = household.journal();
    context.reckoning = household.reckoning();
    if (context.journal->replay.stack(stack)) context.usual = household.usual(stack);
    context.usual = ui::roundDefaults(context.usual);
    context.stack = stack;
    context.order = household.stackOrder();
    context.southern = household::livesSouth(household);
    context.today = household.today();
    return context;
}

std::vector<std::string> FormContext::otherStacks(Day day) const
{
    std::vector<std::string> names;
    for (const journal::StackHistory& each : household::inOrder(journal->replay.stacks, order)) {
        const journal::Standing* there = each.on(day);
        if (each.name != stack && there && !there->retired && there->feedSlot()) names.push_back(each.name);
    }
    return names;
}

const reckoning::TrayEstimate* FormContext::tray(int slot) const
{
    const reckoning::StackReckoning* now = estimates();
    if (!now || slot < 1 || static_cast<std::size_t>(slot) > now->now.slots.size()) return nullptr;
    return &now->now.slots[static_cast<std::size_t>(slot) - 1];
}

std::vector<std::string> FormContext::foodsLately() const
{
    return lately<journal::Feed>(journal->entries, journal::defaultFood);
}

std::vector<std::string> FormContext::coversLately() const
{
    return lately<journal::Cover>(journal->entries, journal::defaultCover);
}

std::vector<std::string> FormContext::beddingsLately() const
{
    return lately<journal::Bed>(journal->entries, {});
}

bool FormContext::neverUsed(const std::string& material) const
{
    const materials::Material* meant = journal->materials.find(material);
    const auto isIt = [&](const std::string& name) { return !name.empty() && journal->materials.find(name) == meant; };
    return std::none_of(journal->entries.begin(), journal->entries.end(), [&](const journal::Entry& entry) {
        if (const auto* feed = std::get_if<journal::Feed>(&entry.action)) return isIt(feed->material);
        if (const auto* cover = std::get_if<journal::Cover>(&entry.action)) return isIt(cover->material);
        if (const auto* bed = std::get_if<journal::Bed>(&entry.action)) return isIt(bed->material);
        return false;
    });
}

}
