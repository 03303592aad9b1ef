#include "core/exchange/outline.h"

#include "core/quantity/number_text.h"

#include <optional>

namespace tierloam::exchange {

namespace {

using namespace journal;

/// Whether a step of this name can change which tray stands where or dries.
std::optional<Action> actionThatMovesTrays(const Row& row)
{
    const std::string& name = row[Column::action];
    const std::string& detail = row[Column::detail];
    if (name == "setup") {
        Setup setup;
        setup.trays = 100; // how many were meant is not known: none of the rows behind it may fail for want of a tray
        return setup;
    }
    if (name == "harvest") {
        Harvest harvest;
        const bool partial = detail.find("share=") != std::string::npos && detail.find("share=100") == std::string::npos;
        if (partial) harvest.share = Share::fromPercent(50);
        return harvest;
    }
    if (name == "bed") return Bed{};
    if (name == "feed") return Feed{};
    if (name == "cover") return Cover{};
    if (name == "rotate") return Rotate{};
    if (name == "retire") return Retire{};
    return std::nullopt;
}

/// nullopt when the cell cannot be read; an empty cell is an empty optional inside.
std::optional<std::optional<int>> slotOf(const Row& row)
{
    const std::string& text = row[Column::slot];
    if (text.empty()) return std::optional<int>{};
    const auto number = parseNumber(text);
    if (!number || *number < 1 || *number > 1000 || *number != static_cast<int>(*number)) return std::nullopt;
    return std::optional{static_cast<int>(*number)};
}

}

std::optional<Entry> outlineOf(const Row& row)
{
    auto action = actionThatMovesTrays(row);
    const auto date = parseDayAndTime(row[Column::date]);
    const auto slot = slotOf(row);
    if (!action || !date || !slot) return std::nullopt;
    Entry entry;
    entry.date = *date;
    entry.stack = row[Column::stack];
    entry.slot = *slot;
    entry.action = std::move(*action);
    return entry;
}

bool leavesTraysUnknown(const Row& row)
{
    const std::string& name = row[Column::action];
    const bool only = name == "feed" || name == "cover"; // at most they end a drying
    return !only && actionThatMovesTrays(row) && !outlineOf(row);
}

}
