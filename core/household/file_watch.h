#pragma once

#include <QFileSystemWatcher>
#include <QString>
#include <QTimer>

#include <chrono>
#include <functional>

namespace tierloam::household {

/// Says when it is worth looking at the household file: on every event of the file, its log or its folder, and in any case at a steady
/// pace, since some file systems report no events. Lives in the window's thread.
class FileWatch {
public:
    FileWatch(QString path, std::chrono::milliseconds every, std::function<void()> look);

private:
    void follow();

    QString path_;
    std::function<void()> look_;
    QFileSystemWatcher events_;
    QTimer pace_;
};

}
