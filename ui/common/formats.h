#pragma once

#include "core/wording/formats.h"
#include "ui/common/dates.h"

/// Numbers and days in words (core/wording), and what else the window makes of them.
namespace tierloam::ui {

/// A text of core with its percentages, ratios and values held to their units, so that no line begins with a lone "%" or "L".
QString unbroken(QString text);
/// "0.07 : 1"; 999 and above, where there is nothing to divide by, "no castings yet".
QString ratioText(double feedToCast);
/// "0.07 : 1 (0.04–0.11)".
QString ratioBand(const reckoning::Band& feedToCast);

}
