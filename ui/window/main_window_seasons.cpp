#include "ui/window/seasons.h"

#include "core/store/setting_names.h"
#include "ui/window/main_window.h"
#include "ui/window/notices.h"

#include <QAction>
#include <QActionGroup>
#include <QMenu>

#include <algorithm>

namespace tierloam::window {

bool liesSouth(QLocale::Territory territory)
{
    constexpr QLocale::Territory south[] = {
        QLocale::Angola,       QLocale::Argentina, QLocale::Australia, QLocale::Bolivia,      QLocale::Botswana,   QLocale::Brazil,  QLocale::Burundi,  QLocale::Chile,       QLocale::Comoros,
        QLocale::CongoKinshasa, QLocale::Eswatini, QLocale::Fiji,      QLocale::FalklandIslands, QLocale::FrenchPolynesia, QLocale::Indonesia, QLocale::Lesotho, QLocale::Madagascar, QLocale::Malawi,
        QLocale::Mauritius,    QLocale::Mozambique, QLocale::Namibia,  QLocale::NewCaledonia, QLocale::NewZealand, QLocale::PapuaNewGuinea, QLocale::Paraguay, QLocale::Peru,  QLocale::Reunion,
        QLocale::Rwanda,       QLocale::Samoa,     QLocale::SolomonIslands, QLocale::SouthAfrica, QLocale::Tanzania, QLocale::TimorLeste, QLocale::Tonga,  QLocale::Uruguay,  QLocale::Vanuatu,
        QLocale::Zambia,       QLocale::Zimbabwe};
    return std::ranges::find(south, territory) != std::end(south);
}

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

bool MainWindow::livesSouth() const { return household_ && household_->kept(store::settingHemisphere) == store::hemisphereSouth; }

void MainWindow::keepSouth(bool south) { household_->keep(store::settingHemisphere, south ? QString{store::hemisphereSouth} : QString{}, tr("Seasons")); }

void MainWindow::syncSeasonActions()
{
    action(livesSouth() ? ui::ActionId::seasonsSouth : ui::ActionId::seasonsNorth)->setChecked(true);
    for (const ui::ActionId id : {ui::ActionId::seasonsNorth, ui::ActionId::seasonsSouth}) action(id)->setEnabled(household_ && !household_->readOnly());
}

void MainWindow::guessSeasons(QLocale::Territory territory)
{
    if (!household_ || !liesSouth(territory)) return;
    keepSouth(true);
    notices_->show(Notices::Kind::notice, tr("The seasons are those south of the equator, warmest in January, since this machine is set up for there. The menu Household, Seasons, turns them."), QStringLiteral("seasons"));
}

}
