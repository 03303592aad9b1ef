#pragma once

#include "core/wording/volumes.h"

namespace tierloam::ui {

using wording::OneVolumeUnit;

}
