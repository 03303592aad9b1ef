#include "core/store/connection.h"
#include "core/store/failures.h"
#include "tests/core/store_samples.h"
#include "tests/support/other_process.h"

#include <QDir>
#include <QElapsedTimer>

#include <thread>

namespace tierloam::store {

namespace {

using namespace samples;
using namespace std::chrono_literals;
using Mode = HouseholdFile::Mode;

TEST(StoreWrites, ALockOfAnotherProgramIsWaitedForAndThenTold)
{
    const Place place;
    idsOf(opened(place.path())->apply({{feed(1)}, {}, {}}));
    const auto file = opened(place.path(), Mode::mustExist, 200ms);
    auto other = tests::OtherProcess::holdingLock(place.path());
    ASSERT_TRUE(other.ready());
    QElapsedTimer timer;
    timer.start();
    const auto failure = failureOf(file->apply({{feed(2)}, {}, {}}));
    EXPECT_TRUE(failure.inUse);
    EXPECT_TRUE(failure.why.contains(QStringLiteral("in use"))) << failure.why.toStdString();
    EXPECT_GE(timer.elapsed(), 190);
    EXPECT_EQ(journalOf(*file).size(), 1U) << "reading goes on meanwhile";
    EXPECT_TRUE(other.letGo());
    idsOf(file->apply({{feed(2)}, {}, {}}));
}

TEST(StoreWrites, ALockThatGoesInTimeDelaysOnly)
{
    const Place place;
    idsOf(opened(place.path())->apply({{feed(2)}, {}, {}}));
    auto other = tests::OtherProcess::holdingLock(place.path());
    ASSERT_TRUE(other.ready());
    std::size_t written = 0;
    std::jthread later{[&] {
        const auto waiting = opened(place.path(), Mode::mustExist);
        written = idsOf(waiting->apply({{feed(1)}, {}, {}})).size();
    }};
    EXPECT_TRUE(other.letGo());
    later.join();
    EXPECT_EQ(written, 1U);
}

TEST(StoreWrites, ALockLeftByADeadProgramKeepsNobodyOut)
{
    const Place place;
    idsOf(opened(place.path())->apply({{feed(1)}, {}, {}}));
    ASSERT_TRUE(tests::OtherProcess::dyingWhileWriting(place.path(), QStringLiteral("UPDATE entries SET note = 'half'")));
    const auto file = opened(place.path(), Mode::mustExist, 200ms);
    idsOf(file->apply({{feed(2)}, {}, {}}));
    ASSERT_EQ(journalOf(*file).size(), 2U);
    EXPECT_EQ(journalOf(*file)[0].note, "");
}

TEST(StoreWrites, AForeignWriteChangesTheDataVersionAndAnOwnOneDoesNot)
{
    const Place place;
    const auto file = opened(place.path());
    const qint64 before = file->dataVersion();
    idsOf(file->apply({{feed(1)}, {}, {}}));
    EXPECT_EQ(file->dataVersion(), before);
    ASSERT_TRUE(tests::OtherProcess::run(place.path(), QStringLiteral("UPDATE entries SET note = 'seen'")));
    EXPECT_NE(file->dataVersion(), before);
    EXPECT_EQ(journalOf(*file)[0].note, "seen");
}

TEST(StoreWrites, TheGuardLooksAtEachEditAsTheFileThenStands)
{
    const Place place;
    const auto file = opened(place.path());
    journalOf(*file);
    std::vector<std::size_t> seen;
    const Guard guard = [&](const journal::Entries& now) -> std::optional<QString> {
        seen.push_back(now.size());
        return now.size() > 1 ? std::optional{QStringLiteral("too many")} : std::nullopt;
    };
    idsOf(file->apply({{feed(1)}, {}, {}}, {}, guard));
    idsOf(opened(place.path(), Mode::mustExist)->apply({{feed(2)}, {}, {}})); // another program
    const auto failure = failureOf(file->apply({{feed(3)}, {}, {}}, {}, guard));
    EXPECT_EQ(seen, (std::vector<std::size_t>{0, 2}));
    EXPECT_TRUE(failure.refused);
    EXPECT_EQ(failure.why, QStringLiteral("too many"));
    EXPECT_EQ(journalOf(*file).size(), 2U);
    idsOf(file->apply({{feed(3)}, {}, {}}));
}

TEST(StoreWrites, AFileMovedOrRemovedMeanwhileTakesNoWrite)
{
    for (const bool removed : {true, false}) {
        const Place place;
        const auto file = opened(place.path());
        idsOf(file->apply({{feed(1)}, {}, {}}));
        EXPECT_FALSE(file->movedAway());
        if (removed) ASSERT_TRUE(QFile::remove(place.path()));
        else ASSERT_TRUE(QFile::rename(place.path(), place.path("elsewhere.tierloam")));
        EXPECT_TRUE(file->movedAway());
        const auto failure = failureOf(file->apply({{feed(2)}, {}, {}}));
        EXPECT_TRUE(failure.gone);
        EXPECT_FALSE(QFile::exists(place.path())) << "no new file in its place";
        if (removed) continue;
        ASSERT_TRUE(QFile::rename(place.path("elsewhere.tierloam"), place.path()));
        EXPECT_FALSE(file->movedAway());
        idsOf(file->apply({{feed(2)}, {}, {}}));
    }
}

TEST(StoreWrites, AFullDiskIsToldAndNothingIsWritten)
{
    const Place place;
    {
        const auto file = opened(place.path());
        idsOf(file->apply({{feed(1)}, {}, {}}));
    }
    auto result = Connection::open(place.path(), Connection::Access::readWrite, 1s);
    ASSERT_TRUE(std::holds_alternative<std::unique_ptr<Connection>>(result));
    const auto& connection = *std::get<std::unique_ptr<Connection>>(result);
    // SQLite answers "full" when a file may not grow: the same code as for a disk without room.
    ASSERT_FALSE(connection.run(QStringLiteral("PRAGMA max_page_count = 1")));
    const auto error = connection.run(QStringLiteral("INSERT INTO settings SELECT 'n' || value, hex(randomblob(4000)), 'x' FROM "
                                                     "(WITH RECURSIVE c(value) AS (VALUES (1) UNION ALL SELECT value + 1 FROM c LIMIT 100) SELECT value FROM c)"));
    ASSERT_TRUE(error);
    const auto failure = writeFailure(*error, place.path());
    EXPECT_TRUE(failure.diskFull);
    EXPECT_FALSE(failure.inUse || failure.gone || failure.refused);
    EXPECT_TRUE(failure.why.contains(QStringLiteral("full"))) << failure.why.toStdString();
    EXPECT_EQ(openFailure(*error, place.path()).problem, OpenProblem::diskFull);
}

TEST(StoreWrites, CommitsAreSyncedWithALogOrAJournal)
{
    const Place place;
    idsOf(opened(place.path())->apply({{feed(1)}, {}, {}}));
    auto result = Connection::open(place.path(), Connection::Access::readWrite, 1s);
    const auto& connection = *std::get<std::unique_ptr<Connection>>(result);
    ASSERT_FALSE(connection.run(QStringLiteral("PRAGMA synchronous = OFF")));
    ASSERT_FALSE(makeDurable(connection));
    EXPECT_EQ(std::get<QVariant>(connection.value(QStringLiteral("PRAGMA journal_mode"))).toString(), QStringLiteral("wal"));
    EXPECT_EQ(std::get<QVariant>(connection.value(QStringLiteral("PRAGMA synchronous"))).toInt(), 2);
    EXPECT_EQ(std::get<QVariant>(connection.value(QStringLiteral("PRAGMA foreign_keys"))).toInt(), 1);
    EXPECT_EQ(std::get<QVariant>(connection.value(QStringLiteral("PRAGMA trusted_schema"))).toInt(), 0);
}

TEST(StoreWrites, WhereALogDoesNotWorkAJournalIsUsed)
{
    const Place place;
    idsOf(opened(place.path())->apply({{feed(1)}, {}, {}}));
    // Another program keeps the file in the other mode and is reading it: the mode cannot be switched.
    auto result = Connection::open(place.path(), Connection::Access::readWrite, 100ms);
    const auto& holder = *std::get<std::unique_ptr<Connection>>(result);
    ASSERT_EQ(std::get<QVariant>(holder.value(QStringLiteral("PRAGMA journal_mode = DELETE"))).toString(), QStringLiteral("delete"));
    ASSERT_FALSE(holder.run(QStringLiteral("BEGIN")));
    ASSERT_TRUE(std::holds_alternative<QVariant>(holder.value(QStringLiteral("SELECT count(*) FROM entries"))));

    auto second = Connection::open(place.path(), Connection::Access::readWrite, 100ms);
    const auto& connection = *std::get<std::unique_ptr<Connection>>(second);
    ASSERT_FALSE(makeDurable(connection));
    EXPECT_EQ(std::get<QVariant>(connection.value(QStringLiteral("PRAGMA journal_mode"))).toString(), QStringLiteral("delete"));
    EXPECT_EQ(std::get<QVariant>(connection.value(QStringLiteral("PRAGMA synchronous"))).toInt(), 3) << "the folder is synced too";
    ASSERT_FALSE(holder.run(QStringLiteral("ROLLBACK")));
    ASSERT_FALSE(connection.run(QStringLiteral("UPDATE entries SET note = 'x'")));
}

}

}
