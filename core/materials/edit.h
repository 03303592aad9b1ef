#pragma once

#include "core/journal/edit.h"

namespace tierloam::materials {

/// As journal::applyEdit, and refused (itemUnknown) too when an entry of the edit names a material or species that is not known, or when
/// the edit takes away an own material that other entries still name.
journal::EditEffect applyEdit(const journal::Entries& before, const journal::Edit& edit);

}
