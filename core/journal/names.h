#pragma once

#include <string_view>

namespace tierloam::journal {

/// Whether a stack may bear this name: not empty, no blank at either end, no control character, and no ';', which parts
/// the pairs of a detail (`to=NAME;…`).
bool isStackName(std::string_view name);

/// Whether the UTF-8 text holds a control character (U+0000…U+001F, U+007F…U+009F).
bool hasControlCharacter(std::string_view text);

}
