#include "core/store/schema.h"
#include "tests/core/store_samples.h"
#include "tests/support/other_process.h"
#include "tests/support/without_root.h"

#include <QDir>
#include <QSqlDatabase>
#include <QSqlQuery>

#include <sqlite3.h>
#include <sys/stat.h>

#include <thread>

namespace tierloam::store {

namespace {

using namespace samples;
using Mode = HouseholdFile::Mode;

constexpr std::array allModes{Mode::mustExist, Mode::createIfAbsent, Mode::readOnly};

/// Runs statements on a file through plain SQLite, as another program would.
void runOn(const QString& path, const char* sql)
{
    sqlite3* database = nullptr;
    ASSERT_EQ(sqlite3_open(path.toUtf8().constData(), &database), SQLITE_OK);
    char* message = nullptr;
    EXPECT_EQ(sqlite3_exec(database, sql, nullptr, nullptr, &message), SQLITE_OK) << (message ? message : "");
    sqlite3_free(message);
    ASSERT_EQ(sqlite3_close(database), SQLITE_OK);
}

/// A household with a few entries, closed.
void make(const Place& place)
{
    const auto file = opened(place.path());
    journal::Entries entries;
    for (int i = 0; i < 200; ++i) entries.push_back(feed(i + 1));
    idsOf(file->apply({entries, {}, {}}));
}

TEST(StoreOpening, AnAbsentFileIsMadeOnlyWhenAsked)
{
    const Place place;
    for (const Mode mode : {Mode::mustExist, Mode::readOnly}) {
        const auto failure = refused(place.path(), mode);
        EXPECT_EQ(failure.problem, OpenProblem::absent);
        EXPECT_TRUE(failure.why.contains(place.path()));
        EXPECT_TRUE(place.names().isEmpty());
    }
    {
        const auto file = opened(place.path());
        EXPECT_TRUE(file->createdNow());
        EXPECT_FALSE(file->readOnly());
        EXPECT_TRUE(journalOf(*file).empty());
    }
    EXPECT_EQ(place.names(), QStringList{QStringLiteral("mill.tierloam")}) << "nothing stays beside it";
    EXPECT_FALSE(opened(place.path())->createdNow());
    EXPECT_EQ(refused(place.path("no/such/folder/x.tierloam"), Mode::createIfAbsent).problem, OpenProblem::absent);
    EXPECT_EQ(refused(place.folder(), Mode::createIfAbsent).problem, OpenProblem::notAHousehold);
}

TEST(StoreOpening, NamesWithMarksThatAnUriWouldReadAreNames)
{
    const Place place;
    const QString path = place.folder() + QStringLiteral("/50 % & more?mode=memory#1 Mühle.tierloam");
    idsOf(opened(path)->apply({{feed(1)}, {}, {}}));
    EXPECT_TRUE(QFile::exists(path));
    EXPECT_EQ(journalOf(*opened(path, Mode::mustExist)).size(), 1U);
    EXPECT_EQ(place.names().size(), 1);
}

TEST(StoreOpening, AnEmptyFileIsSetUpOnlyWhenAFileMayBeMade)
{
    const Place place;
    place.put({});
    EXPECT_EQ(refused(place.path(), Mode::mustExist).problem, OpenProblem::notAHousehold);
    EXPECT_EQ(refused(place.path(), Mode::readOnly).problem, OpenProblem::notAHousehold);
    EXPECT_EQ(place.bytes().size(), 0);
    EXPECT_TRUE(opened(place.path())->createdNow());
    EXPECT_GT(place.bytes().size(), 0);
}

TEST(StoreOpening, JunkIsLeftAsItIs)
{
    for (const QByteArray& junk : {QByteArray{"x"}, QByteArray(511, 'x'), QByteArray(512, 'x'), QByteArray{"date,stack,action\n"}, QByteArray(100000, 'j'), QByteArray(4096, '\0')}) {
        const Place place;
        place.put(junk);
        for (const Mode mode : allModes) EXPECT_EQ(refused(place.path(), mode).problem, OpenProblem::notAHousehold) << junk.left(20).toStdString();
        EXPECT_EQ(place.bytes(), junk);
        EXPECT_EQ(place.names().size(), 1);
    }
}

TEST(StoreOpening, AnotherProgramsDatabaseIsLeftAsItIs)
{
    for (const char* sql : {"CREATE TABLE recipes (id INTEGER PRIMARY KEY); INSERT INTO recipes VALUES (1);",
                            "PRAGMA application_id = 252006673; CREATE TABLE entries (id);", "PRAGMA application_id = 1; PRAGMA user_version = 3;",
                            "PRAGMA user_version = 3; CREATE TABLE entries (id);"}) {
        const Place place;
        runOn(place.path(), sql);
        const auto before = place.bytes();
        for (const Mode mode : allModes) EXPECT_EQ(refused(place.path(), mode).problem, OpenProblem::notAHousehold) << sql;
        EXPECT_EQ(place.bytes(), before);
    }
}

TEST(StoreOpening, ABlankDatabaseIsWhatACrashAtTheStartLeavesAndIsSetUp)
{
    const Place place;
    runOn(place.path(), "VACUUM");
    ASSERT_GT(place.bytes().size(), 0);
    EXPECT_EQ(refused(place.path(), Mode::mustExist).problem, OpenProblem::notAHousehold);
    EXPECT_TRUE(opened(place.path())->createdNow());
}

TEST(StoreOpening, AFileCutShortIsToldAndLeftAsItIs)
{
    const Place whole;
    make(whole);
    const auto bytes = whole.bytes();
    ASSERT_GT(bytes.size(), 20000);
    const bool all = qEnvironmentVariableIsSet("TIERLOAM_LONG");
    // The last bytes one by one: SQLite alone would take a file without them for whole.
    for (qsizetype kept = 1; kept < bytes.size(); kept += all || kept > bytes.size() - 25 ? 1 : kept < 200 ? 9 : std::min<qsizetype>(1999, std::max<qsizetype>(1, bytes.size() - 24 - kept))) {
        const Place place;
        place.put(bytes.left(kept));
        for (const Mode mode : allModes) {
            const auto failure = refused(place.path(), mode);
            EXPECT_EQ(failure.problem, kept < 16 ? OpenProblem::notAHousehold : OpenProblem::damaged) << kept;
            EXPECT_FALSE(failure.why.isEmpty());
        }
        EXPECT_EQ(place.bytes(), bytes.left(kept));
    }
}

TEST(StoreOpening, AFlippedByteIsToldOrHarmlessAndNeverACrash)
{
    const Place whole;
    make(whole);
    const auto bytes = whole.bytes();
    int told = 0;
    const bool all = qEnvironmentVariableIsSet("TIERLOAM_LONG");
    for (qsizetype at = 0; at < bytes.size(); at += all || at < 200 ? 1 : 397) {
        auto flipped = bytes;
        flipped[at] = static_cast<char>(flipped[at] ^ 0x55);
        const Place place;
        place.put(flipped);
        auto result = HouseholdFile::open(place.path(), Mode::readOnly);
        if (const auto* failure = std::get_if<OpenFailure>(&result)) {
            ++told;
            EXPECT_FALSE(failure->why.isEmpty());
            continue;
        }
        // Opened: then the journal is read whole or said to be unreadable.
        const auto entries = std::get<std::unique_ptr<HouseholdFile>>(result)->entries();
        if (const auto* failure = std::get_if<WriteFailure>(&entries)) {
            EXPECT_FALSE(failure->why.isEmpty());
        }
    }
    EXPECT_GT(told, 30);
}

TEST(StoreOpening, ANewerSchemaCanOnlyBeRead)
{
    const Place place;
    make(place);
    runOn(place.path(), QStringLiteral("ALTER TABLE entries ADD COLUMN mood TEXT; PRAGMA user_version = %1").arg(newestSchema() + 1).toUtf8().constData());
    const auto before = place.bytes();
    for (const Mode mode : {Mode::mustExist, Mode::createIfAbsent}) {
        const auto failure = refused(place.path(), mode);
        EXPECT_EQ(failure.problem, OpenProblem::newer);
        EXPECT_TRUE(failure.why.contains(QStringLiteral("newer"))) << failure.why.toStdString();
    }
    {
        const auto file = opened(place.path(), Mode::readOnly);
        EXPECT_TRUE(file->readOnly());
        EXPECT_TRUE(file->newerSchema());
        EXPECT_EQ(journalOf(*file).size(), 200U);
        EXPECT_TRUE(failureOf(file->apply({{feed(1)}, {}, {}})).why.contains(QStringLiteral("newer")));
    }
    EXPECT_EQ(place.bytes(), before);
}

TEST(StoreOpening, OpenedForReadingItTakesNoWrite)
{
    const Place place;
    make(place);
    const auto before = place.bytes();
    {
        const auto file = opened(place.path(), Mode::readOnly);
        EXPECT_TRUE(file->readOnly());
        EXPECT_FALSE(file->newerSchema());
        EXPECT_TRUE(failureOf(file->apply({{feed(1)}, {}, {}})).refused);
        EXPECT_TRUE(file->setSetting(QStringLiteral("a"), QStringLiteral("b")).has_value());
        EXPECT_EQ(journalOf(*file).size(), 200U);
    }
    EXPECT_EQ(place.bytes(), before);
    EXPECT_EQ(place.names().size(), 1) << "no log is left behind";
}

TEST(StoreOpening, AnOlderSchemaIsBroughtUpToDateStepByStep)
{
    for (int from = 1; from < newestSchema(); ++from) {
        const Place place;
        QString sql;
        for (int step = 0; step < from; ++step)
            for (const QString& statement : schemaSteps()[static_cast<std::size_t>(step)]) sql += statement + QStringLiteral(";\n");
        sql += QStringLiteral("PRAGMA application_id = %1; PRAGMA user_version = %2;"
                              "INSERT INTO entries (day, position_in_day, stack, action, amount, unit, item, note, created_at, changed_at) "
                              "VALUES ('2031-05-01', 1, 'Scullery', 'feed', 300, 'g', '', '', 'x', 'x')").arg(applicationId).arg(from);
        runOn(place.path(), sql.toUtf8().constData());
        EXPECT_EQ(journalOf(*opened(place.path(), Mode::readOnly)).size(), 1U) << "read as it is";
        const auto file = opened(place.path(), Mode::mustExist);
        EXPECT_EQ(journalOf(*file).size(), 1U);
        file->apply({{feed(2)}, {}, {}});
        EXPECT_FALSE(opened(place.path(), Mode::readOnly)->newerSchema());
        runOn(place.path(), "INSERT INTO estimates VALUES ('a', 0, 0, 0, '2031-05-01', 'colony_kg', 1, 2, 3, 'p', '0123456789abcdef')");
    }
}

TEST(StoreOpening, AHouseholdWithoutItsTablesIsDamaged)
{
    const Place place;
    runOn(place.path(), QStringLiteral("PRAGMA application_id = %1; PRAGMA user_version = 0; CREATE TABLE x (y)").arg(applicationId).toUtf8().constData());
    for (const Mode mode : allModes) EXPECT_EQ(refused(place.path(), mode).problem, OpenProblem::damaged);
}

TEST(StoreOpening, NothingInAHostileFileRuns)
{
    const Place place;
    make(place);
    runOn(place.path(), "CREATE TRIGGER trap AFTER INSERT ON entries BEGIN DELETE FROM entries; END;"
                        "CREATE TRIGGER trap2 AFTER UPDATE ON entries BEGIN DELETE FROM entries; END;");
    const auto file = opened(place.path(), Mode::mustExist);
    const auto ids = idsOf(file->apply({{feed(1)}, {}, {}}));
    idsOf(file->apply({{}, {}, ids}));
    EXPECT_EQ(journalOf(*file).size(), 200U);
}

TEST(StoreOpening, WithoutPermissionItSaysSo)
{
    const Place place;
    make(place);
    const auto before = place.bytes();
    const QByteArray folder = place.folder().toUtf8();
    const QByteArray path = place.path().toUtf8();
    ASSERT_EQ(::chmod(folder.constData(), 0755), 0);
    ASSERT_EQ(::chmod(path.constData(), 0000), 0);
    {
        const tests::WithoutRoot nobody;
        ASSERT_TRUE(nobody.bound());
        for (const Mode mode : allModes) EXPECT_EQ(refused(place.path(), mode).problem, OpenProblem::noPermission);
    }
    ASSERT_EQ(::chmod(path.constData(), 0444), 0);
    ASSERT_EQ(::chmod(folder.constData(), 0555), 0);
    {
        const tests::WithoutRoot nobody;
        for (const Mode mode : {Mode::mustExist, Mode::createIfAbsent}) EXPECT_EQ(refused(place.path(), mode).problem, OpenProblem::noPermission);
        EXPECT_EQ(refused(place.path("new.tierloam"), Mode::createIfAbsent).problem, OpenProblem::noPermission);
        const auto file = opened(place.path(), Mode::readOnly);
        EXPECT_EQ(journalOf(*file).size(), 200U) << "a folder that may not be written can be read";
    }
    ASSERT_EQ(::chmod(folder.constData(), 0755), 0);
    EXPECT_EQ(place.bytes(), before);
}

/// A file that cannot be written is read with an index of its log beside it, which has its permissions and stays.
TEST(StoreOpening, WhatAReaderOfAReadOnlyFileLeavesKeepsNobodyFromWriting)
{
    const Place place;
    make(place);
    const QByteArray folder = place.folder().toUtf8();
    const QByteArray path = place.path().toUtf8();
    if (::geteuid() == 0) {
        ASSERT_EQ(::chown(folder.constData(), 65534, static_cast<gid_t>(-1)), 0);
        ASSERT_EQ(::chown(path.constData(), 65534, static_cast<gid_t>(-1)), 0);
    }
    ASSERT_EQ(::chmod(path.constData(), 0444), 0);
    {
        const tests::WithoutRoot nobody;
        ASSERT_TRUE(nobody.bound());
        EXPECT_EQ(journalOf(*opened(place.path(), Mode::readOnly)).size(), 200U);
        ASSERT_EQ(::chmod(path.constData(), 0644), 0);
        const auto file = opened(place.path(), Mode::mustExist);
        ASSERT_TRUE(file);
        idsOf(file->apply({{feed(1)}, {}, {}}));
        EXPECT_EQ(journalOf(*file).size(), 201U);
    }
}

TEST(StoreOpening, WhatIsLeftOfAMovedHouseholdIsNotBuiltOver)
{
    const Place place;
    place.put(QByteArray(512, 'w'), "mill.tierloam-wal");
    const auto failure = refused(place.path(), Mode::createIfAbsent);
    EXPECT_EQ(failure.problem, OpenProblem::other);
    EXPECT_TRUE(failure.why.contains(QStringLiteral("mill.tierloam-wal"))) << failure.why.toStdString();
    EXPECT_EQ(place.names(), QStringList{QStringLiteral("mill.tierloam-wal")});
    EXPECT_EQ(place.bytes("mill.tierloam-wal"), QByteArray(512, 'w'));
}

TEST(StoreOpening, ASymbolicLinkLeadsToItsFile)
{
    const Place place;
    make(place);
    ASSERT_TRUE(QFile::link(place.path(), place.path("link.tierloam")));
    idsOf(opened(place.path("link.tierloam"), Mode::mustExist)->apply({{feed(1)}, {}, {}}));
    EXPECT_EQ(journalOf(*opened(place.path(), Mode::mustExist)).size(), 201U);
}

TEST(StoreOpening, AFailedImportLeavesThingsAsTheyWere)
{
    const Place place;
    HouseholdFile::discard(opened(place.path()));
    EXPECT_TRUE(place.names().isEmpty()) << "made for it: gone";
    place.put({});
    HouseholdFile::discard(opened(place.path()));
    EXPECT_EQ(place.names().size(), 1);
    EXPECT_EQ(place.bytes().size(), 0) << "empty before: empty again";
    QFile::remove(place.path());
    make(place);
    HouseholdFile::discard(opened(place.path()));
    EXPECT_EQ(journalOf(*opened(place.path())).size(), 200U) << "there before: stays";
}

TEST(StoreOpening, WhatAnotherProgramWroteMeanwhileIsNotDiscarded)
{
    const Place place;
    auto mine = opened(place.path());
    idsOf(opened(place.path(), Mode::mustExist)->apply({{feed(1)}, {}, {}}));
    HouseholdFile::discard(std::move(mine));
    EXPECT_EQ(journalOf(*opened(place.path(), Mode::mustExist)).size(), 1U);
}

TEST(StoreOpening, TwoAtOnceMakeOneHousehold)
{
    for (int round = 0; round < 10; ++round) {
        const Place place;
        std::vector<std::jthread> both;
        std::atomic<int> written{0};
        for (int i = 0; i < 2; ++i)
            both.emplace_back([&] {
                const auto file = opened(place.path());
                if (file && std::holds_alternative<std::vector<journal::EntryId>>(file->apply({{feed(1)}, {}, {}}))) ++written;
            });
        both.clear();
        EXPECT_EQ(written, 2);
        EXPECT_EQ(journalOf(*opened(place.path(), Mode::mustExist)).size(), 2U);
    }
}

}

}
