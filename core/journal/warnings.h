#pragma once

#include "core/journal/entry.h"

#include <span>
#include <string>
#include <vector>

namespace tierloam::journal {

/// What is accepted, and yet worth saying. The text is made by core/exchange.
enum class WarningReason {
    secondSpecies ///< a stock of another species than the one before in this stack: the latest rules
};

struct Warning {
    WarningReason reason{};
    std::size_t entry = 0;       ///< index into the entries
    std::string before;          ///< the species that ruled until then, as typed (empty = default)
    std::string now;
};

/// Over a whole journal in order; species are compared without regard to case (ASCII: species names are Latin).
std::vector<Warning> warningsOf(std::span<const Entry> entries);

}
