#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace tierloam {

/// The shortest plain decimal (no exponent, point as decimal mark) that reads back as exactly this value. Refuses nothing finite.
std::string numberText(double value);

/// A plain decimal: optional minus, digits, optionally a point and digits. nullopt for anything else:
/// exponents, thousands marks, signs of plus, blanks, inf and nan, or a value that overflows.
std::optional<double> parseNumber(std::string_view text);

/// `digits` significant digits, as the summary prints them; never an exponent below 1e15, "0" for −0.
std::string significantText(double value, int digits = 6);

}
