#pragma once

#include "core/wording/percent.h"

namespace tierloam::ui {

using wording::percentShown;

}
