#pragma once

#include "core/advice/advice.h"

#include <QString>

namespace tierloam::window {

/// Names a line of the due list: the same one after a rebuild, with other figures. Of the record a stack can have two.
QString lineKey(const advice::Advice& advice);

}
