#pragma once

#include "core/quantity/measures.h"

#include <array>
#include <optional>
#include <string_view>

namespace tierloam {

/// The units of the journal's `unit` column. US measures: cup, gal, floz.
enum class Unit { g, kg, oz, lb, mL, L, cup, gal, floz, count };

inline constexpr std::array allUnits{Unit::g, Unit::kg, Unit::oz, Unit::lb, Unit::mL, Unit::L, Unit::cup, Unit::gal, Unit::floz, Unit::count};

enum class UnitKind { mass, volume, count };

UnitKind kindOf(Unit unit);
/// The name as written in the journal: "g", "kg", …, "count".
std::string_view nameOf(Unit unit);
/// Exact, case-sensitive; nullopt for any other text.
std::optional<Unit> unitNamed(std::string_view name);
/// How many kg (mass) or L (volume) one of this unit is; 1 for count.
double inBaseUnit(Unit unit);

/// A number with the unit it was typed in, kept as typed so that export gives it back.
struct Amount {
    double value = 0.0;
    Unit unit = Unit::g;

    std::optional<Mass> mass() const;     ///< nullopt unless the unit is one of mass
    std::optional<Volume> volume() const; ///< nullopt unless the unit is one of volume
    bool operator==(const Amount&) const = default;
};

}
