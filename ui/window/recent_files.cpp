#include "ui/window/recent_files.h"

#include "ui/common/seams.h"

#include <QDir>
#include <QFileInfo>

namespace tierloam::window {

namespace {

constexpr auto key = "files/recent";
constexpr auto foldersKey = "files/backupFolders"; // each: a file, a line break, its folder
constexpr QChar between{u'\n'};
constexpr qsizetype mostFolders = 32;

/// The same for a link and what it leads to; a file that is gone has the name that it had.
QString fileKey(const QString& path)
{
    const QString real = QFileInfo{path}.canonicalFilePath();
    return real.isEmpty() ? QDir::cleanPath(QFileInfo{path}.absoluteFilePath()) : real;
}

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

QString backupFolderOf(const ui::Settings& settings, const QString& path)
{
    const QString file = fileKey(path);
    for (const QString& each : settings.value(QString::fromLatin1(foldersKey)).toStringList())
        if (each.section(between, 0, 0) == file) return each.section(between, 1);
    return {};
}

void rememberBackupFolder(ui::Settings& settings, const QString& path, const QString& folder)
{
    if (backupFolderOf(settings, path) == folder) return;
    const QString file = fileKey(path);
    QStringList all = settings.value(QString::fromLatin1(foldersKey)).toStringList();
    all.removeIf([&](const QString& each) { return each.section(between, 0, 0) == file; });
    if (!folder.isEmpty()) all.prepend(file + between + folder);
    while (all.size() > mostFolders) all.removeLast();
    settings.setValue(QString::fromLatin1(foldersKey), all);
}

}
