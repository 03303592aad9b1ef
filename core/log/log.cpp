#include "core/log/log.h"

#include <QByteArray>
#include <QDir>
#include <QFile>
#include <QFileInfo>

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <chrono>
#include <cstdio>
#include <ctime>

namespace tierloam::log {

namespace {

constexpr std::array words{"started", "ended", "opened", "open-failed", "written", "write-failed", "backup-made", "backup-failed", "copied", "copy-failed", "reckoned",
                           "reckon-failed", "work-failed", "readings-imported", "log-taken-away"};
static_assert(words.size() == static_cast<std::size_t>(What::whats));

QString pathOf(int age) { return folder() + (age == 0 ? QStringLiteral("/log.txt") : QStringLiteral("/log.%1.txt").arg(age)); }

/// The oldest file goes, the others grow older by one. Two programs that do so at once lose a file of lines at worst.
void growOlder()
{
    for (int age = files - 1; age > 0; --age) std::rename(QFile::encodeName(pathOf(age - 1)).constData(), QFile::encodeName(pathOf(age)).constData());
}

QByteArray lineOf(What what, std::initializer_list<Figure> figures)
{
    std::array<char, 32> now{};
    const std::time_t seconds = std::time(nullptr);
    std::tm utc{};
    gmtime_r(&seconds, &utc);
    std::strftime(now.data(), now.size(), "%Y-%m-%dT%H:%M:%SZ", &utc);
    QByteArray line{now.data()};
    line.append(' ').append(QByteArray::number(static_cast<qint64>(::getpid()))).append(' ').append(words[static_cast<std::size_t>(what)]);
    for (const Figure& figure : figures) line.append(' ').append(figure.name.text()).append('=').append(QByteArray::number(figure.value));
    return line.append('\n');
}

qint64 now() { return std::chrono::duration_cast<std::chrono::milliseconds>(std::chrono::steady_clock::now().time_since_epoch()).count(); }

}

QString folder()
{
    const QString state = qEnvironmentVariable("XDG_STATE_HOME");
    if (state.startsWith(QLatin1Char{'/'})) return state + QStringLiteral("/tierloam"); // XDG Base Directory: a path that is not absolute is none
    const QString home = qEnvironmentVariable("HOME");
    return home.startsWith(QLatin1Char{'/'}) ? home + QStringLiteral("/.local/state/tierloam") : QString{};
}

void note(What what, std::initializer_list<Figure> figures)
{
    const QString into = folder();
    if (into.isEmpty()) return;
    const QByteArray path = QFile::encodeName(pathOf(0));
    const auto open = [&] { return ::open(path.constData(), O_WRONLY | O_APPEND | O_CREAT | O_CLOEXEC | O_NOFOLLOW, 0600); };
    int file = open();
    if (file < 0 && QDir{}.mkpath(into)) file = open();
    if (file < 0) return;
    struct stat found{};
    if (::fstat(file, &found) == 0 && found.st_size >= largestFile) {
        ::close(file);
        growOlder();
        file = open();
        if (file < 0) return;
    }
    const QByteArray line = lineOf(what, figures);
    [[maybe_unused]] const auto written = ::write(file, line.constData(), static_cast<std::size_t>(line.size())); // a full disk costs a line
    ::close(file);
}

QStringList lastLines(std::size_t most)
{
    QStringList lines;
    if (folder().isEmpty()) return lines;
    for (int age = files - 1; age >= 0; --age) {
        QFile file{pathOf(age)};
        if (!file.open(QIODevice::ReadOnly)) continue;
        for (const QByteArray& line : file.read(2 * largestFile).split('\n'))
            if (!line.isEmpty()) lines << QString::fromUtf8(line);
    }
    return lines.mid(std::max<qsizetype>(0, lines.size() - static_cast<qsizetype>(most)));
}

Since::Since() : began_{now()} {}
qint64 Since::milliseconds() const { return now() - began_; }

}
