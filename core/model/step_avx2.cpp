#include "core/model/step_processes.h"

namespace tierloam::model {

Kernels avx2Kernels() { return {&stepPair, &noise, &normalsOf, &exponentialsOf, &logarithmsOf}; }

}
