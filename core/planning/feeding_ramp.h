#pragma once

#include "core/reckoning/outlook.h"

#include <vector>

/// Amounts of food that follow a colony as it grows.
namespace tierloam::planning {

/// kg fresh a week from tomorrow on: what can be borne follows the colony, which is what eats it. Every four weeks a step of a tenth or more as the colony of
/// `outlook` has grown since `colonyNow` kg, `start` being borne by that, within `most`.
std::vector<reckoning::ChangedPlan::FeedFrom> rampOf(const reckoning::Outlook& outlook, Day tomorrow, double colonyNow, double start, double most);

/// Share of the members that are short of air within the first fortnight.
double shortOfAir(const reckoning::Outlook& outlook);
/// At most 5 % of the members are, as the feeding plan asks; later the medians are not.
bool hasAir(const reckoning::Outlook& outlook);
inline constexpr double mostShortOfAir = 0.05; ///< of the members

}
