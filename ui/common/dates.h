#pragma once

#include "core/wording/dates.h"

namespace tierloam::ui {

using namespace wording;

}
