#pragma once

#include "core/model/ensemble.h"

#include <span>
#include <vector>

/// Members of an ensemble as a filter sees them: things that are copied, dropped and moved a little, whatever they mean.
namespace tierloam::model {

/// Member i becomes a copy of what member `ancestors[i]` was: parameters, colony, trays, noise. Sizes agree.
void inherit(Ensemble& ensemble, std::span<const int> ancestors);

/// Standings in the prior of all members, row by row: z[r·members + i].
std::vector<double> standings(const Ensemble& ensemble);
/// Sets them, and the values of the parameters with them.
void setStandings(Ensemble& ensemble, std::span<const double> z);

}
