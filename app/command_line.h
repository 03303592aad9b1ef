#pragma once

#include "core/quantity/measures.h"

#include <QString>
#include <QStringList>

#include <optional>
#include <span>
#include <string>
#include <variant>

/// The program around the rooms: what was asked for on the command line, and who answers it.
namespace tierloam::app {

/// Exit codes, fixed: see --help.
enum ExitCode : int {
    exitDone = 0,
    exitFailed = 1,   ///< the work failed: disk full, FILE absent, damaged, or in use for more than 5 s
    exitBadInput = 2  ///< bad arguments or input; nothing was changed
};

enum class Call { window, importJournal, record, exportJournal, summary, calendar, portrait, version, help, report, labels };

enum class Theme { light, dark };

/// How --portrait draws.
struct PortraitOptions {
    QString folder;
    Theme theme = Theme::light;
    int fontScale = 100;           ///< %, 100 to 200
    int width = 1440, height = 900;
};

/// One call, whole and checked as far as it can be without touching a file.
struct CommandLine {
    Call call = Call::window;
    QString file;                  ///< household file; empty: the last one, or the welcome page (only Call::window), or the demo
    bool demo = false;             ///< instead of a file, for window and portrait
    QString csv;                   ///< of import and export; the target of calendar, report and labels
    std::string row;               ///< of record, bytes as typed
    std::string stack;             ///< of report, bytes as typed
    std::optional<Day> at;         ///< of summary, calendar, report, labels and portrait
    QString language;              ///< of report, labels and portrait: "de"; empty: by locale
    PortraitOptions portrait;
};

/// Why the arguments make no call, as one sentence.
struct UsageError {
    QString why;
};

/// `arguments` without the program's name, in UTF-8. `languages`: codes of those that there are texts for, the only ones that --lang takes.
std::variant<CommandLine, UsageError> parseCommandLine(std::span<const char* const> arguments, const QStringList& languages);

/// What --lang asks for, whatever else is wrong with the arguments, so that this is told in it; empty: nothing there are texts for, so by locale.
QString languageAskedFor(std::span<const char* const> arguments, const QStringList& languages);

QString helpText();

}
