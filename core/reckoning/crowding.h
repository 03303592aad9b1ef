#pragma once

#include "core/quantity/measures.h"

namespace tierloam::reckoning {

/// Worms, kg, beyond which a colony is crowded in trays of that area however the model takes crowding: the upper end of the 90 % range of the density
/// that halves the greatest mass of a worm (model::Parameter::crowdingGrowth, kg LW/m²; its sources stand in the model's table). More can be put
/// in; a slip of the pen is likelier.
Mass mostWorms(Area area);

}
