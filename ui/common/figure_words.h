#pragma once

#include "core/guide/figures.h"

#include <QString>

/// Rows of the table of figures as people read them. Texts of the handbook name a figure by its key in braces, "{stock}", and never write a
/// number themselves, so that each number has its row and its source.
namespace tierloam::ui {

/// "2 to 7 days", "10 to 20 %", "110 to 450 g": in the units chosen, with the decimals of the locale.
QString figureText(const guide::FigureRow& row);
inline QString figureText(guide::Figure figure) { return figureText(guide::figureRow(figure)); }
/// "published", "memory": on what a row rests.
QString basisText(guide::Basis basis);
/// "NC State Extension" or "common practice, no source": as a note beside a number; memory is marked as such.
QString sourceText(const guide::FigureRow& row);
/// The text with every "{key}" replaced by its figure. A key that has no row stays as it is.
QString withFigures(const QString& text);

}
