#pragma once

#include <QByteArray>
#include <QString>

#include <fcntl.h>
#include <spawn.h>
#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <utility>

/// Another program at a household file: Python's own SQLite in a process of its own, so that locks and writes are truly foreign.
/// Started by posix_spawn: the thread sanitizer watches fork and clone, and QProcess's way of it would silence the sanitizer from then on.
namespace tierloam::tests {

class OtherProcess {
public:
    /// Takes the write lock and holds it until letGo() or the end of this object.
    static OtherProcess holdingLock(const QString& path)
    {
        return OtherProcess{"import sqlite3, sys\n"
                            "c = sqlite3.connect(sys.argv[1], isolation_level=None, timeout=30)\n"
                            "c.execute('BEGIN EXCLUSIVE')\n"
                            "print('ready', flush=True)\n"
                            "sys.stdin.readline()\n"
                            "c.execute('ROLLBACK')\n",
                            path, {}};
    }
    /// Begins a write and is killed in the middle of it; true when it died of that.
    static bool dyingWhileWriting(const QString& path, const QString& sql)
    {
        OtherProcess other{"import sqlite3, sys, os, signal\n"
                           "c = sqlite3.connect(sys.argv[1], isolation_level=None)\n"
                           "c.execute('BEGIN IMMEDIATE')\n"
                           "c.execute(sys.argv[2])\n"
                           "print('ready', flush=True)\n"
                           "os.kill(os.getpid(), signal.SIGKILL)\n",
                           path, sql};
        const int status = other.end();
        return other.ready_ && WIFSIGNALED(status) && WTERMSIG(status) == SIGKILL;
    }
    /// Runs statements in one go; false when that failed.
    static bool run(const QString& path, const QString& sql)
    {
        OtherProcess other{"import sqlite3, sys\n"
                           "c = sqlite3.connect(sys.argv[1], isolation_level=None, timeout=30)\n"
                           "c.executescript(sys.argv[2])\n"
                           "c.close()\n"
                           "print('ready', flush=True)\n",
                           path, sql};
        return other.ready_ && other.letGo();
    }
    /// The id of a process that has ended.
    static pid_t ended()
    {
        OtherProcess other{"print('ready', flush=True)\n", {}, {}};
        const pid_t id = other.id_;
        other.end();
        return id;
    }

    OtherProcess(OtherProcess&& from) noexcept
        : id_{std::exchange(from.id_, 0)}, input_{std::exchange(from.input_, -1)}, output_{std::exchange(from.output_, -1)}, ready_{from.ready_}
    {
    }
    OtherProcess& operator=(OtherProcess&&) = delete;
    ~OtherProcess() { end(); }

    bool ready() const { return ready_; }
    /// Lets go and waits for the end of the process; false when it ended with an error.
    bool letGo()
    {
        const int status = end();
        return WIFEXITED(status) && WEXITSTATUS(status) == 0;
    }

private:
    OtherProcess(const char* script, const QString& path, const QString& sql)
    {
        std::array<int, 2> in{};
        std::array<int, 2> out{};
        if (::pipe2(in.data(), O_CLOEXEC) != 0 || ::pipe2(out.data(), O_CLOEXEC) != 0) return;
        posix_spawn_file_actions_t streams;
        ::posix_spawn_file_actions_init(&streams);
        ::posix_spawn_file_actions_adddup2(&streams, in[0], STDIN_FILENO);
        ::posix_spawn_file_actions_adddup2(&streams, out[1], STDOUT_FILENO);
        QByteArray program{"/usr/bin/python3"};
        QByteArray command{"-c"};
        QByteArray text{script};
        QByteArray file = path.toUtf8();
        QByteArray statements = sql.toUtf8();
        const std::array<char*, 6> arguments{program.data(), command.data(), text.data(), file.data(), statements.data(), nullptr};
        if (::posix_spawn(&id_, program.constData(), &streams, nullptr, arguments.data(), environ) != 0) id_ = 0;
        ::posix_spawn_file_actions_destroy(&streams);
        ::close(in[0]);
        ::close(out[1]);
        input_ = in[1];
        output_ = out[0];
        ready_ = id_ > 0 && line() == "ready";
    }

    /// Up to the end of the line, which may come in a write of its own.
    QByteArray line() const
    {
        QByteArray read;
        char next = 0;
        while (::read(output_, &next, 1) == 1 && next != '\n') read += next;
        return read;
    }

    /// Its input is closed, which it takes as the word to end; how it ended.
    int end()
    {
        if (input_ >= 0) ::close(std::exchange(input_, -1));
        if (output_ >= 0) ::close(std::exchange(output_, -1));
        int status = 0;
        if (id_ > 0) ::waitpid(std::exchange(id_, 0), &status, 0);
        return status;
    }

    pid_t id_ = 0;
    int input_ = -1;
    int output_ = -1;
    bool ready_ = false;
};

}
