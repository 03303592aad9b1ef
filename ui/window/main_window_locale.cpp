#include "ui/window/main_window.h"

#include "ui/common/formats.h"
#include "ui/common/measures_setting.h"
#include "ui/forms/welcome.h"

#include <QAction>
#include <QActionGroup>
#include <QMenu>
#include <QMenuBar>
#include <QStackedWidget>
#include <QTimer>

#include <optional>

// Language and units are chosen while the program runs. Every page makes its texts when it is built, so the pages are built anew on the
// household that stays open; what is under way there (estimates, writes, undo) is not touched.

namespace tierloam::window {

namespace {

struct Choice {
    ui::ActionId id;
    const char* key;
    const char* value;
};

constexpr const char* language = "window/language";
constexpr const char* units = "window/measures";
constexpr Choice choices[] = {
    {ui::ActionId::languageSystem, language, ""},    {ui::ActionId::languageEnglish, language, "en"}, {ui::ActionId::languageGerman, language, "de"},
    {ui::ActionId::languageSpanish, language, "es"}, {ui::ActionId::languageFrench, language, "fr"},  {ui::ActionId::measuresSystem, units, ""},
    {ui::ActionId::measuresMetric, units, "metric"}, {ui::ActionId::measuresUs, units, "us"},
};

}

void MainWindow::makeLocaleActions()
{
    auto* languages = new QActionGroup{this};
    auto* measures = new QActionGroup{this};
    for (const Choice& choice : choices) {
        QAction* act = action(choice.id);
        act->setCheckable(true);
        (choice.key == language ? languages : measures)->addAction(act);
        connect(act, &QAction::triggered, this, [this, choice] { choose(QString::fromLatin1(choice.key), QString::fromLatin1(choice.value)); });
    }
}

void MainWindow::syncLocaleActions()
{
    for (const Choice& choice : choices)
        if (settings_.value(QString::fromLatin1(choice.key)).toString() == QString::fromLatin1(choice.value)) action(choice.id)->setChecked(true);
}

void MainWindow::makeLocaleMenus(QMenu* view) const
{
    QMenu* units_ = view->addMenu(tr("&Units"));
    QMenu* languages = view->addMenu(tr("Lan&guage"));
    for (const Choice& choice : choices) (choice.key == language ? languages : units_)->addAction(action(choice.id));
}

void MainWindow::choose(const QString& key, const QString& value)
{
    if (settings_.value(key).toString() == value) return;
    if (!mayLeave()) {
        syncActions();
        return;
    }
    settings_.setValue(key, value);
    // When the menu that asked for it has closed: it is made anew as well.
    QTimer::singleShot(0, this, &MainWindow::showAnew);
}

void MainWindow::showAnew()
{
    // Before anything else: threads of the pages, which their end waits for, format texts in the language and units that are about to change.
    const std::optional<Desk::Page> page = desk_ ? std::optional{desk_->page()} : std::nullopt;
    leaveFields();
    delete desk_;
    if (useLanguage_) useLanguage_(settings_.value(QString::fromLatin1(language)).toString());
    ui::setMeasures(ui::measuresOf(settings_.value(QString::fromLatin1(units)).toString()));
    ui::setRightToLeft(isRightToLeft());
    for (auto each = actions_.begin(); each != actions_.end(); ++each) ui::tellAction(*each.value(), static_cast<ui::ActionId>(each.key()));
    const auto menus = menuBar()->findChildren<QMenu*>(QString{}, Qt::FindDirectChildrenOnly);
    menuBar()->clear();
    for (QMenu* menu : menus) menu->deleteLater();
    makeMenus();
    makeWelcome();
    if (page) {
        makeDesk();
        desk_->showPage(*page);
    } else {
        body_->setCurrentWidget(welcome_);
    }
    fillRecent();
    fillRecordMenu();
    setTitle();
    syncActions();
}

}
