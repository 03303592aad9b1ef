#include "app/window_start.h"

#include "app/core_calls.h"
#include "app/languages.h"
#include "app/window_paper.h"
#include "ui/common/measures_setting.h"
#include "ui/common/seams.h"
#include "ui/common/theme.h"
#include "ui/portrait/portrait.h"
#include "ui/window/desktop_notes.h"
#include "ui/window/main_window.h"
#include "ui/window/notices.h"
#include "ui/window/one_window.h"
#include "ui/window/recent_files.h"
#include "ui/window/system_scheme.h"

#include <QApplication>
#include <QFileInfo>
#include <QFont>
#include <QIcon>
#include <QStandardPaths>

#include <memory>

namespace tierloam::app {

namespace {

/// Everything around the window, in the order in which it is needed.
struct Start {
    std::unique_ptr<ui::Settings> settings;
    ui::SystemDialogs dialogs;
    std::unique_ptr<ui::Theme> theme;
    std::unique_ptr<window::DesktopNotes> desktop;
};

window::MainWindow::Needs needsOf(Start& start, std::shared_ptr<const household::Clock> clock)
{
    return {std::move(clock), *start.theme, start.dialogs, *start.settings, {}, QCoreApplication::applicationVersion(), true, useLanguage, start.desktop.get()};
}

void complainAll(const window::MainWindow& window)
{
    const auto texts = window.notices()->texts();
    for (const QString& text : texts) complain(text);
}

/// The same picture on every machine: no display, no scaling, one font, nothing remembered.
int drawPages(int& argc, char** argv, const CommandLine& call)
{
    needNoDisplay();
    const QApplication application{argc, argv};
    QApplication::setFont(QFont{QStringLiteral("DejaVu Sans"), 10});
    Start start;
    useLanguage(call.language);
    start.settings = ui::passingSettings();
    start.theme = std::make_unique<ui::Theme>();
    start.theme->setMode(call.portrait.theme == Theme::dark ? ui::ThemeMode::dark : ui::ThemeMode::light);
    start.theme->setFontScale(call.portrait.fontScale);
    start.theme->apply();
    std::shared_ptr<const household::Clock> clock = std::make_shared<household::SystemClock>();
    if (call.at) clock = std::make_shared<household::FixedClock>(*call.at);
    auto needs = needsOf(start, clock);
    needs.shared = false;
    window::MainWindow window{needs};
    const bool opened = call.demo ? window.openDemo() : window.openFile(call.file);
    if (!opened) {
        complainAll(window);
        return exitFailed;
    }
    if (const auto why = portrait::drawPortraits(window, call.portrait.folder, QSize{call.portrait.width, call.portrait.height})) {
        complain(*why);
        return exitFailed;
    }
    return exitDone;
}

bool displayThere()
{
    return qEnvironmentVariableIsSet("DISPLAY") || qEnvironmentVariableIsSet("WAYLAND_DISPLAY") || qEnvironmentVariableIsSet("QT_QPA_PLATFORM");
}

}

int startWindow(int& argc, char** argv, const CommandLine& call)
{
    if (call.call == Call::portrait) return drawPages(argc, argv, call);
    if (call.call == Call::report || call.call == Call::labels) return drawPaper(argc, argv, call);
    if (!displayThere()) {
        complain(QCoreApplication::translate("WindowStart", "there is no display; --portrait DIR draws the pages without one"));
        return exitFailed;
    }
    const QApplication application{argc, argv};
    QGuiApplication::setDesktopFileName(QStringLiteral("tierloam"));
    QIcon icon;
    for (const char* picture : {":/icon/64.png", ":/icon/256.png"}) icon.addFile(QString::fromLatin1(picture));
    QGuiApplication::setWindowIcon(QIcon::fromTheme(QStringLiteral("tierloam"), icon));
    Start start;
    start.settings = ui::systemSettings();
    useLanguage(start.settings->value(QStringLiteral("window/language")).toString());
    ui::setMeasures(ui::measuresOf(start.settings->value(QStringLiteral("window/measures")).toString()));
    start.theme = std::make_unique<ui::Theme>();
    start.theme->restore(*start.settings);
    start.theme->apply();
    const window::SystemScheme scheme{*start.theme};

    const QString file = call.demo ? QString{} : call.file.isEmpty() ? window::lastFile(*start.settings) : call.file;
    if (!file.isEmpty() && window::OneWindow::raiseOther(file)) return exitDone;
    start.desktop = window::systemDesktopNotes();
    auto needs = needsOf(start, std::make_shared<household::SystemClock>());
    needs.household.estimatesFolder = QStandardPaths::writableLocation(QStandardPaths::GenericCacheLocation) + QStringLiteral("/tierloam");
    needs.household.program = TIERLOAM_VERSION;
    window::MainWindow window{needs};
    int code = exitDone;
    if (call.demo || !file.isEmpty()) {
        const bool opened = call.demo ? window.openDemo() : window.openFile(file);
        // A file that was named and cannot be opened is a failed call. With a display its reason also stands in the window, since
        // whoever double-clicked the file sees no terminal.
        if (!opened && (call.demo || !call.file.isEmpty())) {
            complainAll(window);
            code = exitFailed;
            const QString platform = QGuiApplication::platformName();
            if (platform == QLatin1StringView("offscreen") || platform == QLatin1StringView("minimal")) return code;
        }
    }
    window.restoreState();
    window.show();
    const int ended = QApplication::exec();
    return code == exitDone ? ended : code;
}

}
