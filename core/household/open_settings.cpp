#include "core/household/open_settings.h"

#include <algorithm>

namespace tierloam::household {

namespace {

QString valueIn(const OpenSettings::Values& values, const QString& name)
{
    const auto found = values.find(name);
    return found == values.end() ? QString{} : found->second;
}

}

QString OpenSettings::value(const QString& name) const
{
    const auto last = std::find_if(asked_.rbegin(), asked_.rend(), [&](const Asked& asked) { return asked.name == name; });
    return last == asked_.rend() ? valueIn(recorded_, name) : last->value;
}

bool OpenSettings::stands(const QString& name, const QString& value) const
{
    // The same value under way is no answer yet: its write may fail.
    return std::ranges::find(asked_, name, &Asked::name) == asked_.end() && valueIn(recorded_, name) == value;
}

void OpenSettings::ask(std::uint64_t ticket, const QString& name, const QString& value) { asked_.push_back({ticket, name, value}); }

void OpenSettings::settle(std::uint64_t ticket)
{
    const auto asked = std::ranges::find(asked_, ticket, &Asked::ticket);
    if (asked == asked_.end()) return;
    recorded_[asked->name] = asked->value;
    asked_.erase(asked);
}

void OpenSettings::giveUp(std::uint64_t ticket)
{
    std::erase_if(asked_, [ticket](const Asked& asked) { return asked.ticket == ticket; });
}

std::set<QString> OpenSettings::replaceRecorded(Values now)
{
    std::set<QString> differing;
    for (const Values* each : {&recorded_, &now})
        for (const auto& [name, value] : *each)
            if (valueIn(recorded_, name) != valueIn(now, name)) differing.insert(name);
    recorded_ = std::move(now);
    return differing;
}

}
