#include "core/store/backup.h"
#include "core/store/connection.h"
#include "tests/core/store_power_vfs.h"
#include "tests/core/store_samples.h"

#include <set>

namespace tierloam::store {

namespace {

using namespace samples;
using namespace std::chrono_literals;
using Mode = HouseholdFile::Mode;

/// Cuts at every change of a file, and what each leaves.
class Cuts {
public:
    struct Cut {
        PowerVfs::Disk left;
        std::set<std::int64_t> acknowledged; ///< ids, at that moment
        int at = 0;
    };

    explicit Cuts(PowerVfs& disk) : disk_{disk}
    {
        disk_.beforeEach = [this] {
            for (const double kept : {0.0, 0.5, 0.9}) made_.push_back({disk_.afterACut(chance_, kept), acknowledged, disk_.changes()});
        };
    }
    ~Cuts() { disk_.beforeEach = {}; }
    Cuts(const Cuts&) = delete;
    Cuts& operator=(const Cuts&) = delete;

    const std::vector<Cut>& made() const { return made_; }
    std::set<std::int64_t> acknowledged;

private:
    PowerVfs& disk_;
    std::mt19937 chance_{20310501};
    std::vector<Cut> made_;
};

/// The machine comes up again: how many acknowledged entries are gone. A file that is not whole counts as all of them, and one more.
std::size_t lostAfter(const Cuts::Cut& cut)
{
    const Place place;
    for (const auto& [name, bytes] : cut.left)
        if (!name.endsWith(QStringLiteral("-shm")) && !name.endsWith(QStringLiteral(".part"))) place.put(bytes, name.toUtf8().constData());
    auto result = HouseholdFile::open(place.path(), Mode::mustExist);
    const auto* file = std::get_if<std::unique_ptr<HouseholdFile>>(&result);
    if (!file) return cut.acknowledged.empty() ? 0 : cut.acknowledged.size() + 1;
    auto left = cut.acknowledged;
    const auto read = (*file)->entries();
    const auto* entries = std::get_if<journal::Entries>(&read);
    if (!entries) return cut.acknowledged.size() + 1;
    for (const auto& entry : *entries) left.erase(static_cast<std::int64_t>(entry.id));
    return left.size();
}

/// Records, edits and takes out; a few times the log is folded in on the way, as it is when the last one closes the file.
void work(const Place& place, Cuts& cuts)
{
    const bool inFull = qEnvironmentVariableIsSet("TIERLOAM_LONG");
    for (int round = 0; round < (inFull ? 3 : 2); ++round) {
        const auto file = opened(place.path());
        for (int i = 0; i < (inFull ? 4 : 2); ++i) {
            auto entry = feed(i + 1);
            entry.note = std::string(static_cast<std::size_t>(700 * i), 'n');
            for (const auto id : idsOf(file->apply({{entry, feed(9)}, {}, {}}))) cuts.acknowledged.insert(static_cast<std::int64_t>(id));
        }
        auto all = journalOf(*file);
        all[0].note = "changed";
        cuts.acknowledged.erase(static_cast<std::int64_t>(all.back().id)); // from here on it may be gone
        idsOf(file->apply({{}, {all[0]}, {all.back().id}}));
        (void)file->backUpIfDue(QDateTime{QDate{2031, 5, 1}.addDays(round), QTime{9, 0}});
    }
}

TEST(StorePower, NothingAcknowledgedIsLostWithALog)
{
    const Place place;
    PowerVfs disk;
    Cuts cuts{disk};
    work(place, cuts);
    ASSERT_GT(disk.changes(), 60);
    disk.beforeEach = {};
    std::size_t lost = 0;
    for (const auto& cut : cuts.made()) {
        const auto here = lostAfter(cut);
        EXPECT_EQ(here, 0U) << "cut before change " << cut.at;
        lost += here;
    }
    EXPECT_EQ(lost, 0U);
    std::printf("%zu power cuts with a log: %zu acknowledged entries lost\n", cuts.made().size(), lost);
}

TEST(StorePower, NothingAcknowledgedIsLostWithoutALog)
{
    const Place place;
    PowerVfs disk;
    disk.withoutSharedMemory = true;
    Cuts cuts{disk};
    work(place, cuts);
    disk.beforeEach = {};
    disk.withoutSharedMemory = false;
    std::size_t lost = 0;
    for (const auto& cut : cuts.made()) lost += lostAfter(cut);
    EXPECT_EQ(lost, 0U);
    ASSERT_GT(cuts.made().size(), 200U);
    std::printf("%zu power cuts with a rollback journal: %zu acknowledged entries lost\n", cuts.made().size(), lost);
}

// The mutation: without syncs the same cuts must lose entries, or they would show nothing.
TEST(StorePower, WithoutSyncsEntriesWouldBeLost)
{
    const Place place;
    opened(place.path());
    PowerVfs disk;
    Cuts cuts{disk};
    {
        auto result = Connection::open(place.path(), Connection::Access::readWrite, 1s);
        const auto& connection = *std::get<std::unique_ptr<Connection>>(result);
        ASSERT_FALSE(connection.run(QStringLiteral("PRAGMA journal_mode = WAL")));
        ASSERT_FALSE(connection.run(QStringLiteral("PRAGMA synchronous = OFF")));
        for (int i = 1; i <= 5; ++i) {
            ASSERT_FALSE(connection.run(QStringLiteral("INSERT INTO entries (id, day, position_in_day, stack, action, item, note, created_at, changed_at) "
                                                       "VALUES (%1, '2031-05-01', %1, 'Scullery', 'note', '', '', 'x', 'x')").arg(i)));
            cuts.acknowledged.insert(i);
        }
    }
    disk.beforeEach = {};
    std::size_t lost = 0;
    for (const auto& cut : cuts.made()) lost += lostAfter(cut);
    EXPECT_GT(lost, 0U);
}

TEST(StorePower, AFileThatKeepsALogIsTakenOverWhereNoneWorks)
{
    const Place place;
    Place copy;
    {
        // Still open, so that its log holds the newest entry and has not been folded in; copied as it lies there.
        const auto file = opened(place.path());
        idsOf(file->apply({{feed(1)}, {}, {}}));
        copy.put(place.bytes());
        copy.put(place.bytes("mill.tierloam-wal"), "mill.tierloam-wal");
    }
    ASSERT_GT(copy.bytes("mill.tierloam-wal").size(), 0);
    PowerVfs share;
    share.withoutSharedMemory = true;
    EXPECT_EQ(journalOf(*opened(copy.path(), Mode::readOnly)).size(), 1U);
    const auto file = opened(copy.path(), Mode::mustExist);
    idsOf(file->apply({{feed(2)}, {}, {}}));
    EXPECT_EQ(journalOf(*file).size(), 2U);
    EXPECT_FALSE(copy.names().contains(QStringLiteral("mill.tierloam-wal")));
    const auto second = opened(copy.path(), Mode::mustExist);
    idsOf(second->apply({{feed(3)}, {}, {}}));
    EXPECT_EQ(journalOf(*file).size(), 3U) << "two at once";
}

TEST(StorePower, ALogIsNotKeptOnFileSystemsOfSeveralMachines)
{
    EXPECT_TRUE(logIsSafeOn(0xEF53)) << "ext4";
    EXPECT_TRUE(logIsSafeOn(0x9123683E)) << "btrfs";
    EXPECT_TRUE(logIsSafeOn(0x01021994)) << "tmpfs";
    EXPECT_FALSE(logIsSafeOn(0x6969)) << "NFS";
    EXPECT_FALSE(logIsSafeOn(0xFE534D42L)) << "SMB";
    const Place alone;
    opened(alone.path());
    auto other = Connection::open(alone.path(), Connection::Access::readWrite, 1s);
    const auto& connection = *std::get<std::unique_ptr<Connection>>(other);
    ASSERT_FALSE(makeDurable(connection, false));
    EXPECT_EQ(std::get<QVariant>(connection.value(QStringLiteral("PRAGMA journal_mode"))).toString(), QStringLiteral("delete"));
    EXPECT_EQ(std::get<QVariant>(connection.value(QStringLiteral("PRAGMA synchronous"))).toInt(), 3);
}

TEST(StorePower, AFullDiskIsToldAtOpeningAndTheFileStaysReadable)
{
    const Place place;
    idsOf(opened(place.path())->apply({{feed(1)}, {}, {}}));
    const auto before = place.bytes();
    PowerVfs disk;
    disk.full = true;
    auto tried = HouseholdFile::open(place.path(), Mode::mustExist);
    if (auto* file = std::get_if<std::unique_ptr<HouseholdFile>>(&tried)) {
        const auto failure = failureOf((*file)->apply({{feed(2)}, {}, {}}));
        EXPECT_TRUE(failure.diskFull) << failure.why.toStdString();
        EXPECT_EQ(journalOf(**file).size(), 1U);
    } else {
        EXPECT_EQ(std::get<OpenFailure>(tried).problem, OpenProblem::diskFull);
    }
    EXPECT_EQ(journalOf(*opened(place.path(), Mode::readOnly)).size(), 1U);
    EXPECT_EQ(place.bytes(), before);
    const auto failure = refused(place.path("new.tierloam"), Mode::createIfAbsent);
    EXPECT_EQ(failure.problem, OpenProblem::diskFull);
    EXPECT_FALSE(QFile::exists(place.path("new.tierloam"))) << "no half household is left";
    disk.full = false;
    idsOf(opened(place.path(), Mode::mustExist)->apply({{feed(2)}, {}, {}}));
}

}

}
