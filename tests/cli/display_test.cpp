#include "program.h"

#include <QStandardPaths>

// Import, record, export and summary start no QGuiApplication and touch no display: seen from outside, by the files they open.
namespace tierloam::cli {

using testing::HasSubstr;
using testing::Not;

class Display : public Program {
protected:
    std::string filesOpenedBy(const QStringList& arguments) const
    {
        const QString strace = QStandardPaths::findExecutable(QStringLiteral("strace"));
        EXPECT_FALSE(strace.isEmpty()) << "install strace: tests/packages.txt";
        const QStringList before{QStringLiteral("-f"), QStringLiteral("-o"), QStringLiteral("trace"), QStringLiteral("-e"), QStringLiteral("trace=openat,connect"),
                                 QStringLiteral(TIERLOAM_PROGRAM)};
        QProcessEnvironment environment = bareEnvironment();
        environment.insert(QStringLiteral("DISPLAY"), QStringLiteral(":77")); // named, so that whoever looks for a display is seen to
        EXPECT_EQ(runCommand(strace, before + arguments, folder().path(), environment).code, 0);
        return read("trace");
    }
};

TEST_F(Display, IsNotTouchedByTheCallsOfTheCore)
{
    write("j.csv", header + begun);
    const QString file = QStringLiteral("h.tierloam");
    const std::vector<QStringList> calls{{file, QStringLiteral("--import"), QStringLiteral("j.csv")},
                                         {file, QStringLiteral("--record"), QStringLiteral("2031-01-03,Mill,note,,,,,,x")},
                                         {file, QStringLiteral("--export"), QStringLiteral("o.csv")},
                                         {file, QStringLiteral("--summary"), QStringLiteral("--at"), QStringLiteral("2031-02-01")},
                                         {QStringLiteral("--version")},
                                         {QStringLiteral("--help")}};
    for (const QStringList& call : calls) {
        const std::string opened = filesOpenedBy(call);
        EXPECT_THAT(opened, HasSubstr("libQt6Core")) << "the trace sees what is opened";
        for (const char* sign : {"/platforms/", "X11-unix", "fonts.conf", "/platformthemes/", "wayland-0"}) EXPECT_THAT(opened, Not(HasSubstr(sign))) << call.join(QLatin1Char{' '}).toStdString();
    }
}

}
