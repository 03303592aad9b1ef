#include "core/household/kept_estimates.h"

#include "core/household/kept_file.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>

namespace tierloam::household {

namespace {

constexpr int filesKept = 30;

}

KeptEstimates::KeptEstimates(QString folder, const QString& householdPath, std::string program) : folder_{std::move(folder)}, program_{std::move(program)}
{
    if (!folder_.isEmpty()) file_ = QDir{folder_}.filePath(keptName(householdPath) + QStringLiteral(".estimates"));
}

std::shared_ptr<const reckoning::Reckoning> KeptEstimates::read(bool southern) const
{
    if (file_.isEmpty()) return nullptr;
    const QByteArray bytes = keptIn(file_);
    return reckoning::fromKept({bytes.constData(), static_cast<std::size_t>(bytes.size())}, {program_, southern});
}

void KeptEstimates::write(const reckoning::Reckoning& reckoning, bool southern) const
{
    if (file_.isEmpty() || !QDir{}.mkpath(folder_)) return;
    if (!keepIn(file_, reckoning::keptBytes(reckoning, {program_, southern}), Sync::yes)) return;
    const QFileInfoList all = QDir{folder_}.entryInfoList({QStringLiteral("*.estimates")}, QDir::Files, QDir::Time);
    for (qsizetype i = filesKept; i < all.size(); ++i) QFile::remove(all[i].filePath());
}

}
