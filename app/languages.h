#pragma once

#include <QString>

namespace tierloam::app {

/// Our texts in the language of the locale, or of `language` when it is given; English plural forms when there is no translation.
/// Needs a QCoreApplication; the translators live as long as it does.
void useLanguage(const QString& language = {});

}
