#include "core/household/kept_file.h"

#include "core/journal/replay.h"

#include <QFile>
#include <QFileInfo>
#include <QSaveFile>

#include <cstdio>

namespace tierloam::household {

namespace {

constexpr qint64 tooLarge = 256LL << 20; ///< bytes
constexpr QFileDevice::Permissions ownerAlone = QFileDevice::ReadOwner | QFileDevice::WriteOwner; ///< they say what a household keeps

bool writeAll(QFileDevice& file, std::string_view bytes)
{
    if (!file.open(QIODevice::WriteOnly)) return false;
    file.setPermissions(ownerAlone);
    return file.write(bytes.data(), static_cast<qint64>(bytes.size())) == static_cast<qint64>(bytes.size());
}

}

QString hex(std::uint64_t key) { return QStringLiteral("%1").arg(static_cast<qulonglong>(key), 16, 16, QLatin1Char{'0'}); }

QString keptName(const QString& householdPath)
{
    const QFileInfo household{householdPath};
    const QString canonical = household.canonicalFilePath();
    return hex(journal::stackKey((canonical.isEmpty() ? household.absoluteFilePath() : canonical).toStdString()));
}

bool keepIn(const QString& file, std::string_view bytes, Sync sync)
{
    if (sync == Sync::yes) {
        QSaveFile whole{file};
        return writeAll(whole, bytes) && whole.commit();
    }
    QFile beside{file + QStringLiteral(".new")};
    const bool written = writeAll(beside, bytes) && beside.flush();
    beside.close();
    if (written && beside.error() == QFileDevice::NoError && std::rename(QFile::encodeName(beside.fileName()).constData(), QFile::encodeName(file).constData()) == 0) return true;
    beside.remove();
    return false;
}

QByteArray keptIn(const QString& file)
{
    QFile from{file};
    if (!from.open(QIODevice::ReadOnly) || from.size() > tooLarge) return {};
    return from.readAll();
}

}
