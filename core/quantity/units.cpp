#include "core/quantity/units.h"

namespace tierloam {

namespace {

struct UnitRow {
    Unit unit;
    std::string_view name;
    UnitKind kind;
    double base;
};

// NIST Handbook 44, appendix C: avoirdupois pound 0.45359237 kg, US gallon 3.785411784 L; cup = 1/16 gal, fluid ounce = 1/128 gal.
// The cup and the fluid ounce are rounded as the journal format states them.
constexpr std::array<UnitRow, allUnits.size()> rows{{
    {Unit::g, "g", UnitKind::mass, 0.001},
    {Unit::kg, "kg", UnitKind::mass, 1.0},
    {Unit::oz, "oz", UnitKind::mass, 0.028349523},
    {Unit::lb, "lb", UnitKind::mass, 0.45359237},
    {Unit::mL, "mL", UnitKind::volume, 0.001},
    {Unit::L, "L", UnitKind::volume, 1.0},
    {Unit::cup, "cup", UnitKind::volume, 0.236588},
    {Unit::gal, "gal", UnitKind::volume, 3.785411784},
    {Unit::floz, "floz", UnitKind::volume, 0.0295735},
    {Unit::count, "count", UnitKind::count, 1.0},
}};

const UnitRow& rowOf(Unit unit) { return rows[static_cast<std::size_t>(unit)]; }

}

UnitKind kindOf(Unit unit) { return rowOf(unit).kind; }
std::string_view nameOf(Unit unit) { return rowOf(unit).name; }
double inBaseUnit(Unit unit) { return rowOf(unit).base; }

std::optional<Unit> unitNamed(std::string_view name)
{
    for (const UnitRow& row : rows)
        if (row.name == name) return row.unit;
    return std::nullopt;
}

std::optional<Mass> Amount::mass() const
{
    if (kindOf(unit) != UnitKind::mass) return std::nullopt;
    return Mass{value * inBaseUnit(unit)};
}

std::optional<Volume> Amount::volume() const
{
    if (kindOf(unit) != UnitKind::volume) return std::nullopt;
    return Volume{value * inBaseUnit(unit)};
}

}
