#include "app/languages.h"

#include <QCoreApplication>
#include <QDir>
#include <QLibraryInfo>
#include <QLocale>
#include <QTranslator>

#include <memory>
#include <vector>

namespace tierloam::app {

namespace {

constexpr QLatin1StringView texts{":/i18n"}, ours{"tierloam"}, mark{"_"};

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

QStringList languages()
{
    QStringList codes = QDir{texts}.entryList({ours + mark + QStringLiteral("*.qm")}, QDir::Files, QDir::Name);
    for (QString& code : codes) code = code.chopped(3).mid(ours.size() + mark.size());
    return codes;
}

void useLanguage(const QString& language)
{
    for (const auto& old : inUse()) QCoreApplication::removeTranslator(old.get());
    inUse().clear();
    // A language of the system's own keeps the dates and decimals of its country.
    const QLocale system = QLocale::system();
    const QLocale wanted{language};
    QLocale::setDefault(language.isEmpty() || wanted.language() == system.language() ? system : wanted);
    auto own = std::make_unique<QTranslator>();
    const bool translated = own->load(QLocale{}, ours, mark, texts);
    if (!translated && !own->load(ours + QStringLiteral("_en"), texts)) return;
    use(std::move(own));
    if (!translated) return; // never Qt's alone, which would mix two languages in one window
    auto qt = std::make_unique<QTranslator>();
    if (qt->load(QLocale{}, QStringLiteral("qtbase"), mark, QLibraryInfo::path(QLibraryInfo::TranslationsPath))) use(std::move(qt));
}

}
