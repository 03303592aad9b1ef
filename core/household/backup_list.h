#pragma once

#include "core/quantity/measures.h"
#include "core/store/household_file.h"

#include <QObject>
#include <QString>

#include <optional>
#include <stop_token>
#include <thread>
#include <vector>

namespace tierloam::household {

/// A backup and what it holds.
struct BackupRow {
    store::Backup backup;
    int entries = 0;
    std::optional<Day> lastEntry;
    QString why;                    ///< it cannot be read; empty: it can
};

/// How the folder that was chosen for backups stands. A stick that is not plugged in is `missing`.
enum class ChosenFolder { none, there, missing, unreadable };

/// Looks into the backups of a household, newest first, in a thread of its own; the household itself need not be readable. Begins at start(),
/// which is called once, when its signals are connected.
class BackupList : public QObject {
    Q_OBJECT

public:
    /// `chosenFolder` as Household::backupFolder() says; the folder beside the file is looked into in any case.
    BackupList(const QString& householdPath, const QString& chosenFolder, QObject* parent = nullptr);
    ~BackupList() override;
    void start();

Q_SIGNALS:
    void found(const tierloam::household::BackupRow& row);
    void finished(int count, tierloam::household::ChosenFolder chosen);

private:
    QString householdPath_;
    QString chosenFolder_;
    std::jthread thread_;
};

/// Whether there are backups of the file: beside it, or in a folder that was chosen.
bool anyBackup(const QString& householdPath, const QString& chosenFolder);

/// Puts a backup, checked from end to end, into a new file. Returns why not; then no file is left.
std::optional<QString> restoreBackup(const QString& backup, const QString& newFile, const store::CopyControl& control = {});

/// The same beside the window's thread, from start() on, which is called once, when its signals are connected. Ends, without a file, when it is
/// destroyed or called off.
class Restoring : public QObject {
    Q_OBJECT

public:
    Restoring(const QString& backup, const QString& newFile, QObject* parent = nullptr);
    ~Restoring() override;
    void start();
    void callOff() { thread_.request_stop(); }

Q_SIGNALS:
    void progressed(double share);
    /// `why` it came to nothing; empty: the new file stands.
    void finished(const QString& why);

private:
    QString backup_;
    QString newFile_;
    std::jthread thread_;
};

}

Q_DECLARE_METATYPE(tierloam::household::BackupRow)
Q_DECLARE_METATYPE(tierloam::household::ChosenFolder)
