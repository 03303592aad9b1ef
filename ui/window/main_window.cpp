#include "ui/window/main_window.h"
#include "core/store/household_file.h"

#include "ui/common/enter_key.h"
#include "ui/common/formats.h"
#include "ui/common/reading_order.h"
#include "ui/exchange/journal_sheet_view.h"
#include "ui/forms/welcome.h"
#include "ui/journal/journal_page.h"
#include "ui/materials/materials_page.h"
#include "ui/shelf/shelf_page.h"
#include "ui/trends/trends_page.h"
#include "ui/window/demo.h"
#include "ui/window/desk.h"
#include "ui/window/due_notice.h"
#include "ui/window/notices.h"
#include "ui/window/one_window.h"
#include "ui/window/recent_files.h"

#include <QAction>
#include <QApplication>
#include <QCloseEvent>
#include <QDir>
#include <QFileInfo>
#include <QKeyEvent>
#include <QMenu>
#include <QProgressDialog>
#include <QScreen>
#include <QStackedWidget>
#include <QStandardPaths>
#include <QVBoxLayout>

#include <algorithm>

namespace tierloam::window {

MainWindow::MainWindow(const Needs& needs, QWidget* parent)
    : QMainWindow{parent}, clock_{needs.clock}, theme_{needs.theme}, dialogs_{needs.dialogs}, settings_{needs.settings},
      householdSettings_{needs.household}, version_{needs.version}, shared_{needs.shared}, useLanguage_{needs.useLanguage}, desktop_{needs.desktop}, notices_{new Notices}, body_{new QStackedWidget},
      oneWindow_{new OneWindow{this}}
{
    setObjectName(QStringLiteral("mainWindow"));
    ui::setRightToLeft(isRightToLeft());
    makeActions();
    makeMenus();
    auto* middle = new QWidget{this};
    middle->setProperty("page", true);
    auto* rows = new QVBoxLayout{middle};
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(0);
    rows->addWidget(notices_);
    rows->addWidget(body_, 1);
    setCentralWidget(middle);
    setMinimumSize(640, 480);
    resize(QSize{1440, 900}.boundedTo(screen()->availableSize()));

    makeWelcome();
    connect(oneWindow_, &OneWindow::asked, this, &MainWindow::bringToFront);
    connect(&theme_, &ui::Theme::changed, this, [this] {
        theme_.remember(settings_);
        syncActions();
    });
    showWelcome();
}

void MainWindow::makeWelcome()
{
    delete welcome_;
    welcome_ = new forms::Welcome;
    body_->insertWidget(0, welcome_);
    connect(welcome_, &forms::Welcome::startFirstStack, this, &MainWindow::startFirstStack);
    connect(welcome_, &forms::Welcome::openDemo, this, [this] { openDemo(); });
    connect(welcome_, &forms::Welcome::openFile, action(ui::ActionId::openHousehold), &QAction::trigger);
    connect(welcome_, &forms::Welcome::importJournal, action(ui::ActionId::importJournal), &QAction::trigger);
    connect(welcome_, &forms::Welcome::openRecent, this, [this](const QString& path) { openFile(path); });
}

MainWindow::~MainWindow()
{
    dropHousehold();
}

QString MainWindow::documents() const
{
    const QString folder = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
    return folder.isEmpty() ? QDir::homePath() : folder;
}

QString MainWindow::proposedFolder() const
{
    const QString folder = documents();
    if (QFileInfo{folder}.isDir()) return folder;
    return household_ ? QFileInfo{household_->path()}.absolutePath() : QDir::homePath();
}

void MainWindow::dropHousehold()
{
    if (!household_) return;
    leaveFields();
    household_->finishWrites(); // what was recorded is durable before the window lets go
    delete desk_;               // its pages look at the household
    notices_->setFloating(false); // with the form that was open
    household_.reset();
    qDeleteAll(findChildren<QProgressDialog*>(QStringLiteral("copying"))); // a copy that was under way is never answered now
    oneWindow_->take({});
}

/// Before pages are deleted: some fields keep what they hold when they are left, and none may be left while it is half gone.
void MainWindow::leaveFields()
{
    if (QWidget* at = QApplication::focusWidget(); desk_ && at && desk_->isAncestorOf(at)) at->clearFocus();
}

bool MainWindow::mayLeave()
{
    if (!desk_ || !desk_->anythingTyped()) return true;
    return dialogs_.ask(this, tr("Not recorded yet"), tr("A form holds something that has not been recorded. It is lost when you go on."), tr("Go on"));
}

/// What was recorded may still be on its way to the disk, and fail there. The desk tells why, and tells it only while it is there.
bool MainWindow::mayLetGo()
{
    if (!mayLeave()) return false;
    if (!household_) return true;
    const auto copies = findChildren<QProgressDialog*>(QStringLiteral("copying"));
    if (std::ranges::any_of(copies, [](const QProgressDialog* each) { return !each->wasCanceled(); })
        && !dialogs_.ask(this, tr("A copy is being written"), tr("It is called off when you go on, and nothing of it is kept."), tr("Go on")))
        return false;
    const QPointer<QWidget> at = QApplication::focusWidget();
    leaveFields();
    if (household_->finishWrites().isEmpty()) return true;
    if (at) at->setFocus(Qt::OtherFocusReason);
    notices_->show(Notices::Kind::notice, tr("%1 stays open: what was recorded last could not be written and is not in it. Record it again, or go on once more without it.").arg(household_->name()),
                   QStringLiteral("leaving"));
    return false;
}

bool MainWindow::take(const QString& path, bool create)
{
    household::Household::Settings settings = householdSettings_;
    settings.createIfAbsent = create;
    auto opened = household::Household::open(path, clock_, settings);
    if (const auto* failure = std::get_if<store::OpenFailure>(&opened)) {
        notices_->show(Notices::Kind::failure, failure->why, QStringLiteral("open"));
        if (failure->problem == store::OpenProblem::damaged || failure->problem == store::OpenProblem::absent || failure->problem == store::OpenProblem::notAHousehold)
            offerBackups(path);
        return false;
    }
    dropHousehold();
    notices_->clear();
    household_ = std::move(std::get<std::unique_ptr<household::Household>>(opened));
    if (shared_) oneWindow_->take(household_->path());
    makeDesk();
    for (auto* view : findChildren<exchange_view::JournalSheetView*>()) view->meet(*household_); // a table that was looked at without one
    if (household_->readOnly())
        notices_->show(Notices::Kind::notice, tr("This household is opened for reading only; nothing can be recorded."), QStringLiteral("readOnly"), {tr("Try again"), [this] { tryToWriteAgain(); }});
    followSteps();
    connect(household_->undoStack(), &QUndoStack::indexChanged, notices_, [this, before = household_->undoStack()->index()](int index) mutable {
        if (index < before) notices_->settle(QStringLiteral("import")); // what it tells may just have been taken back
        before = index;
    });
    connect(household_.get(), &household::Household::changed, this, [this] { setTitle(); syncActions(); keepBackupFolder(); });
    refused_.clear();
    keepBackupFolder();
    if (shared_ && !isDemo(household_->path())) rememberFile(settings_, household_->path());
    fillRecent();
    fillRecordMenu();
    setTitle();
    syncActions();
    desk_->showPage(Desk::Page::shelf);
    return true;
}

void MainWindow::makeDesk()
{
    desk_ = new Desk{*household_, {theme_, settings_, *notices_, [this](ui::ActionId id) { return action(id); }, [this] { return clock_->minuteOfDay(); }}, body_};
    body_->addWidget(desk_);
    body_->setCurrentWidget(desk_);
    if (desktop_ != nullptr && !isDemo(household_->path())) dueNotice_ = new DueNotice{*desk_->due(), *household_, settings_, *desktop_, desk_};
    const forms::MayThrowAway ask = [this](const QString& form) {
        return dialogs_.ask(this, tr("Not recorded yet"), tr("The form «%1» holds something that has not been recorded. It is lost when the form is closed.").arg(form), tr("Close the form"));
    };
    desk_->shelf()->setMayThrowAway(ask);
    desk_->journal()->setMayThrowAway(ask);
    desk_->materials()->setMayThrowAway(ask);
    connect(desk_->journal(), &journal_page::JournalPage::photosWanted, this, &MainWindow::showPhotos);
    connect(desk_, &Desk::trendsSaveAsked, this, &MainWindow::saveTrends);
    connect(desk_, &Desk::trendsPrintAsked, this, &MainWindow::printTrends);
}

void MainWindow::tryToWriteAgain()
{
    if (!household_ || !household_->readOnly() || !mayLeave()) return;
    const Desk::Page page = desk_->page();
    if (!take(household_->path(), false)) return;
    desk_->showPage(page);
    if (!household_->readOnly()) notices_->show(Notices::Kind::done, tr("It is open for writing now."), QStringLiteral("open"));
}

bool MainWindow::openFile(const QString& path)
{
    if (household_ && QFileInfo{path}.canonicalFilePath() == QFileInfo{household_->path()}.canonicalFilePath()) {
        bringToFront();
        return true;
    }
    if (shared_ && OneWindow::raiseOther(path)) {
        notices_->show(Notices::Kind::notice, tr("%1 is already open in another window, which has been brought to the front.").arg(QFileInfo{path}.fileName()),
                       QStringLiteral("open"));
        return false;
    }
    if (!mayLetGo()) return false;
    if (!QFileInfo::exists(path)) forgetFile(settings_, path);
    return take(path, false);
}

bool MainWindow::createFile(const QString& path)
{
    if (QFileInfo::exists(path)) {
        notices_->show(Notices::Kind::failure, tr("%1 is already there. Nothing was replaced: choose another name, or open it.").arg(QDir::toNativeSeparators(path)),
                       QStringLiteral("open"));
        return false;
    }
    if (!mayLetGo()) return false;
    if (!take(path, true)) return false;
    guessSeasons(QLocale::system().territory());
    return true;
}

bool MainWindow::openDemo()
{
    if (!mayLetGo()) return false;
    const Demo demo = freshDemo(clock_->today());
    if (demo.path.isEmpty()) {
        notices_->show(Notices::Kind::failure, tr("The demo household could not be made: %1").arg(demo.why), QStringLiteral("open"));
        return false;
    }
    return take(demo.path, false);
}

void MainWindow::showWelcome()
{
    dropHousehold();
    welcome_->setRecentFiles(recentFiles(settings_));
    body_->setCurrentIndex(0);
    welcome_->setFocus();
    fillRecent();
    fillRecordMenu();
    setTitle();
    syncActions();
}

/// A household in which nothing was ever written: begun, and left before its first stack.
static bool untouched(const QString& path)
{
    const auto opened = store::HouseholdFile::open(path, store::HouseholdFile::Mode::readOnly, std::chrono::milliseconds{0});
    if (!std::holds_alternative<std::unique_ptr<store::HouseholdFile>>(opened)) return false;
    const auto& file = std::get<std::unique_ptr<store::HouseholdFile>>(opened);
    const auto entries = file->entries();
    const auto deleted = file->deletedEntries();
    return std::holds_alternative<journal::Entries>(entries) && std::get<journal::Entries>(entries).empty()
        && std::holds_alternative<std::vector<store::DeletedEntry>>(deleted) && std::get<std::vector<store::DeletedEntry>>(deleted).empty();
}

void MainWindow::startFirstStack()
{
    // One question less on the way to the first feeding: the file has a name and a place of its own, and both are told.
    const QDir folder{documents()};
    folder.mkpath(QStringLiteral("."));
    QString path = folder.filePath(tr("My worm bins") % QStringLiteral(".tierloam"));
    for (int n = 2; QFileInfo::exists(path) && !untouched(path); ++n) path = folder.filePath(tr("My worm bins %1").arg(n) % QStringLiteral(".tierloam"));
    if (!(QFileInfo::exists(path) ? openFile(path) : createFile(path))) return;
    notices_->show(Notices::Kind::done, tr("Your household is kept in %1.").arg(QDir::toNativeSeparators(path)));
    desk_->newStack();
}

void MainWindow::chooseAndCreate()
{
    const QString path = dialogs_.fileToSave(this, tr("New household"), QDir{proposedFolder()}.filePath(tr("Household") % QStringLiteral(".tierloam")),
                                             tr("Households (*.tierloam)"), QStringLiteral("tierloam"));
    if (!path.isEmpty()) createFile(path);
}

void MainWindow::rename()
{
    if (!household_) return;
    const QString name = dialogs_.text(this, tr("Name of the household"), tr("It is kept in %1. Its name:").arg(QDir::toNativeSeparators(household_->path())), household_->name());
    if (!name.isEmpty() && name != household_->name()) household_->rename(name);
}

void MainWindow::setTitle()
{
    setWindowTitle(household_ ? tr("%1 – Tierloam").arg(household_->name()) : QStringLiteral("Tierloam"));
    setWindowFilePath(household_ ? household_->path() : QString{});
}

void MainWindow::bringToFront()
{
    setWindowState(windowState() & ~Qt::WindowMinimized);
    show();
    raise();
    activateWindow();
}

void MainWindow::restoreState()
{
    const QByteArray geometry = settings_.value(QStringLiteral("window/geometry")).toByteArray();
    if (!geometry.isEmpty()) restoreGeometry(geometry);
    const int page = settings_.value(QStringLiteral("window/page"), 0).toInt();
    if (desk_ && page > 0 && page < static_cast<int>(Desk::Page::due)) desk_->showPage(static_cast<Desk::Page>(page));
}

bool MainWindow::focusNextPrevChild(bool next) { return ui::focusInReadingOrder(this, next); }

void MainWindow::keyPressEvent(QKeyEvent* event)
{
    if (!ui::pressFocused(this, *event)) QMainWindow::keyPressEvent(event);
}

void MainWindow::closeEvent(QCloseEvent* event)
{
    if (!mayLetGo()) {
        event->ignore();
        return;
    }
    settings_.setValue(QStringLiteral("window/geometry"), saveGeometry());
    if (desk_) settings_.setValue(QStringLiteral("window/page"), static_cast<int>(desk_->page()));
    theme_.remember(settings_);
    event->accept();
}

}
