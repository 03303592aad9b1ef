#include "app/command_line.h"
#include "app/core_calls.h"
#include "app/languages.h"
#include "core/log/log.h"
#ifdef TIERLOAM_UI
#include "app/window_start.h"
#endif

#include <QCoreApplication>

#include <array>
#include <clocale>
#include <cstdlib>
#include <cstring>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include <langinfo.h>


namespace {

using namespace tierloam::app;

/// Names of files and rows are UTF-8 whatever the locale says; Qt would switch by itself and say so on stderr. Language and country stay.
void useUtf8()
{
    std::setlocale(LC_ALL, "");
    if (std::strcmp(nl_langinfo(CODESET), "UTF-8") == 0) return;
    if (const char* all = std::getenv("LC_ALL"); all != nullptr && *all != '\0') {
        setenv("LANG", std::string{all}.c_str(), 1);
        unsetenv("LC_ALL");
    }
    setenv("LC_CTYPE", "C.UTF-8", 1);
    std::setlocale(LC_ALL, "");
    std::setlocale(LC_CTYPE, "C.UTF-8");
}

int printed(const std::string& text) { return print(text) ? exitDone : exitFailed; }

/// --help, or what is wrong with the arguments: both in words, so in a language, and what tells it needs an application.
int answerInWords(int& argc, char** argv, std::span<const char* const> arguments, bool helpWanted)
{
    const QCoreApplication application{argc, argv};
    useLanguage(languageAskedFor(arguments, languages()));
    if (helpWanted) return printed(helpText().toStdString());
    const auto again = parseCommandLine(arguments, languages()); // the first time there were no texts yet
    if (const auto* error = std::get_if<UsageError>(&again)) complain(error->why);
    complain(QCoreApplication::translate("CommandLine", "tierloam --help lists the calls"));
    return exitBadInput;
}

int answerWithoutDisplay(int& argc, char** argv, const CommandLine& call)
{
    const QCoreApplication application{argc, argv};
    useLanguage();
    switch (call.call) {
    case Call::importJournal:
    case Call::record:
        return addToJournal(call);
    case Call::exportJournal:
        return exportJournal(call);
    case Call::calendar:
        return writeCalendar(call);
    default:
        return printSummary(call);
    }
}

/// "1.2.3" as three numbers.
consteval std::array<int, 3> numbersOf(std::string_view version)
{
    std::array<int, 3> numbers{};
    std::size_t at = 0;
    for (const char c : version) {
        if (c == '.') ++at;
        else if (c >= '0' && c <= '9' && at < numbers.size()) numbers[at] = numbers[at] * 10 + (c - '0');
    }
    return numbers;
}

int answerTo(const CommandLine& call, int& argc, char** argv)
{
    switch (call.call) {
    case Call::window:
    case Call::portrait:
    case Call::report:
    case Call::labels:
#ifdef TIERLOAM_UI
        return startWindow(argc, argv, call);
#else
    {
        const QCoreApplication application{argc, argv};
        useLanguage(call.language);
        complain(QCoreApplication::translate("CommandLine", "this build has no window and draws no pages; it answers --import, --record, --export, --summary and --calendar"));
        return exitFailed;
    }
#endif
    default:
        return answerWithoutDisplay(argc, argv, call);
    }
}

}

int main(int argc, char** argv)
{
    useUtf8();
    QCoreApplication::setApplicationName(QStringLiteral("tierloam"));
    QCoreApplication::setApplicationVersion(QStringLiteral(TIERLOAM_VERSION));
    const std::vector<const char*> arguments{argv + (argc > 0 ? 1 : 0), argv + argc}; // of our own: an application takes away what is Qt's
    const auto parsed = parseCommandLine(arguments, languages());
    const auto* readable = std::get_if<CommandLine>(&parsed);
    if (!readable || readable->call == Call::help) return answerInWords(argc, argv, arguments, readable != nullptr);
    const CommandLine& call = *readable;
    if (call.call == Call::version) return printed("tierloam " TIERLOAM_VERSION "\n");
    const tierloam::log::Since since;
    constexpr auto version = numbersOf(TIERLOAM_VERSION);
    tierloam::log::note(tierloam::log::What::started, {{"call", static_cast<qint64>(call.call)}, {"major", version[0]}, {"minor", version[1]}, {"patch", version[2]}, {"qt", QT_VERSION}});
    const int code = answerTo(call, argc, argv);
    tierloam::log::note(tierloam::log::What::ended, {{"call", static_cast<qint64>(call.call)}, {"code", code}, {"ms", since.milliseconds()}});
    return code;
}
