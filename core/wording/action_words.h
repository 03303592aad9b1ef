#pragma once

#include "core/journal/action.h"

#include <QString>

#include <cstddef>

namespace tierloam::wording {

/// What was done, as the journal heads it: "Fed". By the action's place among the alternatives of journal::Action.
QString actionWord(std::size_t alternative);
inline QString actionWord(const journal::Action& action) { return actionWord(action.index()); }

}
