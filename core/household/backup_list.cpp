#include "core/household/backup_list.h"

#include "core/store/backup.h"

#include <QFileInfo>

#include <algorithm>

namespace tierloam::household {

namespace {

using store::HouseholdFile;

/// Backups lie beside the file itself, wherever a link to it stands.
QString realPathOf(const QString& path)
{
    const QString canonical = QFileInfo{path}.canonicalFilePath();
    return canonical.isEmpty() ? QFileInfo{path}.absoluteFilePath() : canonical;
}

std::vector<store::Backup> allBackups(const QString& path, const QString& chosenFolder)
{
    const QString real = realPathOf(path);
    auto all = store::backupsIn(store::backupFolderOf(real));
    if (!chosenFolder.isEmpty())
        for (auto& backup : store::backupsIn(store::backupFolderOf(real, chosenFolder))) all.push_back(std::move(backup));
    std::ranges::stable_sort(all, [](const store::Backup& a, const store::Backup& b) { return a.made > b.made; });
    return all;
}

ChosenFolder howItStands(const QString& path, const QString& chosenFolder)
{
    if (chosenFolder.isEmpty()) return ChosenFolder::none;
    if (!QFileInfo{chosenFolder}.isDir()) return ChosenFolder::missing;
    const auto lists = [](const QString& folder) {
        const QFileInfo info{folder};
        return !info.exists() || (info.isReadable() && info.isExecutable());
    };
    return lists(chosenFolder) && lists(store::backupFolderOf(realPathOf(path), chosenFolder)) ? ChosenFolder::there : ChosenFolder::unreadable;
}

BackupRow lookInto(const store::Backup& backup)
{
    BackupRow row;
    row.backup = backup;
    auto opened = HouseholdFile::open(backup.path, HouseholdFile::Mode::readOnly);
    if (const auto* failure = std::get_if<store::OpenFailure>(&opened)) {
        row.why = failure->why;
        return row;
    }
    const auto entries = std::get<std::unique_ptr<HouseholdFile>>(opened)->entries();
    if (const auto* failure = std::get_if<store::WriteFailure>(&entries)) {
        row.why = failure->why;
        return row;
    }
    const auto& held = std::get<journal::Entries>(entries);
    row.entries = static_cast<int>(held.size());
    if (!held.empty()) row.lastEntry = held.back().date.day;
    return row;
}

}

BackupList::BackupList(const QString& householdPath, const QString& chosenFolder, QObject* parent)
    : QObject{parent}, householdPath_{householdPath}, chosenFolder_{chosenFolder}
{
    qRegisterMetaType<BackupRow>();
    qRegisterMetaType<ChosenFolder>();
}

void BackupList::start()
{
    // Signals of another thread: queued for receivers that live in the window's. What is emitted before somebody is connected is lost,
    // and a folder without backups is looked through in no time.
    thread_ = std::jthread{[this](const std::stop_token& stop) {
        const ChosenFolder chosen = howItStands(householdPath_, chosenFolder_); // a share that has gone may take its time, so here
        const auto all = allBackups(householdPath_, chosenFolder_);
        for (const auto& backup : all) {
            if (stop.stop_requested()) return;
            Q_EMIT found(lookInto(backup));
        }
        Q_EMIT finished(static_cast<int>(all.size()), chosen);
    }};
}

BackupList::~BackupList()
{
    thread_.request_stop();
    if (thread_.joinable()) thread_.join();
}

bool anyBackup(const QString& householdPath, const QString& chosenFolder) { return !allBackups(householdPath, chosenFolder).empty(); }

std::optional<QString> restoreBackup(const QString& backup, const QString& newFile, const store::CopyControl& control)
{
    auto opened = HouseholdFile::open(backup, HouseholdFile::Mode::readOnly);
    if (const auto* failure = std::get_if<store::OpenFailure>(&opened)) return failure->why;
    const auto& file = *std::get<std::unique_ptr<HouseholdFile>>(opened);
    const auto entries = file.entries(); // whole to the last row, or it is not restored
    if (const auto* failure = std::get_if<store::WriteFailure>(&entries)) return failure->why;
    return file.saveCopy(newFile, control);
}

Restoring::Restoring(const QString& backup, const QString& newFile, QObject* parent) : QObject{parent}, backup_{backup}, newFile_{newFile} {}

void Restoring::start()
{
    // Signals of another thread: queued for receivers that live in the window's. A backup that is gone is told at once.
    thread_ = std::jthread{[this](const std::stop_token& stop) {
        store::CopyControl control;
        control.stop = stop;
        control.progress = [this](double share) { Q_EMIT progressed(share); };
        const auto why = restoreBackup(backup_, newFile_, control);
        Q_EMIT finished(why.value_or(QString{}));
    }};
}

Restoring::~Restoring()
{
    thread_.request_stop();
    if (thread_.joinable()) thread_.join();
}

}
