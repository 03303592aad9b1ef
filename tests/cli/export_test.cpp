#include "program.h"

#include <QFileInfo>

namespace tierloam::cli {

using testing::AllOf;
using testing::HasSubstr;
using testing::StartsWith;

class Export : public Program {
protected:
    const QString file_ = QStringLiteral("h.tierloam");

    void begin(const std::string& more = {}) const
    {
        write("j.csv", header + begun + more);
        ASSERT_EQ(import(file_, QStringLiteral("j.csv")).code, 0);
        QFile::remove(path("j.csv"));
    }
    Answer exportTo(const char* name) const { return run({file_, QStringLiteral("--export"), QString::fromUtf8(name)}); }
};

TEST_F(Export, GivesTheSameBytesAndTheSameReckoningAfterAnotherRound)
{
    begin("2031-01-05T18:30,Mill,feed,1,1.25,cup,Kitchen Mix,side=left,\"peel, \"\"mostly\"\"\nand more\"\n2031-01-06,,material,,,,=pulp,class=soft;moisture=84,\n"
          "2031-01-12,Mill,feed,,300,g,=PULP,,=1+1\n2031-01-15,Mill,cover,,,,,,-\n2031-02-01,Mill,drain,,0.4,L,,ec=2.1,@\n");
    ASSERT_EQ(exportTo("once.csv").code, 0);
    ASSERT_EQ(import(QStringLiteral("again.tierloam"), QStringLiteral("once.csv")).code, 0);
    ASSERT_EQ(run({QStringLiteral("again.tierloam"), QStringLiteral("--export"), QStringLiteral("twice.csv")}).code, 0);
    EXPECT_EQ(read("once.csv"), read("twice.csv"));

    const auto summary = [&](const char* name) {
        std::string text = run({QString::fromUtf8(name), QStringLiteral("--summary"), QStringLiteral("--at"), QStringLiteral("2031-04-01")}).out;
        const std::size_t at = text.find("\"household\""); // the names of the files differ
        return text.erase(at, text.find('\n', at) - at);
    };
    const std::string first = summary("h.tierloam");
    EXPECT_THAT(first, HasSubstr("\"colony_kg\""));
    EXPECT_EQ(first, summary("again.tierloam"));
}

TEST_F(Export, ReplacesTheTargetAndLeavesNothingBesideIt)
{
    begin();
    write("o.csv", "old");
    const Answer answer = exportTo("o.csv");
    EXPECT_EQ(answer.code, 0);
    EXPECT_EQ(answer.out + answer.err, "");
    EXPECT_THAT(read("o.csv"), AllOf(StartsWith("date,stack,action,slot,amount,unit,item,detail,note\r\n"), HasSubstr("key=")));
    EXPECT_EQ(names(), (QStringList{file_, QStringLiteral("o.csv")}));
}

TEST_F(Export, ATargetThatCannotBeWrittenFailsWithOne)
{
    begin();
    EXPECT_EQ(exportTo("none/o.csv").code, 1);
    EXPECT_EQ(exportTo(".").code, 1);
    EXPECT_EQ(names(), QStringList{file_});
}

TEST_F(Export, NeverReplacesTheHouseholdItself)
{
    begin();
    ASSERT_TRUE(QFile::link(path("h.tierloam"), path("link.csv")));
    const std::string before = read("h.tierloam");
    for (const char* name : {"h.tierloam", "./h.tierloam", "link.csv"}) {
        const Answer answer = exportTo(name);
        EXPECT_EQ(answer.code, 2) << name;
        EXPECT_THAT(answer.err, HasSubstr("household file itself"));
    }
    EXPECT_EQ(read("h.tierloam"), before);
}

TEST_F(Export, NeverReplacesAnotherHousehold)
{
    begin();
    ASSERT_TRUE(QFile::copy(path("h.tierloam"), path("other.tierloam")));
    const std::string before = read("other.tierloam");
    const Answer answer = exportTo("other.tierloam");
    EXPECT_EQ(answer.code, 1);
    EXPECT_THAT(answer.err, HasSubstr("other.tierloam is a household file"));
    EXPECT_EQ(run({file_, QStringLiteral("--calendar"), QStringLiteral("other.tierloam")}).code, 1);
    EXPECT_EQ(read("other.tierloam"), before);
    write("plain.csv", "SQLite");
    EXPECT_EQ(exportTo("plain.csv").code, 0);
}

TEST_F(Export, OfAnEmptyHouseholdIsTheHeader)
{
    write("j.csv", header);
    ASSERT_EQ(import(file_, QStringLiteral("j.csv")).code, 0);
    ASSERT_EQ(exportTo("o.csv").code, 0);
    EXPECT_EQ(read("o.csv"), "date,stack,action,slot,amount,unit,item,detail,note\r\n");
}

}
