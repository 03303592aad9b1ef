#include "program.h"

#include "core/household/household.h"

#include <QElapsedTimer>
#include <QStandardPaths>
#include <QtCore/qtestsupport_core.h>

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

}
