#include "core/journal/action.h"

namespace tierloam::journal {

std::string_view actionName(const Action& action) { return actionNames[action.index()]; }

}
