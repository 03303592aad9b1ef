// Files of one name are told apart where they were opened lately.
#include "ui/forms/welcome.h"

#include <gtest/gtest.h>

#include <QPushButton>

namespace tierloam::forms {
namespace {

QStringList namesOf(const QStringList& paths)
{
    Welcome page;
    page.setRecentFiles(paths);
    page.resize(1000, 640);
    page.show();
    QStringList names;
    for (const QPushButton* button : page.findChildren<QPushButton*>())
        if (paths.contains(button->accessibleDescription())) names << button->text();
    return names;
}

TEST(WelcomeFiles, EqualNamesAreToldApartByTheirFolders)
{
    EXPECT_EQ(namesOf({QStringLiteral("/pantry/worms.tierloam"), QStringLiteral("/shed/worms.tierloam"), QStringLiteral("/shed/oats & tea.tierloam")}),
              (QStringList{QStringLiteral("worms in /pantry"), QStringLiteral("worms in /shed"), QStringLiteral("oats && tea")}));
}

TEST(WelcomeFiles, ALongFolderGivesWayInItsMiddle)
{
    const QString deep = QStringLiteral("/a folder of a rather long name").repeated(12);
    const QStringList names = namesOf({deep + QStringLiteral("/east/worms.tierloam"), deep + QStringLiteral("/west/worms.tierloam")});
    ASSERT_EQ(names.size(), 2);
    for (const QString& name : names) EXPECT_LT(name.size(), 120) << name.toStdString();
    EXPECT_TRUE(names.front().startsWith(QStringLiteral("worms in /a folder")) && names.front().endsWith(QStringLiteral("east")));
    EXPECT_NE(names.front(), names.back());
}

}
}
