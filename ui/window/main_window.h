#pragma once

#include "core/household/household.h"
#include "ui/common/actions.h"
#include "ui/common/seams.h"
#include "ui/common/theme.h"
#include "ui/window/desk.h"

#include <QHash>
#include <QLocale>
#include <QMainWindow>
#include <QPointer>

#include <functional>
#include <memory>
#include <optional>

class QAction;
class QMenu;
class QStackedWidget;

namespace tierloam::forms {
class Welcome;
}

namespace tierloam::exchange_view {
class JournalSheetView;
}

namespace tierloam::window {

class DesktopNotes;
class DueNotice;
class Notices;
class OneWindow;

/// The window of the program: menus, the welcome page while no household is open, and the desk of the one that is. It opens, closes,
/// imports and exports; the desk shows.
class MainWindow : public QMainWindow {
    Q_OBJECT

public:
    /// What it needs from outside; theme, dialogs and settings outlive it.
    struct Needs {
        std::shared_ptr<const household::Clock> clock;
        ui::Theme& theme;
        ui::Dialogs& dialogs;
        ui::Settings& settings;
        household::Household::Settings household; ///< createIfAbsent is set by the window as it needs
        QString version;
        bool shared = true;          ///< other programs that are asked for the file find this window; not for portraits
        std::function<void(const QString&)> useLanguage; ///< all texts from now on in that language; empty for that of the system
        DesktopNotes* desktop = nullptr; ///< outlives the window; nullptr: nothing is told on the desktop
    };

    explicit MainWindow(const Needs& needs, QWidget* parent = nullptr);
    ~MainWindow() override;

    /// Opens a file in this window; what was open before is closed, durable. When it cannot be opened, or what was recorded last cannot
    /// be written, that is said and the window stays as it was. A file that another window shows is brought to the front there.
    bool openFile(const QString& path);
    bool openDemo();
    void showWelcome();
    /// A new file that must not exist yet.
    bool createFile(const QString& path);
    // Tables (main_window_exchange.cpp).
    /// Shows what a table would become in the open household, or in a new one when none is open; nothing is added before it is asked for.
    void importFile(const QString& csv);
    /// The same for readings of a logger, which need a household.
    void importReadings(const QString& csv);
    bool exportFile(const QString& csv);
    /// Due list and the year's plan as iCalendar.
    bool exportCalendar(const QString& ics);
    /// What the trends page shows; `kind`: "png", "svg", "pdf" or "csv". Asks where to, and tells how it went.
    void saveTrends(const QString& kind);
    void printTrends();

    household::Household* household() const { return household_.get(); }
    Desk* desk() const { return desk_; }
    /// A first guess of the seasons of a household that has just been made; it is told.
    void guessSeasons(QLocale::Territory territory);
    Notices* notices() const { return notices_; }
    QAction* action(ui::ActionId id) const { return actions_.value(static_cast<int>(id)); }
    /// Size, place and page of the last time.
    void restoreState();

public Q_SLOTS:
    void bringToFront();

protected:
    void closeEvent(QCloseEvent* event) override;
    bool focusNextPrevChild(bool next) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    void makeActions();
    void makeMenus();
    void fillRecent();
    void fillRecordMenu();
    bool take(const QString& path, bool create);
    void makeDesk();
    void makeWelcome();
    void addImported(const QString& csv, const journal::Entries& entries, const QStringList& warnings, exchange_view::JournalSheetView* view);
    /// false when people chose to stay with what they have typed.
    bool mayLeave();
    /// mayLeave(), and all that was recorded is durable; waits for that. false also when some of it could not be written, which is told.
    bool mayLetGo();
    void dropHousehold();
    void leaveFields();
    void syncActions();
    // Undo and redo, asked for also while a step is being written (main_window_undo.cpp).
    void followSteps();
    void undoAsked();
    void redoAsked();
    void stepsWritten();
    void syncUndo();
    void setTitle();
    void startFirstStack();
    void chooseAndCreate();
    /// Where a household goes that was not given a place; made when it is needed.
    QString documents() const;
    /// The folder that dialogs begin in: one that is there.
    QString proposedFolder() const;
    void stepFont(int by);
    void tellDueOnDesktop(bool on);
    void rename();
    // What keeps a household safe (main_window_safety.cpp).
    void saveCopy();
    void showPhotos(qint64 entryId);
    void showBackups(const QString& path);
    void chooseBackupFolder();
    void offerBackups(const QString& path);
    void chooseBackups();
    void keepBackupFolder();
    /// Opens the household anew, which could only be read: there may be room on the disk by now, or permission.
    void tryToWriteAgain();
    // Language and units (main_window_locale.cpp).
    void makeLocaleActions();
    void syncLocaleActions();
    void makeLocaleMenus(QMenu* view) const;
    /// Remembers a choice and shows everything anew; nothing when somebody would rather keep what is typed.
    void choose(const QString& key, const QString& value);
    void showAnew();
    // Seasons of the household's half of the globe (main_window_seasons.cpp).
    void makeSeasonActions();
    void syncSeasonActions();
    bool livesSouth() const;
    void keepSouth(bool south);
    // What goes onto paper (main_window_paper.cpp).
    void showSheet();
    void showLabels();

    std::shared_ptr<const household::Clock> clock_;
    ui::Theme& theme_;
    ui::Dialogs& dialogs_;
    ui::Settings& settings_;
    QString refused_;                ///< the file that could not be opened last; empty once one was
    household::Household::Settings householdSettings_;
    QString version_;
    bool shared_;
    std::function<void(const QString&)> useLanguage_;
    DesktopNotes* desktop_;
    QHash<int, QAction*> actions_;
    QMenu* recentMenu_ = nullptr;
    QMenu* recordMenu_ = nullptr;
    Notices* notices_;
    QStackedWidget* body_;
    forms::Welcome* welcome_ = nullptr;
    std::unique_ptr<household::Household> household_;
    std::optional<int> undoFrom_;    ///< undo was asked for while a step was being written: as many steps stood on the stack then
    QPointer<Desk> desk_;
    QPointer<DueNotice> dueNotice_;
    OneWindow* oneWindow_;
};

}
