#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace tierloam::materials {

/// The name as it is compared: small letters (ASCII, Latin-1, Greek and Cyrillic; other letters as they are).
std::string folded(std::string_view name);

/// How many letters must be put in, left out, exchanged or swapped with their neighbour to make one text of the other.
/// Counted in UTF-8 characters, case as it is. Formula: optimal string alignment.
int editDistance(std::string_view a, std::string_view b);

/// Up to `most` of the names that someone who typed `typed` may have meant, nearest first: those with a word that begins like it,
/// then those a few slips of the finger away. Never empty unless there are no names: with nothing near, the least far.
std::vector<std::string> nearestNames(std::string_view typed, std::span<const std::string> names, std::size_t most);

}
