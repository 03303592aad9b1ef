#include "ui/common/material_names.h"

#include "core/materials/names.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>
#include <string>
#include <unordered_map>

namespace tierloam::ui {

namespace {

constexpr const char* context = "MaterialNames";

/// The names of resources/materials.csv in its order, marked for translators; a test holds both lists to be the same.
constexpr auto names = std::to_array<const char*>({
    QT_TRANSLATE_NOOP("MaterialNames", "corrugated cardboard shredded"),
    QT_TRANSLATE_NOOP("MaterialNames", "newspaper shredded"),
    QT_TRANSLATE_NOOP("MaterialNames", "office paper shredded"),
    QT_TRANSLATE_NOOP("MaterialNames", "paper egg tray"),
    QT_TRANSLATE_NOOP("MaterialNames", "pine shavings"),
    QT_TRANSLATE_NOOP("MaterialNames", "sawdust"),
    QT_TRANSLATE_NOOP("MaterialNames", "coconut coir (from a dry brick)"),
    QT_TRANSLATE_NOOP("MaterialNames", "leaves fallen"),
    QT_TRANSLATE_NOOP("MaterialNames", "wheat straw chopped"),
    QT_TRANSLATE_NOOP("MaterialNames", "peat"),
    QT_TRANSLATE_NOOP("MaterialNames", "grass clippings"),
    QT_TRANSLATE_NOOP("MaterialNames", "coffee grounds"),
    QT_TRANSLATE_NOOP("MaterialNames", "tea leaves spent"),
    QT_TRANSLATE_NOOP("MaterialNames", "fruit waste mixed"),
    QT_TRANSLATE_NOOP("MaterialNames", "vegetable scraps mixed"),
    QT_TRANSLATE_NOOP("MaterialNames", "kitchen mix"),
    QT_TRANSLATE_NOOP("MaterialNames", "banana peel"),
    QT_TRANSLATE_NOOP("MaterialNames", "eggshell crushed"),
    QT_TRANSLATE_NOOP("MaterialNames", "horse manure aged"),
    QT_TRANSLATE_NOOP("MaterialNames", "rabbit manure"),
    QT_TRANSLATE_NOOP("MaterialNames", "apple, with skin"),
    QT_TRANSLATE_NOOP("MaterialNames", "banana flesh"),
    QT_TRANSLATE_NOOP("MaterialNames", "orange flesh"),
    QT_TRANSLATE_NOOP("MaterialNames", "orange peel"),
    QT_TRANSLATE_NOOP("MaterialNames", "lemon peel"),
    QT_TRANSLATE_NOOP("MaterialNames", "watermelon flesh"),
    QT_TRANSLATE_NOOP("MaterialNames", "cantaloupe"),
    QT_TRANSLATE_NOOP("MaterialNames", "pineapple"),
    QT_TRANSLATE_NOOP("MaterialNames", "strawberry"),
    QT_TRANSLATE_NOOP("MaterialNames", "grapes"),
    QT_TRANSLATE_NOOP("MaterialNames", "pear"),
    QT_TRANSLATE_NOOP("MaterialNames", "peach"),
    QT_TRANSLATE_NOOP("MaterialNames", "avocado flesh"),
    QT_TRANSLATE_NOOP("MaterialNames", "lettuce, green leaf"),
    QT_TRANSLATE_NOOP("MaterialNames", "lettuce, iceberg"),
    QT_TRANSLATE_NOOP("MaterialNames", "spinach"),
    QT_TRANSLATE_NOOP("MaterialNames", "kale"),
    QT_TRANSLATE_NOOP("MaterialNames", "cabbage"),
    QT_TRANSLATE_NOOP("MaterialNames", "broccoli"),
    QT_TRANSLATE_NOOP("MaterialNames", "carrot"),
    QT_TRANSLATE_NOOP("MaterialNames", "potato, flesh+skin"),
    QT_TRANSLATE_NOOP("MaterialNames", "potato skin"),
    QT_TRANSLATE_NOOP("MaterialNames", "beet root"),
    QT_TRANSLATE_NOOP("MaterialNames", "tomato"),
    QT_TRANSLATE_NOOP("MaterialNames", "cucumber with peel"),
    QT_TRANSLATE_NOOP("MaterialNames", "summer squash"),
    QT_TRANSLATE_NOOP("MaterialNames", "pumpkin"),
    QT_TRANSLATE_NOOP("MaterialNames", "green pepper"),
    QT_TRANSLATE_NOOP("MaterialNames", "celery"),
    QT_TRANSLATE_NOOP("MaterialNames", "onion"),
    QT_TRANSLATE_NOOP("MaterialNames", "garlic"),
    QT_TRANSLATE_NOOP("MaterialNames", "snap beans"),
    QT_TRANSLATE_NOOP("MaterialNames", "green peas"),
    QT_TRANSLATE_NOOP("MaterialNames", "sweet corn"),
    QT_TRANSLATE_NOOP("MaterialNames", "mushroom, white"),
    QT_TRANSLATE_NOOP("MaterialNames", "bread, white"),
    QT_TRANSLATE_NOOP("MaterialNames", "bread, whole wheat"),
    QT_TRANSLATE_NOOP("MaterialNames", "rice, white, cooked"),
    QT_TRANSLATE_NOOP("MaterialNames", "pasta, cooked"),
    QT_TRANSLATE_NOOP("MaterialNames", "oats, dry"),
    QT_TRANSLATE_NOOP("MaterialNames", "egg (contents)"),
    QT_TRANSLATE_NOOP("MaterialNames", "meat"),
    QT_TRANSLATE_NOOP("MaterialNames", "fish"),
    QT_TRANSLATE_NOOP("MaterialNames", "cheese"),
    QT_TRANSLATE_NOOP("MaterialNames", "milk and yogurt"),
    QT_TRANSLATE_NOOP("MaterialNames", "oily food"),
    QT_TRANSLATE_NOOP("MaterialNames", "salty leftovers"),
    QT_TRANSLATE_NOOP("MaterialNames", "chilli pepper"),
    QT_TRANSLATE_NOOP("MaterialNames", "tea bags"),
    QT_TRANSLATE_NOOP("MaterialNames", "weeds with seeds"),
    QT_TRANSLATE_NOOP("MaterialNames", "manure of animals wormed lately"),
    QT_TRANSLATE_NOOP("MaterialNames", "chicken manure"),
    QT_TRANSLATE_NOOP("MaterialNames", "cat or dog droppings"),
    QT_TRANSLATE_NOOP("MaterialNames", "glossy paper"),
    QT_TRANSLATE_NOOP("MaterialNames", "till receipts"),
    QT_TRANSLATE_NOOP("MaterialNames", "treated or painted wood"),
    QT_TRANSLATE_NOOP("MaterialNames", "wood ash"),
    QT_TRANSLATE_NOOP("MaterialNames", "garden lime (calcium carbonate)"),
    QT_TRANSLATE_NOOP("MaterialNames", "slaked or quick lime"),
    QT_TRANSLATE_NOOP("MaterialNames", "compostable plastic"),
});

}

QString materialText(std::string_view name)
{
    // Lists ask for all of them at once, and sort by them.
    static const std::unordered_map<std::string, const char*> known = [] {
        std::unordered_map<std::string, const char*> made;
        for (const char* each : names) made.emplace(materials::folded(each), each);
        return made;
    }();
    const auto found = known.find(materials::folded(name));
    const QString asItIs = QString::fromUtf8(name.data(), static_cast<qsizetype>(name.size()));
    if (found == known.end()) return asItIs;
    const QString translated = QCoreApplication::translate(context, found->second);
    return translated == QLatin1StringView{found->second} ? asItIs : translated; // without a translation as it was written
}

const materials::Material* materialTyped(const materials::Table& table, const QString& typed)
{
    if (const materials::Material* row = table.find(typed.toStdString())) return row;
    const auto found = std::ranges::find_if(table.rows(), [&](const materials::Material& row) { return materialText(row.name).compare(typed, Qt::CaseInsensitive) == 0; });
    return found == table.rows().end() ? nullptr : &*found;
}

QStringList materialsNear(const materials::Table& table, const QString& typed)
{
    std::vector<std::string> shown;
    for (const materials::Material& row : table.rows()) shown.push_back(materialText(row.name).toStdString());
    QStringList near;
    for (const std::string& name : materials::nearestNames(typed.toStdString(), shown, 3)) near.append(QString::fromStdString(name));
    return near;
}

std::size_t namedMaterials() { return names.size(); }

}
