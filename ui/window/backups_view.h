#pragma once

#include "core/household/backup_list.h"
#include "ui/common/seams.h"
#include "ui/common/view.h"

#include <vector>

class QLabel;
class QProgressBar;
class QPushButton;
class QTreeWidget;

namespace tierloam::window {

/// The backups of a household: when each was made, how many entries it holds and up to which day. The chosen one goes into a new file,
/// which is then opened; the household's own file is not touched. Restoring goes on beside the window and can be called off. Works also for a file that cannot be opened.
class BackupsView : public ui::View {
    Q_OBJECT

public:
    BackupsView(QString householdPath, const QString& chosenFolder, ui::Dialogs& dialogs, QWidget* parent = nullptr);

    void restoreChosen();
    bool restoring() const { return restoring_ != nullptr; }

Q_SIGNALS:
    /// A backup stands in that new file.
    void restored(const QString& newFile);

private:
    void add(const household::BackupRow& row);
    void syncButton();

    QString path_;
    ui::Dialogs& dialogs_;
    std::vector<household::BackupRow> rows_;
    QLabel* line_;
    QTreeWidget* table_;
    QPushButton* restore_;
    QProgressBar* progress_;
    QPushButton* callOff_;
    household::BackupList* list_;
    household::Restoring* restoring_ = nullptr;
};

}
