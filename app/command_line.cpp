#include "app/command_line.h"

#include "core/quantity/day_text.h"

#include <QCoreApplication>
#include <QFile>
#include <QLocale>

#include <array>
#include <charconv>
#include <map>
#include <optional>
#include <string_view>
#include <vector>

namespace tierloam::app {

namespace {

class Text {
    Q_DECLARE_TR_FUNCTIONS(CommandLine)
};

struct Option {
    std::string_view name;
    bool takesValue;
};

constexpr std::array options{Option{"--demo", false}, Option{"--import", true}, Option{"--record", true}, Option{"--export", true},
                             Option{"--summary", false}, Option{"--calendar", true}, Option{"--report", true}, Option{"--out", true}, Option{"--labels", true},
                             Option{"--at", true}, Option{"--portrait", true}, Option{"--theme", true},
                             Option{"--font-scale", true}, Option{"--size", true}, Option{"--lang", true}, Option{"--version", false},
                             Option{"--help", false}};
constexpr std::array portraitOnly{std::string_view{"--theme"}, std::string_view{"--font-scale"}, std::string_view{"--size"}};

QString text(std::string_view utf8) { return QString::fromUtf8(utf8.data(), static_cast<qsizetype>(utf8.size())); }
QString path(std::string_view bytes) { return QFile::decodeName(QByteArray{bytes.data(), static_cast<qsizetype>(bytes.size())}); }

std::optional<int> wholeNumber(std::string_view digits)
{
    int value = 0;
    const auto [end, error] = std::from_chars(digits.data(), digits.data() + digits.size(), value);
    if (error != std::errc{} || end != digits.data() + digits.size() || digits.front() == '-') return std::nullopt;
    return value;
}

/// "de" and "de_AT" where there are texts in "de"; a country that is none would fall back without a word.
bool isSpoken(const QString& code, const QStringList& languages)
{
    const QString name = QString{code}.replace(QLatin1Char{'-'}, QLatin1Char{'_'});
    return languages.contains(name) || (languages.contains(name.section(QLatin1Char{'_'}, 0, 0)) && QLocale{name}.name() == name);
}

class Parser {
public:
    explicit Parser(const QStringList& languages) : languages_{languages} {}

    std::variant<CommandLine, UsageError> parse(std::span<const char* const> arguments)
    {
        if (!collect(arguments)) return *error_;
        if (given_.contains("--help")) return called(Call::help);
        if (given_.contains("--version")) return called(Call::version);
        if (!chooseCall() || !fitOptions() || !readFile() || !readAt() || !readTarget() || !readPortrait()) return *error_;
        return made_;
    }

private:
    static CommandLine called(Call call)
    {
        CommandLine made;
        made.call = call;
        return made;
    }

    bool fail(const QString& why)
    {
        error_ = UsageError{why};
        return false;
    }

    bool collect(std::span<const char* const> arguments)
    {
        bool onlyFiles = false;
        for (std::size_t i = 0; i < arguments.size(); ++i) {
            const std::string_view argument = arguments[i];
            if (onlyFiles || argument.substr(0, 1) != "-") {
                files_.push_back(argument);
                continue;
            }
            if (argument == "--") {
                onlyFiles = true;
                continue;
            }
            const std::size_t equals = argument.find('=');
            const std::string_view name = argument.substr(0, equals);
            const Option* option = nullptr;
            for (const Option& known : options)
                if (known.name == name) option = &known;
            if (!option) return fail(Text::tr("unknown option %1").arg(text(name)));
            std::string_view value;
            if (!option->takesValue) {
                if (equals != std::string_view::npos) return fail(Text::tr("%1 takes no value").arg(text(name)));
            } else if (equals != std::string_view::npos) {
                value = argument.substr(equals + 1);
            } else if (i + 1 < arguments.size() && std::string_view{arguments[i + 1]}.substr(0, 2) != "--") {
                value = arguments[++i];
            }
            if (option->takesValue && value.empty()) return fail(Text::tr("%1 needs a value").arg(text(name)));
            if (!given_.emplace(name, value).second) return fail(Text::tr("%1 is given twice").arg(text(name)));
        }
        return true;
    }

