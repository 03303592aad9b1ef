#pragma once

#include "ui/common/field.h"

#include <QString>

#include <optional>

namespace tierloam::ui {

/// Reads a number that a person typed. Comma and point are both decimal marks; a thousands mark is never guessed: a number with two
/// marks, or with blanks or apostrophes inside, is a problem told in words. Blanks around it do not matter; empty is no value and no problem.
Typed<double> typedNumber(const QString& text);

/// As it would be typed: the shortest decimal that reads back the same, with the decimal mark of QLocale's default, no thousands marks.
QString typedText(double value);

/// Parts a number from a unit typed behind it, as in "1,2 kg": {"1,2", "kg"}.
std::pair<QString, QString> partedUnit(const QString& text);

}
