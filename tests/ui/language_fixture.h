#pragma once

#include "tests/ui/window_fixture.h"

#include <QFileInfo>
#include <QLocale>
#include <QStringBuilder>
#include <QTranslator>

namespace tierloam::window {

/// The real window in a language, with its formats; English again afterwards.
class LanguageTest : public WindowTest {
protected:
    void TearDown() override
    {
        WindowTest::TearDown();
        QCoreApplication::removeTranslator(&texts_);
        QLocale::setDefault(QLocale{QLocale::English, QLocale::UnitedKingdom});
    }
    /// Makes the window anew in that language, with letters of that size.
    void speak(const char* language, int scale = 100)
    {
        const bool english = QLatin1StringView{language} == QLatin1StringView{"en"};
        ASSERT_TRUE(texts_.load(QStringLiteral("tierloam_") % QString::fromLatin1(language), QFileInfo{QStringLiteral(TIERLOAM_PROGRAM)}.absolutePath())) << language;
        QLocale::setDefault(english ? QLocale{QLocale::English, QLocale::UnitedKingdom} : QLocale{QString::fromLatin1(language)});
        QCoreApplication::installTranslator(&texts_);
        make();
        theme_->setFontScale(scale);
        theme_->apply();
    }

private:
    QTranslator texts_;
};

}
