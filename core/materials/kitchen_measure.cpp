#include "core/materials/kitchen_measure.h"

#include <array>

namespace tierloam::materials {

namespace {

constexpr std::string_view byDefinition = "by definition";

const std::array<MeasureRow, static_cast<std::size_t>(KitchenMeasure::count)> rows{{
    {KitchenMeasure::gram, Amount{1, Unit::g}.mass(), std::nullopt, byDefinition},
    {KitchenMeasure::kilogram, Amount{1, Unit::kg}.mass(), std::nullopt, byDefinition},
    {KitchenMeasure::ounce, Amount{1, Unit::oz}.mass(), std::nullopt, byDefinition},
    {KitchenMeasure::pound, Amount{1, Unit::lb}.mass(), std::nullopt, byDefinition},
    {KitchenMeasure::millilitre, std::nullopt, Amount{1, Unit::mL}.volume(), byDefinition},
    {KitchenMeasure::litre, std::nullopt, Amount{1, Unit::L}.volume(), byDefinition},
    {KitchenMeasure::cup, std::nullopt, Amount{1, Unit::cup}.volume(), byDefinition},
    {KitchenMeasure::tablespoon, std::nullopt, litres(0.015), "15 mL: common practice, no source"},
    {KitchenMeasure::handful, std::nullopt, litres(0.15), "0.15 L: our judgement, loosely taken"},
    {KitchenMeasure::bucket, std::nullopt, litres(10.0), "10 L: common practice, no source"},
}};

}

std::span<const MeasureRow> kitchenMeasures() { return rows; }

Mass freshMass(double number, KitchenMeasure measure, const Material& material)
{
    const MeasureRow& row = rows[static_cast<std::size_t>(measure)];
    if (row.mass) return *row.mass * number;
    return kilograms(row.volume->base() * number / 1000.0 * material.bulkKgPerM3);
}

}
