#include "core/household/usual_cover.h"

namespace tierloam::household {

std::map<std::string, Amount> usualCovers(const journal::Entries& entries, const materials::Table& materials, Day upTo)
{
    journal::Entries covers; // without a feeding between them all of them count
    for (const journal::Entry& entry : entries)
        if (std::holds_alternative<journal::Cover>(entry.action)) covers.push_back(entry);
    std::map<std::string, Amount> all;
    for (const auto& [stack, usual] : usualOfAll(covers, materials, upTo)) all.emplace(stack, usual.coverWithFeed.value_or(journal::defaultCoverAmount));
    return all;
}

Amount usualCover(const std::map<std::string, Amount>& covers, const std::string& stack, const Amount& unknown)
{
    const auto known = covers.find(stack);
    return known != covers.end() ? known->second : unknown;
}

}
