#include "core/exchange/spreadsheet_safe.h"

#include <algorithm>

namespace tierloam::exchange {

namespace {

/// Backslashes, then what a spreadsheet takes for a formula: one of the marks, also behind blanks and line breaks, which some leave out
/// before they look, and in the wide forms of East Asian keyboards; or a tab or carriage return at the very front.
bool isMarked(std::string_view text)
{
    const std::size_t behind = text.find_first_not_of('\\');
    if (behind == std::string_view::npos) return false;
    text.remove_prefix(behind);
    if (text.front() == '\t' || text.front() == '\r') return true;
    const std::size_t at = text.find_first_not_of(" \t\r\n\v\f");
    if (at == std::string_view::npos) return false;
    text.remove_prefix(at);
    if (std::string_view{"=+-@"}.find(text.front()) != std::string_view::npos) return true;
    constexpr std::string_view wide[] = {"\xEF\xBC\x9D", "\xEF\xBC\x8B", "\xEF\xBC\x8D", "\xEF\xBC\xA0"}; // ＝ ＋ － ＠
    return std::ranges::any_of(wide, [&](std::string_view mark) { return text.starts_with(mark); });
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
