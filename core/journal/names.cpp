#include "core/journal/names.h"

namespace tierloam::journal {

bool hasControlCharacter(std::string_view text)
{
    for (std::size_t at = 0; at < text.size(); ++at) {
        const auto byte = static_cast<unsigned char>(text[at]);
        if (byte < 0x20 || byte == 0x7F) return true;
        // U+0080…U+009F are the two bytes C2 80…C2 9F.
        if (byte == 0xC2 && at + 1 < text.size() && static_cast<unsigned char>(text[at + 1]) < 0xA0) return true;
    }
    return false;
}

bool isStackName(std::string_view name)
{
    return !name.empty() && name.front() != ' ' && name.back() != ' ' && name.find(';') == std::string_view::npos && !hasControlCharacter(name);
}

}
