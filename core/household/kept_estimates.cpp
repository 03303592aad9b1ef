#include "core/household/kept_estimates.h"

#include "core/journal/replay.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QSaveFile>

namespace tierloam::household {

namespace {

constexpr qint64 tooLarge = 256LL << 20; ///< bytes: no estimates of ours
constexpr int filesKept = 30;

}

KeptEstimates::KeptEstimates(QString folder, const QString& householdPath, std::string program) : folder_{std::move(folder)}, program_{std::move(program)}
{
    if (folder_.isEmpty()) return;
    const QFileInfo household{householdPath};
    const QString canonical = household.canonicalFilePath();
    const std::uint64_t key = journal::stackKey((canonical.isEmpty() ? household.absoluteFilePath() : canonical).toStdString());
    file_ = QDir{folder_}.filePath(QStringLiteral("%1.estimates").arg(static_cast<qulonglong>(key), 16, 16, QLatin1Char{'0'}));
}

std::shared_ptr<const reckoning::Reckoning> KeptEstimates::read(bool southern) const
{
    QFile file{file_};
    if (file_.isEmpty() || !file.open(QIODevice::ReadOnly) || file.size() > tooLarge) return nullptr;
    const QByteArray bytes = file.readAll();
    return reckoning::fromKept({bytes.constData(), static_cast<std::size_t>(bytes.size())}, {program_, southern});
}

void KeptEstimates::write(const reckoning::Reckoning& reckoning, bool southern) const
{
    if (file_.isEmpty() || !QDir{}.mkpath(folder_)) return;
    const std::string bytes = reckoning::keptBytes(reckoning, {program_, southern});
    QSaveFile file{file_};
    if (!file.open(QIODevice::WriteOnly)) return;
    file.setPermissions(QFileDevice::ReadOwner | QFileDevice::WriteOwner); // they say what a household keeps
    if (file.write(bytes.data(), static_cast<qint64>(bytes.size())) != static_cast<qint64>(bytes.size()) || !file.commit()) return;
    const QFileInfoList all = QDir{folder_}.entryInfoList({QStringLiteral("*.estimates")}, QDir::Files, QDir::Time);
    for (qsizetype i = filesKept; i < all.size(); ++i) QFile::remove(all[i].filePath());
}

}
