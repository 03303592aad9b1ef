#include "ui/window/backups_view.h"

#include "ui/common/dates.h"
#include "ui/common/panels.h"

#include <QDialogButtonBox>
#include <QDir>
#include <QFileInfo>
#include <QLabel>
#include <QLocale>
#include <QProgressBar>
#include <QPushButton>
#include <QTreeWidget>
#include <QVBoxLayout>

#include <utility>

namespace tierloam::window {

namespace {

QString kindText(store::BackupKind kind)
{
    switch (kind) {
    case store::BackupKind::day: return BackupsView::tr("of the day");
    case store::BackupKind::beforeImport: return BackupsView::tr("before an import");
    case store::BackupKind::beforeStep: return BackupsView::tr("before the file was brought up to date");
    }
    return {};
}

}

BackupsView::BackupsView(QString householdPath, const QString& chosenFolder, ui::Dialogs& dialogs, QWidget* parent)
    : ui::View{parent}, path_{std::move(householdPath)}, chosenFolder_{chosenFolder}, dialogs_{dialogs}
{
    setObjectName(QStringLiteral("backupsView"));
    setAttribute(Qt::WA_DeleteOnClose);
    setWindowTitle(tr("Backups"));
    auto* rows = new QVBoxLayout{this};
    rows->setContentsMargins(20, 18, 20, 14);
    rows->setSpacing(10);
    rows->addWidget(ui::makeLabel(tr("Backups of %1").arg(QFileInfo{path_}.fileName()), ui::TextRole::title, this));
    folder_ = ui::makeLabel({}, ui::TextRole::strong, this, true);
    folder_->setObjectName(QStringLiteral("backupsFolder"));
    folder_->hide();
    rows->addWidget(folder_);
    line_ = ui::makeLabel(tr("Looking…"), ui::TextRole::body, this, true);
    line_->setObjectName(QStringLiteral("backupsLine"));
    rows->addWidget(line_);
    table_ = new QTreeWidget{this};
    table_->setObjectName(QStringLiteral("backupsTable"));
    table_->setHeaderLabels({tr("Made on"), tr("Why"), tr("Entries"), tr("Last entry"), tr("File")});
    table_->setRootIsDecorated(false);
    table_->setAllColumnsShowFocus(true);
    ui::setAccess(table_, tr("Backups"), tr("Choose the one to be restored"));
    rows->addWidget(table_, 1);
    progress_ = new QProgressBar{this};
    progress_->setRange(0, 1000);
    ui::setAccess(progress_, tr("How far the restoring is"));
    progress_->hide();
    rows->addWidget(progress_);
    auto* buttons = new QDialogButtonBox{this};
    restore_ = buttons->addButton(tr("&Restore to a new file…"), QDialogButtonBox::ActionRole);
    restore_->setObjectName(QStringLiteral("restoreBackup"));
    callOff_ = buttons->addButton(tr("Call &off"), QDialogButtonBox::ActionRole);
    callOff_->setObjectName(QStringLiteral("callOffRestore"));
    lookAgain_ = buttons->addButton(tr("&Look again"), QDialogButtonBox::ActionRole);
    lookAgain_->setObjectName(QStringLiteral("lookForBackups"));
    otherFolder_ = buttons->addButton(tr("Another &folder…"), QDialogButtonBox::ActionRole);
    otherFolder_->setObjectName(QStringLiteral("otherBackupFolder"));
    auto* close = buttons->addButton(tr("Close"), QDialogButtonBox::RejectRole);
    rows->addWidget(buttons);
    for (QPushButton* each : {callOff_, lookAgain_, otherFolder_}) each->hide(); // the box shows what is put into it
    connect(callOff_, &QPushButton::clicked, this, [this] { if (restoring_) restoring_->callOff(); });
    connect(restore_, &QPushButton::clicked, this, &BackupsView::restoreChosen);
    connect(table_, &QTreeWidget::itemActivated, this, &BackupsView::restoreChosen);
    connect(close, &QPushButton::clicked, this, &QDialog::close);
    connect(table_, &QTreeWidget::itemSelectionChanged, this, &BackupsView::syncButton);
    resize(820, 420);
    syncButton();
    connect(lookAgain_, &QPushButton::clicked, this, &BackupsView::look);
    connect(otherFolder_, &QPushButton::clicked, this, &BackupsView::folderWanted);
    look();
}

void BackupsView::lookIn(const QString& chosenFolder)
{
    chosenFolder_ = chosenFolder;
    look();
}

void BackupsView::look()
{
    if (list_) {
        list_->disconnect(this); // what it still has to say is of the listing before
        list_->deleteLater();
    }
    rows_.clear();
    table_->clear();
    line_->setText(tr("Looking…"));
    syncButton();
    list_ = new household::BackupList{path_, chosenFolder_, this};
    const auto* current = list_;
    connect(list_, &household::BackupList::found, this, [this, current](const household::BackupRow& row) { if (current == list_) add(row); }, Qt::QueuedConnection);
    connect(list_, &household::BackupList::finished, this, [this, current](int count, household::ChosenFolder chosen) { if (current == list_) say(count, chosen); }, Qt::QueuedConnection);
    list_->start();
}

void BackupsView::say(int count, household::ChosenFolder chosen)
{
    const bool out = chosen == household::ChosenFolder::missing || chosen == household::ChosenFolder::unreadable;
    const QString folder = QDir::toNativeSeparators(chosenFolder_);
    if (chosen == household::ChosenFolder::missing)
        folder_->setText(tr("The folder chosen for backups is not there now: %1. Plug in or connect what it lies on, then look again. Until then backups are made beside the household's file.").arg(folder));
    if (chosen == household::ChosenFolder::unreadable) folder_->setText(tr("There is no permission to read the folder chosen for backups: %1. Backups in it cannot be shown.").arg(folder));
    ui::setTone(folder_, ui::Tone::brick);
    folder_->setVisible(out);
    const bool hadFocus = lookAgain_->hasFocus() || otherFolder_->hasFocus();
    for (QPushButton* each : {lookAgain_, otherFolder_}) each->setVisible(out);
    if (!out && hadFocus) table_->setFocus(Qt::OtherFocusReason); // the buttons go
    if (count > 0) line_->setText(tr("%n backup(s). A restored one goes into a new file; the household's own file stays as it is.", nullptr, count));
    else line_->setText(out ? tr("Beside the household's file there are none.") : tr("There are none yet. One is made with the first change of each day."));
    for (int column = 0; column < table_->columnCount(); ++column) table_->resizeColumnToContents(column);
    if (table_->topLevelItemCount() > 0 && table_->selectedItems().empty()) table_->setCurrentItem(table_->topLevelItem(0));
}

void BackupsView::add(const household::BackupRow& row)
{
    rows_.push_back(row);
    const QString when = QLocale{}.toString(row.backup.made, QLocale::ShortFormat);
    auto* item = new QTreeWidgetItem{table_};
    item->setText(0, when);
    item->setText(1, kindText(row.backup.kind));
    item->setText(2, row.why.isEmpty() ? QLocale{}.toString(row.entries) : tr("cannot be read"));
    item->setText(3, row.lastEntry ? ui::fullDay(*row.lastEntry) : QString{});
    item->setText(4, QDir::toNativeSeparators(row.backup.path));
    item->setToolTip(2, row.why);
}

void BackupsView::syncButton()
{
    const auto chosen = table_->selectedItems();
    restore_->setEnabled(!restoring_ && chosen.size() == 1 && rows_.at(static_cast<std::size_t>(table_->indexOfTopLevelItem(chosen.front()))).why.isEmpty());
}

void BackupsView::restoreChosen()
{
    syncButton();
    if (!restore_->isEnabled()) return;
    const auto& row = rows_.at(static_cast<std::size_t>(table_->indexOfTopLevelItem(table_->selectedItems().front())));
    const QFileInfo file{path_};
    const QString proposed = file.absolutePath() % u'/' % tr("%1 as of %2").arg(file.completeBaseName(), row.backup.made.toString(QStringLiteral("yyyy-MM-dd"))) % QStringLiteral(".tierloam");
    const QString target = dialogs_.fileToSave(this, tr("Restore to a new file"), proposed, tr("Households (*.tierloam)"), QStringLiteral("tierloam"));
    if (target.isEmpty()) return;
    restoring_ = new household::Restoring{row.backup.path, target, this};
    progress_->setValue(0);
    progress_->show();
    callOff_->show();
    line_->setText(tr("Restoring to %1…").arg(QDir::toNativeSeparators(target)));
    syncButton();
    connect(restoring_, &household::Restoring::progressed, progress_, [bar = progress_](double share) { bar->setValue(static_cast<int>(share * 1000)); }, Qt::QueuedConnection);
    connect(restoring_, &household::Restoring::finished, this, [this, target](const QString& why) {
        restoring_->deleteLater();
        restoring_ = nullptr;
        progress_->hide();
        callOff_->hide();
        syncButton();
        if (!why.isEmpty()) {
            line_->setText(why);
            return;
        }
        Q_EMIT restored(target);
        close();
    }, Qt::QueuedConnection);
    restoring_->start();
}

}
