#pragma once

#include "core/materials/table.h"

#include <string_view>
#include <vector>

namespace tierloam::materials {

/// Reads the materials table: a header row, then one material a row, with the columns of resources/materials.csv in that order.
/// A row gives either protein and ash (% of fresh mass), from which nitrogen (protein ÷ 6.25) and carbon ((100 − ash) ÷ 1.8,
/// both in % of dry matter) follow, or nitrogen (% of dry matter) with C:N, which may be absent: no source of carbon.
/// What is not welcome names its doubt. Source of both rules: Cornell Waste Management Institute; Adams et al. 1951.
/// Throws std::runtime_error "materials.csv:LINE: …" at the first fault: the table is part of the program, so a fault is ours.
std::vector<Material> readTable(std::string_view csv);

/// The text of resources/materials.csv as it was when the program was built.
extern const std::string_view compiledTable;

}
