#pragma once

#include <QLatin1StringView>

/// Names of the household's settings in the file. They are part of the file format: never renamed, only added to.
namespace tierloam::store {

inline constexpr QLatin1StringView settingHouseholdName{"name"};
/// "south" turns the season by half a year; anything else, or none: north.
inline constexpr QLatin1StringView settingHemisphere{"hemisphere"};
inline constexpr QLatin1StringView hemisphereSouth{"south"};
/// Folder for backups, as an absolute path; none: beside the file.
inline constexpr QLatin1StringView settingBackupFolder{"backup_folder"};

}
