#include "core/exchange/json_text.h"

#include "core/quantity/number_text.h"

#include <cmath>

namespace tierloam::exchange {

void JsonText::newLine(std::size_t depth)
{
    out_ += '\n';
    out_.append(depth, ' ');
}

void JsonText::beforeValue()
{
    if (afterKey_) {
        afterKey_ = false;
        return;
    }
    if (levels_.empty()) return;
    Level& level = levels_.back();
    if (!level.empty) out_ += ',';
    if (level.layout == Layout::spread) newLine(levels_.size());
    else if (!level.empty) out_ += ' ';
    level.empty = false;
}

void JsonText::open(char opening, char closing, Layout layout)
{
    beforeValue();
    out_ += opening;
    levels_.push_back({closing, layout});
}

void JsonText::close()
{
    const Level level = levels_.back();
    levels_.pop_back();
    if (!level.empty && level.layout == Layout::spread) newLine(levels_.size());
    out_ += level.closing;
}

void JsonText::key(std::string_view name)
{
    beforeValue();
    quoted(name);
    out_ += ": ";
    afterKey_ = true;
}

void JsonText::text(std::string_view value)
{
    beforeValue();
    quoted(value);
}

void JsonText::number(double value)
{
    if (!std::isfinite(value)) return null();
    beforeValue();
    out_ += significantText(value);
}

void JsonText::whole(long long value)
{
    beforeValue();
    out_ += std::to_string(value);
}

void JsonText::null()
{
    beforeValue();
    out_ += "null";
}

void JsonText::quoted(std::string_view value)
{
    out_ += '"';
    for (const char c : value) {
        const auto byte = static_cast<unsigned char>(c);
        if (c == '"' || c == '\\') {
            out_ += '\\';
            out_ += c;
        } else if (c == '\n') {
            out_ += "\\n";
        } else if (byte < 0x20) {
            out_ += "\\u00";
            out_ += "0123456789abcdef"[byte >> 4];
            out_ += "0123456789abcdef"[byte & 15];
        } else {
            out_ += c;
        }
    }
    out_ += '"';
}

std::string JsonText::take() &&
{
    out_ += '\n';
    return std::move(out_);
}

}
