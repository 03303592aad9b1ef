#pragma once

#include "core/journal/entry.h"
#include "core/store/entry_columns.h"

#include <QString>
#include <QVariant>

#include <array>
#include <optional>
#include <variant>

namespace tierloam::store {

/// One entry as the values of its columns; an absent detail is an invalid QVariant (NULL).
struct EntryRow {
    std::array<QVariant, columnCount> values;

    QVariant& operator[](Column column) { return values[static_cast<std::size_t>(column)]; }
    const QVariant& operator[](Column column) const { return values[static_cast<std::size_t>(column)]; }
};

/// Never fails for an entry whose numbers are finite (see notFinite).
EntryRow rowOf(const journal::Entry& entry);

/// The entry of a row, without its id; or, for a row that this program did not write, the column that does not make sense.
std::variant<journal::Entry, Column> entryOf(const EntryRow& row);

/// The column of the first number that is NaN or infinite: SQLite would keep NaN as NULL, so it is refused before it is bound.
std::optional<Column> notFinite(const EntryRow& row);

}
