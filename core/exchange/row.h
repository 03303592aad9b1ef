#pragma once

#include "core/journal/entry.h"

#include <array>
#include <optional>
#include <string>
#include <string_view>

namespace tierloam::exchange {

/// The columns of the journal CSV, in the order in which they are written and in which `--record` takes them.
enum class Column { date, stack, action, slot, amount, unit, item, detail, note };

inline constexpr std::array<std::string_view, 9> columnNames{"date", "stack", "action", "slot", "amount", "unit", "item", "detail", "note"};
inline constexpr std::size_t columnCount = columnNames.size();

/// One row of the journal, cell by cell as text.
struct Row {
    std::array<std::string, columnCount> cells;

    std::string& operator[](Column column) { return cells[static_cast<std::size_t>(column)]; }
    const std::string& operator[](Column column) const { return cells[static_cast<std::size_t>(column)]; }
    bool operator==(const Row&) const = default;
};

/// The entry as it is written: only what was typed, no default filled in. Reading it back gives the same entry.
Row entryToRow(const journal::Entry& entry);

/// The `detail` cell alone, "key=value;key=value" in the order of the format.
std::string detailText(const journal::Action& action);

/// The amount of an action; nullopt when it has none.
std::optional<Amount> amountOf(const journal::Action& action);

/// The `item` cell: material, species or word as typed, empty for the default.
std::string itemOf(const journal::Action& action);

}
