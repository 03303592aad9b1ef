#pragma once

#include "core/materials/table.h"

#include <QString>
#include <QStringList>

/// Names of materials in the language of the window. The journal and the household file keep the name of the table, whatever the language.
namespace tierloam::ui {

/// A name of the built-in table translated; an own name as it is.
QString materialText(std::string_view name);
/// The row that was typed: by the table's name, else by its translation, without regard to case; nullptr when neither.
const materials::Material* materialTyped(const materials::Table& table, const QString& typed);
/// What may have been meant by an unknown name, in the language of the window, nearest first; never empty.
QStringList materialsNear(const materials::Table& table, const QString& typed);
/// How many names are marked for translators.
std::size_t namedMaterials();

}