    bool chooseCall()
    {
        struct Choice {
            std::string_view name;
            Call call;
        };
        constexpr std::array choices{Choice{"--import", Call::importJournal}, Choice{"--record", Call::record}, Choice{"--export", Call::exportJournal},
                                     Choice{"--summary", Call::summary}, Choice{"--calendar", Call::calendar}, Choice{"--report", Call::report},
                                     Choice{"--labels", Call::labels}, Choice{"--portrait", Call::portrait}};
        std::string_view chosen;
        for (const auto& [name, call] : choices) {
            if (!given_.contains(name)) continue;
            if (!chosen.empty()) return fail(Text::tr("%1 and %2 cannot be asked for at once").arg(text(chosen), text(name)));
            chosen = name;
            made_.call = call;
        }
        made_.demo = given_.contains("--demo");
        if (made_.call == Call::importJournal || made_.call == Call::exportJournal || made_.call == Call::calendar || made_.call == Call::labels) made_.csv = path(given_[chosen]);
        if (made_.call == Call::report) made_.stack = given_[chosen];
        if (made_.call == Call::record) made_.row = given_[chosen];
        if (made_.call == Call::portrait) made_.portrait.folder = path(given_[chosen]);
        return true;
    }

    bool fitOptions()
    {
        const bool draws = made_.call == Call::portrait || made_.call == Call::report || made_.call == Call::labels;
        if (given_.contains("--at") && !draws && made_.call != Call::summary && made_.call != Call::calendar)
            return fail(Text::tr("--at goes only with --summary, --calendar, --report, --labels and --portrait"));
        for (const std::string_view name : portraitOnly)
            if (given_.contains(name) && made_.call != Call::portrait) return fail(Text::tr("%1 goes only with --portrait").arg(text(name)));
        if (given_.contains("--lang") && !draws) return fail(Text::tr("--lang goes only with --report, --labels and --portrait"));
        if (given_.contains("--out") && made_.call != Call::report) return fail(Text::tr("--out goes only with --report"));
        if (made_.demo && made_.call != Call::window && made_.call != Call::portrait) return fail(Text::tr("--demo goes only with the window and --portrait"));
        return true;
    }

    bool readFile()
    {
        if (files_.size() > 1) return fail(Text::tr("only one FILE can be named, not %1 and %2").arg(path(files_[0]), path(files_[1])));
        if (!files_.empty()) {
            if (files_[0].empty()) return fail(Text::tr("the name of FILE is empty"));
            if (made_.demo) return fail(Text::tr("--demo opens a household of its own, so no FILE can be named"));
            made_.file = path(files_[0]);
        }
        if (made_.file.isEmpty() && !made_.demo && made_.call != Call::window) return fail(Text::tr("the call needs a FILE: tierloam FILE …"));
        return true;
    }

    bool readAt()
    {
        const auto at = given_.find("--at");
        if (at == given_.end()) return true;
        made_.at = parseDay(at->second);
        if (!made_.at) return fail(Text::tr("--at: found «%1»; allowed: a date from 1900 to 2199, such as 2031-05-01").arg(text(at->second)));
        return true;
    }

    /// What a report or labels are written to, by its ending.
    bool readTarget()
    {
        if (made_.call == Call::report) {
            const auto out = given_.find("--out");
            if (out == given_.end()) return fail(Text::tr("--report needs --out OUT.pdf or --out OUT.html"));
            made_.csv = path(out->second);
            if (!made_.csv.endsWith(QLatin1StringView{".pdf"}, Qt::CaseInsensitive) && !made_.csv.endsWith(QLatin1StringView{".html"}, Qt::CaseInsensitive))
                return fail(Text::tr("%1: found «%2»; allowed: %3").arg(QStringLiteral("--out"), made_.csv, Text::tr("a name that ends in .pdf or .html")));
        }
        if (made_.call == Call::labels && !made_.csv.endsWith(QLatin1StringView{".pdf"}, Qt::CaseInsensitive))
            return fail(Text::tr("%1: found «%2»; allowed: %3").arg(QStringLiteral("--labels"), made_.csv, Text::tr("a name that ends in .pdf")));
        return true;
    }

