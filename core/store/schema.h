#pragma once

#include <QString>

#include <cstdint>
#include <span>
#include <vector>

/// The tables of a household file, as numbered steps. A released step is never changed: a later step follows it.
namespace tierloam::store {

/// PRAGMA application_id of a household file: "tier" read as a big-endian number.
inline constexpr std::int32_t applicationId = 0x74696572;

/// The statements that bring a file from schema n to n + 1, where n is the index; each step is one transaction that also sets user_version.
std::span<const std::vector<QString>> schemaSteps();

/// The schema of this release.
int newestSchema();

}
