#pragma once

#include "core/store/photo.h"

#include <QString>

#include <variant>

namespace tierloam::household {

inline constexpr int longestSide = 1600; ///< px

/// A picture file made ready to be kept: turned as its camera says, at most 1600 px on its long side, written anew as JPEG, so that nothing
/// but the picture is left of it: no place, no time, no camera, no thumbnail. Or why it cannot be used.
std::variant<store::Photo, QString> readPhoto(const QString& path);

}
