#include "core/exchange/whole_file.h"

#include "core/exchange/text.h"
#include "core/store/opening.h"

#include <QFileInfo>
#include <QSaveFile>

#include <cerrno>
#include <unistd.h>

namespace tierloam::exchange {

std::optional<QString> writeWholeFile(const QString& path, std::string_view bytes)
{
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
