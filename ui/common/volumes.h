#pragma once

#include "core/wording/masses.h"
#include "core/wording/volumes.h"

namespace tierloam::ui {

using wording::OneMassUnit;
using wording::OneVolumeUnit;

}
