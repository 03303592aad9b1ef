#include "core/store/durable_file.h"

#include <QFile>
#include <QFileInfo>

#include <fcntl.h>
#include <unistd.h>

#include <atomic>
#include <cerrno>
#include <cstdio>
#include <cstring>

namespace tierloam::store {

int syncFile(const QString& path)
{
    const int file = ::open(QFile::encodeName(path).constData(), O_RDONLY | O_CLOEXEC);
    if (file < 0) return errno;
    const int failed = ::fdatasync(file) == 0 ? 0 : errno;
    ::close(file);
    return failed;
}

int renameToNew(const QString& from, const QString& to)
{
    const QByteArray source = QFile::encodeName(from);
    const QByteArray target = QFile::encodeName(to);
    if (::renameat2(AT_FDCWD, source.constData(), AT_FDCWD, target.constData(), RENAME_NOREPLACE) == 0) return 0;
    if (errno != EINVAL && errno != ENOSYS) return errno;
    // A file system that cannot do both at once.
    if (QFileInfo::exists(to)) return EEXIST;
    return ::rename(source.constData(), target.constData()) == 0 ? 0 : errno;
}

QString errnoText(int error) { return QString::fromLocal8Bit(std::strerror(error)); }

QString uniquePart()
{
    static std::atomic<int> made{0};
    return QStringLiteral("%1-%2").arg(::getpid()).arg(++made);
}

}
