#include "core/household/file_watch.h"

#include <QFileInfo>

#include <utility>

namespace tierloam::household {

FileWatch::FileWatch(QString path, std::chrono::milliseconds every, std::function<void()> look) : path_{std::move(path)}, look_{std::move(look)}
{
    events_.addPath(QFileInfo{path_}.absolutePath());
    follow();
    const auto event = [this] {
        follow();
        look_();
    };
    QObject::connect(&events_, &QFileSystemWatcher::fileChanged, &events_, event);
    QObject::connect(&events_, &QFileSystemWatcher::directoryChanged, &events_, event);
    QObject::connect(&pace_, &QTimer::timeout, &pace_, event);
    pace_.start(every);
}

/// A file that was replaced or that came later is not watched by itself.
void FileWatch::follow()
{
    const QStringList watched = events_.files();
    for (const QString& name : {path_, QString{path_ + QStringLiteral("-wal")}})
        if (!watched.contains(name) && QFileInfo::exists(name)) events_.addPath(name);
}

}
