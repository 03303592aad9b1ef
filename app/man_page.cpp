// Writes the manual page from the text of --help, so that the two cannot drift apart:  tierloam-man DAY >tierloam.1
#include "app/command_line.h"

#include <QStringList>

#include <cstdio>

namespace {

/// As plain text of troff: minus signs stay minus signs, and no line becomes a command.
QString plain(QString text)
{
    text.replace(QLatin1Char('\\'), QStringLiteral("\\e")).replace(QLatin1Char('-'), QStringLiteral("\\-"));
    if (text.startsWith(QLatin1Char('.')) || text.startsWith(QLatin1Char('\''))) text.prepend(QStringLiteral("\\&"));
    return text;
}

struct Call {
    QString words, does;
};

}

int main(int argc, char** argv)
{
    const QStringList lines = tierloam::app::helpText().trimmed().split(QLatin1Char('\n'));
    QString about;
    QList<Call> calls;
    QStringList rest;
    for (const QString& line : lines) {
        const QString words = line.trimmed();
        if (about.isEmpty()) {
            about = words;
        } else if (line.startsWith(QStringLiteral("tierloam "))) {
            // What it does stands beside the call, after two blanks or more, or in the lines under it.
            const qsizetype gap = line.indexOf(QStringLiteral("  "));
            calls.append({line.left(gap).trimmed(), gap < 0 ? QString{} : line.mid(gap).trimmed()});
        } else if (line.startsWith(QLatin1Char(' ')) && !calls.isEmpty() && rest.isEmpty()) {
            QString& into = words.startsWith(QLatin1Char('[')) ? calls.back().words : calls.back().does;
            into += (into.isEmpty() ? QString{} : QStringLiteral(" ")) + words;
        } else if (!words.isEmpty() || !rest.isEmpty()) {
            rest << words;
        }
    }

    QString page = QStringLiteral(".TH TIERLOAM 1 \"%1\" \"Tierloam %2\" \"User Commands\"\n.SH NAME\ntierloam \\- journal and estimates for stacked\\-tray worm bins\n.SH SYNOPSIS\n")
                       .arg(plain(QString::fromUtf8(argc > 1 ? argv[1] : "")), QStringLiteral(TIERLOAM_VERSION));
    for (const Call& call : calls) page += plain(call.words) + QStringLiteral("\n.br\n");
    page += QStringLiteral(".SH DESCRIPTION\n") + plain(about) + QStringLiteral("\n");
    for (const Call& call : calls) {
        if (!call.does.isEmpty()) page += QStringLiteral(".TP\n\\fB") + plain(call.words) + QStringLiteral("\\fR\n") + plain(call.does) + QStringLiteral("\n");
    }
    page += QStringLiteral(".SH NOTES\n");
    for (const QString& line : rest) page += line.isEmpty() ? QStringLiteral(".PP\n") : plain(line) + QStringLiteral("\n");
    const QByteArray bytes = page.toUtf8();
    return std::fwrite(bytes.constData(), 1, static_cast<std::size_t>(bytes.size()), stdout) == static_cast<std::size_t>(bytes.size()) && std::fflush(stdout) == 0 ? 0 : 1;
}
