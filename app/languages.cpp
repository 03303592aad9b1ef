#include "app/languages.h"

#include <QCoreApplication>
#include <QLibraryInfo>
#include <QLocale>
#include <QTranslator>

#include <memory>
#include <vector>

namespace tierloam::app {

namespace {

/// Those in use, ours first; they go when another language is chosen.
std::vector<std::unique_ptr<QTranslator>>& inUse()
{
    static std::vector<std::unique_ptr<QTranslator>> translators;
    return translators;
}

void use(std::unique_ptr<QTranslator> translator)
{
    QCoreApplication::installTranslator(translator.get());
    inUse().push_back(std::move(translator));
}

}

void useLanguage(const QString& language)
{
    for (const auto& old : inUse()) QCoreApplication::removeTranslator(old.get());
    inUse().clear();
    // A language of the system's own keeps the dates and decimals of its country.
    const QLocale system = QLocale::system();
    const QLocale wanted{language};
    QLocale::setDefault(language.isEmpty() || wanted.language() == system.language() ? system : wanted);
    const QString texts = QStringLiteral(":/i18n");
    auto own = std::make_unique<QTranslator>();
    const bool translated = own->load(QLocale{}, QStringLiteral("tierloam"), QStringLiteral("_"), texts);
    if (!translated && !own->load(QStringLiteral("tierloam_en"), texts)) return;
    use(std::move(own));
    if (!translated) return; // never Qt's alone, which would mix two languages in one window
    auto qt = std::make_unique<QTranslator>();
    if (qt->load(QLocale{}, QStringLiteral("qtbase"), QStringLiteral("_"), QLibraryInfo::path(QLibraryInfo::TranslationsPath))) use(std::move(qt));
}

}
