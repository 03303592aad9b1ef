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

/// Process noise of one day on block `index`, from two streams of random numbers (random.h).
using Noise = void (*)(StackBlock& stack, unsigned long long ofWarmth, unsigned long long ofSoftening, int index, bool firstDay);

/// Standard normals of the 64 members of block `index` of one stream.
using Normals = void (*)(unsigned long long stream, int index, Members& out);

/// What is compiled for one instruction set.
struct Kernels {
    Step step;
    Noise noise;
    Normals normals;
};

Kernels baseKernels();
Kernels avx2Kernels();

/// The widest kernels that this processor runs; TIERLOAM_ISA=base forces the others. Both give the same bits.
const Kernels& chosenKernels();
bool processorHasAvx2();

}
