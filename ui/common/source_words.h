#pragma once

#include <QString>
#include <QStringList>

#include <string_view>

/// Sources of figures, materials, cautions and parameters as people read them. The tables hold one text; the title of a published work stays as
/// it is in every language, and what we say of it ("second hand", "rest memory") is translated.
namespace tierloam::ui {

/// The source with our own words in the language of the program. Parts are parted by "; ", ": ", ", " and a pair of brackets at the end.
QString sourceWords(std::string_view source);
inline QString sourceWords(const QString& source) { return sourceWords(std::string_view{source.toStdString()}); }

/// The least parts into which it falls, for tests: each is a title or one of our phrases.
QStringList sourceParts(const QString& source);
bool isOurPhrase(const QString& part);

}
