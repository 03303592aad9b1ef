#pragma once

#include "core/journal/action.h"

namespace tierloam::reckoning {

/// The most that one drain can give: what the sump holds while its spigot is shut. While it is open the sump keeps nearly nothing and what ran off since
/// stands in a jar, a bucket at most: five sumps, ours. The usual drain is never more (usual.h).
Volume mostDrained(Volume sump, journal::Spigot spigot);

}
