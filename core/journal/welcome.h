#pragma once

#include <array>
#include <cstddef>
#include <string_view>

/// Whether a material belongs into a worm bin, and why not: of the table of materials, and of own materials in the journal.
namespace tierloam::journal {

enum class Welcome { yes, aLittle, no };
inline constexpr std::array<std::string_view, 3> welcomeWords{"yes", "little", "no"}; ///< in the journal and in the household file

/// Why a material is welcome only a little, or not at all. `none` belongs to those that are welcome.
enum class Doubt {
    none, acid, pungent, starch, salty, oily, animal, dairy, droppings, dewormer, hot, heats, seeds, bags, coated, treated, caustic, plastic, peatland,
    count
};
inline constexpr std::array<std::string_view, static_cast<std::size_t>(Doubt::count)> doubtWords{
    "none", "acid", "pungent", "starch", "salty", "oily", "animal", "dairy", "droppings", "dewormer",
    "hot", "heats", "seeds", "bags", "coated", "treated", "caustic", "plastic", "peatland"};

}
