#pragma once

#include "core/household/usual.h"

namespace tierloam::household {

/// The usual cover of each stack that was ever covered, up to the end of a day: the median of its last five, whether or not they come with feedings.
/// Entries are in journal order; they are gone through once for all stacks.
std::map<std::string, Amount> usualCovers(const journal::Entries& entries, const materials::Table& materials, Day upTo);
/// That of one stack; `unknown` where it was never covered.
Amount usualCover(const std::map<std::string, Amount>& covers, const std::string& stack, const Amount& unknown = journal::defaultCoverAmount);

}
