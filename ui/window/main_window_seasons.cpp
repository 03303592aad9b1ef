#include "core/household/seasons.h"
#include "core/store/setting_names.h"
#include "ui/window/main_window.h"
#include "ui/window/notices.h"

#include <QAction>
#include <QActionGroup>
#include <QMenu>

namespace tierloam::window {

void MainWindow::makeSeasonActions()
{
    auto* halves = new QActionGroup{this};
    for (const bool south : {false, true}) {
        QAction* act = action(south ? ui::ActionId::seasonsSouth : ui::ActionId::seasonsNorth);
        act->setCheckable(true);
        halves->addAction(act);
        connect(act, &QAction::triggered, this, [this, south] {
            if (household_ && livesSouth() != south) keepSouth(south);
        });
    }
}

bool MainWindow::livesSouth() const { return household_ && household::livesSouth(*household_); }

void MainWindow::keepSouth(bool south) { household_->keep(store::settingHemisphere, south ? QString{store::hemisphereSouth} : QString{}, tr("Seasons")); }

void MainWindow::syncSeasonActions()
{
    action(livesSouth() ? ui::ActionId::seasonsSouth : ui::ActionId::seasonsNorth)->setChecked(true);
    for (const ui::ActionId id : {ui::ActionId::seasonsNorth, ui::ActionId::seasonsSouth}) action(id)->setEnabled(household_ && !household_->readOnly());
}

void MainWindow::guessSeasons(QLocale::Territory territory)
{
    if (!household_ || !household::liesSouth(territory)) return;
    keepSouth(true);
    notices_->show(Notices::Kind::notice, tr("The seasons are those south of the equator, warmest in January, since this machine is set up for there. The menu Household, Seasons, turns them."), QStringLiteral("seasons"));
}

}
