#pragma once

#include "core/journal/replay.h"
#include "core/materials/table.h"

#include <map>
#include <optional>
#include <string>

namespace tierloam::reckoning {

/// The usual amounts of one stack: the median of the last five, the default where it was never done. Food and cover are counted by the day: what was
/// given in several portions is one feeding.
/// Amounts in different units are brought to the unit of the last one (food by the bulk of its material).
struct Usual {
    Amount feed{300.0, Unit::g};
    std::string feedMaterial;            ///< of the last feeding; empty = kitchen mix
    std::optional<Amount> coverWithFeed; ///< the usual cover, when covers usually come with feedings; 30 g when it was never fed
    std::string coverMaterial;           ///< of the last cover; empty = newspaper shredded
    Amount water{0.5, Unit::L};
    Amount drain{1.0, Unit::L};          ///< of drains that gave something
    bool feedKnown = false, waterKnown = false, drainKnown = false, coverKnown = false; ///< false: the default above
};

/// Of one stack, up to the end of a day. Entries are in journal order.
Usual usualOf(const journal::Entries& entries, const materials::Table& materials, const std::string& stack, Day upTo);
/// Of every stack that has entries; the journal is gone through once for all of them, which matters to 200 stacks.
std::map<std::string, Usual> usualOfAll(const journal::Entries& entries, const materials::Table& materials, Day upTo);
/// The same from a stack's own steps, all of them.
Usual usualOf(const journal::Entries& entries, const materials::Table& materials, const journal::StackHistory& history);
/// The usual feeding fresh, in kg; nullopt when it was never fed or its material has no bulk.
std::optional<double> usualFeedKg(const Usual& usual, const materials::Table& materials);

}
