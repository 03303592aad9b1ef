#pragma once

#include <string>

namespace tierloam::household {

/// The linker's id of the running program in base 16: a change of the model has another without a new version. Empty where the linker gives none.
std::string thisBuild();

}
