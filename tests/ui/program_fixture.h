#pragma once

#include <QFile>
#include <QProcess>
#include <QTemporaryDir>

#include <gtest/gtest.h>

/// The built program, started as people start it, without any display; its files are kept in a folder of the test.
namespace tierloam::tests {

struct Ended {
    int code = -1;                   ///< -1: it crashed
    QString said;                    ///< on stdout and stderr
};

class ProgramTest : public testing::Test {
protected:
    Ended run(const QStringList& arguments, const QProcessEnvironment& more = {})
    {
        QProcess process;
        QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
        for (const char* name : {"QT_QPA_PLATFORM", "DISPLAY", "WAYLAND_DISPLAY"}) environment.remove(QString::fromLatin1(name));
        environment.insert(QStringLiteral("XDG_RUNTIME_DIR"), folder_.path());
        environment.insert(more);
        process.setProcessEnvironment(environment);
        process.setProcessChannelMode(QProcess::MergedChannels);
        process.start(QStringLiteral(TIERLOAM_PROGRAM), arguments);
        EXPECT_TRUE(process.waitForFinished(120'000)) << arguments.join(u' ').toStdString();
        return {process.exitStatus() == QProcess::NormalExit ? process.exitCode() : -1, QString::fromUtf8(process.readAll())};
    }
    QString path(const char* name) const { return folder_.filePath(QString::fromUtf8(name)); }
    void write(const char* name, const QByteArray& bytes) const
    {
        QFile file{path(name)};
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        ASSERT_EQ(file.write(bytes), bytes.size());
    }
    QByteArray read(const char* name) const
    {
        QFile file{path(name)};
        return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray{"(not there)"};
    }

    QTemporaryDir folder_;
};

}
