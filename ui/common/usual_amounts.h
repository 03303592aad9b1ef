#pragma once

#include "core/wording/usual_amounts.h"

/// Amounts that are proposed before anything is known: core/wording/usual_amounts.h, for the pages.
namespace tierloam::ui {

using wording::roundAmount;
using wording::roundDefaults;

}
