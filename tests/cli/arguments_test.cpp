#include "program.h"

#include <QRegularExpression>

namespace tierloam::cli {

using testing::HasSubstr;
using testing::IsEmpty;
using testing::StartsWith;

class Arguments : public Program {};

TEST_F(Arguments, VersionAndHelp)
{
    const Answer version = run({QStringLiteral("--version")});
    EXPECT_EQ(version.code, 0);
    EXPECT_THAT(version.out, testing::MatchesRegex("tierloam [0-9]+\\.[0-9]+\\.[0-9]+\n"));
    EXPECT_THAT(version.err, IsEmpty());

    const Answer help = run({QStringLiteral("--help")});
    EXPECT_EQ(help.code, 0);
    EXPECT_THAT(help.err, IsEmpty());
    for (const char* call : {"--import", "--record", "--export", "--summary", "--at", "--portrait", "--theme", "--font-scale", "--size", "--lang", "--demo", "--version", "--report", "--out", "--labels"})
        EXPECT_THAT(help.out, HasSubstr(call));
}

struct Wrong {
    QStringList arguments;
    const char* said;
};

void PrintTo(const Wrong& wrong, std::ostream* out) { *out << wrong.arguments.join(QLatin1Char{' '}).toStdString(); }

class WrongArguments : public Program, public testing::WithParamInterface<Wrong> {};

TEST_P(WrongArguments, EndWithTwoSayWhyAndLeaveNothing)
{
    write("j.csv", header + begun);
    const Answer answer = run(GetParam().arguments);
    EXPECT_EQ(answer.code, 2);
    EXPECT_THAT(answer.out, IsEmpty());
    EXPECT_THAT(answer.err, StartsWith("tierloam: "));
    EXPECT_THAT(answer.err, HasSubstr(GetParam().said));
    EXPECT_EQ(names(), QStringList{QStringLiteral("j.csv")});
}

Wrong wrong(const char* arguments, const char* said) { return {QString::fromUtf8(arguments).split(QLatin1Char{' '}), said}; }

INSTANTIATE_TEST_SUITE_P(
    Calls, WrongArguments,
    testing::Values(wrong("--frobnicate", "unknown option --frobnicate"), wrong("-h", "unknown option -h"), wrong("h.tierloam --calendar", "--calendar needs a value"),
                    wrong("h.tierloam --report Mill", "--report needs --out"), wrong("h.tierloam --report Mill --out x.doc", "ends in .pdf or .html"),
                    wrong("h.tierloam --out x.pdf --summary", "--out goes only with --report"), wrong("h.tierloam --labels x.html", "ends in .pdf"),
                    wrong("--report Mill --out x.pdf", "the call needs a FILE"), wrong("h.tierloam --report Mill --out x.pdf --theme dark", "--theme goes only with --portrait"),
                    wrong("h.tierloam --export x.csv --lang en", "--lang goes only with"), wrong("h.tierloam --import", "--import needs a value"),
                    wrong("h.tierloam --record --summary", "--record needs a value"), wrong("--import j.csv", "needs a FILE"), wrong("--summary", "needs a FILE"), wrong("--record x", "needs a FILE"),
                    wrong("--export o.csv", "needs a FILE"), wrong("--portrait pages", "needs a FILE"), wrong("a b --summary", "only one FILE"),
                    wrong("h.tierloam --import j.csv --export o.csv", "cannot be asked for at once"), wrong("h.tierloam --import j.csv --import j.csv", "given twice"),
                    wrong("h.tierloam --import j.csv --at 2031-01-01", "--at goes only with"), wrong("h.tierloam --at 2031-01-01", "--at goes only with"),
                    wrong("h.tierloam --summary --theme dark", "--theme goes only with --portrait"), wrong("h.tierloam --summary=yes", "takes no value"),
                    wrong("h.tierloam --summary --at 2031-02-29", "--at: found «2031-02-29»; allowed: a date from 1900 to 2199"), wrong("h.tierloam --summary --at tomorrow", "--at: "),
                    wrong("h.tierloam --summary --at 2031-01-01T10:00", "--at: "), wrong("h.tierloam --portrait pages --theme blue", "--theme: found «blue»; allowed: light, dark"),
                    wrong("h.tierloam --portrait pages --font-scale 90", "--font-scale: found «90»; allowed: a whole number, 100 to 200"),
                    wrong("h.tierloam --portrait pages --font-scale 150%", "--font-scale: "), wrong("h.tierloam --portrait pages --size 1440", "--size: found «1440»"),
                    wrong("h.tierloam --portrait pages --size 1440x", "--size: "), wrong("h.tierloam --portrait pages --size 10x10", "--size: "), wrong("h.tierloam --portrait pages --lang 7", "--lang: "),
                    wrong("h.tierloam --portrait pages --lang german", "--lang: found «german»; allowed: de, en, es, fr"), wrong("h.tierloam --portrait pages --lang de_XX", "--lang: "),
                    wrong("h.tierloam --labels x.pdf --lang it", "--lang: found «it»; allowed: "), wrong("h.tierloam --labels x.pdf --lang DE", "--lang: "),
                    wrong("--demo h.tierloam", "no FILE can be named"), wrong("--demo --summary", "--demo goes only with"), Wrong{{QStringLiteral("")}, "the name of FILE is empty"}));

// Words for people, so in their language; what programs read is the same in each (--version here, rows and JSON elsewhere).
TEST_F(Arguments, HelpAndFaultsAreToldInTheLanguageThatIsAskedForOrThatOfTheSystem)
{
    const char *const german = "--import und --export können nicht zugleich verlangt werden", *const hint = "tierloam --help nennt die Aufrufe";
    const QStringList both{QStringLiteral("h.tierloam"), QStringLiteral("--import"), QStringLiteral("j.csv"), QStringLiteral("--export"), QStringLiteral("o.csv")};
    QProcessEnvironment environment = bareEnvironment();
    const auto said = [&](const QStringList& arguments) { return runCommand(QStringLiteral(TIERLOAM_PROGRAM), arguments, folder().path(), environment); };
    for (const QStringList& way : {QStringList{QStringLiteral("--lang"), QStringLiteral("de")}, QStringList{QStringLiteral("--lang=de_AT")}}) {
        const Answer wrong = said(way + both);
        EXPECT_EQ(wrong.code, 2);
        EXPECT_THAT(wrong.err, HasSubstr(german));
        EXPECT_THAT(wrong.err, HasSubstr(hint));
        EXPECT_THAT(said(way + QStringList{QStringLiteral("--frobnicate")}).err, HasSubstr(hint));
        const Answer help = said(way + QStringList{QStringLiteral("--help")});
        EXPECT_EQ(help.code, 0);
        EXPECT_THAT(help.out, HasSubstr("öffnet"));
        EXPECT_THAT(help.out, HasSubstr("--import JOURNAL.csv"));
    }
    EXPECT_THAT(said({QStringLiteral("--lang"), QStringLiteral("german"), QStringLiteral("--help")}).out, HasSubstr("opens the window"));
    environment.insert(QStringLiteral("LANGUAGE"), QStringLiteral("de"));
    EXPECT_THAT(said(both).err, HasSubstr(german));
    EXPECT_THAT(said({QStringLiteral("--help")}).out, HasSubstr("öffnet"));
    EXPECT_THAT(said({QStringLiteral("--version")}).out, StartsWith("tierloam "));
    EXPECT_THAT(said(QStringList{QStringLiteral("--lang"), QStringLiteral("en")} + both).err, HasSubstr("cannot be asked for at once"));
}

#ifndef TIERLOAM_UI
TEST_F(Arguments, WithoutUiTheWindowAndThePagesAreRefusedWithOne)
{
    for (const char* call : {"h.tierloam", "--demo", "h.tierloam --portrait pages", "h.tierloam --report Mill --out x.pdf", "h.tierloam --labels x.pdf", ""}) {
        const QStringList arguments = QString::fromUtf8(call).split(QLatin1Char{' '}, Qt::SkipEmptyParts);
        const Answer answer = run(arguments);
        EXPECT_EQ(answer.code, 1) << call;
        EXPECT_THAT(answer.err, HasSubstr("this build has no window"));
    }
    EXPECT_THAT(names(), IsEmpty());
}
#endif

TEST_F(Arguments, NamesMayHoldAnyCharacterAndBeginWithADash)
{
    write("j.csv", header + begun);
    const QString name = QString::fromUtf8("M\xC3\xBC" "hle = 1; %1 %n.tierloam");
    EXPECT_EQ(import(name, QStringLiteral("j.csv")).out, "imported 3 entries\n");
    EXPECT_EQ(run({QStringLiteral("--import=j.csv"), QStringLiteral("--"), QStringLiteral("-dash.tierloam")}).out, "imported 3 entries\n");
    EXPECT_TRUE(QFile::exists(path("-dash.tierloam")));
    const Answer absent = import(name, QString::fromUtf8("%1 %n \xC3\xA4.csv"));
    EXPECT_EQ(absent.code, 2);
    EXPECT_THAT(absent.err, HasSubstr("%1 %n \xC3\xA4.csv cannot be read"));
}

TEST_F(Arguments, AnotherLocaleChangesNeitherNamesNorRows)
{
    QProcessEnvironment environment = bareEnvironment();
    environment.insert(QStringLiteral("LC_ALL"), QStringLiteral("C"));
    const QString name = QString::fromUtf8("M\xC3\xBC" "hle.tierloam");
    Answer answer = runCommand(QStringLiteral(TIERLOAM_PROGRAM), {name, QStringLiteral("--record"), QString::fromUtf8("2031-01-01,M\xC3\xBChle,setup,,,,,,\xE2\x80\xA6")},
                               folder().path(), environment);
    EXPECT_EQ(answer.code, 0);
    EXPECT_EQ(answer.err, "") << "and nothing is said about the locale";
    EXPECT_THAT(exported(name), HasSubstr("2031-01-01,M\xC3\xBChle,setup"));
}

}
