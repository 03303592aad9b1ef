#include "core/exchange/whole_file.h"

#include "core/exchange/text.h"
#include "core/store/opening.h"

#include <QFileInfo>
#include <QSaveFile>

#include <cerrno>
#include <unistd.h>

namespace tierloam::exchange {

namespace {

/// As SQLite's file format says: a database begins with these 16 bytes.
bool isDatabase(const QString& path)
{
    QFile file{path};
    return file.open(QIODevice::ReadOnly) && file.read(16) == QByteArrayView{"SQLite format 3\0", 16};
}

}

std::optional<QString> writeWholeFile(const QString& path, std::string_view bytes)
{
    if (isDatabase(path)) return ExchangeText::tr("%1 is a household file or another database, and was left as it is. Choose another name.").arg(path);
    QSaveFile file{path};
    const auto size = static_cast<qint64>(bytes.size());
    const auto failed = [&] { return ExchangeText::tr("%1 could not be written: %2. What was there before is unchanged.").arg(path, file.errorString()); };
    if (!file.open(QIODevice::WriteOnly)) return failed();
    if (file.write(bytes.data(), size) != size) return failed();
    // QSaveFile itself ignores a failing sync.
    if (!file.flush()) return failed();
    if (::fsync(file.handle()) != 0 && errno != EINVAL) {
        const QString why = qt_error_string(errno);
        return ExchangeText::tr("%1 could not be written: %2. What was there before is unchanged.").arg(path, why);
    }
    if (!file.commit()) return failed();
    if (!store::syncFolderOf(QFileInfo{path}.absoluteFilePath())) return ExchangeText::tr("%1 was written, but the disk did not confirm it.").arg(path);
    return std::nullopt;
}

}
