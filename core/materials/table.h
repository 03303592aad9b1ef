#pragma once

#include "core/journal/entry.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace tierloam::materials {

using journal::Doubt;
using journal::SofteningClass;
using journal::Welcome;

enum class Kind { food, bedding, mineral };

/// One row of the materials table; every number as it comes to hand.
struct Material {
    std::string name;
    Kind kind = Kind::food;
    SofteningClass softening = SofteningClass::mix;
    double moisturePercent = 0;      ///< of fresh mass
    double nitrogenPercent = 0;      ///< of dry matter
    std::optional<double> carbonToNitrogen; ///< absent: no carbon source (eggshell)
    double bulkKgPerM3 = 0;          ///< fresh, loose
    double waterHeldKgPerKg = 0;     ///< at field capacity, per kg dry matter
    Welcome welcome = Welcome::yes;
    Doubt doubt = Doubt::none;
    std::string source;              ///< of an own material: the note of its entry, which may be empty
    bool own = false;
    bool operator==(const Material&) const = default;

    double dryShare() const { return 1.0 - moisturePercent / 100.0; }
    /// kg C per kg dry matter.
    double carbonShare() const { return carbonToNitrogen ? nitrogenPercent / 100.0 * *carbonToNitrogen : 0.0; }
};

/// The row of an own material. What it leaves out is that of `kitchen mix`; a mineral that leaves out nitrogen or C:N holds none.
/// Its kind follows from its softening class.
Material materialOf(const journal::OwnMaterial& own);

/// The built-in table and the household's own materials, found by name without regard to case.
class Table {
public:
    /// The table of resources/, compiled in; parsed once.
    static const Table& builtIn();
    /// The built-in table with the journal's own materials added or replaced, in force whatever their date; of two with one name
    /// the later in the journal rules.
    static Table withOwn(std::span<const journal::Entry> entries);

    const Material* find(std::string_view name) const;         ///< without regard to case; nullptr when unknown
    /// What may have been meant by an unknown name, nearest first; never empty.
    std::vector<std::string> nearest(std::string_view name, std::size_t most = 3) const;
    const std::vector<Material>& rows() const { return rows_; }

private:
    std::vector<Material> rows_;
};

/// Fresh mass of an amount as it comes to hand: volume by the material's bulk. nullopt for a count.
std::optional<Mass> freshMass(const Amount& amount, const Material& material);

std::string_view softeningName(SofteningClass softening);
std::optional<SofteningClass> softeningNamed(std::string_view name);

/// The word of the table; empty for none.
std::string_view doubtName(Doubt doubt);
std::optional<Doubt> doubtNamed(std::string_view name);

struct Species { std::string_view name; bool weak; };
/// Eisenia fetida, Eisenia andrei, Eudrilus eugeniae, Perionyx excavatus.
std::span<const Species> species();
/// Case-insensitive; empty = the default species; nullptr when unknown.
const Species* speciesNamed(std::string_view name);

}
