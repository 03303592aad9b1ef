#pragma once

#include "core/model/block.h"

#include <cstdint>
#include <span>
#include <string_view>

namespace tierloam::model {

/// Rows of ParameterBlock::value.
enum class Parameter : int {
    ingestion,            ///< g DM/d of a worm of 1 g
    halfSaturation,       ///< kg/m²
    assimilation,         ///< share
    maintenance,          ///< g DM/d of a worm of 1 g at 25 °C
    reserveRate,          ///< 1/d
    layingShare,          ///< least share of an adult's surplus
    hatchSuccess,         ///< share
    youngPerCocoon,
    incubation,           ///< d·K
    death,                ///< 1/d
    crowdingGrowth,       ///< B50, kg LW/m²
    crowdingLaying,       ///< B_k, kg LW/m²
    softeningFood,        ///< scale of soft, mix and coffee
    softeningPaper,       ///< scale of all other classes
    wormFactor,
    airHalf,              ///< X50, kg DM/m²/d
    respiredSoftening,    ///< share
    castingsRespiration,  ///< 1/d at 25 °C
    growthColdest,        ///< Tmin, °C
    growthBest,           ///< Topt, °C
    growthHottest,        ///< Tmax, °C
    fieldCapacity,        ///< scale
    bypass,               ///< share of water poured beyond the deficit that reaches the sump at once
    evaporation,          ///< kg/m²/d/kPa under the lid
    lightDrying,          ///< time constant, d
    saltYield,            ///< kg per kg DM ingested
    stockBias,            ///< true mass of worms bought ÷ the mass written
    scaleBias,            ///< true mass ÷ mass read on the household's scale
    tare,                 ///< kg, of an empty tray
    recovery,             ///< share of the worms found by one who searches
    abundanceSense,       ///< u: how many worms this household calls some or many, log shift of the cuts
    unwritten,            ///< chance that a usual feeding without an entry was given all the same
    count
};
static_assert(static_cast<int>(Parameter::count) == parameterCount);

/// How a parameter is distributed: centre is the median; on this scale it is normal with sd = (upper − lower)/3.29.
enum class Scale { linear, logarithmic, logit };

struct ParameterRow {
    Parameter parameter;
    std::string_view name;   ///< of the trade, for the handbook
    std::string_view unit;
    double centre, lower, upper; ///< 90 % range
    Scale scale;
    std::string_view basis;
};

/// All rows, in the order of the enumeration.
std::span<const ParameterRow> parameterTable();

struct SpeciesTemperatures { double coldest, best, hottest; };
/// Cardinal temperatures of growth and ingestion by species name; the default for an unknown one is Eisenia fetida's.
SpeciesTemperatures speciesTemperatures(std::string_view species);

/// Every member at the centre of every row.
void setToCentre(ParameterBlock& block, const SpeciesTemperatures& species);

/// Where 64 members stand in the prior: every row as a standard normal, 0 at the centre. Filters and drift work on these, values follow.
struct alignas(64) StandingBlock { Members z[parameterCount]; };

/// Drawn, keyed by the stack key and the number of the member; block `index` holds members 64·index …
void draw(StandingBlock& standing, std::uint64_t stackKey, int index);
/// The values that belong to these standings.
void setFrom(ParameterBlock& block, const StandingBlock& standing, const SpeciesTemperatures& species);

/// Parameters drift back to their prior with a time constant of 730 d and renew as much as they lose; taken in one go every so many days.
inline constexpr int driftEveryDays = 30;
void drift(StandingBlock& standing, std::uint64_t stackKey, int day, int index);

}
