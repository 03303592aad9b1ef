#include "core/store/backup.h"
#include "core/store/schema.h"
#include "tests/core/store_samples.h"
#include "tests/support/other_process.h"

#include <sqlite3.h>

#include <thread>

namespace tierloam::store {

namespace {

using namespace samples;
using namespace std::chrono_literals;
using Mode = HouseholdFile::Mode;

/// The stored sample of a schema, and statements of a saboteur on it.
void putSample(const Place& place, int schema, const char* sabotage = "")
{
    QFile stored{QStringLiteral(TIERLOAM_SOURCE_DIR "/tests/samples/household_schema_%1.tierloam").arg(schema)};
    ASSERT_TRUE(stored.open(QIODevice::ReadOnly));
    place.put(stored.readAll());
    sqlite3* database = nullptr;
    ASSERT_EQ(sqlite3_open(place.path().toUtf8().constData(), &database), SQLITE_OK);
    EXPECT_EQ(sqlite3_exec(database, sabotage, nullptr, nullptr, nullptr), SQLITE_OK) << sqlite3_errmsg(database);
    ASSERT_EQ(sqlite3_close(database), SQLITE_OK);
}

int schemaOf(const Place& place)
{
    const auto bytes = place.bytes();
    return static_cast<unsigned char>(bytes[63]); // user_version stands at byte 60 of an SQLite file, big-endian
}

std::vector<Backup> stepBackups(const Place& place) { return backupsIn(backupFolderOf(place.path())); }

TEST(StoreMigration, IsDoneOnceAfterABackupOfWhatWas)
{
    for (const int schema : {1, 2, 3, 4}) {
        const Place place;
        putSample(place, schema);
        const auto before = journalOf(*opened(place.path(), Mode::readOnly));
        EXPECT_EQ(schemaOf(place), schema) << "reading changes nothing";
        EXPECT_TRUE(stepBackups(place).empty());
        {
            const auto file = opened(place.path(), Mode::mustExist);
            EXPECT_EQ(journalOf(*file), before);
            EXPECT_TRUE(file->toldWhenOpened().isEmpty());
        }
        EXPECT_EQ(schemaOf(place), newestSchema());
        ASSERT_EQ(stepBackups(place).size(), 1U);
        EXPECT_EQ(stepBackups(place)[0].kind, BackupKind::beforeStep);
        const Place kept;
        ASSERT_TRUE(QFile::copy(stepBackups(place)[0].path, kept.path()));
        EXPECT_EQ(schemaOf(kept), schema) << "the backup is as the file was";
        EXPECT_EQ(journalOf(*opened(kept.path(), Mode::readOnly)), before);
        opened(place.path(), Mode::mustExist);
        EXPECT_EQ(stepBackups(place).size(), 1U) << "no step, no backup";
    }
}

TEST(StoreMigration, AStepThatFailsLeavesTheSchemaBeforeIt)
{
    // A table of a later step is there already.
    struct Case { int schema; const char* sabotage; int left; };
    for (const auto& [schema, sabotage, left] : {Case{1, "CREATE TABLE photos (x)", 1}, Case{1, "CREATE TABLE estimates (x)", 2}, Case{2, "CREATE TABLE estimates (x)", 2}, Case{3, "CREATE TABLE logged_days (x)", 3}, Case{1, "CREATE TABLE logged_series (x)", 3},
                                                 Case{1, "CREATE TABLE other (name); CREATE INDEX materials_by_name ON other (name)", 1}}) {
        const Place place;
        putSample(place, schema, sabotage);
        const auto failure = refused(place.path(), Mode::mustExist);
        EXPECT_FALSE(failure.why.isEmpty());
        EXPECT_EQ(schemaOf(place), left) << sabotage;
        EXPECT_EQ(journalOf(*opened(place.path(), Mode::readOnly)).size(), everyAction().size()) << "and it can be read";
        EXPECT_FALSE(stepBackups(place).empty());
        EXPECT_EQ(refused(place.path(), Mode::mustExist).problem, failure.problem) << "the same the next time";
    }
}

TEST(StoreMigration, ABackupFindsAPlaceBesideTheFile)
{
    const Place place;
    putSample(place, 1);
    const auto before = place.bytes();
    place.put("in the way", "mill backups");
    const auto told = [&] {
        const auto file = opened(place.path(), Mode::mustExist);
        return file->toldWhenOpened();
    }();
    EXPECT_TRUE(told.contains(QStringLiteral("made elsewhere"))) << told.toStdString();
    EXPECT_EQ(backupsIn(place.folder()).size(), 1U) << "right beside the file, when nothing else is left";
    EXPECT_EQ(schemaOf(place), newestSchema());
    EXPECT_NE(place.bytes(), before);
}

TEST(StoreMigration, TwoAtOnceDoEachStepOnce)
{
    for (int round = 0; round < 8; ++round) {
        const Place place;
        putSample(place, 1);
        std::vector<std::jthread> both;
        std::atomic<int> opens{0};
        for (int i = 0; i < 2; ++i)
            both.emplace_back([&] { opens += opened(place.path(), Mode::mustExist) ? 1 : 0; });
        both.clear();
        EXPECT_EQ(opens, 2);
        EXPECT_EQ(journalOf(*opened(place.path())).size(), everyAction().size());
        EXPECT_EQ(schemaOf(place), newestSchema());
    }
}

TEST(StoreMigration, ALockIsWaitedForAndThenTold)
{
    const Place place;
    putSample(place, 1);
    auto other = tests::OtherProcess::holdingLock(place.path());
    ASSERT_TRUE(other.ready());
    EXPECT_EQ(refused(place.path(), Mode::mustExist, 100ms).problem, OpenProblem::inUse);
    EXPECT_EQ(schemaOf(place), 1);
    ASSERT_TRUE(other.letGo());
    EXPECT_TRUE(opened(place.path(), Mode::mustExist));
}

TEST(StoreMigration, TablesThatAreNotOursAreDamage)
{
    for (const char* sabotage : {"DROP TABLE settings; CREATE VIEW settings AS SELECT 'name' AS name, 'x' AS value, '' AS changed_at",
                                 "ALTER TABLE entries ADD COLUMN mood TEXT",
                                 "DROP TABLE settings; CREATE TABLE settings (name TEXT, value TEXT, changed_at TEXT CHECK (length(randomblob(900000000)) > 0))", "DROP TABLE imports",
                                 "DROP TABLE settings; CREATE TABLE settings (name TEXT PRIMARY KEY, value TEXT, changed_at TEXT AS (hex(zeroblob(500000000))))"}) {
        const Place place;
        putSample(place, 3, sabotage);
        for (const Mode mode : {Mode::mustExist, Mode::createIfAbsent, Mode::readOnly}) EXPECT_EQ(refused(place.path(), mode).problem, OpenProblem::damaged) << sabotage;
    }
    for (const char* sabotage : {"DROP TABLE logged_days; CREATE VIEW logged_days AS SELECT 1 AS series_id, '2031-05-02' AS day, 1 AS readings, 0.0 AS low, 0.0 AS mean, 0.0 AS high",
                                 "ALTER TABLE logged_readings ADD COLUMN mood TEXT", "PRAGMA foreign_keys = OFF; DROP TABLE logged_series"}) {
        const Place place;
        putSample(place, 4, sabotage);
        for (const Mode mode : {Mode::mustExist, Mode::readOnly}) EXPECT_EQ(refused(place.path(), mode).problem, OpenProblem::damaged) << sabotage;
    }
    for (const char* sabotage : {"ALTER TABLE entries ADD COLUMN mood TEXT", "ALTER TABLE entries DROP COLUMN doubt", "ALTER TABLE entries RENAME COLUMN doubt TO qualm"}) {
        const Place place;
        putSample(place, 5, sabotage);
        for (const Mode mode : {Mode::mustExist, Mode::readOnly}) EXPECT_EQ(refused(place.path(), mode).problem, OpenProblem::damaged) << sabotage;
    }
    // A column of a later step is no table of this schema.
    const Place early;
    putSample(early, 4, "ALTER TABLE entries ADD COLUMN welcome TEXT");
    EXPECT_EQ(refused(early.path(), Mode::readOnly).problem, OpenProblem::damaged);
    // What somebody added beside them is left alone and never read.
    const Place place;
    putSample(place, 3, "CREATE VIEW trap AS SELECT hex(zeroblob(1000000000)); CREATE TABLE mine (x); "
                        "CREATE TRIGGER wipe AFTER INSERT ON settings BEGIN DELETE FROM settings; END");
    const auto file = opened(place.path(), Mode::mustExist);
    EXPECT_FALSE(file->setSetting(QStringLiteral("a"), QStringLiteral("b")));
    EXPECT_EQ(file->setting(QStringLiteral("a")), QStringLiteral("b"));
    EXPECT_EQ(file->setting(QStringLiteral("name")), QStringLiteral("Mühle"));
}

TEST(StoreMigration, ALinkIsFollowedAndOneThatLeadsNowhereIsAbsent)
{
    const Place place;
    const Place real;
    putSample(real, 1);
    ASSERT_TRUE(QFile::link(real.path(), place.path("link.tierloam")));
    opened(place.path("link.tierloam"), Mode::mustExist);
    EXPECT_EQ(stepBackups(real).size(), 1U) << "the backup lies beside the file, not the link";
    EXPECT_EQ(place.names().size(), 1);
    ASSERT_TRUE(QFile::link(place.path("nowhere.tierloam"), place.path("dead.tierloam")));
    for (const Mode mode : {Mode::mustExist, Mode::createIfAbsent, Mode::readOnly}) EXPECT_EQ(refused(place.path("dead.tierloam"), mode).problem, OpenProblem::absent);
    EXPECT_FALSE(QFile::exists(place.path("nowhere.tierloam")));
}

}

}
