#pragma once

#include <QProcess>
#include <QString>
#include <QStringList>

#include <memory>

/// Another program at a household file: Python's own SQLite in a process of its own, so that locks and writes are truly foreign.
namespace tierloam::tests {

class OtherProcess {
public:
    /// Takes the write lock and holds it until letGo() or the end of this object.
    static OtherProcess holdingLock(const QString& path)
    {
        return OtherProcess{QStringLiteral("import sqlite3, sys\n"
                                           "c = sqlite3.connect(sys.argv[1], isolation_level=None, timeout=30)\n"
                                           "c.execute('BEGIN EXCLUSIVE')\n"
                                           "print('ready', flush=True)\n"
                                           "sys.stdin.readline()\n"
                                           "c.execute('ROLLBACK')\n"),
                            {path}};
    }
    /// Runs statements in one go; false when that failed.
    static bool run(const QString& path, const QString& sql)
    {
        OtherProcess other{QStringLiteral("import sqlite3, sys\n"
                                          "c = sqlite3.connect(sys.argv[1], isolation_level=None, timeout=30)\n"
                                          "c.executescript(sys.argv[2])\n"
                                          "print('ready', flush=True)\n"),
                           {path, sql}};
        return other.ready_ && other.letGo();
    }

    OtherProcess(OtherProcess&&) = default;
    OtherProcess& operator=(OtherProcess&&) = default;
    ~OtherProcess()
    {
        if (process_) letGo();
    }

    bool ready() const { return ready_; }
    /// Lets go and waits for the end of the process; false when it ended with an error.
    bool letGo()
    {
        process_->write("\n");
        process_->closeWriteChannel();
        const bool ended = process_->state() == QProcess::NotRunning || process_->waitForFinished(60000);
        const bool fine = ended && process_->exitCode() == 0;
        process_.reset();
        return fine;
    }

private:
    OtherProcess(const QString& script, const QStringList& arguments) : process_{std::make_unique<QProcess>()}
    {
        process_->setProcessChannelMode(QProcess::ForwardedErrorChannel);
        process_->start(QStringLiteral("/usr/bin/python3"), QStringList{QStringLiteral("-c"), script} + arguments);
        ready_ = process_->waitForStarted(60000) && process_->waitForReadyRead(60000) && process_->readAllStandardOutput().startsWith("ready");
    }

    std::unique_ptr<QProcess> process_;
    bool ready_ = false;
};

}
