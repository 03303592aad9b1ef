#include "core/store/connection.h"
#include "core/store/writer.h"
#include "tests/core/store_samples.h"
#include "tests/support/other_process.h"

#include <sys/stat.h>

#include <future>

/// What another program can do to a household that is open here once it takes itself for the last user of it.
namespace tierloam::store {

namespace {

using namespace samples;
using namespace std::chrono_literals;
using Mode = HouseholdFile::Mode;

const QStringList besides{QStringLiteral("-wal"), QStringLiteral("-shm")};

ino_t inodeOf(const QString& path)
{
    struct stat found{};
    return ::stat(QFile::encodeName(path).constData(), &found) == 0 ? found.st_ino : 0;
}

/// What a file dialog does that looks what kind of files lie there: for POSIX locks, closing is letting go.
void readAndClose(const QString& path)
{
    for (const QString& name : QStringList{path, path + besides.front(), path + besides.back()}) {
        QFile file{name};
        ASSERT_TRUE(file.open(QIODevice::ReadOnly));
        file.read(16);
    }
}

/// What the last user of a household does when it closes: the log is folded in and removed, its index too.
void takeTheLogAway(const QString& path)
{
    ASSERT_TRUE(tests::OtherProcess::run(path, QStringLiteral("PRAGMA wal_checkpoint(FULL)")));
    for (const QString& suffix : besides) ASSERT_TRUE(QFile::remove(path + suffix));
}

std::vector<double> gramsIn(const QString& path)
{
    std::vector<double> grams;
    for (const auto& entry : journalOf(*opened(path, Mode::readOnly))) grams.push_back(std::get<journal::Feed>(entry.action).food.value);
    return grams;
}

TEST(StoreHeldLocks, ReadingTheFileBesideDoesNotLetGoOfThem)
{
    const Place place;
    const auto file = opened(place.path());
    ASSERT_EQ(idsOf(file->apply({.added = {feed(1)}})).size(), 1U);
    const ino_t log = inodeOf(place.path() + QStringLiteral("-wal"));
    ASSERT_NE(log, 0U);
    readAndClose(place.path());
    ASSERT_TRUE(tests::OtherProcess::run(place.path(), QStringLiteral("SELECT count(*) FROM entries")));
    EXPECT_EQ(inodeOf(place.path() + QStringLiteral("-wal")), log) << "the other took itself for the last user and removed the log";
    EXPECT_EQ(file->toldWhenOpened(), QString{});
    EXPECT_EQ(idsOf(file->apply({.added = {feed(2)}})).size(), 1U);
    EXPECT_EQ(file->toldWhenOpened(), QString{});
    EXPECT_EQ(gramsIn(place.path()), (std::vector{1.0, 2.0}));
}

// In the middle of a write, the lock on the log too: two writers at once would garble it.
TEST(StoreHeldLocks, ReadingTheFileBesideLetsNobodyElseWriteMeanwhile)
{
    const Place place;
    const auto file = opened(place.path());
    idsOf(file->apply({.added = {feed(1)}}));
    bool othersWrote = true;
    const Guard beside = [&](const journal::Entries&) -> std::optional<QString> {
        readAndClose(place.path());
        auto other = Connection::open(place.path(), Connection::Access::readWrite, 10ms); // the same holder: SQLite itself keeps these two apart
        EXPECT_TRUE(std::get<std::unique_ptr<Connection>>(other)->run(QStringLiteral("BEGIN IMMEDIATE")));
        othersWrote = tests::OtherProcess::run(place.path(), QStringLiteral("PRAGMA busy_timeout = 10; BEGIN IMMEDIATE; COMMIT"));
        return std::nullopt;
    };
    EXPECT_EQ(idsOf(file->apply({.added = {feed(2)}}, {}, beside)).size(), 1U);
    EXPECT_FALSE(othersWrote);
}

TEST(StoreHeldLocks, AreGivenBackByWhicheverConnectionHasThemLast)
{
    const Place place;
    opened(place.path());
    auto first = Connection::open(place.path(), Connection::Access::readWrite, 1s);
    const auto taken = [](auto& connection) { return std::get<std::unique_ptr<Connection>>(connection)->value(QStringLiteral("SELECT count(*) FROM entries")).index() == 0; };
    ASSERT_TRUE(taken(first));
    auto second = Connection::open(place.path(), Connection::Access::readWrite, 1s);
    ASSERT_TRUE(taken(second));
    first = QSqlError{};
    ASSERT_TRUE(taken(second));
    EXPECT_TRUE(tests::OtherProcess::run(place.path(), QStringLiteral("SELECT count(*) FROM entries")));
    EXPECT_TRUE(QFile::exists(place.path() + besides.front())) << "the second still has it open";
    second = QSqlError{};
    auto alone = tests::OtherProcess::holdingLock(place.path());
    EXPECT_TRUE(alone.ready());
}

TEST(StoreHeldLocks, AnEntryGoesIntoTheLogThatLiesThereNow)
{
    const Place place;
    const auto file = opened(place.path());
    idsOf(file->apply({.added = {feed(1)}}));
    takeTheLogAway(place.path());
    ASSERT_TRUE(tests::OtherProcess::run(place.path(), QStringLiteral("INSERT INTO settings (name, value, changed_at) VALUES ('theirs', 'kept', '')")));
    EXPECT_EQ(idsOf(file->apply({.added = {feed(2)}})).size(), 1U);
    const QString told = file->toldWhenOpened();
    ASSERT_FALSE(told.isEmpty());
    EXPECT_TRUE(told.contains(QStringLiteral("nothing"))) << told.toStdString();
    EXPECT_EQ(file->toldWhenOpened(), QString{}) << "told once";
    EXPECT_EQ(gramsIn(place.path()), (std::vector{1.0, 2.0}));
    EXPECT_EQ(file->setting(QStringLiteral("theirs")), QStringLiteral("kept"));
}

TEST(StoreHeldLocks, ALogThatIsTakenAwayWithinAWriteTakesNothing)
{
    const Place place;
    const auto file = opened(place.path());
    idsOf(file->apply({.added = {feed(1)}}));
    int asked = 0;
    const Guard guard = [&](const journal::Entries&) -> std::optional<QString> {
        if (++asked == 1)
            for (const QString& suffix : besides) QFile::remove(place.path() + suffix);
        return std::nullopt;
    };
    // The file had not been folded into: what only the log held is gone with it, and that is told.
    EXPECT_EQ(idsOf(file->apply({.added = {feed(2)}}, {}, guard)).size(), 1U);
    EXPECT_EQ(asked, 2) << "looked at again on the log that lies there now";
    const QString told = file->toldWhenOpened();
    ASSERT_FALSE(told.isEmpty());
    EXPECT_FALSE(told.contains(QStringLiteral("nothing"))) << told.toStdString();
    EXPECT_EQ(gramsIn(place.path()), std::vector{2.0});
}

TEST(StoreHeldLocks, WhoKeepsRemovingTheLogIsToldOf)
{
    const Place place;
    const auto file = opened(place.path());
    const Guard guard = [&](const journal::Entries&) -> std::optional<QString> {
        for (const QString& suffix : besides) QFile::remove(place.path() + suffix);
        return std::nullopt;
    };
    const auto failure = failureOf(file->apply({.added = {feed(1)}}, {}, guard));
    EXPECT_TRUE(failure.inUse);
    EXPECT_TRUE(failure.why.contains(place.path())) << failure.why.toStdString();
    EXPECT_EQ(idsOf(file->apply({.added = {feed(2)}})).size(), 1U);
    EXPECT_EQ(gramsIn(place.path()), std::vector{2.0});
}

TEST(StoreHeldLocks, ALogThatWasTakenAwayIsNotFoldedInWhenTheFileCloses)
{
    const Place place;
    auto file = opened(place.path());
    idsOf(file->apply({.added = {feed(1)}}));
    takeTheLogAway(place.path());
    ASSERT_TRUE(tests::OtherProcess::run(place.path(), QStringLiteral("UPDATE entries SET amount = 7")));
    auto others = opened(place.path(), Mode::mustExist); // shares what this process has open, and finds it gone all the same
    file.reset();
    others.reset();
    EXPECT_EQ(gramsIn(place.path()), std::vector{7.0});
}

TEST(StoreHeldLocks, SettingsAndPicturesFollowToo)
{
    const Place place;
    const auto file = opened(place.path());
    const auto ids = idsOf(file->apply({.added = {feed(1)}}));
    takeTheLogAway(place.path());
    EXPECT_FALSE(file->setSetting(QStringLiteral("a"), QStringLiteral("b")));
    takeTheLogAway(place.path());
    PhotoJob job;
    job.photo.entry = ids.front();
    job.photo.mediaType = QStringLiteral("image/jpeg");
    job.photo.width = job.photo.height = 1;
    job.photo.bytes = "x";
    EXPECT_TRUE(std::holds_alternative<qint64>(file->changePhoto(job)));
    const auto again = opened(place.path(), Mode::readOnly);
    EXPECT_EQ(again->setting(QStringLiteral("a")), QStringLiteral("b"));
    EXPECT_EQ(std::get<std::vector<Photo>>(again->photosOf(ids.front())).size(), 1U);
}

TEST(StoreHeldLocks, ALookFindsWhatWasWrittenBesideALostLog)
{
    const Place place;
    Contents contents;
    QStringList told;
    {
        auto result = Writer::open(place.path(), Mode::createIfAbsent, 5s, contents, [&](const QString& text) { told << text; });
        const auto writer = std::move(std::get<std::unique_ptr<Writer>>(result));
        WriteJob job;
        job.edit.added = {feed(1)};
        writer->write(job, [](WriteAnswer) {});
        writer->finish();
        takeTheLogAway(place.path());
        ASSERT_TRUE(tests::OtherProcess::run(place.path(), QStringLiteral("UPDATE entries SET amount = 7")));
        std::promise<Look> looked;
        writer->look([&](Look look) { looked.set_value(std::move(look)); });
        const Look look = looked.get_future().get();
        ASSERT_TRUE(look.foreign);
        ASSERT_EQ(look.foreign->entries.size(), 1U);
        EXPECT_EQ(std::get<journal::Feed>(look.foreign->entries.front().action).food.value, 7);
    }
    EXPECT_EQ(told.size(), 1);
}

}

}
