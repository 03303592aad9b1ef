#pragma once

#include "core/model/block.h"

namespace tierloam::model {

/// Advances 64 members by one step: temperature, softening, air, ingestion, energy, laying, death, moving between trays,
/// water and salts. Trays are given from slot 1 up. Closes the dry-matter ledger to rounding.
///
/// The order within a step is a Lie splitting of processes that are each second order and positive; a forward and a backward
/// step make a symmetric composition, so that a day of two steps is second order in its length. One thing lags: the bed's own heat
/// is that of the step that has just passed, a small term of first order.
using Step = void (*)(StackBlock& stack, TrayBlock* trays, const TrayShape* shapes, int trayCount, const ParameterBlock& parameters,
                      const MassClassTable& classes, const StepForcing& forcing);

void stepBase(StackBlock&, TrayBlock*, const TrayShape*, int, const ParameterBlock&, const MassClassTable&, const StepForcing&);
void stepAvx2(StackBlock&, TrayBlock*, const TrayShape*, int, const ParameterBlock&, const MassClassTable&, const StepForcing&);

/// The widest kernel that this processor runs; TIERLOAM_ISA=base forces the other. Both give the same bits.
Step chosenStep();
bool processorHasAvx2();

}
