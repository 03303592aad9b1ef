#pragma once

#include "core/model/ensemble.h"

#include <span>
#include <vector>

/// Members of an ensemble as a filter sees them: things that are copied, dropped and moved a little, whatever they mean.
namespace tierloam::model {

/// Member i becomes a copy of what member `ancestors[i]` was: parameters, colony, trays, noise. Sizes agree.
void inherit(Ensemble& ensemble, std::span<const int> ancestors);

/// What a filter moves, row by row: rows[r·members + i]. The standings of the parameters in their prior, noise of temperature (K) and of log
/// softening, then logarithms of what the stack holds: the colony, and of each tray what is not softened, what is, castings and water.
inline int movedRows(const Ensemble& ensemble) { return parameterCount + 3 + 4 * ensemble.trays(); }
/// Reads block `index`'s part of all rows. Blocks know nothing of each other, so that threads may share them out.
void readMoved(const Ensemble& ensemble, int index, std::span<double> rows);
/// Sets a block's members to their part of the rows, and the values of the parameters with them. What a member gains or loses by it is booked as
/// put in, in every ledger: another past, not matter out of nothing.
void setMoved(Ensemble& ensemble, int index, std::span<const double> rows);

}
