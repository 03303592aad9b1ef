#include "core/planning/wish_text.h"

#include "core/quantity/day_text.h"

#include <algorithm>
#include <charconv>

namespace tierloam::planning {

namespace {

constexpr std::string_view names[] = {"as-they-come", "spread", "gathered"};

std::string_view word(std::string_view& line)
{
    const std::size_t end = std::min(line.find(' '), line.size());
    const std::string_view first = line.substr(0, end);
    line.remove_prefix(std::min(end + 1, line.size()));
    return first;
}

std::optional<unsigned> number(std::string_view text)
{
    unsigned value = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    return error == std::errc{} && end == text.data() + text.size() ? std::optional{value} : std::nullopt;
}

}

std::string wishText(const YearWishes& wishes)
{
    std::string text = "gathering " + std::string{names[static_cast<std::size_t>(wishes.gathering)]} + '\n';
    text += "weekdays " + std::to_string(wishes.weekdays) + '\n';
    if (wishes.mostWait != usualWait) text += "wait " + std::to_string(wishes.mostWait) + '\n';
    for (const auto& [from, to] : wishes.away) text += "away " + dayText(from) + ' ' + dayText(to) + '\n';
    for (const auto& [stack, pins] : wishes.pinned)
        for (const auto& [batch, on] : pins) text += "pin " + dayText(on) + ' ' + std::to_string(batch) + ' ' + stack + '\n';
    return text;
}

YearWishes wishesFrom(std::string_view text)
{
    YearWishes wishes;
    while (!text.empty()) {
        const std::size_t end = std::min(text.find('\n'), text.size());
        std::string_view line = text.substr(0, end);
        text.remove_prefix(std::min(end + 1, text.size()));
        const std::string_view key = word(line);
        if (key == "gathering") {
            const auto found = std::find(std::begin(names), std::end(names), line);
            if (found != std::end(names)) wishes.gathering = static_cast<Gathering>(found - std::begin(names));
        } else if (key == "weekdays") {
            if (const auto mask = number(line); mask && *mask <= 0x7f) wishes.weekdays = *mask;
        } else if (key == "wait") {
            if (const auto days = number(line); days && *days >= 1 && *days <= static_cast<unsigned>(longestWait)) wishes.mostWait = static_cast<int>(*days);
        } else if (key == "away") {
            const auto from = parseDay(word(line));
            const auto to = parseDay(line);
            if (from && to && *from <= *to) wishes.away.emplace_back(*from, *to);
        } else if (key == "pin") {
            const auto on = parseDay(word(line));
            const auto batch = number(word(line));
            if (on && batch && !line.empty()) wishes.pinned[std::string{line}][static_cast<int>(*batch)] = *on;
        }
    }
    return wishes;
}

}
