#pragma once

#include "core/model/block.h"

#include <cstdint>

namespace tierloam::model {

/// What a random number is for; the numbers of one use never depend on another.
enum class Use : int { parameter = 0, noise = 1, dryShare = 3, volumeTyped, resample, jitter, unwritten, drift, look, loss, slip };

/// Key of one stream of numbers: (stack key, day since the first bedding, use, running number within the use and day).
std::uint64_t streamOf(std::uint64_t stackKey, int day, Use use, int number = 0);

/// Uniform in (0, 1) of one member of a stream. SplitMix64's finaliser (Steele, Lea & Flood 2014) over a counter.
double uniform(std::uint64_t stream, int member);

/// Standard normals of the 64 members of block `index`, by Box and Muller 1958, whole blocks at a time.
void standardNormals(std::uint64_t stream, int index, Members& out);
double standardNormal(std::uint64_t stream, int member);

}
