#include "core/exchange/spreadsheet_safe.h"

namespace tierloam::exchange {

namespace {

/// Backslashes, then one of the marks that begin a formula.
bool isMarked(std::string_view text)
{
    const std::size_t at = text.find_first_not_of('\\');
    return at != std::string_view::npos && std::string_view{"=+-@"}.find(text[at]) != std::string_view::npos;
}

}

std::string spreadsheetSafe(std::string_view text)
{
    return isMarked(text) ? '\\' + std::string{text} : std::string{text};
}

std::string fromSpreadsheetSafe(std::string_view cell)
{
    if (!cell.empty() && cell.front() == '\\' && isMarked(cell)) cell.remove_prefix(1);
    return std::string{cell};
}

}
