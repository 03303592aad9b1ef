#include "ui/common/file_name.h"

#include <gtest/gtest.h>

namespace tierloam::ui {
namespace {

TEST(FileName, HoldsNothingThatPartsFolders)
{
    EXPECT_EQ(fileNameOf(QStringLiteral("A/B")), QStringLiteral("A_B"));
    EXPECT_EQ(fileNameOf(QStringLiteral("../A\\B: C\n")), QStringLiteral(".._A_B_ C_"));
    EXPECT_EQ(fileNameOf(QStringLiteral("Mühle, groß")), QStringLiteral("Mühle, groß"));
    EXPECT_EQ(fileNameOf(QString{200, u'm'}).size(), 80);
}

}
}
