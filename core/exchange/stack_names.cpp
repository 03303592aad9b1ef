#include "core/exchange/stack_names.h"

#include "core/exchange/text.h"

#include <algorithm>

namespace tierloam::exchange {

std::optional<std::string> stackMeant(const std::string& typed, const std::vector<std::string>& known)
{
    if (std::ranges::find(known, typed) != known.end()) return typed;
    const QString asked = toQString(typed);
    const auto alike = [&](const std::string& each) { return toQString(each).compare(asked, Qt::CaseInsensitive) == 0; };
    const auto found = std::ranges::find_if(known, alike);
    return std::ranges::count_if(known, alike) == 1 ? std::optional{*found} : std::nullopt;
}

}
