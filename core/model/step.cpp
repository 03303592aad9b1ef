#include "core/model/step.h"

#include <cstdlib>
#include <string_view>

namespace tierloam::model {

KernelSets kernelSetsHere()
{
    KernelSets here{{{"base", baseKernels()}}, 1};
    if (__builtin_cpu_supports("avx2") != 0) here.set[here.count++] = {"avx2", avx2Kernels()};
    if (__builtin_cpu_supports("avx512f") != 0 && __builtin_cpu_supports("avx512dq") != 0 && __builtin_cpu_supports("avx512vl") != 0
        && __builtin_cpu_supports("avx512bw") != 0)
        here.set[here.count++] = {"avx512", avx512Kernels()};
    return here;
}

const Kernels& chosenKernels()
{
    static const Kernels chosen = [] {
        const KernelSets here = kernelSetsHere();
        const char* wanted = std::getenv("TIERLOAM_ISA"); // NOLINT(concurrency-mt-unsafe): read once, before threads
        for (int i = 0; wanted != nullptr && i < here.count; ++i)
            if (std::string_view{wanted} == here.set[i].name) return here.set[i].kernels;
        return here.set[here.count - 1].kernels;
    }();
    return chosen;
}

}
