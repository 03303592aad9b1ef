#include "core/exchange/fault.h"

#include "core/exchange/text.h"

namespace tierloam::exchange {

QString columnText(Column column) { return toQString(columnNames[static_cast<std::size_t>(column)]); }

QString faultText(const QString& source, const Fault& fault)
{
    const QString place = source + QLatin1Char{':'} + QString::number(fault.line);
    const QString said = QStringLiteral("found «%1»; allowed: %2").arg(fault.found, fault.allowed); // never translated: scripts look for it
    if (fault.column.isEmpty()) return place + QStringLiteral(": ") + said;
    return place + QStringLiteral(": ") + fault.column + QStringLiteral(": ") + said;
}

}
