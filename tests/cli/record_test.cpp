#include "program.h"

#include <QElapsedTimer>
#include <QSqlDatabase>
#include <QSqlError>
#include <QSqlQuery>
#include <QStandardPaths>

#include <memory>
#include <set>
#include <vector>

namespace tierloam::cli {

using testing::HasSubstr;
using testing::IsEmpty;
using testing::StartsWith;

class Record : public Program {
protected:
    const QString file_ = QStringLiteral("h.tierloam");

    void begin() const
    {
        write("j.csv", header + begun);
        ASSERT_EQ(import(file_, QStringLiteral("j.csv")).code, 0);
        QFile::remove(path("j.csv"));
    }
};

TEST_F(Record, MakesTheFileAndPrintsTheIdAlone)
{
    Answer answer = record(file_, "2031-01-01,Mill,setup,,,,,,");
    EXPECT_EQ(answer.code, 0) << answer.err;
    EXPECT_EQ(answer.out, "1\n");
    EXPECT_EQ(answer.err, "");
    answer = record(file_, "2031-01-01T07:30,Mill,bed,,900,g,newspaper shredded,,\"first, of all\"");
    EXPECT_EQ(answer.out, "2\n");
    EXPECT_THAT(exported(file_), HasSubstr("2031-01-01T07:30,Mill,bed,,900,g,newspaper shredded,,\"first, of all\"\r\n"));
}

TEST_F(Record, TellsABadRowAndLeavesNothing)
{
    Answer answer = record(file_, "2031-01-01,Mill,feed,,300,g,,,");
    EXPECT_EQ(answer.code, 2);
    EXPECT_EQ(answer.out, "");
    EXPECT_EQ(answer.err, "row:1: stack: found «Mill»; allowed: a stack that has been set up (there is none)\n");
    EXPECT_THAT(names(), IsEmpty());
    answer = record(file_, "2031-01-01,Mill,setup");
    EXPECT_EQ(answer.code, 2);
    EXPECT_THAT(answer.err, StartsWith("row:1: found «2031-01-01,Mill,setup»; allowed: 9 cells"));
    EXPECT_EQ(record(file_, "2031-01-01,Mill,setup,,,,,,\n2031-01-01,Mill,bed,,1,kg,newspaper shredded,,").code, 2);
    EXPECT_THAT(names(), IsEmpty());

    begin();
    const std::string before = exported(file_);
    answer = record(file_, "2031-01-03,Mill,feed,2,300,g,,,");
    EXPECT_EQ(answer.code, 2);
    EXPECT_EQ(answer.err, "row:1: slot: found «2»; allowed: 1\n");
    EXPECT_EQ(exported(file_), before);
}

/// Scripts look for the form, whatever the language of the machine.
TEST_F(Record, ABadRowIsToldInTheFixedFormInEveryLanguage)
{
    begin();
    QProcessEnvironment german = bareEnvironment();
    german.insert(QStringLiteral("LC_ALL"), QStringLiteral("de_DE.UTF-8"));
    german.insert(QStringLiteral("LANG"), QStringLiteral("de_DE.UTF-8"));
    const auto call = [&](const QStringList& arguments) { return runCommand(QStringLiteral(TIERLOAM_PROGRAM), arguments, folder().path(), german); };
    const Answer answer = call({file_, QStringLiteral("--record"), QStringLiteral("2031-01-03,Mill,feed,,300,g,kitchn,,")});
    EXPECT_EQ(answer.code, 2);
    EXPECT_THAT(answer.err, StartsWith("row:1: item: found «kitchn»; allowed: "));
    write("bad.csv", header + "2031-01-03,Mill,feed,,300,pints,,,\n");
    EXPECT_THAT(call({file_, QStringLiteral("--import"), QStringLiteral("bad.csv")}).err, StartsWith("bad.csv:2: unit: found «pints»; allowed: g, kg"));
    EXPECT_THAT(call({QStringLiteral("--help")}).err + call({QStringLiteral("--help")}).out, testing::Not(HasSubstr("prints its id once"))) << "the rest is in German";
}

/// --report finds them in the same way: see the tests of paper.
TEST_F(Record, AStackIsFoundWhateverTheCaseOfItsName)
{
    begin();
    ASSERT_EQ(record(file_, "2031-01-03,mILL,feed,,300,g,,,").code, 0);
    EXPECT_THAT(exported(file_), HasSubstr("2031-01-03,Mill,feed"));
    ASSERT_EQ(record(file_, "2031-01-04,mill,setup,,,,,,").code, 0) << "a new stack of its own";
    EXPECT_THAT(exported(file_), HasSubstr("2031-01-04,mill,setup"));
    ASSERT_EQ(record(file_, "2031-01-04,mill,bed,,900,g,newspaper shredded,,").code, 0);
    EXPECT_THAT(exported(file_), HasSubstr("2031-01-04,mill,bed")) << "exactly, where there is one";
    const Answer unsure = record(file_, "2031-01-05,MILL,feed,,300,g,,,");
    EXPECT_EQ(unsure.code, 2) << "two would do";
    EXPECT_THAT(unsure.err, StartsWith("row:1: stack: found «MILL»; allowed: a stack that has been set up: Mill, mill"));
    ASSERT_EQ(record(file_, "2031-01-06,Barn,setup,,,,,,").code, 0);
    ASSERT_EQ(record(file_, "2031-01-06,Barn,bed,,900,g,newspaper shredded,,").code, 0);
    ASSERT_EQ(record(file_, "2031-01-07,Mill,move,,100,g,,to=BARN,").code, 0);
    EXPECT_THAT(exported(file_), HasSubstr("to=Barn"));
}

TEST_F(Record, ARowOfBytesThatAreNotUtf8IsAtFaultAsAWhole)
{
    begin();
    // QProcess would encode the argument; the shell passes the bytes on.
    const Answer answer = runCommand(QStringLiteral("/bin/sh"), {QStringLiteral("-c"), QStringLiteral(TIERLOAM_PROGRAM " h.tierloam --record \"$(printf '2031-01-03,Mill,note,,,,,,\\377')\"")},
                                     folder().path(), bareEnvironment());
    EXPECT_EQ(answer.code, 2);
    EXPECT_THAT(answer.err, StartsWith("row:1: found «2031-01-03,Mill,note,,,,,,\xEF\xBF\xBD»; allowed: text in UTF-8"));
}

TEST_F(Record, BackDatedRowsAreRefusedOrListWhatMoves)
{
    begin();
    ASSERT_EQ(record(file_, "2031-02-01,Mill,bed,,900,g,newspaper shredded,,").out, "4\n");
    ASSERT_EQ(record(file_, "2031-03-01,Mill,feed,,300,g,,,").out, "5\n");
    ASSERT_EQ(record(file_, "2031-07-01,Mill,rotate,,,,,,").out, "6\n");
    Answer answer = record(file_, "2031-06-01,Mill,harvest,1,2,kg,,,");
    EXPECT_EQ(answer.code, 2);
    EXPECT_THAT(answer.err, testing::AllOf(StartsWith("row:1: found «2031-06-01,Mill,harvest,1,2,kg,,,»; allowed: "), HasSubstr("entry 6 (2031-07-01, Mill, rotate)")));
    answer = record(file_, "2031-02-20,Mill,bed,,900,g,newspaper shredded,,");
    EXPECT_EQ(answer.out, "7\n");
    EXPECT_THAT(answer.err, HasSubstr("Later entries that now fall to another batch: 1\n2031-03-01, Mill, feed"));
}

TEST_F(Record, AnAnswerThatCannotBePrintedIsAFailure)
{
    begin();
    const Answer answer = runCommand(QStringLiteral("/bin/sh"), {QStringLiteral("-c"), QStringLiteral(TIERLOAM_PROGRAM " h.tierloam --record '2031-01-03,Mill,note,,,,,,x' > /dev/full")},
                                     folder().path(), bareEnvironment());
    EXPECT_EQ(answer.code, 1);
    EXPECT_THAT(answer.err, HasSubstr("could not be printed"));
    EXPECT_THAT(exported(file_), HasSubstr("2031-01-03,Mill,note")) << "what was written is kept, and it said so";
}

TEST_F(Record, TheIdComesOnlyAfterTheDiskHasConfirmed)
{
    const QString strace = QStandardPaths::findExecutable(QStringLiteral("strace"));
    ASSERT_FALSE(strace.isEmpty()) << "install strace: tests/packages.txt";
    begin();
    const Answer answer = runCommand(strace, {QStringLiteral("-f"), QStringLiteral("-y"), QStringLiteral("-o"), QStringLiteral("trace"), QStringLiteral("-e"),
                                              QStringLiteral("trace=write,pwrite64,fsync,fdatasync,rename,unlink"), QStringLiteral(TIERLOAM_PROGRAM), file_, QStringLiteral("--record"),
                                              QStringLiteral("2031-01-03,Mill,feed,,300,g,,,")},
                                     folder().path(), bareEnvironment());
    ASSERT_EQ(answer.code, 0) << answer.err;
    ASSERT_EQ(answer.out, "4\n");

    // Each of the file and its write-ahead log that was written before the id must have been synced between its last write and the id.
    std::set<std::string> unsynced;
    int written = 0, synced = 0;
    bool printed = false;
    for (const QString& line : QString::fromStdString(read("trace")).split(QLatin1Char{'\n'})) {
        const qsizetype from = line.indexOf(QLatin1Char{'<'}), to = line.indexOf(QLatin1Char{'>'});
        const std::string target = from >= 0 && to > from ? line.mid(from + 1, to - from - 1).toStdString() : std::string{};
        if (line.contains(u"write(1<")) {
            EXPECT_THAT(line.toStdString(), HasSubstr("\"4\\n\""));
            printed = true;
            break;
        }
        // The shared-memory index beside the log is rebuilt after a crash and is no part of what must last.
        if (target.find("h.tierloam") == std::string::npos || target.ends_with("-shm")) continue;
        if (line.contains(u"pwrite64(") || line.contains(u"write(")) {
            unsynced.insert(target);
            ++written;
        }
        if (line.contains(u"fdatasync(") || line.contains(u"fsync(")) {
            unsynced.erase(target);
            ++synced;
        }
    }
    EXPECT_TRUE(printed);
    EXPECT_GT(written, 0);
    EXPECT_GT(synced, 0);
    EXPECT_THAT(unsynced, IsEmpty());
}

TEST_F(Record, ManyAtOnceAreAllKept)
{
    begin();
    constexpr int programs = 12;
    std::vector<std::unique_ptr<QProcess>> running;
    for (int i = 0; i < programs; ++i) {
        running.push_back(std::make_unique<QProcess>());
        running.back()->setProcessEnvironment(bareEnvironment());
        running.back()->setWorkingDirectory(folder().path());
        running.back()->start(QStringLiteral(TIERLOAM_PROGRAM), {file_, QStringLiteral("--record"), QStringLiteral("2031-01-03,Mill,note,,,,,,from program %1").arg(i)});
    }
    std::set<QByteArray> ids;
    for (const auto& process : running) {
        ASSERT_TRUE(process->waitForFinished(60'000));
        EXPECT_EQ(process->exitCode(), 0) << process->readAllStandardError().toStdString();
        ids.insert(process->readAllStandardOutput());
    }
    EXPECT_EQ(ids.size(), std::size_t{programs});
    const std::string journal = exported(file_);
    for (int i = 0; i < programs; ++i) EXPECT_THAT(journal, HasSubstr("from program " + std::to_string(i) + "\r\n"));
}

TEST_F(Record, TwoThatCannotBothBeAreNotBothWritten)
{
    begin();
    std::vector<std::unique_ptr<QProcess>> running;
    for (int i = 0; i < 6; ++i) { // three trays are owned and one stands: two of these are possible
        running.push_back(std::make_unique<QProcess>());
        running.back()->setProcessEnvironment(bareEnvironment());
        running.back()->setWorkingDirectory(folder().path());
        running.back()->start(QStringLiteral(TIERLOAM_PROGRAM), {file_, QStringLiteral("--record"), QStringLiteral("2031-01-03,Mill,bed,,900,g,newspaper shredded,,")});
    }
    int done = 0, refused = 0;
    for (const auto& process : running) {
        ASSERT_TRUE(process->waitForFinished(60'000));
        done += process->exitCode() == 0 ? 1 : 0;
        refused += process->exitCode() == 2 ? 1 : 0;
    }
    EXPECT_EQ(done, 2);
    EXPECT_EQ(refused, 4);
}

TEST_F(Record, AFileInUseForMoreThanFiveSecondsFailsWithOne)
{
    begin();
    {
        QSqlDatabase database = QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), QStringLiteral("holder"));
        database.setDatabaseName(path("h.tierloam"));
        ASSERT_TRUE(database.open());
        QSqlQuery query{database};
        ASSERT_TRUE(query.exec(QStringLiteral("BEGIN IMMEDIATE"))) << query.lastError().text().toStdString();

        QElapsedTimer clock;
        clock.start();
        const Answer answer = record(file_, "2031-01-03,Mill,note,,,,,,x");
        EXPECT_EQ(answer.code, 1);
        EXPECT_THAT(answer.err, HasSubstr("use"));
        EXPECT_GE(clock.elapsed(), 4'500);
        EXPECT_LT(clock.elapsed(), 20'000);
        ASSERT_TRUE(query.exec(QStringLiteral("ROLLBACK")));
        EXPECT_EQ(record(file_, "2031-01-03,Mill,note,,,,,,x").code, 0);
    }
    QSqlDatabase::removeDatabase(QStringLiteral("holder"));
}

}
