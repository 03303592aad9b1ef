#pragma once

#include "core/quantity/measures.h"
#include "core/store/household_file.h"

#include <QByteArray>
#include <QString>

#include <variant>

/// The household that people look at before they have their own.
namespace tierloam::household::demo {

/// The journal that is compiled in.
QByteArray journal();

/// Makes a fresh copy of the demo household in a folder of its own under XDG_DATA_HOME and returns its path. Its dates are shifted by whole
/// weeks, so that it ends in the seven days up to today. Only this user can read it. Copies of programs that no longer run are removed.
std::variant<QString, store::OpenFailure> makeCopy(Day today, const QByteArray& journalCsv = journal());

/// Whether a file is such a copy: those are never remembered as the last one.
bool isCopy(const QString& path);

}
