#pragma once

#include <QString>
#include <QStringList>

namespace tierloam::app {

/// Codes of the languages that there are texts for, as in the names of their files: "de", "en".
QStringList languages();

/// Our texts in the language of the locale, or of `language` when it is given; English plural forms when there is no translation.
/// Needs a QCoreApplication; may be called again, and the window is then to be built anew. Qt's own texts come from the system's qtbase_*.qm.
void useLanguage(const QString& language = {});

}
