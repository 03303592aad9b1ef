#include "ui/window/backups_view.h"
#include "ui/window/demo.h"
#include "ui/window/main_window.h"
#include "ui/window/notices.h"
#include "ui/window/photos_view.h"
#include "ui/window/recent_files.h"

#include <QDir>
#include <QFileInfo>
#include <QPointer>
#include <QProgressDialog>

namespace tierloam::window {

void MainWindow::saveCopy()
{
    if (!household_) return;
    const QFileInfo file{household_->path()};
    const QString proposed = file.absolutePath() % u'/' % tr("%1 copy").arg(file.completeBaseName()) % QStringLiteral(".tierloam");
    const QString target = dialogs_.fileToSave(this, tr("Save a copy"), proposed, tr("Households (*.tierloam)"), QStringLiteral("tierloam"));
    if (target.isEmpty()) return;
    // Shown only when it takes longer than a moment; the window stays alive meanwhile.
    auto* shown = new QProgressDialog{tr("Writing a copy…"), tr("Call off"), 0, 1000, this};
    shown->setObjectName(QStringLiteral("copying"));
    shown->setWindowTitle(tr("Save a copy"));
    shown->setAttribute(Qt::WA_DeleteOnClose);
    shown->setMinimumDuration(500);
    shown->setValue(0);
    std::stop_source calledOff;
    connect(shown, &QProgressDialog::canceled, this, [calledOff]() mutable { calledOff.request_stop(); });
    store::CopyControl control;
    control.stop = calledOff.get_token();
    control.progress = [household = household_.get(), bar = QPointer{shown}](double share) {
        QMetaObject::invokeMethod(household, [bar, share] { if (bar && !bar->wasCanceled()) bar->setValue(static_cast<int>(share * 999)); }, Qt::QueuedConnection);
    };
    household_->saveCopy(target, [window = QPointer{this}, target, bar = QPointer{shown}](const QString& why) {
        delete bar;
        if (!window) return;
        if (why.isEmpty()) window->notices()->show(Notices::Kind::done, tr("A copy was written to %1.").arg(QDir::toNativeSeparators(target)), QStringLiteral("copy"));
        else window->notices()->show(Notices::Kind::failure, why, QStringLiteral("copy"));
    }, control);
}

void MainWindow::showPhotos(qint64 entryId)
{
    if (household_) (new PhotosView{*household_, journal::EntryId{entryId}, dialogs_, this})->show();
}

void MainWindow::showBackups(const QString& path)
{
    const bool own = household_ && household_->path() == path;
    auto* view = new BackupsView{path, own ? household_->backupFolder() : backupFolderOf(settings_, path), dialogs_, this};
    connect(view, &BackupsView::restored, this, [this](const QString& newFile) {
        if (openFile(newFile))
            notices_->show(Notices::Kind::done, tr("The backup was restored to %1, which is open now. The file before it was not changed.").arg(QDir::toNativeSeparators(newFile)),
                           QStringLiteral("open"));
    });
    view->show();
}

void MainWindow::chooseBackupFolder()
{
    if (!household_) return;
    const QString before = household_->backupFolder();
    const QString folder = dialogs_.folder(this, tr("Folder for backups"), before.isEmpty() ? QFileInfo{household_->path()}.absolutePath() : before);
    if (folder.isEmpty()) return;
    // The household's own folder means: beside the file.
    const bool beside = QFileInfo{folder}.canonicalFilePath() == QFileInfo{QFileInfo{household_->path()}.absolutePath()}.canonicalFilePath();
    household_->keepBackupsIn(beside ? QString{} : folder);
    notices_->show(Notices::Kind::done, tr("Backups will be kept in %1.").arg(QDir::toNativeSeparators(household_->backupsLieIn())), QStringLiteral("backups"));
}

/// Of what cannot be opened there may be backups: they are shown at once, since that is what is wanted next.
void MainWindow::offerBackups(const QString& path)
{
    refused_ = path;
    if (household::anyBackup(path, backupFolderOf(settings_, path))) showBackups(path);
}

/// Of the household that is open; without one, of the file that could not be opened, else of one that is chosen.
void MainWindow::chooseBackups()
{
    if (household_) return showBackups(household_->path());
    const QString path = !refused_.isEmpty() ? refused_ : dialogs_.fileToOpen(this, tr("Backups of which household?"), proposedFolder(), tr("Households (*.tierloam);;All files (*)"));
    if (!path.isEmpty()) showBackups(path);
}

/// The household holds it; the program keeps it too, for the day on which the household cannot be read.
void MainWindow::keepBackupFolder()
{
    if (household_ && shared_ && !isDemo(household_->path())) rememberBackupFolder(settings_, household_->path(), household_->backupFolder());
}

}
