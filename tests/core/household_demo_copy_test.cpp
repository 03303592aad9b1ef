#include "core/household/demo_copy.h"
#include "tests/core/household_fixture.h"

#include <QFileInfo>

namespace tierloam::household {

namespace {

class HouseholdDemoCopy : public testing::Test {
protected:
    static std::string journalCsv()
    {
        QFile source{QStringLiteral(TIERLOAM_SOURCE_DIR "/demo-data/journal.csv")};
        EXPECT_TRUE(source.open(QIODevice::ReadOnly));
        return source.readAll().toStdString();
    }
    journal::Entries copy(Day today, const std::string& csv)
    {
        const QString path = folder_.filePath(QStringLiteral("copy-%1.tierloam").arg(++copies_));
        const auto why = makeDemoHousehold(csv, path, today);
        if (why) {
            ADD_FAILURE() << why->toStdString();
            return {};
        }
        auto file = store::HouseholdFile::open(path, store::HouseholdFile::Mode::readOnly);
        return std::get<journal::Entries>(std::get<std::unique_ptr<store::HouseholdFile>>(file)->entries());
    }

    QTemporaryDir folder_;

private:
    int copies_ = 0;
};

TEST_F(HouseholdDemoCopy, ItsJournalIsLegalAndHoldsThreeStacks)
{
    const auto entries = copy(day(2031, 5, 1), journalCsv());
    EXPECT_GT(entries.size(), 50U);
    const auto replayed = journal::replay(entries);
    EXPECT_TRUE(replayed.refusals.empty());
    EXPECT_EQ(replayed.stacks.size(), 3U);
}

TEST_F(HouseholdDemoCopy, EndsThisWeekWhateverTheDay)
{
    const auto csv = journalCsv();
    const auto asWritten = copy(day(2031, 5, 1), csv);
    for (int i = 0; i < 9; ++i) {
        const Day today = day(2024, 2, 26) + std::chrono::days{i * 131};
        const auto entries = copy(today, csv);
        ASSERT_EQ(entries.size(), asWritten.size());
        const int ago = daysBetween(entries.back().date.day, today);
        EXPECT_GE(ago, 0);
        EXPECT_LT(ago, 7);
        EXPECT_EQ(daysBetween(entries.front().date.day, asWritten.front().date.day) % 7, 0) << "by whole weeks";
        EXPECT_EQ(daysBetween(entries.front().date.day, entries.back().date.day), daysBetween(asWritten.front().date.day, asWritten.back().date.day));
    }
}

TEST_F(HouseholdDemoCopy, DaysInsideAnEntryMoveWithIt)
{
    const auto entries = copy(day(2031, 5, 1), "date,stack,action,slot,amount,unit,item,detail,note\n2025-06-01,Lab,setup,,,,,,\n"
                                               "2025-06-02,Lab,event,,,,away,until=2025-06-16,\n");
    ASSERT_EQ(entries.size(), 2U);
    EXPECT_EQ(daysBetween(entries[1].date.day, *std::get<journal::Event>(entries[1].action).until), 14);
}

TEST_F(HouseholdDemoCopy, LeavesNothingBehindAndOverwritesNothing)
{
    const QString path = folder_.filePath(QStringLiteral("x.tierloam"));
    const auto bad = makeDemoHousehold("date,stack,action,slot,amount,unit,item,detail,note\n2025-06-01,Lab,dance,,,,,,\n", path, day(2031, 5, 1));
    ASSERT_TRUE(bad);
    EXPECT_TRUE(bad->contains(QStringLiteral("journal.csv:2"))) << bad->toStdString();
    EXPECT_FALSE(QFileInfo::exists(path));

    QFile mine{path};
    ASSERT_TRUE(mine.open(QIODevice::WriteOnly));
    mine.write("mine");
    mine.close();
    EXPECT_TRUE(makeDemoHousehold(journalCsv(), path, day(2031, 5, 1)));
    EXPECT_EQ(QFileInfo{path}.size(), 4);
}

}

}
