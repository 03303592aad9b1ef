#pragma once

#include <cstddef>
#include <limits>
#include <string>
#include <string_view>
#include <vector>

/// RFC 4180: cells parted by commas (or by the separator that is given), a cell with a comma, a quote mark or a line break stands in quote marks, a quote mark in it is doubled.
namespace tierloam::exchange::csv {

enum class Problem {
    none,
    openQuote,    ///< a quoted cell never ends
    strayQuote,   ///< a quote mark inside a cell that is not quoted, or text behind a closing one
    notUtf8
};

/// One record, which may run over several lines when a quoted cell holds line breaks.
struct Record {
    int line = 1;                     ///< where it starts, 1-based
    std::vector<std::string> cells;   ///< unquoted
    std::string_view raw;             ///< as it stands in the text, without its line end
    Problem problem = Problem::none;
};

/// Records in order; a byte order mark at the start is skipped, and so are empty lines. Lines end with LF or CRLF. A record with a
/// problem is given with the cells read so far, and reading goes on with the next line; after an open quote there is none.
/// Record::raw points into `text`. At most `most` records are read.
std::vector<Record> read(std::string_view text, char separator = ',', std::size_t most = std::numeric_limits<std::size_t>::max());

/// Appends the cells as one record ended by CRLF, quoting only what must be.
void writeRecord(std::string& out, const std::vector<std::string>& cells, char separator = ',');

}
