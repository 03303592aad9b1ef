#pragma once

#include <QString>
#include <QStringList>

namespace tierloam::forms {

/// Words of events that the program suggests, in the language of the locale; any other word may be written too.
QStringList suggestedEvents();
/// What is written into the journal for a word as typed: suggested ones in their fixed English form ("smell", "away"), others as they are.
QString eventWritten(const QString& typed);
/// What people read for a word of the journal.
QString eventShown(const QString& written);

}
