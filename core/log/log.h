#pragma once

#include <QString>
#include <QStringList>

#include <QtGlobal>

#include <cstddef>
#include <initializer_list>

/// What the program did and what failed, kept on this machine for somebody who wants help: times, versions, failures, durations. It takes
/// words of this table and whole numbers only, so that nothing of a journal, no name and no path can get into it.
namespace tierloam::log {

enum class What {
    started, ended,                     ///< a call of the program
    opened, openFailed,                 ///< a household
    written, writeFailed,
    backupMade, backupFailed,
    copied, copyFailed,
    reckoned, reckonFailed,
    workFailed,                         ///< a question of a page, beside the window
    readingsImported,
    logTakenAway,                       ///< another program removed the log of a file that was open
    whats
};

/// The name of a figure; only a text that stands in the source can be one.
class Name {
public:
    consteval Name(const char* text) : text_{text} {} // NOLINT: implicit, so that a call reads as a list
    const char* text() const { return text_; }

private:
    const char* text_;
};

struct Figure {
    Name name;
    qint64 value;
};

/// One line, appended at once by one write. Where it cannot be written nothing is said and nothing is held up: the log is a help, not a duty.
void note(What what, std::initializer_list<Figure> figures = {});

/// The last lines of the newest files, oldest first.
QStringList lastLines(std::size_t most);

/// $XDG_STATE_HOME/tierloam, else ~/.local/state/tierloam; empty where there is no home.
QString folder();

inline constexpr qint64 largestFile = 256 * 1024; ///< bytes; then the next is begun
inline constexpr int files = 3;

/// The moment a piece of work began; its milliseconds are a figure.
class Since {
public:
    Since();
    qint64 milliseconds() const;

private:
    qint64 began_;
};

}
