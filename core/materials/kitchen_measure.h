#pragma once

#include "core/materials/table.h"

#include <span>

namespace tierloam::materials {

/// What stuff is measured by in a kitchen: scales, and vessels that are at hand. Finer than the units of the journal, and used only in reckoning mixes.
enum class KitchenMeasure { gram, kilogram, ounce, pound, millilitre, litre, cup, tablespoon, handful, bucket, count };

/// One kilogram or one litre of which; a vessel is a volume, loosely filled.
struct MeasureRow {
    KitchenMeasure measure{};
    std::optional<Mass> mass;
    std::optional<Volume> volume;
    std::string_view source;
};
/// In the order of the enumeration. Units by definition; the cup is that of the United States; spoon, handful and bucket say on what they rest.
std::span<const MeasureRow> kitchenMeasures();

/// Fresh mass of so many measures of a material; volume by its bulk.
Mass freshMass(double number, KitchenMeasure measure, const Material& material);

}
