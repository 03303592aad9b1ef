#include "core/model/step.h"

#include <cstdlib>
#include <string_view>

namespace tierloam::model {

bool processorHasAvx2() { return __builtin_cpu_supports("avx2") != 0; }

const Kernels& chosenKernels()
{
    static const Kernels chosen = [] {
        const char* wanted = std::getenv("TIERLOAM_ISA"); // NOLINT(concurrency-mt-unsafe): read once, before threads
        if (wanted != nullptr && std::string_view{wanted} == "base") return baseKernels();
        return processorHasAvx2() ? avx2Kernels() : baseKernels();
    }();
    return chosen;
}

}
