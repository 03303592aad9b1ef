#include "core/household/demo.h"
#include "tests/core/household_fixture.h"

#include <QFileInfo>

namespace tierloam::household {

namespace {

journal::Entries journalAt(const QString& path)
{
    auto file = store::HouseholdFile::open(path, store::HouseholdFile::Mode::readOnly);
    return std::get<journal::Entries>(std::get<std::unique_ptr<store::HouseholdFile>>(file)->entries());
}

QString copy(Day today, const QByteArray& csv = demo::journal())
{
    auto made = demo::makeCopy(today, csv);
    if (const auto* failure = std::get_if<store::OpenFailure>(&made)) ADD_FAILURE() << failure->why.toStdString();
    return std::get<QString>(made);
}

TEST(HouseholdDemo, ItsJournalIsCompiledInAndLegal)
{
    ASSERT_FALSE(demo::journal().isEmpty());
    QFile source{QStringLiteral(TIERLOAM_SOURCE_DIR "/demo-data/journal.csv")};
    ASSERT_TRUE(source.open(QIODevice::ReadOnly));
    EXPECT_EQ(demo::journal(), source.readAll());
    const auto entries = journalAt(copy(day(2031, 5, 1)));
    EXPECT_GT(entries.size(), 50U);
    const auto replayed = journal::replay(entries);
    EXPECT_TRUE(replayed.refusals.empty());
    EXPECT_EQ(replayed.stacks.size(), 3U);
}

TEST(HouseholdDemo, EndsThisWeekWhateverTheDay)
{
    const auto asWritten = journalAt(copy(day(2031, 5, 1)));
    for (int i = 0; i < 9; ++i) {
        const Day today = day(2024, 2, 26) + std::chrono::days{i * 131};
        const auto entries = journalAt(copy(today));
        ASSERT_EQ(entries.size(), asWritten.size());
        const int ago = daysBetween(entries.back().date.day, today);
        EXPECT_GE(ago, 0);
        EXPECT_LT(ago, 7);
        EXPECT_EQ(daysBetween(entries.front().date.day, asWritten.front().date.day) % 7, 0) << "by whole weeks";
        EXPECT_EQ(daysBetween(entries.front().date.day, entries.back().date.day), daysBetween(asWritten.front().date.day, asWritten.back().date.day));
    }
}

TEST(HouseholdDemo, DaysInsideAnEntryMoveWithIt)
{
    const QByteArray csv = "date,stack,action,slot,amount,unit,item,detail,note\n2025-06-01,Lab,setup,,,,,,\n2025-06-02,Lab,event,,,,away,until=2025-06-16,\n";
    const auto entries = journalAt(copy(day(2031, 5, 1), csv));
    const auto& away = std::get<journal::Event>(entries[1].action);
    EXPECT_EQ(daysBetween(entries[1].date.day, *away.until), 14);
}

TEST(HouseholdDemo, EachCopyIsFreshAndPrivate)
{
    const QString first = copy(day(2031, 5, 1));
    const QString second = copy(day(2031, 5, 1));
    EXPECT_NE(first, second);
    EXPECT_TRUE(QFileInfo::exists(first)) << "the one in use is left alone";
    EXPECT_TRUE(demo::isCopy(first));
    EXPECT_FALSE(demo::isCopy(QStringLiteral("/home/me/demo-1-1.tierloam")));
    const auto everybody = QFile::ReadGroup | QFile::ReadOther | QFile::WriteGroup | QFile::WriteOther | QFile::ExeGroup | QFile::ExeOther;
    EXPECT_FALSE(QFile::permissions(QFileInfo{first}.absolutePath()) & everybody);
}

TEST(HouseholdDemo, CopiesOfProgramsThatNoLongerRunAreRemoved)
{
    const QString mine = copy(day(2031, 5, 1));
    QProcess ended;
    ended.start(QStringLiteral("/bin/true"), QStringList{});
    const qint64 pid = ended.processId();
    ASSERT_TRUE(ended.waitForFinished());
    const QString old = QFileInfo{mine}.absolutePath() + QStringLiteral("/demo-%1-1.tierloam").arg(pid);
    const QString keep = QFileInfo{mine}.absolutePath() + QStringLiteral("/my own.tierloam");
    ASSERT_TRUE(QFile::copy(mine, old));
    ASSERT_TRUE(QFile::copy(mine, keep));
    copy(day(2031, 5, 1));
    EXPECT_FALSE(QFileInfo::exists(old));
    EXPECT_TRUE(QFileInfo::exists(mine));
    EXPECT_TRUE(QFileInfo::exists(keep));
}

TEST(HouseholdDemo, ABadJournalLeavesNothingBehind)
{
    const QDir folder{QFileInfo{copy(day(2031, 5, 1))}.absolutePath()};
    const auto before = folder.entryList(QDir::Files);
    auto made = demo::makeCopy(day(2031, 5, 1), "date,stack,action,slot,amount,unit,item,detail,note\n2025-06-01,Lab,dance,,,,,,\n");
    ASSERT_TRUE(std::holds_alternative<store::OpenFailure>(made));
    EXPECT_TRUE(std::get<store::OpenFailure>(made).why.contains(QStringLiteral("journal.csv:2"))) << std::get<store::OpenFailure>(made).why.toStdString();
    EXPECT_EQ(folder.entryList(QDir::Files), before);
}

}

}
