#include "program.h"

#include "core/household/household.h"

#include <QElapsedTimer>
#include <QStandardPaths>
#include <QtCore/qtestsupport_core.h>

#include <csignal>
#include <cstdlib>

namespace tierloam::cli {

using testing::HasSubstr;
using testing::Not;

class Together : public Program {
protected:
    const QString file_ = QStringLiteral("h.tierloam");

    void begin() const
    {
        write("j.csv", header + begun);
        ASSERT_EQ(import(file_, QStringLiteral("j.csv")).code, 0);
    }
    /// What the window holds: the household, without its pages.
    std::unique_ptr<household::Household> window() const
    {
        household::Household::Settings settings;
        settings.reckon = [](const journal::Entries&, const reckoning::Options&, std::stop_token) { return std::make_shared<const reckoning::Reckoning>(); };
        auto opened = household::Household::open(path("h.tierloam"), std::make_shared<household::SystemClock>(), settings);
        if (const auto* failure = std::get_if<store::OpenFailure>(&opened)) {
            ADD_FAILURE() << failure->why.toStdString();
            return nullptr;
        }
        return std::move(std::get<std::unique_ptr<household::Household>>(opened));
    }
};

// A scale or a script records while the window is open: 20 rows, each seen within 2 s, while the window records too.
TEST_F(Together, TheWindowSeesWhatTheCommandLineRecordsWithinTwoSeconds)
{
    begin();
    const auto household = window();
    ASSERT_TRUE(household);
    qint64 longest = 0;
    for (int i = 0; i < 20; ++i) {
        const std::string note = "by scale " + std::to_string(i);
        if (i % 3 == 0) {
            journal::Entry own = household->journal()->entries.front();
            own.action = journal::Note{};
            own.note = "by hand";
            household->record(own, QStringLiteral("Note"));
        }
        const Answer answer = record(file_, ("2031-01-03,Mill,note,,,,,," + note).c_str());
        ASSERT_EQ(answer.code, 0) << answer.err;
        QElapsedTimer since;
        since.start();
        const auto seen = [&] {
            const auto journal = household->journal();
            return std::ranges::any_of(journal->entries, [&](const journal::Entry& entry) { return entry.note == note; });
        };
        ASSERT_TRUE(QTest::qWaitFor(seen, 2000)) << note;
        longest = std::max(longest, since.elapsed());
    }
    household->finishWrites();
    EXPECT_EQ(household->journal()->entries.size(), 3U + 20U + 7U);
    std::printf("seen after %lld ms at the latest\n", static_cast<long long>(longest));
}

TEST_F(Together, ABackupThatFailsIsToldAndTheRowIsKept)
{
    begin();
    write("h backups", "in the way");
    const Answer answer = record(file_, "2031-01-03,Mill,note,,,,,,x");
    EXPECT_EQ(answer.code, 0);
    EXPECT_EQ(answer.out, "4\n");
    EXPECT_THAT(answer.err, HasSubstr("No backup could be made"));
    EXPECT_THAT(exported(file_), HasSubstr("2031-01-03,Mill,note"));
}

TEST_F(Together, AnImportIntoAHouseholdIsPrecededByABackup)
{
    begin();
    write("more.csv", header + "2031-01-03,Mill,note,,,,,,more\n");
    ASSERT_EQ(import(file_, QStringLiteral("more.csv")).code, 0);
    const QStringList backups = QDir{path("h backups")}.entryList({QStringLiteral("*_import.tierloam")});
    ASSERT_EQ(backups.size(), 1);
    EXPECT_THAT(exported(QStringLiteral("h backups/") + backups.front()), Not(HasSubstr("more")));
}

// No call reaches for a network: not one socket of the internet, whatever is asked for.
TEST_F(Together, NoNetworkAtAll)
{
    begin();
    const QString strace = QStandardPaths::findExecutable(QStringLiteral("strace"));
    ASSERT_FALSE(strace.isEmpty()) << "install strace: tests/packages.txt";
    QList<QStringList> calls{{file_, QStringLiteral("--record"), QStringLiteral("2031-01-03,Mill,note,,,,,,x")}, {file_, QStringLiteral("--summary")},
                             {file_, QStringLiteral("--export"), QStringLiteral("out.csv")}, {QStringLiteral("n.tierloam"), QStringLiteral("--import"), QStringLiteral("j.csv")}};
#ifdef TIERLOAM_UI
    calls << QStringList{file_, QStringLiteral("--portrait"), QStringLiteral("pictures")};
#endif
    for (const QStringList& call : calls) {
        const Answer answer = runCommand(strace, QStringList{QStringLiteral("-f"), QStringLiteral("-o"), QStringLiteral("trace"), QStringLiteral("-e"),
                                                             QStringLiteral("trace=socket,connect,sendto"), QStringLiteral(TIERLOAM_PROGRAM)} + call,
                                         folder().path(), bareEnvironment());
        EXPECT_EQ(answer.code, 0) << answer.err;
        const std::string trace = read("trace");
        EXPECT_THAT(trace, Not(HasSubstr("AF_INET"))) << call.join(QLatin1Char(' ')).toStdString();
        EXPECT_THAT(trace, Not(HasSubstr("AF_NETLINK")));
        EXPECT_THAT(trace, HasSubstr("exited with 0")) << "the trace was kept at all";
    }
}

#ifdef TIERLOAM_UI
// The window itself, shown without a display and closed by a signal: what it asks the system for is no network either.
TEST_F(Together, NoNetworkFromTheWindow)
{
    begin();
    const QString strace = QStandardPaths::findExecutable(QStringLiteral("strace"));
    ASSERT_FALSE(strace.isEmpty()) << "install strace: tests/packages.txt";
    QProcessEnvironment environment = bareEnvironment();
    environment.insert(QStringLiteral("QT_QPA_PLATFORM"), QStringLiteral("offscreen"));
    environment.insert(QStringLiteral("XDG_RUNTIME_DIR"), folder().path());
    QProcess window;
    window.setProcessEnvironment(environment);
    window.setWorkingDirectory(folder().path());
    window.start(strace, {QStringLiteral("-f"), QStringLiteral("-o"), QStringLiteral("trace"), QStringLiteral("-e"), QStringLiteral("trace=socket,connect,bind,sendto,openat"),
                          QStringLiteral(TIERLOAM_PROGRAM), file_});
    ASSERT_TRUE(window.waitForStarted());
    // It is open when its log is there beside the file and its one-window address is bound.
    const bool up = QTest::qWaitFor([&] { return read("trace").find("AF_UNIX") != std::string::npos && QFile::exists(path("h.tierloam-wal")); }, 60'000);
    EXPECT_TRUE(up) << "the window never came up";
    // strace itself would die of the signal and leave the window behind; the lines of its trace begin with whom they are about.
    const int traced = std::atoi(read("trace").c_str());
    ASSERT_GT(traced, 1);
    ::kill(traced, SIGTERM);
    EXPECT_TRUE(window.waitForFinished(20'000)) << "the window does not close at a signal";
    const std::string trace = read("trace");
    EXPECT_THAT(trace, HasSubstr("AF_UNIX")) << "the local address by which a second start finds the window: the trace sees sockets";
    EXPECT_THAT(trace, Not(HasSubstr("AF_INET")));
    EXPECT_THAT(trace, Not(HasSubstr("AF_NETLINK")));
}

// Of the network module nothing but local sockets is linked against.
TEST_F(Together, OnlyLocalSocketsAreLinked)
{
    const Answer names = runCommand(QStringLiteral("nm"), {QStringLiteral("-D"), QStringLiteral("-C"), QStringLiteral("--undefined-only"), QStringLiteral(TIERLOAM_PROGRAM)}, folder().path(), bareEnvironment());
    ASSERT_EQ(names.code, 0) << names.err;
    EXPECT_THAT(names.out, HasSubstr("QLocalSocket")) << "or the test looks at nothing";
    for (const char* symbol : {"QTcp", "QUdp", "QNetwork", "QHostInfo", "QSsl", "QAbstractSocket::connectToHost", "QDns", "getaddrinfo", "gethostby"}) EXPECT_THAT(names.out, Not(HasSubstr(symbol))) << symbol;
}
#endif

}
