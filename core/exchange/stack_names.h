#pragma once

#include <optional>
#include <string>
#include <vector>

namespace tierloam::exchange {

/// Which of the stacks a name typed on the command line means: the one of exactly that name, else the only one whose name is the same but for upper
/// and lower case. nullopt when there is none, or more than one.
std::optional<std::string> stackMeant(const std::string& typed, const std::vector<std::string>& known);

}
