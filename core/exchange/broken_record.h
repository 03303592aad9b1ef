#pragma once

#include "core/exchange/csv.h"
#include "core/exchange/fault.h"

#include <optional>

namespace tierloam::exchange {

/// Why a record cannot be taken apart into cells, as a fault of the whole row (Fault::line is not set); nullopt when it can.
std::optional<Fault> brokenRecord(const csv::Record& record);

}
