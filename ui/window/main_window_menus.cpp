#include "ui/common/file_name.h"
#include "ui/common/menu_letters.h"
#include "ui/shelf/shelf_page.h"
#include "ui/window/bin_view.h"
#include "ui/window/desk.h"
#include "ui/window/due_notice.h"
#include "ui/window/help_report.h"
#include "ui/window/main_window.h"
#include "ui/window/notices.h"
#include "ui/window/recent_files.h"
#include "ui/window/shortcuts_view.h"

#include <QAction>
#include <QActionGroup>
#include <QApplication>
#include <QClipboard>
#include <QMenu>
#include <QMenuBar>

#include <algorithm>

namespace tierloam::window {

namespace {

bool anyStackStands(const household::Household& household)
{
    const auto journal = household.journal();
    return std::ranges::any_of(journal->replay.stacks, [&](const journal::StackHistory& stack) {
        const auto* standing = stack.on(household.today());
        return standing && !standing->retired;
    });
}

}

void MainWindow::makeActions()
{
    for (const ui::ActionRow& row : ui::actionTable()) {
        if (row.where != ui::Where::window) continue;
        QAction* made = ui::makeAction(row.id, this);
        addAction(made); // works also while the menu bar is hidden
        actions_.insert(static_cast<int>(row.id), made);
    }
    const auto on = [this](ui::ActionId id, auto act) { connect(action(id), &QAction::triggered, this, act); };
    on(ui::ActionId::newHousehold, [this] { chooseAndCreate(); });
    on(ui::ActionId::openHousehold, [this] {
        const QString path = dialogs_.fileToOpen(this, tr("Open household"), proposedFolder(), tr("Households (*.tierloam);;All files (*)"));
        if (!path.isEmpty()) openFile(path);
    });
    on(ui::ActionId::renameHousehold, [this] { rename(); });
    on(ui::ActionId::importJournal, [this] {
        const QString path = dialogs_.fileToOpen(this, tr("Import a table"), proposedFolder(), tr("Tables (*.csv *.tsv *.txt);;All files (*)"));
        if (!path.isEmpty()) importFile(path);
    });
    on(ui::ActionId::importReadings, [this] {
        if (!household_) return;
        const QString path = dialogs_.fileToOpen(this, tr("Import readings of a logger"), proposedFolder(), tr("Tables (*.csv *.tsv *.txt);;All files (*)"));
        if (!path.isEmpty()) importReadings(path);
    });
    on(ui::ActionId::exportJournal, [this] {
        if (!household_) return;
        const QString path = dialogs_.fileToSave(this, tr("Export journal"), proposedFolder() % u'/' % ui::fileNameOf(household_->name()) % QStringLiteral(".csv"),
                                                 tr("Journals (*.csv)"), QStringLiteral("csv"));
        if (!path.isEmpty()) exportFile(path);
    });
    on(ui::ActionId::exportCalendar, [this] {
        if (!household_) return;
        const QString path = dialogs_.fileToSave(this, tr("Export calendar"), proposedFolder() % u'/' % ui::fileNameOf(household_->name()) % QStringLiteral(".ics"), tr("Calendars (*.ics)"), QStringLiteral("ics"));
        if (!path.isEmpty()) exportCalendar(path);
    });
    on(ui::ActionId::stackSheet, [this] { showSheet(); });
    on(ui::ActionId::trayLabels, [this] { showLabels(); });
    on(ui::ActionId::saveCopy, [this] { saveCopy(); });
    on(ui::ActionId::backups, [this] { chooseBackups(); });
    on(ui::ActionId::backupFolder, [this] { chooseBackupFolder(); });
    on(ui::ActionId::deletedEntries, [this] { if (household_) (new BinView{*household_, this})->show(); });
    on(ui::ActionId::openDemo, [this] { openDemo(); });
    on(ui::ActionId::closeWindow, [this] { close(); });
    on(ui::ActionId::quit, [this] { close(); });
    on(ui::ActionId::undo, [this] { undoAsked(); });
    on(ui::ActionId::redo, [this] { redoAsked(); });
    on(ui::ActionId::newStack, [this] { if (desk_) desk_->newStack(); });
    on(ui::ActionId::recordOther, [this] { if (desk_) desk_->recordOther(); });
    on(ui::ActionId::whatIsWrong, [this] { if (desk_) desk_->showSymptoms(); });
    on(ui::ActionId::guidedHarvest, [this] { if (desk_) desk_->showHarvest(); });
    on(ui::ActionId::pageShelf, [this] {
        if (!desk_) return;
        desk_->showPage(Desk::Page::shelf);
        desk_->shelf()->focusStack();
    });
    on(ui::ActionId::pageTrends, [this] { if (desk_) desk_->showPage(Desk::Page::trends); });
    on(ui::ActionId::pageJournal, [this] { if (desk_) desk_->showPage(Desk::Page::journal); });
    on(ui::ActionId::pageRotation, [this] { if (desk_) desk_->showPage(Desk::Page::rotation); });
    on(ui::ActionId::pageMaterials, [this] { if (desk_) desk_->showPage(Desk::Page::materials); });
    on(ui::ActionId::pageHandbook, [this] { if (desk_) desk_->showPage(Desk::Page::handbook); });
    on(ui::ActionId::goDue, [this] { if (desk_) desk_->goDue(); });
    on(ui::ActionId::doDue, [this] { if (desk_) desk_->doFirstDue(); });
    on(ui::ActionId::notifyDue, [this] { tellDueOnDesktop(action(ui::ActionId::notifyDue)->isChecked()); });
    on(ui::ActionId::themeLight, [this] { theme_.setMode(ui::ThemeMode::light); });
    on(ui::ActionId::themeDark, [this] { theme_.setMode(ui::ThemeMode::dark); });
    on(ui::ActionId::themeSystem, [this] { theme_.setMode(ui::ThemeMode::system); });
    on(ui::ActionId::fontLarger, [this] { stepFont(ui::Theme::scaleStep); });
    on(ui::ActionId::fontSmaller, [this] { stepFont(-ui::Theme::scaleStep); });
    on(ui::ActionId::fontNormal, [this] { theme_.setFontScale(100); });
    on(ui::ActionId::lessMotion, [this] { theme_.setLessMotion(action(ui::ActionId::lessMotion)->isChecked()); });
    on(ui::ActionId::fullScreen, [this] { setWindowState(windowState() ^ Qt::WindowFullScreen); });
    on(ui::ActionId::shortcuts, [this] { (new ShortcutsView{this})->show(); });
    on(ui::ActionId::copyReport, [this] {
        QApplication::clipboard()->setText(helpReport(version_, household_.get()));
        notices_->show(Notices::Kind::done, tr("A report for somebody who wants to help is on the clipboard: versions, sizes, the last lines of the program's own log. Nothing of your journal is in it."), QStringLiteral("report"));
    });
    on(ui::ActionId::about, [this] { (new AboutView{version_, this})->show(); });
    for (const ui::ActionId id : {ui::ActionId::pageShelf, ui::ActionId::pageTrends, ui::ActionId::pageJournal, ui::ActionId::pageMaterials, ui::ActionId::pageHandbook, ui::ActionId::pageRotation, ui::ActionId::goDue, ui::ActionId::themeLight,
                                  ui::ActionId::themeDark, ui::ActionId::themeSystem, ui::ActionId::lessMotion, ui::ActionId::notifyDue}) {
        action(id)->setCheckable(true);
    }
    auto* themes = new QActionGroup{this};
    for (const ui::ActionId id : {ui::ActionId::themeLight, ui::ActionId::themeDark, ui::ActionId::themeSystem}) themes->addAction(action(id));
    makeLocaleActions();
    makeSeasonActions();
}

/// Kept on this machine; with a household open what is due today is told at once, if it has not been told today.
void MainWindow::tellDueOnDesktop(bool on)
{
    DueNotice::setWanted(settings_, on);
    if (dueNotice_) dueNotice_->look();
}

void MainWindow::stepFont(int by)
{
    theme_.setFontScale(theme_.fontScale() + by);
}

void MainWindow::makeMenus()
{
    const auto fill = [this](QMenu* menu, std::initializer_list<ui::ActionId> ids) {
        for (const ui::ActionId id : ids) menu->addAction(action(id));
    };
    QMenu* file = menuBar()->addMenu(tr("H&ousehold"));
    fill(file, {ui::ActionId::newHousehold, ui::ActionId::openHousehold});
    recentMenu_ = file->addMenu(tr("&Recent"));
    fill(file, {ui::ActionId::openDemo});
    file->addSeparator();
    fill(file, {ui::ActionId::renameHousehold, ui::ActionId::importJournal, ui::ActionId::importReadings, ui::ActionId::exportJournal, ui::ActionId::exportCalendar});
    file->addSeparator();
    fill(file, {ui::ActionId::stackSheet, ui::ActionId::trayLabels});
    file->addSeparator();
    QMenu* copies = file->addMenu(tr("Copies and &backups")); // in one list the menu would be higher than a small screen in large letters
    fill(copies, {ui::ActionId::saveCopy, ui::ActionId::backups, ui::ActionId::backupFolder});
    QMenu* seasons = file->addMenu(tr("Seaso&ns"));
    fill(seasons, {ui::ActionId::seasonsNorth, ui::ActionId::seasonsSouth});
    file->addSeparator();
    fill(file, {ui::ActionId::closeWindow, ui::ActionId::quit});

    QMenu* edit = menuBar()->addMenu(tr("&Edit"));
    fill(edit, {ui::ActionId::undo, ui::ActionId::redo, ui::ActionId::deletedEntries});

    recordMenu_ = menuBar()->addMenu(tr("&Stack"));

    QMenu* view = menuBar()->addMenu(tr("&View"));
    fill(view, {ui::ActionId::pageShelf, ui::ActionId::pageTrends, ui::ActionId::pageRotation, ui::ActionId::pageJournal, ui::ActionId::pageMaterials, ui::ActionId::pageHandbook});
    view->addSeparator();
    fill(view, {ui::ActionId::goDue, ui::ActionId::doDue, ui::ActionId::notifyDue});
    view->addSeparator();
    QMenu* colours = view->addMenu(tr("&Colours"));
    fill(colours, {ui::ActionId::themeLight, ui::ActionId::themeDark, ui::ActionId::themeSystem});
    QMenu* text = view->addMenu(tr("&Text size"));
    fill(text, {ui::ActionId::fontLarger, ui::ActionId::fontSmaller, ui::ActionId::fontNormal});
    makeLocaleMenus(view);
    fill(view, {ui::ActionId::lessMotion, ui::ActionId::fullScreen});

    QMenu* help = menuBar()->addMenu(tr("&Help"));
    fill(help, {ui::ActionId::shortcuts, ui::ActionId::copyReport, ui::ActionId::about});
    for (QMenu* menu : menuBar()->findChildren<QMenu*>()) ui::keepLettersApart(menu);
}

void MainWindow::fillRecent()
{
    recentMenu_->clear();
    const QStringList files = recentFiles(settings_);
    int number = 1;
    for (const QString& path : files) {
        if (household_ && path == household_->path()) continue;
        QString name = ui::shownFileName(path, files);
        QAction* open = recentMenu_->addAction(QStringLiteral("&%1  %2").arg(QString::number(number), name.replace(u'&', QStringLiteral("&&"))));
        open->setStatusTip(path);
        open->setToolTip(path);
        connect(open, &QAction::triggered, this, [this, path] { openFile(path); });
        ++number;
    }
    recentMenu_->setEnabled(!recentMenu_->isEmpty());
}

void MainWindow::fillRecordMenu()
{
    recordMenu_->clear();
    qDeleteAll(recordMenu_->findChildren<QMenu*>(Qt::FindDirectChildrenOnly));
    recordMenu_->addAction(action(ui::ActionId::newStack));
    recordMenu_->addAction(action(ui::ActionId::recordOther));
    recordMenu_->addAction(action(ui::ActionId::whatIsWrong));
    recordMenu_->addAction(action(ui::ActionId::guidedHarvest));
    if (!desk_) return;
    recordMenu_->addSeparator();
    const auto addAct = [this](QMenu* menu, ui::ActionId id) {
        QAction* act = desk_->shelf()->action(id);
        menu->addAction(act);
        // Chosen from the menu on another page, it is done where its stack can be seen.
        connect(act, &QAction::triggered, desk_, [this] {
            if (desk_->page() != Desk::Page::shelf) desk_->showPage(Desk::Page::shelf);
        });
    };
    // By what is done: one list of them all would be higher than a screen.
    using Id = ui::ActionId;
    const std::pair<QString, std::vector<Id>> groups[] = {
        {tr("&Feed and cover"), {Id::feed, Id::feedBorne, Id::feedOther, Id::cover, Id::coverOther}},
        {tr("&Water and drain"), {Id::water, Id::waterOther, Id::drain, Id::drainOther, Id::flush}},
        {tr("&Trays and castings"), {Id::rotate, Id::harvest, Id::loosen, Id::addTray, Id::rebed}},
        {tr("&Look and measure"), {Id::check, Id::reading, Id::weighWorms, Id::countWorms, Id::weighTray}},
        {tr("W&orms"), {Id::stockWorms, Id::removeWorms, Id::moveWorms}},
        {tr("&Notes and routines"), {Id::routine, Id::event, Id::note}},
        {tr("Set-&up and place"), {Id::changeStack, Id::moveStackLeft, Id::moveStackRight, Id::retire}},
        {tr("&Day shown"), {Id::dayBack, Id::dayForward, Id::weekBack, Id::weekForward, Id::backToToday}},
    };
    for (const auto& [title, acts] : groups) {
        QMenu* menu = recordMenu_->addMenu(title);
        for (const Id id : acts) addAct(menu, id);
        ui::keepLettersApart(menu);
    }
    recordMenu_->addSeparator();
    addAct(recordMenu_, Id::moreActs);
}

void MainWindow::syncActions()
{
    const bool open = household_ != nullptr;
    const bool writable = open && !household_->readOnly();
    for (const ui::ActionId id : {ui::ActionId::exportJournal, ui::ActionId::exportCalendar, ui::ActionId::stackSheet, ui::ActionId::trayLabels, ui::ActionId::saveCopy, ui::ActionId::deletedEntries, ui::ActionId::whatIsWrong, ui::ActionId::guidedHarvest, ui::ActionId::pageShelf, ui::ActionId::pageTrends, ui::ActionId::pageJournal, ui::ActionId::pageMaterials, ui::ActionId::pageHandbook, ui::ActionId::pageRotation, ui::ActionId::goDue}) {
        action(id)->setEnabled(open);
    }
    for (const ui::ActionId id : {ui::ActionId::renameHousehold, ui::ActionId::importReadings, ui::ActionId::backupFolder, ui::ActionId::newStack, ui::ActionId::doDue}) action(id)->setEnabled(writable);
    action(ui::ActionId::recordOther)->setEnabled(writable && anyStackStands(*household_));
    action(ui::ActionId::importJournal)->setEnabled(!open || writable);
    syncUndo();
    action(ui::ActionId::themeLight)->setChecked(theme_.mode() == ui::ThemeMode::light);
    action(ui::ActionId::themeDark)->setChecked(theme_.mode() == ui::ThemeMode::dark);
    action(ui::ActionId::themeSystem)->setChecked(theme_.mode() == ui::ThemeMode::system);
    action(ui::ActionId::lessMotion)->setChecked(theme_.lessMotion());
    action(ui::ActionId::notifyDue)->setChecked(DueNotice::wanted(settings_));
    syncLocaleActions();
    syncSeasonActions();
    action(ui::ActionId::fontLarger)->setEnabled(theme_.fontScale() < ui::Theme::largestScale);
    action(ui::ActionId::fontSmaller)->setEnabled(theme_.fontScale() > ui::Theme::smallestScale);
}

}
