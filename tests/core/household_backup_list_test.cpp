// What works beside the window begins when somebody listens: a folder without backups is looked through before anybody could be connected.
#include "core/household/backup_list.h"
#include "tests/core/household_fixture.h"

#include <QThread>

namespace tierloam::household {

namespace {

/// Longer than a thread takes to be made and to look into an empty folder.
constexpr unsigned long aWhileMs = 200;

TEST(HouseholdBackupList, WhoConnectsLateHearsThatItHasFinished)
{
    const QTemporaryDir folder;
    BackupList list{folder.filePath(QStringLiteral("mill.tierloam")), {}};
    QThread::msleep(aWhileMs);
    std::optional<int> told;
    QObject::connect(&list, &BackupList::finished, &list, [&](int count) { told = count; }, Qt::QueuedConnection);
    list.start();
    ASSERT_TRUE(QTest::qWaitFor([&] { return told.has_value(); }, 5000));
    EXPECT_EQ(told, 0);
}

TEST(HouseholdBackupList, WhoConnectsLateHearsWhyNothingWasRestored)
{
    const QTemporaryDir folder;
    const QString target = folder.filePath(QStringLiteral("new.tierloam"));
    Restoring restoring{folder.filePath(QStringLiteral("gone.tierloam")), target};
    QThread::msleep(aWhileMs);
    std::optional<QString> told;
    QObject::connect(&restoring, &Restoring::finished, &restoring, [&](const QString& why) { told = why; }, Qt::QueuedConnection);
    restoring.start();
    ASSERT_TRUE(QTest::qWaitFor([&] { return told.has_value(); }, 5000));
    EXPECT_FALSE(told->isEmpty());
    EXPECT_FALSE(QFile::exists(target));
}

TEST(HouseholdBackupList, WhatIsNeverStartedGoesInSilence)
{
    const QTemporaryDir folder;
    const BackupList list{folder.filePath(QStringLiteral("mill.tierloam")), {}};
    const Restoring restoring{folder.filePath(QStringLiteral("gone.tierloam")), folder.filePath(QStringLiteral("new.tierloam"))};
}

}

}