    bool readPortrait()
    {
        PortraitOptions& portrait = made_.portrait;
        const auto refuse = [&](std::string_view name, const QString& allowed) {
            return fail(Text::tr("%1: found «%2»; allowed: %3").arg(text(name), text(given_[name]), allowed));
        };
        if (const auto theme = given_.find("--theme"); theme != given_.end()) {
            if (theme->second != "light" && theme->second != "dark") return refuse("--theme", QStringLiteral("light, dark"));
            portrait.theme = theme->second == "dark" ? Theme::dark : Theme::light;
        }
        if (const auto scale = given_.find("--font-scale"); scale != given_.end()) {
            const auto percent = wholeNumber(scale->second);
            if (!percent || *percent < 100 || *percent > 200) return refuse("--font-scale", Text::tr("a whole number, 100 to 200"));
            portrait.fontScale = *percent;
        }
        if (const auto size = given_.find("--size"); size != given_.end()) {
            constexpr int least = 320, most = 8192;
            const std::size_t times = size->second.find('x');
            const bool parted = times != std::string_view::npos && times > 0 && times + 1 < size->second.size();
            const auto width = parted ? wholeNumber(size->second.substr(0, times)) : std::nullopt;
            const auto height = parted ? wholeNumber(size->second.substr(times + 1)) : std::nullopt;
            if (!width || !height || *width < least || *width > most || *height < least || *height > most)
                return refuse("--size", Text::tr("WIDTHxHEIGHT, each %1 to %2, such as 1440x900").arg(QString::number(least), QString::number(most)));
            portrait.width = *width;
            portrait.height = *height;
        }
        if (const auto language = given_.find("--lang"); language != given_.end()) {
            made_.language = text(language->second);
            if (!isSpoken(made_.language, languages_)) return refuse("--lang", Text::tr("%1, also with a country, such as de_AT").arg(languages_.join(QStringLiteral(", "))));
        }
        return true;
    }

    const QStringList& languages_;
    std::map<std::string_view, std::string_view> given_;
    std::vector<std::string_view> files_;
    CommandLine made_;
    std::optional<UsageError> error_;
};

}

std::variant<CommandLine, UsageError> parseCommandLine(std::span<const char* const> arguments, const QStringList& languages) { return Parser{languages}.parse(arguments); }

QString languageAskedFor(std::span<const char* const> arguments, const QStringList& languages)
{
    constexpr std::string_view joined = "--lang=";
    QString code;
    for (std::size_t i = 0; i < arguments.size() && std::string_view{arguments[i]} != "--"; ++i) {
        const std::string_view argument = arguments[i];
        if (argument.starts_with(joined)) code = text(argument.substr(joined.size()));
        else if (argument == "--lang" && i + 1 < arguments.size()) code = text(arguments[i + 1]);
    }
    return isSpoken(code, languages) ? code : QString{};
}

QString helpText()
{
    return Text::tr("Tierloam keeps the trays of every stack of worm bins moving through their turns.\n"
                    "\n"
                    "tierloam [FILE]                        opens the window on a household file (*.tierloam)\n"
                    "tierloam --demo                        opens a fresh copy of the demo household\n"
                    "tierloam FILE --import JOURNAL.csv     adds all rows of a journal, or none\n"
                    "tierloam FILE --record \"ROW\"           adds one row, prints its id once it is safe on disk\n"
                    "tierloam FILE --export JOURNAL.csv     writes the whole journal\n"
                    "tierloam FILE --summary [--at DATE]    estimates and advice as JSON\n"
                    "tierloam FILE --calendar OUT.ics [--at DATE]\n"
                    "                                       due list and rotation plan as iCalendar\n"
                    "tierloam FILE --report STACK --out OUT.pdf|OUT.html [--at DATE] [--lang de]\n"
                    "                                       the sheet of one stack\n"
                    "tierloam FILE --labels OUT.pdf [--at DATE] [--lang de]\n"
                    "                                       a label for each tray that stands\n"
                    "tierloam FILE --portrait DIR           draws each page to DIR/PAGE.png; also with --demo for FILE\n"
                    "    [--at DATE] [--theme light|dark] [--font-scale 100..200] [--size WxH] [--lang de]\n"
                    "tierloam --version, tierloam --help\n"
                    "\n"
                    "The columns of a journal: date,stack,action,slot,amount,unit,item,detail,note\n"
                    "FILE is created when --import or --record names one that is not there.\n"
                    "\n"
                    "Exit codes: 0 done; 1 the work failed (disk full; FILE absent, damaged, or in use for more than 5 s);\n"
                    "2 bad arguments or input, and nothing was changed.\n");
}

}
