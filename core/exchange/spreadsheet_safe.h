#pragma once

#include <string>
#include <string_view>

namespace tierloam::exchange {

/// A spreadsheet takes a cell that begins with = + - @ (some also behind blanks, tabs or line breaks) for a formula. Such a text is written with a backslash before it, and a text
/// that already begins with backslashes before one of these gets one more, so that every text comes back unchanged.
/// Only for cells of free text; numbers and dates never need it.
std::string spreadsheetSafe(std::string_view text);

/// The text that spreadsheetSafe() was given.
std::string fromSpreadsheetSafe(std::string_view cell);

}
