#include "ui/paper/labels_view.h"
#include "ui/paper/sheet_view.h"
#include "ui/shelf/shelf_page.h"
#include "ui/window/desk.h"
#include "ui/window/main_window.h"
#include "ui/window/notices.h"

/// What goes onto paper.
namespace tierloam::window {

void MainWindow::showSheet()
{
    if (!household_ || !desk_) return;
    if (paper::stacksOn(household_->journal()->replay, household_->today()).isEmpty()) {
        notices_->show(Notices::Kind::notice, tr("There is no stack yet that a sheet could be made of."), QStringLiteral("paper"));
        return;
    }
    (new paper::SheetView{*household_, desk_->shelf()->currentStack(), version_, dialogs_, proposedFolder(), this})->show();
}

void MainWindow::showLabels()
{
    if (!household_) return;
    if (paper::labelsOf(household_->journal()->replay, household_->today()).empty()) {
        notices_->show(Notices::Kind::notice, tr("No tray stands yet that could get a label."), QStringLiteral("paper"));
        return;
    }
    (new paper::LabelsView{*household_, version_, dialogs_, proposedFolder(), this})->show();
}

}
