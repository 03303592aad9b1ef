#pragma once

#include "core/reckoning/population.h"

namespace tierloam::reckoning {

/// What each member expects.
std::vector<Expectation> expectations(const Population& members, const Look& look, Crew& crew);

/// What the members together expect to be read, the noise of reading included: 5, 50 and 95 %. `number` counts the values of the day.
/// Draws are keyed by stack, day and number, so that the same journal gives the same band.
Band expectedReading(std::span<const Expectation> expected, Weights weights, std::uint64_t stackKey, int day, int number);

}
