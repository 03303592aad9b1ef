#pragma once

#include "core/advice/advice.h"

#include <QString>

namespace tierloam::window {

/// Names a line of the due list: the same one after a rebuild, with other figures. A code can stand several times for one stack: once a tray, once
/// an odd entry, of what is missing in the record, of what is to be looked at.
QString lineKey(const advice::Advice& advice);

}
