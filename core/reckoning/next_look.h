#pragma once

#include "core/reckoning/outlook.h"

#include <optional>
#include <vector>

namespace tierloam::reckoning {

inline constexpr int lookAgainAfter = 7;    ///< days after any look: one is advised once a week at most
inline constexpr int lookMonthly = 28;      ///< days without any look after which a telling one is worth a word

/// Looks that could be taken, the most telling for the minute first: by how much each is expected to cut the variance of the logarithm of
/// the days until the bottom tray is ready. Squared correlation with what would be read, the noise of reading included.
std::vector<LookChoice> nextLooks(const Present& present);

/// The depth of castings in the tray being fed, and what it would tell of when that tray is filled. nullopt where none is fed.
std::optional<LookChoice> turnLook(const Present& present);

/// By how much that look is expected to cut the variance of the logarithm of some days to go, one number a member. 0…1.
double cutOf(const Look& look, const Present& present, const std::vector<double>& logDays);
/// Minutes of work of a look. Judgement.
double minutesOf(LookKind kind);
/// The look as it would be weighed, its value left open.
Look openLook(LookKind kind, int slot, const Present& present);
/// ln(1 + days until ready) of each member, 0 when it is ready, one day beyond the horizon when it never is.
std::vector<double> logDaysToReady(const Present& present);

/// The same of any first days, as `FirstDays` holds them.
std::vector<double> logDaysTo(const std::vector<int>& first, int today);

/// What to do with the bits that one will find in the bottom tray; nullopt when no share of bits would settle it.
std::optional<BitsRule> bitsRule(const Present& present);

}
