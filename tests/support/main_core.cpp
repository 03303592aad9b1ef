#include "tests/support/private_folders.h"

#include <gmock/gmock.h>

#include <QCoreApplication>
#include <QLocale>

int main(int argc, char** argv)
{
    const tierloam::tests::PrivateFolders folders;
    tierloam::tests::fixZoneAndLocale();
    testing::InitGoogleMock(&argc, argv);
    QLocale::setDefault(QLocale{QLocale::English, QLocale::UnitedKingdom});
    const QCoreApplication application{argc, argv};
    QCoreApplication::setApplicationName(QStringLiteral("tierloam"));
    return RUN_ALL_TESTS();
}
