#pragma once

#include <QString>

#include <optional>
#include <string_view>

namespace tierloam::exchange {

/// Puts the bytes in the place of what was there, in one step and synced to the disk. Why not, as a sentence; what was there before then stays.
/// A household file, or any other database, is never written over.
std::optional<QString> writeWholeFile(const QString& path, std::string_view bytes);

}
