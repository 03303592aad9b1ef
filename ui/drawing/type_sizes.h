#pragma once

/// The three sizes of the one typeface, as shares of the body's: what is painted (type.h) and what the style sheet sets (ui/common/theme.h) have the same.
namespace tierloam::drawing {

inline constexpr double titleSize = 1.35, smallSize = 0.9;

}
