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

/// The state as a filter moves it, row by row like the standings: noise of temperature (K) and of log softening, then logarithms of what the
/// stack holds: the colony, and of each tray what is not softened, what is, castings and water.
std::vector<double> stateLogs(const Ensemble& ensemble);
inline int stateRows(const Ensemble& ensemble) { return 3 + 4 * ensemble.trays(); }
/// Sets them. What a member gains or loses by it is booked as put in, in every ledger: another past, not matter out of nothing.
void setStateLogs(Ensemble& ensemble, std::span<const double> logs);

}
