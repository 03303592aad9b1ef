#include "ui/window/recent_files.h"

#include "ui/common/seams.h"

#include <QDir>
#include <QFileInfo>

namespace tierloam::window {

namespace {

constexpr auto key = "files/recent";

QStringList all(const ui::Settings& settings)
{
    return settings.value(QString::fromLatin1(key)).toStringList();
}

}

QStringList recentFiles(const ui::Settings& settings)
{
    QStringList there;
    for (const QString& path : all(settings)) {
        if (QFileInfo::exists(path)) there << path;
    }
    return there;
}

void rememberFile(ui::Settings& settings, const QString& path)
{
    QStringList files = all(settings);
    const QString whole = QFileInfo{path}.absoluteFilePath();
    files.removeAll(whole);
    files.prepend(whole);
    while (files.size() > mostRecent) files.removeLast();
    settings.setValue(QString::fromLatin1(key), files);
}

void forgetFile(ui::Settings& settings, const QString& path)
{
    QStringList files = all(settings);
    files.removeAll(QFileInfo{path}.absoluteFilePath());
    settings.setValue(QString::fromLatin1(key), files);
}

QString lastFile(const ui::Settings& settings)
{
    const QString newest = all(settings).value(0);
    return !newest.isEmpty() && QFileInfo::exists(newest) ? newest : QString{};
}

QString shownName(const QString& path, const QStringList& among)
{
    const QFileInfo file{path};
    const QString base = file.completeBaseName();
    int same = 0;
    for (const QString& other : among) same += QFileInfo{other}.completeBaseName() == base ? 1 : 0;
    return same > 1 ? QObject::tr("%1 in %2").arg(base, QDir::toNativeSeparators(file.absolutePath())) : base;
}

}
