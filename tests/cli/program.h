#pragma once

#include <QByteArray>
#include <QDir>
#include <QFile>
#include <QProcess>
#include <QProcessEnvironment>
#include <QString>
#include <QStringList>
#include <QTemporaryDir>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <string>

/// The built program, run as a user's script would: no display, and a platform plugin that does not exist, so that whatever reaches
/// for a display dies.
namespace tierloam::cli {

struct Answer {
    int code = -1;       ///< -1: it crashed or did not end
    std::string out;
    std::string err;
};

inline QProcessEnvironment bareEnvironment()
{
    QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
    for (const char* name : {"DISPLAY", "WAYLAND_DISPLAY", "XDG_SESSION_TYPE"}) environment.remove(QString::fromLatin1(name));
    environment.insert(QStringLiteral("QT_QPA_PLATFORM"), QStringLiteral("nonsense"));
    environment.insert(QStringLiteral("LC_ALL"), QStringLiteral("C.UTF-8")); // of nowhere: a new household's seasons are guessed by the country
    return environment;
}

inline Answer runCommand(const QString& command, const QStringList& arguments, const QString& folder, const QProcessEnvironment& environment)
{
    QProcess process;
    process.setProcessEnvironment(environment);
    process.setWorkingDirectory(folder);
    process.start(command, arguments);
    if (!process.waitForFinished(120'000)) {
        process.kill();
        process.waitForFinished();
    }
    const bool ended = process.exitStatus() == QProcess::NormalExit && process.error() == QProcess::UnknownError;
    return {ended ? process.exitCode() : -1, process.readAllStandardOutput().toStdString(), process.readAllStandardError().toStdString()};
}

/// A folder of its own for each test, and the program run in it.
class Program : public testing::Test {
protected:
    Answer run(const QStringList& arguments) const { return runCommand(QStringLiteral(TIERLOAM_PROGRAM), arguments, folder_.path(), bareEnvironment()); }
    Answer import(const QString& file, const QString& csv) const { return run({file, QStringLiteral("--import"), csv}); }
    Answer record(const QString& file, const char* row) const { return run({file, QStringLiteral("--record"), QString::fromUtf8(row)}); }

    QString path(const char* name) const { return folder_.filePath(QString::fromUtf8(name)); }
    void write(const char* name, const std::string& text) const
    {
        QFile file{path(name)};
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        ASSERT_EQ(file.write(text.data(), static_cast<qint64>(text.size())), static_cast<qint64>(text.size()));
    }
    std::string read(const char* name) const
    {
        QFile file{path(name)};
        return file.open(QIODevice::ReadOnly) ? file.readAll().toStdString() : std::string{"(not there)"};
    }
    /// All names in the folder, hidden ones too, sorted.
    QStringList names() const { return QDir{folder_.path()}.entryList(QDir::AllEntries | QDir::Hidden | QDir::NoDotAndDotDot, QDir::Name); }
    std::string exported(const QString& file) const
    {
        EXPECT_EQ(run({file, QStringLiteral("--export"), QStringLiteral("exported.csv")}).code, 0);
        const std::string text = read("exported.csv");
        QFile::remove(path("exported.csv"));
        return text;
    }
    const QTemporaryDir& folder() const { return folder_; }

private:
    QTemporaryDir folder_;
};

inline const std::string header = "date,stack,action,slot,amount,unit,item,detail,note\n";
inline const std::string begun = "2031-01-01,Mill,setup,,,,,,\n2031-01-01,Mill,bed,,900,g,corrugated cardboard shredded,,\n2031-01-02,Mill,stock,,450,g,,,\n";

}
