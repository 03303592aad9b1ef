#include "app/languages.h"

#include <QCoreApplication>
#include <QLibraryInfo>
#include <QLocale>
#include <QTranslator>

namespace tierloam::app {

void useLanguage(const QString& language)
{
    if (!language.isEmpty()) QLocale::setDefault(QLocale{language});
    const QString texts = QStringLiteral(":/i18n");
    auto* own = new QTranslator{QCoreApplication::instance()};
    const bool translated = own->load(QLocale{}, QStringLiteral("tierloam"), QStringLiteral("_"), texts);
    if (!translated && !own->load(QStringLiteral("tierloam_en"), texts)) return;
    QCoreApplication::installTranslator(own);
    if (!translated) return; // never Qt's alone, which would mix two languages in one window
    auto* qt = new QTranslator{QCoreApplication::instance()};
    if (qt->load(QLocale{}, QStringLiteral("qtbase"), QStringLiteral("_"), QLibraryInfo::path(QLibraryInfo::TranslationsPath)))
        QCoreApplication::installTranslator(qt);
}

}
