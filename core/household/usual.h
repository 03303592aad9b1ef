#pragma once

#include "core/journal/entry.h"
#include "core/materials/table.h"

#include <optional>
#include <string>

namespace tierloam::household {

/// The usual amounts of one stack: the median of the last five, the default where it was never done.
/// Amounts in different units are brought to the unit of the last one (food by the bulk of its material).
struct Usual {
    Amount feed{300.0, Unit::g};
    std::string feedMaterial;            ///< of the last feeding; empty = kitchen mix
    std::optional<Amount> coverWithFeed; ///< the usual cover, when covers usually come with feedings; 30 g when it was never fed
    std::string coverMaterial;           ///< of the last cover; empty = newspaper shredded
    Amount water{0.5, Unit::L};
    Amount drain{1.0, Unit::L};          ///< of drains that gave something
    bool feedKnown = false, waterKnown = false, drainKnown = false; ///< false: the default above
};

/// Of one stack, up to the end of a day. Entries are in journal order.
Usual usualOf(const journal::Entries& entries, const materials::Table& materials, const std::string& stack, Day upTo);

}
