#include "core/log/log.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QRegularExpression>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include <cstdlib>
#include <thread>
#include <vector>

// The program's own log: bounded, whole lines, and of words and numbers alone.
namespace tierloam::log {

class LogTest : public testing::Test {
protected:
    void SetUp() override
    {
        before_ = qgetenv("XDG_STATE_HOME");
        qputenv("XDG_STATE_HOME", state_.path().toUtf8());
    }
    void TearDown() override { qputenv("XDG_STATE_HOME", before_); }
    QString path(const char* name) const { return state_.filePath(QStringLiteral("tierloam/") + QString::fromLatin1(name)); }

    QTemporaryDir state_;
    QByteArray before_;
};

TEST_F(LogTest, ALineSaysWhenWhoAndWhat)
{
    note(What::opened, {{"schema", 4}, {"ms", 12}});
    const auto lines = lastLines(10);
    ASSERT_EQ(lines.size(), 1);
    EXPECT_TRUE(QRegularExpression{QStringLiteral("^\\d{4}-\\d\\d-\\d\\dT\\d\\d:\\d\\d:\\d\\dZ \\d+ opened schema=4 ms=12$")}.match(lines[0]).hasMatch()) << lines[0].toStdString();
    EXPECT_EQ(QFile{path("log.txt")}.permissions() & (QFile::ReadGroup | QFile::ReadOther), QFile::Permissions{}) << "for its owner alone";
}

TEST_F(LogTest, ThreeFilesOfBoundedSizeAtMost)
{
    // About 1.2 MB of lines.
    for (int i = 0; i < 25'000; ++i) note(What::written, {{"added", i}});
    const auto names = QDir{path("")}.entryList(QDir::Files, QDir::Name);
    EXPECT_EQ(names, (QStringList{QStringLiteral("log.1.txt"), QStringLiteral("log.2.txt"), QStringLiteral("log.txt")}));
    for (const QString& name : names) EXPECT_LE(QFileInfo{path(name.toLatin1().constData())}.size(), largestFile + 200);
    const auto lines = lastLines(30'000);
    EXPECT_GT(lines.size(), 10'000);
    EXPECT_TRUE(lines.back().endsWith(QStringLiteral("added=24999"))) << "the newest are kept, in order";
    EXPECT_EQ(lastLines(3).size(), 3);
}

TEST_F(LogTest, LinesOfSeveralThreadsStayWhole)
{
    std::vector<std::jthread> threads;
    for (int t = 0; t < 4; ++t)
        threads.emplace_back([t] { for (int i = 0; i < 500; ++i) note(What::reckoned, {{"thread", t}, {"round", i}}); });
    threads.clear();
    const auto lines = lastLines(5000);
    EXPECT_EQ(lines.size(), 2000);
    const QRegularExpression form{QStringLiteral("Z \\d+ reckoned thread=\\d round=\\d+$")};
    for (const QString& line : lines) ASSERT_TRUE(form.match(line).hasMatch()) << line.toStdString();
}

TEST_F(LogTest, WhereItCannotBeWrittenNothingHappens)
{
    qputenv("XDG_STATE_HOME", "/proc/nowhere");
    note(What::started);
    EXPECT_TRUE(lastLines(5).isEmpty());
    qputenv("XDG_STATE_HOME", "not/absolute");
    EXPECT_FALSE(folder().startsWith(QStringLiteral("not"))) << "XDG Base Directory: only absolute paths count";
    // A link in its place leads nowhere else.
    qputenv("XDG_STATE_HOME", state_.path().toUtf8());
    ASSERT_TRUE(QDir{}.mkpath(path("")));
    const QString other = state_.filePath(QStringLiteral("dear"));
    {
        QFile dear{other};
        ASSERT_TRUE(dear.open(QIODevice::WriteOnly));
    }
    ASSERT_TRUE(QFile::link(other, path("log.txt")));
    note(What::started);
    EXPECT_EQ(QFileInfo{other}.size(), 0);
}

}
