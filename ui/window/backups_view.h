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
/// which is then opened; the household's own file is not touched. A chosen folder that is not there is told with its path. Restoring goes on beside the window and can be called off. Works also for a file that cannot be opened.
class BackupsView : public ui::View {
    Q_OBJECT

public:
    BackupsView(QString householdPath, const QString& chosenFolder, ui::Dialogs& dialogs, QWidget* parent = nullptr);

    void restoreChosen();
    /// Lists anew, with another chosen folder: that of the household by now, or one in which a file's backups are looked for.
    void lookIn(const QString& chosenFolder);
    bool restoring() const { return restoring_ != nullptr; }

Q_SIGNALS:
    /// A backup stands in that new file.
    void restored(const QString& newFile);
    /// The folder chosen for backups is not there, and another one is to take its place: answered by lookIn().
    void folderWanted();

private:
    void look();
    void add(const household::BackupRow& row);
    void say(int count, household::ChosenFolder chosen);
    void syncButton();

    QString path_, chosenFolder_;
    ui::Dialogs& dialogs_;
    std::vector<household::BackupRow> rows_;
    QLabel *folder_, *line_;
    QPushButton *lookAgain_, *otherFolder_;
    QTreeWidget* table_;
    QPushButton* restore_;
    QProgressBar* progress_;
    QPushButton* callOff_;
    household::BackupList* list_ = nullptr;
    household::Restoring* restoring_ = nullptr;
};

}
