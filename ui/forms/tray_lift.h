#pragma once

#include "core/guide/lifting.h"
#include "core/journal/standing.h"

#include <QString>

namespace tierloam::forms {

/// What the lifting equation says of lifting a tray out of a stack: the bottom one to the top, the others to the side.
struct TrayLiftWords {
    guide::LiftVerdict verdict;
    QString words;               ///< "At most 12 kg are advised for this lift: fine."
};

/// `kg` with its tray, at the upper end of what it may weigh. The slot stands.
TrayLiftWords trayLift(const journal::Standing& standing, int slot, double kg);

/// How far before the ankles this person's hands are while lifting; absent: taken from the size of the tray. The same for every lift the
/// program speaks of; the guided harvest asks for it and keeps it on this machine.
std::optional<Length> ownReach();
void setOwnReach(std::optional<Length> reach);

}
