#pragma once

#include "core/household/usual.h"

namespace tierloam::household {

using reckoning::usualOfAll;

}
