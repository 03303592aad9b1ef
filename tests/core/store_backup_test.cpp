#include "core/store/backup.h"
#include "core/store/setting_names.h"
#include "core/store/writer.h"
#include "tests/core/store_samples.h"
#include "tests/support/without_root.h"

#include <QScopeGuard>

#include <set>
#include <thread>

#include <sys/stat.h>
#include <time.h>

namespace tierloam::store {

namespace {

using namespace samples;
using namespace std::chrono_literals;
using Mode = HouseholdFile::Mode;

const QDateTime noon{QDate{2031, 5, 1}, QTime{12, 0}};

/// A household of three feedings, closed and opened again: a file that was there.
std::unique_ptr<HouseholdFile> household(const Place& place)
{
    idsOf(opened(place.path())->apply({{feed(1), feed(2), feed(3)}, {}, {}}));
    return opened(place.path(), Mode::mustExist);
}

std::vector<Backup> backupsBeside(const Place& place) { return backupsIn(backupFolderOf(place.path())); }

TEST(StoreBackup, OnceADayAfterAChange)
{
    const Place place;
    const auto file = household(place);
    EXPECT_EQ(file->backUpIfDue(noon), std::nullopt);
    EXPECT_EQ(file->backUpIfDue(noon.addSecs(3600)), std::nullopt);
    EXPECT_EQ(opened(place.path(), Mode::mustExist)->backUpIfDue(noon.addSecs(7200)), std::nullopt) << "another program on the same day";
    ASSERT_EQ(backupsBeside(place).size(), 1U);
    EXPECT_EQ(backupsBeside(place)[0].made, noon);
    EXPECT_EQ(backupsBeside(place)[0].kind, BackupKind::day);
    idsOf(file->apply({{feed(4)}, {}, {}}));
    EXPECT_EQ(file->backUpIfDue(noon.addDays(1)), std::nullopt);
    ASSERT_EQ(backupsBeside(place).size(), 2U);
    // Each is a whole household of its own, and nothing else lies in the folder.
    EXPECT_EQ(journalOf(*opened(backupsBeside(place)[0].path, Mode::readOnly)).size(), 4U);
    EXPECT_EQ(journalOf(*opened(backupsBeside(place)[1].path, Mode::readOnly)).size(), 3U);
    EXPECT_EQ(QDir{backupFolderOf(place.path())}.entryList(QDir::AllEntries | QDir::Hidden | QDir::NoDotAndDotDot).size(), 2);
    EXPECT_EQ(place.names().size(), 3) << "the file, its log, the index of the log";
}

TEST(StoreBackup, AFileJustMadeHasNothingOlderToKeep)
{
    const Place place;
    const auto now = QDateTime::currentDateTime();
    const auto file = opened(place.path());
    idsOf(file->apply({{feed(1)}, {}, {}}));
    EXPECT_EQ(file->backUpIfDue(now), std::nullopt);
    EXPECT_TRUE(backupsBeside(place).empty());
    const Place empty;
    EXPECT_EQ(opened(empty.path())->backUpBeforeImport(noon), std::nullopt);
    EXPECT_TRUE(backupsBeside(empty).empty());
}

TEST(StoreBackup, AFileThatStaysOpenSinceItWasMadeIsBackedUpFromTheNextDayOn)
{
    const auto now = QDateTime::currentDateTime();
    for (const bool ofZeroBytes : {false, true}) {
        const Place place;
        if (ofZeroBytes) place.put("");
        const auto file = opened(place.path());
        ASSERT_TRUE(file->createdNow());
        idsOf(file->apply({{feed(1)}, {}, {}}));
        for (const int day : {0, 1, 1, 2}) EXPECT_EQ(file->backUpIfDue(now.addDays(day)), std::nullopt);
        ASSERT_EQ(backupsBeside(place).size(), 2U);
        EXPECT_EQ(backupsBeside(place)[0].made.date(), now.date().addDays(2));
        EXPECT_EQ(backupsBeside(place)[1].made.date(), now.date().addDays(1));
    }
}

/// Its name came from a clock elsewhere, or from one that had not been put forward yet.
TEST(StoreBackup, OneMadeInAnHourThatSpringSkipsHereIsListedAndThinned)
{
    const QByteArray zone = qgetenv("TZ");
    qputenv("TZ", "CET-1CEST,M3.5.0,M10.5.0/3"); // POSIX 8.3: from 02:00 to 03:00 on the last Sunday of March
    tzset();
    const auto back = qScopeGuard([&] {
        if (zone.isEmpty()) qunsetenv("TZ");
        else qputenv("TZ", zone);
        tzset();
    });
    const Place place;
    const QString folder = backupFolderOf(place.path());
    ASSERT_TRUE(QDir{}.mkpath(folder));
    ASSERT_FALSE((QDateTime{QDate{2031, 3, 30}, QTime{2, 30}}.isValid())) << "there is no such time";
    for (const char* made : {"2031-03-30_023000", "2031-03-30_014500", "2031-03-30_031500", "2031-02-30_120000", "2031-03-30_256000"}) {
        QFile file{folder + QStringLiteral("/mill_%1_day.tierloam").arg(QString::fromLatin1(made))};
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    }
    const auto listed = backupsIn(folder);
    const auto surplus = surplusOf(listed);
    ASSERT_EQ(listed.size(), 3U) << "those whose day or time there is on no clock are none";
    EXPECT_EQ(listed[0].made.time(), QTime(3, 15));
    EXPECT_EQ(listed[1].made.time(), QTime(2, 30));
    EXPECT_EQ(listed[2].made.time(), QTime(1, 45));
    EXPECT_EQ(surplus.size(), 2U) << "one of the day is kept";
}

TEST(StoreBackup, TheRuleKeepsSevenDaysEightWeeksTwelveMonths)
{
    // A backup on each of 500 days.
    std::vector<Backup> all;
    const QDate last{2031, 5, 1}; // a Thursday
    for (int back = 0; back < 500; ++back) all.push_back({QString::number(back), QDateTime{last.addDays(-back), QTime{9, 0}}, BackupKind::day});
    const auto surplus = surplusOf(all);
    std::vector<QDate> kept;
    for (const Backup& backup : all)
        if (std::ranges::none_of(surplus, [&](const Backup& gone) { return gone.path == backup.path; })) kept.push_back(backup.made.date());
    // Counted by hand from the calendar: 7 days; 8 weeks whose newest day is 1 May or a Sunday; 12 months whose newest day is 1 May or their last.
    std::set<QDate> expected;
    for (int back = 0; back < 7; ++back) expected.insert(last.addDays(-back));
    for (int week = 1; week < 8; ++week) expected.insert(QDate{2031, 4, 27}.addDays(-7 * (week - 1)));
    for (int month = 1; month < 12; ++month) expected.insert(QDate{2031, 5, 1}.addMonths(1 - month).addDays(-1));
    EXPECT_EQ(std::set<QDate>(kept.begin(), kept.end()), expected);
    EXPECT_EQ(kept.size(), expected.size());
    EXPECT_EQ(kept.size(), 23U) << "7 + 7 + 11, of which 27 and 30 April are among the days already";
    // Once thinned it stays; a day later exactly the one that falls out of every span goes.
    std::vector<Backup> again;
    for (const Backup& backup : all)
        if (std::ranges::find(kept, backup.made.date()) != kept.end()) again.push_back(backup);
    EXPECT_TRUE(surplusOf(again).empty());
}

TEST(StoreBackup, ThoseBeforeImportsAndStepsAreCountedBySort)
{
    std::vector<Backup> all;
    for (int i = 0; i < 15; ++i) {
        all.push_back({QStringLiteral("i%1").arg(i), noon.addSecs(-60 * i), BackupKind::beforeImport});
        all.push_back({QStringLiteral("s%1").arg(i), noon.addSecs(-60 * i - 1), BackupKind::beforeStep});
    }
    const auto surplus = surplusOf(all);
    ASSERT_EQ(surplus.size(), 10U);
    for (const Backup& gone : surplus) EXPECT_GE(gone.path.mid(1).toInt(), 10);
}

TEST(StoreBackup, ThinsOutItsOwnFolderAndTouchesNothingElse)
{
    const Place place;
    const auto file = household(place);
    const QString folder = backupFolderOf(place.path());
    ASSERT_TRUE(QDir{}.mkdir(folder));
    for (const QString& other : {QStringLiteral("notes.txt"), QStringLiteral("mill_2031-01-01_090000_day.csv"), QStringLiteral("mill_2031-13-01_090000_day.tierloam")}) {
        QFile made{folder + QLatin1Char('/') + other};
        ASSERT_TRUE(made.open(QIODevice::WriteOnly));
    }
    for (int day = 0; day < 40; ++day) EXPECT_EQ(file->backUpIfDue(noon.addDays(day)), std::nullopt);
    EXPECT_EQ(backupsBeside(place).size(), 13U) << "7 days, 6 weeks; May's last day is one of those weeks' or days' or stands alone";
    EXPECT_EQ(QDir{folder}.entryList(QDir::Files).size(), 16);
}

TEST(StoreBackup, GoesToTheChosenFolderAndElsewhereWhenThatIsGone)
{
    const Place place;
    const auto file = household(place);
    const QTemporaryDir stick;
    ASSERT_FALSE(file->setSetting(QString{settingBackupFolder}, stick.path()));
    EXPECT_EQ(file->backUpIfDue(noon), std::nullopt);
    EXPECT_EQ(backupsIn(backupFolderOf(place.path(), stick.path())).size(), 1U);
    EXPECT_TRUE(backupsBeside(place).empty());
    EXPECT_NE(backupFolderOf(place.path(), stick.path()), backupFolderOf(place.path("sub/mill.tierloam"), stick.path())) << "two of one name";

    ASSERT_FALSE(file->setSetting(QString{settingBackupFolder}, stick.path() + QStringLiteral("/gone")));
    const auto told = file->backUpIfDue(noon.addDays(1));
    ASSERT_TRUE(told);
    EXPECT_TRUE(told->contains(stick.path() + QStringLiteral("/gone"))) << told->toStdString();
    EXPECT_EQ(backupsBeside(place).size(), 1U);
    EXPECT_FALSE(QFileInfo::exists(stick.path() + QStringLiteral("/gone"))) << "a stick that is out is not made up on this disk";
}

TEST(StoreBackup, OneThatFailsIsToldAndBlocksNothing)
{
    const Place place;
    const auto file = household(place);
    place.put("in the way", "mill backups");
    const auto told = file->backUpIfDue(noon);
    ASSERT_TRUE(told);
    EXPECT_TRUE(told->contains(QStringLiteral("No backup could be made"))) << told->toStdString();
    EXPECT_EQ(file->backUpIfDue(noon.addSecs(60)), std::nullopt) << "not told at every click";
    EXPECT_TRUE(file->backUpIfDue(noon.addSecs(700))) << "but tried again";
    EXPECT_TRUE(file->backUpBeforeImport(noon));
    idsOf(file->apply({{feed(4)}, {}, {}}));
    ASSERT_TRUE(QFile::remove(place.path("mill backups")));
    EXPECT_EQ(file->backUpIfDue(noon.addSecs(1400)), std::nullopt);
    EXPECT_EQ(backupsBeside(place).size(), 1U);
}

TEST(StoreBackup, AFolderThatMayNotBeWrittenIsTold)
{
    const Place place;
    const auto file = household(place);
    const QTemporaryDir stick;
    ASSERT_FALSE(file->setSetting(QString{settingBackupFolder}, stick.path()));
    ASSERT_EQ(::chmod(stick.path().toUtf8().constData(), 0555), 0);
    {
        const tests::WithoutRoot nobody;
        ASSERT_TRUE(nobody.bound());
        const auto told = file->backUpIfDue(noon);
        ASSERT_TRUE(told);
        EXPECT_TRUE(told->contains(QStringLiteral("permission"))) << told->toStdString();
    }
    ASSERT_EQ(::chmod(stick.path().toUtf8().constData(), 0755), 0);
}

TEST(StoreBackup, ACopyNeverReplacesAFileAndIsWhole)
{
    const Place place;
    const auto file = household(place);
    ASSERT_FALSE(file->setSetting(QString{settingHouseholdName}, QStringLiteral("Mühle")));
    const QString target = place.path("it's a \"copy\".tierloam");
    EXPECT_EQ(file->saveCopy(target), std::nullopt);
    const auto before = place.bytes("it's a \"copy\".tierloam");
    const auto why = file->saveCopy(target);
    ASSERT_TRUE(why);
    EXPECT_TRUE(why->contains(QStringLiteral("already"))) << why->toStdString();
    EXPECT_EQ(place.bytes("it's a \"copy\".tierloam"), before);
    EXPECT_TRUE(file->saveCopy(place.path("no/such/folder/x.tierloam")));
    const auto copy = opened(target, Mode::mustExist);
    EXPECT_EQ(journalOf(*copy), journalOf(*file));
    EXPECT_EQ(copy->setting(QString{settingHouseholdName}), QStringLiteral("Mühle"));
    idsOf(copy->apply({{feed(9)}, {}, {}}));
    EXPECT_EQ(journalOf(*file).size(), 3U);
}

TEST(StoreBackup, AFileOpenForReadingCanBeCopiedToo)
{
    const Place place;
    household(place);
    const auto file = opened(place.path(), Mode::readOnly);
    EXPECT_EQ(file->saveCopy(place.path("copy.tierloam")), std::nullopt);
    EXPECT_TRUE(failureOf(file->apply({{feed(9)}, {}, {}})).refused) << "and takes no entry afterwards either";
    EXPECT_EQ(journalOf(*opened(place.path("copy.tierloam"), Mode::mustExist)).size(), 3U);
    EXPECT_EQ(file->backUpIfDue(noon), std::nullopt);
    EXPECT_TRUE(backupsBeside(place).empty());
}

TEST(StoreBackup, DeletedEntriesAreInItAndCanBeBroughtBackFromTheBin)
{
    const Place place;
    const auto file = household(place);
    const auto all = journalOf(*file);
    idsOf(file->apply({{}, {}, {all[1].id}}));
    std::this_thread::sleep_for(3ms); // so that the second is later by the clock of the file
    idsOf(file->apply({{}, {}, {all[0].id}}));
    EXPECT_EQ(file->backUpIfDue(noon), std::nullopt);
    const auto again = opened(backupsBeside(place)[0].path, Mode::mustExist);
    auto deleted = std::get<std::vector<DeletedEntry>>(again->deletedEntries());
    ASSERT_EQ(deleted.size(), 2U);
    EXPECT_EQ(deleted[0].entry, all[0]) << "the latest first";
    EXPECT_EQ(deleted[1].entry, all[1]);
    EXPECT_TRUE(deleted[0].deletedAt.isValid());
    idsOf(again->apply({{deleted[0].entry, deleted[1].entry}, {}, {}}));
    EXPECT_EQ(journalOf(*again), all) << "id and place too";
    EXPECT_TRUE(std::get<std::vector<DeletedEntry>>(again->deletedEntries()).empty());
}

TEST(StoreBackup, TheWriterAnswersBeforeItBacksUpAndBacksUpBeforeAnImport)
{
    const Place place;
    household(place);
    std::vector<QString> told;
    Contents contents;
    auto writer = std::get<std::unique_ptr<Writer>>(Writer::open(place.path(), Mode::mustExist, 5s, contents, [&](const QString& text) { told.push_back(text); }));
    std::size_t backupsAtAnswer = 99;
    WriteJob job;
    job.edit.added = {feed(4)};
    writer->write(job, [&](const WriteAnswer& answer) {
        EXPECT_FALSE(answer.failure);
        backupsAtAnswer = backupsBeside(place).size();
    });
    writer->finish();
    EXPECT_EQ(backupsAtAnswer, 0U);
    ASSERT_EQ(backupsBeside(place).size(), 1U);
    job.importName = QStringLiteral("j.csv");
    writer->write(job, [&](const WriteAnswer& answer) { EXPECT_FALSE(answer.failure); });
    writer->finish();
    ASSERT_EQ(backupsBeside(place).size(), 2U);
    const auto all = backupsBeside(place);
    const auto imported = std::ranges::find(all, BackupKind::beforeImport, &Backup::kind);
    ASSERT_NE(imported, all.end());
    EXPECT_EQ(journalOf(*opened(imported->path, Mode::readOnly)).size(), 4U) << "as it was before it";
    EXPECT_TRUE(told.empty());
}

TEST(StoreBackup, AWriterWhoseBackupsFailSaysSoAndWrites)
{
    const Place place;
    household(place);
    place.put("in the way", "mill backups");
    std::vector<QString> told;
    Contents contents;
    auto writer = std::get<std::unique_ptr<Writer>>(Writer::open(place.path(), Mode::mustExist, 5s, contents, [&](const QString& text) { told.push_back(text); }));
    for (int i = 0; i < 3; ++i) {
        WriteJob job;
        job.edit.added = {feed(4)};
        writer->write(job, [&](const WriteAnswer& answer) { EXPECT_FALSE(answer.failure); });
    }
    writer->finish();
    EXPECT_EQ(told.size(), 1U);
    EXPECT_EQ(journalOf(*opened(place.path())).size(), 6U);
}

}

}
