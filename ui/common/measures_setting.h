#pragma once

#include "ui/common/formats.h"

namespace tierloam::ui {

/// What a setting says: "metric", "us", anything else for that of the computer's own locale.
Measures measuresOf(const QString& setting);

}
