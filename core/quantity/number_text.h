#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace tierloam {

/// The shortest plain decimal (no exponent, point as decimal mark) that reads back as exactly this value. `value` is finite.
std::string numberText(double value);

/// A plain decimal: optional minus, digits, optionally a point and digits. nullopt for anything else:
/// exponents, thousands marks, signs of plus, blanks, inf and nan, or a value too great or too small to be held. "-0" reads as 0.
std::optional<double> parseNumber(std::string_view text);

/// `digits` significant digits without trailing zeros, as the summary prints them; no exponent from 1e-9 to below 1e15, "0" for −0.
std::string significantText(double value, int digits = 6);

}
