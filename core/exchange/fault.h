#pragma once

#include "core/exchange/row.h"

#include <QString>

#include <cstddef>

namespace tierloam::exchange {

/// What is wrong with one row, for people: where, what was found, what would be allowed.
struct Fault {
    int line = 1;        ///< where the row starts; the header is 1
    QString column;      ///< its name; empty when the whole row is at fault
    QString found;       ///< shown(): fit for one line
    QString allowed;
};

/// At most so many are told of one file.
inline constexpr std::size_t mostFaults = 50;

QString columnText(Column column);

/// `SOURCE:LINE: COLUMN: found «X»; allowed: …`, the fixed form of the command line: the same in every language, but for what is allowed. The window
/// has its own words (reasonText of sheet_import.h).
QString faultText(const QString& source, const Fault& fault);

}
