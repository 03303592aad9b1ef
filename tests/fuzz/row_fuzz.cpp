#include "core/exchange/row_reader.h"
#include "core/quantity/day_text.h"
#include "core/quantity/number_text.h"

#include <cstdlib>

/// Any cells as one row: detail pairs, amounts, dates. Cells are parted by a byte 0x1F. A row that is read comes back the same.
extern "C" int LLVMFuzzerTestOneInput(const unsigned char* bytes, std::size_t length)
{
    using namespace tierloam;
    const std::string_view text{reinterpret_cast<const char*>(bytes), length};
    exchange::Row row;
    std::size_t cell = 0;
    for (const char byte : text) {
        if (byte == '\x1f') {
            if (++cell == exchange::columnCount) return 0;
        } else {
            row.cells[cell] += byte;
        }
    }
    static const auto table = materials::Table::builtIn();
    const auto read = exchange::rowToEntry(row, table);
    const auto* entry = std::get_if<journal::Entry>(&read);
    if (!entry) return 0;
    const exchange::Row once = exchange::entryToRow(*entry);
    const auto again = exchange::rowToEntry(once, table);
    const auto* same = std::get_if<journal::Entry>(&again);
    if (!same || !(*same == *entry)) std::abort();
    return 0;
}
