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
/// Wishes for the year's harvests, as core/planning/wish_text.h writes them.
inline constexpr QLatin1StringView settingYearWishes{"year_wishes"};
/// What the kitchen gives in a week, kg fresh with a decimal point; none: as learned from the journal.
inline constexpr QLatin1StringView settingSupply{"kitchen_supply"};
/// Names of stacks in the order in which they stand on the shelf, a line each; those not named come after, in the order of their set-up.
inline constexpr QLatin1StringView settingStackOrder{"stack_order"};
/// Advice that was put off: a line each, "UNTIL CODE STACK".
inline constexpr QLatin1StringView settingPutOff{"due_put_off"};
/// Day on which a look was advised last, per stack: a line each, "DAY STACK".
inline constexpr QLatin1StringView settingLooks{"looks_advised"};

}
