#include "core/exchange/journal_csv.h"

#include "core/exchange/csv.h"
#include "core/exchange/spreadsheet_safe.h"
#include "core/exchange/text.h"
#include "core/store/opening.h"

#include <QFileInfo>
#include <QSaveFile>

#include <unistd.h>

#include <cerrno>
#include <unordered_set>

namespace tierloam::exchange {

std::string writeJournal(const journal::Entries& entries)
{
    std::string csv;
    csv::writeRecord(csv, {columnNames.begin(), columnNames.end()});
    std::unordered_set<std::string> setUp;
    for (const journal::Entry& entry : entries) {
        Row row = entryToRow(entry);
        if (const auto* setup = std::get_if<journal::Setup>(&entry.action); setup && setUp.insert(entry.stack).second && !setup->key) {
            journal::Setup keyed = *setup;
            keyed.key = journal::stackKey(entry.stack);
            row[Column::detail] = detailText(keyed);
        }
        for (const Column free : {Column::stack, Column::item, Column::detail, Column::note}) row[free] = spreadsheetSafe(row[free]);
        csv::writeRecord(csv, {row.cells.begin(), row.cells.end()});
    }
    return csv;
}

std::optional<QString> exportJournal(const QString& path, const journal::Entries& entries)
{
    const std::string csv = writeJournal(entries);
    QSaveFile file{path};
    const auto failed = [&] { return ExchangeText::tr("%1 could not be written: %2. What was there before is unchanged.").arg(path, file.errorString()); };
    if (!file.open(QIODevice::WriteOnly)) return failed();
    if (file.write(csv.data(), static_cast<qint64>(csv.size())) != static_cast<qint64>(csv.size())) return failed();
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
