#pragma once

#include <QStringList>

namespace tierloam::ui {
class Settings;
}

/// The files that were opened before, newest first. The demo household is never among them.
namespace tierloam::window {

inline constexpr int mostRecent = 8;

/// Those that are still there.
QStringList recentFiles(const ui::Settings& settings);
void rememberFile(ui::Settings& settings, const QString& path);
void forgetFile(ui::Settings& settings, const QString& path);
/// The file to open when none is named: the newest, when it is still there and was not closed for the welcome page.
QString lastFile(const ui::Settings& settings);
/// The folder that was chosen for the backups of a file; empty: beside it, or not known here. It stands in the household as well, but is wanted most
/// when that cannot be read.
QString backupFolderOf(const ui::Settings& settings, const QString& path);
void rememberBackupFolder(ui::Settings& settings, const QString& path, const QString& folder);

}
