#include "core/materials/table.h"

#include "core/materials/names.h"
#include "core/materials/read_table.h"

#include <algorithm>
#include <array>

namespace tierloam::materials {

namespace {

constexpr std::array<std::string_view, 8> softeningNames{"soft", "mix", "coffee", "paper", "cardboard", "wood", "coir", "mineral"};

constexpr std::array<Species, 4> speciesTable{{
    {"Eisenia fetida", false},
    {"Eisenia andrei", false},
    {"Eudrilus eugeniae", true},
    {"Perionyx excavatus", true},
}};

Kind kindOf(SofteningClass softening)
{
    switch (softening) {
    case SofteningClass::paper:
    case SofteningClass::cardboard:
    case SofteningClass::wood:
    case SofteningClass::coir: return Kind::bedding;
    case SofteningClass::mineral: return Kind::mineral;
    case SofteningClass::soft:
    case SofteningClass::mix:
    case SofteningClass::coffee: break;
    }
    return Kind::food;
}

const Material* findIn(const std::vector<Material>& rows, std::string_view name)
{
    const std::string wanted = folded(name);
    const auto found = std::find_if(rows.begin(), rows.end(), [&](const Material& row) { return folded(row.name) == wanted; });
    return found == rows.end() ? nullptr : &*found;
}

}

Material materialOf(const journal::OwnMaterial& own)
{
    const Material& usual = *Table::builtIn().find(journal::defaultFood);
    Material material;
    material.name = own.name;
    material.softening = own.softening.value_or(usual.softening);
    const bool mineral = material.softening == SofteningClass::mineral;
    material.kind = kindOf(material.softening);
    material.moisturePercent = own.moisture ? own.moisture->percent() : usual.moisturePercent;
    material.nitrogenPercent = own.nitrogenPercent.value_or(mineral ? 0.0 : usual.nitrogenPercent);
    material.carbonToNitrogen = own.carbonToNitrogen || mineral ? own.carbonToNitrogen : usual.carbonToNitrogen;
    material.bulkKgPerM3 = own.bulkKgPerM3.value_or(usual.bulkKgPerM3);
    material.waterHeldKgPerKg = own.waterHeldKgPerKg.value_or(usual.waterHeldKgPerKg);
    const bool doubted = own.doubt.value_or(Doubt::none) != Doubt::none;
    material.welcome = own.welcome.value_or(doubted ? Welcome::aLittle : Welcome::yes);
    material.doubt = material.welcome == Welcome::yes ? Doubt::none : own.doubt.value_or(Doubt::none); // a reason without a doubt is none
    material.own = true;
    return material;
}

const Table& Table::builtIn()
{
    static const Table table = [] {
        Table made;
        made.rows_ = readTable(compiledTable);
        return made;
    }();
    return table;
}

Table Table::withOwn(std::span<const journal::Entry> entries)
{
    Table table = builtIn();
    for (const journal::Entry& entry : entries) {
        const auto* own = std::get_if<journal::OwnMaterial>(&entry.action);
        if (!own) continue;
        Material material = materialOf(*own);
        material.source = entry.note;
        const Material* known = table.find(own->name);
        if (known) {
            table.rows_[static_cast<std::size_t>(known - table.rows_.data())] = material;
        } else {
            table.rows_.push_back(material);
        }
    }
    return table;
}

const Material* Table::find(std::string_view name) const { return findIn(rows_, name); }

std::vector<std::string> Table::nearest(std::string_view name, std::size_t most) const
{
    std::vector<std::string> names;
    for (const Material& row : rows_) names.push_back(row.name);
    return nearestNames(name, names, most);
}

std::optional<Mass> freshMass(const Amount& amount, const Material& material)
{
    if (const auto mass = amount.mass()) return mass;
    if (const auto volume = amount.volume()) return kilograms(volume->base() / 1000.0 * material.bulkKgPerM3);
    return std::nullopt;
}

std::string_view softeningName(SofteningClass softening) { return softeningNames[static_cast<std::size_t>(softening)]; }

std::optional<SofteningClass> softeningNamed(std::string_view name)
{
    for (std::size_t i = 0; i < softeningNames.size(); ++i)
        if (softeningNames[i] == name) return static_cast<SofteningClass>(i);
    return std::nullopt;
}

std::string_view doubtName(Doubt doubt) { return doubt == Doubt::none ? std::string_view{} : journal::doubtWords[static_cast<std::size_t>(doubt)]; }

std::optional<Doubt> doubtNamed(std::string_view name)
{
    for (std::size_t i = 0; i < journal::doubtWords.size(); ++i)
        if (doubtName(static_cast<Doubt>(i)) == name) return static_cast<Doubt>(i);
    return std::nullopt;
}

std::span<const Species> species() { return speciesTable; }

const Species* speciesNamed(std::string_view name)
{
    const std::string wanted = folded(name.empty() ? journal::defaultSpecies : name);
    for (const Species& one : speciesTable)
        if (folded(one.name) == wanted) return &one;
    return nullptr;
}

}
