#include "tests/support/private_folders.h"

#include <gmock/gmock.h>

#include <QApplication>
#include <QFont>
#include <QFontInfo>
#include <QLocale>
#include <QStyleFactory>

#include <cstdio>

int main(int argc, char** argv)
{
    const tierloam::tests::PrivateFolders folders;
    tierloam::tests::fixZoneAndLocale();
    setenv("QT_QPA_PLATFORM", "offscreen", 1);
    testing::InitGoogleMock(&argc, argv);
    QLocale::setDefault(QLocale{QLocale::English, QLocale::UnitedKingdom});
    const QApplication application{argc, argv};
    QCoreApplication::setApplicationName(QStringLiteral("tierloam"));
    QApplication::setStyle(QStyleFactory::create(QStringLiteral("Fusion")));
    const QFont font{QStringLiteral("DejaVu Sans"), 10};
    if (QFontInfo{font}.family() != QStringLiteral("DejaVu Sans")) {
        // Sizes and pictures would depend on whatever font stands in for it.
        std::fputs("the tests need the font DejaVu Sans (package fonts-dejavu-core)\n", stderr);
        return EXIT_FAILURE;
    }
    QApplication::setFont(font);
    return RUN_ALL_TESTS();
}
