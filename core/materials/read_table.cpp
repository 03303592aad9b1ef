#include "core/materials/read_table.h"

#include "core/materials/names.h"
#include "core/quantity/number_text.h"

#include <array>
#include <set>
#include <stdexcept>
#include <string>

namespace tierloam::materials {

namespace {

constexpr std::string_view headerRow = "item,kind,softening_class,moisture_pct,protein_pct,ash_pct,nitrogen_pct_dm,c_to_n,bulk_kg_m3,"
                                       "holds_kg_water_per_kg_dm,welcome,doubt,source";

enum Column { item, kind, softening, moisture, protein, ash, nitrogen, carbonToNitrogen, bulk, waterHeld, welcome, doubt, source, columns };
using Fields = std::array<std::string, columns>;

class RowReader {
public:
    RowReader(std::string_view row, int line) : row_{row}, line_{line} {}

    Fields fields() const
    {
        Fields result;
        std::size_t at = 0;
        for (int column = 0; column < columns; ++column) {
            at = readField(at, result[static_cast<std::size_t>(column)]);
            const bool last = column == columns - 1;
            if (last ? at != row_.size() : (at >= row_.size() || row_[at] != ',')) fail("not " + std::to_string(columns) + " fields");
            ++at;
        }
        return result;
    }

    [[noreturn]] void fail(const std::string& what) const { throw std::runtime_error{"materials.csv:" + std::to_string(line_) + ": " + what}; }

    double number(const std::string& text, double least, double greatest) const
    {
        const auto value = parseNumber(text);
        if (!value || *value < least || *value > greatest) fail("found «" + text + "»");
        return *value;
    }

private:
    std::size_t readField(std::size_t at, std::string& field) const
    {
        if (at >= row_.size() || row_[at] != '"') {
            const std::size_t end = std::min(row_.find(',', at), row_.size());
            field = at < row_.size() ? row_.substr(at, end - at) : std::string_view{};
            return end;
        }
        for (++at; at < row_.size(); ++at) {
            if (row_[at] != '"') {
                field += row_[at];
            } else if (at + 1 < row_.size() && row_[at + 1] == '"') {
                field += row_[at++];
            } else {
                return at + 1;
            }
        }
        fail("a quote is left open");
    }

    std::string_view row_;
    int line_;
};

Kind kindNamed(const std::string& name, const RowReader& row)
{
    if (name == "food") return Kind::food;
    if (name == "bedding") return Kind::bedding;
    if (name == "mineral") return Kind::mineral;
    row.fail("no kind «" + name + "»");
}

Welcome welcomeNamed(const std::string& name, const RowReader& row)
{
    if (name == "yes") return Welcome::yes;
    if (name == "a little") return Welcome::aLittle;
    if (name == "no") return Welcome::no;
    row.fail("no welcome «" + name + "»");
}

Material materialOf(const RowReader& row)
{
    const Fields fields = row.fields();
    Material material;
    material.name = fields[item];
    if (material.name.empty()) row.fail("no name");
    material.kind = kindNamed(fields[kind], row);
    const auto softens = softeningNamed(fields[softening]);
    if (!softens) row.fail("no softening class «" + fields[softening] + "»");
    material.softening = *softens;
    material.moisturePercent = row.number(fields[moisture], 0.0, 99.0);
    const bool byProtein = !fields[protein].empty();
    if (byProtein == !fields[nitrogen].empty()) row.fail("either protein or nitrogen");
    if (byProtein) {
        const double dry = 100.0 - material.moisturePercent;
        const double carbonPercent = (100.0 - row.number(fields[ash], 0.0, dry) / dry * 100.0) / 1.8;
        material.nitrogenPercent = row.number(fields[protein], 0.001, dry) / 6.25 / dry * 100.0;
        material.carbonToNitrogen = carbonPercent / material.nitrogenPercent;
    } else {
        material.nitrogenPercent = row.number(fields[nitrogen], 0.001, 30.0);
        if (!fields[carbonToNitrogen].empty()) material.carbonToNitrogen = row.number(fields[carbonToNitrogen], 1.0, 2000.0);
    }
    material.bulkKgPerM3 = row.number(fields[bulk], 1.0, 3000.0);
    material.waterHeldKgPerKg = row.number(fields[waterHeld], 0.0, 20.0);
    material.welcome = welcomeNamed(fields[welcome], row);
    const auto why = doubtNamed(fields[doubt]);
    if (!why) row.fail("no doubt «" + fields[doubt] + "»");
    material.doubt = *why;
    if ((material.doubt == Doubt::none) != (material.welcome == Welcome::yes)) row.fail("a doubt belongs to what is not welcome, and to nothing else");
    material.source = fields[source];
    if (material.source.empty()) row.fail("no source");
    return material;
}

}

std::vector<Material> readTable(std::string_view csv)
{
    std::vector<Material> result;
    std::set<std::string> names;
    int line = 0;
    while (!csv.empty()) {
        const std::size_t end = std::min(csv.find('\n'), csv.size());
        const RowReader row{csv.substr(0, end), ++line};
        if (line == 1) {
            if (csv.substr(0, end) != headerRow) row.fail("not the header of the materials table");
        } else {
            result.push_back(materialOf(row));
            if (!names.insert(folded(result.back().name)).second) row.fail("«" + result.back().name + "» stands there twice");
        }
        csv.remove_prefix(std::min(end + 1, csv.size()));
    }
    if (result.empty()) throw std::runtime_error{"materials.csv: no row"};
    return result;
}

}
