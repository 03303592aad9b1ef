#pragma once

#include "core/journal/action.h"
#include "core/journal/standing.h"

#include <QString>

namespace tierloam::forms {

/// Words where a drain or a flush gives more than can have stood in the sump of that day, measured as drains are (15 % and 0.1 L); empty where it does not.
QString drainDoubtText(const journal::Action& action, const journal::Standing& standing);

}
