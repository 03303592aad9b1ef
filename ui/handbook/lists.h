#pragma once

#include "core/guide/figures.h"
#include "ui/handbook/handbook_html.h"

namespace tierloam::handbook {

/// A table made when a page is shown: a head and rows of plain text.
struct MadeList {
    QStringList head;
    QList<QStringList> rows;
    QString instead;     ///< a sentence when there are no rows
};

/// By the name in a `list` block; nullopt for an unknown name.
std::optional<MadeList> madeList(std::string_view name, const PageFacts& facts);

/// What a row of the table of figures is about, in words.
QString figureName(guide::Figure figure);
/// A parameter's name, translated; and whether it is among those that translators get to see.
QString parameterName(std::string_view name);
bool isParameterTranslated(std::string_view name);

}
