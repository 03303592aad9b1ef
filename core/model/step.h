#pragma once

#include "core/model/block.h"

namespace tierloam::model {

/// Advances 64 members by a pair of steps: temperature, softening, air, ingestion, energy, laying, death, moving between trays,
/// water and salts, and then the same backwards. Trays are given from slot 1 up. Closes every ledger to rounding.
///
/// The order within a step is a Lie splitting of positive processes; a forward and a backward step make a symmetric composition, so that
/// pools of matter are of second order in the length of a step. What softens is eaten, and what is eaten is spent, within one process, or H would
/// be far off where worms eat it within hours. Of first order, and small: the bed's own heat, which is that of the step that has just
/// passed, and what the colony takes from its own sums (crowding, hunger, shares of the reserve) at the beginning of a process.
using StepPair = void (*)(StackBlock& stack, TrayBlock* trays, const TrayShape* shapes, int trayCount, const ParameterBlock& parameters,
                          const MassClassTable& classes, const StepForcing& forcing);

/// Process noise of one day on block `index`, from pairs of normals of one stream (random.h).
using Noise = void (*)(StackBlock& stack, unsigned long long stream, int index, bool firstDay);

/// Standard normals of the 64 members of block `index` of one stream.
using Normals = void (*)(unsigned long long stream, int index, Members& out);

/// e^x of 64 members.
using Exponentials = void (*)(const Members& x, Members& out);

/// ln x of 64 members, each a normal number above 0.
using Logarithms = void (*)(const Members& x, Members& out);

/// What is compiled for one instruction set.
struct Kernels {
    StepPair step;
    Noise noise;
    Normals normals;
    Exponentials exponentials;
    Logarithms logarithms;
};

Kernels baseKernels();
Kernels avx2Kernels();
Kernels avx512Kernels();

/// Those kernels that this processor runs, from the plainest to the widest. All give the same bits.
struct KernelSet {
    const char* name; ///< base, avx2, avx512
    Kernels kernels;
};
struct KernelSets {
    KernelSet set[3];
    int count;
};
KernelSets kernelSetsHere();

/// The widest of them, or the one that TIERLOAM_ISA names.
const Kernels& chosenKernels();

}
