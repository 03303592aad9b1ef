#include "ui/window/help_report.h"

#include "core/log/log.h"

#include <QFileInfo>
#include <QGuiApplication>
#include <QLocale>
#include <QScreen>
#include <QSysInfo>
#include <QThread>

namespace tierloam::window {

namespace {

constexpr std::size_t linesOfLog = 60;

}

// Not translated: those who help read many of these.
QString helpReport(const QString& version, const household::Household* household)
{
    QStringList lines{QStringLiteral("Tierloam %1").arg(version), QStringLiteral("Qt %1, built with %2").arg(QString::fromLatin1(qVersion()), QStringLiteral(QT_VERSION_STR)),
                      QStringLiteral("System: %1, %2 %3, %4; processors: %5").arg(QSysInfo::prettyProductName(), QSysInfo::kernelType(), QSysInfo::kernelVersion(), QSysInfo::currentCpuArchitecture(),
                                                                                QString::number(QThread::idealThreadCount())),
                      QStringLiteral("Language: %1; platform: %2").arg(QLocale{}.name(), QGuiApplication::platformName())};
    if (const QScreen* screen = QGuiApplication::primaryScreen())
        lines << QStringLiteral("Screen: %1 x %2 at %3").arg(screen->size().width()).arg(screen->size().height()).arg(screen->devicePixelRatio());
    if (household) {
        const auto journal = household->journal();
        lines << QStringLiteral("Household: %1 bytes, schema %2, %3 entries, %4 stacks, read-only: %5")
                     .arg(QFileInfo{household->path()}.size()).arg(household->schema()).arg(journal->entries.size()).arg(journal->replay.stacks.size())
                     .arg(household->readOnly() ? QStringLiteral("yes") : QStringLiteral("no"));
    } else {
        lines << QStringLiteral("Household: none open");
    }
    lines << QStringLiteral("Last lines of the log:") << log::lastLines(linesOfLog);
    return lines.join(QLatin1Char{'\n'}) + QLatin1Char{'\n'};
}

}
