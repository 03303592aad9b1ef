#include "core/journal/warnings.h"

#include <algorithm>
#include <string_view>
#include <unordered_map>

namespace tierloam::journal {

namespace {

bool sameSpecies(std::string_view a, std::string_view b)
{
    if (a.empty()) a = defaultSpecies;
    if (b.empty()) b = defaultSpecies;
    const auto lower = [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; };
    return std::equal(a.begin(), a.end(), b.begin(), b.end(), [&](char x, char y) { return lower(x) == lower(y); });
}

}

std::vector<Warning> warningsOf(std::span<const Entry> entries)
{
    std::vector<Warning> warnings;
    std::unordered_map<std::string_view, std::string_view> ruling;
    for (std::size_t index = 0; index < entries.size(); ++index) {
        const auto* stock = std::get_if<Stock>(&entries[index].action);
        if (!stock) continue;
        const auto [place, first] = ruling.try_emplace(entries[index].stack, stock->species);
        if (!first && !sameSpecies(place->second, stock->species))
            warnings.push_back({WarningReason::secondSpecies, index, std::string{place->second}, stock->species});
        place->second = stock->species;
    }
    return warnings;
}

}
