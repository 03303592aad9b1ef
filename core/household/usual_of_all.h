#pragma once

#include "core/household/usual.h"

#include <map>

namespace tierloam::household {

/// The usual amounts of every stack that has entries; the journal is gone through once for all of them, which matters to 200 stacks.
std::map<std::string, Usual> usualOfAll(const journal::Entries& entries, const materials::Table& materials, Day upTo);

}
