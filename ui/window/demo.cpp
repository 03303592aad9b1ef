#include "ui/window/demo.h"

#include "core/household/demo_copy.h"
#include "ui/window/one_window.h"

#include <QDateTime>
#include <QDir>
#include <QFile>
#include <QStandardPaths>
#include <QTemporaryDir>

namespace tierloam::window {

namespace {

const QString householdName = QStringLiteral("Millrace Cottage.tierloam");

QString demoFolder()
{
    return QStandardPaths::writableLocation(QStandardPaths::GenericDataLocation) % QStringLiteral("/tierloam/demo");
}

/// A copy that a window shows answers at its address; one that is just being made is younger than an hour.
void sweep(const QDir& folder)
{
    const QDateTime young = QDateTime::currentDateTimeUtc().addSecs(-3600);
    const auto copies = folder.entryInfoList(QDir::Dirs | QDir::NoDotAndDotDot);
    for (const QFileInfo& copy : copies) {
        if (copy.lastModified() > young || OneWindow::isTaken(copy.filePath() % u'/' % householdName)) continue;
        QDir{copy.filePath()}.removeRecursively();
    }
}

}

bool isDemo(const QString& path)
{
    return QFileInfo{path}.absoluteFilePath().startsWith(QDir::cleanPath(demoFolder()) % u'/');
}

Demo freshDemo(Day today)
{
    const QDir folder{demoFolder()};
    if (!folder.mkpath(QStringLiteral("."))) return {{}, QObject::tr("The folder %1 cannot be made.").arg(folder.path())};
    sweep(folder);
    QTemporaryDir own{folder.filePath(QStringLiteral("XXXXXX"))};
    if (!own.isValid()) return {{}, own.errorString()};
    QFile csv{QStringLiteral(":/demo/journal.csv")};
    if (!csv.open(QIODevice::ReadOnly)) return {{}, QObject::tr("This build holds no demo household.")};
    const QByteArray bytes = csv.readAll();
    const QString path = own.filePath(householdName);
    const auto why = household::makeDemoHousehold({bytes.constData(), static_cast<std::size_t>(bytes.size())}, path, today);
    if (why) return {{}, *why};
    own.setAutoRemove(false);
    return {path, {}};
}

}
