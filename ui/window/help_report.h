#pragma once

#include "core/household/household.h"

#include <QString>

namespace tierloam::window {

/// What somebody who wants help can hand on: versions, system, size and schema of the file, how many entries, and the last lines of the
/// log. No word of the journal, no name, no path.
QString helpReport(const QString& version, const household::Household* household);

}
