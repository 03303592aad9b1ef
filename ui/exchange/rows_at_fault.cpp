#include "ui/exchange/rows_at_fault.h"

#include "core/exchange/whole_file.h"
#include "ui/common/seams.h"

#include <QCoreApplication>
#include <QDir>
#include <QFileInfo>

namespace tierloam::exchange_view {

namespace {

class RowsAtFault {
    Q_DECLARE_TR_FUNCTIONS(RowsAtFault)
};

}

QString saveRowsAtFault(QWidget* asker, ui::Dialogs& dialogs, const QString& source, std::string_view rows)
{
    const QFileInfo file{source};
    const QString proposed = file.absolutePath() % QLatin1Char{'/'} % RowsAtFault::tr("%1 rows at fault").arg(file.completeBaseName()) % QStringLiteral(".csv");
    const QString target = dialogs.fileToSave(asker, RowsAtFault::tr("Save the rows at fault"), proposed, RowsAtFault::tr("Tables (*.csv)"), QStringLiteral("csv"));
    if (target.isEmpty()) return {};
    if (const auto why = exchange::writeWholeFile(target, rows)) return *why;
    return RowsAtFault::tr("The rows at fault were written to %1.").arg(QDir::toNativeSeparators(target));
}

}
