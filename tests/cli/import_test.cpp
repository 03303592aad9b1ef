#include "program.h"

namespace tierloam::cli {

using testing::AllOf;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::StartsWith;

class Import : public Program {
protected:
    const QString file_ = QStringLiteral("h.tierloam");
    const QString csv_ = QStringLiteral("j.csv");

    static std::vector<std::string> lines(const std::string& text)
    {
        std::vector<std::string> found;
        for (const QString& line : QString::fromStdString(text).split(QLatin1Char{'\n'}, Qt::SkipEmptyParts)) found.push_back(line.toStdString());
        return found;
    }
};

TEST_F(Import, MakesTheFileAddsAllRowsAndSaysHowMany)
{
    write("j.csv", header + begun);
    const Answer answer = import(file_, csv_);
    EXPECT_EQ(answer.code, 0);
    EXPECT_EQ(answer.out, "imported 3 entries\n");
    EXPECT_EQ(answer.err, "");
    write("more.csv", header + "2031-01-09,Mill,feed,,300,g,,,\n");
    EXPECT_EQ(import(file_, QStringLiteral("more.csv")).out, "imported 1 entries\n");
    EXPECT_THAT(lines(exported(file_)), testing::SizeIs(5));
}

/// A garage is warmest in January there, and nobody was asked.
TEST_F(Import, GuessesTheSeasonsOfANewHouseholdByTheCountryAndSaysSo)
{
    write("j.csv", header + begun);
    QProcessEnvironment south = bareEnvironment();
    south.insert(QStringLiteral("LC_ALL"), QStringLiteral("en_AU.UTF-8"));
    const auto in = [&](const QString& file) { return runCommand(QStringLiteral(TIERLOAM_PROGRAM), {file, QStringLiteral("--import"), csv_}, folder().path(), south); };
    const Answer made = in(file_);
    EXPECT_EQ(made.code, 0);
    EXPECT_THAT(made.err, HasSubstr("south of the equator"));
    write("more.csv", header + "2031-01-09,Mill,feed,,300,g,,,\n");
    EXPECT_EQ(import(QStringLiteral("n.tierloam"), csv_).err, "");
    EXPECT_EQ(runCommand(QStringLiteral(TIERLOAM_PROGRAM), {QStringLiteral("n.tierloam"), QStringLiteral("--import"), QStringLiteral("more.csv")}, folder().path(), south).err, "")
        << "what stands is not turned";
}

TEST_F(Import, OfAHeaderAloneIsFine)
{
    write("j.csv", header);
    EXPECT_EQ(import(file_, csv_).out, "imported 0 entries\n");
}

TEST_F(Import, TellsEveryBadRowWithTheNameAsTypedAndLeavesNoFileBehind)
{
    write("j.csv", header + begun + "2031-01-03,Mill,feed,,300,pints,,,\n2031-01-04,Mill,feed,4,300,g,,,\n2031-01-05,Barn,feed,,300,g,,,\n");
    const QString typed = QStringLiteral("./j.csv");
    const Answer answer = import(file_, typed);
    EXPECT_EQ(answer.code, 2);
    EXPECT_EQ(answer.out, "");
    EXPECT_THAT(lines(answer.err), ElementsAre("./j.csv:5: unit: found «pints»; allowed: g, kg, oz, lb, mL, L, cup, gal, floz", "./j.csv:6: slot: found «4»; allowed: 1",
                                               "./j.csv:7: stack: found «Barn»; allowed: a stack that has been set up: Mill"));
    EXPECT_EQ(names(), QStringList{csv_});
}

TEST_F(Import, OfABadFileIntoAnExistingHouseholdChangesNothing)
{
    write("j.csv", header + begun);
    ASSERT_EQ(import(file_, csv_).code, 0);
    const std::string before = exported(file_);
    const QStringList there = names();
    write("j.csv", header + "2031-02-01,Mill,feed,,300,g,,,\n2031-02-02,Mill,rotate,,,,,,\n");
    const Answer answer = import(file_, csv_);
    EXPECT_EQ(answer.code, 2);
    EXPECT_THAT(answer.err, StartsWith("j.csv:3: action: found «rotate»"));
    EXPECT_EQ(exported(file_), before);
    EXPECT_EQ(names(), there);
}

TEST_F(Import, OfATableOfAnotherMakeSaysWhichAndThatTheWindowReadsItAndLeavesNothing)
{
    const std::string wide = std::string{"\xFF\xFE"} + std::string("d\0;\0\n\0", 6);
    const std::pair<std::string, const char*> tables[] = {{"Datum;Stapel;Tätigkeit\n1.5.2031;Mill;0,3\n", "j.csv:1: found «Datum;Stapel;Tätigkeit»; allowed: cells parted by commas (,); in this file semicolons (;) part them\n"},
                                                           {"date\tstack\taction\n", "in this file tabs part them\n"},
                                                           {wide, "j.csv:1: found «text in UTF-16»; allowed: text in UTF-8\n"},
                                                           {"Day,Bin,Who\n", "j.csv:1: Day: found «Day»; allowed: date\n"},
                                                           {"2031-01-01,Mill,setup,,,,,,\n", "this one is an entry\n"},
                                                           {header + "2031-01-01,M\xFChle,setup,,,,,,\n", "j.csv:2: found «2031-01-01,M\xEF\xBF\xBDhle,setup,,,,,,»; allowed: text in UTF-8; this may be Latin-1\n"}};
    for (const auto& [text, told] : tables) {
        write("j.csv", text);
        const Answer answer = import(file_, csv_);
        EXPECT_EQ(answer.code, 2) << text;
        EXPECT_EQ(answer.out, "");
        EXPECT_THAT(answer.err, HasSubstr(told));
        EXPECT_THAT(lines(answer.err).back(), AllOf(StartsWith("tierloam: j.csv "), HasSubstr("The window reads other tables too"))) << "once, behind all";
        EXPECT_EQ(names(), QStringList{csv_}) << "and no household is left";
    }
    write("j.csv", header + begun + "2031-01-03,Mill,feed,,300,pints,,,\n");
    EXPECT_THAT(import(file_, csv_).err, testing::Not(HasSubstr("The window reads"))) << "a slip in our own format is no other format";
}

TEST_F(Import, StopsAtFiftyBadRows)
{
    std::string rows = header + begun;
    for (int i = 0; i < 60; ++i) rows += "2031-01-05,Mill,fed,,,,,,\n";
    write("j.csv", rows);
    const Answer answer = import(file_, csv_);
    EXPECT_EQ(answer.code, 2);
    EXPECT_THAT(lines(answer.err), testing::SizeIs(50));
}

TEST_F(Import, OfWhatIsNotThereOrNoFileIsBadInput)
{
    for (const char* name : {"none.csv", "."}) {
        const Answer answer = import(file_, QString::fromUtf8(name));
        EXPECT_EQ(answer.code, 2) << name;
        EXPECT_THAT(answer.err, AllOf(StartsWith("tierloam: "), HasSubstr("cannot be read")));
        EXPECT_THAT(names(), IsEmpty());
    }
}

TEST_F(Import, IntoWhatIsNoHouseholdFailsAndLeavesItAlone)
{
    write("j.csv", header + begun);
    for (const char* content : {"not a household", "SQLite format 3\0 and then nothing"}) {
        write("h.tierloam", content);
        const Answer answer = import(file_, csv_);
        EXPECT_EQ(answer.code, 1) << answer.err;
        EXPECT_THAT(answer.err, StartsWith("tierloam: "));
        EXPECT_EQ(read("h.tierloam"), content);
        EXPECT_EQ(names(), (QStringList{file_, csv_}));
    }
}

TEST_F(Import, IntoAFolderThatIsNotThereFails)
{
    write("j.csv", header + begun);
    EXPECT_EQ(import(QStringLiteral("none/h.tierloam"), csv_).code, 1);
    EXPECT_EQ(names(), QStringList{csv_});
}

TEST_F(Import, SaysWhatItMovesAndASecondSpecies)
{
    write("j.csv", header + begun + "2031-02-01,Mill,feed,,300,g,,,\n");
    ASSERT_EQ(import(file_, csv_).code, 0);
    write("more.csv", header + "2031-01-20,Mill,bed,,900,g,newspaper shredded,,\n2031-01-21,Mill,stock,,100,g,Eisenia andrei,,\n");
    const Answer answer = import(file_, QStringLiteral("more.csv"));
    EXPECT_EQ(answer.code, 0);
    EXPECT_EQ(answer.out, "imported 2 entries\n");
    EXPECT_THAT(answer.err, AllOf(HasSubstr("a second species in this stack"), HasSubstr("Later entries that now fall to another batch: 1\n2031-02-01, Mill, feed")));
}

TEST_F(Import, OtherCallsNeedAFileThatIsThere)
{
    for (const char* call : {"--summary", "--export o.csv"}) {
        const Answer answer = run(QStringList{file_} + QString::fromUtf8(call).split(QLatin1Char{' '}));
        EXPECT_EQ(answer.code, 1) << call;
        EXPECT_THAT(answer.err, HasSubstr("h.tierloam"));
        EXPECT_THAT(names(), IsEmpty());
    }
}

}
