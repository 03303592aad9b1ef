#include "tests/support/private_folders.h"

#include <gmock/gmock.h>

int main(int argc, char** argv)
{
    const tierloam::tests::PrivateFolders folders;
    tierloam::tests::fixZoneAndLocale();
    testing::InitGoogleMock(&argc, argv);
    return RUN_ALL_TESTS();
}
