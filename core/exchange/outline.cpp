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

/// False when the cell is no slot; an empty one is none, which is fine.
bool readSlot(const Row& row, std::optional<int>& slot)
{
    const std::string& text = row[Column::slot];
    if (text.empty()) return true;
    const auto number = parseNumber(text);
    if (!number || *number < 1 || *number > 1000 || *number != static_cast<int>(*number)) return false;
    slot = static_cast<int>(*number);
    return true;
}

}

std::optional<Entry> outlineOf(const Row& row)
{
    auto action = actionThatMovesTrays(row);
    const auto date = parseDayAndTime(row[Column::date]);
    Entry entry;
    if (!action || !date || !readSlot(row, entry.slot)) return std::nullopt;
    entry.date = *date;
    entry.stack = row[Column::stack];
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
