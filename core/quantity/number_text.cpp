#include "core/quantity/number_text.h"

#include <array>
#include <charconv>
#include <cmath>

namespace tierloam {

namespace {

std::string printed(double value, std::chars_format format, std::optional<int> precision)
{
    std::array<char, 512> buffer{};
    const auto result = precision ? std::to_chars(buffer.data(), buffer.data() + buffer.size(), value, format, *precision)
                                  : std::to_chars(buffer.data(), buffer.data() + buffer.size(), value, format);
    return std::string{buffer.data(), result.ptr};
}

bool isDigit(char c) { return c >= '0' && c <= '9'; }

}

std::string numberText(double value)
{
    return printed(value == 0.0 ? 0.0 : value, std::chars_format::fixed, std::nullopt); // one zero, without a sign
}

std::optional<double> parseNumber(std::string_view text)
{
    std::size_t at = 0;
    const auto skipDigits = [&] {
        const std::size_t start = at;
        while (at < text.size() && isDigit(text[at])) ++at;
        return at > start;
    };
    if (at < text.size() && text[at] == '-') ++at;
    if (!skipDigits()) return std::nullopt;
    if (at < text.size() && text[at] == '.') {
        ++at;
        if (!skipDigits()) return std::nullopt;
    }
    if (at != text.size()) return std::nullopt;
    double value = 0.0;
    const auto result = std::from_chars(text.data(), text.data() + text.size(), value, std::chars_format::fixed);
    if (result.ec != std::errc{} || !std::isfinite(value)) return std::nullopt;
    return value == 0.0 ? 0.0 : value;
}

std::string significantText(double value, int digits)
{
    if (value == 0.0) return "0";
    const double size = std::fabs(value);
    if (size >= 1e15 || size < 1e-9) return printed(value, std::chars_format::general, digits);
    // Decimals that keep the wanted significant digits; the exponent is read from the rounded text, so that 9.9999996 counts as 10.
    const std::string scientific = printed(value, std::chars_format::scientific, digits - 1);
    int exponent = 0;
    const std::size_t e = scientific.find('e');
    const char* from = scientific.data() + e + 1;
    if (*from == '+') ++from;
    std::from_chars(from, scientific.data() + scientific.size(), exponent);
    double rounded = value;
    std::from_chars(scientific.data(), scientific.data() + scientific.size(), rounded);
    const int decimals = digits - 1 - exponent;
    std::string text = printed(rounded, std::chars_format::fixed, decimals > 0 ? decimals : 0);
    if (text.find('.') != std::string::npos) {
        while (text.back() == '0') text.pop_back();
        if (text.back() == '.') text.pop_back();
    }
    return text;
}

}
