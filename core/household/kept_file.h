#pragma once

#include <QByteArray>
#include <QString>

#include <cstdint>
#include <string_view>

/// Files of derived data in the folder of the cache: written whole or not at all, for the owner's eyes alone. Failures are told by the value given back.
namespace tierloam::household {

/// The name under which what is derived from a household is kept: a hash of the place where its file lies.
QString keptName(const QString& householdPath);
/// 16 digits of base 16.
QString hex(std::uint64_t key);

enum class Sync { yes, no }; ///< whether the disk has to confirm it
bool keepIn(const QString& file, std::string_view bytes, Sync sync);
/// Empty when there is none, it cannot be read, or it is too large to be ours.
QByteArray keptIn(const QString& file);

}
